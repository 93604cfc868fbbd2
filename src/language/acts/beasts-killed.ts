/** "Six slugs killed round the Salt Harrier", "squashed 4 vine weevils": what was counted is the pests. */
import type { Clause } from '../clauses/clauses.js';
import { PESTS } from '../grammar/loss/pests.js';
import { wordAt } from '../grammar/rule.js';
import type { Piece } from '../pieces/pieces.js';

const BEASTS: ReadonlySet<string> = new Set(PESTS.filter((word) => word.endsWith('s') || word === 'mice'));
const KILLED = /^(?:killed|squashed|crushed|drowned|caught|removed|found|squished|trapped|picked)$/;
/** "Vine weevil grubs", "big grey slugs". */
const LONGEST_NAME = 2;

/** Whether the number beside a loss's words counts beasts that were killed. */
export function countsBeasts(pieces: readonly Piece[], { from, to, hit }: Clause): boolean {
  if (hit?.rule.kind !== 'loss' || !KILLED.test(wordAt(pieces, hit.to - 1))) return false;
  for (let at = from; at < to; at++) {
    if (pieces[at]?.is !== 'count') continue;
    let beast = at + 1;
    while (
      beast < at + 1 + LONGEST_NAME &&
      pieces[beast]?.is === 'word' &&
      !BEASTS.has(wordAt(pieces, beast))
    )
      beast++;
    if (!BEASTS.has(wordAt(pieces, beast))) return false;
    // "Six slugs killed", with none that they killed.
    if (beast >= hit.from && beast < hit.to && at < hit.from)
      return pieces.slice(hit.to, to).every(({ is }) => is !== 'count');
    const behind = wordAt(pieces, beast + 1);
    return at > hit.from ? !/^(?:got|had|ate|have|did)$/.test(behind) : beast < hit.from;
  }
  return false;
}
