/** What a grower wants: how many of which plant, and by when. */
import { addDays, type Day, dayFromNumber } from '../calendar/day.js';
import { lastDay } from '../calendar/span.js';
import { cropNamed } from '../horticulture/crops.js';
import { plantOutDay } from '../horticulture/plant-out.js';
import type { Plant, Target } from '../ledger/entry.js';
import { batchLabelled, entriesOf, type Ledger } from '../ledger/ledger.js';
import { staysIndoors } from './season.js';
import { saferDays, type Site } from './site.js';

export interface Wanted {
  /** Line of the journal on which it was told; 0 where it is only asked about. */
  readonly line: number;
  readonly plant: Plant;
  readonly crop: string | null;
  readonly variety: string | null;
  readonly want: number;
  readonly toldOn: Day;
  /** The day named, else the next on which the crop may be planted out; null where neither is known. */
  readonly by: Day | null;
}

const DAY_MS = 86_400_000;

/** Standing targets that are not past, the latest of each plant. */
export function wantedOf(ledger: Ledger, site: Site, today: Day): readonly Wanted[] {
  const latest = new Map<string, Wanted>();
  for (const { line, entry, journal } of entriesOf(ledger, 'target')) {
    const toldOn = dayFromNumber(Math.floor(journal.at / DAY_MS));
    const wanted = wantedBy(entry, { ledger, site, toldOn, line });
    if (wanted) latest.set(JSON.stringify(wanted.plant).toLowerCase(), wanted);
  }
  return [...latest.values()].filter(({ by }) => by === null || by >= today);
}

interface Telling {
  readonly ledger: Ledger;
  readonly site: Site;
  readonly toldOn: Day;
  readonly line: number;
}

/** What a target asks for, standing or only asked about; null where it names no number. */
export function wantedBy(
  entry: Omit<Target, 'kind'>,
  { ledger, site, toldOn, line }: Telling,
): Wanted | null {
  if (typeof entry.count !== 'number') return null;
  const { variety, crop } = asVariety(ledger, entry);
  const plant: Plant = {
    ...(variety === undefined ? {} : { variety }),
    ...(crop === undefined || variety !== undefined ? {} : { crop }),
  };
  const known = crop ?? cropOf(ledger, variety) ?? null;
  const said = entry.date === undefined ? toldOn : lastDay(entry.date);
  const by = said > addDays(toldOn, 1) ? said : nextPlanting(known, toldOn, site);
  return { line, plant, crop: known, variety: variety ?? null, want: entry.count, toldOn, by };
}

/** Plants are wanted of a variety; a batch that was named stands for its own. */
function asVariety(ledger: Ledger, { variety, crop, batch }: Plant): Plant {
  const named = batch === undefined ? undefined : batchLabelled(ledger, batch);
  const whole = variety ?? named?.variety ?? undefined;
  const kind = crop ?? named?.crop ?? undefined;
  return {
    ...(whole === undefined ? {} : { variety: whole }),
    ...(kind === undefined ? {} : { crop: kind }),
  };
}

/** The next day on which frost lets the crop out, later than cuttings of today could be ready; null where it waits for none. */
function nextPlanting(name: string | null, toldOn: Day, site: Site): Day | null {
  const crop = name === null ? null : cropNamed(name);
  const frost = saferDays(site);
  if (crop === null || !crop.frostTender || staysIndoors(crop) || frost.last === null) return null;
  return plantOutDay(addDays(toldOn, crop.growOnDays + crop.hardenOffDays), frost);
}

function cropOf(ledger: Ledger, variety: string | undefined): string | undefined {
  const lower = variety?.toLowerCase();
  for (const [name, crop] of ledger.varieties) if (name.toLowerCase() === lower) return crop ?? undefined;
  return undefined;
}
