/** "The second lot, not the first", "from the March ones": the lot that an entry should have said. */
import { isOf } from '../../ledger/batch.js';
import type { StandingEntry } from '../../ledger/ledger.js';
import { chooseBatch } from '../choosing.js';
import { dayIn } from '../day-in.js';
import type { Slots } from '../entry-meant.js';
import type { Sitting } from '../sitting.js';

/** No more than names a lot: "the older ones that flopped" tells of them. */
const LOT =
  /^(?:(?:out )?(?:of|off|from|in) )?(?:the |those |my )?(?:[\p{L}\d]+ ){0,4}(?:lots?|batch|ones?|pots?|trays?|plants?|cuttings)(?: (?:from|of|in|on|by|at|under) .{1,25})?(?:, not .{1,30})?$|^from .{1,25}$|^(?:the )?(?:first|second|third|older|newer|earlier|later)$/iu;

/** "The second" is no day of a month. */
export const ORDINAL = /\b(?:first|second|third)(?: (?:one|lot|batch|pot|tray)s?)?(?:, not .*)?$/i;

/** The batch that the words name, of those of the same plant as the entry's; null where they name none. */
export function lotSaid(sitting: Sitting, words: string, { entry, touched }: StandingEntry): Slots | null {
  const { ledger, origin, settings } = sitting;
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
  return chosen && { batch: chosen.label };
}
