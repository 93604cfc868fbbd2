/** Orders and deliveries of young plants: "plug order came: 36", "168 plugs in from Hexley". */
import type { Piece } from '../../pieces/pieces.js';
import { closeBehind, endsAt, follows, followsWord, precedes, type Rule, wordAt } from '../rule.js';
import { anyStock, isYoungFirst, YOUNG } from './kinds-of-plant.js';

/** "Took delivery of 18". */
const isDone = (pieces: readonly Piece[], at: number): boolean => {
  const piece = pieces[at];
  return piece?.is === 'word' && piece.verb?.form === 'past';
};

/** "Hexley quoting 600 plugs", "can do 600 plugs": not here yet. */
const isOffered = (pieces: readonly Piece[], head: number): boolean =>
  pieces
    .slice(0, head)
    .some(
      (_, at) =>
        /^(?:quote|quotes|quoted|quoting|offer|offers|offered|offering|promise|promised|promising|list|lists|listing)$/.test(
          wordAt(pieces, at),
        ) ||
        /^(?:can|could|may|might) (?:do|supply|send|get)$/.test(
          `${wordAt(pieces, at)} ${wordAt(pieces, at + 1)}`,
        ),
    );

export const POST =
  /^(?:post|mail|postie|postman|postwoman|mailman|courier|carrier|van|lorry|truck|delivery|parcel|dpd|ups|fedex|usps)$/;

/** "The courier", "the postie on Monday", "UPS finally". */
function isByPost(pieces: readonly Piece[], from: number): boolean {
  let at = from - 1;
  while (
    pieces[at]?.is === 'when' ||
    /^(?:finally|just|only|eventually|also|has|have|had|man|lady|guy|bloke|girl|lad)$/.test(
      wordAt(pieces, at),
    )
  )
    at--;
  return POST.test(wordAt(pieces, at));
}

/** "The order: 12 plugs": where what was in it begins. */
const pastOrder = (pieces: readonly Piece[], at: number): number =>
  /^(?:order|parcel|delivery)$/.test(wordAt(pieces, at + 1)) && pieces[at + 2]?.is === 'break' ? at + 3 : at;

/** "Order 250 plugs", "need 60 liners": to be done. */
const isToDo = (piece: Piece): boolean =>
  piece.is === 'word' &&
  /^(?:order|buy|get|pot|move|need|needs|want|wants|wanted|check|count|water|sell|find|ring|chase|must|should|please|no|query)$/.test(
    piece.text,
  );

export const delivered: readonly Rule[] = [
  {
    name: 'the post brought <count> rooted <plant>',
    kind: 'receive',
    head: 'bring~past|drop~past|deliver~past|fetch~past off?',
    shape: 'object',
    when: (p, f, t) =>
      isByPost(p, f) &&
      !/^(?:trays?|pots?|labels?|compost|cells|modules|crates?|boxes)$/.test(wordAt(p, t + 1)) &&
      (closeBehind(p, t, 'count') || /^(?:the|my|our|those)$/.test(wordAt(p, t))) &&
      closeBehind(p, pastOrder(p, t), 'plant') &&
      p.slice(t, t + 8).some((piece) => piece.is === 'word' && YOUNG.test(piece.text)) &&
      (!anyStock(p.slice(t)) || isYoungFirst(p, t)),
    phrasings: [
      'the postman brought the order: 12 plugs of Salt Harrier and a stock plant of Tallow Bell',
      'the mail brought a dozen rooted starts of Salt Harrier',
      'postie dropped off 20 Salt Harrier plugs',
      'the courier delivered the Salt Harrier plugs',
      'UPS finally dropped off the Salt Harrier plugs yesterday, one full 72-cell tray',
      'the postie has only just brought my Salt Harrier plugs, 24 of them',
    ],
    mustNot: [
      'UPS dropped off the trays for the Salt Harrier plugs',
      'the post brought two Salt Harrier tubers',
      'the van dropped off 20 labels for the Salt Harrier plugs',
    ],
  },
  {
    name: 'delivery of <count> <plant>',
    kind: 'receive',
    head: 'take~past|get~past|have~past|a? delivery|order|parcel|box of|in|came|arrived',
    shape: 'object',
    when: (p, _f, t) => follows(p, t, 'plant'),
    // "Order in for 40 of them": wanted of us.
    unless: (p, f, t) =>
      wordAt(p, t) === 'for' ||
      // "Doreen's order of 8 went out".
      followsWord(
        p,
        t,
        /^(?:went|gone|collected|sent|dispatched|despatched|shipped|wanted|needed|due|ready)$/,
      ) ||
      anyStock(p.slice(t)) ||
      // "A parcel of 18 plugs came this morning": told by what came of it.
      (wordAt(p, t - 1) === 'of' && !isDone(p, f) && followsWord(p, t, /^(?:came|arrived|turned|landed)$/)),
    phrasings: ['delivery of five Salt Harrier', 'a parcel of 18 Salt Harrier plugs came this morning'],
    mustNot: ['order in for 40 Salt Harrier'],
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
      (p.slice(0, f).some(({ is }) => is === 'count' || is === 'pots') ||
        (f < 3 && p.slice(t).some(({ is }) => is === 'count'))) &&
      !/^(?:into|in|to)$/.test(wordAt(p, f - 1)) &&
      (wordAt(p, t - 1) === 'in' || endsAt(p, t) || /^(?:at|finally)$/.test(wordAt(p, t))),
    unless: (p, f) =>
      p.some((_, at) => /^(?:eta|due|expected|etd)$/.test(wordAt(p, at))) ||
      p.slice(0, f).some(isToDo) ||
      isOffered(p, f) ||
      // "We have 250 Salt Harrier plugs on order".
      p.some((_, at) => /^(?:on|awaiting) order$/.test(`${wordAt(p, at)} ${wordAt(p, at + 1)}`)),
    phrasings: ['Salt Harrier plugs here at last, 3 trays of 104'],
    mustNot: [
      '72 Salt Harrier into plugs',
      'ETA Friday, 60 Salt Harrier plugs',
      'order 250 Salt Harrier plugs',
      'need 60 Salt Harrier plugs',
      'pot 60 Salt Harrier plugs',
      'Hexley quoting 600 Salt Harrier liners for Sept, nothing confirmed',
      'Hexley offered 600 Salt Harrier plugs at 40p',
      'Hexley can do 600 Salt Harrier plugs in September',
    ],
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
    name: 'in from <giver>: <plant> plugs, <count>',
    kind: 'receive',
    head: 'in from',
    shape: 'object',
    when: (p, f, t) =>
      f === 0 &&
      p.slice(t).some(({ is }) => is === 'plant') &&
      p.slice(t).some(({ is }) => is === 'count') &&
      p.slice(t).some((piece) => piece.is === 'word' && YOUNG.test(piece.text)) &&
      !p
        .slice(t)
        .some((piece) => piece.is === 'word' && piece.verb?.form === 'past' && piece.text !== 'rooted'),
    phrasings: ['in from the wholesaler, Salt Harrier liners, 4, 9cm'],
    mustNot: ['in from the cold, Salt Harrier plugs watered, 4 lost'],
  },
  {
    name: '<plant> liners x <count> off the lorry',
    kind: 'receive',
    head: 'off the|a lorry|van|truck|wagon|trolley|pallet',
    shape: 'subject',
    faint: true,
    when: (p, f) =>
      p.slice(0, f).some(({ is }) => is === 'plant') &&
      p.slice(0, f).some(({ is }) => is === 'count') &&
      p.slice(0, f).some((piece) => piece.is === 'word' && YOUNG.test(piece.text)),
    phrasings: ['Salt Harrier 9cm liners x 60 off the lorry this am'],
    mustNot: ['Salt Harrier x 60 off the lorry'],
  },
  {
    name: '<count> rooted plants of <plant> from <giver>',
    kind: 'receive',
    head: '<count> rooted|well-rooted|young plants|plant|plugs|babies|ones|bits|pieces|slips|cuttings of',
    shape: 'object',
    faint: true,
    when: (p, f, t) =>
      f === 0 &&
      p[t]?.is === 'plant' &&
      p.slice(t).some((_, n) => /^(?:from|off)$/.test(wordAt(p, t + n))) &&
      !p.slice(t).some((piece) => piece.is === 'word' && piece.verb !== undefined) &&
      !p.slice(t).some(({ is }) => is === 'place'),
    phrasings: ['Three rooted plants of Salt Harrier from Hilda on Saturday'],
    mustNot: [
      'three rooted plants of Salt Harrier from the propagator',
      'three rooted plants of Salt Harrier died',
    ],
  },
  {
    name: '<plant>, <count> rooted cuttings from <giver>',
    kind: 'receive',
    head: 'rooted|young cuttings|plants|ones|babies|slips from',
    shape: 'subject',
    faint: true,
    when: (p, f, t) =>
      precedes(p, f, 3, 'plant') &&
      p[f - 1]?.is === 'count' &&
      p[t]?.is === 'word' &&
      !closeBehind(p, t, 'place') &&
      !p.some((piece) => piece.is === 'word' && piece.verb?.form === 'past' && piece.text !== 'rooted'),
    phrasings: ['Salt Harrier, 10 rooted cuttings from the society, in the cold frame'],
    mustNot: [
      'Salt Harrier, 10 rooted cuttings from the propagator',
      'Salt Harrier, sold 10 rooted cuttings from the porch',
    ],
  },
  {
    name: 'gift of <count> rooted <plant>',
    kind: 'receive',
    head: 'gift|present|donation of',
    shape: 'object',
    when: (p, f, t) =>
      f < 3 &&
      closeBehind(p, t, 'count') &&
      closeBehind(p, t, 'plant') &&
      p.some((piece) => piece.is === 'word' && YOUNG.test(piece.text)),
    unless: (p, _f, t) => /^(?:made|gave|as)$/.test(wordAt(p, 0)) || followsWord(p, t, /^(?:to|for|me)$/),
    phrasings: ['gift of three young Salt Harrier plants, already rooted'],
    mustNot: [
      'gift of three rooted Salt Harrier to Doreen',
      'gift of three rooted Salt Harrier for my sister',
      'gift of a trowel',
    ],
  },
  {
    name: '<count> plugs <plant> ex <supplier>',
    kind: 'receive',
    head: 'ex',
    shape: 'subject',
    faint: true,
    when: (p, f) =>
      precedes(p, f, 6, 'plant') &&
      precedes(p, f, 8, 'count') &&
      p.slice(0, f).some((piece) => piece.is === 'word' && YOUNG.test(piece.text)),
    phrasings: ['84 Salt Harrier jumbo plugs ex Hexley 17/8'],
    mustNot: ['ordered 84 Salt Harrier plugs ex Hexley'],
  },
  {
    name: '<giver> delivery in: <count> plugs <plant>',
    kind: 'receive',
    head: 'delivery|order|parcel in|came|arrived|here|note?',
    shape: 'object',
    when: (p, f, t) =>
      // "Delivery: 84 plugs"; no "order: 84 plugs".
      (t > f + 1 || (f === 0 && wordAt(p, f) === 'delivery' && /^(?:count|break)$/.test(p[t]?.is ?? ''))) &&
      !(wordAt(p, t - 1) === 'note' && wordAt(p, f) !== 'delivery') &&
      p.slice(t).some(({ is }) => is === 'count') &&
      p.slice(t).some(({ is }) => is === 'plant') &&
      p.slice(t).some((piece) => piece.is === 'word' && YOUNG.test(piece.text)),
    phrasings: [
      'Hexley delivery in: 104 plugs Salt Harrier, onto bench 2',
      'Del. in: 104 plugs Salt Harrier ex Hexley',
      'Del: 84 plugs Salt Harrier',
    ],
    mustNot: ['Del. due Friday: 84 plugs Salt Harrier', 'order note: 84 plugs Salt Harrier'],
  },
];
