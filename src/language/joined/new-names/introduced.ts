/** Names told behind words that only lead up to them: "the one he's calling Tin Whistler", "one I haven't grown before, Tin Whistler". */
import { wordAt } from '../../grammar/rule.js';
import type { Piece } from '../../pieces/pieces.js';
import { isCrop } from './position.js';

const MOST_WORDS = 7;
const LEADS = /^(?:the|a|an|one|that|which|what|this|seedling|sport|new)$/;
const CALLS = /^(?:calling|naming|christening)$/;

const isNameAlone = (piece: Piece | undefined): boolean =>
  piece?.is === 'plant' && piece.plant.variety !== undefined;

/** "The new dahlia, the one the raiser is calling Tin Whistler": the row without what leads from a crop to its name. */
export function withoutCallings(pieces: readonly Piece[]): readonly Piece[] {
  const name = pieces.findIndex((piece, at) => isNameAlone(piece) && CALLS.test(verbBefore(pieces, at)));
  if (name < 0) return pieces;
  let from = name;
  while (from > 0 && name - from <= MOST_WORDS && isWordOrOne(pieces[from - 1])) from--;
  const before = pieces[from - 1];
  if (from === name) return pieces;
  // "The dahlia he's calling Tin Whistler".
  if (isCrop(before)) return [...pieces.slice(0, from), ...pieces.slice(name)];
  const led = before?.is === 'break' && pieces.slice(0, from).some(isCrop) && leadsUp(pieces, from);
  return led ? [...pieces.slice(0, from), ...pieces.slice(name)] : pieces;
}

const verbBefore = (pieces: readonly Piece[], at: number): string =>
  wordAt(pieces, wordAt(pieces, at - 1) === 'it' ? at - 2 : at - 1);

const isWordOrOne = (piece: Piece | undefined): boolean =>
  piece?.is === 'word' || (piece?.is === 'count' && piece.quantity.value === 1);

const leadsUp = (pieces: readonly Piece[], from: number): boolean =>
  pieces[from]?.is === 'count' || LEADS.test(wordAt(pieces, from));

/** What may stand behind "never" or "first" where it says that a plant is new. */
const UNTRIED =
  /^(?:ever|grown|tried|met|seen|had|kept|heard|come|before|it|them|of|across|yet|this|one|i|we|i've|we've|time|trying|growing)$/;

/** Whether the words between the last two breaks say that what is named next is new: ", one I haven't grown before, ". */
export function isIntroduced(before: readonly Piece[]): boolean {
  const from = introductionBefore(before);
  return (
    from !== undefined &&
    before.some(isCrop) &&
    before.every((piece) => piece.is !== 'plant' || piece.plant.variety === undefined)
  );
}

/** Where such words begin, behind their break; the row ends in the break behind them. */
function introductionBefore(before: readonly Piece[]): number | undefined {
  if (before.at(-1)?.is !== 'break') return undefined;
  const from = before.slice(0, -1).findLastIndex(({ is }) => is === 'break') + 1;
  const words = before
    .slice(from, -1)
    .map((piece) => (piece.is === 'word' ? piece.text : isWordOrOne(piece) ? 'one' : piece.is));
  if (from === 0 || words.length > 9) return undefined;
  const untried = words.findIndex((word) => /^(?:haven't|never|not|first|hadn't)$/.test(word));
  const behind = words.slice(untried + 1);
  const isUntried =
    untried >= 0 &&
    behind.every((word) => UNTRIED.test(word)) &&
    behind.some((word) => /^(?:grown|tried|met|seen|had|kept|heard|come|trying|growing)$/.test(word));
  return isUntried || /\bnew (?:one|to me|to us|for me|for us|on me|variety|sort)\b/.test(words.join(' '))
    ? from
    : undefined;
}

/** "36 dahlia plugs in, one I haven't grown before, Tin Whistler": the row without what leads up to the name. */
export function withoutIntroductions(pieces: readonly Piece[]): readonly Piece[] {
  const name = pieces.findIndex(
    (piece, at) => piece.is === 'plant' && !piece.known && isIntroduced(pieces.slice(0, at)),
  );
  const from = name < 0 ? undefined : introductionBefore(pieces.slice(0, name));
  return from === undefined ? pieces : [...pieces.slice(0, from), ...pieces.slice(name)];
}
