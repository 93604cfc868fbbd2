/** Plants told as planted, by the act: "planted out six", "dug in six", "filled the urns with". */
import type { Piece } from '../../pieces/pieces.js';
import { closeBehind, follows, followsWord, precedes, wordAt, type Rule } from '../rule.js';
import { anyStock } from '../stock/kinds-of-plant.js';
import { areCuttings, bedAt, GARDEN, garden } from './quarters.js';

/** Where plants that simply went "into" it are planted. */
const INTO =
  /\b(?:border|(?<!(?:hot|sand|mist|prop|water|standing) )(?:bed|trough)|tubs?|planters?|urns?|half barrels?|window ?box|window ?boxes|rockery|hanging baskets?|raised beds?|flower ?bed)$/;

/** "With six of the Salt Harrier": nothing but their number before them. */
const plantStraightBehind = (pieces: readonly Piece[], from: number): boolean => {
  let at = from;
  while (pieces[at]?.is === 'count' || /^(?:the|my|all|of|those|more)$/.test(wordAt(pieces, at))) at++;
  return pieces[at]?.is === 'plant';
};

export const planted: readonly Rule[] = [
  {
    name: '<plant> out for hardening',
    kind: 'hardenOff',
    head: 'out|outside|gone|moved for|to hardening|acclimatising|harden off?',
    shape: 'subject',
    when: (p, f) => p.slice(0, f).some(({ is }) => is === 'plant'),
    phrasings: ['TB1 out for hardening'],
  },
  {
    name: 'dug in <count> <plant>',
    kind: 'plantOut',
    head: 'dig~past in',
    shape: 'object',
    when: (p, _f, t) => follows(p, t, 'plant', 'count'),
  },
  {
    name: 'in they went, <plant>',
    phrasings: ['in they went, Salt Harrier, along the path'],
    kind: 'plantOut',
    head: 'in they|we went|go',
    shape: 'object',
    when: (p, f, t) =>
      f === 0 &&
      p.slice(t).some(({ is }) => is === 'plant') &&
      (garden(p, f, t) ||
        followsWord(p, 0, /^(?:along|beside|round|by)$/) ||
        p.slice(t).some((piece) => piece.is === 'word' && /^(?:along|beside|round|path)$/.test(piece.text))),
  },
  {
    name: 'out went <plant>, <place>',
    kind: 'plantOut',
    head: 'out|in went all? the|my|<count>?',
    shape: 'object',
    when: (p, f, t) => f === 0 && closeBehind(p, t, 'plant') && garden(p, 0, t),
    phrasings: ['out went the Salt Harrier, front border, all twenty'],
    mustNot: ['out went the heater, Salt Harrier in the border frosted'],
  },
  {
    name: 'filled the urns with <plant>',
    kind: 'plantOut',
    head: 'fill~past|plant~past|make~past|stuffed|crammed up|out? .. with',
    shape: 'object',
    when: (p, f, t) =>
      plantStraightBehind(p, t) && (followsWord(p.slice(0, t), f, GARDEN) || garden(p, f, f + 1)),
    phrasings: ['filled the urns with Salt Harrier', 'planted up the tubs with six Salt Harrier'],
    mustNot: [
      'filled the trays with compost for the Salt Harrier',
      'filled the trough with water for the Salt Harrier',
    ],
  },
  {
    name: 'tubs done with <plant>',
    kind: 'plantOut',
    head: 'done|filled|planted|stuffed up? with',
    shape: 'object',
    when: (p, f, t) =>
      follows(p, t, 'plant') && (garden(p, 0, 0) || followsWord(p.slice(0, f), 0, GARDEN)) && f > 0,
    phrasings: ['patio tubs done with Salt Harrier'],
    mustNot: ['done with the Salt Harrier for today'],
  },
  { name: 'planted out <count> <plant>', kind: 'plantOut', head: 'plant~ out', shape: 'object' },
  {
    name: 'planted <plant> in <place>',
    kind: 'plantOut',
    head: 'plant~past',
    shape: 'object',
    unless: (p, f, t) =>
      follows(p, t, 'size') ||
      followsWord(p, t, /^(?:tubers?|seeds?|bulbs?)$/) ||
      // "Twelve cuttings planted in small pots with perlite": put in to root.
      (follows(p, t, 'pots', 'medium') && p.slice(0, f).some((_, at) => /^cuttings?$/.test(wordAt(p, at)))),
    phrasings: ['planted Salt Harrier in the greenhouse', 'planted five Salt Harrier out'],
  },
  {
    name: '<count> <plant> into the border',
    kind: 'plantOut',
    head: 'into|to the|my? back|front|middle|end? of? the? border|<place>',
    shape: 'subject',
    faint: true,
    when: (p, f, t) => {
      const place = p[t - 1];
      return (
        (place?.is === 'place'
          ? INTO.test(place.place) && !place.place.startsWith('standing')
          : wordAt(p, t - 1) === 'border') &&
        p.slice(0, f).some(({ is }) => is === 'plant') &&
        !p.slice(0, f).some((piece) => piece.is === 'word' && piece.verb !== undefined)
      );
    },
    // "To the front border by Friday": still to be done.
    unless: (p) => p.some((piece) => piece.is === 'when' && /^by\b/i.test(piece.when.words)),
    phrasings: [
      'three Salt Harrier into the patio tub',
      'three Salt Harrier into the long border yesterday evening',
      'three Salt Harrier into the window box',
      'Salt Harrier to the back of the border',
    ],
    mustNot: [
      'three Salt Harrier into the cold frame',
      'three Salt Harrier into the hot bed',
      'four Salt Harrier to the front border by Friday',
    ],
  },
  {
    name: 'whacked <count> <plant> in the bed',
    kind: 'plantOut',
    head: 'whack~past|bung~past|shove~past|stick~past|pop~past|bang~past|plonk~past|put~ <count>? of? the? <plant> <plant>? in|into',
    shape: 'object',
    when: (p, _f, t) => [t, t + 1, t + 2].some((at) => bedAt(p, at)),
    phrasings: ['whacked nine Salt Harrier in the front bed this arvo'],
    mustNot: ['whacked nine Salt Harrier in the sand bed', 'put the Salt Harrier in the heated bed'],
  },
  {
    name: '<count> <plant> put down in the bed',
    kind: 'plantOut',
    head: 'put~past|pop~past|stick~past|tuck~past|dig~past down|out? in|into',
    shape: 'subject',
    when: (p, f, t) =>
      precedes(p, f, 2, 'plant', 'count') &&
      garden(p, f, t) &&
      !p
        .slice(t, t + 4)
        .some(
          (piece) =>
            piece.is === 'medium' || (piece.is === 'place' && /^(?:sand|mist|hot|prop)/.test(piece.place)),
        ),
    unless: (p, f) => areCuttings(p.slice(Math.max(0, f - 4), f)),
    phrasings: ['ten Salt Harrier sold, the last three put down in the bed by the gate'],
    mustNot: [
      'ten Salt Harrier sold, the last three put down in the sand bed',
      'nine Salt Harrier cuttings put in the long bed',
    ],
  },
  {
    name: 'bedded out <count> <plant>',
    kind: 'plantOut',
    head: 'bed~past out|in?',
    shape: 'object',
    // Tubers are bedded in boxes of compost too, and put to bed for the winter.
    unless: (p, f, t) => anyStock(p) && !(wordAt(p, t - 1) === 'out' || garden(p, f, t)),
    phrasings: ['bedded out three Salt Harrier tubers in the top border'],
    mustNot: ['bedded the Salt Harrier tubers down for the winter'],
  },
  {
    name: 'set out <count> <plant>',
    kind: 'plantOut',
    head: 'set~past|put~ out',
    shape: 'object',
    when: (p, f, t) =>
      follows(p, t, 'plant', 'count') &&
      (garden(p, f, t) || wordAt(p, f) === 'set') &&
      !followsWord(p, t, /^(?:cuttings|cutting|trays|pots|labels|tools)$/),
  },
  {
    name: '<plant> are in, <count> along <place>',
    kind: 'plantOut',
    head: 'be~|go~past all? in',
    shape: 'subject',
    when: (p, f, t) => {
      const at = /^(?:now|today|finally)$/.test(wordAt(p, t)) || p[t]?.is === 'when' ? t + 1 : t;
      const place = p.slice(at + 2, at + 5).find((piece) => piece.is === 'place');
      return (
        p.slice(0, f).some(({ is }) => is === 'plant') &&
        p[at]?.is === 'break' &&
        p[at + 1]?.is === 'count' &&
        (garden(p, f, at + 2) ||
          /^(?:along|beside|alongside)$/.test(wordAt(p, at + 2)) ||
          (place?.is === 'place' &&
            /^(?:along|beside|round|around|down|by|behind|under)$/.test(place.prep ?? '')))
      );
    },
    phrasings: [
      'Salt Harrier are in, nine along the drive',
      'the Salt Harrier went in today, 9 in the top bed',
    ],
    mustNot: ['Salt Harrier are in, nine in the propagator', 'the Salt Harrier went in, nine on the sill'],
  },
];
