/** Reading the records of a JSON line from which strike rate and survival are learnt. */
import { EASY_SOFTWOOD } from '../horticulture/rooting-prior.js';
import {
  learnRate,
  meanRate,
  nextBatchRate,
  USUAL_SURVIVAL,
  type RateBelief,
  type RateRecord,
} from '../horticulture/strike-rate.js';
import { BadLine } from './json-lines.js';
import { countField, listField, pairField, type Fields } from './line-fields.js';

/** A rate as learnt from a line's records. */
export interface LearntRate {
  readonly records: readonly RateRecord[];
  /** Of the grower's mean rate. */
  readonly belief: RateBelief;
  /** Of the next batch's own. */
  readonly next: RateBelief;
  readonly mean: number;
}

/** From `prior` and `records`; the prior of easy softwood, or of the crop, where the line gives none. */
export function strikeRateFields(
  line: Fields,
  unless: readonly [number, number] = EASY_SOFTWOOD,
): LearntRate {
  const [a, b] = pairField(line, 'prior', { ordered: false, such: '[6, 2]' }) ?? unless;
  return learntFrom({ a, b }, recordsOf(line, 'records', ['struck', 'rooted']));
}

/** From `survival`; undefined where the line has none: then all that root live. */
export function survivalFields(line: Fields): LearntRate | undefined {
  if (line['survival'] === undefined || line['survival'] === null) return undefined;
  return learntFrom(USUAL_SURVIVAL, recordsOf(line, 'survival', ['rooted', 'kept']));
}

function learntFrom(prior: RateBelief, records: readonly RateRecord[]): LearntRate {
  const belief = learnRate(prior, records);
  return { records, belief, next: nextBatchRate(belief), mean: meanRate(belief) };
}

function recordsOf(line: Fields, name: string, [of, came]: readonly [string, string]): RateRecord[] {
  return listField(line, name, `{"${of}","${came}"}`).map((each, i) => {
    const where = `${name} ${i + 1}: `;
    const tried = countField(each, of, { where });
    const succeeded = countField(each, came, { where });
    if (succeeded > tried)
      throw new BadLine(`${where}${came} ${succeeded} of ${of} ${tried}: the count cannot be more`);
    return { tried, succeeded };
  });
}
