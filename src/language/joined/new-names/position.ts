/** Where a plant's name may stand: behind a count, "cuttings of" or a verb of taking. */
import { wordAt } from '../../grammar/rule.js';
import { isThing } from '../../pieces/other-things.js';
import { whole } from '../../phrases.js';
import type { Piece, PieceOf } from '../../pieces/pieces.js';

const LINK = whole`
  of|from|off|each|the|my|our|her|his|some|these|those|another|more|further|extra|called|named
  new|fresh|lovely|good|nice|little|old|big
  cuttings?|plugs?|liners|slips|pieces|bits|divisions?|crowns?|tubers?|stools?
`;

/** A crop, and no variety of it. */
export const isCrop = (piece: Piece | undefined): piece is PieceOf<'plant'> =>
  piece?.is === 'plant' && piece.plant.crop !== undefined && piece.plant.variety === undefined;

/** What may stand between a verb of coming by something and what was come by. */
const ONE_OF =
  /^(?:a|an|another|one|new|lovely|nice|big|old|little|home|back|up|myself|ourselves|me|us|out|on|to|for|hold|of)$/;

/** "Brought home a …", "bagged another …": one of something that was not there before. */
export function isComeBy(before: readonly Piece[]): boolean {
  if (!/^(?:a|an|another|new|lovely|nice|big|old|little)$/.test(wordAt(before, before.length - 1)))
    return false;
  let at = before.length - 1;
  while (ONE_OF.test(wordAt(before, at))) at--;
  const verb = before[at];
  return (
    verb?.is === 'word' &&
    verb.verb?.form === 'past' &&
    /^(?:bring|bag|score|get|pick|grab|nab|snaffle|adopt|inherit|treat|win|splash|give|buy|acquire)$/.test(
      verb.verb.lemma,
    )
  );
}

/** Where a name told behind "a" ends: at a mark, a preposition or the end, so that no "Acme sprayer" is one, with a capital or without. */
export function endsName(pieces: readonly Piece[], at: number): boolean {
  const piece = pieces[at];
  if (isThing(wordAt(pieces, at - 1))) return false;
  return (
    piece === undefined ||
    /^(?:break|when|money|place)$/.test(piece.is) ||
    /^(?:from|off|at|for|in|on|today|this|by|plant)$/.test(wordAt(pieces, at)) ||
    // No "got a Costa Coffee and watered them".
    (wordAt(pieces, at) === 'and' && /^(?:a|an|another|some)$/.test(wordAt(pieces, at + 1)))
  );
}

/** Behind a count, or behind "cuttings of", or straight behind a verb of taking. */
export function inPlantPosition(before: readonly Piece[]): boolean {
  let at = before.length - 1;
  let of = false;
  while (at >= 0 && LINK.test(wordAt(before, at))) {
    if (/^(?:cuttings|cutting|of)$/.test(wordAt(before, at))) of = true;
    at--;
  }
  const piece = before[at];
  if (!piece) return of;
  // "Six fuchsia cuttings off the Paper Moon": the plant that they came off; no "off Doreen".
  const lead = before.slice(at + 1).map((_, n) => wordAt(before, at + 1 + n));
  if (
    isCrop(piece) &&
    /^(?:cuttings? |slips |starts )?off (?:the|(?:the|my|our) (?:old|big))$/.test(lead.join(' '))
  )
    return true;
  // "Got six plugs from Derek": by whom.
  if (/^(?:plugs?|liners|crowns?|tubers?|stools?) from$/.test(lead.slice(-2).join(' '))) return false;
  // "Order 2213 Thorne's: …": whose it is.
  if (piece.is === 'count' && /^(?:order|invoice|docket)$/.test(wordAt(before, at - 1))) return false;
  if (piece.is === 'count' || piece.is === 'cutting' || piece.is === 'pots') return true;
  if (of && wordAt(before, before.length - 1) !== 'cuttings')
    return piece.is === 'word' && piece.verb !== undefined;
  if (piece.is !== 'word' || !piece.verb) return false;
  // "Received from Hexley": by whom.
  if (/^(?:from|off)$/.test(wordAt(before, at + 1)) && /^(?:receive|buy|sell)$/.test(piece.verb.lemma))
    return false;
  return (
    /^(?:take|strike|insert|propagate|lose|sell|receive|buy|pinch|pot|plant|bin|check)$/.test(
      piece.verb.lemma,
    ) && piece.verb.form === 'past'
  );
}
