/** Whether what was lost stands by the words that tell of it, and what it was lost to. */
import type { Cause } from '../../../ledger/entry.js';
import { causes, phraseAt } from '../../row/lexicon.js';
import type { Piece } from '../../pieces/pieces.js';
import { closeBehind, follows, precedes, wordAt } from '../rule.js';

/** Whether the words are followed by what they were done to. */
export const needsPlantOrCount = (pieces: readonly Piece[], _from: number, to: number): boolean =>
  follows(pieces, to, 'plant', 'count');

/** Whether a number stands close before or behind the words. */
export const counted = (pieces: readonly Piece[], from: number, to: number): boolean =>
  precedes(pieces, from, 7, 'count') || closeBehind(pieces, to, 'count');

/** "The leaves are all", "its edges have": what hangs on a plant that may live, straight before the words; no "six leaves" that were struck. */
export function isOfPartsOnly(pieces: readonly Piece[], from: number): boolean {
  let at = from - 1;
  while (isBesidePart(pieces, at)) at--;
  // "The leaves on the Salt Harrier have all shrivelled".
  if (pieces[at]?.is === 'plant') {
    const on = /^(?:the|my|our|those|these)$/.test(wordAt(pieces, at - 1)) ? at - 2 : at - 1;
    if (/^(?:on|of)$/.test(wordAt(pieces, on))) at = on - 1;
  }
  return isPlantPart(wordAt(pieces, at)) && pieces[at - 1]?.is !== 'count';
}

export const isPlantPart = (word: string): boolean => PARTS.test(word);

const PARTS =
  /^(?:leaf|leaves|foliage|edges?|margins?|buds?|blooms?|flowers?|petals?|growth|needles?|fronds?|sepals?)$/;

/** Of a part "all" says how much of it, and not how many plants. */
const isBesidePart = (pieces: readonly Piece[], at: number): boolean => {
  const piece = pieces[at];
  return piece?.is === 'count'
    ? piece.quantity.whole === 'all'
    : /^(?:all|both|have|has|had|are|is|were|was|been|got|gone|getting|half|badly|really|completely|totally|a|bit)$/.test(
        wordAt(pieces, at),
      );
};

/** What the words from `at` say that plants were lost to: "the slugs", "botrytis". */
export function causeAt(pieces: readonly Piece[], at: number): Cause | undefined {
  let from = /^(?:the|some|a|an|that|this)$/.test(wordAt(pieces, at)) ? at + 1 : at;
  for (;;) {
    const words = pieces.slice(from, from + 4).map((_, n) => wordAt(pieces, from + n));
    const cause = phraseAt(causes, words, 0)?.value;
    if (cause !== undefined || !OF_ITS_LOOK.test(words[0] ?? '')) return cause;
    from++;
  }
}

/** "Black rot", "the blasted slugs". */
const OF_ITS_LOOK =
  /^(?:black|brown|grey|gray|white|soft|wet|dry|stem|stalk|basal|crown|bloody|blasted|damn|damned|dreaded|wretched|pesky|nasty|horrible|awful|usual|same|old)$/;

/** "The Salt Harrier got", "the whole tray of Salt Harrier has": plants before the words, and nothing of theirs. */
export function isOnlyPlantBefore(pieces: readonly Piece[], from: number): boolean {
  let at = from - 1;
  while (/^(?:got|get|were|was|are|have|has|been|all|being)$/.test(wordAt(pieces, at))) at--;
  if (pieces[at]?.is !== 'plant') return false;
  if (wordAt(pieces, at - 1) === 'of' && /^(?:tray|pot|batch|lot|jar)$/.test(wordAt(pieces, at - 2))) at -= 2;
  while (/^(?:the|my|our|those|whole|entire)$/.test(wordAt(pieces, at - 1))) at--;
  return at === 0 || pieces[at - 1]?.is === 'break' || wordAt(pieces, at - 1) === 'and';
}
