/** What an amendment sets anew, and which entry it is of. */
import type { Piece, PlantWords, When } from '../pieces/pieces.js';
import { textOf } from '../sentences/sentences.js';
import { titleCase } from '../pieces/told-names/name-piece.js';
import type { Utterance } from '../pieces/utterance.js';
import { valueSaid } from '../pieces/value-said.js';
import { partOf } from './reason.js';

export interface Amended {
  readonly set: Record<string, unknown>;
  plant?: PlantWords;
  when?: When;
}

/** Sets what a piece says, where nothing before it did. */
export function put(
  { set }: Amended,
  piece: Piece | undefined,
  pieces: readonly Piece[],
  utterance: Utterance,
): void {
  if (!piece) return;
  const grown = grownName(piece, pieces, utterance);
  if (grown !== undefined) {
    set['variety'] ??= grown;
    return;
  }
  const value = valueOf(piece, partOf(piece, pieces, utterance));
  for (const [slot, told] of Object.entries(value)) set[slot] ??= told;
}

/** What may stand behind a part of a name and is none of it. */
const TALK =
  /^(?:please|pls|plz|sorry|thanks|cheers|actually|though|instead|really|obviously|not|now|there|here|today|yesterday|again|too|then|lol|ones?|lots?|batch|batches|trays?|pots?|plants?|cuttings?|slips?|bits?|stuff|things?|rows?|plugs?|tubers?)$/i;

/**
 * "I meant Slate Wren", where the ledger has a Slate Hen: a word that its names share and one that is nobody's is a name
 * of its own, and not the plant that the first word would mean by itself.
 */
export function grownName(piece: Piece, pieces: readonly Piece[], utterance: Utterance): string | undefined {
  if (piece.is !== 'plant' || piece.plant.variety === undefined) return undefined;
  const next = pieces[pieces.indexOf(piece) + 1];
  const written = textOf([piece], utterance);
  const isPart = written.split(' ').length < piece.plant.variety.split(' ').length;
  if (!isPart || next?.is !== 'word' || next.from !== piece.to) return undefined;
  const word = textOf([next], utterance);
  const behind = pieces[pieces.indexOf(next) + 1];
  const isName =
    /^\p{L}{3,}$/u.test(word) && !next.verb && !TALK.test(word) && (!behind || endsValue(behind));
  return isName ? titleCase(`${written} ${word}`) : undefined;
}

/** "Bedstead green, …", "bedstead green not bedstead grey". */
const endsValue = (piece: Piece): boolean =>
  piece.is === 'break' || (piece.is === 'word' && piece.text === 'not');

/** The slots that a piece sets, in a line that may tell of roots. */
function valueOf(piece: Piece, line: string): Readonly<Record<string, unknown>> {
  // A bare "it was minus 6 on Friday" tells the weather: only where an amendment is announced does a temperature mend one.
  if (piece.is === 'celsius') return { celsius: piece.celsius };
  const { count, ...value } = (valueSaid(piece) ?? {}) as { readonly count?: number };
  if (count === undefined) return value;
  const ofRoots = /\b(?:rooted|roots)\b/.test(line) && !/\b(?:cuttings|struck|took)\b/.test(line);
  return ofRoots ? { rooted: count } : { count };
}

/**
 * "Grandads Elbow should be Grandad's Elbow": what was taken for a slip of the pen is the new name; nothing where both
 * are written alike.
 */
export function spelledAnew(
  old: Piece,
  fresh: Piece,
  utterance: Utterance,
  known?: string,
): string | undefined {
  const written = textOf([fresh], utterance);
  const isSame =
    known === undefined
      ? written === textOf([old], utterance)
      : written.toLowerCase() === known.toLowerCase();
  return isSame ? undefined : titleCase(written);
}
