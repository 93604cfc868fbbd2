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
  const logChoose = logChooseOf(trials, need);
  return tabled(trials, (rate) => chanceOfAtLeast(need, trials, rate, logChoose));
}

/** The tabled chance at `rate` in 0 … 1. */
export function chanceAt({ steps, chances }: TabledChance, rate: number): number {
  const at = rate * steps;
  const step = Math.floor(at);
  const below = chances[step]!;
  return below + (at - step) * (chances[step + 1]! - below);
}

/** P(Bin(trials, rate) ≥ need), summed from the smaller side. */
export function chanceOfAtLeast(
  need: number,
  trials: number,
  rate: number,
  logChoose = logChooseOf(trials, need),
): number {
  if (need <= 0) return 1;
  if (need > trials || rate <= 0) return 0;
  if (rate >= 1) return 1;
  const logTerm = logChoose + need * Math.log(rate) + (trials - need) * Math.log1p(-rate);
  if (need > trials * rate) return Math.min(1, fallingSum(Math.exp(logTerm), need, trials, rate));
  // The term of need itself belongs above; what lies below falls the other way.
  const below = Math.exp(logTerm) * (need / (trials - need + 1)) * ((1 - rate) / rate);
  return Math.max(0, 1 - fallingSum(below, trials - need + 1, trials, 1 - rate));
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

/** Σ of the terms from k = `from` up, the first of them `term`, where they fall: stopped when they no longer count. */
function fallingSum(term: number, from: number, trials: number, rate: number): number {
  const odds = rate / (1 - rate);
  let sum = 0;
  for (let k = from; k <= trials && term > sum * 1e-17; k++) {
    sum += term;
    term *= ((trials - k) / (k + 1)) * odds;
  }
  return sum;
}

/** log C(n, k). */
function logChooseOf(n: number, k: number): number {
  let log = 0;
  for (let i = 1; i <= Math.min(k, n - k); i++) log += Math.log((n - i + 1) / i);
  return log;
}
