/** All that a turn may look at, and all that comes of it: both values. */
import type { Ledger } from '../ledger/ledger.js';
import type { JournalLine } from '../ledger/posting.js';
import type { Instruction } from '../language/instructions/instruction.js';
import type { Keeper } from '../outlook/keeper.js';
import type { LedgerSettings } from './settings/ledger-settings.js';
import type { Talk } from './talk.js';
import type { Outgoing } from './turn.js';

export interface LedgerName {
  readonly id: number;
  readonly name: string;
  /** A group's; then each entry says by whom, wherever it was said. */
  readonly shared: boolean;
}

export interface World {
  readonly chat: string;
  /** Several growers talk here. */
  readonly group: boolean;
  readonly journal: readonly JournalLine[];
  /** `journal`, folded. */
  readonly ledger: Ledger;
  readonly settings: LedgerSettings;
  readonly talk: Talk;
  /** Keeps what is dear to work out; holds no state. */
  readonly keeper: Keeper;
  /** The ledger that the chat writes to, and all that the grower may write to. */
  readonly current: LedgerName;
  readonly ledgers: readonly LedgerName[];
  /** Whose a group's ledger is: who has shared it longest. Null where nobody does, and of a ledger of one grower. */
  readonly founder: { readonly id: string; readonly name: string } | null;
}

/** What a turn asks of the world outside the ledger; done after it was committed. */
export type Errand = Extract<
  Instruction,
  { kind: 'labels' | 'picture' | 'export' | 'invite' | 'erase' | 'switchLedger' }
>;

export interface Turned {
  readonly world: World;
  /** Lines appended, the last ones of `world.journal`. */
  readonly lines: readonly JournalLine[];
  readonly outgoing: readonly Outgoing[];
  readonly errands: readonly Errand[];
}
