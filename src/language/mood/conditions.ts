/**
 * What is told on a condition, or as one: "if they had rooted I'd have potted them", "pot them on once they've a root",
 * "potted on when they had rooted".
 */
import type { Clause } from '../clauses/clauses.js';
import { wordAt } from '../grammar/rule.js';
import { isWhole } from '../grammar/stand-ins.js';
import type { Mood } from './case.js';
import { whole } from '../phrases.js';
import type { Piece } from '../pieces/pieces.js';

/** What may stand between the word that sets the condition and what is told of the roots. */
const OF_WHOM = whole`
  they|they've|they'd|they're|it|it's|it'd|there's|there|these|those|them|you|you've|the|my|our|cuttings|plants
  see|have|has|had|is|are|were|was|be|got|get|gets|show|shows
  a|an|any|some|enough|few|good|decent|proper|nice|bit|of|fully|well|properly|at|least|white|first|new
`;
const WHO = /^(?:they|they've|they'd|they're|it|it's|it'd|there's|there|you|you've|cuttings|plants)$/;
const CONDITION = /^(?:once|when|whenever|until|till|before|after)$/;
const INSTANT = /^(?:minute|moment|second|instant)$/;
const GONE = /^(?:had|were|was|they'd|it'd|rooted)$/;

/** Moods by which no look is told where its roots only say when another act is or was due. */
export function moodsOnCondition(
  pieces: readonly Piece[],
  clauses: readonly Clause[],
  own: readonly Mood[],
): readonly Mood[] {
  const moods = [...own];
  for (const [n, clause] of clauses.entries()) {
    if (clause.hit?.rule.kind !== 'check' || clause.hit.rule.sense !== undefined || own[n] !== 'done')
      continue;
    const start = conditionBefore(pieces, clause.hit.from);
    if (start === undefined) continue;
    const isGone = pieces
      .slice(start, clause.hit.to)
      .some((_, at) => GONE.test(wordAt(pieces, start + at)) && !isPerfect(pieces, start + at));
    // "It was May when they rooted": told for its own sake.
    if (isGone && clauses.filter(({ hit }) => hit).length < 2) continue;
    moods[n] = 'supposed';
    // "Pot on once they have roots", "once they have roots I pot them on": advice or a habit, and nothing done.
    if (!isGone)
      for (const beside of [n - 1, n + 1]) {
        const act = clauses[beside];
        if (act?.hit && isPlain(pieces, act) && own[beside] === 'done') moods[beside] = 'supposed';
      }
  }
  return moods;
}

/** "They've rooted", "once rooted": no time gone by. */
const isPerfect = (pieces: readonly Piece[], at: number): boolean =>
  wordAt(pieces, at) === 'rooted' &&
  !/^(?:they|it|cuttings|plants)$/.test(wordAt(pieces, at - 1)) &&
  pieces[at - 1]?.is !== 'plant';

/** Where the words that set a condition begin, straight before whoever has the roots. */
function conditionBefore(pieces: readonly Piece[], head: number): number | undefined {
  let at = head;
  let named =
    WHO.test(wordAt(pieces, head)) ||
    (wordAt(pieces, head) === 'rooted' && CONDITION.test(wordAt(pieces, head - 1)));
  while (at > 0) {
    const piece = pieces[at - 1];
    const word = wordAt(pieces, at - 1);
    if (named && CONDITION.test(word)) return at - 1;
    if (named && word === 'as' && wordAt(pieces, at - 2) === 'soon') return at - 3;
    if (named && INSTANT.test(word) && wordAt(pieces, at - 2) === 'the') return at - 2;
    if (named && word === 'time' && wordAt(pieces, at - 2) === 'the' && wordAt(pieces, at - 3) === 'by')
      return at - 3;
    if (piece?.is === 'plant' || WHO.test(word)) named = true;
    else if (!isWhole(piece) && !OF_WHOM.test(word)) return undefined;
    at--;
  }
  return undefined;
}

/** An act told in its plain form, of nobody: "pot on", "you pot on". */
function isPlain(pieces: readonly Piece[], { hit }: Clause): boolean {
  const head = pieces[hit?.from ?? -1];
  return head?.is === 'word' && head.verb?.form === 'base';
}

/** "If they had rooted I'd have potted them": nothing in it was done. */
export function isSupposed(pieces: readonly Piece[]): boolean {
  const first = pieces[0]?.is === 'break' ? 1 : 0;
  if (/^(?:if|unless|suppose|supposing|imagine|assuming)$/.test(wordAt(pieces, first))) return true;
  // "Say I took ten and half rooted, that'd be five".
  if (wordAt(pieces, first) === 'say' && /^(?:i|we)$/.test(wordAt(pieces, first + 1))) return true;
  return (
    /^(?:when|once|after|as|provided|providing|until|till|so)$/.test(wordAt(pieces, first)) &&
    pieces.some(
      (piece) =>
        piece.is === 'word' && /^(?:will|i'll|we'll|must|going|they'll|can|should|need)$/.test(piece.text),
    )
  );
}
