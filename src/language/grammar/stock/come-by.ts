/** Plants told of as come by: so many of them, or one that is new or was paid for. */
import type { Piece } from '../../pieces/pieces.js';
import { follows, followsWord } from '../rule.js';

const isA = (words: string): ((piece: Piece) => boolean) => {
  const pattern = new RegExp(`^(?:${words})$`);
  return (piece) => piece.is === 'word' && pattern.test(piece.text);
};

/** What stands before a plant that is spoken of as one of its kind. */
const BEFORE = 'a|an|another|new|lovely|gorgeous|big|little|small|cheap|young';

const isArticle = isA('a|an|another');
const isNew = isA('new');
const leadsToOne = isA(`${BEFORE}|nice|old|fab|cracking|second|called`);
const leadsToSome = isA(`${BEFORE}|old|of|more|reduced|rooted|tubers?|crowns?|plants?|plugs?|liners?|extra`);

/** "A new hebe", "a Salt Harrier for £3": one that was not there before, or that money was paid for. */
export function isOneComeBy(pieces: readonly Piece[], from: number): boolean {
  const plant = plantFrom(pieces, from);
  if (plant < 0 || plant > from + 5) return false;
  const lead = pieces.slice(from, plant);
  return (
    lead.every((piece) => piece.is === 'count' || leadsToOne(piece)) &&
    (lead.some(isNew) ||
      (follows(pieces, plant, 'money') &&
        !followsWord(pieces, plant, /^(?:rot|leaves|roots|dead|sold|sale)$/)))
  );
}

/** "A tuber of a dahlia", "another two Salt Harrier": so many of a plant, and nothing of it to be looked at. */
export function isSome(pieces: readonly Piece[], from: number): boolean {
  const lead = pieces.slice(from, Math.max(from, plantFrom(pieces, from)));
  return (
    lead.some((piece) => piece.is === 'count' || isArticle(piece)) &&
    lead.every((piece) => /^(?:count|pots|size)$/.test(piece.is) || leadsToSome(piece))
  );
}

const plantFrom = (pieces: readonly Piece[], from: number): number =>
  pieces.findIndex(({ is }, at) => at >= from && is === 'plant');
