/** A note as it reaches the reader, and what the reader makes of it. */
import type { Instant } from '../calendar/clock.js';
import type { Day } from '../calendar/day.js';
import type { AnswerValue, Entry, EntryKind } from '../ledger/entry.js';
import type { Instruction } from './instructions/instruction.js';

export type DateOrder = 'DMY' | 'MDY';

/** A live batch as the ledger knows it at the moment of the note. */
export interface KnownBatch {
  readonly label: string;
  readonly variety?: string;
  readonly crop?: string;
  readonly struck?: Day;
  /** How many are alive. */
  readonly count?: number;
  readonly pots?: number;
  readonly place?: string;
  readonly rooted?: number;
  readonly pottedOn?: number;
}

export interface KnownVariety {
  readonly name: string;
  readonly crop?: string;
}

/** A prompt that waits for an answer. */
export interface Pending {
  readonly kind: string;
  readonly batch?: string;
}

/** What the ledger knows when the note is read; any part may be missing. */
export interface NoteContext {
  readonly varieties?: readonly KnownVariety[];
  /** Live batches, oldest first. */
  readonly batches?: readonly KnownBatch[];
  readonly places?: readonly string[];
  readonly pending?: Pending;
}

/** A word as speech recognition gave it, `p` its posterior probability (0–1). */
export interface HeardWord {
  readonly word: string;
  readonly p: number;
}

export interface Note {
  readonly text: string;
  /** The moment the note was sent, not the moment it is read. */
  readonly now: Instant;
  readonly zone: string;
  readonly dateOrder?: DateOrder;
  readonly context?: NoteContext;
  /** Whatever its words are like: a part of a note, or a note of which its grower has said what it means. */
  readonly byRules?: boolean;
  /** Present where the note was spoken. */
  readonly heard?: readonly HeardWord[];
}

/** Where a slot's value came from. */
export type Source = 'said' | 'assumed';

/** An entry with the origin of each of its slots. */
export interface ReadEntry {
  readonly entry: Entry;
  readonly sources: Readonly<Record<string, Source>>;
  /** Spoken notes: the lowest posterior among the words that fill a slot. */
  readonly surety?: number;
}

/** What must be asked before entry number `entry` can be logged; that slot is absent there. */
export interface Ask {
  readonly entry: number;
  readonly slot: string;
  readonly options?: readonly unknown[];
}

export interface ReadNote {
  readonly entries: readonly ReadEntry[];
  readonly asks: readonly Ask[];
  /** Present where the note changes settings, snoozes, splits and the like; then there are no entries. */
  readonly instruction?: Instruction;
  /** Entries that the rules read and the note's words are unlike: not logged without a yes. Absent: none. */
  readonly doubted?: readonly ReadEntry[];
  /** The words that were understood as nothing, for a reply that helps. */
  readonly unknown?: string;
}

export type { AnswerValue, EntryKind };
