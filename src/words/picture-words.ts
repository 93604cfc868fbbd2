/** The words on pictures and in their captions. */
import { type Day, dayOfMonth, month } from '../calendar/day.js';

const months = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];

/** "3 May", the year left out. */
export function shortDay(day: Day): string {
  return `${dayOfMonth(day)} ${monthWord(day)}`;
}

export function monthWord(day: Day): string {
  return months[month(day) - 1] ?? '';
}

export const stageWords = {
  rooting: 'rooting',
  rooted: 'rooted',
  pottedOn: 'potted on',
  hardening: 'hardening off',
  plantedOut: 'planted out',
} as const;

export const pictureWords = {
  season: 'The bench this season',
  today: 'today',
  frost: 'chance of frost still to come',
  plantOut: (day: Day) => `tender plants out from ${shortDay(day)} (risk 1 in 10)`,
  expected: 'roots expected',
  pinched: 'pinched',
  thinned: 'some lost or given away',
  living: (alive: number, count: number) => (alive === count ? `${count}` : `${alive} of ${count}`),
  target: (name: string, wanted: number, by: Day | null, chance: number | null) =>
    `${wanted} ${name} wanted${by === null ? '' : ` by ${shortDay(by)}`}${chance === null ? '' : `: ${chanceWords(chance)}`}`,
  chanceReady: 'chance that enough have rooted',
  shareRooted: 'rooted at a check',
  checked: (rooted: number, count: number) => `${rooted} of ${count}`,
  struckOn: (count: number, day: Day) =>
    `${count} struck on ${shortDay(day)}; shaded: when roots are expected`,
  dayNumber: (days: number) => (days === 0 ? 'struck' : `day ${days}`),
  review: (year: number) => `What rooted in ${year}`,
  reviewKey: 'dot: the rate to expect; bar: where it lies, 4 times in 5',
  reviewRow: (name: string, rooted: number, struck: number, batches: number) =>
    `${name}: ${rooted} of ${struck}, ${batches === 1 ? '1 batch' : `${batches} batches`}`,
  nothingToReview: 'No batch of that year has been checked for roots yet.',
  nothingYet: 'No batches yet. Note some cuttings and draw it again.',
  other: 'others',
} as const;

/** A chance in words that do not pretend to more than it is. */
export function chanceWords(chance: number): string {
  if (chance >= 0.95) return 'as good as sure';
  if (chance >= 0.8) return `likely (${percent(chance)})`;
  if (chance >= 0.35) return `in the balance (${percent(chance)})`;
  if (chance >= 0.05) return `unlikely (${percent(chance)})`;
  return 'out of reach as things stand';
}

export function percent(share: number): string {
  return `${Math.round(share * 100)} %`;
}
