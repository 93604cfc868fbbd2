/** What the journal holds: entries ready to be posted, and the line that each stands on. */
import type { Instant } from '../calendar/clock.js';
import type { Day } from '../calendar/day.js';
import type { Span } from '../calendar/span.js';
import type { LoggedEntry, Receive, Strike } from './entry.js';

/** Number of a line in its journal, counted from 1. */
export type Line = number;

interface On {
  /** When it was done, resolved when posted, so that a change of zone never moves it. */
  date: Day | Span;
}

interface Labelled {
  /** The label of the batch that begins here, unique for ever in its ledger. */
  label: string;
}

/** Some of a batch goes on as batches of their own; what is left keeps the label. */
export interface Split extends On {
  kind: 'split';
  batch: string;
  /** `place` is told where the part stands elsewhere than what it is parted from. */
  parts: readonly { readonly label: string; readonly count: number; readonly place?: string }[];
  /** Where what is left goes, if that goes elsewhere as well. */
  place?: string;
}

/** `batches` go on as one under the label `into`, which is one of them, with all that was lost or sent out of each. */
export interface Merge extends On {
  kind: 'merge';
  batches: readonly string[];
  into: string;
}

/** A variety is called otherwise from now on, or gets its crop. */
export interface Rename extends On {
  kind: 'rename';
  variety: string;
  to: { readonly variety?: string; readonly crop?: string };
}

/** A grower's own figure for a crop. */
export interface Teach extends On {
  kind: 'teach';
  crop: string;
  daysToRoot: readonly [number, number];
}

/** An entry in the form in which it is posted: dated, and labelled where a batch begins. */
export type Posting =
  | (Exclude<LoggedEntry, Strike | Receive> & On)
  | (Strike & On & Labelled)
  | (Receive & On & Labelled)
  | Split
  | Merge
  | Rename
  | Teach;

/** Line `amends` reads as `entries` from now on: none takes it back, one puts it right, several follow an edited message. */
export interface Amendment {
  readonly amends: Line;
  readonly entries: readonly Posting[];
}

export interface JournalLine {
  readonly line: Line;
  /** When the note was sent; the journal keeps both times. */
  readonly at: Instant;
  readonly postedAt: Instant;
  /** Name of the grower who said it; null where the ledger has one grower. */
  readonly by: string | null;
  /** The message it came in, so that an edit or a reply finds it; `turn` numbers count where no channel has messages. */
  readonly source: { readonly chat: string; readonly message: string } | null;
  readonly what: Posting | Amendment;
}

export function isAmendment(what: Posting | Amendment): what is Amendment {
  return 'amends' in what;
}
