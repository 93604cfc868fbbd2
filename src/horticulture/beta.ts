/** The beta function and the density that strike rates follow. */
import { createRequire } from 'node:module';
import type betaln from '@stdlib/math-base-special-betaln';

const require = createRequire(import.meta.url);
/** Loaded when first wanted: it is many small files. */
let logOfBeta: typeof betaln | undefined;

/** log B(a, b), a and b > 0. */
export function logBeta(a: number, b: number): number {
  logOfBeta ??= require('@stdlib/math-base-special-betaln') as typeof betaln;
  return logOfBeta(a, b);
}

/** Density of Beta(a, b) at 0 < p < 1. */
export function betaDensity(p: number, a: number, b: number): number {
  return Math.exp((a - 1) * Math.log(p) + (b - 1) * Math.log1p(-p) - logBeta(a, b));
}
