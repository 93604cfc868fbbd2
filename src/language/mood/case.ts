/** What a case of mood is: a record named like what is said, with when a clause is that. */
import type { Clause } from '../clauses/clauses.js';
import type { Hit } from '../grammar/hits.js';
import type { VerbForm } from '../row/lexicon.js';
import type { Piece } from '../pieces/pieces.js';

/** Whether a clause tells of something done, or denies it, intends it, supposes it, reports it or asks it. */
export type Mood = 'done' | 'denied' | 'intended' | 'supposed' | 'reported' | 'asked';

export interface MoodSeen {
  readonly pieces: readonly Piece[];
  readonly clause: Clause;
  readonly hit: Hit;
  /** Of the verb that the head begins with. */
  readonly form: VerbForm | undefined;
  /** The words before the head, and where they begin. */
  readonly before: readonly string[];
  readonly start: number;
}

export interface MoodCase {
  readonly name: string;
  readonly mood: Mood;
  /** Notes in which it decides; tests run them. */
  readonly phrasings: readonly string[];
  readonly when: (seen: MoodSeen) => boolean;
}

export const has = ({ before }: MoodSeen, word: RegExp): boolean => before.some((each) => word.test(each));

/** The word so far before the head, 1 the nearest. */
export const back = ({ before }: MoodSeen, by: number): string => before.at(-by) ?? '';

/** Whether two such words stand side by side. */
export const hasPair = ({ before }: MoodSeen, word: RegExp, next: RegExp): boolean =>
  before.some((each, n) => word.test(each) && next.test(before[n + 1] ?? ''));
