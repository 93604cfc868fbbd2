/** The day's one message, by place. */
import type { Day } from '../calendar/day.js';
import type { Digest } from '../outlook/digest.js';
import type { Due } from '../outlook/due.js';
import { dueLine, TENDING_WORDS } from './due-line.js';
import { dayWords, listWords, plural, type Say, sayOf } from './say.js';

/** A heading for each place where there are several, a line for each thing, tending last. */
export function digestText({ day, parts, asides }: Digest, say: Say = sayOf()): string {
  const things = parts.reduce((sum, { dues }) => sum + dues.length, 0);
  const lines = parts.flatMap(({ place, dues }) => [
    ...(parts.length > 1 ? [`\n${capital(place ?? 'Elsewhere')}`] : []),
    ...dues.map((due) => `• ${dueLine(due, day, say)}`),
  ]);
  return [
    `${plural(things, 'thing', 'things')} for ${dayWords(day, say)}${onePlace(parts)}`,
    ...lines,
    ...tending(asides),
  ].join('\n');
}

/** The answer to "what's due this week?": by day and place, late first. */
export function dueText(dues: readonly Due[], today: Day, say: Say = sayOf()): string {
  if (dues.length === 0) return 'Nothing is due.';
  const lines: string[] = [];
  let day: Day | null = null;
  for (const due of dues) {
    const on = due.from < today ? today : due.from;
    if (on !== day)
      lines.push(`${lines.length > 0 ? '\n' : ''}${on === today ? 'Today' : dayWords(on, say)}`);
    day = on;
    const where = due.place ? `${capital(due.place)}: ` : '';
    lines.push(`• ${where}${dueLine(due, today, say)}`);
  }
  return lines.join('\n');
}

/** One line for all places. */
function tending(asides: readonly Due[]): string[] {
  const places = asides.flatMap(({ place }) => (place ? [place] : []));
  if (asides.length === 0) return [];
  return ['', `${places.length === 0 ? 'Cuttings' : capital(listWords(places))}: ${TENDING_WORDS}.`];
}

function onePlace(parts: Digest['parts']): string {
  const [part] = parts;
  return parts.length === 1 && part?.place ? `, ${part.place}` : '';
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
