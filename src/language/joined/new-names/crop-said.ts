/** A crop said of a name in words of its own: "Tepid Moon (it is a fuchsia)", "Salt Harrier, that's the penstemon, …". */
import { wordAt } from '../../grammar/rule.js';
import type { Piece } from '../../pieces/pieces.js';
import { isCrop } from './position.js';

const IS = /^(?:it's|its|that's|thats|which's|they're|theyre|is|are|being|likewise)$/;
const ARTICLE = /^(?:a|an|the|my|our|his|her|another|also)$/;
const SURELY =
  /^(?:apparently|actually|basically|supposedly|probably|really|just|i|think|believe|one|of|some|kind|sort|type|new)$/;
const ONE_IS = /^(?:one's|is|has)$/;
/** What a plant is called besides its crop: "my old penstemon". */
const COLOUR =
  /^(?:good|favourite|favorite|best|lovely|scented|hardy|white|cream|yellow|orange|pink|red|purple|blue|mauve|lilac|green|black|dark|pale|big|little|old|new)$/;
const TOO = /^(?:as|well|too|also|again)$/;

interface Behind {
  readonly crop: number;
  readonly to: number;
  /** Whether a verb says it, and whether of all that were named. */
  readonly isSaid: boolean;
  readonly isOfAll: boolean;
}

interface Said {
  /** Where the words begin that say it, the crop itself, and what goes on behind them. */
  readonly from: number;
  readonly crop: number;
  readonly to: number;
}

/** Where the crop stands that is said of the name before `at`, and where the saying ends. */
export function cropSaidOf(pieces: readonly Piece[], at: number): Said | undefined {
  const from = pastTaken(pieces, at);
  const mark = pieces[from];
  if (mark?.is === 'word') return saidWithoutMark(pieces, from, pieces[at - 1]);
  if (mark?.is !== 'break' || !/^[,(-]$/.test(mark.mark)) return undefined;
  const said = saidBehind(pieces, from + 1);
  if (!said || said.isOfAll || (!said.isSaid && said.to === said.crop + 1)) return undefined;
  const { crop, to } = said;
  const end = pieces[to];
  if (mark.mark === '(') {
    const isClosed = end?.is === 'break' && end.mark === ')';
    return isClosed ? { from, crop, to: to + 1 } : undefined;
  }
  if (end === undefined) return { from, crop, to };
  if (end.is !== 'break') return undefined;
  return { from, crop, to: end.hard ? to : to + 1 };
}

/** "It's also a dahlia too": the crop, and what stands behind. */
function saidBehind(pieces: readonly Piece[], at: number): Behind | undefined {
  let next = at;
  if (/^(?:it|that|this|which|they|she)$/.test(wordAt(pieces, next)) && IS.test(wordAt(pieces, next + 1)))
    next += 2;
  // "That one's a begonia".
  else if (
    wordAt(pieces, next) === 'that' &&
    isOne(pieces[next + 1]) &&
    ONE_IS.test(wordAt(pieces, next + 2))
  )
    next += 3;
  else if (IS.test(wordAt(pieces, next))) next++;
  const isSaid = next > at;
  const of = pieces[next];
  const isOfAll = isSaid && of?.is === 'count' && (of.quantity.both === true || of.quantity.whole === 'all');
  if (isOfAll) next++;
  while (
    ARTICLE.test(wordAt(pieces, next)) ||
    (isSaid &&
      (SURELY.test(wordAt(pieces, next)) || COLOUR.test(wordAt(pieces, next)) || isOne(pieces[next])))
  )
    next++;
  if (!isCrop(pieces[next])) return undefined;
  const crop = next++;
  while (TOO.test(wordAt(pieces, next))) next++;
  return { crop, to: next, isSaid, isOfAll };
}

/** "Nine of Sad Huntsman in the cold frame. That's a clematis.", "They're both dahlias.": the row with it beside the new names of the sentence that ends at `at`. */
function withSaidOfSentence(pieces: readonly Piece[], at: number): readonly Piece[] | undefined {
  const mark = pieces[at];
  const said = mark?.is === 'break' && mark.hard ? saidBehind(pieces, at + 1) : undefined;
  const crop = said && pieces[said.crop];
  const end = said && pieces[said.to];
  if (!said?.isSaid || !crop || (end !== undefined && (end.is !== 'break' || end.mark === '?')))
    return undefined;
  const opens = pieces.findLastIndex((piece, n) => n < at && piece.is === 'break' && piece.hard) + 1;
  const sentence = pieces.slice(opens, at);
  const named = sentence.flatMap((piece) => (piece.is === 'plant' ? [piece] : []));
  const isOfThese = said.isOfAll ? named.length > 1 : named.length === 1;
  if (!isOfThese || named.some(({ known, plant }) => known || plant.variety === undefined)) return undefined;
  return [
    ...pieces.slice(0, opens),
    ...sentence.flatMap((piece) => (piece.is === 'plant' ? [piece, crop] : [piece])),
    ...withCropsSaid(pieces.slice(said.to)),
  ];
}

/** "Neon Hallway its a pothos": told by a new name, and by words that say nothing else. */
function saidWithoutMark(pieces: readonly Piece[], at: number, name: Piece | undefined): Said | undefined {
  if (name?.is !== 'plant' || name.known) return undefined;
  let next = at;
  if (/^(?:that|which)$/.test(wordAt(pieces, next)) && IS.test(wordAt(pieces, next + 1))) next += 2;
  else if (/^(?:it's|its|that's|thats|they're|theyre)$/.test(wordAt(pieces, next))) next++;
  else return undefined;
  const from = next;
  while (SURELY.test(wordAt(pieces, next)) || ARTICLE.test(wordAt(pieces, next)) || isOne(pieces[next]))
    next++;
  return next > from && isCrop(pieces[next]) ? { from: at, crop: next, to: next + 1 } : undefined;
}

/** "One of the fuchsias". */
const isOne = (piece: Piece | undefined): boolean => piece?.is === 'count' && piece.quantity.value === 1;

/** Past "as well", past "today", and past "struck" in "20 Canal Lamp struck, argyranthemum, 2 trays of 10". */
function pastTaken(pieces: readonly Piece[], at: number): number {
  let next = at;
  while (
    pieces[next]?.is === 'when' ||
    TOO.test(wordAt(pieces, next)) ||
    /^(?:struck|taken|stuck|done)$/.test(wordAt(pieces, next))
  )
    next++;
  return next;
}

/** "Harbour Biscuit as well, pelargonium, nine cuttings": the crop of a new name, between two commas. */
function cropApart(pieces: readonly Piece[], at: number): Said | undefined {
  const mark = pastTaken(pieces, at);
  // "8 Velvet Cobbler taken, a dahlia", "… today, my white dahlia", "8 of Velvet Cobbler, another dahlia, two pots".
  // "Clockmaker's Wife, the big orange dahlia, three pots".
  const article = wordAt(pieces, mark + 1);
  let crop = mark + (/^(?:an?|my|our|the|another)$/.test(article) ? 2 : 1);
  while (crop > mark + 1 && crop < mark + 5 && COLOUR.test(wordAt(pieces, crop))) crop++;
  const isOwned = (mark > at && /^(?:an?|my|our)$/.test(article)) || article === 'another' || crop > mark + 2;
  if (crop > mark + 1 && !isOwned) return undefined;
  const [comma, end, next] = [pieces[mark], pieces[crop + 1], pieces[crop + 2]];
  if (comma?.is !== 'break' || comma.mark !== ',' || !isCrop(pieces[crop])) return undefined;
  if (end?.is === 'break' ? end.mark !== ',' && !end.hard : end !== undefined) return undefined;
  if (crop === mark + 1 && (end?.is !== 'break' || end.hard)) return undefined;
  const isListed = next?.is === 'plant' || (next?.is === 'count' && pieces[crop + 3]?.is === 'plant');
  return end?.is === 'break' && !end.hard && isListed ? undefined : { from: mark, crop, to: crop + 1 };
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
    const told = withSaidOfSentence(pieces, at);
    if (told) return told;
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
    if (said && crop)
      return [
        ...pieces.slice(0, at),
        crop,
        ...pieces.slice(at, said.from).filter((piece) => piece.is !== 'word' || !TOO.test(piece.text)),
        ...withCropsSaid(pieces.slice(said.to)),
      ];
  }
  return pieces;
}
