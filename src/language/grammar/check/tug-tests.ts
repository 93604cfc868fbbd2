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
    name: '<count> of <plant> well anchored',
    kind: 'check',
    head: 'are|is well|firmly|nicely anchored',
    shape: 'subject',
    when: (p, f) =>
      /^(?:plant|count)$/.test(p[f - 1]?.is ?? '') &&
      precedes(p, f, 3, 'count') &&
      p.slice(0, f).some(({ is }) => is === 'plant'),
    phrasings: ['had a peek under the Salt Harrier, five are well anchored'],
    mustNot: ['two of the Salt Harrier labels are well anchored'],
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
    head: 'give~past|do~past .. a|the gentle|little|quick|light|wee|good? tug|pull test?',
    shape: 'object',
    when: (p, f, t) => /^g/.test(wordAt(p, f)) || wordAt(p, t - 1) === 'test',
    phrasings: [
      'gave the Salt Harrier a gentle tug and four held on tight',
      'Jim did the tug test on the Salt Harrier and three held tight',
    ],
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
