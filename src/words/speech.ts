/** How days, counts and lists are put into words, British or American. */
import { addDays, type Day, dayOfMonth, month, weekday, year } from '../calendar/day.js';
import { isSpan, type Span } from '../calendar/span.js';

/** For whom it is worded: whose words and units, and which day is today. */
export interface Speech {
  readonly wording: 'GB' | 'US';
  readonly units: 'metric' | 'us';
  readonly today: Day;
}

const weekdays = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'];
const months = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];

/** "today", "yesterday", "tomorrow", else "Sun 1 Mar" or "Sun, Mar 1"; the year where it is another. */
export function dayWords(day: Day, speech: Speech): string {
  if (day === speech.today) return 'today';
  if (day === addDays(speech.today, -1)) return 'yesterday';
  if (day === addDays(speech.today, 1)) return 'tomorrow';
  const name = weekdays[weekday(day) - 1] ?? '';
  const date = dateWords(day, speech);
  return speech.wording === 'US' ? `${name}, ${date}` : `${name} ${date}`;
}

/** "1 Mar" or "Mar 1"; the year where it is another. */
export function dateWords(day: Day, speech: Speech): string {
  const name = months[month(day) - 1] ?? '';
  const other = year(day) === year(speech.today) ? '' : ` ${year(day)}`;
  return speech.wording === 'US'
    ? `${name} ${dayOfMonth(day)}${other}`
    : `${dayOfMonth(day)} ${name}${other}`;
}

/** "13–17 Mar", "28 Feb–3 Mar"; "Mar 13–17" in American words. */
export function spanWords({ from, to }: Span, speech: Speech): string {
  if (from === to) return dateWords(from, speech);
  const sameMonth = from.slice(0, 7) === to.slice(0, 7);
  if (!sameMonth) return `${dateWords(from, speech)}–${dateWords(to, speech)}`;
  if (speech.wording === 'US') return `${dateWords(from, speech)}–${dayOfMonth(to)}`;
  return `${dayOfMonth(from)}–${dateWords(to, speech)}`;
}

export function whenWords(when: Day | Span, speech: Speech): string {
  return isSpan(when) ? `some time ${spanWords(when, speech)}` : dayWords(when, speech);
}

/** "1 cutting", "3 cuttings". */
export function many(count: number, one: string, several = `${one}s`): string {
  return `${count} ${count === 1 ? one : several}`;
}

/** "EF1", "EF1 and EF2", "EF1, EF2 and EF3". */
export function listWords(items: readonly string[], joint = 'and'): string {
  const last = items.at(-1) ?? '';
  return items.length < 2 ? last : `${items.slice(0, -1).join(', ')} ${joint} ${last}`;
}

export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
