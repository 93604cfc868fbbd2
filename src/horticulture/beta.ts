/** The beta function and the density that strike rates follow. */
import betaln from '@stdlib/math-base-special-betaln';

/** log B(a, b), a and b > 0. */
export function logBeta(a: number, b: number): number {
  return betaln(a, b);
}

/** Density of Beta(a, b) at 0 < p < 1. */
export function betaDensity(p: number, a: number, b: number): number {
  return Math.exp((a - 1) * Math.log(p) + (b - 1) * Math.log1p(-p) - logBeta(a, b));
}
