/** What is told as it always goes, and was not done once: "as a rule the Salt Harrier gets potted at five weeks". */
import type { Piece } from './pieces.js';

const HABIT =
  /\b(?:as a rule|in general|by and large|as a general rule|on the whole|most years|every year|each year|usually|normally|generally|typically|always (?:gets?|are|is|have|has|do|does))\b/;
/** No adverbial of habit is longer: "as a general rule". */
const LONGEST_ADVERBIAL = 4;

/**
 * Whether the words before a head say so. "Every year I lose some, lost two" tells of two that were lost: of a deed told in
 * the past only its own part counts and an adverbial alone before its break ("most years, we …"), unless the part of the
 * habit is told in the past too ("every year we took ten, lost five").
 */
export function isHabit(pieces: readonly Piece[], from: number, head: number, isPast: boolean): boolean {
  const before = pieces.slice(from, head);
  const last = isPast ? before.findLastIndex(({ is }) => is === 'break') : -1;
  const talk = before.slice(0, Math.max(0, last));
  const isApart =
    (talk.length > LONGEST_ADVERBIAL || talk.some(tellsDoing)) &&
    !talk.some((piece) => piece.is === 'when' || toldInPast(piece));
  const words = wordsOf(isApart ? before.slice(last + 1) : before);
  return words.at(-1) === 'gets' || HABIT.test(words.join(' '));
}

const toldInPast = (piece: Piece): boolean => piece.is === 'word' && piece.verb?.form === 'past';

/** "I lose some": more than an adverbial. */
const tellsDoing = (piece: Piece): boolean =>
  piece.is === 'word' && (piece.verb?.form === 'base' || /^(?:i|we|they|it)$/.test(piece.text));

const wordsOf = (pieces: readonly Piece[]): readonly string[] =>
  pieces.flatMap((piece) => (piece.is === 'word' ? [piece.text] : []));
