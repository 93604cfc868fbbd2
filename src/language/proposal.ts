/** What a stage of the reading proposes to log: a draft with its kind, before the ledger is asked. */
import type { EntryKind } from '../ledger/entry.js';
import type { Draft } from './acts/drafting/draft.js';
import type { PlantWords } from './pieces/pieces.js';

export interface Proposal {
  readonly kind: EntryKind;
  readonly draft: Draft;
  /** Further slots that the rule itself sets. */
  readonly slots: Readonly<Record<string, unknown>>;
  /** The plant carried from earlier in the note, where the draft names none. */
  readonly carried?: PlantWords;
  /** The rule's name, for the tree. */
  readonly rule: string;
  readonly future?: boolean;
  /** Told as what something else was done for ("to harden off"). */
  readonly purpose?: boolean;
  /** A slot that the words leave open. */
  readonly ask?: string;
}
