/** Finds the phrases of time in a text and says which days they mean. */
import { createRequire } from 'node:module';
import { dayOf } from '../calendar/day.js';
import type { TimeOfDay } from '../calendar/zone.js';
import { grammar } from './dates/grammar.js';
import { isOfSomethingElse, leavesModifier } from './dates/guards.js';
import {
  ambiguous,
  clockAfter,
  type Leaning,
  type Moment,
  type Resolved,
  type When,
} from './dates/meaning.js';
import { type Alternative, rulesOf } from './dates/alternative.js';
import { Chart } from './dates/chart.js';
import { type Token, tokensOf } from './dates/token.js';

export type { DateProblem, Leaning, Moment, Resolved } from './dates/meaning.js';

/** A phrase of time in a text. */
export interface DateFind {
  /** Offsets into the text, end exclusive; the preposition is part of the phrase ("by the end of May"). */
  readonly start: number;
  readonly end: number;
  readonly text: string;
  /** The preposition that the phrase begins with, if any, and where the rest begins ("potted on | Tuesday"). */
  readonly preposition?: string;
  readonly bodyStart: number;
  /** What it means of things done, and of plans. */
  readonly past: Resolved;
  readonly future: Resolved;
  /** The rule that read it, named like a phrase that it accepts. */
  readonly rule: string;
  /** The hour that the phrase names. */
  readonly time?: TimeOfDay;
  /** False where the words could as well be something else: a bare "may", "spring", "the 24", "3/4". */
  readonly certain: boolean;
  /** The way it leans where nothing else tells. */
  readonly leans?: Leaning;
}

export interface DateOptions {
  /** Stretches of the text, as [start, end) in order, that are known to be something else, such as names of varieties. */
  readonly exclude?: readonly (readonly [number, number])[];
}

/**
 * The phrases of time in `text`, in order and apart from each other; never throws. `now` is the moment of the note in
 * the grower's zone.
 */
export function datesIn(text: string, now: Moment, options: DateOptions = {}): DateFind[] {
  const exclude = options.exclude ?? [];
  let next = 0;
  const tokens = tokensOf(text).map((token) => {
    while ((exclude[next]?.[1] ?? Infinity) <= token.start) next++;
    return (exclude[next]?.[0] ?? Infinity) < token.end
      ? { ...token, word: '', likeness: '', digits: false }
      : token;
  });
  const chart = new Chart(grammar, tokens);
  const finds: DateFind[] = [];
  for (let at = 0; at < tokens.length;) {
    const [longest] = chart.read('phrase', at);
    if (longest === undefined || isOfSomethingElse(longest.value as When, tokens, at, longest.end)) {
      at++;
      continue;
    }
    const found = find(text, tokens, at, longest, now);
    const understood = !leavesModifier(tokens, at, longest.end);
    finds.push(understood ? found : { ...found, past: ambiguous, future: ambiguous });
    at = longest.end;
  }
  return finds;
}

/** The meaning of a text that is one phrase of time and nothing else; null where it is not. */
export function dateOf(text: string, now: Moment): DateFind | null {
  const tokens = tokensOf(text);
  let end = tokens.length;
  while (end > 0 && /^[.!?,;]$/.test(tokens[end - 1]?.word ?? '')) end--;
  const chart = new Chart(grammar, tokens);
  const whole = chart.read('whole', 0).find((each) => each.end === end || each.end === tokens.length);
  return whole ? find(text, tokens, 0, whole, now) : fullDate(text.trim());
}

/** The part of chrono-node that we use; loaded when first wanted, since that takes longer than hundreds of notes. */
interface Chrono {
  readonly strict: { parse(text: string): readonly ChronoResult[] };
}

interface ChronoResult {
  readonly text: string;
  readonly end?: unknown;
  readonly start: {
    get(component: 'year' | 'month' | 'day' | 'hour' | 'minute'): number | null;
    isCertain(component: 'year' | 'month' | 'day' | 'weekday' | 'hour'): boolean;
  };
}

const require = createRequire(import.meta.url);
let chrono: Chrono | undefined;

/**
 * A date written out with its year in a form that no rule of ours has, such as a machine's "Sun, 3 May 2026 10:15:00
 * +0100". chrono-node is heeded only where it takes every word, since of phrases it does not know it reads the tail and
 * drops the rest, and only where day, month and year are all written.
 */
function fullDate(text: string): DateFind | null {
  if (text.length > 60 || !/(?:19|20)\d\d/.test(text)) return null;
  chrono ??= require('chrono-node') as Chrono;
  const [result, ...others] = chrono.strict.parse(text);
  if (!result || others.length > 0 || result.text !== text || result.end) return null;
  const { start } = result;
  if (!start.isCertain('year') || !start.isCertain('month') || !start.isCertain('day')) return null;
  const day = dayOf(start.get('year') ?? 0, start.get('month') ?? 0, start.get('day') ?? 0);
  if (day === null) return null;
  const resolved = { date: day };
  return {
    start: 0,
    end: text.length,
    text,
    bodyStart: 0,
    past: resolved,
    future: resolved,
    rule: 'a full date',
    certain: true,
  };
}

const prepositions = new Set(
  'on in at by for from since until during over before after through around within towards come'.split(' '),
);

function bodyOf(
  tokens: readonly Token[],
  at: number,
  end: number,
): { preposition?: string; bodyStart: number } {
  const word = tokens[at]?.word ?? '';
  const next = tokens[at + 1];
  if (!next || at + 1 >= end || !prepositions.has(word)) return { bodyStart: tokens[at]?.start ?? 0 };
  return { preposition: word, bodyStart: next.start };
}

function timeOf({ time, minutesAway }: When, now: Moment): { time?: TimeOfDay } {
  if (minutesAway === undefined) return time === undefined ? {} : { time };
  const minutes = ((Math.round(clockAfter(now, minutesAway)) % 1440) + 1440) % 1440;
  const two = (number: number) => String(number).padStart(2, '0');
  return { time: `${two(Math.floor(minutes / 60))}:${two(minutes % 60)}` };
}

function find(text: string, tokens: readonly Token[], at: number, read: Alternative, now: Moment): DateFind {
  const when = read.value as When;
  const start = tokens[at]?.start ?? 0;
  const end = tokens[read.end - 1]?.end ?? start;
  return {
    start,
    end,
    text: text.slice(start, end),
    ...bodyOf(tokens, at, read.end),
    past: when.mean('past', now),
    future: when.mean('future', now),
    rule: rulesOf(read).join(' / '),
    ...timeOf(when, now),
    ...(when.leans === undefined ? {} : { leans: when.leans }),
    certain: when.certain && !(read.end - at === 1 && tokens[at]?.everyday === true),
  };
}
