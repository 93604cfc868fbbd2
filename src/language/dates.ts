/** Finds the phrases of time in a text and says which days they mean. */
import type { TimeOfDay } from '../calendar/zone.js';
import { grammar } from './dates/grammar.js';
import { ambiguous, type Leaning, type Moment, type Resolved, type When } from './dates/meaning.js';
import { type Alternative, Chart, rulesOf } from './dates/pattern.js';
import { type Token, tokensOf } from './dates/token.js';

export type { DateProblem, Leaning, Moment, Resolved } from './dates/meaning.js';

/** A phrase of time in a text. */
export interface DateFind {
  /** Offsets into the text, end exclusive; the preposition is part of the phrase ("by the end of May"). */
  readonly start: number;
  readonly end: number;
  readonly text: string;
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
  /** Stretches of the text, as [start, end), that are known to be something else, such as names of varieties. */
  readonly exclude?: readonly (readonly [number, number])[];
}

/**
 * The phrases of time in `text`, in order and apart from each other; never throws. `now` is the moment of the note in
 * the grower's zone.
 */
export function datesIn(text: string, now: Moment, options: DateOptions = {}): DateFind[] {
  const exclude = options.exclude ?? [];
  const tokens = tokensOf(text).map((token) =>
    exclude.some(([start, end]) => token.start < end && token.end > start)
      ? { ...token, word: '', likeness: '', digits: false }
      : token,
  );
  const chart = new Chart(grammar, tokens);
  const finds: DateFind[] = [];
  for (let at = 0; at < tokens.length;) {
    const [longest] = chart.read('phrase', at);
    if (longest === undefined || isOfSomethingElse(tokens, at, longest)) {
      at++;
      continue;
    }
    finds.push(guarded(find(text, tokens, at, longest, now), tokens, at, longest.end));
    at = longest.end;
  }
  return finds;
}

/** Things that are counted off: "the third pot", "the first to root", "the second of them". */
const counted = new Set(
  (
    'pot pots tray trays batch batches shelf bench cutting cuttings one ones lot lots time row node leaf leaves flush go ' +
    'attempt frost flower flowers bud buds root roots plant plants pair set round of to rooted stem shoot shoots tuber'
  ).split(' '),
);

/** What says that a day comes again and again ("every Friday"): a habit is no date. */
const habits = new Set(['every', 'each', 'most']);

function isOfSomethingElse(tokens: readonly Token[], at: number, read: Alternative): boolean {
  if (habits.has(tokens[at - 1]?.word ?? '')) return true;
  return (read.value as When).ordinal === true && counted.has(tokens[read.end]?.word ?? '');
}

/** Words that change what the phrase beside them means; where one is left over, the phrase is not understood. */
const modifiersBehind = new Set(['week', 'fortnight', 'ago', 'gone', 'past', 'hence']);
const modifiersBefore = new Set([
  'last',
  'next',
  'previous',
  'past',
  'week',
  'weeks',
  'fortnight',
  'half',
  'nearly',
  'almost',
]);

function guarded(found: DateFind, tokens: readonly Token[], at: number, end: number): DateFind {
  const behind = modifiersBehind.has(tokens[end]?.word ?? '');
  const before = modifiersBefore.has(tokens[at - 1]?.word ?? '');
  if (!behind && !before) return found;
  return { ...found, past: ambiguous, future: ambiguous };
}

/** The meaning of a text that is one phrase of time and nothing else; null where it is not. */
export function dateOf(text: string, now: Moment): DateFind | null {
  const tokens = tokensOf(text);
  let end = tokens.length;
  while (end > 0 && /^[.!?,;]$/.test(tokens[end - 1]?.word ?? '')) end--;
  const chart = new Chart(grammar, tokens);
  const whole = chart.read('whole', 0).find((each) => each.end === end || each.end === tokens.length);
  return whole ? find(text, tokens, 0, whole, now) : null;
}

function find(text: string, tokens: readonly Token[], at: number, read: Alternative, now: Moment): DateFind {
  const when = read.value as When;
  const start = tokens[at]?.start ?? 0;
  const end = tokens[read.end - 1]?.end ?? start;
  return {
    start,
    end,
    text: text.slice(start, end),
    past: when.mean('past', now),
    future: when.mean('future', now),
    rule: rulesOf(read).join(' / '),
    ...(when.time === undefined ? {} : { time: when.time }),
    ...(when.leans === undefined ? {} : { leans: when.leans }),
    certain: when.certain && !(read.end - at === 1 && tokens[at]?.everyday === true),
  };
}
