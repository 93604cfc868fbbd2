/** "Potted on the six and the three": two batches, each told by how many of it wait for that deed. */
import { SMALL } from '../../language/pieces/number-names.js';
import { alive, type Batch } from '../../ledger/batch.js';
import { liveBatches } from '../../ledger/ledger.js';
import type { Sitting } from '../sitting.js';

const NUMBER = `\\d{1,3}|${SMALL.slice(1).join('|')}`;
const THE_TWO = new RegExp(
  `^((?:i |we )?(?:have |['’]ve )?(?:just |now |also )*(?<deed>potted(?: on| up)?|pricked out|planted(?: out)?|pinched(?: out)?)) (?:both )?(?:all |all the |the )(?<one>${NUMBER}) and (?:all |all the |the )(?<other>${NUMBER})(?<rest>(?: (?:on|up|out))?(?:[,.!;]| (?:in|into|by|at|along|under|today|yesterday|this|last|now)\\b|$).*)$`,
  'isu',
);

/** The text with the label of each batch behind its number; as it is where a number fits no batch, or two. */
export function withNumbersNamed({ ledger }: Sitting, text: string): string {
  const { deed = '', one = '', other = '', rest = '' } = THE_TWO.exec(text.trim())?.groups ?? {};
  if (deed === '') return text;
  const live = liveBatches(ledger);
  const [first, second] = [one, other].map((said) => onlyWaiting(live, deed, numberOf(said)));
  if (!first || !second || first === second) return text;
  return `${deed} ${numberOf(one)} ${first.label} and ${numberOf(other)} ${second.label}${rest}`;
}

const numberOf = (said: string): number =>
  SMALL.includes(said.toLowerCase()) ? SMALL.indexOf(said.toLowerCase()) : Number(said);

/** The one batch of which so many wait for the deed: rooted ones for their pots, potted ones for the ground. */
function onlyWaiting(live: readonly Batch[], deed: string, many: number): Batch | undefined {
  const waiting = (batch: Batch): number =>
    /^p(?:ot|rick)/i.test(deed) ? (batch.rooted ?? 0) - batch.pottedOn : alive(batch) - batch.plantedOut;
  const [only, another] = live.filter((batch) => waiting(batch) === many);
  return another ? undefined : only;
}
