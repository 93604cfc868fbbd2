/** "The second lot, not the first", "from the March ones": the lot that an entry should have said. */
import { numberAt } from '../../language/pieces/numbers.js';
import { tokenise } from '../../language/row/tokens.js';
import { type Batch, isOf } from '../../ledger/batch.js';
import type { Plant } from '../../ledger/entry.js';
import { matching, type StandingEntry } from '../../ledger/ledger.js';
import { plantOf } from '../../ledger/reach.js';
import { chooseBatch } from '../answers/choosing.js';
import { dayIn } from '../reading/day-in.js';
import type { Slots } from './entry-meant.js';
import type { Sitting } from '../sitting.js';

/** No more than names a lot: "the older ones that flopped" tells of them. */
const LOT =
  /^(?:(?:out )?(?:of|off|from|in) )?(?:the |those |my )?(?:[\p{L}\d]+ ){0,4}(?:lots?|batch|ones?|pots?|trays?|plants?|cuttings)(?: (?:from|of|in|on|by|at|under) .{1,25})?(?:, not .{1,30})?$|^from .{1,25}$|^(?:the )?(?:first|second|third|older|newer|earlier|later)$/iu;

/** "Two of the bathroom lot". */
const SO_MANY = /^([\p{L}\d]+)(?: of| o| out of| from| off) (?=the |those |my )/iu;

/** "The second" is no day of a month. */
export const ORDINAL = /\b(?:first|second|third)(?: (?:one|lot|batch|pot|tray)s?)?(?:, not .*)?$/i;

/** The batch that the words name, of those of the same plant as the entry's; null where they name none. */
export function lotSaid(sitting: Sitting, said: string, { entry, touched }: StandingEntry): Slots | null {
  const { ledger, origin, settings } = sitting;
  const [lead = '', many] = SO_MANY.exec(said) ?? [];
  const count = many === undefined ? undefined : numberAt(tokenise(many), 0)?.value;
  if (many !== undefined && (count === undefined || !('count' in entry))) return null;
  const words = said.slice(lead.length);
  const [own, another] = touched.flatMap((label) => ledger.batches.get(label) ?? []);
  if (!own || another || !('batch' in entry) || !LOT.test(words)) return null;
  const plant =
    own.variety === null ? (own.crop === null ? {} : { crop: own.crop }) : { variety: own.variety };
  const labels = [...ledger.batches.values()].filter((batch) => isOf(batch, plant)).map(({ label }) => label);
  if (labels.length < 2) return null;
  const chosen = chooseBatch(
    words,
    labels,
    ledger,
    ORDINAL.test(words) ? null : dayIn(words, origin.at, settings, 'past'),
  );
  return chosen && { batch: chosen.label, ...(count === undefined ? {} : { count }) };
}

/** "That was the Moss Cardinal, the younger lot": of a plant with several batches the one that is named, else all; none where no lot is in doubt. */
export function lotsMeant(
  sitting: Sitting,
  standing: readonly StandingEntry[],
  set: Slots,
): readonly Batch[] {
  const [only, another] = standing;
  const plant = plantOf(set as Plant);
  const isBegun = only?.entry.kind === 'strike' || only?.entry.kind === 'receive';
  if (!only || another || isBegun || !('batch' in only.entry) || plant.batch !== undefined) return [];
  if (plant.variety === undefined) return [];
  const { ledger, origin, settings, text } = sitting;
  const fits = matching(ledger, plant);
  if (fits.length < 2) return [];
  const labels = fits.map(({ label }) => label);
  const chosen = chooseBatch(text, labels, ledger, dayIn(text, origin.at, settings, 'past'));
  return chosen ? [chosen] : fits;
}
