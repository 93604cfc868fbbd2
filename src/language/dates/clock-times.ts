/** Hours of the clock and parts of the day: "at half five", "18 o'clock", "this morning", "last night". */
import type { TimeOfDay } from '../../calendar/zone.js';
import { ambiguous, daysFromToday, fixed, unsure, type When, when } from './meaning.js';
import { type DayPart, rule } from './pattern.js';
import { addDays } from '../../calendar/day.js';

const pad = (number: number) => String(number).padStart(2, '0');

/** Bare hours from 1 to 6 are in the afternoon. */
function bare(hour: number, minute: number): TimeOfDay | null {
  if (hour > 23 || minute > 59) return null;
  return `${pad(hour >= 1 && hour <= 6 ? hour + 12 : hour)}:${pad(minute)}`;
}

function halfDay(hour: number, minute: number, half: 'am' | 'pm'): TimeOfDay | null {
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
    hour.number <= 12 ? bare(hour.number, 30) : null,
  ),
  rule('clock', 'quarter past five', 'a? quarter past|after <hour:count>', ({ hour }) =>
    hour.number <= 12 ? bare(hour.number, 15) : null,
  ),
  rule('clock', 'quarter to five', 'a? quarter to|before <hour:count>', ({ hour }) =>
    hour.number <= 12 ? before(hour.number, 15) : null,
  ),
  rule('clock', 'ten past five', '<minute:count> minute? past <hour:count>', ({ minute, hour }) =>
    hour.number <= 12 && minute.number < 30 ? bare(hour.number, minute.number) : null,
  ),
  rule('clock', 'ten to five', '<minute:count> minute? to <hour:count>', ({ minute, hour }) =>
    hour.number <= 12 && minute.number < 30 && minute.number % 5 === 0
      ? before(hour.number, minute.number)
      : null,
  ),
  rule('clock', 'noon', 'noon', () => '12:00'),
  rule('clock', 'midnight', 'midnight', () => '00:00'),
];

function before(hour: number, minutes: number): TimeOfDay | null {
  return bare(hour === 1 ? 12 : hour - 1, 60 - minutes);
}

const today = daysFromToday(0);

/** A time alone: of things done today; of plans today, or tomorrow once it has gone by. */
function timeAlone(time: TimeOfDay): When {
  return {
    ...when((leaning, now) => ({
      date: leaning === 'future' && time <= now.timeNow ? addDays(now.today, 1) : now.today,
    })),
    time,
  };
}

/** A day with a time said beside it. */
function at(day: When, time: TimeOfDay): When {
  return { ...day, time, certain: true };
}

export const dayParts = [
  rule('day', 'this morning', 'earlier|early|late? this <part>', () => today),
  rule('day', 'first thing this morning', 'first|last thing this <part>', () => today),
  rule('day', 'last night', 'last|previous <part=night|evening>', () => daysFromToday(-1)),
  rule('day', 'late last night', 'late|early last night', () => daysFromToday(-1)),
  rule('day', 'the night before last', 'the? night before last', () => daysFromToday(-2)),
  rule('day', 'tomorrow night', 'next night', () => daysFromToday(1)),
  rule('day', 'in the morning', 'in the morning', () =>
    unsure(
      when((leaning, now) => ({
        date: leaning === 'past' ? now.today : addDays(now.today, now.timeNow < '04:00' ? 0 : 1),
      })),
    ),
  ),
  rule('day', 'in the afternoon', 'in|on the <part=afternoon|evening>', () => unsure(today)),
  rule('day', 'the other morning', 'the other <part>', () => fixed(() => ambiguous)),
];

export const daysWithTimes = [
  rule('when', '', '<day>', ({ day }) => day),
  rule('when', '', '<span>', ({ span }) => span),
  rule(
    'when',
    'Tuesday morning',
    '<day> ,? early|late|mid|first? thing? in? the? early|late|mid? <part>',
    ({ day }) => ({ ...day, certain: true }),
  ),
  rule('when', 'Tuesday first thing', '<day> ,? first|last thing', ({ day }) => day),
  rule('when', 'first thing Tuesday', 'first|last thing on? <day>', ({ day }) => day),
  rule('when', 'morning of Tuesday', 'on? in? the? early|late|mid? <part> ,? of|on? <day>', ({ day }) => ({
    ...day,
    certain: true,
  })),
  rule('when', 'Tuesday at 5', '<day> ,? at|around|@ around? <hour:int>', ({ day, hour }) =>
    hour <= 23 ? timed(day, bare(hour, 0)) : null,
  ),
  rule('when', 'Tuesday at five', '<day> ,? at around? <hour:count>', ({ day, hour }) =>
    hour.number >= 1 && hour.number <= 12 ? timed(day, bare(hour.number, 0)) : null,
  ),
  rule('when', 'Tuesday at half five', '<day> ,? at|around|by|@? around? <clock>', ({ day, clock }) =>
    at(day, clock),
  ),
  rule(
    'when',
    'Tuesday at 7.30',
    '<day> ,? at|around|by|@ around? <hour:int> . <minute:shortYear>',
    ({ day, hour, minute }) => timed(day, bare(hour, minute)),
  ),
  rule(
    'when',
    'at 7.30 on Tuesday',
    'at|around|@ around? <hour:int> . <minute:shortYear> on? <day>',
    ({ day, hour, minute }) => timed(day, bare(hour, minute)),
  ),
  rule('when', 'early Tuesday', 'early|late doors? on? <day>', ({ day }) => ({ ...day, certain: true })),
  rule('when', 'later tonight', 'later|early tonight', () => today),
  rule(
    'when',
    "7 o'clock tomorrow morning",
    'at|around? <clock> ,? on? <day> <part>',
    ({ day, part, clock }) => at(day, inPart(clock, part)),
  ),
  rule('when', 'Tuesday evening at 7', '<day> <part> ,? at|around|@? <clock>', ({ day, part, clock }) =>
    at(day, inPart(clock, part)),
  ),
  rule(
    'when',
    'Tuesday evening at seven',
    '<day> <part>? at|around|@ <hour:count> in? the? <late:part>?',
    ({ day, part, hour, late }) => {
      const time = bare(hour.number, 0);
      return time === null ? null : at(day, (part ?? late) ? inPart(time, part ?? late ?? 'morning') : time);
    },
  ),
  rule('when', 'at half five on Tuesday', 'at|around|@? around? <clock> ,? on? <day>', ({ day, clock }) =>
    at(day, clock),
  ),
  rule(
    'when',
    '7 in the evening on Tuesday',
    'at|around|@? <hour:count> in the <part> ,? on? <day>',
    ({ day, part, hour }) => timed(day, partTime(hour.number, part)),
  ),
  rule('when', 'at 5 on Tuesday', 'at|around|@ around? <hour:count> on <day>', ({ day, hour }) =>
    timed(day, bare(hour.number, 0)),
  ),
  rule('when', 'at 8 tomorrow', 'at|around|@ around? <hour:count> tomorrow <part>?', ({ hour, part }) =>
    timed(daysFromToday(1), part ? partTime(hour.number, part) : bare(hour.number, 0)),
  ),
  rule('phrase', 'at half five', 'at|around|by|@ around? <clock>', ({ clock }) => timeAlone(clock)),
  rule('phrase', '5pm', '<hour:int> <half=am|pm>', ({ hour, half }) => sureTime(halfDay(hour, 0, half))),
  rule('phrase', '5.30pm', '<hour:int> :|. <minute:shortYear> <half=am|pm>', ({ hour, minute, half }) =>
    sureTime(halfDay(hour, minute, half)),
  ),
  rule('phrase', '17:30', '<hour:int> : <minute:shortYear>', ({ hour, minute }) =>
    sureTime(bare(hour, minute)),
  ),
  rule('phrase', "5 o'clock", "<hour:count> o'clock", ({ hour }) => sureTime(bare(hour.number, 0))),
  rule('phrase', '18h30', 'at? <hour:int> h <minute:shortYear>', ({ hour, minute }) =>
    sureTime(bare(hour, minute)),
  ),
  rule('phrase', 'at 18h', 'at <hour:int> h', ({ hour }) => sureTime(bare(hour, 0))),
  rule('phrase', 'half five', '<clock>', ({ clock }) => unsure(timeAlone(clock))),
  rule('phrase', 'at 17.30', 'at|by|@ <hour:int> . <minute:shortYear>', ({ hour, minute }) => {
    const time = bare(hour, minute);
    return time === null ? null : timeAlone(time);
  }),
  rule('phrase', 'at 1730', 'at|by|@ <fourDigits> hour?', ({ fourDigits }) => {
    const time = bare(Math.floor(fourDigits / 100), fourDigits % 100);
    return time === null ? null : unsure(timeAlone(time));
  }),
  rule('phrase', '0730 hrs', '<fourDigits> hour', ({ fourDigits }) =>
    sureTime(bare(Math.floor(fourDigits / 100), fourDigits % 100)),
  ),
  rule('phrase', 'at teatime', 'at|around <part=lunchtime|teatime|breakfast|dawn>', () => unsure(today)),
  rule('phrase', 'at 5', 'at|@ around? <hour:int>', ({ hour }) => unsureTime(bare(hour, 0), hour)),
  rule('phrase', 'at five', 'at around? <hour:count>', ({ hour }) =>
    unsureTime(bare(hour.number, 0), hour.number),
  ),
  rule('phrase', '7 in the evening', 'at|around|@? <hour:count> in the <part>', ({ hour, part }) => {
    const time = partTime(hour.number, part);
    return time === null ? null : timeAlone(time);
  }),
];

function partTime(hour: number, part: DayPart): TimeOfDay | null {
  return hour >= 1 && hour <= 12 ? inPart(`${pad(hour)}:00`, part) : null;
}

function timed(day: When, time: TimeOfDay | null): When | null {
  return time === null ? null : at(day, time);
}

function sureTime(time: TimeOfDay | null): When | null {
  return time === null ? null : timeAlone(time);
}

function unsureTime(time: TimeOfDay | null, hour: number): When | null {
  return time === null || hour < 1 || hour > 12 ? null : unsure(timeAlone(time));
}
