/** Which pots plants went into, told in a sentence of its own: "Pots of 11 cm.", "Bellhops in 1L, the others 9cm". */
import type { Piece, PlantWords } from '../pieces/pieces.js';
import { isOnePlant, plantToldOf } from './joining/plant-of.js';
import type { Proposal } from '../proposal.js';
import { partsAtMarks, type Sentence } from './sentences.js';

const AROUND =
  /^(?:the|my|in|into|to|are|were|went|go|all|now|and|pots?|of|them|those|up|used|using|this|time|each|it|was|size)$/;

/** A part of such a sentence: a plant, or the others, and the size. */
interface Sized {
  readonly plant?: PlantWords;
  readonly size: string;
}

/** What was told, with its sizes; undefined where the sentence says anything else, or of nothing that was potted. */
export function sizedBy(
  told: readonly Proposal[],
  { pieces, asked }: Sentence,
): readonly Proposal[] | undefined {
  const open = told.filter(isOpen);
  if (asked || open.length === 0) return undefined;
  const parts = partsAtMarks(pieces).map(sizedIn);
  if (parts.length === 0 || !parts.every((part) => part !== undefined)) return undefined;
  let sized = told;
  for (const { plant, size } of parts) {
    const meant = sized.filter(
      (each) => isOpen(each) && (plant === undefined || isOnePlant(plantToldOf(each), plant)),
    );
    if (meant.length === 0) return undefined;
    sized = sized.map((each) =>
      meant.includes(each) ? { ...each, slots: { ...each.slots, potSize: size } } : each,
    );
  }
  return sized;
}

const isOpen = ({ kind, slots }: Proposal): boolean =>
  /^(?:potOn|strike)$/.test(kind) && slots['potSize'] === undefined;

function sizedIn(part: readonly Piece[]): Sized | undefined {
  const told = part.filter((piece) => !(piece.is === 'word' && AROUND.test(piece.text)));
  const [which, size, more] = told;
  if (which?.is === 'size' && !size) return { size: which.size };
  if (more || size?.is !== 'size') return undefined;
  if (which?.is === 'plant') return { plant: which.plant, size: size.size };
  // "All in 9cm", "the others 9cm".
  const { both, whole } = which?.is === 'count' ? which.quantity : {};
  return both === true || whole === 'all' || whole === 'rest' ? { size: size.size } : undefined;
}
