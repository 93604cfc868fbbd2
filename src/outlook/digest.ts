/** The one message of a day: what to mention today, by place, late first. */
import { addDays, type Day } from '../calendar/day.js';
import { type Due, isDue, isLate } from './due.js';

export interface DigestPart {
  /** Null for what belongs to no place. */
  readonly place: string | null;
  /** Late ones first. */
  readonly dues: readonly Due[];
}

export interface Digest {
  readonly day: Day;
  readonly parts: readonly DigestPart[];
  /** Those that want an answer, one a batch at most. */
  readonly questions: readonly Due[];
  /** Said beside the rest, never on their own account. */
  readonly asides: readonly Due[];
}

export interface DigestMoment {
  readonly today: Day;
  /** Day of the last digest, or of the last look whether there was anything; null before the first. */
  readonly lastDay: Day | null;
  /** Keys that were mentioned before. */
  readonly mentioned?: ReadonlySet<string>;
}

/** Days on which a thing that is late is mentioned again: the first, then once a week. */
const AGAIN_EVERY_DAYS = 7;

/**
 * What is due by today and not mentioned yet, or that has grown late since the last digest; null where there is nothing, so
 * that nothing is said. After an outage it holds all that was missed, once.
 */
export function digestOf(dues: readonly Due[], moment: DigestMoment): Digest | null {
  const due = dues.filter((each) => isDue(each, moment.today));
  const mentioned = due.filter(({ kind }) => kind !== 'tend').filter((each) => isMentioned(each, moment));
  if (mentioned.length === 0) return null;
  return {
    day: moment.today,
    parts: byPlace(mentioned, moment.today),
    questions: mentioned.filter(({ asks }) => asks),
    asides: due.filter(({ kind }) => kind === 'tend'),
  };
}

/** All that is due from `from` to `to`, by day then place, what is late on `today` first: the answer to "what's due this week?". */
export function dueWithin(
  dues: readonly Due[],
  { from, to, today }: { readonly from: Day; readonly to: Day; readonly today: Day },
): readonly Due[] {
  return dues
    .filter(
      (due) =>
        due.kind !== 'tend' && due.from <= to && (due.from >= from || (from <= today && isDue(due, today))),
    )
    .sort(
      (a, b) =>
        Number(isLate(b, today)) - Number(isLate(a, today)) ||
        order(a.from > today ? a.from : today, b.from > today ? b.from : today) ||
        order(a.place ?? '\uffff', b.place ?? '\uffff') ||
        order(a.key, b.key),
    );
}

function isMentioned(due: Due, { today, lastDay, mentioned = new Set() }: DigestMoment): boolean {
  if (!mentioned.has(due.key)) return true;
  // What was asked for once is said once.
  if (due.kind === 'reminder') return false;
  for (let day = addDays(due.bestBy, 1); day <= today; day = addDays(day, AGAIN_EVERY_DAYS))
    if (lastDay === null || day > lastDay) return true;
  return due.from === today && (lastDay === null || lastDay < today);
}

function byPlace(dues: readonly Due[], today: Day): DigestPart[] {
  const parts = new Map<string | null, Due[]>();
  const lateFirst = [...dues].sort(
    (a, b) =>
      Number(isLate(b, today)) - Number(isLate(a, today)) || order(a.from, b.from) || order(a.key, b.key),
  );
  for (const due of lateFirst) parts.set(due.place, [...(parts.get(due.place) ?? []), due]);
  return [...parts].map(([place, each]) => ({ place, dues: each }));
}

function order(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
