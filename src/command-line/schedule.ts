/** `schedule`: plants wanted by a planting-out day in, rounds of cuttings and the last day for them out. */
import { addDays, daysBetween } from '../calendar/day.js';
import { cropNamed, type Crop } from '../horticulture/crops.js';
import { rootingDays, strikePrior } from '../horticulture/cutting-season.js';
import { learn } from '../horticulture/rooting-learning.js';
import { EASY_SOFTWOOD, priorFromRange } from '../horticulture/rooting-prior.js';
import { timingOf } from '../horticulture/rounds.js';
import { scheduleRounds, type Stock, USUAL_RESHOOT_DAYS } from '../horticulture/schedule.js';
import { scheduleReason } from '../words/schedule-reason.js';
import type { Run } from './commands.js';
import { answerLines, BadLine } from './json-lines.js';
import { chanceField, countField, dayField, pairField, type Fields } from './line-fields.js';
import { strikeRateFields, survivalFields } from './rate-fields.js';

export const schedule: Run = (_args, streams) => answerLines(streams, answer);

/** No grower plans for more at once. */
const MOST_PLANTS = 5000;

function answer(line: Fields): object {
  const today = dayField(line, 'today');
  const plantOut = dayField(line, 'plantOut');
  const want = countField(line, 'want', { most: MOST_PLANTS });
  const crop = cropOf(line);
  const usualDays =
    pairField(line, 'daysToRoot', { ordered: true, such: '[10, 21]' }) ??
    (crop ? rootingDays(crop, { struckOn: today }) : missing('daysToRoot, such as [10, 21]', line));
  const growOnDays =
    daysField(line, 'growOnDays') ?? crop?.growOnDays ?? missing('growOnDays, such as 28', line);
  const hardenOffDays =
    daysField(line, 'hardenOffDays') ?? crop?.hardenOffDays ?? missing('hardenOffDays, such as 10', line);
  const hardenOff = addDays(plantOut, -hardenOffDays);
  const potOn = addDays(hardenOff, -growOnDays);
  const prior = crop ? strikePrior(crop, { struckOn: today }) : EASY_SOFTWOOD;
  const rate = strikeRateFields(line, prior);
  const survival = survivalFields(line);
  const plan = scheduleRounds({
    want,
    confidence: chanceField(line, 'confidence', 0.9),
    daysLeft: daysBetween(today, potOn),
    stock: stockField(line, crop),
    rate: rate.belief,
    survival: survival?.next,
    timing: timingOf(learn(priorFromRange(usualDays, prior), [])),
  });
  const late = plan.tooLate
    ? {
        tooLate: true,
        canHave: plan.canHave,
        earliestPlantOut:
          plan.rootedInDays === null ? null : addDays(today, plan.rootedInDays + growOnDays + hardenOffDays),
      }
    : {};
  return {
    id: line['id'] ?? null,
    rounds: plan.rounds.map(({ inDays, take }) => ({ strike: addDays(today, inDays), take })),
    latestStrike: plan.tooLate ? null : addDays(today, plan.latestInDays),
    potOn,
    hardenOff,
    plantOut,
    p: Number(plan.p.toFixed(5)),
    ...late,
    reason: scheduleReason(plan, {
      want,
      meanRate: rate.mean,
      records: rate.records,
      usualDays,
      growOnDays,
      hardenOffDays,
    }),
  };
}

function cropOf(line: Fields): Crop | null {
  const name = line['crop'];
  if (name === undefined || name === null) return null;
  if (typeof name !== 'string') throw new BadLine('crop is a name, such as "dahlia"');
  return cropNamed(name);
}

function missing(what: string, line: Fields): never {
  const name = line['crop'];
  throw new BadLine(
    typeof name === 'string' ? `the crop table has no "${name}": give ${what}` : `give a crop, or ${what}`,
  );
}

/** A number of days, or the middle of a range of them, rounded up. */
function daysField(line: Fields, name: string): number | undefined {
  const value = line[name];
  if (value === undefined || value === null) return undefined;
  if (!Array.isArray(value)) return countField(line, name, { most: 1000 });
  const [low, high] = pairField(line, name, { ordered: true, such: '[21, 28]' })!;
  return Math.ceil((low + high) / 2);
}

function stockField(line: Fields, crop: Crop | null): Stock | undefined {
  const value = line['stock'];
  if (value === undefined || value === null) return undefined;
  if (typeof value !== 'object' || Array.isArray(value)) throw new BadLine('stock is {"shoots","everyDays"}');
  const stock = value as Fields;
  return {
    shoots: countField(stock, 'shoots', { least: 1, where: 'stock: ' }),
    everyDays:
      stock['everyDays'] === undefined
        ? (crop?.reshootDays ?? USUAL_RESHOOT_DAYS)
        : countField(stock, 'everyDays', { least: 1, most: 1000, where: 'stock: ' }),
  };
}
