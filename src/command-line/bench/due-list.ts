/** Deriving what is due: one grower with 200 live batches, and the morning digests of 10,000, with forecasts kept and without. */
import { addDays, asDay, type Day } from '../../calendar/day.js';
import { fold } from '../../ledger/fold.js';
import type { JournalLine, Posting } from '../../ledger/posting.js';
import { digestOf } from '../../outlook/digest.js';
import { dues } from '../../outlook/dues.js';
import { type Keeper, memoryKeeper } from '../../outlook/keeper.js';
import { siteOf } from '../../outlook/site.js';
import { digestWords } from '../../words/prompts.js';
import { type Measurement, median, timeEach } from './measurement.js';

const TODAY = asDay('2026-04-15');
const SITE = siteOf({ zone: 'Europe/London', lastFrost: '05-05', firstFrost: '10-20' });
const CROPS = [
  'dahlia',
  'fuchsia',
  'pelargonium',
  'salvia',
  'verbena',
  'chrysanthemum',
  'penstemon',
  'lavender',
];
const PLACES = ['propagator', 'kitchen windowsill', 'greenhouse'];
const SPEECH = { wording: 'GB', units: 'metric', today: TODAY } as const;
const LARGE = { live: 200, past: 200, targets: 8 };
const SMALL = { live: 12, past: 12, targets: 2 };
/** So many different growers, each asked for as often as it takes to make 10,000: to forecast for 10,000 cold takes half an hour. */
const DIFFERENT = 50;
const GROWERS = 10_000;
const ROOM = { learnt: 100, foreseen: 100_000 };

export async function dueList(): Promise<readonly Measurement[]> {
  return [...oneGrower(), ...manyGrowers()];
}

function oneGrower(): readonly Measurement[] {
  const journal = journalOf(1, LARGE);
  const keeper = memoryKeeper(ROOM);
  const derive = (kept: Keeper) => () => void dueOn(TODAY, journal, kept);
  const [cold = Number.NaN] = timeOnce(derive(keeper));
  const baseline = median(timeEach(20, () => void fold(journal)));
  const warm = median(timeEach(40, derive(keeper))) - baseline;
  const against = 'folding the same journal';
  return [
    {
      name: 'due list, 200 live batches, forecasts kept',
      unit: 'ms',
      ours: warm,
      baseline,
      against,
      aim: 'under 20 ms',
    },
    { name: 'due list, 200 live batches, cold', unit: 'ms', ours: cold - baseline, baseline, against },
  ];
}

function manyGrowers(): readonly Measurement[] {
  const journals = Array.from({ length: DIFFERENT }, (_, seed) => journalOf(seed + 2, SMALL));
  const keeper = memoryKeeper(ROOM);
  const morning = (index: number) => {
    const digest = digestOf(dueOn(TODAY, journals[index % DIFFERENT]!, keeper), {
      today: TODAY,
      lastDay: null,
    });
    return digest === null ? '' : digestWords(digest, SPEECH);
  };
  const [cold = Number.NaN] = timeOnce(() => journals.forEach((_, index) => void morning(index)));
  const start = performance.now();
  for (let grower = 0; grower < GROWERS; grower++) morning(grower);
  const seconds = (performance.now() - start) / 1000;
  const folding = performance.now();
  for (let grower = 0; grower < GROWERS; grower++) fold(journals[grower % DIFFERENT]!);
  const baseline = (performance.now() - folding) / 1000;
  const against = 'folding the same journals';
  return [
    {
      name: '10,000 morning digests, forecasts kept, folding among it',
      unit: 's',
      ours: seconds,
      baseline,
      against,
      aim: 'under 60 s',
    },
    {
      name: `${DIFFERENT} morning digests, cold`,
      unit: 's',
      ours: cold / 1000,
      baseline: (baseline * DIFFERENT) / GROWERS,
      against,
    },
  ];
}

/** Folded anew each time, so that nothing but the keeper carries over. */
function dueOn(today: Day, journal: readonly JournalLine[], keeper: Keeper) {
  return dues({ ledger: fold(journal).ledger, today, site: SITE, keeper });
}

function timeOnce(call: () => void): number[] {
  const start = performance.now();
  call();
  return [performance.now() - start];
}

/** An invented season: batches of last year come to their end, this year's at every stage. */
function journalOf(seed: number, size: typeof LARGE): readonly JournalLine[] {
  const told: Posting[] = [];
  const tell = (what: Record<string, unknown>, date: Day) =>
    void told.push({ ...what, date } as unknown as Posting);
  for (let n = 0; n < size.past + size.live; n++) {
    const past = n < size.past;
    const crop = CROPS[(n + seed) % CROPS.length]!;
    const batch = `B${n}`;
    const count = 8 + ((n * 7 + seed) % 9);
    const struck = addDays(past ? asDay('2025-02-20') : asDay('2026-03-01'), (n * 13 + seed * 5) % 40);
    tell(
      {
        kind: 'strike',
        label: batch,
        variety: `Variety ${n % 30}`,
        crop,
        count,
        place: PLACES[n % PLACES.length],
      },
      struck,
    );
    if (!past && n % 3 === 0) continue;
    const rooted = Math.ceil(count * (past || n % 3 === 1 ? 0.7 : 0.2));
    tell({ kind: 'check', batch, rooted }, addDays(struck, 12 + ((n + seed) % 9)));
    if (!past && n % 3 === 2) continue;
    tell({ kind: 'potOn', batch, count: rooted, potSize: '9cm' }, addDays(struck, 22));
    tell({ kind: 'loss', batch, count: count - rooted }, addDays(struck, 22));
    if (past) tell({ kind: 'plantOut', batch, count: rooted }, addDays(struck, 80));
  }
  for (let n = 0; n < size.targets; n++)
    tell(
      { kind: 'target', variety: `Variety ${n}`, crop: CROPS[(n + seed) % CROPS.length], count: 24 },
      asDay('2026-05-25'),
    );
  return told.map((what, index) => ({ line: index + 1, at: 0, postedAt: 0, by: null, source: null, what }));
}
