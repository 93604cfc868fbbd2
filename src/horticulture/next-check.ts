/** When to look next: late enough that there is something to see, early enough that a ready batch does not wait. */

/** Days of waiting that a look which finds nothing is worth. Judgement, not published. */
export const WASTED_LOOK_DAYS = 3;
/** Looking disturbs cuttings: at least so many days between two looks. Judgement, not published. */
export const LEAST_DAYS_BETWEEN_LOOKS = 2;

/**
 * The whole day t ≥ `earliest` that minimises E[(t − T)⁺] + V·P(T > t), T the day on which a batch gets ready given that
 * it ever does, V the worth of a wasted look. `readyBy(t)` is T's distribution function; past `latest` it counts as 1.
 */
export function nextCheckDay(
  readyBy: (day: number) => number,
  { from, earliest, latest }: { readonly from: number; readonly earliest: number; readonly latest: number },
): number {
  let waited = 0;
  let before = readyBy(from);
  let best = Math.max(earliest, from);
  let leastCost = Infinity;
  for (let day = from + 1; day <= Math.max(latest, earliest); day++) {
    const now = readyBy(day);
    waited += (before + now) / 2;
    before = now;
    if (day < earliest) continue;
    const cost = waited + WASTED_LOOK_DAYS * (1 - now);
    if (cost < leastCost) {
      leastCost = cost;
      best = day;
    }
    if (waited > leastCost) break;
  }
  return best;
}
