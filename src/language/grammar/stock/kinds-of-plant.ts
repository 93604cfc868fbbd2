/** Which plants are told of: stock plants, or young ones with roots. */
import { whole } from '../../phrases.js';
import type { Piece } from '../../pieces/pieces.js';
import { follows, followsWord, wordAt } from '../rule.js';

const STOCK =
  /^(?:stock|tuber|tubers|crown|crowns|mother|parent|stockplant|stool|stools|clump|clumps|rootstock|rhizome|rhizomes)$/;

/** Plants that come in with roots on. */
export const YOUNG =
  /^(?:plug|plugs|seedlings?|rooted|liner|liners|plantlets|plantlet|young|plugplants|babies|baby|divisions|starter|starters|plantling|tubestock)$/;

/** "12 Salt Harrier plugs and a stock plant of Tallow Bell": what came first is young. */
export const isYoungFirst = (pieces: readonly Piece[], to: number): boolean => {
  const told = (words: RegExp): number =>
    pieces.findIndex((_, at) => at >= to && words.test(wordAt(pieces, at)));
  const young = told(/^(?:plugs|liners|plantlets|seedlings)$/);
  return young >= 0 && young < told(STOCK);
};

/** Whether stock stands behind, or plants to take cuttings from. */
export const ofStock = (pieces: readonly Piece[], to: number): boolean =>
  (followsWord(pieces, to, STOCK) && !isYoungFirst(pieces, to)) ||
  pieces
    .slice(to)
    .some(
      (piece, at, rest) =>
        piece.is === 'word' &&
        /^(?:take|taking)$/.test(piece.text) &&
        /^(?:cuttings|babies|slips|shoots)$/.test(wordAt(rest, at + 1)) &&
        /^(?:from|off|of)$/.test(wordAt(rest, at + 2)),
    );

/** Whether cuttings are what came, not what was taken from it next ("picked one up and had four cuttings off it"). */
/** "So I can take cuttings off it", "to take slips from". */
const isWhatFor = (pieces: readonly Piece[], at: number): boolean =>
  pieces.slice(at, at + 6).some((_, n) => /^(?:take|cut|have|get)$/.test(wordAt(pieces, at + n)) && n > 0);

export function asCuttings(pieces: readonly Piece[], to: number): boolean {
  let named = false;
  for (let at = to; at < pieces.length; at++) {
    const piece = pieces[at];
    const next = pieces[at + 1];
    if (piece?.is === 'break') return false;
    // "Her old Salt Harrier, to take cuttings off": what for.
    if (named && /^(?:so|to|for)$/.test(wordAt(pieces, at)) && isWhatFor(pieces, at)) return false;
    if (piece?.is === 'plant') named = true;
    // "A few tips off her Salt Harrier", but "a Salt Harrier with lovely stems".
    if (piece?.is === 'cutting' && !named) return true;
    if (piece?.is !== 'word') continue;
    if (/^(?:cuttings?|slips)$/.test(piece.text)) return true;
    if (!named && /^(?:bits|pieces|tips|shoots|stems|sprigs?|snippets)$/.test(piece.text)) return true;
    if (/^(?:and|then)$/.test(piece.text) && next?.is === 'word' && next.verb?.form === 'past') return false;
  }
  return false;
}

/** Whether stock is told of anywhere. */
export const anyStock = (pieces: readonly Piece[]): boolean =>
  pieces.some((piece) => piece.is === 'word' && STOCK.test(piece.text));

/** "For the winter", "in dry sand": tubers that are laid up to rest, not woken. */
const PUT_BY = whole`
  winter|overwinter|store|stored|storing|storage|away|dry|drying|dried|dormant|rest|hibernate|sleep|newspaper|paper|frost|packed|wrapped
`;

/** Whether stock is told of that is put by, or hung up to dry. */
export const isPutBy = (pieces: readonly Piece[]): boolean =>
  pieces.some(
    (piece, at) =>
      (piece.is === 'when' && /\bwinter\b/i.test(piece.when.words)) ||
      (piece.is === 'word' && PUT_BY.test(piece.text) && !/^(?:from|of)$/.test(wordAt(pieces, at - 1))),
  );

/** What stock that begins to grow comes to: "into growth", "to wake up". */
const GROWING = /^(?:growth|growing|grow|forcing|force|wake|waken|sprout|shoot|chit|start|started|going)$/;

/** Stock that rests without roots in anything, and what it is put into to wake: "tubers in trays of damp compost". */
const RESTING = /^(?:tubers?|crowns?|stools?|clumps?|rhizomes?)$/;
const FILLED = /^(?:compost|coir|soil|trays?|potted|boxed|bedded|pots?)$/;

/** Whether stock that is carried somewhere is set growing there. */
export function isSetGrowing(pieces: readonly Piece[], from = 0): boolean {
  if (!anyStock(pieces) || isPutBy(pieces)) return false;
  const rests = pieces.some((piece) => piece.is === 'word' && RESTING.test(piece.text));
  return pieces
    .slice(from)
    .some(
      (piece) =>
        (piece.is === 'word' && GROWING.test(piece.text)) ||
        (rests &&
          (piece.is === 'pots' ||
            piece.is === 'size' ||
            (piece.is === 'medium' && piece.medium !== 'sand') ||
            (piece.is === 'word' && FILLED.test(piece.text)))),
    );
}

/** "With roots", "with good roots on", "with some root"; no "with root rot". */
function withRoots(pieces: readonly Piece[], at: number): boolean {
  if (wordAt(pieces, at) !== 'with') return false;
  let next = at + 1;
  while (
    pieces[next]?.is === 'count' ||
    /^(?:a|good|nice|decent|strong|little|small|their|its|lovely|bit|of|already|lots|plenty)$/.test(
      wordAt(pieces, next),
    )
  )
    next++;
  return (
    /^roots?$/.test(wordAt(pieces, next)) &&
    !/^(?:rot|aphids?|problems?|trouble|hormone|powder|gel|trainers?|mealybugs?|damage)$/.test(
      wordAt(pieces, next + 1),
    )
  );
}

/** Whether young plants, or pots of a size, stand near. */
export const ofYoung = (pieces: readonly Piece[], from: number): boolean =>
  pieces
    .slice(Math.max(0, from - 7), from + 12)
    .some(
      (piece, n) =>
        piece.is === 'word' && (YOUNG.test(piece.text) || withRoots(pieces, Math.max(0, from - 7) + n)),
    ) || follows(pieces, from, 'size');
