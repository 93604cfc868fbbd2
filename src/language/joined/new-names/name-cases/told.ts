/** Names that the words around them tell to be such, and what people and things are called. */
import { wordAt } from '../../../grammar/rule.js';
import { isOnLabel } from '../../../pieces/on-label.js';
import type { Piece } from '../../../pieces/pieces.js';
import { isOfCropBefore } from '../beside-crop.js';
import { isCapitalOf } from '../capitals.js';
import { isGiverOrTaker } from '../giver-or-taker.js';
import { isIntroduced } from '../introduced.js';
import { endsName, isComeBy, isCrop } from '../position.js';
import { isAtEnd, lastWord } from '../run.js';
import { isSomebodys, isToldOf } from '../told-of.js';
import { isWritten, type NameCase } from './case.js';

const isBracket = (piece: Piece | undefined, mark: string): boolean =>
  piece?.is === 'break' && piece.mark === mark;

const NO_NAME_ALONE =
  /^(?:on|up|out|off|in|into|to|of|from|at|with|by|over|down|back|away|and|the|more|cuttings?|slips?|tips?|shoots?|stems?|plants?|plugs?|pots?|trays?|tubers?|stools?|crowns?|seedlings?|leaves|leaf|today|yesterday)$/;

export const told: readonly NameCase[] = [
  {
    // Where every word of a note has a capital.
    name: 'Potted On 6, Took 12 Cuttings Of',
    isName: false,
    when: ({ pieces, at, length }) =>
      wordAt(pieces, at) === 'of' ||
      ((length === 1 || wordAt(pieces, at + 1) === 'of') && NO_NAME_ALONE.test(wordAt(pieces, at))),
  },
  {
    name: 'sold Pauline 3 Salt Harrier',
    isName: false,
    when: ({ pieces, tokens, before, end, length, isCapital, isShouted }) =>
      isGiverOrTaker(
        before,
        pieces.slice(end),
        length,
        isCapital,
        (piece) => !isShouted && isCapitalOf(tokens, piece),
      ),
  },
  {
    name: 'a rosemary Gwen calls Salt Harrier',
    isName: false,
    when: ({ pieces, before, end, length }) =>
      length === 1 && isCrop(before.at(-1)) && /^(?:calls|swears|reckons)$/.test(wordAt(pieces, end)),
  },
  {
    // Spectacles, keys and the like.
    name: 'lost my glasses somewhere',
    isName: false,
    when: ({ before, capital }) =>
      capital === 0 &&
      /^(?:my|our|his|her)$/.test(wordAt(before, before.length - 1)) &&
      wordAt(before, before.length - 2) === 'lost',
  },
  {
    name: 'brought home a Salt Harrier from the fair',
    isName: true,
    when: (seen) => isWritten(seen) && isComeBy(seen.before) && endsName(seen.pieces, seen.end),
  },
  {
    name: '8 coleus cuttings of Marble Finch',
    isName: true,
    when: (seen) => isWritten(seen) && isOfCropBefore(seen),
  },
  {
    name: '10 lavender cuttings, cold frame (Grey Curate)',
    isName: true,
    when: ({ pieces, before, end, isCapital }) =>
      isCapital &&
      isBracket(before.at(-1), '(') &&
      isBracket(pieces[end], ')') &&
      before.some(isCrop) &&
      before.every((piece) => piece.is !== 'plant' || piece.plant.variety === undefined),
  },
  {
    name: '…, label says Rusty Verger',
    isName: true,
    when: ({ pieces, before, at, length, isCapital }) =>
      isCapital &&
      before.some(isCrop) &&
      isOnLabel([...before, ...pieces.slice(at)], before.length, before.length + length),
  },
  {
    name: "took six salvia, she says it's Marble Finch",
    isName: true,
    when: (seen) =>
      isWritten(seen) &&
      !isSomebodys(seen.pieces.slice(seen.at, seen.end).map((_, n) => wordAt(seen.pieces, seen.at + n))) &&
      isToldOf(seen.before),
  },
  {
    name: '8 coleus plugs in, one I have not grown before, Marble Finch',
    isName: true,
    when: (seen) => isWritten(seen) && isAtEnd(seen) && isIntroduced(seen.before),
  },
  {
    name: 'it was Marble Wren, not Ember Fox',
    isName: true,
    when: (seen) =>
      isWritten(seen) &&
      /^(?:was|were|be|meant|mean|it's|that's|not)$/.test(lastWord(seen)) &&
      (isAtEnd(seen) || wordAt(seen.pieces, seen.end) === 'not'),
  },
];
