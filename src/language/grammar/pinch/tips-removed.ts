/** Growing tips told as taken out or removed: "took out the tips", "growing points removed". */
import { closeBehind, followsWord, precedes, type Rule, wordAt } from '../rule.js';
import { leftByOthers } from '../tend/telling.js';
import { cuttingsTaken } from './cuttings-taken.js';

export const tipsRemoved: readonly Rule[] = [
  {
    name: 'the growing points of <plant> removed',
    kind: 'pinch',
    head: 'points|tips|tops|growing .. removed|pinched|nipped|snipped|cut|off|out',
    shape: 'subject',
    when: (p, f, t) =>
      (p.slice(f, t).some(({ is }) => is === 'plant') ||
        precedes(p, f, 5, 'plant') ||
        (p[t]?.is === 'break' && p[t + 1]?.is === 'plant') ||
        // "Went over the Salt Harrier with finger and thumb and had the tips out of 5".
        (wordAt(p, t) === 'of' &&
          p[t + 1]?.is === 'count' &&
          p.slice(0, f).some(({ is }) => is === 'plant') &&
          // "Stopped the Salt Harrier, tips out of all 18": told before.
          !p.slice(0, f).some((_, at) => /^(?:stopped|pinched|nipped)$/.test(wordAt(p, at)))) ||
        (/^(?:from|off|of|on)$/.test(wordAt(p, t)) && closeBehind(p, t, 'plant'))) &&
      (wordAt(p, t - 1) !== 'cut' || /^(?:i|we|have|i've|we've|been)$/.test(wordAt(p, t - 2))) &&
      !p.some(
        (piece) =>
          piece.is === 'word' &&
          /^(?:cuttings|cutting|need|needs|want|will|took|take|taken|struck)$/.test(piece.text),
      ),
    // "Pigeons had the tops off two".
    unless: leftByOthers,
    phrasings: [
      'went over the Salt Harrier with finger and thumb and had the growing points out of 5',
      'the growing points of eight Salt Harrier have been removed',
      'growing tips removed from the Salt Harrier',
      'the tops of the Salt Harrier I have cut',
    ],
  },
  {
    name: 'took out the tips, <plant>',
    kind: 'pinch',
    head: 'take~past|pick~past|whip~past|snip~past|nip~past|cut~past|break~past out|off the|their|its|all? growing|soft? tips|tops|tip|top|points|leaders',
    shape: 'object',
    when: (p, f, t) => precedes(p, f, 5, 'plant') || closeBehind(p, t, 'plant'),
    unless: (p, f, t) =>
      cuttingsTaken(p, f, t) ||
      followsWord(p, t, /^(?:rooted|root|stuck|struck|inserted|pots?|trays?|bottles?|compost)$/),
    phrasings: ['went over the Salt Harrier and took out the tips'],
    mustNot: [
      'nipped off the tips of the Salt Harrier for cuttings',
      'took off the tips of the Salt Harrier and stuck them in sand',
      'took off the top of the Salt Harrier pot',
    ],
  },
  {
    name: 'removed the tips, <plant>',
    kind: 'pinch',
    head: 'remove~past|rubbed the|their|its|all? growing|soft? tips|tops|tip|top|points|leaders out|off?',
    shape: 'object',
    when: (p, f, t) => precedes(p, f, 5, 'plant') || closeBehind(p, t, 'plant'),
    unless: (p, f, t) =>
      cuttingsTaken(p, f, t) || followsWord(p, t, /^(?:inch|layer|cm|pots?|trays?|bottles?|compost)$/),
    phrasings: ['from the Salt Harrier I have removed the top'],
    mustNot: [
      'removed the top from the cold frame, Salt Harrier fine',
      'removed the top inch of compost from the Salt Harrier',
    ],
  },
];
