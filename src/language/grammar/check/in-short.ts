/** Looks told in a word or two: "4 roots", "six have struck", "none yet", "2 of 5". */
import { closeBehind, endsAt, followsWord, precedes, type Rule, wordAt } from '../rule.js';
import type { Piece } from '../../pieces/pieces.js';
import { notAboutRoots } from './not-about-roots.js';

/** "12 took, 3 didn't", "nine of the Salt Harrier took": roots, where nobody is said to have taken them. */
export function tookRoot(p: readonly Piece[], from: number, to: number): boolean {
  if (wordAt(p, from) !== 'took' || SOMEBODY.test(wordAt(p, from - 1))) return false;
  const count = p.slice(0, from).findLast(({ is }) => is === 'count');
  if (count === undefined) return false;
  const other = p.findIndex((piece, at) => at >= to && at < to + 3 && piece.is === 'count');
  const isOthers = /^(?:didn't|did|haven't|hasn't)$/.test(wordAt(p, other + 1)) && endsOrNot(p, other + 2);
  const isPart = count.to - count.from > 1 && p[from - 1]?.is === 'plant';
  return isPart ? endsAt(p, to) : other >= to && isOthers && p[from - 1]?.is === 'count';
}

const SOMEBODY = /^(?:i|we|he|she|you|they|who)$/;
const endsOrNot = (p: readonly Piece[], at: number): boolean => endsAt(p, at) || wordAt(p, at) === 'not';

export const inShort: readonly Rule[] = [
  {
    name: '<count> roots',
    kind: 'check',
    head: '<count> root|roots',
    shape: 'subject',
    unless: (p, f, t) => notAboutRoots(p, f, t) || /^(?:of|was|from)$/.test(wordAt(p, t)),
  },
  {
    name: 'roots! <count> of <plant>',
    kind: 'check',
    head: 'roots|rooted|rooting finally|already|galore|showing?',
    shape: 'object',
    faint: true,
    when: (p, f, t) =>
      p[t]?.is === 'break' &&
      p[t + 1]?.is === 'count' &&
      closeBehind(p, t + 1, 'plant') &&
      p.slice(0, f).every(({ is }) => is === 'word') &&
      !p.some((piece, at) => at !== f && piece.is === 'word' && piece.verb?.form === 'past'),
    unless: notAboutRoots,
    phrasings: ['white roots! 3 of the Salt Harrier', 'roots: 4 of the Salt Harrier'],
    mustNot: ['roots: 3 of the Salt Harrier potted on'],
  },
  {
    name: '<count> have struck',
    kind: 'check',
    head: 'have~|be~ <count>? struck|taken|took|struck',
    shape: 'subject',
    when: (p, f, t) =>
      !closeBehind(p, t, 'plant', 'count', 'cutting') &&
      !/^(?:i|we|he|she)$/.test(wordAt(p, f - 1)) &&
      // "They have all struck"; no "I have two taken".
      p.slice(f, t).every((piece) => piece.is !== 'count' || piece.quantity.whole === 'all') &&
      (precedes(p, f, 7, 'count', 'plant') ||
        (p[f + 1]?.is === 'count' && /^(?:they|mine|these|those)$/.test(wordAt(p, f - 1)))) &&
      (endsAt(p, t) ||
        /^(?:nicely|lovely|well|grand|great|fine|beautifully|ok|okay|alright|so|far|since)$/.test(
          wordAt(p, t),
        )) &&
      p.slice(0, f).every((piece) => !(piece.is === 'word' && /^cuttings$/.test(piece.text))) &&
      !/^(?:was|were|are|is)$/.test(wordAt(p, f)),
    phrasings: ['six Salt Harrier have struck', 'the Salt Harrier have all struck'],
    mustNot: ['she has only two Salt Harrier taken', 'I have six Salt Harrier struck'],
  },
  {
    name: '<count> of <count> struck',
    kind: 'check',
    head: 'struck|took',
    shape: 'subject',
    when: (p, f, t) =>
      tookRoot(p, f, t) ||
      (endsAt(p, t) &&
        p
          .slice(Math.max(0, f - 4), f)
          .some((piece) => piece.is === 'count' && piece.quantity.outOf !== undefined)) ||
      // "Eleven struck, the rest still thinking about it".
      (p[f - 1]?.is === 'count' &&
        endsAt(p, t) &&
        p
          .slice(t, t + 5)
          .some(
            (piece) =>
              /^(?:rest|others)$/.test(piece.is === 'word' ? piece.text : '') ||
              (piece.is === 'count' && piece.quantity.whole === 'rest'),
          ) &&
        followsWord(p, t + 1, /^(?:still|not|yet|nothing|nowt|sulking|waiting|thinking|slow|rootless)$/)),
    phrasings: [
      'Salt Harrier: eleven struck, the rest still thinking about it',
      "Salt Harrier: nine took, three didn't",
      'nine of the Salt Harrier took',
    ],
    mustNot: ['Salt Harrier: eleven struck, the rest to do on Sunday'],
  },
  {
    name: '<plant>: <count> up',
    kind: 'check',
    head: 'up',
    shape: 'subject',
    when: (p, f, t) =>
      p[f - 1]?.is === 'count' &&
      (endsAt(p, t) || wordAt(p, t) === 'and') &&
      /^(?:plant|break)$/.test(p[f - 2]?.is ?? '') &&
      p.slice(0, f).every((piece) => !(piece.is === 'word' && piece.verb)) &&
      p.slice(0, f).some(({ is }) => is === 'plant') &&
      // "Ember Fox, 8 up" alone may be what was potted up, or more than there were.
      p
        .slice(t)
        .some((_, n) => /^(?:thinking|gone|dead|nothing|rotted|sulking|no|not)$/.test(wordAt(p, t + n))),
    phrasings: ['Salt Harrier: eight up, two gone, two thinking about it'],
    mustNot: ['Salt Harrier: eight up on the shelf', 'Salt Harrier: price up to 8, two gone'],
  },
  {
    // In the trade: growing away.
    name: '<plant>, <count> away of <count>',
    kind: 'check',
    head: 'away',
    shape: 'subject',
    when: (p, f, t) =>
      p[f - 1]?.is === 'count' &&
      p.slice(0, f).some(({ is }) => is === 'plant') &&
      ((/^(?:of|from)$/.test(wordAt(p, t)) && p[t + 1]?.is === 'count') ||
        (wordAt(p, t) === 'out' && wordAt(p, t + 1) === 'of' && p[t + 2]?.is === 'count')),
    phrasings: ['Salt Harrier - 71 away out of 80, rest callused', 'Salt Harrier: 30 away of 40'],
    mustNot: ['gave 3 Salt Harrier away out of the tray'],
  },
  {
    name: '<plant>: none yet',
    kind: 'check',
    head: '<count> yet',
    shape: 'subject',
    rooted: 'none',
    faint: true,
    when: (p, f) => {
      const piece = p[f];
      return (
        piece?.is === 'count' && piece.quantity.value === 0 && p.slice(0, f).some(({ is }) => is === 'plant')
      );
    },
  },
  {
    name: '<plant> <count> of <count>',
    kind: 'check',
    head: '<count>',
    shape: 'subject',
    faint: true,
    when: (p) =>
      p[0]?.is === 'plant' &&
      isTally(p.at(-1)) &&
      p.every((piece) => TALLIES.has(piece.is) || isTally(piece)),
    phrasings: ['Salt Harrier 2 of 5', 'Salt Harrier 2 of 5, Tallow Bell 4 out of 4'],
    mustNot: ['moved Salt Harrier 2 of 5'],
  },
];

const TALLIES: ReadonlySet<string> = new Set(['plant', 'break']);

const isTally = (piece: Piece | undefined): boolean =>
  piece?.is === 'count' && piece.quantity.outOf !== undefined;
