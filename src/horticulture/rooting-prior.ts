/** What is believed of a crop's rooting before the grower's own batches say more. */

/** A belief about a number on a log scale; `sd` 0 means that it is known. */
export interface LogBelief {
  readonly mean: number;
  readonly sd: number;
}

/**
 * Time to root is lognormal within a batch: `log days ~ N(μ_b, σ)`; a grower's batches differ: `μ_b ~ N(μ_g, τ)`; a
 * batch's strike rate is `p_b ~ Beta(s·m, s(1−m))`.
 */
export interface RootingPrior {
  /** Of μ_g, the log of the grower's median days; `t4` keeps the bell's middle and fattens its tails. */
  readonly logMedian: LogBelief & { readonly tails: 'normal' | 't4' };
  /** Of log σ, the spread among cuttings of one batch. */
  readonly logWithin: LogBelief;
  /** Of log τ, the spread among batches; a mean of −Infinity means none. */
  readonly logBetween: LogBelief;
  /** Beta(a, b) of m, the grower's mean strike rate. */
  readonly strikeRate: readonly [a: number, b: number];
  /** s: how alike the strike rates of batches are; Infinity means the same. */
  readonly rateConcentration: number;
}

/** A published range of days to root, read as the central 80 % of batches. */
export type DaysRange = readonly [lo: number, hi: number];

/** Strike rate of easy softwood; harder crops have their own in the crop table. Judgement, not published. */
export const EASY_SOFTWOOD: readonly [number, number] = [6, 2];

/** s of the model. Judgement, not published. */
export const RATE_CONCENTRATION = 20;

/** Width of the central 80 % of a normal distribution in standard deviations, 2 × 1.2816. */
const CENTRAL_80_WIDTH = 2.563;
/** Spread between one grower's batches that a published range already contains. Judgement. */
const BETWEEN_BATCHES = 0.13;
/** However narrow the published range, a grower's own median may differ by this much on the log scale. Judgement. */
const LEAST_SD = 0.15;

/** The prior that a published range and a strike-rate prior stand for. The range must be positive, lo ≤ hi. */
export function priorFromRange(
  [lo, hi]: DaysRange,
  strikeRate: readonly [number, number] = EASY_SOFTWOOD,
): RootingPrior {
  const rangeVariance = (Math.log(hi / lo) / CENTRAL_80_WIDTH) ** 2 - BETWEEN_BATCHES ** 2;
  return {
    logMedian: {
      mean: Math.log(Math.sqrt(lo * hi)),
      sd: Math.sqrt(Math.max(LEAST_SD ** 2, rangeVariance)),
      tails: 't4',
    },
    logWithin: { mean: Math.log(0.22), sd: 0.35 },
    logBetween: { mean: Math.log(BETWEEN_BATCHES), sd: 0.5 },
    strikeRate,
    rateConcentration: RATE_CONCENTRATION,
  };
}
