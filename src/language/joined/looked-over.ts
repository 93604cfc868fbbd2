/** "Checked the Salt Harrier and the Tallow Bell, 3 rooted on the Harrier, …": a look at several plants, of which each is told behind it. */
import { wordAt } from '../grammar/rule.js';
import { anyOf, opening } from '../phrases.js';
import type { Piece, PieceOf } from '../pieces/pieces.js';
import { plantsIn } from '../sentences/sentences.js';

/** Notes that tell of one look at each of two plants. */
export const phrasings: readonly string[] = [
  'checked Salt Harrier and Tallow Bell, 3 rooted on the Salt Harrier, 2 rooted on the Tallow Bell',
  'had a look at the Salt Harrier and the Tallow Bell today, Salt Harrier has 3 rooted, Tallow Bell none',
  'looked at Tallow Bell and Salt Harrier: Salt Harrier 3 rooted, Tallow Bell 2 rooted',
];

const LOOKED = opening`
  ${anyOf`
    checked( on| over)?
    looked (at|over|in on)
    (had|took|taken) a (good |quick |proper )?look (at|over)
    (went|been) (over|through)
  `} (the |my |our )?plantname
`;
const TALK = /^(?:right|so|ok|okay|well|just|then|i|we|i've|we've|have)$/;

/** The row without the look that only opens it; its day stays ahead. */
export function withoutLookOver(pieces: readonly Piece[]): readonly Piece[] {
  let from = 0;
  while (TALK.test(wordAt(pieces, from)) || pieces[from]?.is === 'when') from++;
  const end = pieces.findIndex((piece, at) => at > from && piece.is === 'break' && !listsOn(pieces, at));
  const mark = pieces[end];
  if (!mark || !LOOKED.test(lineOf(pieces.slice(from, end)))) return pieces;
  const opened = pieces.slice(0, end);
  const rest = pieces.slice(end + 1);
  const looked = plantsIn(opened);
  const told = plantsIn(rest);
  const isToldOf = (one: PieceOf<'plant'>) =>
    told.some(({ plant }) => plant.variety === one.plant.variety && plant.batch === one.plant.batch);
  if (looked.length < 2 || !looked.every(isToldOf) || opened.some(({ is }) => is === 'count')) return pieces;
  const when = opened.filter(({ is }) => is === 'when');
  return when.length > 0 ? [...when, mark, ...rest] : rest;
}

const lineOf = (pieces: readonly Piece[]): string =>
  pieces.map((piece, at) => (piece.is === 'plant' ? 'plantname' : wordAt(pieces, at))).join(' ');

/** "Salt Harrier, Tallow Bell and …": a mark within the list. */
const listsOn = (pieces: readonly Piece[], at: number): boolean =>
  pieces[at - 1]?.is === 'plant' &&
  pieces[at + 1]?.is === 'plant' &&
  /^(?:and|&)$/.test(wordAt(pieces, at + 2));
