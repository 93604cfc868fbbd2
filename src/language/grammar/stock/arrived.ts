/** Young plants that came in: "72 plugs received", "six arrived today", "Doreen turned up with six". */
import type { Piece } from '../../pieces/pieces.js';
import { closeBehind, endsAt, follows, followsWord, precedes, type Rule, wordAt } from '../rule.js';
import { cameByOurs } from '../dispatch/came-by.js';
import { anyStock, ofYoung, YOUNG } from './kinds-of-plant.js';

/** What stands before `from` since the last break or "and" that does not join a list of counts. */
const ownPart = (pieces: readonly Piece[], from: number): readonly Piece[] => {
  const start = pieces
    .slice(0, from)
    .findLastIndex((piece) => piece.is === 'break' || (piece.is === 'word' && piece.text === 'and'));
  return [...pieces.slice(start + 1, from), ...pieces.slice(from).filter((_, n) => n < 4)];
};

/** "…, the in-laws turned up", "before the rain came in": behind a break or a joint, other words than of plants lead up to it. */
const someoneElse = (pieces: readonly Piece[], from: number): boolean => {
  const start =
    pieces
      .slice(0, from)
      .findLastIndex(
        (piece) =>
          piece.is === 'break' ||
          (piece.is === 'word' &&
            /^(?:before|after|when|while|whilst|because|till|until|but)$/.test(piece.text)),
      ) + 1;
  return (
    start > 0 &&
    pieces.slice(start, from).every(({ is }) => is === 'word') &&
    pieces
      .slice(start, from)
      .some(
        (_, n) =>
          !/^(?:have|has|just|only|finally|all|both|they|it|which|that|now)$/.test(wordAt(pieces, start + n)),
      )
  );
};

/** "When the plugs come", "the plugs should come": not here yet. */
const isAwaited = (pieces: readonly Piece[], from: number): boolean =>
  pieces
    .slice(0, from)
    .some(
      (piece) =>
        piece.is === 'word' &&
        /^(?:to|will|should|might|may|when|if|until|till|once|not|never|haven't|hasn't|didn't|where|did|do|does|due)$/.test(
          piece.text,
        ),
    );

/** "So I came in", "it hailed so came in": the grower, out of the weather. */
const cameInThemselves = (pieces: readonly Piece[], from: number): boolean => {
  let at = from;
  while (/^(?:just|all|both|then|finally|have|has|had|soon)$/.test(wordAt(pieces, at - 1))) at--;
  // "Watered the porch, took six Salt Harrier and came in": who watered.
  const first = pieces[0];
  if (
    /^(?:and|then|before|but)$/.test(wordAt(pieces, at - 1)) &&
    first?.is === 'word' &&
    (/^(?:i|we)$/.test(first.text) || first.verb?.form === 'past')
  )
    return true;
  return /^(?:i|we|i've|we've|i'd|we'd|you|he|she|so|(?:every|no|some)(?:one|body)(?:'s)?)$/.test(
    wordAt(pieces, at - 1),
  );
};

/** How some of them came: what befell those, and no more plants. */
const SPOILT =
  /^(?:mashed|squashed|crushed|battered|broken|dead|rotten|rotting|mouldy|moldy|damaged|flattened|snapped|frozen|frosted|cooked|mush|dried|shrivelled|shriveled)$/;

/** "Came with the bulk order", "… in with Friday's delivery". */
const isWithOrder = (pieces: readonly Piece[], at: number): boolean =>
  wordAt(pieces, at) === 'with' &&
  /^(?:the|my|our|this|his|her)$/.test(wordAt(pieces, at + 1)) &&
  pieces
    .slice(at + 2, at + 5)
    .some((_, n) => /^(?:order|delivery|parcel|consignment|shipment)$/.test(wordAt(pieces, at + 2 + n)));

/** "The plugs come with the order on Friday": as likely still to come. */
const mayBeToCome = (pieces: readonly Piece[], from: number): boolean =>
  wordAt(pieces, from) === 'come' &&
  pieces
    .slice(from)
    .some(
      (piece) =>
        piece.is === 'when' && /^(?:on )?(?:mon|tue|wed|thu|fri|sat|sun)\w*$/i.test(piece.when.words),
    );

export const arrived: readonly Rule[] = [
  {
    name: 'received <count> <plant>',
    kind: 'receive',
    head: 'receive~past|unpack~past|unbox~past',
    shape: 'object',
    phrasings: ['received five Salt Harrier', 'five Salt Harrier received'],
    unless: (p, f, t) => anyStock(p) || cameByOurs(p, f, t),
    mustNot: ['unpacked 30 Salt Harrier tubers', 'my mother received one Salt Harrier'],
  },
  {
    name: 'received <count> <plant> tubers',
    kind: 'stock',
    head: 'receive~past|unpack~past|unbox~past',
    shape: 'object',
    when: (p, f, t) => anyStock(p) && !cameByOurs(p, f, t),
    phrasings: ['unpacked 30 Salt Harrier tubers from Hexley', 'two stock plants of Salt Harrier received'],
  },
  {
    name: 'took in <count> plugs of <plant>',
    kind: 'receive',
    head: 'take~past|get~past|booked|check~past|signed in|for <count>',
    shape: 'object',
    when: (p, _f, t) =>
      follows(p, t, 'plant') && p.slice(t).some((piece) => piece.is === 'word' && YOUNG.test(piece.text)),
    phrasings: ['took in 150 plugs of Salt Harrier today', 'booked in 72 Salt Harrier liners'],
    mustNot: ['took in 150 Salt Harrier off the porch'],
  },
  {
    name: '<count> plugs of <plant> bought in',
    kind: 'receive',
    head: 'bought|booked|checked|signed in',
    shape: 'subject',
    when: (p, f) => precedes(p, f, 7, 'plant') && ofYoung(p, f) && precedes(p, f, 7, 'count'),
    unless: (p, f, t) =>
      wordAt(p, f) === 'booked' && p.slice(t).some((_, n) => /^(?:for|due)$/.test(wordAt(p, t + n))),
    phrasings: ['50 Salt Harrier plugs bought in'],
    mustNot: ['50 Salt Harrier plugs bought by Doreen', '50 Salt Harrier plugs booked in, due Monday'],
  },
  {
    name: '<count> <plant> arrived',
    kind: 'receive',
    head: 'arrive~past|turned|showed|came|come|been|landed up|in|delivered?',
    shape: 'subject',
    when: (p, f, t) =>
      ((precedes(p, f, 12, 'plant', 'count') && !someoneElse(p, f)) ||
        /^(?:plugs|liners)$/.test(wordAt(p, f - 1)) ||
        // "Came in and found four dead": who came was no plant.
        (follows(p, t, 'plant') && wordAt(p, t) !== 'and') ||
        (/^(?:order|delivery|parcel|box|post)(?:'s)?$/.test(wordAt(p, f - 1)) &&
          p.slice(t).some(({ is }) => is === 'plant'))) &&
      (p.some(({ is }) => is === 'plant') ||
        p.slice(0, f).some((piece) => piece.is === 'word' && /^(?:plugs|liners)$/.test(piece.text))) &&
      !anyStock(ownPart(p, f)) &&
      (/^arrived$/.test(wordAt(p, f)) ||
        /^(?:up|in|delivered)$/.test(wordAt(p, t - 1)) ||
        // "20 plugs came Tuesday".
        (p[t]?.is === 'when' && ofYoung(p, f)) ||
        (isWithOrder(p, t) && ofYoung(p, f) && !isAwaited(p, f) && !mayBeToCome(p, f)) ||
        // "Came by courier".
        (wordAt(p, t) === 'by' && /^(?:courier|post|van|carrier|lorry|mail)$/.test(wordAt(p, t + 1))) ||
        ((!p[t] || p[t]?.is === 'break') &&
          p.slice(0, f).some((piece) => piece.is === 'word' && YOUNG.test(piece.text)) &&
          !isAwaited(p, f)) ||
        // "Post's been: four rooted Salt Harrier".
        (/^post/.test(wordAt(p, f - 1)) && p[t]?.is === 'break' && ofYoung(p, t)) ||
        wordAt(p, t) === 'from'),
    unless: (p, f, t) =>
      // "The plugs come in 84s".
      (wordAt(p, f) === 'come' && p[t]?.is === 'size') ||
      (/^(?:on|into|out|through|back|with|to)$/.test(wordAt(p, t)) &&
        !/^post$/.test(wordAt(p, t + 2)) &&
        !isWithOrder(p, t)) ||
      cameInThemselves(p, f) ||
      SPOILT.test(wordAt(p, t)) ||
      // "Have been in full sun".
      (wordAt(p, f) === 'been' && wordAt(p, t - 1) === 'in' && !endsAt(p, t)) ||
      // "Have come in off the porch": carried in.
      p.some((piece) => piece.is === 'place' && piece.prep === 'off'),
    phrasings: [
      '24 Salt Harrier plugs came by courier on Friday',
      'six Salt Harrier plug plants have come',
      '72 Salt Harrier liners landed',
      '24 plugs of Salt Harrier come with the bulk order today',
      'plug order came: 36 Salt Harrier',
      "post's been: 4 rooted Salt Harrier in a jiffy bag",
    ],
    mustNot: [
      'Salt Harrier have been in full sun',
      'when the six Salt Harrier plugs come',
      'half the Salt Harrier have come in off the porch to the sill',
      'struck four pots of Salt Harrier before the rain came in',
      'I was going to pot on the Salt Harrier but it started hailing so I came in and had a scone',
      'misted the Salt Harrier, it poured, so came in',
      'two of the Salt Harrier arrived mashed, tossed them',
    ],
  },
  {
    name: 'came <count> plugs of <plant>',
    kind: 'receive',
    head: 'come~past',
    shape: 'object',
    when: (p, f, t) =>
      p[t]?.is === 'count' &&
      YOUNG.test(wordAt(p, t + 1)) &&
      p.slice(t + 1, t + 4).some(({ is }) => is === 'plant') &&
      (p[f - 1] === undefined || /^(?:when|break)$/.test(p[f - 1]?.is ?? '')),
    phrasings: ['today came 30 plugs of Salt Harrier, they stand in the greenhouse'],
    mustNot: ['the postman came, 30 plugs of Salt Harrier still to come'],
  },
  {
    name: '<someone> turned up with <count> <plant>',
    kind: 'receive',
    head: 'turn~past|come~past|appear~past|arrive~past|go~past|landed|called up|round|back|over|home|in? .. with',
    shape: 'object',
    when: (p, f, t) =>
      closeBehind(p, t, 'count') &&
      follows(p, t, 'plant') &&
      (!followsWord(p, t, /^cuttings$/) || followsWord(p, t, /^rooted$/)) &&
      (ofYoung(p, f) || followsWord(p, t, /^(?:me|us)$/) || /^(?:came|home)$/.test(wordAt(p, f))) &&
      !followsWord(p, t, /^(?:tubers?|crowns?)$/) &&
      !p.slice(f + 1, t).some((piece) => piece.is === 'word' && piece.verb?.form === 'past'),
    phrasings: [
      'Doreen turned up with six rooted Tallow Bell for me',
      'the postman landed in with six rooted slips of Tallow Bell',
      'Doreen landed over with six rooted cuttings of Tallow Bell',
      'Noreen called over with six rooted slips of Tallow Bell',
    ],
    mustNot: ['Doreen turned up with a cake', 'Doreen landed in with six cuttings of Tallow Bell'],
  },
];
