/** What a bench yields: a figure of ours beside a baseline measured in the same run. */

export interface Measurement {
  readonly name: string;
  /** Of both figures: `ms`, `per second`, `MB`. */
  readonly unit: string;
  readonly ours: number;
  readonly baseline: number;
  /** What the baseline is, in a few words. */
  readonly against: string;
  /** The bound that an issue of the project set, where there is one ("under 20 ms"). */
  readonly aim?: string;
}

/** One file of this folder measures one thing. */
export type Bench = () => Promise<readonly Measurement[]>;

/** Middle value of several runs' durations in milliseconds. */
export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = Math.floor(sorted.length / 2);
  const upper = sorted[middle] ?? Number.NaN;
  return sorted.length % 2 === 1 ? upper : ((sorted[middle - 1] ?? Number.NaN) + upper) / 2;
}

/** Durations in milliseconds of `runs` calls, after a tenth as many to warm up. */
export function timeEach(runs: number, call: (run: number) => void): number[] {
  for (let run = 0; run < Math.ceil(runs / 10); run++) call(run);
  return Array.from({ length: runs }, (_, run) => {
    const start = performance.now();
    call(run);
    return performance.now() - start;
  });
}
