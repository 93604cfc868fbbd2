/** A row in parts, between its marks and the words that join, each with its words in one line that holds no names. */
import { wordAt } from '../../grammar/rule.js';
import type { Piece } from '../../pieces/pieces.js';
import { isToCome } from '../../mood/yet-to-be.js';

export interface Part {
  readonly from: number;
  readonly to: number;
  /** Its words, without the mark or conjunction before them; a plant is `<plant>`, a place `<place>`. */
  readonly line: string;
  /** Behind "and", with no mark between. */
  readonly joined: boolean;
  /** A plant or a place and nothing else, behind a mark. */
  readonly bare: boolean;
}

const JOINS = /^(?:and|but|though|while|whereas)$/;

export function partsOfLine(row: readonly Piece[]): readonly Part[] {
  const starts = row.flatMap((piece, at) =>
    at > 0 && ((isJoint(piece) && !isJoint(row[at - 1])) || deniesNext(row, at)) ? [at] : [],
  );
  return [0, ...starts].map((from, n) => {
    const to = starts[n] ?? row.length;
    const own = row.slice(from, to);
    const words = own.slice(
      Math.max(
        0,
        own.findIndex((piece) => !isJoint(piece)),
      ),
    );
    const line = words.map(told).join(' ');
    return {
      from,
      to,
      line,
      joined: wordAt(row, from) === 'and',
      bare: row[from]?.is === 'break' && /^(?:(?:the|my|our) )?<(?:plant|place)>$/.test(line),
    };
  });
}

export const isJoint = (piece: Piece | undefined): boolean =>
  piece?.is === 'break' || (piece?.is === 'word' && JOINS.test(piece.text));

/** "Watered the greenhouse not the porch": a denial with no mark before it. */
function deniesNext(row: readonly Piece[], at: number): boolean {
  if (wordAt(row, at) !== 'not' || !/^(?:plant|place|when)$/.test(row[at - 1]?.is ?? '')) return false;
  const named = row[/^(?:the|my|our)$/.test(wordAt(row, at + 1)) ? at + 2 : at + 1];
  return named?.is === 'plant' || named?.is === 'place';
}

function told(piece: Piece): string {
  if (piece.is === 'word') return piece.text;
  return isToCome(piece) ? '<later>' : `<${piece.is}>`;
}
