/** Quantiles of Student's t, for predictions from few years or few batches. */
import { createRequire } from 'node:module';
import type tQuantile from '@stdlib/stats-base-dists-t-quantile';

const require = createRequire(import.meta.url);
/** Loaded when a frost is first foreseen: its functions take some megabytes. */
let quantile: typeof tQuantile | undefined;

/** t with P(T ≤ t) = p, `degreesOfFreedom` > 0; agrees with R's `qt` to 12 digits. */
export function studentQuantile(p: number, degreesOfFreedom: number): number {
  quantile ??= require('@stdlib/stats-base-dists-t-quantile') as typeof tQuantile;
  return quantile(p, degreesOfFreedom);
}

/**
 * The value that the next observation stays below with probability p, after n ≥ 2 observations with this mean and
 * standard deviation: `mean + sd·√(1 + 1/n)·t(p, degreesOfFreedom)`, the predictive distribution of a normal sample
 * (degrees of freedom n − 1 unless the sd was shrunk towards a prior one).
 */
export function predictiveQuantile(
  p: number,
  {
    mean,
    sd,
    n,
    degreesOfFreedom = n - 1,
  }: { mean: number; sd: number; n: number; degreesOfFreedom?: number },
): number {
  return mean + sd * Math.sqrt(1 + 1 / n) * studentQuantile(p, degreesOfFreedom);
}
