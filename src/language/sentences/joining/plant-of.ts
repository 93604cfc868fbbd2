/** Which plant a proposal is about, by its own words or by what was named before. */
import { isSamePlant } from '../../acts/drafting/one-plant.js';
import type { PlantWords } from '../../pieces/pieces.js';
import type { Proposal } from '../../proposal.js';

/** The plant of its own words, else the one carried to it. */
export function plantToldOf(proposal: Proposal): PlantWords | undefined {
  return proposal.draft.plant ?? proposal.carried;
}

/** Whether both are named, and alike. */
export function isOnePlant(a: PlantWords | undefined, b: PlantWords | undefined): boolean {
  return a !== undefined && b !== undefined && isSamePlant(a, b);
}
