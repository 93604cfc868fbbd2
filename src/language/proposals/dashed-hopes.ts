/** What was hoped for and did not come about: "was hoping for twelve of the Salt Harrier, but only seven have roots". */
import { findHits } from '../grammar/hits.js';
import { wordAt } from '../grammar/rule.js';
import { rules } from '../grammar/rules.js';
import type { Piece } from '../pieces/pieces.js';
import { plantsIn } from '../sentences/sentences.js';

const LEADS = /^(?:i|we|i'd|we'd|had|was|were|been|really|rather|only|well|secretly)$/;
/** Told in the past by themselves. */
const HOPED = /^(?:hoped|wanted|expected|counted|banked|aimed|bargained)$/;
/** Told in the past by the word before them ("was hoping"). */
const HOPING = /^(?:hoping|wanting|expecting|counting|banking|aiming|angling|after)$/;

/** Where the words of a hope that lies behind end, else 0. */
function hopeAt(pieces: readonly Piece[]): number {
  let at = 0;
  while (LEADS.test(wordAt(pieces, at))) at++;
  const word = wordAt(pieces, at);
  const isPast =
    HOPED.test(word) || (HOPING.test(word) && /^(?:was|were|been|had)$/.test(wordAt(pieces, at - 1)));
  // "Was hoping to take twelve": an act, and no number of plants to have.
  return isPast && wordAt(pieces, at + 1) !== 'to' ? at + 1 : 0;
}

/** The sentence as it came out, with the plant that the hope was for; as it was where nothing came between. */
export function withoutDashedHope(pieces: readonly Piece[]): readonly Piece[] {
  const from = hopeAt(pieces);
  if (from === 0) return pieces;
  const joint = pieces.findIndex(
    (piece, at) => at > from && (piece.is === 'break' || wordAt(pieces, at) === 'but'),
  );
  if (joint < 0) return pieces;
  const hope = pieces.slice(from, joint);
  const [hopedFor, another] = plantsIn(hope);
  // "Was hoping for twenty by June": what is wanted still.
  if (!hopedFor || another || !hope.some(({ is }) => is === 'count') || hope.some(({ is }) => is === 'when'))
    return pieces;
  const isBut = wordAt(pieces, joint) === 'but' || wordAt(pieces, joint + 1) === 'but';
  const outcome = pieces.slice(wordAt(pieces, joint + 1) === 'but' ? joint + 2 : joint + 1);
  if (
    !isBut &&
    !/^(?:got|ended|only|just)$/.test(wordAt(outcome, 0)) &&
    findHits(rules, outcome).length === 0
  )
    return pieces;
  return plantsIn(outcome).length > 0 ? outcome : [hopedFor, ...outcome];
}
