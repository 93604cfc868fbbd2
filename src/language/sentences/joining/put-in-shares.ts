/** "Took 20 and put eight in the propagator and the other twelve in the frame": where the cuttings just taken went, a strike for each. */
import type { Proposal } from '../../proposal.js';

/** The proposals with what was moved of a strike told as strikes, where together they are as many as were taken. */
export function putInShares(proposals: readonly Proposal[]): readonly Proposal[] {
  const told: Proposal[] = [];
  for (let at = 0; at < proposals.length;) {
    const strike = proposals[at];
    if (!strike) break;
    const moves = sharesBehind(strike, proposals, at + 1);
    if (moves.length > 1)
      told.push(
        ...moves.map(({ draft, slots }) => ({
          ...strike,
          slots: { ...strike.slots, place: slots['place'] },
          draft: { ...strike.draft, ...(draft.quantity ? { quantity: draft.quantity } : {}) },
        })),
      );
    else told.push(strike);
    at += moves.length > 1 ? moves.length + 1 : 1;
  }
  return told;
}

/** The moves straight behind a strike, of no other plant, that come to what was taken; else none. */
function sharesBehind(strike: Proposal, proposals: readonly Proposal[], from: number): readonly Proposal[] {
  const taken = strike.draft.quantity?.value;
  if (strike.kind !== 'strike' || taken === undefined || strike.slots['place'] !== undefined) return [];
  const moves: Proposal[] = [];
  let sum = 0;
  for (let at = from; at < proposals.length; at++) {
    const move = proposals[at];
    if (move?.kind !== 'move' || move.draft.plant !== undefined || move.draft.fromPlace !== undefined) break;
    if (move.slots['place'] === undefined) break;
    const { quantity } = move.draft;
    const value = quantity?.whole === 'rest' ? taken - sum : (quantity?.value ?? Number.NaN);
    moves.push({ ...move, draft: { ...move.draft, quantity: { value } } });
    sum += value;
    if (sum === taken && value > 0) return moves;
  }
  return [];
}
