/** Reasons added behind a value put right ("…, just counted them", "…, come to think of it"): how it came out, and no more. */
import { isOfSomethingElse } from '../nothing-right.js';
import { findHits } from '../../grammar/hits.js';
import { wordAt } from '../../grammar/rule.js';
import { rules } from '../../grammar/rules.js';
import { SMALL } from '../../pieces/number-names.js';
import { onlySaysWhy } from '../only-says-why.js';
import { anyOf, closing, whole } from '../../phrases.js';
import type { Piece } from '../../pieces/pieces.js';
import { lineOf } from '../../sentences/sentences.js';
import { secondThoughtsBefore } from './second-thoughts.js';
import type { Utterance } from '../../pieces/utterance.js';

/** "Just counted them again", "miscounted", "had the labels mixed up". */
const LOOKED_AGAIN = anyOf`
  (i |i've |i have |we )?((just|only just|now|have) )*${anyOf`
    recounted|looked|double checked|had (another|a proper) look
    (counted|checked)( (them|it))?
  `}( (again|properly|up|twice|over|myself|after you))*
  (i )?(miscounted|misread|missed (one|some|a few)|can't count|cannot count|forgot (one|some))( .{0,40})?
  (i'd|i had|i've|i have|i was|i)( got| had)? (my |the )?(\w+ )?${anyOf`
    labels?|pots?|trays?|rows?|numbers?|plants?|notes?|names?|days?|glasses|specs|wires|lines
  `} (swapped|mixed up|muddled|crossed|off|wrong|in a muddle|upside down|the wrong way round)
`;

/** "Come to think of it", "forgot to say", "I put the whole row". */
const SAID_OTHERWISE = anyOf`
  come to think of it|on second thoughts?|now (that )?i (think|look|come)\b.{0,40}
  story of my life|silly me|daft me|typical|my (own )?(mistake|fault)
  (i )?forgot to (tell you|tell|say|(log|mention|note)( it)?|put it in)
  i (put|said|wrote|typed)\b(?!.*\b(meant|was|were|should)\b).{0,24}
`;

/** What makes off with a cutting. */
const PEST = anyOf`
  dogs?|cats?|slugs?|snails?|mouse|mice|kids?|hens?|birds?|pup|puppy|toddler|rabbits?|squirrels?|wind
`;

/** "There was another tucked behind", "one had snapped", "the other just needed a wipe". */
const OTHERS_FOUND = anyOf`
  there (was|were) (one|two|three|another|some|a couple) (more )?${anyOf`
    under|behind|beneath|hiding|hidden|stuck|tucked|lurking|left|lying|that i missed
  `}\b.{0,60}
  (one|two|another|some) (was|were|had been) (hiding|hidden|stuck|tucked|lurking)\b.{0,60}
  (one|two|another|some) had (already |just )?${anyOf`
    snapped|broken|died|rotted|flopped|wilted|gone|failed|fallen over|dried up
  `}
  (the |a |my |our )?${PEST} (got|had|ate|took|broke|squashed|flattened|knocked over) (one|two|three|another|some|a couple|the (others?|rest))
  the (others?|rest)(('s| is| are| was| were)? (just|only|really|still|fine|alive|grand|ok)| (just |only |really )?(needed|wanted))\b.{0,30}
  pots (has|had|have|got|has got) some in (it|them)
`;

const REASON = whole`(and )?(${LOOKED_AGAIN}|${SAID_OTHERWISE}|${OTHERS_FOUND})`;

/** No longer is what puts a value right. */
const SHORT = 9;

/** "… was yesterday now that I think of it": the same without a mark. */
const SAID_ON = whole`
  now (that )?(i|we) (think|come to think) (of|about) it
  come to think of it|thinking about it|now i think
`;

/** How many words of that stand at the end of a row. */
function saidOn(row: readonly Piece[]): number {
  for (let many = 3; many <= 8 && many < row.length - 1; many++) {
    const line = row.slice(-many).map((_, n) => wordAt(row, row.length - many + n));
    if (SAID_ON.test(line.join(' '))) return many;
  }
  return 0;
}

/** "Thirty one it was all of them": how many pieces behind the number only say that it is all. */
function allBehind(row: readonly Piece[]): number {
  const all = row.findLastIndex((piece) => piece.is === 'count' && piece.quantity.whole === 'all');
  const isLed =
    /^(?:it|that|they|which)$/.test(wordAt(row, all - 2)) &&
    /^(?:was|were|is|are)$/.test(wordAt(row, all - 1));
  const isEnd = row
    .slice(all + 1)
    .every((piece) => piece.is === 'word' && /^(?:of|them|those|it)$/.test(piece.text));
  if (all < 3 || !isLed || !isEnd) return 0;
  const from = row[all - 3]?.is === 'break' ? all - 3 : all - 2;
  const number = row[from - 1];
  return number?.is === 'count' && number.quantity.value !== undefined ? row.length - from : 0;
}

/**
 * "Sorry 4, Yuki took one too", "no wait 7, two snapped": second thoughts and a bare number are all that is put right,
 * whatever is said behind the mark of no other plant. Where that mark stands; -1 where anything else is said before it.
 */
function settledAt(row: readonly Piece[]): number {
  const { to: number, doubted } = secondThoughtsBefore(row.filter(({ is }) => is !== 'break'));
  const at = row.findIndex((piece) => piece.is === 'count' && piece.quantity.value !== undefined);
  // "5 actually, one's still in its pot".
  const isDoubtedBehind = at === 0 && /^(?:actually|sorry|rather|no)$/.test(wordAt(row, 1));
  const end = isDoubtedBehind ? 2 : at + 1;
  const isBare = isDoubtedBehind || (doubted && at >= number && at <= number + 1);
  return isBare && row[end]?.is === 'break' && !row.slice(at).some(({ is }) => is === 'plant') ? end : -1;
}

/** The row without a reason behind its last comma or dash, or one of the usual words at its end. */
export function withoutReasons(row: readonly Piece[]): readonly Piece[] {
  const many = saidOn(row) || allBehind(row);
  if (many > 0) return withoutReasons(row.slice(0, -many));
  const settled = settledAt(row);
  if (settled > 0) return row.slice(0, settled);
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
      behind.every(
        (piece) => piece.is === 'word' || (piece.is === 'count' && piece.quantity.weak === true),
      ) &&
      onlySaysWhy(behind, line));
  return isReason ? withoutReasons(row.slice(0, cut)) : row;
}

/** "Two short", "one more than that": by how much a number was out. */
const OUT_BY = closing`
  (more|fewer|less) than (that|i (said|thought|put|told you|reckoned))
  too (many|few)
  (\d+|one|two|three|couple) (short|out|over|under)
`;

/** "So make it 41", "that should have been 12". */
const MAKES = whole`
  (so |please |pls |sorry |actually )*${anyOf`
    (make|call) (it|that|them)
    (it|that|they)('s| was| were| is| are)?( should be| should have been| only| just)*
    should be|should have been
  `} (a )?\d+
`;
const ANNOUNCED = /\b(?:make|call|should)\b/;

/** "One more than that, make it 41", "I missed the back row, that should be 12" without what only tells how it came out. */
export function withoutLead(row: readonly Piece[], utterance: Utterance): readonly Piece[] {
  const cut = row.findLastIndex(({ is }) => is === 'break');
  const [before, behind] = [row.slice(0, cut), row.slice(cut + 1)];
  const makes = lineOf(behind, utterance);
  if (cut < 2 || cut > SHORT + 1 || !MAKES.test(makes)) return row;
  const only = before.every(({ is }) => /^(?:word|count|break|place)$/.test(is));
  const why = lineOf(before, utterance);
  const isLead = OUT_BY.test(why) || (ANNOUNCED.test(makes) && before.some(({ is }) => is === 'word'));
  if (isOfSomethingElse(why, before, -1)) return row;
  return only && isLead && findHits(rules, before).length === 0 ? behind : row;
}

/** A number as it is spelt, up to three; more are "some". */
function saidBy(piece: Piece, word: string): string {
  if (piece.is === 'pots') return 'pots';
  if (piece.is !== 'count') return word;
  const { value = 0 } = piece.quantity;
  return value > 0 && value < 4 ? (SMALL[value] ?? 'some') : 'some';
}
