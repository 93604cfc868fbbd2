/** Names that are told by where they are written: "…, Rusty Verger on the label", "the tag says Rusty Verger". */
import { wordAt } from './grammar/rule.js';
import type { Piece } from './pieces.js';

const LABEL = /^(?:label|labels|tag|tags|pot|packet|stick)$/;

/** Whether the pieces [from, to) are such a name. */
export function isOnLabel(pieces: readonly Piece[], from: number, to: number): boolean {
  const isLabel = (at: number): boolean => pieces[at]?.is === 'pots' || LABEL.test(wordAt(pieces, at));
  if (/^(?:says|said|reads|read)$/.test(wordAt(pieces, from - 1)) && isLabel(from - 2)) return true;
  if (pieces[from - 1]?.is !== 'break') return false;
  let at = to;
  while (/^(?:it|is|says|said|written|according|marked|printed|scrawled)$/.test(wordAt(pieces, at))) at++;
  if (!/^(?:on|to)$/.test(wordAt(pieces, at))) return false;
  return isLabel(/^(?:the|its|their|a|my|each)$/.test(wordAt(pieces, at + 1)) ? at + 2 : at + 1);
}
