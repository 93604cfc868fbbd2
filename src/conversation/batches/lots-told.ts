/** “Merge the two younger lots”: which of a plant's batches a number and an age tell. */
import { type Batch, began } from '../../ledger/batch.js';

const AGE = 'youngest|younger|newest|newer|latest|later|last|oldest|older|earliest|earlier|first';
const MANY = 'two|three|four|[2-4]';
/** “Two younger”, “last two”, “three lots”; no “2 March”. */
const TOLD = new RegExp(
  `\\b(?:(${MANY}) (?:(${AGE})\\b|(?:lots|batches|trays|pots|ones)\\b)|(${AGE}) (${MANY})\\b)`,
  'i',
);
const NUMBERS: Readonly<Record<string, number>> = { two: 2, three: 3, four: 4 };
const OLD = /^(?:old|earl|first)/i;

/** Those batches; all of them where no number is told or it is theirs, none where it tells fewer and not which. */
export function lotsTold(text: string, batches: readonly Batch[]): readonly Batch[] {
  const [, number, age, ageFirst, numberBehind] = TOLD.exec(text) ?? [];
  const said = (number ?? numberBehind)?.toLowerCase();
  const many = said === undefined ? batches.length : (NUMBERS[said] ?? Number(said));
  if (many === batches.length) return batches;
  const which = age ?? ageFirst;
  if (which === undefined || many > batches.length) return [];
  const byAge = [...batches].sort((a, b) => (began(a) < began(b) ? -1 : began(a) > began(b) ? 1 : 0));
  const sorted = OLD.test(which) ? byAge : byAge.reverse();
  const [last, next] = [sorted[many - 1], sorted[many]];
  // Two of one day: either may be meant.
  if (last && next && began(last) === began(next)) return [];
  const meant = sorted.slice(0, many);
  return batches.filter((batch) => meant.includes(batch));
}
