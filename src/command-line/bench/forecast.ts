/** Speed of the rooting forecast, beside a plain pass over a grid of the same size. */
import { forecast as forecastBatch } from '../../horticulture/rooting-forecast.js';
import { learn } from '../../horticulture/rooting-learning.js';
import { priorFromRange } from '../../horticulture/rooting-prior.js';
import type { RootingRecord } from '../../horticulture/rooting-record.js';
import { type Bench, median, timeEach } from './measurement.js';

const earlier: readonly RootingRecord[] = Array.from({ length: 10 }, (_, i) => ({
  struck: 8 + (i % 5),
  checks: [
    { day: 12 + (i % 3), rooted: 1 + (i % 2) },
    { day: 16 + (i % 3), rooted: 5 + (i % 2) },
    { day: 26, rooted: 7 },
  ],
}));
const live: RootingRecord = { struck: 12, checks: [{ day: 14, rooted: 2 }] };
const RUNS = 20;

/** One forecast after ten earlier batches, warm, and what learning takes for each of those. */
export const forecast: Bench = async () => {
  const prior = priorFromRange([10, 21]);
  const learnt = learn(prior, earlier);
  const exponentials = median(timeEach(RUNS, () => void passOverGrid()));
  const against = 'an exponential at each of 81 × 17 × 20 points';
  return [
    {
      name: 'one forecast',
      unit: 'ms',
      ours: median(timeEach(RUNS, () => void forecastBatch(learnt, { batch: live, today: 14 }))),
      baseline: exponentials,
      against,
      aim: 'under 20 ms',
    },
    {
      name: 'learning, a batch with open cuttings',
      unit: 'ms',
      ours: median(timeEach(RUNS, () => void learn(prior, earlier))) / earlier.length,
      baseline: exponentials,
      against,
      aim: 'under 10 ms',
    },
    {
      name: 'learning, a batch that was cleared out',
      unit: 'ms',
      ours:
        median(
          timeEach(
            RUNS,
            () =>
              void learn(
                prior,
                earlier.map((batch) => ({ ...batch, final: true })),
              ),
          ),
        ) / earlier.length,
      baseline: exponentials,
      against,
      aim: 'under 10 ms',
    },
  ];
};

function passOverGrid(): number {
  let sum = 0;
  for (let i = 0; i < 81 * 17 * 20; i++) sum += Math.exp(-i / 30000);
  return sum;
}
