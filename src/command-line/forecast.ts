/** `forecast`: a batch's checks and earlier batches in, when it will be ready and when to look next out. */
import { addDays, daysBetween, type Day } from '../calendar/day.js';
import { cropNamed } from '../horticulture/crops.js';
import { rootingDays, strikePrior } from '../horticulture/cutting-season.js';
import { earlierSpan } from '../horticulture/earlier-span.js';
import { forecast as forecastBatch, type RootingForecast } from '../horticulture/rooting-forecast.js';
import { learn, type Learnt } from '../horticulture/rooting-learning.js';
import { EASY_SOFTWOOD, priorFromRange, type DaysRange } from '../horticulture/rooting-prior.js';
import type { RootingRecord } from '../horticulture/rooting-record.js';
import { clockFrom, USUAL_CELSIUS } from '../horticulture/thermal-time.js';
import { rootingReason } from '../words/rooting-reason.js';
import { batchFields, type DatedRecord } from './batch-fields.js';
import type { Run } from './commands.js';
import { answerLines, BadLine } from './json-lines.js';
import { dayField, listField, pairField, type Fields } from './line-fields.js';

export const forecast: Run = (_args, streams) => {
  const learnOnce = remembering();
  return answerLines(streams, (line) => answer(line, learnOnce));
};

type Learn = (usual: Usual, history: readonly RootingRecord[]) => Learnt;

/** What is usual for the crop: the table's, or what the line says instead. */
interface Usual {
  readonly days: DaysRange;
  readonly strikePrior: readonly [number, number];
  readonly mediumCelsius: number;
  readonly from: 'table' | 'grower';
}

function answer(line: Fields, learnOnce: Learn): object {
  const today = dayField(line, 'today');
  const batch = batchFields(line, today);
  const usual = usualOf(line, batch.struckOn);
  const past = listField(line, 'history', '{"struck","cuttings","checks"}').map((each, i) =>
    batchFields(each, today, `history ${i + 1}: `),
  );
  const temperatures = temperaturesOf(line);
  const clockOf = ({ struckOn }: DatedRecord) =>
    clockFrom(
      new Map([...temperatures].map(([date, mean]) => [daysBetween(struckOn, date), mean])),
      usual.mediumCelsius,
    );
  const learnt = learnOnce(
    usual,
    past.map((each) => inThermalDays(each, clockOf(each).thermal)),
  );
  const seen = forecastBatch(learnt, {
    batch,
    today: daysBetween(batch.struckOn, today),
    clock: clockOf(batch),
  });
  return {
    id: line['id'] ?? null,
    state: seen.state,
    ready: {
      p10: rounded(seen.ready?.p10, 3),
      p50: rounded(seen.ready?.p50, 3),
      p90: rounded(seen.ready?.p90, 3),
    },
    pEver: rounded(seen.everChance, 5),
    pReadyBy: weekly(seen, batch.struckOn, today),
    nextCheck: seen.nextCheck === null ? null : addDays(batch.struckOn, seen.nextCheck),
    reason: rootingReason(
      seen,
      { struck: batch.struck, lookedOn: batch.checks.at(-1)?.day ?? null },
      {
        usualDays: usual.days,
        usualFrom: usual.from,
        earlier: earlierSpan(past),
        batches: past.length,
        temperatures: temperatures.size > 0,
      },
    ),
  };
}

function usualOf(line: Fields, struckOn: Day): Usual {
  const name = line['crop'];
  if (name !== undefined && name !== null && typeof name !== 'string')
    throw new BadLine('crop is a name, such as "dahlia"');
  const crop = name ? cropNamed(name) : null;
  const days = pairField(line, 'daysToRoot', { ordered: true, such: '[10, 21]' });
  if (crop === null && days === undefined)
    throw new BadLine(
      name
        ? `the crop table has no "${name}": give daysToRoot, the usual range in days, such as [10, 21]`
        : 'give a crop, or daysToRoot, the usual range in days, such as [10, 21]',
    );
  const [low, high] = crop?.mediumCelsius ?? [USUAL_CELSIUS, USUAL_CELSIUS];
  return {
    days: days ?? rootingDays(crop!, { struckOn }),
    strikePrior: crop ? strikePrior(crop, { struckOn }) : EASY_SOFTWOOD,
    mediumCelsius: (low + high) / 2,
    from: days ? 'grower' : 'table',
  };
}

function temperaturesOf(line: Fields): ReadonlyMap<Day, number> {
  return new Map(
    listField(line, 'temperatures', '{"date","mean"}').map((each, i) => {
      const mean = each['mean'];
      if (typeof mean !== 'number' || Math.abs(mean) > 60)
        throw new BadLine(`temperatures ${i + 1}: mean is a temperature in °C`);
      return [dayField(each, 'date', `temperatures ${i + 1}: `), mean];
    }),
  );
}

function inThermalDays(batch: DatedRecord, thermal: (day: number) => number): RootingRecord {
  return { ...batch, checks: batch.checks.map(({ day, rooted }) => ({ day: thermal(day), rooted })) };
}

/** Every 7 days from today until within 0.005 of the chance that it ever is. */
function weekly(seen: RootingForecast, struckOn: Day, today: Day): { date: Day; p: number | null }[] {
  const rows: { date: Day; p: number | null }[] = [];
  for (let date = today; ; date = addDays(date, 7)) {
    const p = seen.readyChanceBy(daysBetween(struckOn, date));
    rows.push({ date, p: rounded(p, 5) });
    if (p >= seen.everChance - 0.005) return rows;
  }
}

function rounded(value: number | undefined, digits: number): number | null {
  return value === undefined ? null : Number(value.toFixed(digits));
}

/** Learns a history once for all the lines that repeat it, as a program that asks after one batch in turn does. */
function remembering(): Learn {
  const kept = new Map<string, Learnt>();
  return (usual, history) => {
    const prior = priorFromRange(usual.days, usual.strikePrior);
    const key = JSON.stringify([prior, history]);
    const learnt = kept.get(key) ?? learn(prior, history);
    kept.delete(key);
    kept.set(key, learnt);
    if (kept.size > 32) kept.delete(kept.keys().next().value!);
    return learnt;
  };
}
