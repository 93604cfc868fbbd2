/** What a record of the misheard is: named like the phrase that it mends, with what its neighbours must be. */
import type { HeardView } from './view.js';

export interface Misheard {
  readonly name: string;
  /** The word that was heard → the word that was meant, or several, which are written over as many that were heard. */
  readonly mends: Readonly<Record<string, string>>;
  /** The neighbours that make it this phrase; of the records for a word the first that knows it decides. Absent: any. */
  readonly when?: (view: HeardView) => boolean;
  /** What must hold besides; where it does not, the word stands as heard and no later record is asked. */
  readonly onlyIf?: (view: HeardView) => boolean;
  /** Phrases as heard and as meant, which the record mends by itself; tests run them. */
  readonly phrasings: readonly (readonly [heard: string, meant: string])[];
  /** Phrases that hold its words and must stand as heard. */
  readonly mustNot?: readonly string[];
}

/** What `mends` says where several words are heard for one; `heard` is divided by `|`. */
export function allFor(meant: string, heard: string): Readonly<Record<string, string>> {
  return Object.fromEntries(heard.split('|').map((each) => [each, meant]));
}
