/** A crop said of a name in words of its own: "Tepid Moon (it is a fuchsia)", "Salt Harrier, that's the penstemon, …". */
import { wordAt } from '../../grammar/rule.js';
import type { Piece } from '../../pieces/pieces.js';
import { isCrop } from './position.js';

const IS = /^(?:it's|its|that's|thats|which's|they're|theyre|is|are|being|likewise)$/;
const ARTICLE = /^(?:a|an|the|my|our|another|also)$/;
const SURELY =
  /^(?:apparently|actually|basically|supposedly|probably|really|just|i|think|believe|one|of|some|kind|sort|type|new)$/;
const TOO = /^(?:as|well|too|also|again)$/;

/** Where the crop stands that is said of the name before `at`, and where the saying ends. */
export function cropSaidOf(
  pieces: readonly Piece[],
  at: number,
): { readonly crop: number; readonly to: number } | undefined {
  const mark = pieces[at];
  if (mark?.is === 'word') return saidWithoutMark(pieces, at);
  if (mark?.is !== 'break' || mark.hard || !/^[,(-]$/.test(mark.mark)) return undefined;
  let next = at + 1;
  if (/^(?:it|that|which|they)$/.test(wordAt(pieces, next)) && IS.test(wordAt(pieces, next + 1))) next += 2;
  else if (IS.test(wordAt(pieces, next))) next++;
  const isSaid = next > at + 1;
  while (
    ARTICLE.test(wordAt(pieces, next)) ||
    (isSaid && (SURELY.test(wordAt(pieces, next)) || isOne(pieces[next])))
  )
    next++;
  if (!isCrop(pieces[next])) return undefined;
  const crop = next++;
  while (TOO.test(wordAt(pieces, next))) next++;
  if (!isSaid && next === crop + 1) return undefined;
  const end = pieces[next];
  if (mark.mark === '(') {
    const isClosed = end?.is === 'break' && end.mark === ')';
    return isClosed ? { crop, to: next + 1 } : undefined;
  }
  if (end === undefined) return { crop, to: next };
  if (end.is !== 'break') return undefined;
  return { crop, to: end.hard ? next : next + 1 };
}

/** "Neon Hallway its a pothos": told by a new name, and by words that say nothing else. */
function saidWithoutMark(
  pieces: readonly Piece[],
  at: number,
): { readonly crop: number; readonly to: number } | undefined {
  const name = pieces[at - 1];
  if (name?.is !== 'plant' || name.known) return undefined;
  let next = at;
  if (/^(?:that|which)$/.test(wordAt(pieces, next)) && IS.test(wordAt(pieces, next + 1))) next += 2;
  else if (/^(?:it's|its|that's|thats|they're|theyre)$/.test(wordAt(pieces, next))) next++;
  else return undefined;
  const from = next;
  while (SURELY.test(wordAt(pieces, next)) || ARTICLE.test(wordAt(pieces, next)) || isOne(pieces[next]))
    next++;
  return next > from && isCrop(pieces[next]) ? { crop: next, to: next + 1 } : undefined;
}

/** "One of the fuchsias". */
const isOne = (piece: Piece | undefined): boolean => piece?.is === 'count' && piece.quantity.value === 1;

/** "Harbour Biscuit as well, pelargonium, nine cuttings": the crop of a new name, between two commas. */
function cropApart(
  pieces: readonly Piece[],
  at: number,
): { readonly crop: number; readonly to: number } | undefined {
  let mark = at;
  // "20 Canal Lamp struck, argyranthemum, 2 trays of 10".
  while (TOO.test(wordAt(pieces, mark)) || /^(?:struck|taken|stuck|done)$/.test(wordAt(pieces, mark))) mark++;
  const [comma, crop, end, next] = pieces.slice(mark, mark + 4);
  if (comma?.is !== 'break' || comma.mark !== ',' || !isCrop(crop) || end?.is !== 'break') return undefined;
  const isListed = next?.is === 'plant' || (next?.is === 'count' && pieces[mark + 4]?.is === 'plant');
  return end.mark !== ',' || isListed ? undefined : { crop: mark + 1, to: mark + 2 };
}

/** "84 gazania plugs, variety Tin Valise": where the name stands behind its crop. */
function nameSaidOf(pieces: readonly Piece[], at: number): number | undefined {
  let mark = at;
  while (/^(?:plugs?|liners?|plants?|cuttings?|tubers?|crowns?|seedlings)$/.test(wordAt(pieces, mark)))
    mark++;
  if (
    pieces[mark]?.is !== 'break' ||
    !/^(?:variety|var|cultivar|cv|sort|sorte|name)$/.test(wordAt(pieces, mark + 1))
  )
    return undefined;
  // "Variety: Tin Valise", "name of Tin Valise".
  const name = pieces[mark + 2]?.is === 'break' || wordAt(pieces, mark + 2) === 'of' ? mark + 3 : mark + 2;
  return pieces[name]?.is === 'plant' ? name : undefined;
}

/** The row with such a crop beside its name. */
export function withCropsSaid(pieces: readonly Piece[]): readonly Piece[] {
  for (let at = 1; at < pieces.length; at++) {
    const before = pieces[at - 1];
    if (before?.is !== 'plant') continue;
    if (before.plant.variety === undefined) {
      const named = before.plant.crop === undefined ? undefined : nameSaidOf(pieces, at);
      const name = named === undefined ? undefined : pieces[named];
      if (named === undefined || name?.is !== 'plant' || name.plant.variety === undefined) continue;
      const words = pieces
        .slice(at, named)
        .filter(
          (piece) => piece.is === 'word' && !/^(?:variety|var|cultivar|cv|sort|sorte|name)$/.test(piece.text),
        );
      return [...pieces.slice(0, at - 1), name, before, ...words, ...withCropsSaid(pieces.slice(named + 1))];
    }
    const said = cropSaidOf(pieces, at) ?? (before.known ? undefined : cropApart(pieces, at));
    const crop = said && pieces[said.crop];
    if (said && crop) return [...pieces.slice(0, at), crop, ...withCropsSaid(pieces.slice(said.to))];
  }
  return pieces;
}
