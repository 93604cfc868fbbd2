/** Distributions of a number of plants: chances of 0 … so many. */
import { chanceOfEnough } from '../horticulture/beta-binomial.js';
import type { RateBelief } from '../horticulture/strike-rate.js';

export function certainly(count: number): Float64Array {
  const chances = new Float64Array(count + 1);
  chances[count] = 1;
  return chances;
}

/** The distribution of the sum of two independent counts. */
export function together(a: Float64Array, b: Float64Array): Float64Array {
  const sum = new Float64Array(a.length + b.length - 1);
  for (let i = 0; i < a.length; i++) for (let j = 0; j < b.length; j++) sum[i + j]! += a[i]! * b[j]!;
  return sum;
}

/** Chance that of so many rooted at least `want` live until they are wanted. */
export function chanceKept(rooted: Float64Array, want: number, survival: RateBelief): number {
  if (want <= 0) return 1;
  const enough = chanceOfEnough(want, rooted.length - 1, survival);
  return rooted.reduce((sum, chance, number) => sum + chance * enough[number]!, 0);
}
