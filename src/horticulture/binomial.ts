/** Binomial chances, tabled over the rate where a forecast asks for them at many rates. */

/** A chance as a function of a rate between 0 and 1, linear between tabled rates. */
export interface TabledChance {
  readonly steps: number;
  /** `steps` + 2 values for rates 0 … 1, the last doubled. */
  readonly chances: Float64Array;
}

/** Tables a chance that depends on how many of `trials` succeed; within 1e-4 between the nodes. */
export function tabled(trials: number, chance: (rate: number) => number): TabledChance {
  const steps = 512 * Math.max(1, Math.ceil(Math.sqrt(trials / 50)));
  const chances = Float64Array.from({ length: steps + 2 }, (_, i) => chance(Math.min(1, i / steps)));
  return { steps, chances };
}

/** Tables P(Bin(trials, rate) ≥ need). */
export function atLeast(need: number, trials: number): TabledChance {
  return tabled(trials, (rate) => chanceOfAtLeast(need, trials, rate));
}

/** The tabled chance at `rate` in 0 … 1. */
export function chanceAt({ steps, chances }: TabledChance, rate: number): number {
  const at = rate * steps;
  const step = Math.floor(at);
  const below = chances[step]!;
  return below + (at - step) * (chances[step + 1]! - below);
}

/** P(Bin(trials, rate) ≥ need), summed from the smaller side. */
export function chanceOfAtLeast(need: number, trials: number, rate: number): number {
  if (need <= 0) return 1;
  if (need > trials || rate <= 0) return 0;
  if (rate >= 1) return 1;
  if (need > trials * rate) return upperSum(need, trials, rate);
  return 1 - upperSum(trials - need + 1, trials, 1 - rate);
}

/** Chances of 0 … trials successes. */
export function binomial(trials: number, rate: number): Float64Array {
  const chances = new Float64Array(trials + 1);
  if (rate <= 0 || rate >= 1) {
    chances[rate <= 0 ? 0 : trials] = 1;
    return chances;
  }
  const logOdds = Math.log(rate) - Math.log1p(-rate);
  let log = trials * Math.log1p(-rate);
  for (let k = 0; k <= trials; k++) {
    chances[k] = Math.exp(log);
    log += Math.log((trials - k) / (k + 1)) + logOdds;
  }
  return chances;
}

/** Σ of the terms from `need` up, for a need above the mean: they fall, so the sum stops when they no longer count. */
function upperSum(need: number, trials: number, rate: number): number {
  let logTerm = need * Math.log(rate) + (trials - need) * Math.log1p(-rate);
  const fewer = Math.min(need, trials - need);
  for (let i = 1; i <= fewer; i++) logTerm += Math.log((trials - fewer + i) / i);
  let term = Math.exp(logTerm);
  let sum = 0;
  const odds = rate / (1 - rate);
  for (let k = need; k <= trials; k++) {
    sum += term;
    term *= ((trials - k) / (k + 1)) * odds;
    if (term < sum * 1e-17) break;
  }
  return Math.min(1, sum);
}
