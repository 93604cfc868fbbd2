/** Plants carried to somebody: "took three to the fete", "dropped three round to Sheila", "left two out for Ken". */
import { CUTTINGS, goesToOutlet, isCarried, isSomebody, leavesWith } from '../taken-away.js';
import { closeBehind, follows, followsWord, type Rule, wordAt } from '../rule.js';
import { isKnown } from '../../row/lexicon.js';
import { KIN } from '../../mood/somebody-else.js';

export const carriedTo: readonly Rule[] = [
  {
    name: 'took <count> <plant> to <recipient>',
    kind: 'dispatch',
    head: 'take~past',
    shape: 'object',
    when: (p, _f, t) =>
      leavesWith(p, t) &&
      ((goesToOutlet(p, t) && !followsWord(p, t, /^show$/)) || p.slice(t).some(({ is }) => is === 'count')),
    phrasings: [
      'took 3 Salt Harrier to Doreen',
      'took two dozen Salt Harrier to the farm shop',
      'I took ten Salt Harrier to market',
      'took 3 Salt Harrier to my cousin in Duluth',
      'took 3 Salt Harrier to the WI ladies',
      'took six of the Salt Harrier to mrs abbery and fed the Tallow Bell',
    ],
    mustNot: [
      'took 3 Salt Harrier to the greenhouse',
      'took the Salt Harrier to the show, second prize',
      'took 3 cuttings of Salt Harrier to root',
      'took 3 Salt Harrier to show Doreen',
      'took 3 Salt Harrier cuttings at the garden centre',
      "took 3 Salt Harrier to a friend's greenhouse",
      'took 3 cuttings of Salt Harrier to a friend',
    ],
  },
  {
    name: 'the van took <count> <plant>',
    kind: 'dispatch',
    head: 'take~past|have~past|collect~past|fetch~past',
    shape: 'object',
    when: (p, f, t) =>
      isCarried(p, f) && closeBehind(p, t, 'count') && closeBehind(p, t, 'plant') && !follows(p, t, 'place'),
    unless: (p, _f, t) => followsWord(p, t, CUTTINGS),
    phrasings: ['the van took 12 Salt Harrier', 'the courier collected 12 Salt Harrier'],
    mustNot: ['took 12 Salt Harrier off the van', 'the van took 12 Salt Harrier to the greenhouse'],
  },
  {
    name: 'dropped <count> <plant> round to <recipient>',
    kind: 'dispatch',
    head: 'drop~past|take~past|ran|carry~past|walked|bring~past|pop~past|nip~past .. round|over|off|across|up|down|in to',
    shape: 'object',
    when: (p, f, t) =>
      p.slice(f, t).some(({ is }) => is === 'plant' || is === 'count') &&
      p[t]?.is === 'word' &&
      (goesToOutlet(p, t - 1) ||
        isSomebody(p, t) ||
        (!/^(?:the|my|our|a|one)$/.test(wordAt(p, t)) &&
          !/^(?:root|be|get|grow|dry|harden)$/.test(wordAt(p, t)) &&
          (wordAt(p, t - 2) !== 'in' ||
            !isKnown(wordAt(p, t)) ||
            /^(?:old|poor|mr|mrs)$/.test(wordAt(p, t))))),
    phrasings: [
      'dropped three of the Salt Harrier round to Sheila at number nine',
      'took the last three Salt Harrier round to the church sale',
      'took the last three Salt Harrier round to the postman',
      'ran six Salt Harrier over to a lad from Ballyquirk',
      'dropped two Salt Harrier in to old Sid',
    ],
    mustNot: [
      'took three of the Salt Harrier over to the greenhouse',
      "took three of the Salt Harrier over to my sister's porch",
      'brought three Salt Harrier in to warm up',
    ],
  },
  {
    name: 'left <count> <plant> out for <recipient>',
    kind: 'dispatch',
    head: 'leave~past .. for',
    shape: 'object',
    when: (p, f, t) =>
      p.slice(f, t).some(({ is }) => is === 'count') &&
      p.slice(f, t).some(({ is }) => is === 'plant') &&
      (/^(?:mr|mrs|ms|miss|dr)$/.test(wordAt(p, t)) ||
        (/^(?:my|our)$/.test(wordAt(p, t)) && KIN.test(wordAt(p, t + 1)))),
    phrasings: ['left three Salt Harrier on the doorstep for Mrs Abbery'],
    mustNot: [
      'left three Salt Harrier in the porch for now',
      'left three Salt Harrier for the winter',
      'left three Salt Harrier in the porch for my holiday',
      'left three Salt Harrier for my brother to water',
    ],
    unless: (p, _f, t) => followsWord(p, t, /^to$/),
  },
];
