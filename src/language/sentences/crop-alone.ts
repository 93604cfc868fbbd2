/** "Pinks today. Took 6 Salt Harrier": a crop by itself, which heads what is told behind it. */
import type { Piece } from '../pieces/pieces.js';
import type { Proposal } from '../proposal.js';

const BESIDE =
  /^(?:the|my|our|more|some|next|now|and|then|day|time|again|first|this|morning|afternoon|evening|cuttings|did|it's|was)$/;

/** The crop that a sentence names, and nothing else. */
export function cropAlone(pieces: readonly Piece[]): string | undefined {
  const plants = pieces.flatMap((piece) => (piece.is === 'plant' ? [piece.plant] : []));
  const [only, another] = plants;
  const isHeading = pieces.every(
    (piece) => /^(?:plant|when|break)$/.test(piece.is) || (piece.is === 'word' && BESIDE.test(piece.text)),
  );
  return isHeading && another === undefined && only?.variety === undefined ? only?.crop : undefined;
}

/** Cuttings or plants of a variety nobody knows yet, with the crop of their heading. */
export function underHeading(told: Proposal, crop: string | undefined): Proposal {
  const { plant, known } = told.draft;
  const isNew =
    /^(?:strike|receive|stock)$/.test(told.kind) &&
    known === false &&
    plant?.variety !== undefined &&
    plant.crop === undefined;
  return crop !== undefined && isNew
    ? { ...told, draft: { ...told.draft, plant: { ...plant, crop } } }
    : told;
}
