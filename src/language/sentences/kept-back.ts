/** "Planted out the Salt Harrier, kept two back for Mum": all but two of those that the act told of as a whole. */
import type { EntryKind } from '../../ledger/entry.js';
import type { Draft } from '../acts/drafting/draft.js';
import type { Rule } from '../grammar/rule.js';
import { isSamePlant } from '../acts/drafting/one-plant.js';
import type { Proposal } from '../proposal.js';
import type { Quantity } from '../pieces/quantities/quantity.js';

/** What may be done to all but some. */
const OF_SOME: ReadonlySet<EntryKind> = new Set([
  'potOn',
  'pinch',
  'move',
  'hardenOff',
  'plantOut',
  'dispatch',
]);

/** The act told before, of all but those that were held back from it; undefined where it gave a number, or they are others. */
export function allButKept(
  last: Proposal | undefined,
  rule: Rule,
  kept: Draft | undefined,
): Proposal | undefined {
  const { value, vague } = kept?.quantity ?? {};
  if (rule.sense !== 'kept' || !last || value === undefined || vague || !OF_SOME.has(last.kind))
    return undefined;
  const { quantity, plant } = last.draft;
  if (quantity && quantity.whole !== 'all' && quantity.whole !== 'rest') return undefined;
  if (kept?.plant && (!plant || !isSamePlant(kept.plant, plant))) return undefined;
  // Of "the rest" nobody has said how many those were.
  const others: Quantity = quantity?.whole === 'rest' ? { vague: true } : { allBut: value };
  return { ...last, draft: { ...last.draft, quantity: others } };
}
