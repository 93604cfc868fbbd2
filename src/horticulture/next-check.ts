/** When to look next: late enough that there is something to see, early enough that a ready batch does not wait. */

/** Days of waiting that a look which finds nothing is worth. Judgement, not published. */
export const WASTED_LOOK_DAYS = 3;
/** Looking disturbs cuttings: at least so many days between two looks. Judgement, not published. */
export const LEAST_DAYS_BETWEEN_LOOKS = 2;

export interface LookQuestion {
  /** Chance that the batch is ready by a day after striking, given that it ever is. */
  readonly readyBy: (day: number) => number;
  readonly everChance: number;
  /** Day of the last look, 0 before the first. */
  readonly lookedOn: number;
  readonly earliest: number;
  /** Past this day `readyBy` counts as 1. */
  readonly latest: number;
}

/**
 * The whole day t ≥ `earliest` that minimises E[(t − T)⁺] + V·P(T > t), T the day on which a batch gets ready given that
 * it ever does, V the worth of a wasted look. A batch that may never get ready has more looks wasted on it than T tells,
 * so V is divided by √everChance: in simulation that saves a twelfth of the looks for two hours' more waiting (judgement).
 */
export function nextCheckDay({ readyBy, everChance, lookedOn, earliest, latest }: LookQuestion): number {
  const wasted = WASTED_LOOK_DAYS / Math.sqrt(everChance);
  let waited = 0;
  let before = readyBy(lookedOn);
  let best = Math.max(earliest, lookedOn);
  let leastCost = Infinity;
  for (let day = lookedOn + 1; day <= Math.max(latest, earliest) && waited <= leastCost; day++) {
    const now = readyBy(day);
    waited += (before + now) / 2;
    before = now;
    const cost = waited + wasted * (1 - now);
    if (day >= earliest && cost < leastCost) {
      leastCost = cost;
      best = day;
    }
  }
  return best;
}
