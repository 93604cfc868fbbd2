/**
 * Learns from notes whose kinds are known how much each trait speaks for each kind: a logistic regression per kind, its
 * steps by AdaGrad (Duchi, Hazan and Singer 2011, Journal of Machine Learning Research 12, algorithm 1 in its diagonal form).
 */

/** A note for learning: what is weighed of it, and the kinds that it tells. */
export interface Example {
  readonly traits: ReadonlySet<string>;
  readonly kinds: ReadonlySet<string>;
  /** The only kind of which it is known whether the note tells it; absent: of all. */
  readonly only?: string;
}

/** Weights of each trait in halves, a number a kind, in the order of the kinds. */
export interface Learnt {
  readonly kinds: readonly string[];
  readonly bias: readonly number[];
  readonly weights: ReadonlyMap<string, readonly number[]>;
}

/** Judgement: chosen by notes held back from learning; around these values little changes. */
const ROUNDS = 12;
const STEP = 0.5;
const SHRINK = 1e-5;
/** A trait of a single note says more of that note than of its kind. */
const LEAST_NOTES = 2;
/** Weights are kept in steps of one in so many: finer ones change no reading. */
export const STEPS = 2;

/** The same examples in the same order always give the same weights. */
export function learn(examples: readonly Example[]): Learnt {
  const traits = oftenSeen(examples);
  const index = new Map(traits.map((trait, at) => [trait, at]));
  const rows = examples.map(({ traits, ...known }) => ({
    ...known,
    row: [...traits].map((trait) => index.get(trait)).filter((at) => at !== undefined),
  }));
  const kinds = [...new Set(examples.flatMap(({ kinds }) => [...kinds]))].sort();
  const learnt = kinds.map((kind) => {
    const known = rows.filter(({ only }) => only === undefined || only === kind);
    const told = known.map(({ kinds }) => kinds.has(kind));
    return regress(
      known.map(({ row }) => row),
      told,
      traits.length,
    );
  });
  const inSteps = (at: number): readonly number[] =>
    learnt.map((each) => Math.round(STEPS * (each[at] ?? 0)));
  const weights = new Map(traits.map((trait, at) => [trait, inSteps(at)]));
  return { kinds, bias: inSteps(traits.length), weights };
}

function oftenSeen(examples: readonly Example[]): readonly string[] {
  const notes = new Map<string, number>();
  for (const { traits } of examples)
    for (const trait of traits) notes.set(trait, (notes.get(trait) ?? 0) + 1);
  return [...notes].flatMap(([trait, count]) => (count < LEAST_NOTES ? [] : [trait])).sort();
}

/** One weight a trait, and behind them the bias. */
function regress(
  rows: readonly (readonly number[])[],
  told: readonly boolean[],
  traits: number,
): Float64Array {
  const weights = new Float64Array(traits + 1);
  const squares = new Float64Array(traits + 1).fill(1e-6);
  const descend = (at: number, gradient: number): void => {
    squares[at] = (squares[at] ?? 0) + gradient * gradient;
    weights[at] = (weights[at] ?? 0) - (STEP * gradient) / Math.sqrt(squares[at]);
  };
  const order = rows.map((_, at) => at);
  const draw = drawer();
  for (let round = 0; round < ROUNDS; round++) {
    shuffle(order, draw);
    for (const at of order) {
      const row = rows[at] ?? [];
      const share = shareOf(row.length);
      const sum = row.reduce((sum, trait) => sum + (weights[trait] ?? 0) * share, weights[traits] ?? 0);
      const error = chance(sum) - (told[at] ? 1 : 0);
      for (const trait of row) descend(trait, error * share + SHRINK * (weights[trait] ?? 0));
      descend(traits, error);
    }
  }
  return weights;
}

/** What each of so many traits counts: long notes are no surer than short ones. */
export const shareOf = (traits: number): number => 1 / Math.sqrt(traits + 1);

/** The logistic function: a sum of weights as a chance between 0 and 1. */
export const chance = (sum: number): number => 1 / (1 + Math.exp(-sum));

/** Fisher and Yates. */
function shuffle(order: number[], draw: (below: number) => number): void {
  for (let at = order.length - 1; at > 0; at--) {
    const other = draw(at + 1);
    [order[at], order[other]] = [order[other] ?? 0, order[at] ?? 0];
  }
}

/** Whole numbers from 0, always the same row of them (linear congruential, constants of POSIX's example `rand`). */
function drawer(): (below: number) => number {
  let state = 1;
  return (below) => {
    state = (Math.imul(state, 1103515245) + 12345) & 0x7fffffff;
    return state % below;
  };
}
