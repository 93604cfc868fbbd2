/** "Now up to six", "the ones on the sill have done better, 6 out of 8": of roots, where those were just told of. */
import { SMALL } from '../../language/pieces/number-names.js';
import { alive, type Batch, placeOf } from '../../ledger/batch.js';
import { batchLabelled, liveBatches } from '../../ledger/ledger.js';
import { standingAt } from '../../ledger/place-meant.js';
import type { Sitting } from '../sitting.js';

const NUMBER = `\\d{1,4}|${SMALL.slice(1).join('|')}`;
const UP_TO = new RegExp(
  `^(?:(?:now|we['’]?re|they['’]?re|they are|it['’]?s|i['’]?m|that['’]?s)(?: now)?|(?<plant>.{3,40}?)(?: (?:is|are)|:|,)?)? ?(?:now )?up to (?<many>${NUMBER})(?: of them)?(?: now| so far| today)?[.!]?$`,
  'iu',
);
const OUT_OF = new RegExp(
  `^(?:(?:and|but|oh) )?(?:the |those )?(?:(?<there>[\\p{L}' -]{3,30}) (?:ones|lot|batch)\\b|(?:ones|lot|batch|those) (?:in|on|at|under|by) (?:the |my )?(?<place>[\\p{L}' -]{3,60}))[^,:;.]{0,40}[,:;.–—-] ?(?:only |just )?(?<many>${NUMBER}) (?:out )?of (?:the )?(?<all>${NUMBER})(?: so far| now)?[.!]?$`,
  'iu',
);
/** What else may be told of so many of them. */
const NO_ROOTS =
  /\b(?:dead|died|lost|left|gone|rott|mould|surviv|alive|wilt|sold|gave|given|pott|plant(?:ed)? out|moved?|pinch|not|need|want|will|hope|if|fail|flower|bud)/i;
const UP_TO_MS = 30 * 24 * 3_600_000;
const BESIDE_MS = 3_600_000;

/** The text as it names its batch and roots; as it is where nothing shows that roots are meant. */
export function withRootsMeant(sitting: Sitting, text: string): string {
  const words = text.trim();
  if (words.length > 160 || NO_ROOTS.test(words)) return text;
  return risen(sitting, words) ?? outOfThose(sitting, words) ?? text;
}

/** More of a batch than had rooted when it was last looked at, and no more than live. */
function risen({ ledger, origin, world }: Sitting, words: string): string | undefined {
  const { plant, many = '' } = UP_TO.exec(words)?.groups ?? {};
  if (many === '') return undefined;
  const fits = (batch: Batch): boolean =>
    batch.rooted > 0 && batch.rooted < numberOf(many) && numberOf(many) <= alive(batch);
  if (plant !== undefined) {
    const named = plant.toLowerCase().replace(/^(?:the|my|our) /, '');
    const lots = liveBatches(ledger).filter(({ variety }) => variety?.toLowerCase() === named);
    return lots.some(fits) ? `${plant}: ${many} rooted` : undefined;
  }
  const last = ledger.standing.at(-1);
  const [label, another] = last?.touched ?? [];
  const batch = label === undefined ? undefined : batchLabelled(ledger, label);
  const isOfIt =
    last?.entry.kind === 'check' &&
    last.journal.source?.chat === world.chat &&
    last.by === origin.by &&
    origin.at - last.journal.at <= UP_TO_MS;
  return isOfIt && batch && another === undefined && fits(batch)
    ? `${batch.label}: ${many} rooted`
    : undefined;
}

/** Behind a look at others, of the one batch at that place, which has just so many. */
function outOfThose({ ledger, origin }: Sitting, words: string): string | undefined {
  const { there, place = there, many = '', all = '' } = OUT_OF.exec(words)?.groups ?? {};
  const last = ledger.standing.at(-1);
  if (place === undefined || last?.entry.kind !== 'check' || origin.at - last.journal.at > BESIDE_MS)
    return undefined;
  const said = place.trim().split(' ');
  for (let length = Math.min(3, said.length); length > 0; length--) {
    const [batch, another] = standingAt(liveBatches(ledger), placeOf, said.slice(0, length).join(' '));
    if (!batch) continue;
    const fits = !another && alive(batch) === numberOf(all) && numberOf(many) <= numberOf(all);
    return fits ? `${batch.label}: ${many} of ${all} rooted` : undefined;
  }
  return undefined;
}

const numberOf = (said: string): number =>
  SMALL.includes(said.toLowerCase()) ? SMALL.indexOf(said.toLowerCase()) : Number(said);
