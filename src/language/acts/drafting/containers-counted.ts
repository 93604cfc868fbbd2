/** Containers that are counted, and what each holds, give the cuttings ("six pots, three to a pot"). */
import type { Draft, OpenDraft } from './draft.js';

/** The draft with the number that its containers and what each holds come to, or the containers that its number fills. */
export function countedByContainers(draft: Draft): Draft {
  const { pots, each, quantity, size } = draft;
  if (each === undefined) return draft;
  const cells = size?.endsWith('cell') ? Number(size.slice(0, -4)) : undefined;
  const value = quantity?.value;
  if (cells === undefined && pots === undefined && value !== undefined && value % each === 0)
    return { ...draft, pots: value / each };
  if (quantity !== undefined && quantity.whole === undefined) return draft;
  // "Put them in the greenhouse, ten to a pot": how they stand, not how many.
  if (pots === undefined && draft.pronoun) return draft;
  // "Took those, four in each": of how many, nobody has said.
  if (pots === undefined && cells === undefined) return draft;
  return { ...draft, quantity: { value: (cells ?? 1) * each * (pots ?? 1) } };
}

/** "Three in each of the two pots": the number told is that of one pot. */
export function countPerPot(draft: OpenDraft): void {
  const { pots, quantity, each } = draft;
  // "Took 14, seven in each of two pots": told as a whole before.
  if (pots !== undefined && each !== undefined && pots * each === quantity?.value) return;
  if (pots !== undefined && quantity?.value !== undefined) draft.quantity = { value: pots * quantity.value };
}
