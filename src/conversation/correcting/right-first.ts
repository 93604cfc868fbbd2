/** “No, I was right the first time”, “leave it at three” right behind a correction: what it put right stands as it did. “No, keep them apart” behind a merger: so do they. */
import { anyOf, whole } from '../../language/phrases.js';
import { isAmendment } from '../../ledger/posting.js';
import { isWithdrawn, lastDeed } from '../books/history.js';
import type { Sitting } from '../sitting.js';
import { restore, revert, takeBack } from './undoing.js';
import { LONGEST } from './doubts.js';
import { numberIn } from './few-words.js';

/** So long after a correction is the first telling meant by these words. */
const LATELY_MS = 24 * 3_600_000;

const LEAD = String.raw`(?:(?:oh|ah|no|nope|nah|sorry|wait|hang on|hold on|actually|well|ok|leave (?:it|that)|on second thoughts?)[,.! ]+)*`;
const FIRST = anyOf`
  the first time|first time( round)?|to (start|begin) with|at first|before|all along|originally|after all
`;
const RIGHT_FIRST = whole`
  ${LEAD}(i|we|you|it|that) (was|were|had (it|that)) right ${FIRST}
  ${LEAD}(what i|i) (said|put|told you|wrote) (it |that )?(right )?${FIRST} (was|is) right
  ${LEAD}the first (one|number|figure|count|date|day|name|answer) (was|is) (right|correct)
  ${LEAD}(leave|put|keep|have) (it|that) (as it was|the way it was|how it was|back (to|as|how) (what )?it was)
  ${LEAD}as it was( before)?
`;
/** “No, back to 3”, “leave it at three”. */
const BACK_TO =
  /^(?:(?:oh|no|nope|nah|sorry|wait|actually|ok)[, ]+)*(?:(?:leave|put|keep|make|have) (?:it|that) (?:at|back (?:to|at))|back to) (?<number>\d+|\p{L}+)(?=$|[,.!])/iu;
const APART = whole`
  (no|nope|sorry|wait|actually|oh|hang on)[,.! ]+((no|sorry|wait|actually)[, ]+)*((please )?(keep|leave) (them|those|the two) (apart|separate|as they were|as two)|(don't|dont|do not) (merge|join|combine) (them|those|the two)|they('re| are) (separate|two (lots|batches)))
`;

/** Whether the words take back the correction or the merger before them, and that is done. */
export function wasRightFirst(sitting: Sitting, text: string): boolean {
  const { journal, origin, world } = sitting;
  const last = journal.at(-1);
  if (text.length > LONGEST || last?.source?.chat !== world.chat) return false;
  if (origin.at - last.postedAt > LATELY_MS) return false;
  const words = text.trim().toLowerCase().replaceAll('’', "'").replace(/[.!]$/, '');
  const { what } = last;
  if (!isAmendment(what)) {
    if (what.kind !== 'merge' || !APART.test(words)) return false;
    takeBack(sitting, [last.line]);
    return true;
  }
  if (!RIGHT_FIRST.test(words) && !isBackTo(sitting, words, what.amends)) return false;
  if (what.entries.length === 0) {
    restore(sitting, [last.line]);
    return sitting.reply.text.length > 0;
  }
  const deed = lastDeed(journal);
  if (deed?.what !== 'correction' || !deed.lines.includes(last.line)) return false;
  revert(sitting, deed.lines);
  return true;
}

/** Whether that number is what the line said before it was put right. */
function isBackTo(sitting: Sitting, words: string, line: number): boolean {
  const said = BACK_TO.exec(words)?.groups?.['number'];
  if (said === undefined) return false;
  const versions = sitting.journal.filter(
    (each) =>
      each.line === line ||
      (isAmendment(each.what) && each.what.amends === line && !isWithdrawn(sitting.journal, each.line)),
  );
  const before = versions.at(-2)?.what;
  const [entry] = before === undefined ? [] : isAmendment(before) ? before.entries : [before];
  const { count, rooted } = (entry ?? {}) as { readonly count?: unknown; readonly rooted?: unknown };
  return numberIn(sitting, said) === (count ?? rooted);
}
