/** The day and the hour of a reminder. */
import { addDays } from '../../calendar/day.js';
import { localDay, localTime, type TimeOfDay } from '../../calendar/zone.js';
import type { Note } from '../note.js';
import type { Piece, PieceOf, When } from '../pieces/pieces.js';

const EVENING = /\b(?:tonight|this evening|in the evening|after tea|after dinner|this afternoon|pm)\b/;
const LATER_TODAY =
  /\b(?:later|tonight|this (?:evening|afternoon|arvo)|today|after (?:lunch|tea|work|dinner))\b/;

/** What the pieces tell of both; an hour alone is that of today, where it has passed of tomorrow. */
export function dayAndTime(
  pieces: readonly Piece[],
  instead: When | undefined,
  line: string,
  note: Note,
): { readonly when?: When; readonly time?: TimeOfDay } {
  const whens = pieces
    .filter((piece): piece is PieceOf<'when'> => piece.is === 'when')
    .map(({ when }) => when);
  const named = whens.find((each) => each.time !== undefined)?.time;
  const time = named === undefined ? undefined : inTheEvening(named, line);
  const when = instead ?? whens.find(({ future }) => future !== undefined) ?? (time && nextAt(time, note));
  return { ...(when ? { when } : {}), ...(time === undefined ? {} : { time }) };
}

/** "Tonight at seven" is no morning. */
function inTheEvening(time: TimeOfDay, line: string): TimeOfDay {
  const isEvening = EVENING.test(line) && !/\b(?:am|morning)\b/.test(line);
  return isEvening && time < '12:00'
    ? `${String(Number(time.slice(0, 2)) + 12).padStart(2, '0')}${time.slice(2)}`
    : time;
}

function nextAt(time: TimeOfDay, { now, zone }: Note): When {
  const today = localDay(now, zone);
  const day = time <= localTime(now, zone) ? addDays(today, 1) : today;
  return { past: day, future: day, words: '' };
}

/** "I'm going to pot on today": being done, unless it is said to be for later. */
export function isToday({ past, future }: When, line: string, { now, zone }: Note): boolean {
  const today = localDay(now, zone);
  return future === today && past === today && !LATER_TODAY.test(line);
}
