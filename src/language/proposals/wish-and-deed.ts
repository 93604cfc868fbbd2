/** A wish and a deed in one sentence, whichever was told first. */
import { proposeActs } from '../acts/acts.js';
import { wordAt } from '../grammar/rule.js';
import type { Note } from '../note.js';
import type { Piece, PlantWords } from '../pieces/pieces.js';
import type { Proposal } from '../proposal.js';
import { LONGEST_TWOFOLD, plantsIn, type Sentence, sentenceOf } from '../sentences/sentences.js';
import { proposeTarget, wantsPlants } from './target-proposal.js';
import type { Utterance } from '../pieces/utterance.js';

/** "I'd like twenty by mid May, oh and took the first five today": a wish, then a deed; or the other way about. */
export function targetThenActs(
  sentence: Sentence,
  utterance: Utterance,
  note: Note,
): readonly Proposal[] | undefined {
  const { pieces } = sentence;
  const joints = [...pieces.keys()].filter(
    (at) => at > 0 && (pieces[at]?.is === 'break' || /^(?:and|so)$/.test(wordAt(pieces, at))),
  );
  if (joints.length === 0 || pieces.length > LONGEST_TWOFOLD || !wantsPlants(sentence)) return undefined;
  for (const at of joints.reverse()) {
    const before = sentenceOf(pieces.slice(0, at), utterance);
    const after = sentenceOf(pieces.slice(at + 1), utterance);
    // "Took eight, all basal, and I want twenty by the end of May".
    if (/^(?:i|we|i'd)$/.test(wordAt(after.pieces, 0))) {
      const done = proposeActs(before.pieces, [], utterance, note).proposals;
      const wish = done.length > 0 ? proposeTarget(after, false, lastPlant(done)) : undefined;
      if (wish) return [...done, ...wish];
    }
    const told = after.pieces.find((piece) => piece.is === 'word' && piece.verb !== undefined);
    if (!told || !isDeed(told) || before.pieces.some(isDeed)) continue;
    const hasDone = proposeActs(before.pieces, [], utterance, note).proposals.length > 0;
    const wanted = proposeTarget(before, hasDone);
    // "She wants only two: gave 2 Harbour Nun to Maureen": the wish is why, and names no plant of its own.
    const isReason = !wanted && !hasDone && wantsPlants(before) && plantsIn(before.pieces).length === 0;
    if (!wanted && !isReason) continue;
    const acts = proposeActs(after.pieces, wanted ?? [], utterance, note).proposals;
    // "Order for the school: 30 Salt Harrier, 20 Tallow Bell went on the van": what went is all that was ordered.
    const isList = after.pieces[0]?.is === 'count' && /\border\b/.test(before.line);
    if (isList && acts.every(({ kind }) => kind === 'dispatch')) continue;
    if (acts.length > 0) return [...(wanted ?? []), ...acts];
  }
  return undefined;
}

const isDeed = (piece: Piece): boolean =>
  piece.is === 'word' && piece.verb?.form === 'past' && piece.text !== 'wanted';

/** The plant told of last. */
export function lastPlant(told: readonly Proposal[]): PlantWords | undefined {
  const last = told.findLast(({ draft, carried }) => draft.plant ?? carried);
  return last?.draft.plant ?? last?.carried;
}
