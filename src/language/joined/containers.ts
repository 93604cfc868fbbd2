/** Containers and what each holds: "three pots of five", "four pots, two per pot", "two trays of 24", "2 9cm pots". */
import { countApart } from './containers/apart.js';
import { countHeld } from './containers/held.js';
import { countSame } from './containers/same-as-before.js';
import { withSharesTold } from './containers/shares-told.js';
import { isFull, type Opening, openingAt } from './containers/opening.js';
import { countAt, eachAt, isContainer, type Joined, perContainer } from './containers/per-container.js';
import { timesAt } from './containers/times.js';
import { wordAt } from '../grammar/rule.js';
import { isKnown } from '../row/lexicon.js';
import type { Piece, PieceOf } from '../pieces/pieces.js';

/** Joins numbers and container words into pieces of their own. */
export function joinContainers(pieces: readonly Piece[]): readonly Piece[] {
  const joined: Piece[] = [];
  for (let at = 0; at < pieces.length;) {
    const opening = openingAt(pieces, at);
    const found =
      (opening && (timesAt(pieces, opening) ?? containersAt(pieces, opening))) ??
      eachAt(pieces, at) ??
      potsOfSize(pieces, at);
    if (found) {
      joined.push(...found.pieces);
      at = found.to;
    } else {
      const piece = pieces[at];
      if (piece) joined.push(piece);
      at++;
    }
  }
  return withSharesTold(countSame(countApart(countHeld(joined))));
}

/** "Into pots of 11 cm": their size. */
function potsOfSize(pieces: readonly Piece[], at: number): Joined | undefined {
  const pots = pieces[at];
  const size = pieces[at + 2];
  if (!pots || !/^(?:in|into|to|onto)$/.test(wordAt(pieces, at - 1)) || wordAt(pieces, at + 1) !== 'of')
    return undefined;
  if (size?.is !== 'size' || size.container || !isContainer(pieces, at)) return undefined;
  return { pieces: [{ ...size, container: true, from: pots.from }], to: at + 3 };
}

/** So many containers, told by a word for them or by their size, with what each holds. */
function containersAt(pieces: readonly Piece[], opening: Opening): Joined | undefined {
  const sized = pieces[opening.at];
  if (sized?.is === 'size' && !isContainer(pieces, opening.at)) return ofSize(pieces, opening, sized);
  if (!isContainer(pieces, opening.at)) return undefined;
  // "Seven Glass Pheasant": more than one container is plural.
  const isPair = isContainer(pieces, opening.at + 1);
  if ((opening.number ?? 0) > 1 && !/[^s]s$/.test(wordAt(pieces, opening.at)) && !isPair) return undefined;
  return withEach(pieces, opening, opening.at + (isPair ? 2 : 1));
}

/** Fewer cells are no tray. */
const FEWEST_CELLS = 20;

/** "2 9cm pots", "3 x 9cm", "2 x 104 plug trays". */
function ofSize(pieces: readonly Piece[], opening: Opening, sized: PieceOf<'size'>): Joined | undefined {
  const { first, start, number, count, isTimes, at } = opening;
  const hasWord = !sized.container && isContainer(pieces, at + 1);
  const to = at + (hasWord ? 2 : 1);
  // So many in each, "2 x 104", "one full 72-cell tray"; no "potted into 2 x 40 cell trays".
  const holdsThem =
    (isTimes || isFull(pieces, opening)) && !/^(?:in|into|to|onto)$/.test(wordAt(pieces, start - 1));
  const cells = Number(holdsThem ? (/^(\d+)cell$/.exec(sized.size)?.[1] ?? 0) : 0);
  if (number !== undefined && cells >= FEWEST_CELLS)
    return {
      pieces: [
        { is: 'count', quantity: { value: number * cells }, from: first.from, to: first.to },
        { is: 'pots', pots: number, from: first.from, to: sized.to },
        sized,
      ],
      to,
    };
  // "Sold 60 x 9cm Salt Harrier": so many plants, of that size.
  if (isTimes && count && !sized.container && !hasWord && isSoManyPlants(pieces, to))
    return { pieces: [count, sized], to };
  // "3 x 9cm" without a word for the container.
  return sized.container || hasWord || isTimes ? withEach(pieces, opening, to, sized) : undefined;
}

/** Whether a plant stands at `to`, in a row that tells of what was done with plants, and of no cuttings. */
function isSoManyPlants(pieces: readonly Piece[], to: number): boolean {
  const plant = pieces[to];
  if (plant?.is !== 'plant' && !(plant?.is === 'word' && !isKnown(plant.text))) return false;
  const done = pieces.filter((piece) => piece.is === 'word' && piece.verb?.form === 'past');
  return (
    done.length > 0 &&
    !pieces.some(
      (piece) =>
        piece.is === 'cutting' ||
        (piece.is === 'word' &&
          (CUT.test(piece.verb?.lemma ?? '') ||
            /^(?:each|per|apiece|(?:cutting|slip|tip)s?)$/.test(piece.text))),
    )
  );
}

const CUT = /^(?:take|strike|stick|insert|put|do|root|propagate|make|fill|start|dib|prick|pop|cut)$/;

/** The containers up to `at`, with what each of them holds where that follows: "of five", "with five in each", ", 2 per pot". */
function withEach(
  pieces: readonly Piece[],
  { first, start, number, count }: Opening,
  at: number,
  size?: PieceOf<'size'>,
): Joined {
  const isVague = count?.quantity.vague === true;
  const containers: Piece = {
    is: 'pots',
    ...(isVague ? { vague: true } : { pots: number ?? 1 }),
    from: first.from,
    to: pieces[at - 1]?.to ?? first.to,
  };
  const out: readonly Piece[] = size ? [containers, size] : [containers];
  const whole = traysTold(pieces, at, number);
  if (whole) return { pieces: [{ ...whole.count, quantity: { value: whole.value } }, ...out], to: at + 1 };
  const mark = pieces[at];
  const next = mark?.is === 'break' && !mark.hard ? at + 1 : at;
  const link = wordAt(pieces, next);
  // "3 pots with each 6 cuttings", "3 pots each with 6".
  const saysEach = /^(?:with each|each with|each holding)$/.test(`${link} ${wordAt(pieces, next + 1)}`);
  const eachAt = saysEach ? next + 2 : /^(?:of|with|x|holding|at)$/.test(link) ? next + 1 : next;
  const each = countAt(pieces, eachAt);
  if (!each) {
    // "Two full 36-cell trays".
    const held = number === undefined ? undefined : cellsFilled(pieces.slice(start, at), size);
    return held === undefined
      ? { pieces: out, to: at }
      : {
          pieces: [
            { is: 'count', quantity: { value: held * (number ?? 1) }, from: first.from, to: first.to },
            ...out,
          ],
          to: at,
        };
  }
  const { value, vague, outOf } = each.quantity;
  const told = (quantity: PieceOf<'count'>['quantity'], to: number): Joined => ({
    pieces: [{ is: 'count', quantity, from: each.from, to: each.to }, ...out],
    to,
  });
  if (value !== undefined && !isVague && number !== undefined) {
    const per = saysEach ? eachAt + 1 : perContainer(pieces, eachAt + 1);
    // "One little pot with 4 of these" holds four in all.
    const isPlain = link === 'of' || link === 'x' || (link === 'with' && number === 1 && !size);
    const isAll = isPlain && outOf === undefined && !isContainer(pieces, eachAt + 1);
    return per !== undefined || isAll
      ? told({ value: number * value }, per ?? eachAt + 1)
      : { pieces: out, to: at };
  }
  return vague && link === 'of' ? told({ vague: true }, eachAt + 1) : { pieces: out, to: at };
}

/** How many cells trays of plugs are sold with: common practice. */
const PLUG_TRAYS: ReadonlySet<number> = new Set([
  72, 84, 104, 126, 128, 144, 150, 180, 200, 216, 240, 273, 288, 345,
]);

/** "3 trays 104 Salt Harrier": so many a tray, where they would not go into the trays evenly. */
function traysTold(
  pieces: readonly Piece[],
  at: number,
  number: number | undefined,
): { readonly count: PieceOf<'count'>; readonly value: number } | undefined {
  const count = pieces[at];
  const each = count?.is === 'count' ? count.quantity.value : undefined;
  return count?.is === 'count' &&
    each !== undefined &&
    number !== undefined &&
    wordAt(pieces, at - 1) === 'trays' &&
    pieces[at + 1]?.is !== 'break' &&
    PLUG_TRAYS.has(each) &&
    each % number !== 0
    ? { count, value: each * number }
    : undefined;
}

/** How many a tray of cells holds that is said to be full. */
function cellsFilled(opening: readonly Piece[], size: PieceOf<'size'> | undefined): number | undefined {
  const isFull = opening.some(
    (_, at) => wordAt(opening, at) === 'full' && !/^(?:half|part)$/.test(wordAt(opening, at - 1)),
  );
  return isFull && size?.size.endsWith('cell') ? Number(size.size.slice(0, -4)) : undefined;
}
