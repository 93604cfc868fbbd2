/** What a record of a mark that was meant is: where one is put, and phrases as said and as meant. */
import { whole } from '../../phrases.js';
import type { Piece } from '../../pieces/pieces.js';

export interface MarkMeant {
  readonly name: string;
  readonly mark: ',' | '.' | ':';
  /** What a piece is that it may be put before. */
  readonly begins: readonly Piece['is'][];
  /** What was said since the last mark, and what follows, the piece itself first. */
  readonly when: (before: readonly Piece[], behind: readonly Piece[]) => boolean;
  /** Phrases as said and as they would be written, which the record marks by itself; tests run them. */
  readonly phrasings: readonly (readonly [said: string, written: string])[];
  /** Phrases in which it puts none. */
  readonly mustNot?: readonly string[];
}

/** The last piece. */
export const lastOf = (pieces: readonly Piece[]): Piece | undefined => pieces.at(-1);

/** The text of a word that stands so far from the end; empty where another piece does. */
export function wordBack(pieces: readonly Piece[], back = 1): string {
  const piece = pieces.at(-back);
  return piece?.is === 'word' ? piece.text : '';
}

/** What may be done to a place alone. */
export const TENDS = whole`mist|water|feed|vent|ventilate|air|open|shut|close|shade|fleece|cover|uncover|spray|damp`;

export const isTended = (piece: Piece | undefined): boolean =>
  piece?.is === 'word' && piece.verb?.form === 'past' && TENDS.test(piece.verb.lemma);
