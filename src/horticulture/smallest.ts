/** Finding the smallest whole number for which a condition holds. */

/** The smallest whole number in low … high for which a condition, false and then true, holds; null where none does. */
export function smallest(low: number, high: number, holds: (n: number) => boolean): number | null {
  // Doubling first: answers are small as a rule, and the condition costs more for large numbers.
  let from = low;
  let to = low;
  while (!holds(to)) {
    if (to >= high) return null;
    from = to + 1;
    to = Math.min(high, 2 * to + 1);
  }
  while (from < to) {
    const middle = Math.floor((from + to) / 2);
    if (holds(middle)) to = middle;
    else from = middle + 1;
  }
  return to;
}
