/** Names told of a crop by words that only lead up to them: ", she says it's Tin Whistler", ". It's the dark one from work called Tin Whistler". */
import { wordAt } from '../../grammar/rule.js';
import { whole } from '../../phrases.js';
import type { Piece, PieceOf } from '../../pieces/pieces.js';
import { isPerson } from './people.js';
import { isCrop } from './position.js';

const MOST_WORDS = 12;

/** "It's", and what growers write for it. */
const IS = String.raw`(?:it's|its|it is|it was|they're|theyre|they are|she's|that's|thats|that is|this is|these are|those are|this one's|this one is)`;
const SAYS = String.raw`(?:says|said|say|reckons|reckoned|thinks|thought|think|reckon|believes|believe|swears|tells me|told me|was told)`;
const LABEL = String.raw`(?:label|labels|tag|ticket|pot|packet|stick|sticker)`;
const OPENS = String.raw`(?:(?:and|but|so|now|oh|apparently|by the way|btw|turns out|turned out|as well|aswell|too|also) )*`;

/** The words between a mark, or a crop, and the name that is told of it. */
const LEADS = whole`
  ${OPENS}${IS}( apparently| actually| really)?
  ${OPENS}(\S+ ){0,5}${SAYS}( that)? ${IS}
  ${OPENS}(\S+ ){1,6}(calls|called|calling|naming|christened|named) (it|them|her|him)
  ${OPENS}${IS} (\S+ ){0,8}(called|named|labelled|known as)
  (the|that) (\S+ ){0,6}(called|named|labelled|known as)
  ${OPENS}((the|its|her|his|their) )?${LABEL} (says|said|reads|read)( ${IS})?
  ${OPENS}according to (the|its|her|his) \S+ ${IS}
  ((the|its|her|his|their) )?name( on (the|its) ${LABEL})?( (is|was|says|said))?
  ((the|its) )?name's
  (sold|given|passed on)( to me| to us)? as
  (that|which) (goes by|is called|we call|i call|they call)
  ((the|its) )?(variety|cultivar|sort)( name)?( is| was)?( called| named)?
`;

/** Words of a deed by which plants come to be there. */
const BEGUN = whole`
  took|taken|did|done|struck|stuck|inserted|put|got|bought|came|arrived|received|gave|given|let|made|cut|snipped|had|have|brought|ordered|picked|aswell|too|also|well
  cuttings|plugs|liners|slips
`;
/** Words of what befalls plants that were there before. */
const LATER = whole`
  lost|died|dead|sold|potted|planted|moved|watered|misted|fed|pinched|binned|chucked|checked|looked|rotted|hardened|roots|rename|renamed|not|isn't|wasn't
`;

/** Whether what stands before a run of capitals says that a name follows of a crop told before. */
export function isToldOf(before: readonly Piece[]): boolean {
  const crop = before.findLastIndex(({ is }) => is === 'plant');
  return isCrop(before[crop]) && leadBefore(before, before.length) !== undefined;
}

/** The row with such a name beside its crop, as if it had been told there, and without the words that lead up to it. */
export function withNamesToldOf(pieces: readonly Piece[]): readonly Piece[] {
  for (const [at, name] of pieces.entries()) {
    if (name.is !== 'plant' || name.plant.variety === undefined || name.plant.crop !== undefined) continue;
    const from = isEnded(pieces, at + 1) ? leadBefore(pieces, at) : undefined;
    const crop = from === undefined ? undefined : cropBefore(pieces, from, name);
    if (from === undefined || crop === undefined) continue;
    const mark = pieces[from - 1]?.is === 'break' ? from - 1 : from;
    return [
      ...pieces.slice(0, crop),
      name,
      ...pieces.slice(crop, mark),
      ...withNamesToldOf(pieces.slice(at + 1)),
    ];
  }
  return pieces;
}

/** Where the words begin that lead up to a name at `name`; the longest that do. */
function leadBefore(pieces: readonly Piece[], name: number): number | undefined {
  const words: string[] = [];
  let lead: number | undefined;
  // "Variety: Tin Whistler".
  const mark = pieces[name - 1];
  const end = mark?.is === 'break' && mark.mark === ':' ? name - 1 : name;
  for (let at = end - 1; at >= 0 && words.length < MOST_WORDS; at--) {
    const piece = pieces[at];
    const word = piece && asWord(piece);
    if (word === undefined) break;
    words.unshift(word);
    const isOpening = /^(?:break|plant|when|place)$/.test(pieces[at - 1]?.is ?? '') || isNoun(pieces, at - 1);
    if (isOpening && LEADS.test(words.join(' '))) lead = at;
  }
  return lead;
}

const isNoun = (pieces: readonly Piece[], at: number): boolean =>
  /^(?:cuttings|plugs|liners|slips|tips|plants)$/.test(wordAt(pieces, at));

/** "The dark one from work": a word for what is none by itself. */
function asWord(piece: Piece): string | undefined {
  if (piece.is === 'word') return piece.text.toLowerCase();
  if (piece.is === 'count') return piece.quantity.value === 1 ? 'one' : undefined;
  if (piece.is === 'pots') return 'pot';
  return piece.is === 'place' ? 'place' : undefined;
}

/** The one crop, told without a name, of what was begun in the sentence before. */
function cropBefore(pieces: readonly Piece[], from: number, name: PieceOf<'plant'>): number | undefined {
  const crop = pieces.findLastIndex(({ is }, at) => at < from && is === 'plant');
  const piece = pieces[crop];
  if (!isCrop(piece) || pieces[crop - 1]?.is === 'plant') return undefined;
  if (name.ofCrop !== undefined && name.ofCrop !== piece.plant.crop) return undefined;
  const opens = pieces.findLastIndex((each, at) => at < crop && each.is === 'break' && each.hard) + 1;
  const marks = pieces.slice(crop, from - 1).filter((each) => each.is === 'break' && each.hard).length;
  const told = pieces.slice(opens, from);
  const another = told.some((each, at) => isCrop(each) && opens + at !== crop);
  const isBegun = told.some((_, at) => BEGUN.test(wordAt(told, at)));
  const isLater = told.some((_, at) => LATER.test(wordAt(told, at)));
  return marks === 0 && !another && isBegun && !isLater ? crop : undefined;
}

/** Where nothing more is said of the name: a mark, a time, a place; no "she says Doreen Hatch wants six". */
function isEnded(pieces: readonly Piece[], at: number): boolean {
  const piece = pieces[at];
  return (
    piece === undefined ||
    /^(?:break|when|place)$/.test(piece.is) ||
    /^(?:in|into|on|they're|theyre|they|all|so|and|which|i|think|apparently|actually|anyway|btw)$/.test(
      wordAt(pieces, at),
    )
  );
}

/** Words that are somebody's, and no plant's: "she says Mary Dolan". */
export const isSomebodys = (words: readonly string[]): boolean =>
  isPerson(words) || /(?:'s|s')$/.test(words.at(-1) ?? '');

/** "My fuchsia had no name so I'm calling it Tin Whistler. Took 9 cuttings of it": of the plant that was just named. */
export function withNamedMeant(pieces: readonly Piece[]): readonly Piece[] {
  for (const [at, mark] of pieces.entries()) {
    const [crop, name] = pieces.slice(Math.max(0, at - 2), at);
    if (mark.is !== 'break' || !isCrop(crop) || name?.is !== 'plant' || name.plant.variety === undefined)
      continue;
    const opens = pieces.findLastIndex((each, n) => n < at && each.is === 'break') + 1;
    if (pieces.slice(opens, at).some(({ is }) => is === 'count')) continue;
    const it = pieces.findIndex((_, n) => n > at && /^(?:it|them)$/.test(wordAt(pieces, n)));
    const between = pieces.slice(at + 1, it);
    const isOfIt =
      /^(?:cuttings|tips|slips|it)$/.test(wordAt(pieces, it - 2)) && wordAt(pieces, it - 1) === 'of';
    if (!isOfIt || between.some(({ is }) => is === 'break' || is === 'plant')) continue;
    return [...pieces.slice(0, it), name, crop, ...pieces.slice(it + 1)];
  }
  return pieces;
}
