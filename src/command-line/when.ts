/** `npm run -s when`: one phrase of time a line in, the day or days that it means out. */
import { parseDay, type Day } from '../calendar/day.js';
import { isTimeOfDay, isZone, localDay, localTime, parseInstant, type TimeOfDay } from '../calendar/zone.js';
import { dateOf, type Leaning, type Moment, type Resolved } from '../language/dates.js';
import { boundsOf, isDoubt } from '../language/dates/meaning.js';
import type { Run } from './commands.js';
import { answerLines, BadLine } from './json-lines.js';

export const when: Run = (_, streams) => answerLines(streams, answer);

/** One line of the contract: `{id, text, now, zone, prefer, dateOrder}` to `{id, date}`, `{id, from, to}` or `{id, error}`. */
function answer(line: Record<string, unknown>): object {
  const id = line['id'] ?? null;
  const { text, prefer, dateOrder } = line;
  if (typeof text !== 'string') throw new BadLine('no text: give the phrase of time as "text"');
  const now: Moment = { ...momentOf(line), dateOrder: dateOrder === 'MDY' ? 'MDY' : 'DMY' };
  const found = dateOf(text, now);
  if (!found) return { id, error: 'not one phrase of time: give a day or a span in words, and nothing else' };
  const resolved =
    prefer === 'past' || prefer === 'future'
      ? found[prefer]
      : found.leans
        ? found[found.leans]
        : nearer(found, now.today);
  return { id, ...(isDoubt(resolved) ? { error: reasons[resolved.problem] } : resolved) };
}

const reasons = {
  impossible: 'no such day: check the day, the month and the weekday',
  ambiguous: 'may mean several days: name the day',
  tooFarBack: 'last seen more than six months ago: give the year',
};

/** What an open phrase means where no leaning is given: of both meanings the one nearer to today. */
function nearer(found: Record<Leaning, Resolved>, today: Day): Resolved {
  const { past, future } = found;
  if (isDoubt(past)) return future;
  if (isDoubt(future)) return past;
  const away = (resolved: typeof past) => Math.abs(Date.parse(boundsOf(resolved).from) - Date.parse(today));
  return away(past) < away(future) ? past : future;
}

/** The local day and time of `now` in `zone`; without a zone, or without an offset, as `now` itself writes them. */
function momentOf({ now, zone }: Record<string, unknown>): { today: Day; timeNow: TimeOfDay; zone: string } {
  if (typeof now !== 'string') throw new BadLine('no now: give the moment as ISO 8601 in "now"');
  if (zone !== undefined && zone !== null && (typeof zone !== 'string' || !isZone(zone)))
    throw new BadLine('no such zone: give one of the IANA data, such as "Europe/London"');
  const instant = parseInstant(now);
  if (instant !== null && typeof zone === 'string')
    return { today: localDay(instant, zone), timeNow: localTime(instant, zone), zone };
  const today = parseDay(now.slice(0, 10));
  const timeNow = now.length > 10 ? now.slice(11, 16) : '12:00';
  if (today === null || !isTimeOfDay(timeNow))
    throw new BadLine('no such moment: write now as 2026-04-08T10:15:00+01:00');
  return { today, timeNow, zone: typeof zone === 'string' ? zone : 'UTC' };
}
