/** Names that are told by where they are written or what says that they are names: "…, Rusty Verger on the label", "…, Rusty Verger it's called". */
import { wordAt } from '../grammar/rule.js';
import type { Piece } from './pieces.js';

const LABEL = /^(?:label|labels|tag|tags|ticket|tickets|pot|packet|stick|sticker)$/;

/** Whether the pieces [from, to) are such a name. */
export function isOnLabel(pieces: readonly Piece[], from: number, to: number): boolean {
  const isLabel = (at: number): boolean => pieces[at]?.is === 'pots' || LABEL.test(wordAt(pieces, at));
  if (
    /^(?:says|said|reads|read|reckons|reckoned|claims|claimed)$/.test(wordAt(pieces, from - 1)) &&
    isLabel(from - 2)
  )
    return true;
  if (pieces[from - 1]?.is !== 'break') return false;
  if (isSaidOf(pieces, to) && isOfCrop(pieces, from - 1)) return true;
  let at = to;
  while (/^(?:it|is|says|said|written|according|marked|printed|scrawled)$/.test(wordAt(pieces, at))) at++;
  if (!/^(?:on|to)$/.test(wordAt(pieces, at))) return false;
  return isLabel(/^(?:the|its|their|a|my|each)$/.test(wordAt(pieces, at + 1)) ? at + 2 : at + 1);
}

/** "It's called", "he calls it", "is the name on it", "it is": straight behind a name, and of the crop before it. */
function isSaidOf(pieces: readonly Piece[], at: number): boolean {
  const [one, two, three] = [0, 1, 2].map((n) => wordAt(pieces, at + n));
  const said = `${one ?? ''} ${two ?? ''} ${three ?? ''}`;
  const ends = (behind: number): boolean => pieces[behind] === undefined || pieces[behind]?.is === 'break';
  return (
    /^(?:it's|its|she's|they're|it is|they are) (?:called|named|labelled)/.test(said) ||
    (/^(?:he|she|they|i|we) call(?:s|ed)? (?:it|them|her|him)$/.test(said) && ends(at + 3)) ||
    /^(?:is|was) the name/.test(said) ||
    (/^(?:it|they|she) (?:is|are) $/.test(said) && ends(at + 2))
  );
}

/** No "from the new nursery, Mossgrane it's called". */
function isOfCrop(pieces: readonly Piece[], mark: number): boolean {
  for (let at = mark - 1; at >= 0; at--) {
    if (pieces[at]?.is === 'plant') return true;
    if (pieces[at]?.is === 'break' || /^(?:from|by|with|at)$/.test(wordAt(pieces, at))) return false;
  }
  return false;
}
