/** How a note was read, as a tree of the pieces found in it and the rules that took them up. */
import type { Note } from './note.js';
import type { Piece } from './pieces/pieces.js';
import { readingOf } from './read.js';

/** Lines of text, indented two spaces a level: pieces, sentences, rules with what they made, the outcome. */
export function explanation(note: Note): string {
  const { utterance, pieces, sentences, proposals, outcome } = readingOf(note);
  const raw = (piece: Piece) =>
    utterance.text.slice(utterance.tokens[piece.from]?.start, utterance.tokens[piece.to - 1]?.end);
  return [
    JSON.stringify(note.text.slice(0, 200)),
    '  pieces',
    ...pieces.map((piece) => `    ${piece.is} ${JSON.stringify(raw(piece))}${meaningOf(piece)}`),
    ...sentences.map(({ line, asked }) => `  sentence${asked ? ' (asked)' : ''}: ${line.slice(0, 200)}`),
    ...proposals.flatMap(({ rule, kind, slots, draft, carried }) => [
      `  rule "${rule}" → ${kind}`,
      `    said ${JSON.stringify({ ...draft, ...slots })}`,
      ...(carried ? [`    carried ${JSON.stringify(carried)}`] : []),
    ]),
    ...(outcome.instruction ? [`  instruction ${JSON.stringify(outcome.instruction)}`] : []),
    ...outcome.entries.map(
      ({ entry, sources }) => `  entry ${JSON.stringify(entry)} from ${JSON.stringify(sources)}`,
    ),
    ...outcome.asks.map((ask) => `  ask ${JSON.stringify(ask)}`),
    ...(outcome.entries.length === 0 && !outcome.instruction ? ['  nothing to note'] : []),
  ].join('\n');
}

function meaningOf(piece: Piece): string {
  const known = Object.entries(piece).filter(
    ([slot, value]) => value !== undefined && !['is', 'from', 'to', 'text'].includes(slot),
  );
  return known.length === 0 ? '' : ` ${JSON.stringify(Object.fromEntries(known))}`;
}
