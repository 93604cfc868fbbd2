/** What the searches for new names go by, each of which claims the words that it takes for one. */
import type { Piece } from '../../pieces/pieces.js';
import type { PlaceName } from '../../pieces/places/known.js';
import type { Token } from '../../row/tokens.js';

export interface Search {
  readonly text: string;
  readonly tokens: readonly Token[];
  /** Places that the ledger knows. */
  readonly places: readonly PlaceName[];
  /** Whether the word there belongs to nothing yet. */
  readonly free: (at: number) => boolean;
  /** Answers false where some of its words were taken. */
  readonly claim: (piece: Piece) => boolean;
}

/** Whether what is said ends there: at a mark, at the end of a line, or with the note. */
export const endsPart = (token: Token | undefined): boolean =>
  token === undefined || token.is === 'line' || /^[,.;!?(-]$/.test(token.raw);
