/** Thermal days: a day counts for more in the warm and for less in the cold. */

/** Below about this mean temperature (°C) cuttings of temperate plants hardly root. Judgement; a wrong base hardly matters. */
export const BASE_CELSIUS = 8;
/** Reference (°C) where the crop table states no rooting temperatures: the middle of the usual 18–22. Common practice. */
export const USUAL_CELSIUS = 20;

/** Turns days after striking into thermal days and back. */
export interface RootingClock {
  /** Thermal days after so many days, linear within a day. */
  thermal(day: number): number;
  /** The day on which so many thermal days have passed. */
  day(thermal: number): number;
}

/** A day is a day: where temperatures are not known. */
export const plainClock: RootingClock = { thermal: (day) => day, day: (thermal) => thermal };

/** Growth of one day of mean temperature `mean` °C, in days at the reference: max(0, mean − base) / (reference − base). */
export function thermalDay(mean: number, reference: number, base = BASE_CELSIUS): number {
  return Math.max(0, mean - base) / (reference - base);
}

/**
 * The first day, counted from 1, on which the running sum of `daily` reaches `target`; null where it never does.
 */
export function firstDayReaching(daily: readonly number[], target: number): number | null {
  let sum = 0;
  for (const [i, units] of daily.entries()) {
    sum += units;
    if (sum >= target) return i + 1;
  }
  return null;
}

/**
 * Clock from daily means (°C) by day after striking (the day after is 1). Days not given take the mean of those given
 * before growth is worked out. `reference` is the middle of the temperatures for which the crop's range was published.
 * Where even the mean lies at or below the base the clock runs at a hundredth of its pace, so that it never stops.
 */
export function clockFrom(means: ReadonlyMap<number, number>, reference: number): RootingClock {
  if (means.size === 0) return plainClock;
  const usual = [...means.values()].reduce((sum, mean) => sum + mean, 0) / means.size;
  const usualPace = Math.max(0.01, thermalDay(usual, reference));
  const lastGiven = Math.max(0, ...means.keys());
  const sums = [0];
  for (let day = 1; day <= lastGiven; day++)
    sums.push(sums[day - 1]! + thermalDay(means.get(day) ?? usual, reference));
  const end = sums[lastGiven]!;
  return {
    thermal(day) {
      if (day >= lastGiven) return end + (day - lastGiven) * usualPace;
      const whole = Math.floor(day);
      return sums[whole]! + (day - whole) * (sums[whole + 1]! - sums[whole]!);
    },
    day(thermal) {
      if (thermal >= end) return lastGiven + (thermal - end) / usualPace;
      const next = sums.findIndex((sum) => sum > thermal);
      return next - 1 + (thermal - sums[next - 1]!) / (sums[next]! - sums[next - 1]!);
    },
  };
}
