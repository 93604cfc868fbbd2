/** Plants told to be stock plants, however they came: "new stock plant: Salt Harrier, from Ken". */
import { endsAt, follows, followsWord, precedes, type Rule, wordAt } from '../rule.js';
import { anyStock, YOUNG } from './kinds-of-plant.js';

export const toldAsStock: readonly Rule[] = [
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
    name: 'new tuber: <plant>',
    kind: 'stock',
    head: 'new tuber|tubers|crown|crowns|stool|stools',
    shape: 'object',
    faint: true,
    when: (p, f, t) => f < 2 && p[t]?.is === 'break' && p.slice(t).some(({ is }) => is === 'plant'),
    phrasings: ['New tuber: Salt Harrier, from Ken'],
    mustNot: ['want a new tuber of Salt Harrier'],
  },
  {
    name: 'a <plant> followed me home',
    kind: 'stock',
    head: 'followed|come~past home? with? me|us home?',
    shape: 'subject',
    when: (p, f, t) =>
      precedes(p, f, 2, 'plant') &&
      p.slice(f, t).some((piece) => piece.is === 'word' && piece.text === 'home') &&
      /^(?:a|an|another|one|new)$/.test(wordAt(p, 0)),
    phrasings: ['a Salt Harrier followed me home from the garden centre', 'a Salt Harrier came home with me'],
    mustNot: ['the Salt Harrier came home with me from the show'],
  },
  {
    name: 'stock plants delivered: <plant>',
    kind: 'stock',
    head: 'stock|mother|parent plant|plants delivered|arrived|in|came|received|here',
    shape: 'object',
    when: (p, f, t) => f < 2 && p[t]?.is === 'break' && p.slice(t).some(({ is }) => is === 'plant'),
    phrasings: ['Stock plants delivered: Salt Harrier x 12, 2l'],
    mustNot: ['stock plants in the Salt Harrier house need water'],
  },
  {
    name: 'order of <count> <plant> tubers',
    kind: 'stock',
    head: 'delivery|order|parcel|box of',
    shape: 'object',
    when: (p, f, t) =>
      anyStock(p.slice(t)) &&
      follows(p, t, 'plant') &&
      p.some(
        (piece, at) =>
          piece.is === 'word' &&
          (/^(?:here|came|come|arrived|landed)$/.test(piece.text) || (piece.text === 'got' && at < f)),
      ),
    phrasings: ['my order of three Salt Harrier tubers is here'],
    mustNot: ['order of three Salt Harrier tubers still not sent'],
  },
  {
    name: 'a <plant> has joined the collection',
    kind: 'stock',
    head: 'joined the|my|our collection|gang|ranks|fold|family|clan|club|tribe',
    shape: 'subject',
    when: (p, f) => precedes(p, f, 3, 'plant') && /^(?:a|an|another|one|new)$/.test(wordAt(p, 0)),
    unless: (p, _f, t) => wordAt(p, t) === 'of',
    phrasings: ['a Salt Harrier has joined the collection'],
    mustNot: ['the Salt Harrier have joined the ranks of the dead'],
  },
  {
    name: 'a stock plant of <plant> I bought',
    kind: 'stock',
    head: 'buy~past|get~past|pick~past',
    shape: 'subject',
    when: (p, f, t) =>
      precedes(p, f, 6, 'plant') &&
      anyStock(p.slice(0, f)) &&
      (/^(?:i|we|have|i've|we've)$/.test(wordAt(p, f - 1)) ||
        (wordAt(p, f) === 'bought' &&
          p[f - 1]?.is === 'plant' &&
          wordAt(p, 0) !== 'the' &&
          !followsWord(p, t, /^(?:potted|boxed|woken|started)$/))),
    phrasings: [
      'a stock plant of Salt Harrier I have bought last week',
      'two tubers of Salt Harrier bought at the fair, now in 3 litre pots',
    ],
    mustNot: ['the two tubers of Salt Harrier bought last year are in 3 litre pots now'],
  },
  {
    name: '<plant> came as a stock plant',
    kind: 'stock',
    head: 'come~past|arrive~past|landed|turn~past|show~past up?',
    shape: 'subject',
    when: (p, f, t) =>
      precedes(p, f, 8, 'plant') &&
      anyStock(p) &&
      !p.some((_, at) => YOUNG.test(wordAt(p, at))) &&
      // "Turned yellow", "showed up a bit of mildew".
      (!/^(?:turn|show)/.test(wordAt(p, f)) || (wordAt(p, t - 1) === 'up' && endsAt(p, t))),
    phrasings: ['a stock plant of Salt Harrier turned up today'],
    mustNot: [
      'the stock plant of Salt Harrier turned yellow',
      'Salt Harrier order came today, 20 plugs plus a stock plant',
    ],
  },
  {
    name: 'new stock plant <plant>',
    kind: 'stock',
    head: 'new|another|a|<count>|<plant> stock|mother|parent plant|plants',
    shape: 'object',
    when: (p, f, t) =>
      (follows(p, t, 'plant') || precedes(p, f, 5, 'plant')) &&
      (wordAt(p, f) !== 'a' || /^(?:and|plus)$/.test(wordAt(p, f - 1))) &&
      // "Bought two Salt Harrier geranium stock plants" is told by its verb.
      !(p[f]?.is === 'plant' && p[f - 1]?.is === 'plant' && f > 1) &&
      ((p[f]?.is === 'word' && wordAt(p, f) !== 'a') ||
        p.some(
          (piece) =>
            piece.is === 'word' &&
            /^(?:bought|scored|bagged|got|picked|collected|acquired|given|new|arrived|came|potted|started|delivered|brought|in)$/.test(
              piece.text,
            ),
        ) ||
        // "2 stock plants of Salt Harrier into 3L".
        (/^(?:into|in|to)$/.test(wordAt(p, p.length - 2)) && p.at(-1)?.is === 'size')),
    unless: (p) =>
      p.some(
        (piece) => piece.is === 'word' && /^(?:cuttings|dead|died|rotted|lost|sold|gave)$/.test(piece.text),
      ),
    phrasings: ['the post brought 12 Salt Harrier plugs and a stock plant of Tallow Bell'],
  },
];
