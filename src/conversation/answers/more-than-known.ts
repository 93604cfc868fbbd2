/** "There must have been 13 to start with": more were told than there can be, because fewer had been noted at first. */
import type { LoggedEntry, Plant } from '../../ledger/entry.js';
import { setSlots } from '../correcting/amending.js';
import { numberIn } from '../correcting/few-words.js';
import { withoutDoubts } from '../correcting/doubts.js';
import type { Sitting } from '../sitting.js';
import type { SlotAsk } from '../talk.js';

const LEADS = /^(?:(?:oh|ah|so|well|then|right|hm+|no|in that case|ok)[, ]+)*/i;
const NUMBER = '(?<number>\\d+|\\p{L}+)';
const AT_FIRST =
  '(?: (?:cuttings|of them|plugs|plants))*(?:,? not \\w+)?(?: (?:to (?:start|begin) with|originally|at first|at the start|in the first place|in all|altogether|then|after all))*';
const FORMS: readonly RegExp[] = [
  `(?:there|it|they|i|we)(?: must| should| ought to) ?(?:have|['’]ve|of) (?:been|had|taken|struck|cut|put in|started with|bought|got) (?:about )?${NUMBER}${AT_FIRST}`,
  `(?:i|we)(?:['’]d(?: had)?| (?:actually |really |in fact )?(?:took|struck|cut|started with|bought|got|had))(?: in fact| actually)? ${NUMBER}${AT_FIRST}`,
  `(?:it was|there were) ${NUMBER}(?: cuttings| plugs)? (?:that )?(?:i|we) (?:took|struck|cut|started with|bought|got|had)${AT_FIRST}`,
  `(?:it was|there were|it should (?:be|have been)|there should be|make (?:it|that)) ${NUMBER} (?:cuttings |plugs )?(?:to (?:start|begin) with|originally|at first|at the start|in the first place)${AT_FIRST}`,
].map((form) => new RegExp(`^${form}[.!]?$`, 'iu'));
/** In UTF-16 units. */
const LONGEST = 100;

/** The entry as it was told, once its batch has begun with enough of them; null where the words do not say so. */
export function moreThanKnown(
  sitting: Sitting,
  { entry, refusal, slot }: SlotAsk,
  text: string,
): LoggedEntry | null {
  if (!refusal || !('wanted' in refusal) || !('batch' in refusal) || text.length > LONGEST) return null;
  const words = withoutDoubts(text.trim().replace(LEADS, '')).replace(
    /, (?:i |we )?(?:miscounted|counted wrong|forgot|missed)\b.{0,40}$/i,
    '',
  );
  const said = FORMS.map((form) => form.exec(words)?.groups?.['number']).find((each) => each !== undefined);
  const number = said === undefined ? null : numberIn(sitting, said);
  if (number === null || number < refusal.wanted) return null;
  const begun = sitting.ledger.standing.find(
    (each) =>
      (each.entry.kind === 'strike' || each.entry.kind === 'receive') && each.touched.includes(refusal.batch),
  );
  if (!begun || !setSlots(sitting, [begun], { count: number })) return null;
  return { ...entry, ...({ batch: refusal.batch } satisfies Plant), [slot]: refusal.wanted } as LoggedEntry;
}
