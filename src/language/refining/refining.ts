/** The sixth stage: drafts against what the ledger knows. One candidate is taken, several are asked about or covered. */
import type { Entry } from '../../ledger/entry.js';
import type { Ask, NoteContext, ReadEntry } from '../note.js';
import type { Proposal } from '../proposal.js';
import { tellCount } from './count.js';
import { tellDate } from './date.js';
import { ask, type OpenEntry, say } from './open-entry.js';
import { tellPlant } from './plant.js';

export interface Refined {
  readonly read: ReadEntry;
  readonly asks: readonly Omit<Ask, 'entry'>[];
}

/**
 * Turns a proposal into an entry with the origin of each slot, and what must be asked first. Null: nothing to log.
 * `lately` is the batch of the entry before it, which a plant carried over means again.
 */
export function refine(proposal: Proposal, context: NoteContext, lately?: string): Refined | null {
  const { kind } = proposal;
  const entry: OpenEntry = { slots: {}, sources: {}, asks: [] };
  const batch = tellPlant(proposal, context, entry, lately);
  for (const [slot, value] of Object.entries(proposal.slots)) say(entry, slot, value);
  if (!tellCount(proposal, batch, entry)) return null;
  tellDate(proposal, entry);
  const { slots, sources, asks } = entry;
  if (kind === 'move' && slots['place'] === undefined) ask(entry, 'place');
  if (proposal.ask !== undefined) ask(entry, proposal.ask);
  return { read: { entry: { kind, ...slots } as Entry, sources }, asks };
}
