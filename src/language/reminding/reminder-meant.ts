/** Whether words of reminding, asking and wanting mean a reminder, a question or a wish. */
import { findRemind } from '../grammar/remind.js';
import { wordAt } from '../grammar/rule.js';
import type { Piece } from '../pieces/pieces.js';

/** "Give me a shout on Friday, would you?" asks for a reminder; "remind me when I took them" asks. */
export function asksToBeReminded(pieces: readonly Piece[]): boolean {
  const found = findRemind(pieces);
  if (!found || found.rule.beforeVerb || found.from > 3) return false;
  const to = pieces[found.to]?.is === 'break' ? found.to + 1 : found.to;
  // "Remind an old fool, what did I take?": who is to be told stands between.
  const mark = pieces.findIndex(({ is }) => is === 'break');
  const isOfSomebody =
    mark > found.to && mark < found.to + 6 && /^(?:an?|this|your)$/.test(wordAt(pieces, found.to));
  return ![to, ...(isOfSomebody ? [mark + 1] : [])].some((at) => ASKS.test(wordAt(pieces, at)));
}

const ASKS = /^(?:what|when|where|whereabouts|how|which|who|if|whether|why)$/;

/** "I want to have 15", "would like to end up with a dozen": plants to have, no act to be reminded of. */
export function wantsToHave(pieces: readonly Piece[]): boolean {
  const found = findRemind(pieces);
  return (
    found === undefined ||
    (found.rule.beforeVerb === true &&
      /^(?:have|get|see|raise|grow|make|produce|reach|end|own|be|become)$/.test(wordAt(pieces, found.to)))
  );
}

/** "…, can you put that right?" asks for no more than what stands before it. */
export const asksToPutRight = (line: string): boolean =>
  /\b(?:can|could|would|will) you (?:please )?(?:put|set|get) (?:that|it|this) (?:right|straight)(?: please| for me)?$/.test(
    line,
  );
