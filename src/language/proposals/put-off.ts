/** Replies that put the deed off to a day: "not yet, I'll do it on Saturday". */
import { proposeAnswer } from './answer-proposal.js';
import { findRemind } from '../grammar/remind.js';
import { wordAt } from '../grammar/rule.js';
import type { Note } from '../note.js';
import type { Piece } from '../pieces/pieces.js';
import type { Proposal } from '../proposal.js';
import { proposeRemind } from '../reminding/remind-proposal.js';
import { lineOf, sentenceOf } from '../sentences/sentences.js';
import type { Utterance } from '../pieces/utterance.js';

/** The answer and what is intended instead; a bare "no" answers only where something was asked. */
export function putOff(
  pieces: readonly Piece[],
  utterance: Utterance,
  note: Note,
): readonly Proposal[] | undefined {
  const found = findRemind(pieces);
  if (!found?.rule.beforeVerb) return undefined;
  let end = found.from;
  while (end > 0 && (pieces[end - 1]?.is === 'break' || JOINS.test(wordAt(pieces, end - 1)))) end--;
  const first = pieces.slice(0, end);
  const answer = proposeAnswer(lineOf(first, utterance), first, note);
  const value = answer?.slots['value'];
  if (!answer || !(value === 'notYet' || (value === 'no' && note.context?.pending))) return undefined;
  const rest = sentenceOf(pieces.slice(end), utterance);
  const { proposals = [], before = [] } = proposeRemind(rest, utterance, note) ?? {};
  const isAll = proposals.length > 0 && before.every((piece) => piece.is !== 'plant' && piece.is !== 'count');
  return isAll ? [answer, ...proposals] : undefined;
}

const JOINS = /^(?:but|and|so|i|we)$/;
