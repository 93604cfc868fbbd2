/** Spreading a belief about a median over what single batches do: a normal kernel on an evenly spaced grid. */

/** Weights at distances 0, 1, 2 … steps either way; over both sides they sum to 1. */
export type Kernel = Float64Array;

const REACH_IN_SD = 4;

/** Of standard deviation `between` on a grid of `step`; just itself where it is far below a step. */
export function kernelFor(between: number, step: number): Kernel {
  const reach = Math.ceil((REACH_IN_SD * between) / step);
  if (between < step / 8) return Float64Array.of(1);
  const weights = Float64Array.from({ length: reach + 1 }, (_, i) =>
    Math.exp(-(((i * step) / between) ** 2) / 2),
  );
  const sum = weights.reduce((total, weight, i) => total + (i === 0 ? weight : 2 * weight), 0);
  return weights.map((weight) => weight / sum);
}

/** A stack of tables, each `rows` × `columns`, smoothed along its rows' axis; what lies beyond an edge is 0. */
export function smoothed(
  stack: Float64Array,
  kernel: Kernel,
  { rows, columns }: { readonly rows: number; readonly columns: number },
): Float64Array {
  if (kernel.length === 1) return stack;
  const result = new Float64Array(stack.length);
  const tables = stack.length / (rows * columns);
  for (let table = 0; table < tables; table++) {
    const start = table * rows * columns;
    for (let from = 0; from < rows; from++) {
      const source = start + from * columns;
      if (isZero(stack, source, columns)) continue;
      const first = Math.max(0, from - kernel.length + 1);
      const last = Math.min(rows - 1, from + kernel.length - 1);
      for (let to = first; to <= last; to++) {
        const weight = kernel[Math.abs(to - from)]!;
        const target = start + to * columns;
        for (let column = 0; column < columns; column++)
          result[target + column]! += weight * stack[source + column]!;
      }
    }
  }
  return result;
}

function isZero(stack: Float64Array, start: number, length: number): boolean {
  for (let i = start; i < start + length; i++) if (stack[i] !== 0) return false;
  return true;
}
