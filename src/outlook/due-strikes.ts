/** The next round of cuttings, while it can still make up the number that is wanted. */
import type { Due } from './due.js';
import type { Outlook } from './dues.js';

export function strikeDues(_outlook: Outlook): readonly Due[] {
  return [];
}
