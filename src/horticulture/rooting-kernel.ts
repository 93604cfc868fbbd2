/** Spreading a belief about a median over what single batches do: a normal kernel on an evenly spaced grid. */

/** Weights at distances 0, 1, 2 … steps either way; over both sides they sum to 1. */
export type Kernel = Float64Array;

/** A stack of tables of so many rows and columns, the columns varying fastest. */
export interface StackShape {
  readonly rows: number;
  readonly columns: number;
}

const REACH_IN_SD = 3.7;

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

/**
 * A stack smoothed along its rows; what lies beyond an edge is 0. Rows of zeros cost nothing, and where `wanted` says
 * which rows (of all tables in turn) are of use, the others stay 0.
 */
export function smoothed(
  stack: Float64Array,
  kernel: Kernel,
  { rows, columns }: StackShape,
  wanted?: Uint8Array,
): Float64Array {
  const result = new Float64Array(stack.length);
  const filled = filledRows(stack, columns);
  for (let row = 0; row < filled.length; row++) {
    if (filled[row] === 0) continue;
    const first = row - Math.min(row % rows, kernel.length - 1);
    const last = row + Math.min(rows - 1 - (row % rows), kernel.length - 1);
    for (let to = first; to <= last; to++)
      if (wanted === undefined || wanted[to] === 1)
        addRow(result, to * columns, stack, row * columns, columns, kernel[Math.abs(to - row)]!);
  }
  return result;
}

/** 1 for each row that holds anything. */
export function filledRows(stack: Float64Array, columns: number): Uint8Array {
  const filled = new Uint8Array(stack.length / columns);
  for (let row = 0; row < filled.length; row++)
    for (let at = row * columns; at < (row + 1) * columns; at++)
      if (stack[at] !== 0) {
        filled[row] = 1;
        break;
      }
  return filled;
}

function addRow(
  target: Float64Array,
  to: number,
  source: Float64Array,
  from: number,
  columns: number,
  weight: number,
): void {
  for (let column = 0; column < columns; column++) target[to + column]! += weight * source[from + column]!;
}
