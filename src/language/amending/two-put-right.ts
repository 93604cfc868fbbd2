/** Two values put right in one sentence: "the dahlia was 10 and the fuchsia was 8", "it was 3, and it was yesterday". */
import { proposeRestatement } from './amend-proposal.js';
import { wordAt } from '../grammar/rule.js';
import type { Note } from '../note.js';
import type { Piece } from '../pieces/pieces.js';
import type { Proposal } from '../proposal.js';
import { plantsIn, type Sentence } from '../sentences/sentences.js';
import type { Utterance } from '../pieces/utterance.js';

/** Nobody puts two things right in more pieces. */
const LONGEST = 24;

/** Both amendments; undefined where the sentence makes no two of them. */
export function twoPutRight(
  { pieces }: Sentence,
  utterance: Utterance,
  note: Note,
): readonly Proposal[] | undefined {
  if (pieces.length > LONGEST) return undefined;
  const row = withoutHeading(pieces);
  for (const [at, piece] of row.entries()) {
    const joins = piece.is === 'break' || wordAt(row, at) === 'and';
    const [before, behind] = [row.slice(0, at), row.slice(at + 1)];
    if (!joins || !tellsValue(before) || !tellsValue(behind)) continue;
    const first = proposeRestatement(before, utterance, note);
    const second =
      first &&
      (proposeRestatement(behind, utterance, note) ??
        proposeRestatement(spelledOut(behind, before, note), utterance, note));
    if (first && second && areApart(first, second)) return [first, second];
  }
  return undefined;
}

/** "Two corrections: the dahlia was 10, …" without what only says that they come. */
function withoutHeading(pieces: readonly Piece[]): readonly Piece[] {
  const at = pieces.findIndex(({ is }) => is === 'break');
  const announces = pieces
    .slice(0, Math.max(at, 0))
    .some((_, n) =>
      /^(?:corrections?|changes|fixes|amendments?|edits|mistakes|errors)$/.test(wordAt(pieces, n)),
    );
  return announces && at < 6 ? pieces.slice(at + 1) : pieces;
}

const tellsValue = (row: readonly Piece[]): boolean => row.some(({ is }) => is !== 'word' && is !== 'break');

/** "… and the fuchsia 8", as the half before it said it. */
function spelledOut(row: readonly Piece[], before: readonly Piece[], note: Note): readonly Piece[] {
  const copula = before.findIndex((_, at) => /^(?:was|were)$/.test(wordAt(before, at)));
  const was = before[copula];
  // "It was 15 Salt Harrier and 12 Tallow Bell".
  if (was && row.length === 2 && row[0]?.is === 'count' && areOfOneDay([...before, ...row], note))
    return [...before.slice(0, copula + 1), ...row];
  const plant = row.findIndex(({ is }) => is === 'plant');
  if (!was || plant < 0 || row[plant + 1]?.is !== 'count') return row;
  return [...row.slice(0, plant + 1), was, ...row.slice(plant + 1)];
}

/** Whether the plants have one batch each, begun on one day: told together, as likely as not. */
function areOfOneDay(row: readonly Piece[], { context }: Note): boolean {
  const days = plantsIn(row).map(({ plant }) => {
    const [only, another] = (context?.batches ?? []).filter(
      ({ variety }) => variety !== undefined && variety === plant.variety,
    );
    return another ? undefined : only?.struck;
  });
  return days.length === 2 && days[0] !== undefined && days[0] === days[1];
}

/** Of two plants that are told apart, or of two slots of one entry. */
function areApart(first: Proposal, second: Proposal): boolean {
  const [one, other] = [first.draft.plant, second.draft.plant];
  if (one && other) return JSON.stringify(one) !== JSON.stringify(other);
  // "It should be 8 and the Salt Harrier should be 12": of the last note, and of another plant.
  if (!one && other) return true;
  const slots = (each: Proposal) => Object.keys((each.slots as { set?: object }).set ?? {});
  return other === undefined && slots(second).every((slot) => !slots(first).includes(slot));
}
