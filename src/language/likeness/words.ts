/** A row as the words by which notes are alike: a plant is a plant whatever it is called, a number a number. */
import type { Piece } from '../pieces/pieces.js';

/** Where one thing told ends and the next may begin. */
const JOINTS: ReadonlySet<string> = new Set(['.', ',', ':', '?', 'and', 'then', 'but', 'so']);

const wordOf = (piece: Piece): string => {
  switch (piece.is) {
    case 'word':
      return piece.verb ? `${piece.verb.lemma}/${piece.verb.form}` : withoutEnding(piece.text);
    case 'plant':
      return piece.plant.variety === undefined && piece.plant.batch === undefined ? 'CROP' : 'PLANT';
    case 'break':
      return piece.mark === '?' || piece.mark === ':' ? piece.mark : piece.hard ? '.' : ',';
    default:
      return piece.is.toUpperCase();
  }
};

const withoutEnding = (word: string): string => word.replace(/(?<=.{3})(?:ing|ed|es|s)$/, '');

/** Kinds of pieces in capitals, verbs as `take/past`, other words without their endings, marks as written. */
export function wordsOf(pieces: readonly Piece[]): readonly string[] {
  return pieces.map(wordOf);
}

/** The parts between marks and joining words ; a piece alone is none. */
export function partsOf(words: readonly string[]): readonly (readonly string[])[] {
  const parts: string[][] = [[]];
  for (const word of words) {
    if (JOINTS.has(word)) parts.push([]);
    else parts.at(-1)?.push(word);
  }
  return parts.filter(
    ([first, second]) => second !== undefined || (first !== undefined && /[a-z]/.test(first)),
  );
}

/** What is weighed of a row: each word, each two that follow one another, each two with one word between; none twice. */
export function traitsOf(words: readonly string[]): ReadonlySet<string> {
  const row = ['<', ...words, '>'];
  const traits = new Set<string>();
  row.forEach((word, at) => {
    const [next, second] = [row[at + 1], row[at + 2]];
    traits.add(word);
    if (next !== undefined) traits.add(`${word} ${next}`);
    if (second !== undefined) traits.add(`${word} _ ${second}`);
  });
  return traits;
}
