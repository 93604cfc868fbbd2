/** "No", "that's not right", "??" behind a receipt: what should read otherwise is asked, and nothing is changed. */
import type { ReadNote } from '../../language/note.js';
import { whole } from '../../language/phrases.js';
import type { Context } from '../answers/answering.js';
import { ofLastNote } from '../leaning/last-note.js';
import type { Sitting } from '../sitting.js';
import { withoutNoise } from './doubts.js';

/** So long behind a note is it the note that is wrong. */
const WITHIN_MS = 3_600_000;

const NO = 'no|nope|nah|naw';
const DENIED = whole`
  (${NO})( (${NO}))*
  ((${NO}|sorry|hang on|wait|hmm) )*(that's|thats|that is|that was|it's|its|this is|you've got (that|it)|you got (that|it)) (all )?(wrong|incorrect|not right|not correct|not it|not what i (said|meant|wrote|did))
  ((${NO}|sorry|hang on|wait|hmm) )*(that isn't|that isnt|that aint|isn't|not) (right|correct|it|what i (said|meant|wrote|did))
  ((${NO}|sorry|hang on|wait|hmm) )*(wrong|incorrect|all wrong)
`;
/** "??", "eh?", "what?". */
const PUZZLED = /^(?:\?{2,5}|(?:eh|huh|hey|you what|pardon)\?+)$/i;

/** Whether the text denies what the last note was taken for and says nothing else; if so, that is asked about. */
export function deniesAlone(
  sitting: Sitting,
  text: string,
  { entries }: ReadNote,
  context: Context,
): boolean {
  if (context.ask || context.explicit || context.lines.length > 0) return false;
  // A "no" may answer a prompt.
  if (entries.length > 0 && context.prompts.some(({ open }) => open)) return false;
  if (entries.some(({ entry }) => entry.kind !== 'answer' && entry.kind !== 'remark')) return false;
  const words = withoutNoise(text)
    .toLowerCase()
    .replace(/’/g, "'")
    .replace(/[,.! ]+/g, ' ')
    .trim();
  if (words.length > 60 || !(PUZZLED.test(words) || DENIED.test(words))) return false;
  const last = ofLastNote(sitting, WITHIN_MS);
  if (last.length === 0) return false;
  sitting.ask({ ask: 'change', lines: [...new Set(last.map(({ line }) => line))] });
  return true;
}
