/** The one message that answers a turn, gathered part by part. */
import type { Line } from '../ledger/posting.js';
import type { Button } from './turn.js';

export interface Reply {
  readonly text: string[];
  readonly buttons: Button[][];
  /** Lines of the journal that it speaks of, so that an answer to it finds them. */
  readonly lines: Line[];
}

export function reply(): Reply {
  return { text: [], buttons: [], lines: [] };
}
