/** A name that nobody knew before, as it is kept. */
import type { Piece } from '../pieces.js';
import type { Token } from '../../row/tokens.js';

/** The words [from, to) as a name that nobody knows. */
export const nameAt = (text: string, tokens: readonly Token[], from: number, to: number): Piece => ({
  is: 'plant',
  from,
  to,
  known: false,
  plant: { variety: titleCase(text.slice(tokens[from]?.start ?? 0, tokens[to - 1]?.end ?? 0)) },
});

const SMALL = /^(?:of|the|de|du|la|von|and|on|in)$/;

/** "Duchess of Nowhere": the small words within stay small. */
export function titleCase(name: string): string {
  return name.replace(
    /(^|[\s-])(\p{Ll}[\p{L}']*)/gu,
    (_, gap: string, word: string) =>
      gap + (gap !== '' && SMALL.test(word) ? word : word.charAt(0).toUpperCase() + word.slice(1)),
  );
}
