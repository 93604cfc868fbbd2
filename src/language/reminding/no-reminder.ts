/** Words of intending that plan nothing: advice, what was left undone, what others say, reminders not wanted. */
import type { FoundRemind } from '../grammar/remind.js';
import { wordAt } from '../grammar/rule.js';
import type { Piece } from '../pieces/pieces.js';

/** "You should pot them on": for anybody. */
const ADVICE = /\b(?:one|you|people|they|he|she) (?:should|ought to|must|has to|have to)\b/;
/** Before the words of intending: denied, supposed, or somebody else's. */
const NOT_PLANNED =
  /^(?:if|says|said|reckons|told|asked|thinks|would|wish|suggested|suggests|apparently|didn't|don't|not|never|might|could|forgot|haven't|wouldn't|wanted|hoped|tried|forgotten|who|meant|supposed|used|advised|advises|recommends)$/;

export function isNoReminder(
  { rule, from, to }: FoundRemind,
  pieces: readonly Piece[],
  line: string,
): boolean {
  // "I should (really) have potted them on": it was not done, and is not planned. "One should cut": advice.
  if (
    /^(?:should|ought to|would)$/.test(rule.words.join(' ')) &&
    (/^(?:have|of|'ve)$/.test(wordAt(pieces, pastAdverb(pieces, to))) ||
      /^(?:one|you|he|she|people|they)$/.test(wordAt(pieces, from - 1)))
  )
    return true;
  // "Don't nag me about these": no reminder is asked for.
  if (!rule.beforeVerb) return /^(?:don't|not|never|stop|quit)$/.test(wordAt(pieces, from - 1));
  const before = pieces.slice(0, from).map((_, at) => wordAt(pieces, at));
  // "Not today, but I will": what is denied stands before the "but".
  const lead = before.slice(before.lastIndexOf('but') + 1);
  return ADVICE.test(line) || lead.some((word) => NOT_PLANNED.test(word));
}

const pastAdverb = (pieces: readonly Piece[], at: number): number =>
  /^(?:really|probably|maybe|just|also|only|perhaps)$/.test(wordAt(pieces, at)) ? at + 1 : at;
