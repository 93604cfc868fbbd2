/** What a chat remembers between turns beside the journal: questions that wait, prompts given, buttons offered. Plain JSON. */
import type { Instant } from '../calendar/clock.js';
import type { Day } from '../calendar/day.js';
import type { HeardWord } from '../language/note.js';
import type { AnswerValue, EntryKind, LoggedEntry } from '../ledger/entry.js';
import type { JournalLine, Line } from '../ledger/posting.js';
import type { Refusal } from '../ledger/refusal.js';
import type { Snooze } from '../outlook/snoozing.js';
import type { Button, PromptAbout } from './turn.js';

/** The note that an entry or question came from. */
export interface Origin {
  readonly message: string;
  /** Id of the grower. */
  readonly from: string;
  /** Name of the grower where the ledger has several. */
  readonly by: string | null;
  /** When the note was sent. */
  readonly at: Instant;
}

/** A slot that must be known before an entry can be posted. */
export interface SlotAsk {
  readonly ask: 'slot';
  readonly entry: LoggedEntry;
  readonly slot: string;
  readonly options: readonly unknown[];
  /** Why the ledger would not take it as it was said. */
  readonly refusal?: Refusal;
  /** Slots still to be asked after this one. */
  readonly then: readonly { readonly slot: string; readonly options: readonly unknown[] }[];
}

export type Asked =
  | SlotAsk
  /** The same words came twice within a minute. */
  | { readonly ask: 'repeat'; readonly text: string }
  /** Taking `lines` back would leave `dependants` without ground. */
  | { readonly ask: 'dependants'; readonly lines: readonly Line[]; readonly dependants: readonly Line[] }
  /** Which of these lines is to read otherwise. */
  | { readonly ask: 'whichLine'; readonly set: Record<string, unknown>; readonly lines: readonly Line[] }
  /** What these lines should say instead. */
  | { readonly ask: 'change'; readonly lines: readonly Line[] }
  /** "Some" have rooted: how many. */
  | { readonly ask: 'howMany'; readonly line: Line; readonly batch: string }
  /** Which of these batches the entry on that line was about. */
  | { readonly ask: 'otherBatch'; readonly line: Line; readonly labels: readonly string[] }
  /** Which of several open prompts a bare answer is for. */
  | { readonly ask: 'whichPrompt'; readonly value: AnswerValue; readonly occasions: readonly string[] }
  /** One batch renamed, or the variety wherever it stands. */
  | { readonly ask: 'rename'; readonly line: Line; readonly from: string; readonly to: string }
  /** A spoken note waits for a yes; `answers` is the key of the message of ours to which it was spoken in reply. */
  | {
      readonly ask: 'heard';
      readonly words: readonly HeardWord[];
      readonly text: string;
      readonly answers?: string;
    }
  /** What the rules read in a note that is unlike its kind waits for a yes. */
  | { readonly ask: 'meant'; readonly text: string; readonly kind: EntryKind; readonly answers?: string }
  /** Lines of a ledger, or rows of entries, that a document would add. */
  | {
      readonly ask: 'bringIn';
      readonly append: readonly Omit<JournalLine, 'line'>[];
      readonly settings: Readonly<Record<string, unknown>> | null;
    }
  /** Whether all is to be erased for good. */
  | { readonly ask: 'erase' }
  | { readonly ask: 'setup'; readonly step: 'place' | 'zone' | 'digest' };

/** A question of ours that waits for an answer. */
export interface Ask {
  /** Unique in the talk; its buttons carry it. */
  readonly id: number;
  /** Of the message that asked; null while it waits its turn. */
  readonly key: string | null;
  readonly askedAt: Instant;
  readonly origin: Origin;
  readonly asked: Asked;
  /** Whether it was brought up again after other things were said. */
  readonly reminded?: boolean;
}

/** A prompt that was given. */
export interface Prompt {
  /** Of the message that gave it; several may share one. */
  readonly key: string;
  /** What it was about and for which occasion: never given twice. */
  readonly occasion: string;
  readonly givenAt: Instant;
  readonly about: PromptAbout;
  readonly open: boolean;
}

/** A message of ours that may still be tapped, quoted or answered to. */
export interface Offer {
  readonly key: string;
  readonly buttons: readonly Button[];
  /** The lines of the journal that the message speaks of. */
  readonly lines: readonly Line[];
}

/** A message of a grower, lately. */
export interface Heard {
  readonly message: string;
  readonly from: string;
  readonly at: Instant;
  readonly text: string;
  /** Whether it posted or asked something, so that saying it again would double it. */
  readonly counted: boolean;
  /** Whether it said nothing that we could follow. */
  readonly missed?: boolean;
}

export interface Talk {
  /** Number of our next message. */
  readonly next: number;
  /** Number of our next question. */
  readonly nextAsk: number;
  /** Oldest first, as are all lists here. */
  readonly asks: readonly Ask[];
  readonly prompts: readonly Prompt[];
  readonly offers: readonly Offer[];
  readonly heard: readonly Heard[];
  readonly snoozes: readonly Snooze[];
  /** Keys of what was mentioned unasked. */
  readonly mentioned: readonly string[];
  /** Cautions that were said. */
  readonly cautions: readonly string[];
  /** What is left of a long answer. */
  readonly pages: readonly string[];
  /** The local day of the last digest or look for one. */
  readonly lookedOn: Day | null;
  readonly welcomed: boolean;
}

export const newTalk: Talk = {
  next: 1,
  nextAsk: 1,
  asks: [],
  prompts: [],
  offers: [],
  heard: [],
  snoozes: [],
  mentioned: [],
  cautions: [],
  pages: [],
  lookedOn: null,
  welcomed: false,
};
