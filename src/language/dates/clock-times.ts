/** Hours of the clock: "half five", "18 o'clock", "5.30pm". */
import type { TimeOfDay } from '../../calendar/zone.js';
import type { DayPart } from './captures.js';
import type { Count } from './numbers.js';
import { rule } from './pattern.js';

export const pad = (number: number) => String(number).padStart(2, '0');

/** Bare hours from 1 to 6 are in the afternoon. */
export function bare(hour: number, minute: number): TimeOfDay | null {
  if (hour > 23 || minute > 59) return null;
  return `${pad(hour >= 1 && hour <= 6 ? hour + 12 : hour)}:${pad(minute)}`;
}

export function halfDay(hour: number, minute: number, half: 'am' | 'pm'): TimeOfDay | null {
  if (hour < 1 || hour > 12 || minute > 59) return null;
  return `${pad((hour % 12) + (half === 'pm' ? 12 : 0))}:${pad(minute)}`;
}

/** The hour that a clock shows in a part of the day: "7" in the evening is 19:00. */
export function inPart(time: TimeOfDay, part: DayPart): TimeOfDay {
  const hour = Number(time.slice(0, 2));
  const minute = time.slice(3);
  const twelve = hour % 12;
  if (part === 'morning') return `${pad(twelve)}:${minute}`;
  if (part === 'afternoon' || part === 'evening') return `${pad(twelve + 12)}:${minute}`;
  if (part === 'night') return `${pad(twelve >= 5 ? twelve + 12 : twelve)}:${minute}`;
  return time;
}

export const clockTimes = [
  rule('clock', '5.30pm', '<hour:int> :|. <minute:shortYear> <half=am|pm>', ({ hour, minute, half }) =>
    halfDay(hour, minute, half),
  ),
  rule('clock', '5pm', "<hour:int> o'clock? <half=am|pm>", ({ hour, half }) => halfDay(hour, 0, half)),
  rule('clock', '17:30', '<hour:int> : <minute:shortYear> hour?', ({ hour, minute }) => bare(hour, minute)),
  rule('clock', "six o'clock", "<hour:count> o'clock", ({ hour }) => bare(hour.number, 0)),
  rule('clock', 'half past five', 'half past? <hour:count>', ({ hour }) =>
    isHour(hour) ? bare(hour.number, 30) : null,
  ),
  rule('clock', 'quarter past five', 'a? quarter past|after <hour:count>', ({ hour }) =>
    isHour(hour) ? bare(hour.number, 15) : null,
  ),
  rule('clock', 'quarter to five', 'a? quarter to|before <hour:count>', ({ hour }) =>
    isHour(hour) ? before(hour.number, 15) : null,
  ),
  rule('clock', 'ten past five', '<minute:count> minute? past <hour:count>', ({ minute, hour }) =>
    isHour(hour) && minute.number < 30 ? bare(hour.number, minute.number) : null,
  ),
  rule('clock', 'ten to five', '<minute:count> minute? to <hour:count>', ({ minute, hour }) =>
    isHour(hour) && minute.number < 30 && minute.number % 5 === 0 ? before(hour.number, minute.number) : null,
  ),
  rule('clock', 'noon', 'noon', () => '12:00'),
  rule('clock', 'midnight', 'midnight', () => '00:00'),
];

/** "Five to a pot" is no time. */
const isHour = ({ number, article }: Count): boolean => number <= 12 && article !== true;

function before(hour: number, minutes: number): TimeOfDay | null {
  return bare(hour === 1 ? 12 : hour - 1, 60 - minutes);
}

/** An hour from 1 to 12 in a part of the day. */
export function partTime(hour: number, part: DayPart): TimeOfDay | null {
  return hour >= 1 && hour <= 12 ? inPart(`${pad(hour)}:00`, part) : null;
}
