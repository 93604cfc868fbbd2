/** Reasons added behind a value put right ("…, just counted them", "…, come to think of it"): how it came out, and no more. */
import { wordAt } from '../grammar/rule.js';
import { onlySaysWhy } from '../only-says-why.js';
import type { Piece } from '../pieces.js';

const REASON =
  /^(?:and )?(?:(?:i |i've |i have |we )?(?:just |only just |now |have )*(?:counted|recounted|checked|looked|double checked|had another look|had a proper look|counted (?:them|it)|checked (?:them|it))(?: again| properly| up| twice)*|(?:i )?(?:miscounted|misread|missed (?:one|some|a few)|can't count|cannot count|forgot (?:one|some))(?: .{0,40})?|(?:i'd|i had|i've|i have|i was|i)(?: got| had)? (?:my |the )?(?:\w+ )?(?:labels?|pots?|trays?|rows?|numbers?|plants?|notes?|names?|days?|glasses|specs|wires|lines) (?:swapped|mixed up|muddled|crossed|off|wrong|in a muddle|upside down|the wrong way round)|come to think of it|(?:i )?forgot to (?:tell you|tell|say|log it|log|mention it|mention|note it|note|put it in)|now (?:that )?i (?:think|look|come)\b.{0,40}|on second thoughts?|i (?:put|said|wrote|typed)\b(?!.*\b(?:meant|was|were|should)\b).{0,24}|pots (?:has|had|have|got|has got) some in (?:it|them)|there (?:was|were) (?:one|two|three|another|some|a couple) (?:more )?(?:under|behind|beneath|hiding|hidden|stuck|tucked|lurking|left|lying|that i missed)\b.{0,60}|(?:one|two|another|some) (?:was|were|had been) (?:hiding|hidden|stuck|tucked|lurking)\b.{0,60})$/;

/** No longer is what puts a value right. */
const SHORT = 9;

/** The row without a reason behind its last comma or dash. */
export function withoutReasons(row: readonly Piece[]): readonly Piece[] {
  const cut = row.findLastIndex((piece, at) => piece.is === 'break' && at > 0 && at < row.length - 1);
  if (cut < 0) return row;
  const behind = row.slice(cut + 1);
  const line = behind.map((piece, n) => saidBy(piece, wordAt(row, cut + 1 + n))).join(' ');
  const isValueBefore = row.slice(0, cut).some(({ is }) => is !== 'word' && is !== 'break');
  const isReason =
    REASON.test(line) ||
    (isValueBefore &&
      cut < SHORT &&
      behind.length > 2 &&
      behind.every(({ is }) => is === 'word') &&
      onlySaysWhy(behind, line));
  return isReason ? row.slice(0, cut) : row;
}

const NUMBERS: Readonly<Record<number, string>> = { 1: 'one', 2: 'two', 3: 'three' };

function saidBy(piece: Piece, word: string): string {
  if (piece.is === 'pots') return 'pots';
  return piece.is === 'count' ? (NUMBERS[piece.quantity.value ?? 0] ?? 'some') : word;
}
