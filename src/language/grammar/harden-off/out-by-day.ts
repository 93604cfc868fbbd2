/** Hardening off told by the hours outside: "out by day, in at night", "first taste of the open". */
import type { Piece } from '../../pieces/pieces.js';
import { follows, precedes, type Rule, wordAt } from '../rule.js';
import { isWhole, THEM } from '../stand-ins.js';

export const namesPlant = (pieces: readonly Piece[]): boolean => pieces.some(({ is }) => is === 'plant');

export const outByDay: readonly Rule[] = [
  {
    name: '<plant> first day out',
    kind: 'hardenOff',
    head: 'first day|night|time|outing|afternoon|morning out|outside|outdoors',
    shape: 'subject',
    when: namesPlant,
  },
  {
    name: '<plant> had their first taste of outdoors',
    kind: 'hardenOff',
    head: 'first taste|breath|sniff|look|go|spell|airing|stint|few|couple of|at|in|hours? the? open|fresh|outdoors|outside|outdoor|air',
    shape: 'subject',
    when: namesPlant,
    phrasings: ['the Salt Harrier had their first taste of outdoors', 'Salt Harrier first spell outside'],
    mustNot: ['first look at the Salt Harrier'],
  },
  {
    name: '<plant> outside today, back in at dusk',
    kind: 'hardenOff',
    head: 'back|in in|inside|indoors? at|by|for|tonight|this|before|overnight the? dusk|night|nightfall|teatime|evening|bedtime|sunset|sundown|dark?',
    shape: 'subject',
    faint: true,
    when: (p, f, t) =>
      t > f + 1 &&
      p[f - 1]?.is === 'break' &&
      p.slice(0, f).some(({ is }) => is === 'plant') &&
      p.slice(0, f).some((piece) => piece.is === 'word' && /^(?:out|outside|outdoors)$/.test(piece.text)),
    phrasings: ['Salt Harrier outside today, back in at dusk'],
    mustNot: ['Salt Harrier out of the propagator, in the cold frame now'],
  },
  {
    name: 'first outing for <plant>',
    kind: 'hardenOff',
    head: 'first outing|airing',
    shape: 'object',
    when: (p, _f, t) =>
      follows(p, t, 'plant') ||
      p.slice(t).some((piece, at) => piece.is === 'plant' && /^(?:the|for|my)$/.test(wordAt(p, t + at - 1))),
    phrasings: ['first outing on the balcony for the Salt Harrier', 'first airing for the Salt Harrier'],
    mustNot: ['first outing with the club, sold three Salt Harrier'],
  },
  {
    name: '<plant> out by day',
    kind: 'hardenOff',
    head: 'out|outside|outdoors in|by|at|during|for|all|through|<count> the|a|an? day|days|daytime|daytimes|afternoon|afternoons|daylight',
    shape: 'subject',
    when: (p, f) => namesPlant(p) || THEM.test(wordAt(p, f - 1)) || isWhole(p[f - 1]),
    phrasings: [
      'Salt Harrier out by day',
      'putting them out by day',
      'started putting everything out by day',
    ],
  },
  {
    name: '<plant> out to <place> for the days',
    kind: 'hardenOff',
    head: 'out|outside to|on|in|into|onto the|my|our? <place> for|during|by|through|in the? day|days|daytime|daytimes|daylight',
    shape: 'subject',
    when: namesPlant,
    phrasings: [
      'all the Salt Harrier out to the cold frame for the days, in at night',
      'Salt Harrier out to the cold frame in the day, in at night',
    ],
    mustNot: ['checked the Salt Harrier in the cold frame during the day'],
  },
  {
    name: '<plant> out a couple of hours a day',
    kind: 'hardenOff',
    head: 'out|outside|outdoors .. hours|hrs|hour|hr a|each|every|per day',
    shape: 'subject',
    when: (p, f, t) =>
      precedes(p, f, 4, 'plant') ||
      p.slice(f, t).some(({ is }) => is === 'plant') ||
      (namesPlant(p) && THEM.test(wordAt(p, f - 1))),
    phrasings: [
      'setting the Salt Harrier out on the deck a couple hours a day',
      'started putting out the Salt Harrier an hour a day',
      'Salt Harrier, been sitting them outside for two hours each day',
    ],
    mustNot: ['worked outside four hours a day, watered the Salt Harrier'],
  },
  {
    name: '<plant> spending days outside',
    kind: 'hardenOff',
    head: 'spend|spends|spending|spent their|the? days|day|daytime|daytimes|afternoons out|outside|outdoors',
    shape: 'subject',
    when: (p, f) => precedes(p, f, 6, 'plant'),
    phrasings: ['Salt Harrier spending days outside from today'],
  },
  {
    name: 'day one outside for <plant>',
    kind: 'hardenOff',
    head: 'out|outside|outdoors for',
    shape: 'object',
    when: (p, f) => {
      const count = p[f - 1];
      return (
        namesPlant(p) && count?.is === 'count' && count.quantity.value === 1 && wordAt(p, f - 2) === 'day'
      );
    },
    phrasings: ['day one outside for the Salt Harrier'],
    mustNot: ['day one of the show, sold three Salt Harrier'],
  },
  {
    name: '<plant> in and out each day',
    kind: 'hardenOff',
    head: 'in|out and in|out',
    shape: 'subject',
    when: (p, f, t) =>
      precedes(p, f, 4, 'plant') &&
      (/^(?:each|every|daily)$/.test(wordAt(p, t)) ||
        (p[t]?.is === 'when' && /^(?:each|every)\b/i.test(p[t].when.words))),
    phrasings: ['Salt Harrier in and out each day now'],
    mustNot: ['in and out of the shed every day, Salt Harrier fine'],
  },
  {
    name: '<plant> out days',
    kind: 'hardenOff',
    head: 'out|outside|outdoors days|daytimes',
    shape: 'subject',
    when: namesPlant,
  },
];
