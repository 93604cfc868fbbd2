/** Stock plants bought, given, potted up or woken; rooted plants that come in. */
import type { Piece } from '../pieces.js';
import { sentByOthers } from './dispatch.js';
import { closeBehind, endsAt, follows, followsWord, precedes, type Rule, wordAt } from './rule.js';

const STOCK =
  /^(?:stock|tuber|tubers|crown|crowns|mother|parent|stockplant|stool|stools|rootstock|rhizome|rhizomes)$/;
const YOUNG =
  /^(?:plug|plugs|rooted|liner|liners|plantlets|plantlet|young|plugplants|babies|baby|divisions|starter|starters|plantling|tubestock)$/;
const ofStock = (pieces: readonly Piece[], _f: number, to: number): boolean =>
  followsWord(pieces, to, STOCK) ||
  pieces
    .slice(to)
    .some(
      (piece, at, rest) =>
        piece.is === 'word' &&
        /^(?:take|taking)$/.test(piece.text) &&
        /^(?:cuttings|babies|slips|shoots)$/.test(wordAt(rest, at + 1)) &&
        /^(?:from|off|of)$/.test(wordAt(rest, at + 2)),
    );
/** What stands before `from` since the last break or "and" that does not join a list of counts. */
const ownPart = (pieces: readonly Piece[], from: number): readonly Piece[] => {
  const start = pieces
    .slice(0, from)
    .findLastIndex((piece) => piece.is === 'break' || (piece.is === 'word' && piece.text === 'and'));
  return [...pieces.slice(start + 1, from), ...pieces.slice(from).filter((_, n) => n < 4)];
};

/** "…, the in-laws turned up": behind a break, other words than of plants lead up to it. */
const someoneElse = (pieces: readonly Piece[], from: number): boolean => {
  const start = pieces.slice(0, from).findLastIndex(({ is }) => is === 'break') + 1;
  return (
    start > 0 &&
    pieces.slice(start, from).every(({ is }) => is === 'word') &&
    pieces
      .slice(start, from)
      .some(
        (_, n) =>
          !/^(?:have|has|just|finally|all|both|they|it|which|that|now)$/.test(wordAt(pieces, start + n)),
      )
  );
};

const anyStock = (pieces: readonly Piece[]): boolean =>
  pieces.some((piece) => piece.is === 'word' && STOCK.test(piece.text));
const ofYoung = (pieces: readonly Piece[], f: number, _to: number): boolean =>
  pieces.slice(Math.max(0, f - 7), f + 12).some((piece) => piece.is === 'word' && YOUNG.test(piece.text)) ||
  follows(pieces, f, 'size');
const MARKETS = /^(?:sale|market|nursery|fair|auction|stall|shop|swap)$/;
const bought =
  'score~past|bag~past|blag~past|snaffle~past|win~past|nick~past|inherit~past|buy~past|get~past|purchase~past|pick~past|collect~past|acquire~past|nab~past|grab~past up?';

export const stockRules: readonly Rule[] = [
  {
    name: 'potted up <count> tubers',
    kind: 'stock',
    head: 'pot~past up|on?',
    shape: 'object',
    when: (p, f, t) =>
      ofStock(p, f, t) ||
      p
        .slice(0, f)
        .some(
          (piece, at) =>
            piece.is === 'word' &&
            /^(?:mother|stock|parent)$/.test(piece.text) &&
            /^plants?$/.test(wordAt(p, at + 1)),
        ),
  },
  {
    name: 'boxed up <count> tubers',
    kind: 'stock',
    head: 'box~past up?',
    shape: 'object',
    when: (p, f) => anyStock(p) || p.slice(f).some((piece) => piece.is === 'word' && piece.text === 'growth'),
  },
  {
    name: 'bought <count> plugs of <plant>',
    kind: 'receive',
    head: bought,
    shape: 'object',
    when: (p, f, t) =>
      ofYoung(p, f, t) && follows(p, t, 'plant') && !ofStock(p, f, t) && !followsWord(p, t, /^cuttings$/),
  },
  {
    name: 'bought <plant>',
    kind: 'stock',
    head: 'buy~past|purchase~past|acquire~past',
    shape: 'object',
    when: (p, _f, t) => follows(p, t, 'plant'),
  },
  {
    name: 'picked up <plant> at the sale',
    kind: 'stock',
    head: 'pick~past|grab~past|snaffle~past|nab~past|bag~past|get~past up?',
    shape: 'object',
    when: (p, f, t) =>
      (t > f + 1 || !/^pick/.test(wordAt(p, f))) &&
      closeBehind(p, t, 'plant') &&
      !ofYoung(p, f, t) &&
      !followsWord(p, t, /^cuttings$/) &&
      (followsWord(p, t, MARKETS) ||
        p.slice(t).some((piece) => piece.is === 'place' && MARKETS.test(piece.place))) &&
      !/^(?:the|my|our)$/.test(wordAt(p, t)),
    phrasings: ['picked up two Salt Harrier at the plant sale'],
    mustNot: ['picked up the Salt Harrier on the way to the sale'],
  },
  {
    name: 'came back with <count> <plant> tubers',
    kind: 'stock',
    head: 'come~past|go~past|turn~past back|home|away|up .. with',
    shape: 'object',
    when: (p, _f, t) => closeBehind(p, t, 'plant') && followsWord(p, t, /^(?:tubers?|crowns?)$/),
    phrasings: ['came back from the market with one Salt Harrier tuber'],
  },
  {
    name: 'new stock plant: <plant>',
    kind: 'stock',
    head: 'new stock|mother|parent plant',
    shape: 'object',
    faint: true,
    when: (p, _f, t) => p.slice(t).some(({ is }) => is === 'plant'),
    phrasings: ['New stock plant: Salt Harrier, from Ken, 3 litre pot, greenhouse'],
    mustNot: ['I need a new stock plant of Salt Harrier'],
  },
  {
    name: '<someone> gave me their old <plant>',
    kind: 'stock',
    head: 'give~past me|us .. old|big|spare|overgrown',
    shape: 'object',
    when: (p, _f, t) =>
      closeBehind(p, t, 'plant') && !followsWord(p, t, /^(?:cuttings?|plugs?|pots?|compost|trays?)$/),
    phrasings: ['Mum gave me her old Salt Harrier, just the one plant, 200mm pot'],
    mustNot: ['Mum gave me her old pots for the Salt Harrier'],
  },
  {
    name: 'got <plant> as stock',
    kind: 'stock',
    head: 'get~past|pick~past|collect~past|lift~past|dig~past|divide~past|score~past|bag~past|blag~past|snaffle~past|win~past|inherit~past|grab~past up?',
    shape: 'object',
    when: (p, f, t) => follows(p, t, 'plant') && ofStock(p, f, t),
  },
  {
    name: 'received <count> <plant>',
    kind: 'receive',
    head: 'receive~past|unpack~past|unbox~past',
    shape: 'object',
  },
  {
    name: '<count> <plant> received',
    kind: 'receive',
    head: 'received',
    shape: 'subject',
    when: (p, f) => precedes(p, f, 7, 'plant'),
  },
  {
    name: '<count> <plant> arrived',
    kind: 'receive',
    head: 'arrive~past|turned|showed|came|come|been up|in|delivered?',
    shape: 'subject',
    when: (p, f, t) =>
      ((precedes(p, f, 12, 'plant', 'count') && !someoneElse(p, f)) ||
        /^(?:plugs|liners)$/.test(wordAt(p, f - 1)) ||
        follows(p, t, 'plant') ||
        (/^(?:order|delivery|parcel|box|post)$/.test(wordAt(p, f - 1)) &&
          p.slice(t).some(({ is }) => is === 'plant'))) &&
      (p.some(({ is }) => is === 'plant') ||
        p.slice(0, f).some((piece) => piece.is === 'word' && /^(?:plugs|liners)$/.test(piece.text))) &&
      !anyStock(ownPart(p, f)) &&
      (/^arrived$/.test(wordAt(p, f)) ||
        /^(?:up|in|delivered)$/.test(wordAt(p, t - 1)) ||
        wordAt(p, t) === 'from'),
    unless: (p, _f, t) =>
      /^(?:on|into|out|through|back|with|to)$/.test(wordAt(p, t)) && !/^post$/.test(wordAt(p, t + 2)),
  },
  {
    name: '<someone> turned up with <count> <plant>',
    kind: 'receive',
    head: 'turn~past|come~past|appear~past|arrive~past|go~past|landed|called up|round|back|over|home|in? .. with',
    shape: 'object',
    when: (p, f, t) =>
      closeBehind(p, t, 'count') &&
      follows(p, t, 'plant') &&
      !followsWord(p, t, /^cuttings$/) &&
      (ofYoung(p, f, t) || followsWord(p, t, /^(?:me|us)$/) || /^(?:came|home)$/.test(wordAt(p, f))) &&
      !followsWord(p, t, /^(?:tubers?|crowns?)$/) &&
      !p.slice(f + 1, t).some((piece) => piece.is === 'word' && piece.verb?.form === 'past'),
    phrasings: ['Doreen turned up with six rooted Tallow Bell for me'],
    mustNot: ['Doreen turned up with a cake'],
  },
  {
    name: 'got <count> rooted cuttings of <plant> off <someone>',
    kind: 'receive',
    head: 'get~past|have~past|be~past given|got?',
    shape: 'object',
    when: (p, _f, t) =>
      closeBehind(p, t, 'count') &&
      followsWord(p, t, /^rooted$/) &&
      follows(p, t, 'plant') &&
      followsWord(p, t, /^(?:off|from)$/),
    phrasings: ['got 5 rooted cuttings of salt harrier off my neighbour'],
  },
  {
    name: 'delivery of <count> <plant>',
    kind: 'receive',
    head: 'take~past|get~past|have~past|a? delivery|order|parcel|box of|in|came|arrived',
    shape: 'object',
    when: (p, _f, t) => follows(p, t, 'plant'),
  },
  {
    name: 'plugs in: <count> <plant>',
    kind: 'receive',
    head: 'plugs|plug|liners in|plants|of',
    shape: 'object',
    faint: true,
    when: (p, f, t) =>
      f < 3 && p.slice(t).some(({ is }) => is === 'plant') && p.some(({ is }) => is === 'count'),
  },
  {
    name: '<count> <plant> plugs in',
    kind: 'receive',
    head: 'plugs|liners|plantlets in|came|here|delivered?',
    shape: 'subject',
    faint: true,
    when: (p, f, t) =>
      precedes(p, f, 5, 'plant') &&
      p.slice(0, f).some(({ is }) => is === 'count' || is === 'pots') &&
      !/^(?:into|in|to)$/.test(wordAt(p, f - 1)) &&
      (wordAt(p, t - 1) === 'in' || endsAt(p, t)),
    mustNot: ['72 Salt Harrier into plugs'],
  },
  {
    name: '<count> plugs <plant> in from <giver>',
    kind: 'receive',
    head: 'in from',
    shape: 'subject',
    when: (p, f) =>
      precedes(p, f, 6, 'plant') &&
      precedes(p, f, 6, 'count') &&
      p.slice(0, f).some((piece) => piece.is === 'word' && YOUNG.test(piece.text)),
    phrasings: ['168 plugs Salt Harrier in from Hexley Young Plants, 84-cell trays, gone on bench 4'],
  },
  {
    name: '<giver> gave me <count> rooted <plant>',
    kind: 'receive',
    head: 'give~past|hand~past|bring~past|send~past|sell~past|gift~past|buy~past|let~ me|us',
    shape: 'object',
    when: (p, f, t) =>
      follows(p, t, 'plant') &&
      ofYoung(p, f, t) &&
      follows(p, t, 'count') &&
      !followsWord(p, t, /^(?:snip|take|cut|pinch|have|cuttings)$/),
  },
  {
    name: '<giver> gave me <plant>',
    kind: 'stock',
    head: 'give~past|bring~past|send~past|sell~past|pass~past|gift~past|buy~past me|us',
    shape: 'object',
    when: (p, _f, t) => follows(p, t, 'plant') && !followsWord(p, t, /^(?:cuttings|cutting|home|back)$/),
  },
  {
    name: 'was given <plant>',
    kind: 'stock',
    head: 'was|were|been|got given|gifted',
    shape: 'object',
    when: (p, _f, t) =>
      closeBehind(p, t, 'plant') && !followsWord(p, t, /^(?:cuttings|cutting)$/) && !ofYoung(p, t, t),
  },
  {
    name: 'was given <count> rooted <plant>',
    kind: 'receive',
    head: 'was|were|been|got given|gifted',
    shape: 'object',
    when: (p, _f, t) => closeBehind(p, t, 'plant') && ofYoung(p, t, t),
  },
  {
    name: 'a stock plant of <plant> I bought',
    kind: 'stock',
    head: 'buy~past|get~past|pick~past',
    shape: 'subject',
    when: (p, f) =>
      precedes(p, f, 6, 'plant') &&
      anyStock(p.slice(0, f)) &&
      /^(?:i|we|have|i've|we've)$/.test(wordAt(p, f - 1)),
    phrasings: ['a stock plant of Salt Harrier I have bought last week'],
  },
  {
    name: '<giver> let me have <plant>',
    kind: 'stock',
    head: 'let~ me|us have|keep|take',
    shape: 'object',
    when: (p, _f, t) => follows(p, t, 'plant') && !followsWord(p, t, /^(?:cuttings|cutting|some|few|tips)$/),
    phrasings: ['the lady next door let me have her big old Salt Harrier'],
    mustNot: ['let me have some cuttings of Salt Harrier'],
  },
  {
    name: 'plug order came: <count> <plant>',
    kind: 'receive',
    head: 'plug|plugs|plant|plants|liner|liners order|delivery|parcel|box came|arrived|in|here|delivered',
    shape: 'object',
    when: (p, _f, t) => p.slice(t).some(({ is }) => is === 'plant'),
    phrasings: ['plug order came: 36 Salt Harrier'],
  },
  {
    name: '<count> rooted youngsters came from <giver>',
    kind: 'receive',
    head: 'rooted|well-rooted youngsters|babies|plants|ones|plugs|cuttings came|arrived|turned|come',
    shape: 'subject',
    when: (p, f) => precedes(p, f, 4, 'count'),
    phrasings: ['thirty well rooted youngsters of Salt Harrier came from Gwen'],
  },
  {
    name: '<someone> dropped off <count> <plant>',
    kind: 'receive',
    head: 'drop~past|leave~past|bring~past|hand~past|deliver~past off|round|over|in?',
    shape: 'object',
    when: (p, f, t) =>
      closeBehind(p, t, 'count') &&
      follows(p, t, 'plant') &&
      f > 0 &&
      !/^(?:i|we|i've|we've|and|then|have|just|also|were|was|been|got|be)$/.test(wordAt(p, f - 1)) &&
      (ofYoung(p, f, t) || followsWord(p, t, /^(?:me|us)$/)) &&
      !followsWord(p, t, /^(?:to|cuttings)$/),
    phrasings: ['Bazza dropped off 8 rooted Salt Harrier on Sunday'],
    mustNot: ['I dropped off 8 rooted Salt Harrier to Bazza'],
  },
  {
    name: 'have become <count> <plant>',
    kind: 'receive',
    head: 'have become',
    shape: 'object',
    when: (p, _f, t) => p[t]?.is === 'count' && follows(p, t, 'plant'),
  },
  {
    name: '<someone> sent <count> rooted <plant>',
    kind: 'receive',
    head: 'send~past',
    shape: 'object',
    when: (p, f, t) =>
      sentByOthers(p, f, t) && follows(p, t, 'plant') && (ofYoung(p, f, t) || follows(p, t, 'count')),
    unless: (p, _f, t) => followsWord(p, t, /^(?:cuttings|cutting|photo|photos|picture)$/),
    phrasings: ['Mr Abbery has kindly sent four rooted plants of Tallow Bell'],
    mustNot: ['I sent four rooted Tallow Bell to Doreen'],
  },
  {
    name: '<plant> came as a stock plant',
    kind: 'stock',
    head: 'come~past|arrive~past|came',
    shape: 'subject',
    when: (p, f) => precedes(p, f, 8, 'plant') && anyStock(p),
  },
  {
    name: 'woke <plant>',
    phrasings: ['woke the Salt Harrier stools'],
    kind: 'stock',
    head: 'wake~past|start~past|bring~past|coax~past up|off?',
    shape: 'object',
    when: (p, _f, t) =>
      (anyStock(p) || p.slice(t).some((piece) => piece.is === 'word' && piece.text === 'growth')) &&
      p.some(({ is }) => is === 'plant'),
    // "Got started at last, 14 basals off the two crowns".
    unless: (p, _f, t) =>
      p.slice(t).some(({ is }) => is === 'cutting') &&
      !p.some((piece) => piece.is === 'word' && /^(?:took|taken|struck)$/.test(piece.text)),
  },
  {
    name: '<count> <plant> tubers started',
    kind: 'stock',
    head: 'tubers|tuber|crowns|stools|crown',
    shape: 'subject',
    faint: true,
    when: (p) =>
      p.some(({ is }) => is === 'plant') &&
      p.some(({ is }) => is === 'count') &&
      !p.some(
        (piece) =>
          piece.is === 'word' &&
          /^(?:need|want|look|looking|rotten|rotting|dead|buy|must|soft|sprouting|basals|cuttings|shoots|slips|off)$/.test(
            piece.text,
          ),
      ) &&
      !p.some(({ is }) => is === 'cutting'),
  },
  {
    name: '<plant> tubers started',
    kind: 'stock',
    head: 'tubers|tuber|crowns|stools|crown .. started|potted|boxed|woken|off|going',
    shape: 'subject',
    when: (p) => p.some(({ is }) => is === 'plant'),
  },
  {
    name: 'new stock plant <plant>',
    kind: 'stock',
    head: 'new|another|<count>|<plant> stock|mother|parent plant|plants',
    shape: 'object',
    when: (p, f, t) =>
      (follows(p, t, 'plant') || precedes(p, f, 5, 'plant')) &&
      (p[f]?.is === 'word' ||
        p.some(
          (piece) =>
            piece.is === 'word' &&
            /^(?:bought|scored|bagged|got|picked|collected|acquired|given|new|arrived|came|got|potted|started|delivered|in)$/.test(
              piece.text,
            ),
        )),
    unless: (p) =>
      p.some(
        (piece) => piece.is === 'word' && /^(?:cuttings|dead|died|rotted|lost|sold|gave)$/.test(piece.text),
      ),
  },
];
