/** Parts of the day, and days with an hour: "last night", "Tuesday morning", "at half five on Friday". */
import { addDays } from '../../calendar/day.js';
import type { TimeOfDay } from '../../calendar/zone.js';
import { bare, halfDay, inPart, partTime } from './clock-times.js';
import { ambiguous, daysFromToday, fixed, unsure, type When, when } from './meaning.js';
import type { DayPart } from './captures.js';
import { rule } from './pattern.js';

const today = daysFromToday(0);

export const dayParts = [
  rule('day', 'this morning', 'earlier|early|late? this <part>', () => today),
  rule('day', 'first thing this morning', 'first|last thing this <part>', () => today),
  rule('day', 'first thing', 'first thing', () => unsure(today)),
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

/** The hour that two or four figures and a part of the day give. */
const hourIn = (hour: number, part: DayPart | undefined): TimeOfDay | null =>
  part === undefined ? bare(hour, 0) : partTime(hour, part);

export const daysWithTimes = [
  rule('when', '', '<day>', ({ day }) => day),
  rule('when', '', '<span>', ({ span }) => span),
  rule('when', 'at 8 tonight', 'at|around|@ around? <hour:count> tonight', ({ hour }) =>
    timed(today, partTime(hour.number, 'evening')),
  ),
  rule('when', 'tonight at 8', 'tonight at|around|@ around? <hour:count>', ({ hour }) =>
    timed(today, partTime(hour.number, 'evening')),
  ),
  rule('when', 'at 8 this evening', 'at|around|@ around? <hour:count> this <part>', ({ hour, part }) =>
    timed(today, partTime(hour.number, part)),
  ),
  rule('when', 'this evening at 8', 'this <part> at|around|@ around? <hour:count>', ({ hour, part }) =>
    timed(today, partTime(hour.number, part)),
  ),
  rule('when', 'this evening at half five', 'this <part> at|around|@? around? <clock>', ({ clock, part }) =>
    timed(today, inPart(clock, part)),
  ),
  rule('when', 'at half five this evening', 'at|around|@? around? <clock> this <part>', ({ clock, part }) =>
    timed(today, inPart(clock, part)),
  ),
  rule(
    'when',
    'Tuesday morning',
    '<day> ,? early|late|mid|first? thing? in? the? early|late|mid? <part>',
    ({ day }) => sure(day),
  ),
  rule('when', 'Tuesday first thing', '<day> ,? first|last thing', ({ day }) => sure(day)),
  rule('when', 'first thing Tuesday', 'first|last thing on? <day>', ({ day }) => sure(day)),
  rule('when', 'early Tuesday', 'early|late doors? on? <day>', ({ day }) => sure(day)),
  rule('when', 'later tonight', 'later|early tonight', () => today),
  rule('when', 'morning of Tuesday', 'on? in? the? early|late|mid? <part> ,? of|on? <day>', ({ day }) =>
    sure(day),
  ),
  rule('when', 'Tuesday at 5', '<day> ,? at|@ around? <hour:int>', ({ day, hour }) =>
    hour <= 23 ? timed(day, bare(hour, 0)) : null,
  ),
  rule('when', 'Tuesday at five', '<day> ,? at around? <hour:count>', ({ day, hour }) =>
    hour.number >= 1 && hour.number <= 12 ? timed(day, bare(hour.number, 0)) : null,
  ),
  rule('when', 'Tuesday at half five', '<day> ,? at|around|by|@? around? <clock>', ({ day, clock }) =>
    timed(day, clock),
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
  rule('when', 'at half five on Tuesday', 'at|around|@? around? <clock> ,? on? <day>', ({ day, clock }) =>
    timed(day, clock),
  ),
  rule(
    'when',
    "7 o'clock tomorrow morning",
    'at|around? <clock> ,? on? <day> <part>',
    ({ day, part, clock }) => timed(day, inPart(clock, part)),
  ),
  rule(
    'when',
    'Tuesday evening at half seven',
    '<day> <part> ,? at|around|@? <clock>',
    ({ day, part, clock }) => timed(day, inPart(clock, part)),
  ),
  rule(
    'when',
    'Tuesday evening at 7',
    '<day> <part>? at|@ <hour:count> in? the? <late:part>?',
    ({ day, part, hour, late }) => timed(day, hourIn(hour.number, part ?? late)),
  ),
  rule(
    'when',
    '7 in the evening on Tuesday',
    'at|@ <hour:count> in the <part> ,? on? <day>',
    ({ day, part, hour }) => timed(day, partTime(hour.number, part)),
  ),
  rule('when', 'at 5 on Tuesday', 'at|@ around? <hour:count> on <day>', ({ day, hour }) =>
    timed(day, bare(hour.number, 0)),
  ),
  rule('when', 'at 8 tomorrow', 'at|@ around? <hour:count> tomorrow <part>?', ({ hour, part }) =>
    timed(daysFromToday(1), hourIn(hour.number, part)),
  ),
  rule('when', 'Tuesday am', '<day> ,? in? the? am|pm', ({ day }) => day),
];

export const timesAlone = [
  rule('phrase', 'at half five', 'at|around|by|@ around? <clock>', ({ clock }) => timeAlone(clock)),
  rule('phrase', '5pm', '<hour:int> <half=am|pm>', ({ hour, half }) => timeAlone(halfDay(hour, 0, half))),
  rule('phrase', '5.30pm', '<hour:int> :|. <minute:shortYear> <half=am|pm>', ({ hour, minute, half }) =>
    timeAlone(halfDay(hour, minute, half)),
  ),
  rule('phrase', '17:30', '<hour:int> : <minute:shortYear>', ({ hour, minute }) =>
    timeAlone(bare(hour, minute)),
  ),
  rule('phrase', "5 o'clock", "<hour:count> o'clock", ({ hour }) => timeAlone(bare(hour.number, 0))),
  rule('phrase', '18h30', 'at? <hour:int> h <minute:shortYear>', ({ hour, minute }) =>
    timeAlone(bare(hour, minute)),
  ),
  rule('phrase', 'at 18h', 'at <hour:int> h', ({ hour }) => timeAlone(bare(hour, 0))),
  rule('phrase', 'at 17.30', 'at|by|@ <hour:int> . <minute:shortYear>', ({ hour, minute }) =>
    timeAlone(bare(hour, minute)),
  ),
  rule('phrase', '0730 hrs', '<fourDigits> hour', ({ fourDigits }) => timeAlone(ofFourDigits(fourDigits))),
  rule('phrase', 'at 7 in the evening', 'at|around|@ <hour:count> in the <part>', ({ hour, part }) =>
    timeAlone(partTime(hour.number, part)),
  ),
  // These might as well count something, or tell a temperature.
  rule('phrase', 'half five', 'half past? <hour:count>', ({ hour }) => doubtful(hour.number, 30)),
  rule('phrase', 'noon', 'noon', () => timeAlone('12:00')),
  rule('phrase', 'midnight', 'midnight', () => timeAlone('00:00')),
  rule('phrase', 'at 1730', 'at|by|@ <fourDigits> hour?', ({ fourDigits }) =>
    unsureTime(ofFourDigits(fourDigits)),
  ),
  rule('phrase', 'at teatime', 'at|around <part=lunchtime|teatime|breakfast|dawn>', () => unsure(today)),
  rule('phrase', 'at 5', 'at|@ around? <hour:int>', ({ hour }) => doubtful(hour, 0)),
  rule('phrase', 'at five', 'at around? <hour:count>', ({ hour }) => doubtful(hour.number, 0)),
  rule('whole', 'ten to five', '<clock>', ({ clock }) => timeAlone(clock)),
  rule('whole', '7 in the evening', '<hour:count> in the <part>', ({ hour, part }) =>
    timeAlone(partTime(hour.number, part)),
  ),
];

/** A time alone: of things done today; of plans today, or tomorrow once it has gone by. */
function timeAlone(time: TimeOfDay | null): When | null {
  if (time === null) return null;
  const mean: When['mean'] = (leaning, now) => ({
    date: leaning === 'future' && time <= now.timeNow ? addDays(now.today, 1) : now.today,
  });
  return { ...when(mean), time };
}

function unsureTime(time: TimeOfDay | null): When | null {
  const alone = timeAlone(time);
  return alone && unsure(alone);
}

function doubtful(hour: number, minute: number): When | null {
  const alone = hour >= 1 && hour <= 12 ? unsureTime(bare(hour, minute)) : null;
  return alone && { ...alone, ordinal: true };
}

function ofFourDigits(digits: number): TimeOfDay | null {
  return bare(Math.floor(digits / 100), digits % 100);
}

/** A day with a time said beside it. */
function timed(day: When, time: TimeOfDay | null): When | null {
  return time === null ? null : { ...day, time, certain: true };
}

function sure(day: When): When {
  return { ...day, certain: true };
}
