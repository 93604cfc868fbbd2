/** Names that stand by the crop they are of, and words that only describe it. */
import { wordAt } from '../../../grammar/rule.js';
import type { Piece } from '../../../pieces/pieces.js';
import {
  isBehindCuttings,
  isBehindWhence,
  isBesideCrop,
  isCountedBehind,
  isCropApart,
  isParentOfCuttings,
} from '../beside-crop.js';
import { onlyDescribes } from '../describing.js';
import { inPlantPosition, isCrop } from '../position.js';
import { isAtEnd, lastWord } from '../run.js';
import { isWritten, opensSentence, standsForPlant, type NameCase } from './case.js';

/** "… was chucking out", "… gave me": what somebody did. */
const isDoing = (piece: Piece | undefined): boolean =>
  piece?.is === 'word' &&
  (piece.verb?.form === 'past' || /^(?:was|is|has|had|were|didn't|wanted|gave|got|can't)$/.test(piece.text));

export const besideCrop: readonly NameCase[] = [
  {
    name: 'took 14 mum cuttings from Velvet Turnstile',
    isName: true,
    when: isParentOfCuttings,
  },
  {
    name: 'took six leggy straggling salvia',
    isName: false,
    when: ({ pieces, at, end, capital }) =>
      capital === 0 && onlyDescribes(pieces.slice(at, end).map((_, n) => wordAt(pieces, at + n))),
  },
  {
    name: 'took 5 each of Tin Whistler and Spotted Dick',
    isName: true,
    when: (seen) =>
      isWritten(seen) &&
      lastWord(seen) === 'and' &&
      seen.before.at(-2)?.is === 'plant' &&
      wordAt(seen.before, seen.before.length - 4) === 'each' &&
      wordAt(seen.before, seen.before.length - 3) === 'of',
  },
  {
    name: 'took six hydrangea cuttings velour tuba two pots',
    isName: true,
    when: isBehindCuttings,
  },
  {
    name: 'Quarry Annie dahlia',
    isName: true,
    when: (seen) => isBesideCrop(seen) && (seen.capital > 0 || (seen.unknown > 0 && standsForPlant(seen))),
  },
  {
    name: 'dahlia Quarry Annie',
    isName: true,
    when: ({ pieces, end, before, length, unknown, isCapital }) =>
      isCrop(before.at(-1)) &&
      (isCapital ||
        // No "the fuchsia mary pellow was chucking out".
        (unknown > 0 && length >= 2 && !isDoing(pieces[end]) && inPlantPosition(before.slice(0, -1)))),
  },
  {
    name: "30 petunia plugs came from Hexley's, Captain Drizzle",
    isName: true,
    when: (seen) => isWritten(seen) && isAtEnd(seen) && isBehindWhence(seen),
  },
  {
    name: 'did Salt Harrier as well, penstemon, nine cuttings',
    isName: true,
    when: (seen) =>
      (isWritten(seen) || opensSentence(seen)) &&
      isCropApart(seen) &&
      (seen.before.length === 0 ||
        seen.before.at(-1)?.is === 'break' ||
        /^(?:did|done|took|taken|struck|stuck|cut|made|set|started|got|of|some|and|also|then)$/.test(
          lastWord(seen),
        )),
  },
  {
    // All in small letters, as thumbs write.
    name: "aunt dervla's hat fuchsia, 12 cuttings",
    isName: true,
    when: (seen) =>
      seen.isLower &&
      seen.before.length === 0 &&
      seen.length >= 2 &&
      seen.unknown > 0 &&
      isCrop(seen.pieces[seen.end]) &&
      isCountedBehind(seen.pieces, seen.end + 1),
  },
];
