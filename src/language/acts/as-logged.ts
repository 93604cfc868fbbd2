/** What was proposed, as it would be logged: to hold one reading of a row against another. */
import type { Plant } from '../../ledger/entry.js';
import type { Note } from '../note.js';
import type { Proposal } from '../proposal.js';
import { refine } from '../refining/refining.js';

export interface Logged {
  readonly kind: string;
  /** Its plant, or where nothing but a place is told that. */
  readonly of: string;
  /** All of its slots. */
  readonly slots: string;
}

/** Undefined where nothing would be logged, or something of no plant and no place, or more asked than which lot is meant. */
export function asLogged(proposals: readonly Proposal[], note: Note): readonly Logged[] | undefined {
  const logged: Logged[] = [];
  for (const proposal of proposals) {
    const refined = refine(proposal, note.context ?? {});
    if (!refined) continue;
    const { kind, ...slots } = refined.read.entry as { kind: string } & Partial<Plant & { place: string }>;
    const plant = slots.variety ?? slots.batch ?? slots.crop;
    // "Watered the Salt Harrier, vented the greenhouse": of the one or the other.
    const isOfBoth = kind === 'tend' && plant !== undefined && slots.place !== undefined;
    const of = isOfBoth ? undefined : (plant ?? slots.place);
    if (of === undefined || refined.asks.some(({ slot }) => slot !== 'batch')) return undefined;
    logged.push({ kind, of, slots: JSON.stringify(slots) });
  }
  return logged.length > 0 ? logged : undefined;
}
