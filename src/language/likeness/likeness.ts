/** How like the notes of each kind a note is, by its words alone: a second look, beside the rules and apart from them. */
import type { Piece } from '../pieces/pieces.js';
import { chance, shareOf, STEPS } from './learning.js';
import { learnt, type Table } from './learnt.js';
import { partsOf, traitsOf, wordsOf } from './words.js';

/** Of each kind the chance, 0–1, that a note of these words tells it. */
export interface Likeness {
  /** By all of its words. */
  readonly whole: ReadonlyMap<string, number>;
  /** By all of them or by those of one part, whichever is more: what a part tells may be lost in a long note. */
  readonly most: ReadonlyMap<string, number>;
}

export function likenessOf(pieces: readonly Piece[], table: Table = learnt()): Likeness {
  const words = wordsOf(pieces);
  const whole = chancesOf(words, table);
  const most = new Map(whole);
  for (const part of partsOf(words))
    for (const [kind, likely] of chancesOf(part, table))
      most.set(kind, Math.max(likely, most.get(kind) ?? 0));
  return { whole, most };
}

function chancesOf(words: readonly string[], { kinds, bias, rows, weights }: Table): Map<string, number> {
  const known = [...traitsOf(words)].map((trait) => rows.get(trait)).filter((at) => at !== undefined);
  const share = shareOf(known.length);
  return new Map(
    kinds.map((kind, column) => {
      const sum = known.reduce((sum, at) => sum + (weights[at + column] ?? 0), 0);
      return [kind, chance((sum * share + (bias[column] ?? 0)) / STEPS)];
    }),
  );
}
