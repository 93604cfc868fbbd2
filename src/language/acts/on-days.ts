/** The days of an act told twice in one clause: "gave it a drink last Sunday and again today", "watered Monday, Wednesday and Friday". */
import { firstDay } from '../../calendar/span.js';
import type { Clause } from '../clauses/clauses.js';
import { wordAt } from '../grammar/rule.js';
import type { Piece, When } from '../pieces/pieces.js';

const BETWEEN = /^(?:and|then|again|also|once|more|on|both|plus)$/;

/** Each day of the first run of them, in the order told; none where there is one day only, or they do not follow each other. */
export function daysTold(pieces: readonly Piece[], { from, to, hit }: Clause): readonly When[] {
  const days: When[] = [];
  let last = from;
  for (let at = from; at < to; at++) {
    const piece = pieces[at];
    if (piece?.is === 'when') {
      days.push(piece.when);
      last = at;
    } else if (days.length > 0 && piece?.is !== 'break' && !BETWEEN.test(wordAt(pieces, at))) break;
  }
  const isOpening = hit !== undefined && last < hit.from;
  const isRow = LEADS.test(wordAt(pieces, last - 1)) && (isOpening || isEnd(pieces[last + 1]));
  return days.length > 1 && isRow && days.every((day, at) => isBehind(day, days[at - 1])) ? days : [];
}

/** "… and again today", but not "…, yesterday was wet", "… and today I fed it". */
const LEADS = /^(?:and|then|again|once|more|on)$/;
const isEnd = (next: Piece | undefined): boolean =>
  next === undefined ||
  next.is === 'break' ||
  (next.is === 'word' && (next.verb?.form === 'past' ? next.verb.lemma !== 'be' : FOLLOWS.test(next.text)));
const FOLLOWS = /^(?:as|because|since|for|with|in|so|but|and|too|when|while|before|after)$/;

/** A day gone by, and not before the one told before it. */
function isBehind({ past, words }: When, before: When | undefined): boolean {
  if (past === undefined || past === 'ask' || /\b(?:tomorrow|next|tonight)\b/i.test(words)) return false;
  return before === undefined || (isKnown(before) && firstDay(before.past) < firstDay(past));
}

const isKnown = (when: When): when is When & { readonly past: Exclude<When['past'], 'ask' | undefined> } =>
  when.past !== undefined && when.past !== 'ask';
