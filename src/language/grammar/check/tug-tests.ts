/** A tug, and what it told: "gave them a tug", "three held firm", "no give", "four are holding". */
import { endsAt, followsWord, precedes, type Rule, wordAt } from '../rule.js';

export const tugTests: readonly Rule[] = [
  {
    name: '<count> held firm',
    kind: 'check',
    head: 'hold~|resist~|cling~|hang~ fast|firm|on|tight|tight?',
    shape: 'subject',
    when: (p, f, t) =>
      precedes(p, f, 3, 'count') &&
      (t > f + 1 || /^resist/.test(wordAt(p, f))) &&
      !followsWord(p, t, /^leaves$/),
    phrasings: ['tugged the ember fox, 3 hold fast', 'five held tight', 'five resist'],
    mustNot: ['holding on till Saturday with the ember fox'],
  },
  {
    name: 'tugged <plant>, no give',
    kind: 'check',
    head: 'no give|movement',
    shape: 'object',
    rooted: 'all',
    when: (p) =>
      p.some((piece) => piece.is === 'word' && /^(?:tug|tugged|pull|pulled|tugging)$/.test(piece.text)),
    phrasings: ['tugged the Salt Harrier, no give on any of them'],
  },
  {
    name: 'gave <plant> a tug',
    kind: 'check',
    sense: 'look',
    head: 'give~past .. a tug|pull',
    shape: 'object',
  },
  {
    name: 'tugged <plant>, <count> holding',
    kind: 'check',
    head: 'holding|hold|held',
    shape: 'subject',
    when: (p, f, t) =>
      endsAt(p, t) &&
      precedes(p, f, 3, 'count') &&
      p.slice(0, f).some((piece) => piece.is === 'word' && /^(?:tug|tugged|pull|pulled)$/.test(piece.text)),
    phrasings: ['gave the Salt Harrier a gentle tug and four of the six are holding'],
  },
];
