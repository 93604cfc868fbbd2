/** The next round of cuttings of a plant: when its stock offers them, and as what batch it would begin. */
import { addDays, asDay, type Day, latest } from '../calendar/day.js';
import { cropNamed } from '../horticulture/crops.js';
import { inSeason } from '../horticulture/cutting-season.js';
import { type Batch, began, isOf, placeOf } from '../ledger/batch.js';
import type { Ledger } from '../ledger/ledger.js';
import { knownWay } from './rooting-basis.js';
import type { Site } from './site.js';
import type { Wanted } from './targets.js';

interface Where {
  readonly ledger: Ledger;
  readonly site: Site;
}

/** The first day, not before the target was told, on which the crop's cuttings are in season and its stock has shot again. */
export function stockOffers(wanted: Wanted, { ledger, site }: Where): Day {
  const crop = wanted.crop === null ? null : cropNamed(wanted.crop);
  const struck = [...ledger.batches.values()].filter(
    (batch) => batch.struck !== null && isOf(batch, wanted.plant),
  );
  const last = struck
    .map(began)
    .reduce<Day | null>((late, day) => (late === null || day > late ? day : late), null);
  const shot = last === null || crop?.reshootDays == null ? wanted.toldOn : addDays(last, crop.reshootDays);
  const earliest = latest(wanted.toldOn, shot);
  const ways = crop?.cuttings.filter(({ overwinters }) => !overwinters) ?? [];
  for (let day = earliest, tried = 0; tried < 12 && ways.length > 0; tried++, day = firstOfNextMonth(day))
    if (ways.some((way) => inSeason(way, day, site.hemisphere))) return day;
  return earliest;
}

function firstOfNextMonth(day: Day): Day {
  const next = addDays(asDay(`${day.slice(0, 8)}01`), 31);
  return asDay(`${next.slice(0, 8)}01`);
}

/** A batch as the next one of that plant would be, struck like the last. */
export function nextBatch(wanted: Wanted, struck: Day, { ledger, site }: Where): Batch {
  const like = [...ledger.batches.values()]
    .filter((batch) => isOf(batch, wanted.plant) && batch.struck !== null)
    .at(-1);
  const place = like ? placeOf(like) : null;
  const planned: Batch = {
    label: '', variety: wanted.variety, crop: wanted.crop, struck, received: null, count: 0, pots: null,
    cutting: null, medium: like?.medium ?? null, hormone: null, potSize: null,
    standing: place === null ? {} : { [place]: 1 },
    rooted: 0, pottedOn: 0, pinched: 0, plantedOut: 0, lost: 0, dispatched: 0,
    hardeningSince: null, mergedInto: null, acts: [],
  }; // prettier-ignore
  return { ...planned, cutting: like?.cutting ?? knownWay(planned, site.hemisphere)?.way.type ?? null };
}
