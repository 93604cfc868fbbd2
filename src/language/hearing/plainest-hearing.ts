/**
 * Which of several hearings of one sound is taken: the recogniser goes by sound and by what word follows what, and only the
 * reader knows that a grower seldom tells two things of which one makes no sense, and mostly says how many.
 */
import { heardOtherwise, likened, tellsNothing } from './hearings.js';
import { likenessOf } from '../likeness/likeness.js';
import type { EntryKind, HeardWord, NoteContext, ReadNote } from '../note.js';
import type { Reading } from '../read.js';
import { asksOnly, mayPostUnasked } from './surety.js';

/** What a recogniser tells of one sound. */
export interface Hearings {
  /** The likeliest hearing. */
  readonly words: readonly HeardWord[];
  /** The others, the likeliest first. */
  readonly others: readonly string[];
  /** How far each of the others is behind the likeliest by sound, in nats; absent where an engine does not tell. */
  readonly lags?: readonly number[] | undefined;
}

/** A hearing's reading, with the pieces that its likeness is told by. */
export type HearingRead = Pick<Reading, 'pieces' | 'outcome'>;

/**
 * Fitted by logistic regression to 590 clips of 118 sentences, and rounded; how they were found, and what they bring on
 * sentences that were kept aside, stands in DEVELOPERS.md under "Voice".
 */
const WEIGHTS = {
  /** Of each nat by which a hearing is behind. */
  lag: -0.07,
  likeliest: 0.25,
  /** Of the likeness, 0–1, of the words to the kind that they are least like of those read. */
  likeness: 3,
  /** Of each entry beyond the first. */
  more: -2.25,
  /** Of saying how many, be it once. */
  counted: 1.4,
} as const;

/** What a hearing of one entry is worth that says how many, in words that are like nothing else. */
const PLAINEST = WEIGHTS.likeness + WEIGHTS.counted;

/** They answer to what went before, which a hearing by itself does not show; no other hearing is taken for one, and none instead. */
const ANSWERING: ReadonlySet<EntryKind> = new Set(['answer', 'amend', 'undo', 'question']);

/**
 * The hearing that is both likely by sound and plainly read; undefined: the likeliest. Another than that has to be asked
 * about: the words that differ have a posterior of nought.
 */
export function plainestHearing(
  { words, others, lags }: Hearings,
  context: NoteContext,
  readingOf: (text: string) => HearingRead,
): readonly HeardWord[] | undefined {
  const likeliest = readingOf(words.map(({ word }) => word).join(' '));
  if (tellsNothing(likeliest.outcome))
    return heardOtherwise(words, others, context, (text) => readingOf(text).outcome);
  const isSure = mayPostUnasked(likeliest.outcome, words) || asksOnly(likeliest.outcome);
  if (isSure || !tellsByItself(likeliest.outcome)) return undefined;
  let most = WEIGHTS.likeliest + plainness(likeliest);
  let plainest: string | undefined;
  others.forEach((text, at) => {
    const lag = lags?.[at];
    // Most are so far behind that they need not be read.
    if (lag === undefined || WEIGHTS.lag * lag + PLAINEST <= most) return;
    const read = readingOf(text);
    if (!tellsByItself(read.outcome)) return;
    const worth = WEIGHTS.lag * lag + plainness(read);
    if (worth > most) [most, plainest] = [worth, text];
  });
  return plainest === undefined ? undefined : likened(plainest.split(' '), words);
}

/** How plainly a hearing is read. */
function plainness({ pieces, outcome: { entries } }: HearingRead): number {
  const { most } = likenessOf(pieces);
  const least = Math.min(...entries.map(({ entry }) => most.get(entry.kind) ?? HALF));
  const counted = entries.some(({ entry }) => 'count' in entry && entry.count !== undefined);
  return WEIGHTS.likeness * least + WEIGHTS.more * (entries.length - 1) + (counted ? WEIGHTS.counted : 0);
}

/** Of a kind of which the likeness knows nothing. */
const HALF = 0.5;

function tellsByItself({ entries, instruction }: ReadNote): boolean {
  return (
    entries.length > 0 && instruction === undefined && !entries.some(({ entry }) => ANSWERING.has(entry.kind))
  );
}
