/** Words that stand for others which sound or are spelt much alike, told by the words on both sides: "lost too of the". */
import type { Token } from '../tokens.js';
import { beside } from './beside.js';
import { learntNeighbours } from './learnt-neighbours.js';
import { likelihood } from './neighbours.js';

/** Words that are written or heard for others: what sounds alike, and slips that make another word. */
export const WRITTEN_FOR: ReadonlyMap<string, readonly string[]> = new Map([
  ['to', ['two', 'too']],
  ['too', ['two', 'to']],
  ['for', ['four']],
  ['fore', ['four']],
  ['ate', ['eight']],
  ['won', ['one']],
  ['tin', ['ten']],
  ['weak', ['week']],
  ['sell', ['cell']],
  ['sells', ['cells']],
  ['route', ['root']],
  ['routes', ['roots']],
  ['rots', ['roots']],
  ['heal', ['heel']],
  ['tubes', ['tubers']],
  ['plus', ['plugs']],
  ['plated', ['planted', 'potted']],
  ['planed', ['planted', 'planned']],
  ['panted', ['planted']],
  ['stared', ['started']],
  ['stated', ['started']],
  ['sapped', ['snapped']],
  ['piked', ['picked']],
  ['power', ['powder']],
  ['sprig', ['spring']],
  ['shooing', ['shooting']],
]);

/** How much likelier the other word has to be; of 248 such words in notes held back from learning one was changed by it. */
const LEAST_ALIKE = 4;

/** The row with such words as the one that their neighbours on both sides mean. */
export function likelierByNeighbours(
  tokens: readonly Token[],
  isName: (at: number) => boolean,
): readonly Token[] {
  if (!tokens.some(({ text }) => WRITTEN_FOR.has(text))) return tokens;
  const row = [...tokens];
  for (const [at, token] of row.entries()) {
    const others = isName(at) ? undefined : WRITTEN_FOR.get(token.text);
    const meant = others && likelierAt(row, at, others, isName);
    if (meant !== undefined) row[at] = { ...token, text: meant };
  }
  return row;
}

function likelierAt(
  row: readonly Token[],
  at: number,
  others: readonly string[],
  isName: (at: number) => boolean,
): string | undefined {
  const known = learntNeighbours();
  const [before, after] = beside(row, at, isName);
  const word = row[at]?.text ?? '';
  // "Undo that too."
  if (word === 'too' && !/^[a-z§]/.test(after)) return undefined;
  const own = likelihood(known, before, word, after);
  return others.find(
    (other) =>
      known.pairs.has(`${before} ${other}`) &&
      known.pairs.has(`${other} ${after}`) &&
      likelihood(known, before, other, after) - own > LEAST_ALIKE,
  );
}
