/** "Planted out everything", "potted on all the rooted ones", "both dahlias": which batches are meant, where it is more than one. */
import type { LoggedEntry, Plant } from '../../ledger/entry.js';
import { batchLabelled, matching } from '../../ledger/ledger.js';
import { named, plantOf } from '../../ledger/reach.js';
import { meansEverything } from './means-everything.js';
import { OTHER_MS, SPOKEN_OF_MS, spokenOfLast } from './pointing.js';
import type { Sitting } from '../sitting.js';
import { withoutSlots } from '../reading/slots.js';

/** "All the rooted ones", "all of them that had roots", "any with roots": whichever they stand in. */
const ALL_SUCH =
  /\b(?:all|every|any)(?: of)?(?: the| my| our| them| those)?(?: (?:rooted|potted)(?: (?:ones?|plants|cuttings|stuff))?\b| (?:ones? |plants? |cuttings? )?(?:that|which|with|that['’]s) (?:\p{L}+ ){0,2}(?:roots|rooted|potted)\b)/iu;
const ROOTED = /\brooted\b|\b(?:with|has|have|had|got) (?:\p{L}+ )?roots?\b/iu;
const THE_LOT = /\bthe lot\b(?! (?:of|from|i|we|that|taken|struck|(?:in|on|by|under) (?:the|my))\b)/i;
const BOTH_LOTS = /\bboth (?:of the |the |my )?(?:lots|batches|trays)\b/i;
const ALL_OF_CROP = /\b(?:all|every one)(?: of)? (?:the|my|our|those|these)\b|\ball \p{L}+s\b/iu;

/** The labels of `options` that an act of no one batch is done to; none where only one can be meant, or it is not said. */
export function allMeant(
  sitting: Sitting,
  entry: LoggedEntry,
  options: readonly string[],
): readonly string[] {
  const { ledger, text } = sitting;
  const { variety, batch } = entry as Plant;
  const isLot = THE_LOT.test(text) && entry.kind !== 'loss';
  if (batch !== undefined || (variety !== undefined && !BOTH_LOTS.test(text))) return [];
  const isOfCrop = named(entry as Plant);
  const together = spokenOfAll(sitting, isLot);
  const spoken = options.filter((label) => together.includes(label));
  const isAll =
    meansEverything(text, options.length) ||
    (isOfCrop ? ALL_OF_CROP.test(text) : entry.kind !== 'check' && ALL_SUCH.test(text));
  if (!isAll && spoken.length === 0 && (isOfCrop || !isLot)) return [];
  const meant = isAll || spoken.length === 0 ? options : spoken;
  if (!ROOTED.test(text) || entry.kind === 'check') return meant;
  const rooted = meant.filter((label) => (batchLabelled(ledger, label)?.rooted ?? 0) > 0);
  return rooted.length > 0 ? rooted : meant;
}

/** "Both dahlias", of two batches: each of them, and no two plants. */
export function eachOfBoth({ ledger, text }: Sitting, entry: LoggedEntry): LoggedEntry {
  const { crop, variety, batch } = entry as Plant;
  const isTwo = 'count' in entry && entry.count === 2 && /\bboth\b/i.test(text);
  if (!isTwo || crop === undefined || batch !== undefined) return entry;
  if (variety !== undefined && !BOTH_LOTS.test(text)) return entry;
  return matching(ledger, plantOf(entry as Plant)).length === 2 ? withoutSlots(entry, 'count') : entry;
}

/** "Potted them all on", "planted out the lot" behind what was told of several: those; none where it was told of one. */
function spokenOfAll(sitting: Sitting, isLot: boolean): readonly string[] {
  if (
    !/\b(?:them (?:all|both)|all of (?:them|these)|the lot|all (?:two|three|four|five|six))\b/i.test(
      sitting.text,
    )
  )
    return [];
  const spoken = spokenOfLast(sitting, OTHER_MS);
  if (spoken.length > 1 || !isLot) return spoken.length > 1 ? spoken : [];
  const together = toldOfTogether(sitting);
  return together.length > 0 ? together : spokenOfLast(sitting, SPOKEN_OF_MS);
}

/** The batches that one grower told of in several notes, none long after the one before; none where it is one. */
function toldOfTogether({ ledger, origin, world }: Sitting): readonly string[] {
  const labels = new Set<string>();
  let later: number | undefined;
  for (const { journal, by, touched } of ledger.standing.toReversed()) {
    if (journal.source?.chat !== world.chat || by !== origin.by) break;
    if (later === undefined ? origin.at - journal.at > OTHER_MS : later - journal.at > SPOKEN_OF_MS) break;
    later = journal.at;
    for (const label of touched) labels.add(label);
  }
  return labels.size > 1 ? [...labels] : [];
}
