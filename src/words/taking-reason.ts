/** Why so many cuttings, in a sentence. */
import type { Take } from '../horticulture/cuttings-to-take.js';
import type { RateRecord } from '../horticulture/strike-rate.js';
import { percent } from './rooting-reason.js';

export interface TakingBasis {
  readonly want: number;
  /** The share expected to root, after the records. */
  readonly meanRate: number;
  readonly records: readonly RateRecord[];
  /** The share of the rooted expected to live, where it was counted in. */
  readonly meanSurvival?: number;
}

/** "Take 13 for 6 plants (91% sure): 20 of 30 rooted in 3 earlier batches." */
export function takingReason({ take, p }: Take, basis: TakingBasis): string {
  if (basis.want === 0) return 'None wanted, none to take.';
  const plants = basis.want === 1 ? '1 plant' : `${basis.want} plants`;
  const losses =
    basis.meanSurvival === undefined ? '' : `, and some ${percent(basis.meanSurvival)} of the rooted to live`;
  return `Take ${take} for ${plants} (${percent(p)} sure): ${rateWords(basis)}${losses}.`;
}

/** What the strike rate rests on: "20 of 30 rooted in 3 earlier batches", or that it is a starting guess. */
export function rateWords({ records, meanRate }: Pick<TakingBasis, 'records' | 'meanRate'>): string {
  if (records.length === 0)
    return `a starting guess that some ${percent(meanRate)} root, until there are records`;
  const struck = records.reduce((sum, { tried }) => sum + tried, 0);
  const rooted = records.reduce((sum, { succeeded }) => sum + succeeded, 0);
  const batches = records.length === 1 ? 'one earlier batch' : `${records.length} earlier batches`;
  return `${rooted} of ${struck} rooted in ${batches}, so some ${percent(meanRate)} are expected to`;
}
