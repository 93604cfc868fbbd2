/** Where and how, said by itself behind all else: "40 plugs from the Grange bench 7", "no hormone I'd run out". */
import { wordAt } from '../../grammar/rule.js';
import { lastOf, type MarkMeant, wordBack } from './record.js';

export const wheresAndHows: readonly MarkMeant[] = [
  {
    name: 'from <giver> <place>',
    mark: ',',
    begins: ['place'],
    when: (before, behind) => {
      const [place] = behind;
      const last = lastOf(before);
      const next = behind[1];
      if (place?.is !== 'place' || place.prep !== undefined || last?.is !== 'word') return false;
      // "From the old greenhouse": only its number, or the ledger, makes it a place of its own.
      if (!place.known && !/\d$/.test(place.place)) return false;
      if (next !== undefined && next.is !== 'break' && next.is !== 'when') return false;
      const from = before.findLastIndex((_, at) => /^(?:from|ex)$/.test(wordAt(before, at)));
      const giver = before.slice(from + 1);
      return (
        from > 0 &&
        giver.length > 0 &&
        !/^(?:the|my|our|a)$/.test(wordAt(giver, 0)) &&
        giver.every(({ is }) => is === 'word') &&
        // "From Aunt Dot's greenhouse".
        !/(?:'s|^(?:the|my|our|a|her|his|their|in|on|at|to|into|onto|by|under))$/.test(wordBack(before)) &&
        before.slice(0, from).some(({ is }) => is === 'plant')
      );
    },
    phrasings: [
      [
        '40 Tallow Bell plugs from Dunmore Liners bench 7',
        '40 Tallow Bell plugs from Dunmore Liners, bench 7',
      ],
    ],
    mustNot: [
      'moved the Salt Harrier from the old greenhouse',
      '40 Tallow Bell plugs from the greenhouse',
      "40 Tallow Bell plugs from Aunt Dot's greenhouse",
    ],
  },
  {
    name: "no hormone I'd run out",
    mark: ',',
    begins: ['word'],
    when: (before, behind) =>
      /^(?:i|i'd|i've|we|we'd|we've)$/.test(wordAt(behind, 0)) &&
      /^(?:hormone|powder|gel)$/.test(wordBack(before)),
    phrasings: [
      ["took six Salt Harrier no hormone I'd run out", "took six Salt Harrier no hormone, I'd run out"],
    ],
  },
  {
    name: '… straight in <medium>, tips out',
    mark: ',',
    begins: ['word'],
    when: (before, behind) =>
      (wordAt(behind, 0) === 'straight' &&
        /^(?:in|into)$/.test(wordAt(behind, 1)) &&
        /^(?:them|these|those|hormone|powder)$/.test(wordBack(before)) &&
        before.some(({ is }) => is === 'plant')) ||
      // "… plugs two 72s gone straight to the greenhouse".
      (/^(?:gone|went|going)$/.test(wordAt(behind, 0)) &&
        wordAt(behind, 1) === 'straight' &&
        /^(?:to|into|in|under|onto)$/.test(wordAt(behind, 2)) &&
        before.some(({ is }) => is === 'plant') &&
        /^(?:size|pots|when)$/.test(lastOf(before)?.is ?? '')) ||
      (/^tips?$/.test(wordAt(behind, 0)) && wordAt(behind, 1) === 'out' && lastOf(before)?.is === 'when'),
    phrasings: [
      [
        '40 Salt Harrier struck no hormone on any of them straight in sand',
        '40 Salt Harrier struck no hormone on any of them, straight in sand',
      ],
      [
        'stopped 24 Salt Harrier a week last Monday tips out to three pairs',
        'stopped 24 Salt Harrier a week last Monday, tips out to three pairs',
      ],
    ],
    mustNot: ['put them straight in sand', 'pinched the tips out on Monday'],
  },
  {
    name: '<tended> frost forecast',
    mark: ',',
    begins: ['word'],
    when: (before, behind) =>
      /^(?:frost|rain|snow|storm|gales?|heatwave)$/.test(wordAt(behind, 0)) &&
      (/^(?:forecast|due|coming|expected|tonight|warning)$/.test(wordAt(behind, 1)) ||
        behind[1]?.is === 'when') &&
      (/^(?:place|plant|when)$/.test(lastOf(before)?.is ?? '') ||
        /^(?:in|inside|indoors|up|down)$/.test(wordBack(before))),
    phrasings: [['fleeced the porch frost forecast tomorrow', 'fleeced the porch, frost forecast tomorrow']],
    mustNot: ['fleeced the porch because of the frost forecast'],
  },
];
