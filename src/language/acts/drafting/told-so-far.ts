/** What a clause has told up to a piece: its drafts, one for each plant, and what a number means for those to come. */
import type { Quantity } from '../../pieces/quantities/quantity.js';
import type { Draft, OpenDraft } from './draft.js';

export interface ToldSoFar {
  /** One for each plant; the last is the one being told. */
  readonly drafts: OpenDraft[];
  /** With which of the drafts each slot was said. */
  readonly saidWith: Partial<Record<keyof Draft, number[]>>;
  /** Slots that were said before any plant. */
  readonly ahead: Set<keyof Draft>;
  /** "Three in each of the two pots": the number is that of one pot. */
  eachOfPots: boolean;
  /** "Three each of these and those": the number of every plant that has none. */
  ofEach: Quantity | undefined;
  /** A number that stands before the act. */
  countedBefore: boolean;
  /** "From the 16 … are rooted 11": the first number is what there was. */
  sourced: boolean;
}

/** Nothing told yet. */
export const untold = (): ToldSoFar => ({
  drafts: [{}],
  saidWith: {},
  ahead: new Set(),
  eachOfPots: false,
  ofEach: undefined,
  countedBefore: false,
  sourced: false,
});

/** The draft of the plant that is being told of. */
export const currentDraft = ({ drafts }: ToldSoFar): OpenDraft => drafts.at(-1) ?? {};

/** Remembers that the slot was said with the current draft. */
export function noteSlot({ drafts, saidWith, ahead }: ToldSoFar, slot: keyof Draft): void {
  if (drafts.every(({ plant, quantity }) => plant === undefined && quantity === undefined)) ahead.add(slot);
  saidWith[slot] = [...(saidWith[slot] ?? []), drafts.length - 1];
}
