/** What a van took, as a day's sheet tells it: "went out Weds: 80 Salt Harrier + 45 Tallow Bell, Hexley Parks". */
import { isKnown } from '../../row/lexicon.js';
import type { Piece } from '../../pieces/pieces.js';
import { type Rule, wordAt } from '../rule.js';

/** Past the plants and their numbers that stand from `from`; -1 where there are none. */
function goodsEnd(pieces: readonly Piece[], from: number): number {
  let counts = 0;
  let plants = 0;
  let at = from;
  for (; at < pieces.length; at++) {
    const piece = pieces[at];
    if (piece?.is === 'count') counts++;
    else if (piece?.is === 'plant') plants++;
    else if (piece?.is === 'break') {
      if (pieces[at + 1]?.is !== 'count' && at > from) break;
    } else if (
      piece?.is !== 'size' &&
      piece?.is !== 'when' &&
      !/^(?:and|plus|[x+&]|of)$/.test(wordAt(pieces, at))
    )
      break;
  }
  return counts > 0 && plants > 0 ? at : -1;
}

/** "…, Hexley Parks", "… to Hexley Parks", and no more: a name, by what no grower else has a word for. */
function isToSomebody(pieces: readonly Piece[], from: number): boolean {
  const isMarked = pieces[from]?.is === 'break';
  if (!isMarked && wordAt(pieces, from) !== 'to') return false;
  const name = wordAt(pieces, from + 1);
  return (
    name !== '' && !isKnown(name) && pieces.slice(from + 1).every(({ is }) => is === 'word' || is === 'when')
  );
}

export const wentOut: readonly Rule[] = [
  {
    name: 'went out: <count> <plant>, <recipient>',
    kind: 'dispatch',
    sense: 'delivery',
    head: 'go~past|gone out?',
    shape: 'object',
    when: (p, f, t) => {
      const goods = goodsEnd(p, t);
      return f === 0 && goods > 0 && isToSomebody(p, goods);
    },
    phrasings: [
      'Went out Weds: 80 Salt Harrier + 45 Tallow Bell, Pellworth Parks',
      'went out today: 80 Salt Harrier to Pellworth Parks',
    ],
    mustNot: [
      'Went out Weds: 80 Salt Harrier, cold frame',
      'Went out Weds: 80 Salt Harrier',
      'Went out Weds: 80 Salt Harrier looking good',
      'Going out Friday: 80 Salt Harrier, Pellworth Parks',
      'Left today: 80 Salt Harrier, all fine',
      'Left 80 Salt Harrier, Pellworth',
    ],
  },
  {
    name: 'went out to <recipient>: <count> <plant>',
    kind: 'dispatch',
    sense: 'delivery',
    head: 'go~past|gone|left out? <when>? to|for',
    shape: 'object',
    when: (p, f, t) => {
      const mark = p.findIndex(({ is }, at) => at > t && is === 'break');
      const colon = p[mark];
      return (
        f === 0 &&
        colon?.is === 'break' &&
        /^[:-]$/.test(colon.mark) &&
        wordAt(p, t) !== '' &&
        !isKnown(wordAt(p, t)) &&
        p.slice(t, mark).every(({ is }) => is === 'word' || is === 'when') &&
        goodsEnd(p, mark) === p.length
      );
    },
    phrasings: [
      'Went out Weds to Pellworth Parks: 80 Salt Harrier, 45 Tallow Bell',
      'Gone to Pellworth Parks today: 80 Salt Harrier',
    ],
    mustNot: [
      'Went out to the cold frame: 80 Salt Harrier',
      'Went to Pellworth: 80 Salt Harrier on the stall there',
    ],
  },
  {
    name: '<count> <plant> went out, <recipient>',
    kind: 'dispatch',
    sense: 'delivery',
    head: 'go~past|gone|left out <when>?',
    shape: 'subject',
    when: (p, f, t) => f > 0 && goodsEnd(p, 0) === f && p[t]?.is === 'break' && isToSomebody(p, t),
    phrasings: ['80 Salt Harrier and 45 Tallow Bell went out Weds, Pellworth Parks'],
    mustNot: ['80 Salt Harrier went out Weds, the cold frame', '80 Salt Harrier went out, looking good'],
  },
];
