/** The closed set of what a note can say: the entries of the note contract, one type a kind. */
import type { Day } from '../calendar/day.js';
import type { Span } from '../calendar/span.js';
import type { TimeOfDay } from '../calendar/zone.js';

/** A whole number, all that live, or those not yet named. */
export type Count = number | 'all' | 'rest';
export type Rooted = number | 'all' | 'none' | 'some';

export const cuttingTypes = [
  'basal', 'nodal', 'internodal', 'tip', 'heel', 'leaf', 'leafBud', 'root', 'softwood', 'semiRipe', 'hardwood',
] as const; // prettier-ignore
export type CuttingType = (typeof cuttingTypes)[number];

export const causes = [
  'rot',
  'dampingOff',
  'mould',
  'wilt',
  'drought',
  'frost',
  'pest',
  'broken',
  'other',
] as const;
export type Cause = (typeof causes)[number];

export const cares = ['mist', 'water', 'vent', 'feed', 'shade', 'cover', 'uncover'] as const;
export type Care = (typeof cares)[number];

export const topics = [
  'due', 'count', 'where', 'status', 'when', 'history', 'rate', 'plan', 'frost', 'help',
] as const; // prettier-ignore
export type Topic = (typeof topics)[number];

export type Manner = 'given' | 'sold' | 'swapped';
export type AnswerValue = 'yes' | 'no' | 'notYet' | 'all' | 'none' | number;

/** What an entry is about; at least one of the three where its kind needs a plant. */
export interface Plant {
  variety?: string;
  crop?: string;
  /** A label of the ledger. */
  batch?: string;
}

interface Dated {
  /** Left out: the local day on which the note was sent. */
  date?: Day | Span;
}

export interface Stock extends Plant, Dated {
  kind: 'stock';
  count?: Count;
  place?: string;
  potSize?: string;
}
export interface Receive extends Plant, Dated {
  kind: 'receive';
  count?: Count;
  place?: string;
  potSize?: string;
}
export interface Reading extends Dated {
  kind: 'reading';
  celsius?: number;
  place?: string;
}
export interface Strike extends Plant, Dated {
  kind: 'strike';
  count?: Count;
  pots?: number;
  cutting?: CuttingType;
  medium?: string;
  hormone?: boolean;
  place?: string;
  potSize?: string;
}
export interface Tend extends Plant, Dated {
  kind: 'tend';
  care?: Care;
  place?: string;
}
export interface Check extends Plant, Dated {
  kind: 'check';
  rooted?: Rooted;
  count?: Count;
}
export interface Loss extends Plant, Dated {
  kind: 'loss';
  count?: Count;
  cause?: Cause;
}
export interface PotOn extends Plant, Dated {
  kind: 'potOn';
  count?: Count;
  potSize?: string;
  medium?: string;
}
export interface Pinch extends Plant, Dated {
  kind: 'pinch';
  count?: Count;
}
export interface Move extends Plant, Dated {
  kind: 'move';
  count?: Count;
  place?: string;
  fromPlace?: string;
}
export interface HardenOff extends Plant, Dated {
  kind: 'hardenOff';
  count?: Count;
  place?: string;
}
export interface PlantOut extends Plant, Dated {
  kind: 'plantOut';
  count?: Count;
  place?: string;
}
export interface Dispatch extends Plant, Dated {
  kind: 'dispatch';
  count?: Count;
  how?: Manner;
  to?: string;
}
export interface Remark extends Plant, Dated {
  kind: 'remark';
  text?: string;
}
export interface Target extends Plant, Dated {
  kind: 'target';
  count?: Count;
}
export interface Remind extends Plant, Dated {
  kind: 'remind';
  text?: string;
  time?: TimeOfDay;
}
export interface Question extends Plant {
  kind: 'question';
  topic?: Topic;
  place?: string;
  from?: Day;
  to?: Day;
}
export interface Answer extends Plant, Dated {
  kind: 'answer';
  value?: AnswerValue;
}
export interface Undo {
  kind: 'undo';
}
/** `set` holds the slots that change, in the form of the entry meant. */
export interface Amend extends Plant, Dated {
  kind: 'amend';
  set?: Record<string, unknown>;
}

/** What is logged: things done, seen, wanted. */
export type LoggedEntry =
  | Stock | Receive | Reading | Strike | Tend | Check | Loss | PotOn | Pinch | Move | HardenOff | PlantOut | Dispatch
  | Remark | Target | Remind; // prettier-ignore

/** What a note can say; slots that must still be asked about are absent. */
export type Entry = LoggedEntry | Question | Answer | Undo | Amend;
export type EntryKind = Entry['kind'];
