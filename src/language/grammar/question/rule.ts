/** What a rule for a question is: a record named like the question, with what it asks about. */
import type { Topic } from '../../../ledger/entry.js';

export interface QuestionRule {
  readonly name: string;
  readonly topic: Topic;
  readonly pattern: RegExp;
  /** Only with a plant or place in the sentence; without one it is small talk. */
  readonly needsPlant?: true;
  /** What a line must hold to be this though nothing in it asks; a rule without it needs a question. */
  readonly unasked?: RegExp;
  /** Unasked, it needs no plant either. */
  readonly alone?: true;
  /** Questions that are answered under its topic; tests ask them. */
  readonly phrasings: readonly string[];
}
