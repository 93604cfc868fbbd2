/** A beast that turns up behind what the grower did: "five rooted, the cat walked across the Tallow Bell and …". */
import { isBoundary } from './boundaries.js';
import { PESTS } from '../grammar/loss/pests.js';
import { wordAt } from '../grammar/rule.js';
import type { Piece } from '../pieces/pieces.js';

const BEASTS: ReadonlySet<string> = new Set([...PESTS, 'cats', 'dogs', 'pup', 'lamb', 'horse', 'pony']);
const WHOSE =
  /^(?:the|a|our|my|some|next|door's|neighbour's|that|blasted|bloody|wretched|flaming|damn|damned)$/;

/** "My cat", "the neighbour's dog": whether such words begin there. */
export function isBeastAt(pieces: readonly Piece[], from: number): boolean {
  let at = from;
  while (WHOSE.test(wordAt(pieces, at))) at++;
  return BEASTS.has(wordAt(pieces, at));
}

/** Whether a beast and its deed begin behind the boundary there, with nothing of the grower's plants before the deed. */
export function isBeastBehind(pieces: readonly Piece[], boundary: number): boolean {
  if (!isBoundary(pieces[boundary])) return false;
  let at = boundary + 1;
  while (WHOSE.test(wordAt(pieces, at))) at++;
  if (!BEASTS.has(wordAt(pieces, at))) return false;
  const deed = pieces[/^(?:has|have|had|then|just)$/.test(wordAt(pieces, at + 1)) ? at + 2 : at + 1];
  return (
    deed?.is === 'word' &&
    (deed.verb?.form === 'past' || /ed$|^(?:sat|ran|trod|lay|dug|got|went)$/.test(deed.text))
  );
}
