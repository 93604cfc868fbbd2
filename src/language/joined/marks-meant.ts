/** Marks that speech leaves out, put back where a second thing plainly begins: "sold two Salt Harrier watered the porch" is two deeds. */
import { deedsBegun } from './marks-meant/deeds.js';
import { listsToldOn } from './marks-meant/lists.js';
import type { MarkMeant } from './marks-meant/record.js';
import { openersLeft } from './marks-meant/openers.js';
import { saidNext } from './marks-meant/said-next.js';
import { sentencesBegun } from './marks-meant/sentences.js';
import { subjectsBegun } from './marks-meant/subjects.js';
import { talkBehind } from './marks-meant/talk-behind.js';
import { toldAgain } from './marks-meant/told-again.js';
import { warmthsTold } from './marks-meant/warmths.js';
import { wheresAndHows } from './marks-meant/wheres.js';
import type { Piece } from '../pieces/pieces.js';

/** Every record, in the order in which they are asked. */
export const marksMeant: readonly MarkMeant[] = [
  ...sentencesBegun,
  ...toldAgain,
  ...deedsBegun,
  ...warmthsTold,
  ...listsToldOn,
  ...wheresAndHows,
  ...openersLeft,
  ...talkBehind,
  ...saidNext,
  ...subjectsBegun,
];

/** The row with a mark before each piece that begins another thing. */
export const withMarks = markingBy(marksMeant);

/** What puts the marks of these records alone. */
export function markingBy(records: readonly MarkMeant[]) {
  const beginning = new Map<Piece['is'], MarkMeant[]>();
  for (const record of records)
    for (const is of record.begins) beginning.set(is, [...(beginning.get(is) ?? []), record]);
  return (pieces: readonly Piece[]): readonly Piece[] => {
    const row: Piece[] = [];
    for (const [at, piece] of pieces.entries()) {
      // A record sees the row with the marks put so far.
      const asked = beginning.get(piece.is) ?? [];
      const before = asked.length === 0 ? [] : stretchOf(row);
      const behind = before.length === 0 ? [] : pieces.slice(at, at + REACH);
      const record = before.length === 0 ? undefined : asked.find(({ when }) => when(before, behind));
      if (record)
        row.push({
          is: 'break',
          hard: record.mark === '.',
          mark: record.mark,
          from: piece.from,
          to: piece.from,
        });
      row.push(piece);
    }
    return row.length === pieces.length ? pieces : row;
  };
}

/** So many pieces before and behind may tell where a mark is meant. */
const REACH = 16;

/** What was said since the last mark. */
function stretchOf(row: readonly Piece[]): readonly Piece[] {
  let from = row.length;
  while (from > 0 && from > row.length - REACH && row[from - 1]?.is !== 'break') from--;
  return row.slice(from);
}
