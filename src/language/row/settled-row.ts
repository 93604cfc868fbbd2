/** A note's row before it is cut into pieces: names found, slips mended, courtesies left out, what was misheard put right. */
import { withoutCourtesies } from './courtesies.js';
import { restoreHeard } from './homophones.js';
import { crops, phraseAt } from './lexicon.js';
import { findNames } from './names.js';
import type { FoundName } from './names/known.js';
import { normalise } from './normalise.js';
import type { Note } from '../note.js';
import { placesBegin } from '../pieces/places/begin.js';
import { mendedByNeighbours } from './spelling/by-neighbours.js';
import { likelierByNeighbours } from './spelling/written-for.js';
import { rowOf } from './spoken-marks.js';
import { textAt, type Token } from './tokens.js';

/** What the words beside a word say of it; nothing where these are yet to be learnt. */
type Beside = (tokens: readonly Token[], isName: (at: number) => boolean) => readonly Token[];

interface Settled {
  readonly text: string;
  readonly tokens: readonly Token[];
  readonly names: readonly FoundName[];
}

/** A note's tokens as they were meant, and the names in them. */
export function settledRow(
  note: Note,
  slips: Beside = mendedByNeighbours,
  alike: Beside = likelierByNeighbours,
): Settled {
  const context = note.context ?? {};
  const text = normalise(note.text);
  const row = rowOf(text, context);
  const named = findNames(row, context);
  const isNamed = (at: number): boolean => named.some(({ from, to }) => from <= at && at < to);
  const whole = slips(row, isNamed);
  const written = withoutCourtesies(whole, isNamed);
  const names = written === whole ? named : findNames(written, context);
  const inName = new Set<number>();
  for (const { from, to } of names) for (let at = from; at < to; at++) inName.add(at);
  const isName = (at: number): boolean => inName.has(at);
  const words = written.map(({ text }) => text);
  const restored = restoreHeard(
    written,
    isName,
    (at) =>
      isName(at) ||
      isName(textAt(written, at) === 'the' ? at + 1 : at) ||
      phraseAt(crops, words, at) !== undefined,
    placesBegin(written, context, isName),
  );
  const tokens = alike(restored, isName);
  // A restored phrase may have lost a token; names are then found again on the new row.
  const settled = tokens.length === written.length ? names : findNames(tokens, context);
  return { text, tokens, names: settled };
}
