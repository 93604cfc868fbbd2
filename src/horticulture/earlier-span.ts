/** What a grower's earlier batches took, in the plain figures of a sentence. */
import { halfOf } from './rooting-record.js';
import type { RootingRecord } from './rooting-record.js';

/** `within` of `batches` earlier ones had half their cuttings rooted between day `from` and day `to`. */
export interface EarlierSpan {
  readonly batches: number;
  readonly within: number;
  readonly from: number;
  readonly to: number;
}

/**
 * The span of days after striking in which most earlier batches got ready, each taken in the middle between the look that
 * found it not ready and the one that did; from seven batches on the odd one at either end is left out. Null where none
 * got ready.
 */
export function earlierSpan(history: readonly RootingRecord[]): EarlierSpan | null {
  const days = history.flatMap(readyDay).sort((a, b) => a - b);
  const odd = Math.floor((days.length + 1) / 8);
  const usual = days.slice(odd, days.length - odd);
  const [from] = usual;
  const to = usual.at(-1);
  return from === undefined || to === undefined
    ? null
    : { batches: history.length, within: usual.length, from, to };
}

function readyDay({ struck, checks }: RootingRecord): number[] {
  const found = checks.findIndex(({ rooted }) => rooted >= halfOf(struck));
  return found < 0
    ? []
    : [Math.round(((checks[found - 1]?.day ?? checks[found]!.day) + checks[found]!.day) / 2)];
}
