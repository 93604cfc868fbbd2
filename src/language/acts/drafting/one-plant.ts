/** Two names in a clause that are one plant: a variety and its crop, a label and what it labels. */
import { wordAt } from '../../grammar/rule.js';
import type { Piece, PlantWords } from '../../pieces/pieces.js';

export const isCropAlone = ({ variety, batch, crop }: PlantWords): boolean =>
  crop !== undefined && variety === undefined && batch === undefined;

export const isSamePlant = (a: PlantWords, b: PlantWords): boolean =>
  a.variety === b.variety && a.crop === b.crop && a.batch === b.batch;

/** Words that a name follows. */
const NAMED = /^(?:called|named|labelled|labeled|marked|tagged|christened|dubbed|nicknamed|by)$/;

const isKnownAs = (pieces: readonly Piece[], at: number): boolean =>
  /^(?:known|sold|listed) as$/.test(`${wordAt(pieces, at)} ${wordAt(pieces, at + 1)}`) ||
  /^(?:known|sold|listed) as$/.test(`${wordAt(pieces, at - 1)} ${wordAt(pieces, at)}`);

/** "Brindle Gate westringia", "dahlia tuber called Ember Fox", "PE31 Tallow Bell": two names of one plant, side by side. */
export function joins(a: PlantWords, b: PlantWords, pieces: readonly Piece[], at: number): boolean {
  if (
    (a.variety !== undefined && b.variety !== undefined) ||
    (a.crop !== undefined && b.crop !== undefined) ||
    (a.batch !== undefined && b.batch !== undefined)
  )
    return false;
  if (b.variety !== undefined && isCropAlone(a) && isNamedBehind(pieces, at)) return true;
  for (let before = at - 1; before >= 0 && before >= at - 6; before--) {
    const piece = pieces[before];
    if (piece?.is === 'plant') return !isNextInList(pieces, before, at);
    if (piece?.is === 'break' && /^[,(:-]$/.test(piece.mark)) continue;
    if (piece?.is === 'when' && pieces[before + 1]?.is === 'break') continue;
    // "Weir Plum also a hydrangea"; behind a mark a list may go on.
    if (/^(?:also|another)$/.test(wordAt(pieces, before)) && pieces[before - 1]?.is !== 'break') continue;
    // "Coleus tip cuttings of Ember Fox".
    if (piece?.is === 'cutting' && /^(?:cuttings?|of)$/.test(wordAt(pieces, before + 1))) continue;
    if (piece?.is === 'count' && isOfHeading(pieces, before)) continue;
    // "A dahlia tuber called Ember Fox".
    if (
      /^(?:tubers?|crowns?|corms?|rhizomes?|plugs?|plants?)$/.test(wordAt(pieces, before)) &&
      NAMED.test(wordAt(pieces, before + 1))
    )
      continue;
    // "A rosemary Gwen calls Harbour Gossip", "a salvia known as Harbour Gossip".
    if (/^(?:calls|call)$/.test(wordAt(pieces, before + 1)) || isKnownAs(pieces, before)) continue;
    // "Four Salt Harrier out of SH2", "the Salt Harrier in SH2": a label tells which of them.
    if (b.batch !== undefined && a.variety !== undefined && isOutOf(pieces, before, at)) continue;
    // "Lavender with the name Wolkenherd".
    if (wordAt(pieces, before) === 'with' && [1, 2].some((n) => wordAt(pieces, before + n) === 'name'))
      continue;
    if (
      NAMED.test(wordAt(pieces, before)) ||
      /^(?:off|big|old|starts|slips|the|she|he|they|calls|it|stock|plant|cuttings|my|our|new|of|a|an|variety|plants|from|name|is|its|it's|too|call|that|which)$/.test(
        wordAt(pieces, before),
      )
    )
      continue;
    return false;
  }
  return false;
}

/** "Six Wet Canon, a fuchsia and a begonia", "also a fuchsia cutting", "a Fog Minister, also a fuchsia": one more plant, and no crop of the one named before. */
function isNextInList(pieces: readonly Piece[], name: number, at: number): boolean {
  if (!/^an?$/.test(wordAt(pieces, at - 1))) return false;
  const isListed =
    wordAt(pieces, at + 1) === 'and' &&
    /^(?:an?|another)$/.test(wordAt(pieces, at + 2)) &&
    pieces[at + 3]?.is === 'plant';
  const isOneEach = wordAt(pieces, at - 2) === 'also' && /^an?$/.test(wordAt(pieces, name - 1));
  return isListed || isOneEach || wordAt(pieces, at + 1) === 'cutting';
}

/** "A pelargonium after lunch, which the novices have christened Fallen Arches": how the plant before it is called, whoever says so. */
function isNamedBehind(pieces: readonly Piece[], at: number): boolean {
  if (
    !/^(?:call|calls|called|named|christened|dubbed|nicknamed|labelled|titled)$/.test(wordAt(pieces, at - 1))
  )
    return false;
  let which = at - 2;
  while (which > at - 8 && pieces[which]?.is === 'word' && !/^(?:which|that)$/.test(wordAt(pieces, which)))
    which--;
  if (!/^(?:which|that)$/.test(wordAt(pieces, which))) return false;
  const plant = pieces.slice(0, which).findLastIndex(({ is }) => is === 'plant');
  return plant >= 0 && !pieces.slice(plant, which).some(({ is }) => is === 'count' || is === 'pots');
}

/** "In SH2", "out of SH2", straight before the label that stands at `label`. */
const isOutOf = (pieces: readonly Piece[], at: number, label: number): boolean =>
  (/^(?:in|within)$/.test(wordAt(pieces, at)) && label === at + 1) ||
  (wordAt(pieces, at) === 'out' && wordAt(pieces, at + 1) === 'of' && label === at + 2);

/** "Tallow Bell: six of the fuchsias have rooted": how many of the plant before the mark, which is named again by its crop. */
export function isOfHeading(pieces: readonly Piece[], count: number): boolean {
  const mark = pieces[count - 1];
  const heading = pieces[count - 2];
  const named = pieces[count + 2];
  return (
    mark?.is === 'break' &&
    /^[:-]$/.test(mark.mark) &&
    heading?.is === 'plant' &&
    heading.plant.crop === undefined &&
    wordAt(pieces, count + 1) === 'the' &&
    named?.is === 'plant' &&
    isCropAlone(named.plant)
  );
}

/** "Sad Trombone, it's a coleus", "which is a dahlia": the crop of the plant named before. */
export function definesCrop(pieces: readonly Piece[], at: number): boolean {
  let before = at - 1;
  if (/^(?:a|an|the|my|our)$/.test(wordAt(pieces, before))) before--;
  // "That's also a hydrangea".
  if (/^(?:also|another)$/.test(wordAt(pieces, before)) && pieces[before - 1]?.is === 'word') before--;
  const word = wordAt(pieces, before);
  return (
    /^(?:it's|its|that's|thats|they're|which's|she's|he's)$/.test(word) ||
    // "…, also hydrangea, one pot".
    (/^(?:also|another)$/.test(word) &&
      pieces[before - 1]?.is === 'break' &&
      isSetApart(pieces, at) &&
      !isNextInList(
        pieces,
        pieces.slice(0, before).findLastIndex(({ is }) => is === 'plant'),
        at,
      )) ||
    (/^(?:is|are|being)$/.test(word) &&
      /^(?:it|that|which|they|these|those|she|he)$/.test(wordAt(pieces, before - 1)))
  );
}

/** "24 plugs of Weir Plum came, petunias, they're in the porch": what they are, between commas. */
export function isAppositive(pieces: readonly Piece[], at: number): boolean {
  const [before, behind] = [pieces[at - 1], pieces[at + 1]];
  return (
    before?.is === 'break' &&
    before.mark === ',' &&
    (behind === undefined || behind.is === 'break') &&
    !/^(?:count|plant)$/.test(pieces[at + 2]?.is ?? '') &&
    pieces.filter(({ is }) => is === 'plant').length === 2
  );
}

/** "… , another geranium, this evening": no next plant of a list behind it. */
function isSetApart(pieces: readonly Piece[], at: number): boolean {
  if (wordAt(pieces, at - 1) !== 'another') return true;
  const behind = pieces[at + 1];
  return (
    behind === undefined || behind.is === 'when' || (behind.is === 'break' && pieces[at + 2]?.is !== 'count')
  );
}
