/** Cuttings told by the cutting or making: "snipped six off", "did ten", "the stools gave 30". */
import { asCuttings } from '../stock/kinds-of-plant.js';
import type { Piece } from '../../pieces/pieces.js';
import { CUTTINGS } from '../taken-away.js';
import { closeBehind, follows, followsWord, precedes, type Rule, wordAt } from '../rule.js';
import { comeOfIt } from './come-of-it.js';
import { did } from './did.js';
import { cutUp } from './cut-up.js';
import { pulledOff, standIn } from './pulled-off.js';
import { isRelative } from './told-before.js';
import { mentionsCuttings, spoken } from './of-cuttings.js';

/** "Six Salt Harrier for Mum": flowers. */
const isForThem = (pieces: readonly Piece[], from: number): boolean => {
  const plant = pieces.findIndex(({ is }, at) => at >= from && is === 'plant');
  return wordAt(pieces, plant + 1) === 'for' && pieces[plant + 2]?.is !== 'when';
};

/** "Today I make", "I make now": done as it is told. */
const isToday = (pieces: readonly Piece[], from: number, to: number): boolean =>
  [pieces[to], pieces[from - 2]].some(
    (piece) => piece?.is === 'when' && piece.when.past !== undefined && piece.when.past === piece.when.future,
  ) || wordAt(pieces, to) === 'now';

export const cut: readonly Rule[] = [
  {
    name: 'let me snip <count> off <plant>',
    kind: 'strike',
    head: 'let~ me|us snip~|take~|cut~|have|nick~|pinch~',
    shape: 'object',
    when: (p, _f, t) =>
      follows(p, t, 'plant', 'count') &&
      (followsWord(p, t, CUTTINGS) || followsWord(p, t, /^(?:off|from|her|his|their)$/)),
    phrasings: ['the neighbour let me snip four of her Salt Harrier'],
  },
  {
    // Rooted already or not, they were put in.
    name: 'gave me <count> cuttings of <plant>, in <pots>',
    kind: 'strike',
    head: 'give~past|hand~past|bring~past|send~past|pass~past|slip~past me|us',
    shape: 'object',
    when: (p, _f, t) =>
      follows(p, t, 'count') &&
      asCuttings(p, t) &&
      p.slice(t).some(({ is }, n) => is === 'break' && standIn(p, t + n + 1)),
    phrasings: [
      "Doreen gave me six tips off her Salt Harrier, they're in a pot of grit now",
      'Doreen gave me six cuttings of Salt Harrier, now in a jar of water',
      'Doreen handed me six cuttings of Salt Harrier, all in one pot',
    ],
    mustNot: [
      'Doreen gave me six cuttings of Salt Harrier',
      'Doreen gave me six cuttings of Salt Harrier, need to get them in a pot',
      'Doreen gave me six rooted Salt Harrier, all in one pot',
    ],
  },
  {
    name: 'cut <count> <plant>',
    kind: 'strike',
    head: 'cut~past|cut~base',
    shape: 'object',
    when: (p, f, t) =>
      !isRelative(p, f) &&
      !/^(?:back|down|off|the|it|them)$/.test(wordAt(p, t)) &&
      !followsWord(
        p,
        t,
        /^(?:flowers?|blooms?|buds?|leaves|vases?|bouquets?|bunch|bunches|posy|posies|jug|table|church|altar|grave|buttonholes?)$/,
      ) &&
      (mentionsCuttings(p, t) || (closeBehind(p, t, 'count') && follows(p, t, 'plant') && !isForThem(p, t))),
    mustNot: ['cut six Salt Harrier for a bunch for Mum', 'cut six Salt Harrier for the hall table'],
  },
  ...did,
  {
    name: 'made <count> cuttings of <plant>',
    kind: 'strike',
    head: 'make~past|prepare~past|prep~past|harvest~past|manage~past',
    shape: 'object',
    when: (p, f, t) =>
      spoken(p, f, t) ||
      // "I have made also 12 Ember Fox in perlite".
      (wordAt(p, f) === 'made' &&
        follows(p, t, 'plant') &&
        p[wordAt(p, t) === 'also' ? t + 1 : t]?.is === 'count' &&
        !followsWord(p, t, /^(?:baskets?|planters?|tubs?|bowls?)$/) &&
        p.slice(t).some(({ is }) => is === 'medium')),
    unless: (p, _f, t) => /^(?:roots|root|new|some|to)$/.test(wordAt(p, t)),
    phrasings: [
      'managed six basal cuttings off the Salt Harrier before the rain came',
      'made also 12 Salt Harrier in perlite',
    ],
    mustNot: ['the Salt Harrier have made roots by six pieces'],
  },
  {
    name: 'today I make <count> cuttings of <plant>',
    kind: 'strike',
    head: 'make~base|prepare~base|cut~base',
    shape: 'object',
    when: (p, f, t) => spoken(p, f, t) && isToday(p, f, t) && /^(?:i|we)$/.test(wordAt(p, f - 1)),
    phrasings: [
      'today I make ten cuttings of Salt Harrier',
      'I make today cuttings of Salt Harrier, ten pieces in two little pots',
      'we make now six cuttings of Salt Harrier',
    ],
    mustNot: [
      'I make ten cuttings of Salt Harrier every year',
      'can I make cuttings of Salt Harrier today?',
      'I make ten cuttings of Salt Harrier tomorrow',
    ],
  },
  {
    name: 'snipped <count> cuttings off <plant>',
    kind: 'strike',
    head: 'nick~past|start~past|get~past|grab~past|snag~past|cadge~past|pop~past|bung~past|push~past|dib~past|dibble~past|set~past|place~past|steal~past|pinch~past|fill~past|do~past|liberate~past|snaffle~past|filch~past|scrounge~past|blag~past|rescue~past|root~past|have~past|try~past|put~|tuck~past|shove~past|plonk~past|lift~past|chop~past',
    shape: 'object',
    when: spoken,
    unless: (p, f, t) =>
      /^(?:rid|the|on|home|to)$/.test(wordAt(p, t)) ||
      // "Has thrown one white shoot": what it grew.
      /^(?:thrown|threw)$/.test(wordAt(p, t)) ||
      // "Did take nine cuttings".
      (wordAt(p, f) === 'did' && /^(?:take|strike|stick|cut|insert)$/.test(wordAt(p, t))) ||
      // "Filled ten pots ready for the cuttings".
      followsWord(p, t, /^ready$/) ||
      // "Got six going mouldy": how they go; what was set going has a rule of its own.
      followsWord(p, t, /^going$/) ||
      (/^rooted$/.test(wordAt(p, t - 1)) &&
        (p[f - 1]?.is === 'count' || /^(?:cuttings?|slips?)$/.test(wordAt(p, t)))) ||
      followsWord(p, t, /^(?:died|rotted|rooted|dead|gone|frost|compost(?:ed)?|bin|love|fancy|want|need)$/),
    mustNot: [
      'filled ten pots ready for the Salt Harrier cuttings',
      "Jean has a Salt Harrier I'd love a cutting of",
      'Salt Harrier has thrown one pure white shoot',
    ],
  },
  {
    name: '<plant> gave <count> shoots, all in',
    kind: 'strike',
    head: 'give~past|yield~past|produce~past me|us? <count>',
    shape: 'subject',
    when: (p, f, t) =>
      p.slice(0, f).some(({ is }) => is === 'plant') &&
      (/^(?:stools?|tubers?|crowns?|plants?|stock)$/.test(wordAt(p, f - 1)) ||
        (p[f - 1]?.is === 'plant' && /^(?:cuttings|slips|basals)$/.test(wordAt(p, t)))) &&
      (/^(?:cuttings|slips|basals)$/.test(wordAt(p, t)) ||
        p.slice(t).some((piece) => piece.is === 'word' && /^(?:in|struck|stuck|inserted)$/.test(piece.text))),
    phrasings: [
      'the Salt Harrier tuber gave me six cuttings today',
      'the Salt Harrier gave me fifteen cuttings, five to a pot in three pots',
      'the Salt Harrier stools gave 30, all struck by lunchtime',
      'the Salt Harrier tubers gave me 8 good shoots, all in now',
    ],
    mustNot: ['the Salt Harrier gave me 8 good shoots'],
  },
  ...comeOfIt,
  ...pulledOff,
  ...cutUp,
  {
    name: '<count> pieces cut from <plant>',
    kind: 'strike',
    head: '<count> pieces|bits|shoots|stems|lengths cut|taken from|off',
    shape: 'object',
    when: (p, _f, t) => closeBehind(p, t, 'plant'),
    phrasings: ['I have yesterday 12 pieces cut from the Salt Harrier and put them to root in perlite'],
  },
  {
    name: 'chucked <count> tips in <place>',
    kind: 'strike',
    head: 'chuck~past|fire~past|lob~past|sling~past|whack~past|bung~past|shove~past <count> more? tips|slips|shoots|snippets|sprigs|<cutting> cuttings? .. in|into|under|on',
    shape: 'object',
    when: (p, f, t) =>
      follows(p, t, 'place', 'pots', 'medium') &&
      (follows(p, t, 'plant') ||
        precedes(p, f, 4, 'plant') ||
        p.slice(f, t).some(({ is }) => is === 'plant')),
    unless: (p, _f, t) => followsWord(p, t, /^(?:bin|heap|skip|compost|bucket|caddy)$/),
    phrasings: ['Salt Harrier, chucked 14 tips in the propagator'],
    mustNot: ['Salt Harrier, chucked 14 tips in the bin'],
  },
];
