/** Undoes in parts: some take back, the others only say why. */
import { findHits } from '../grammar/hits.js';
import { wordAt } from '../grammar/rule.js';
import { rules } from '../grammar/rules.js';
import { isUndo, nounTakenBack, undosIn } from '../grammar/undo.js';
import { WHY } from '../grammar/undo/reasons.js';
import { onlySaysWhy, tellsNothing, tellsReturn } from './only-says-why.js';
import type { Piece } from '../pieces/pieces.js';
import { lineOf, partsAtMarks } from '../sentences/sentences.js';
import type { Utterance } from '../pieces/utterance.js';

/** No undo has more pieces. */
const LONGEST_UNDO = 10;

/**
 * How many entries parts that undo, and others that only say why, take back ("whoops, wrong one, take it back" one); each
 * that names its entry takes back another. 0 where they say anything else; `tells` answers whether a part logs something.
 */
export function undosInParts(
  pieces: readonly Piece[],
  utterance: Utterance,
  tells: (part: readonly Piece[]) => boolean,
): number {
  const marked = partsAtMarks(pieces);
  const said = [...atReason(marked[0] ?? [], utterance), ...marked.slice(1)];
  if (said.length < 2 || said.length > 4) return 0;
  const lines = said.map((part) => lineOf(part, utterance));
  // "Undo, he says he kills everything": whatever else is said, when it tells of nothing.
  const [first = ''] = lines;
  if (PLAINLY.test(first) && isUndo(first) && !tells(said.slice(1).flat())) return undosIn(first);
  const undoes = lines.filter((line) => isUndo(line));
  const named = undoes.filter((line) => nounTakenBack(line) || /\bplantname\b/.test(line));
  return undoes.length > 0 &&
    lines.every(
      (line, n) =>
        isUndo(line) ||
        WHY.test(line) ||
        (n > 0 && isUndo(lines[0] ?? '') && tellsNothing(said[n] ?? [], line)) ||
        tellsReturn(said[n] ?? [], line) ||
        deniesCause(said[n] ?? [], line) ||
        onlySaysWhy(said[n] ?? [], line.replace(/^(?:actually|no|oops|sorry) /, '')),
    )
    ? Math.max(1, named.length, ...undoes.map(undosIn))
    : 0;
}

/** "That was fleece fluff, not mould": what looked like a loss was none. */
const deniesCause = (part: readonly Piece[], line: string): boolean =>
  /^(?:it|that|this|they|those) (?:was|were|is|are) (?:\S+ )+not (?:a |any )?(?:mould|mold|rot|mildew|blight|rust|botrytis|damage|dead|rotten|disease)$/.test(
    line,
  ) && part.every(({ is }) => !/^(?:plant|count|when)$/.test(is));

/** Words that nobody says but of a note, and whose reason needs no comma before it. */
const PLAINLY =
  /^(?:(?:no|oh|oops|sorry|pls|please|actually|wait|can you|and|so|then|also|ok) )*(?:undo|scratch|scrap|delete|revert|remove|cancel|strike|erase)\b/;
const SUBJECT =
  /^(?:i|i'd|i'm|i've|we|we'd|we're|we've|he|he's|he'd|she|she's|she'd|it|it's|they|they're|they've|there's|nobody|somebody|someone)$/;

/** "Undo that one he bailed": parted before the subject of the reason. */
function atReason(pieces: readonly Piece[], utterance: Utterance): readonly (readonly Piece[])[] {
  if (!PLAINLY.test(lineOf(pieces.slice(0, LONGEST_UNDO), utterance))) return [pieces];
  const at = pieces.findIndex(
    (_, n) =>
      n > 1 &&
      n < LONGEST_UNDO &&
      SUBJECT.test(wordAt(pieces, n)) &&
      isUndo(lineOf(pieces.slice(0, n), utterance)),
  );
  return at < 0 ? [pieces] : [pieces.slice(0, at), pieces.slice(at)];
}

/** "Scrap that, lost three": an undo before a comma behind which a deed is told stands as a sentence of its own. */
export function undoApart(pieces: readonly Piece[], utterance: Utterance): readonly Piece[] {
  const comma = pieces.findIndex(({ is }) => is === 'break');
  const mark = pieces[comma];
  if (comma < 1 || mark?.is !== 'break' || mark.hard || comma > LONGEST_UNDO) return pieces;
  const stands =
    isUndo(lineOf(pieces.slice(0, comma), utterance)) && findHits(rules, pieces.slice(comma + 1)).length > 0;
  return stands ? pieces.map((piece) => (piece === mark ? { ...mark, hard: true } : piece)) : pieces;
}
