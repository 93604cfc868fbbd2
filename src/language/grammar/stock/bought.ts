/** Plants bought or come by, stock or young: "bought two at the sale", "picked up a tray of plugs". */
import { cameByOurs } from '../dispatch/came-by.js';
import { CUTTINGS, isBuyer } from '../taken-away.js';
import type { Piece } from '../../pieces/pieces.js';
import { closeBehind, follows, followsWord, nextPlant, type Rule, wordAt } from '../rule.js';
import { isSomebody } from '../dispatch/fetched.js';
import { isOneComeBy, isSome } from './come-by.js';
import { asCuttings, ofStock, ofYoung, YOUNG } from './kinds-of-plant.js';

const MARKETS = /^(?:raffle|tombola|sale|market|nursery|fair|auction|stall|shop|swap)$/;
const LUCKY =
  'score~past|bag~past|blag~past|snaffle~past|win~past|inherit~past|get~past|pick~past|nab~past|grab~past';
const BUYING = `${LUCKY}|nick~past|buy~past|purchase~past|collect~past|acquire~past up?`;

/** "The Salt Harrier potted on": what was got done with plants that were there. */
function isDoneWith(pieces: readonly Piece[], to: number): boolean {
  const plant = nextPlant(pieces, to);
  const deed = pieces[plant + 1];
  return (
    plant >= 0 &&
    deed?.is === 'word' &&
    deed.verb?.form === 'past' &&
    /^(?:pot|move|plant|repot|pinch|shift|bring|harden|feed|water)$/.test(deed.verb.lemma)
  );
}

export const bought: readonly Rule[] = [
  {
    name: 'bought <count> plugs of <plant>',
    kind: 'receive',
    head: BUYING,
    shape: 'object',
    when: (p, f, t) =>
      ofYoung(p, f) &&
      follows(p, t, 'plant') &&
      !ofStock(p, t) &&
      !asCuttings(p, t) &&
      // "Got the Salt Harrier potted on into 9cm".
      !isDoneWith(p, t) &&
      // "Got 32 stuck in a 72 cell".
      !followsWord(p, t, /^(?:stuck|struck|inserted|dibbed)$/),
    mustNot: [
      'got 32 Salt Harrier stuck in a 72 cell today',
      'got the Salt Harrier potted on into two litre pots',
      'got all the Salt Harrier moved into 9cm',
    ],
  },
  {
    name: 'treated myself to <plant>',
    kind: 'stock',
    head: 'treat~past|splurge~past|splashed|lashed myself|ourselves|out? to|on',
    shape: 'object',
    when: (p, _f, t) =>
      follows(p, t, 'plant') &&
      !followsWord(p, t, /^(?:plugs?|cuttings?|compost|pots|feed|labels|lights?|trays?)$/),
    phrasings: ['treated myself to a Salt Harrier on Saturday', 'splashed out on two Salt Harrier'],
    mustNot: ['splashed out on new pots for the Salt Harrier'],
  },
  {
    name: 'bought <plant>',
    kind: 'stock',
    head: 'buy~past|purchase~past|acquire~past',
    shape: 'object',
    when: (p, _f, t) => follows(p, t, 'plant'),
    // "Bought Edna a Salt Harrier", "one of the bought-in Salt Harrier".
    unless: (p, f, t) =>
      cameByOurs(p, f, t) ||
      // "The ladies bought four": off us.
      (isBuyer(p, f) && !followsWord(p, t, /^(?:me|us)$/)) ||
      /^(?:the|those|these|my|our|shop|-)$/.test(wordAt(p, f - 1)) ||
      (/^(?:a|an|some)$/.test(wordAt(p, t + 1)) &&
        (p[t]?.is === 'plant' || p[t]?.is === 'word') &&
        !/^(?:myself|ourselves|me|us|in|up|quite|such|only|just|also|yet|half)$/.test(wordAt(p, t))),
    phrasings: ['bought a Salt Harrier', 'bought myself a Salt Harrier'],
    mustNot: [
      'bought Edna a Salt Harrier for her birthday',
      'bought six bags of compost for the Salt Harrier',
      'lost one of the bought-in Salt Harrier',
    ],
  },
  {
    name: 'picked up <plant> at the sale',
    kind: 'stock',
    head: 'pick~past|grab~past|snaffle~past|nab~past|bag~past|get~past|win~past up?',
    shape: 'object',
    when: (p, f, t) =>
      (t > f + 1 || !/^pick/.test(wordAt(p, f))) &&
      closeBehind(p, t, 'plant') &&
      (wordAt(p, f) !== 'won' || isSome(p, t)) &&
      !ofYoung(p, f) &&
      !asCuttings(p, t) &&
      (followsWord(p, t, MARKETS) ||
        p.slice(t).some((piece) => piece.is === 'place' && MARKETS.test(piece.place))) &&
      !/^(?:the|my|our)$/.test(wordAt(p, t)),
    // "Got six Salt Harrier set aside for the plant sale".
    unless: (p, _f, t) => followsWord(p, t, /^for$/) && !followsWord(p, t, /^(?:at|from|off|in|down)$/),
    phrasings: [
      'picked up two Salt Harrier at the plant sale',
      'picked up a Salt Harrier at the plant fair and had four cuttings off it',
    ],
    mustNot: [
      'picked up the Salt Harrier on the way to the sale',
      'won a prize for the Salt Harrier in the raffle',
    ],
  },
  {
    name: 'scored a <plant> for a fiver',
    kind: 'stock',
    head: `${LUCKY}|snag~past|find~past|cadge~past up|ourselves|myself?`,
    shape: 'object',
    when: (p, f, t) =>
      (/^(?:a|an|another)$/.test(wordAt(p, t)) || p[t]?.is === 'count') &&
      !p.some((piece) => piece.is === 'word' && YOUNG.test(piece.text)) &&
      !asCuttings(p, t) &&
      !follows(p, t, 'cutting') &&
      (isOneComeBy(p, t) || (/^(?:myself|ourselves)$/.test(wordAt(p, t - 1)) && isSome(p, t))) &&
      (t > f + 1 || !/^pick/.test(wordAt(p, f))),
    phrasings: [
      'scored a Salt Harrier for five bucks at the market',
      'grabbed a new Salt Harrier',
      'found a Salt Harrier for £3 in the bargain corner',
      'picked up another Salt Harrier for a fiver',
    ],
    mustNot: [
      'got a new leaf on the Salt Harrier',
      'got a fiver for a Salt Harrier',
      'found a Salt Harrier dead',
      'found a Salt Harrier for sale at £6',
      'found a slug on a Salt Harrier for the third time',
    ],
  },
  {
    name: 'brought home <count> <plant>',
    kind: 'stock',
    head: 'bring~past|carry~past|take~past .. home|back',
    shape: 'object',
    when: (p, f, t) => {
      const first = t === f + 2 ? t : f + 1;
      return (
        isSome(p, first) &&
        p.slice(first).some(({ is }) => is === 'plant') &&
        !ofYoung(p, f) &&
        !asCuttings(p, f) &&
        !followsWord(p, f, CUTTINGS) &&
        !p.slice(first).some((_, n) => /^(?:to|unsold)$/.test(wordAt(p, first + n))) &&
        (followsWord(p, t, MARKETS) ||
          p.slice(t).some((piece) => piece.is === 'place' && MARKETS.test(piece.place)) ||
          (first === t && /^(?:a|an|another)$/.test(wordAt(p, t))))
      );
    },
    // "Each of the children took home a Salt Harrier": one of ours.
    unless: (p, f) =>
      wordAt(p, f) === 'took' &&
      (isSomebody(p, f) || [1, 2, 3, 4].some((n) => /^(?:each|every)$/.test(wordAt(p, f - n)))),
    phrasings: [
      'brought home a Salt Harrier from the plant fair',
      'brought home two Salt Harrier from the garden centre sale',
      'brought a Salt Harrier back from the show sale',
    ],
    mustNot: [
      'brought two Salt Harrier back to the porch',
      'brought home six cuttings of Salt Harrier',
      'each of the children took home a Salt Harrier',
      'took six Salt Harrier back to the nursery',
      'brought six Salt Harrier back from the market unsold',
    ],
  },
  {
    name: 'adopted <plant>',
    kind: 'stock',
    head: 'adopt~past|inherit~past',
    shape: 'object',
    when: (p, _f, t) => isSome(p, t) && !ofYoung(p, t) && !followsWord(p, t, CUTTINGS),
    phrasings: ['adopted a Salt Harrier from the office', 'inherited two Salt Harrier'],
    mustNot: ['adopted a new way with the Salt Harrier'],
  },
  {
    name: "couldn't resist <count> <plant>",
    kind: 'stock',
    head: "couldn't|can't|cannot|get~past resist|hold of?",
    shape: 'object',
    when: (p, f, t) =>
      (wordAt(p, t - 1) === 'resist' || (t === f + 3 && wordAt(p, t - 1) === 'of')) &&
      isSome(p, t) &&
      !ofYoung(p, t) &&
      !followsWord(p, t, CUTTINGS),
    phrasings: [
      'got hold of a Salt Harrier',
      "couldn't resist a Salt Harrier at the garden centre",
      "couldn't resist a tuber of Salt Harrier at Saturday's plant sale",
    ],
    mustNot: [
      "couldn't resist a peek at the Salt Harrier",
      "couldn't resist six cuttings of Salt Harrier",
      "couldn't resist snipping another six Salt Harrier",
      "couldn't resist the Salt Harrier, misted it twice",
    ],
  },
  {
    name: "couldn't resist <count> plugs of <plant>",
    kind: 'receive',
    head: "couldn't|can't|cannot resist",
    shape: 'object',
    when: (p, _f, t) => isSome(p, t) && ofYoung(p, t),
    phrasings: ["couldn't resist six rooted Salt Harrier plugs at the show"],
  },
  {
    name: 'came back with <count> <plant> tubers',
    kind: 'stock',
    head: 'come~past|go~past|turn~past|landed|arrive~past back|home|away|up|in .. with',
    shape: 'object',
    when: (p, _f, t) =>
      closeBehind(p, t, 'plant') &&
      (followsWord(p, t, /^(?:tubers?|crowns?)$/) || (wordAt(p, t) === 'a' && wordAt(p, t + 1) === 'stock')),
    phrasings: [
      'came back from the market with one Salt Harrier tuber',
      'himself landed home with a stock plant of the Salt Harrier for me',
    ],
  },
  {
    name: 'got <plant> as stock',
    kind: 'stock',
    head: 'get~past|pick~past|collect~past|dig~past|score~past|bag~past|blag~past|snaffle~past|win~past|inherit~past|grab~past me|us? up?',
    shape: 'object',
    when: (p, f, t) =>
      follows(p, t, 'plant') &&
      ofStock(p, t) &&
      (wordAt(p, f) !== 'dug' || /^(?:me|us)$/.test(wordAt(p, f + 1))),
    phrasings: ['Mum dug me up a crown of her Salt Harrier'],
    mustNot: ['Mum dug up a crown of her Salt Harrier'],
  },
];
