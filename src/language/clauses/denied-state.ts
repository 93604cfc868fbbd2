/** How a plant is not: "isn't looking too hot", "don't look too clever", "not doing so well". */
import { wordAt } from '../grammar/rule.js';
import type { Piece } from '../pieces/pieces.js';

/** Whether that stands at `at`; what has not rooted is told of by a look. */
export function isDeniedState(pieces: readonly Piece[], at: number): boolean {
  const next = pieces[at + 1];
  const isDeed = next?.is === 'word' && next.verb?.form === 'past';
  const word = wordAt(pieces, at);
  if (/^(?:isn't|aren't|ain't|wasn't|weren't|isnt|arent|aint)$/.test(word)) return !isDeed;
  if (/^(?:don't|doesn't|dont|doesnt)$/.test(word))
    return /^(?:look|seem|smell|feel)$/.test(wordAt(pieces, at + 1));
  return word === 'not' && /^(?:looking|doing|far|happy|great)$/.test(wordAt(pieces, at + 1));
}
