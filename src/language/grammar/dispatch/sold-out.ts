/** Plants that went where things are sold: "sold out of these", "12 went at the car boot", "all gone by noon at the sale". */
import { whole } from '../../phrases.js';
import type { Piece } from '../../pieces/pieces.js';
import { isSomeones } from '../other-people.js';
import { closeBehind, endsAt, precedes, type Rule, wordAt } from '../rule.js';

/** Where plants are sold. */
const SALE = whole`
  sales?|markets?|fairs?|fayre|f[eê]te|stall|show|auction|jumble|boot|gate|table|day|shop|bazaar|raffle|festival|barrow|trolley|counter
`;

/** "At the car boot", "on the stall": the sale that stands behind, before a mark. */
export function atSale(pieces: readonly Piece[], from: number): boolean {
  for (let at = from; at < pieces.length; at++) {
    const piece = pieces[at];
    if (!piece || piece.is === 'break') return false;
    if (!/^(?:at|on|from|off)$/.test(piece.is === 'place' ? (piece.prep ?? '') : wordAt(pieces, at)))
      continue;
    if (piece.is === 'place') return SALE.test(piece.place.split(' ').at(-1) ?? '');
    for (let end = at + 1; end < at + 7; end++) {
      const noun = pieces[end];
      if (noun?.is === 'place' && SALE.test(noun.place.split(' ').at(-1) ?? '')) return true;
      if (noun?.is !== 'word' && noun?.is !== 'plant' && noun?.is !== 'when') break;
      // "On Saturday", "open day".
      if (
        SALE.test(wordAt(pieces, end)) &&
        (wordAt(pieces, end) !== 'day' || wordAt(pieces, end - 1) === 'open')
      )
        return true;
    }
  }
  return false;
}

/** "Trade counter: …". */
const isSaleHeading = (pieces: readonly Piece[]): boolean => {
  const mark = pieces.findIndex(({ is }) => is === 'break');
  const colon = pieces[mark];
  return (
    mark > 0 &&
    mark < 4 &&
    colon?.is === 'break' &&
    /^[:-]$/.test(colon.mark) &&
    SALE.test(wordAt(pieces, mark - 1) || lastOf(pieces[mark - 1]))
  );
};

/** Nobody else sold them, and they were sold to the last. */
function bySelf(pieces: readonly Piece[], from: number): boolean {
  let at = from - 1;
  while (
    /^(?:i've|we've|have|had|has|just|already|completely|totally|finally|all|now|clean|right|are|am|i'm|we're|were|was)$/.test(
      wordAt(pieces, at),
    )
  )
    at--;
  const who = pieces[at];
  return (
    who === undefined ||
    /^(?:break|when|plant|count)$/.test(who.is) ||
    /^(?:i|we|and|then|but|so)$/.test(wordAt(pieces, at))
  );
}

/** "Honesty box", "our stall": what only sells. */
const isOwnStall = (pieces: readonly Piece[], at: number): boolean =>
  wordAt(pieces, at) === 'honesty' ||
  (/^(?:my|our)$/.test(wordAt(pieces, at)) && /^(?:stall|table|barrow)$/.test(wordAt(pieces, at + 1)));

export const soldOut: readonly Rule[] = [
  {
    name: 'sold out of <plant>',
    kind: 'dispatch',
    how: 'sold',
    count: 'all',
    head: 'sell~past completely|clean|right? out of',
    shape: 'object',
    when: (p, f, t) => closeBehind(p, t, 'plant') && bySelf(p, f),
    phrasings: ['Sold out of Salt Harrier at the Grange sale', 'we sold right out of the Salt Harrier'],
    mustNot: [
      'nearly sold out of Salt Harrier',
      'the garden centre sold out of Salt Harrier',
      'Hexley are sold out of Salt Harrier plugs',
    ],
  },
  {
    name: '<plant> sold out',
    kind: 'dispatch',
    how: 'sold',
    count: 'all',
    head: 'sell~past completely|clean|right? out',
    shape: 'subject',
    when: (p, f, t) =>
      precedes(p, f, 3, 'plant') &&
      wordAt(p, t) !== 'of' &&
      (p[f - 1]?.is === 'plant' || bySelf(p, f)) &&
      !/^(?:nearly|almost)$/.test(wordAt(p, f - 1)),
    phrasings: ['the Salt Harrier sold out in an hour at the plant sale', 'Salt Harrier sold out'],
    mustNot: ['the Salt Harrier nearly sold out'],
  },
  {
    name: '<count> <plant> went at the sale',
    kind: 'dispatch',
    how: 'sold',
    head: 'go~past|gone|shift~past|flew|walked|cleared|went|snapped like|up|out|off? hot? cakes?',
    shape: 'subject',
    when: (p, f, t) =>
      (precedes(p, f, 6, 'plant') || precedes(p, f, 3, 'count')) &&
      p.slice(0, f).some(({ is }) => is === 'plant') &&
      (atSale(p, t) || isSaleHeading(p)) &&
      !/^(?:to|in|into)$/.test(wordAt(p, t)),
    phrasings: [
      '12 Salt Harrier went at the car boot',
      'Salt Harrier all gone by lunchtime at the plant sale',
      '8 Salt Harrier shifted at the market',
    ],
    mustNot: ['the Salt Harrier went mouldy at the show', '12 Salt Harrier went on the bench by the gate'],
    unless: (p, f, t) =>
      // "Sold out of them, all nine gone at the market": told already.
      p.slice(0, f).some((_, at) => wordAt(p, at) === 'sold') ||
      /^(?:mouldy|limp|floppy|yellow|brown|black|soft|missing|over|bad|down|well)$/.test(wordAt(p, t)) ||
      (p[t]?.is === 'place' && !SALE.test(lastOf(p[t]))),
  },
  {
    name: '<count> <plant> bought off me',
    kind: 'dispatch',
    how: 'sold',
    head: 'be~? bought|snapped|taken up? off|from? me|us?',
    shape: 'subject',
    when: (p, f, t) =>
      p.slice(0, f).some(({ is }) => is === 'plant') &&
      precedes(p, f, 5, 'count') &&
      !p
        .slice(0, f)
        .some((piece, at) => /^(?:i|we|i've|we've)$/.test(wordAt(p, at)) || piece.is === 'money') &&
      (/^(?:me|us)$/.test(wordAt(p, t - 1)) || p.some((_, at) => isOwnStall(p, at))),
    phrasings: [
      'honesty box did well, 3 Salt Harrier bought today',
      '3 Salt Harrier bought from the honesty box this morning',
      'three Salt Harrier were bought off me at the gate',
    ],
    mustNot: [
      '3 Salt Harrier bought at the market',
      'three Salt Harrier I bought from the honesty box',
      '3 Salt Harrier bought today',
    ],
  },
  {
    name: 'shifted <count> <plant> at the sale',
    kind: 'dispatch',
    how: 'sold',
    head: 'shift~past|move~past|clear~past|get~past shot|shut|rid? of?',
    shape: 'object',
    when: (p, f, t) =>
      closeBehind(p, t, 'plant') &&
      (!/^got$/.test(wordAt(p, f)) || wordAt(p, t - 1) === 'of') &&
      atSale(p, t),
    phrasings: ['shifted 8 Salt Harrier at the car boot', 'got shot of 8 Salt Harrier at the fete'],
    mustNot: ['shifted 8 Salt Harrier to the shop window', 'moved 8 Salt Harrier to the porch'],
    unless: (p, _f, t) =>
      p.slice(t).some((piece) => piece.is === 'place' && /^(?:to|into|onto)$/.test(piece.prep ?? '')),
  },
  {
    name: '<count> <plant> rehomed',
    kind: 'dispatch',
    how: 'given',
    head: 'rehomed|found a? good|new? homes|home?',
    shape: 'subject',
    when: (p, f, t) =>
      precedes(p, f, 6, 'plant') &&
      precedes(p, f, 8, 'count') &&
      (endsAt(p, t) || /^(?:with|at|to)$/.test(wordAt(p, t))) &&
      !/^(?:on|in|under|by)$/.test(wordAt(p, t)) &&
      !closeBehind(p, t, 'place'),
    phrasings: [
      '8 Salt Harrier found new homes',
      '8 Salt Harrier rehomed',
      '8 Salt Harrier found a new home with Sue',
    ],
    mustNot: ['8 Salt Harrier found a new home on the windowsill'],
  },
  {
    name: '<plant> sold to the last pot',
    kind: 'dispatch',
    how: 'sold',
    count: 'all',
    head: 'sold|gone to the last',
    shape: 'subject',
    when: (p, f) => precedes(p, f, 3, 'plant'),
    phrasings: ['Salt Harrier sold to the last pot'],
    unless: (p, _f, t) => /^(?:customer|buyer|visitor|person|lady|man|woman)$/.test(wordAt(p, t)),
  },
  {
    name: '<count> <plant> went for <money>',
    kind: 'dispatch',
    how: 'sold',
    head: 'go~past|gone for <money>',
    shape: 'subject',
    when: (p, f) =>
      p.slice(0, f).some(({ is }) => is === 'count') && p.slice(0, f).some(({ is }) => is === 'plant'),
    phrasings: ['eight Salt Harrier on the plant stall went for £1 each'],
    mustNot: ['the pots went for £1 each'],
  },
  {
    name: 'made <money> at the gate, <count> <plant>',
    kind: 'dispatch',
    how: 'sold',
    head: 'make~past|take~past <money> at',
    shape: 'object',
    when: (p, f, t) =>
      atSale(p, t - 1) &&
      p.slice(f).some(({ is }) => is === 'count') &&
      p.slice(f).some(({ is }) => is === 'plant'),
    phrasings: ['made £10 at the gate, five Salt Harrier at £2'],
    mustNot: ['made £10 at the gate'],
  },
  {
    name: '<count> <plant> out the door',
    kind: 'dispatch',
    sense: 'delivery',
    head: 'out of? the door|gate',
    shape: 'subject',
    when: (p, f) => precedes(p, f, 2, 'plant') && precedes(p, f, 5, 'count'),
    unless: (p, f) =>
      p.slice(0, f).some((piece) => piece.is === 'word' && /^(?:put|set|stood|left|moved)$/.test(piece.text)),
    phrasings: ['first 24 Salt Harrier out the door this morning, Hexley Farm Shop'],
    mustNot: ['put six Salt Harrier out the door for a bit'],
  },
  {
    name: "<count> <plant> left on <somebody>'s lorry",
    kind: 'dispatch',
    head: 'go~past|gone|left|away|off|loaded on|onto .. van|lorry|truck|trailer|wagon',
    shape: 'subject',
    when: (p, f, t) =>
      precedes(p, f, 6, 'count') &&
      p.slice(0, f).some(({ is }) => is === 'plant') &&
      p.slice(f, t).some((_, n) => isSomeones(wordAt(p, f + n))),
    phrasings: ["40 Salt Harrier left on Hexley's lorry"],
    mustNot: ["left on Hexley's lorry"],
  },
];

const lastOf = (piece: Piece | undefined): string =>
  piece?.is === 'place' ? (piece.place.split(' ').at(-1) ?? '') : '';
