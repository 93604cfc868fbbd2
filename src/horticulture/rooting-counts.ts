/** How many of a live batch's open cuttings will have rooted by a day. */
import { binomial } from './binomial.js';
import { normalCdf } from './normal.js';
import { openRate } from './rooting-cells.js';
import type { RootingPosterior } from './rooting-posterior.js';

/** Rates are told apart to a two-hundredth. */
const RATE_STEPS = 200;

/** Chances that 0 … open cuttings root after the last check and by `day` (days as `posteriorOf` was given them). */
export function countsBy({ evidence, rates, cells }: RootingPosterior, day: number): Float64Array {
  const byRate = new Float64Array(RATE_STEPS + 1);
  for (const { logMedian, within, rootedByLook, weights } of cells) {
    const rooted = day <= 0 ? 0 : normalCdf((Math.log(day) - logMedian) / within);
    for (let i = 0; i < rates.length; i++)
      byRate[Math.round(openRate(rates[i]!, Math.max(rooted, rootedByLook), rootedByLook) * RATE_STEPS)]! +=
        weights[i]!;
  }
  const counts = new Float64Array(evidence.open + 1);
  for (const [step, weight] of byRate.entries()) {
    if (weight === 0) continue;
    const chances = binomial(evidence.open, step / RATE_STEPS);
    for (let k = 0; k <= evidence.open; k++) counts[k]! += weight * chances[k]!;
  }
  return counts;
}
