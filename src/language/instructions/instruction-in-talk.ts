/** "It's daft having two lots on one sill. Merge them, would you?": a splitting or merging with only talk around it. */
import { findHits } from '../grammar/hits.js';
import { wordAt } from '../grammar/rule.js';
import { rules } from '../grammar/rules.js';
import type { Instruction } from './instruction.js';
import { batches } from '../grammar/instruction/batches.js';
import { instruct } from './instructing.js';
import type { Note } from '../note.js';
import type { Piece } from '../pieces/pieces.js';
import { lineOf, plantsIn } from '../sentences/sentences.js';
import type { Utterance } from '../pieces/utterance.js';

const TOLD = /^(?:they|it|these|those|i|we|he|she|that|to)\b/;
/** More than this is no talk around an instruction. */
const MOST_PARTS = 6;

/** What no other instruction is asked for needs none of their patterns. */
const mayPartOrJoin = (line: string): boolean => batches.some(({ pattern }) => pattern.test(line));

/** The instruction of one part; undefined where there is none, or something is told in the others. */
export function instructionInTalk(
  pieces: readonly Piece[],
  utterance: Utterance,
  note: Note,
): Instruction | undefined {
  const starts = pieces.flatMap((piece, at) =>
    piece.is === 'break' || /^so$/.test(wordAt(pieces, at)) ? [at + 1] : [],
  );
  if (starts.length > MOST_PARTS) return undefined;
  const ends = [...starts.map((at) => at - 1), pieces.length];
  for (const from of [0, ...starts])
    for (const to of ends.filter((end) => end > from).toReversed()) {
      if (from === 0 && to === pieces.length) continue;
      const part = pieces.slice(from, to);
      const line = lineOf(part, utterance);
      // "So they can join the others": why something was done.
      const found =
        mayPartOrJoin(line) && !TOLD.test(line) ? instruct(line, part, utterance, note) : undefined;
      if (found?.kind !== 'merge' && found?.kind !== 'split') continue;
      const talk = [...pieces.slice(0, from), ...pieces.slice(to)];
      if (findHits(rules, talk).some(({ rule }) => rule.kind !== 'remark' && rule.faint !== true))
        return undefined;
      // "The two Hob Lane lots may as well be one, merge them": the talk tells which.
      const [named, another] = plantsIn(talk);
      return found.kind === 'merge' && found.plants.length === 0 && named && !another
        ? { ...found, plants: [{ ...named.plant }] }
        : found;
    }
  return undefined;
}
