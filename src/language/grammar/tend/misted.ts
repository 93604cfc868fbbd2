/** Misted and sprayed: "quick spritz for the Salt Harrier", "turned the mister on". */
import { closeBehind, follows, followsWord, precedes, type Rule, wordAt } from '../rule.js';
import { among, bare, didThe, roundDone, turnedOff, verb, WANTING } from './telling.js';

const BUGS =
  /^(?:mealy-?bugs?|aphids?|greenfly|blackfly|whitefly|thrips|mites?|scale|sciarids?|caterpillars?|mildew|blackspot|rust)$/;

export const misted: readonly Rule[] = [
  verb(
    'mist spray spritz fog',
    'mist',
    'misted <plant>',
    (p, f, t) =>
      wordAt(p, t) === 'up' ||
      // "Lost one to mealybugs so sprayed the rest": against those.
      (wordAt(p, f) === 'sprayed' &&
        p.slice(0, f).some((piece) => piece.is === 'word' && BUGS.test(piece.text))) ||
      followsWord(p, t, /^(?:aphids|greenfly|whitefly|weeds|path|against|soap|neem|insecticide|fungicide)$/),
  ),
  {
    name: 'gave <plant> a mist',
    kind: 'tend',
    head: 'give~past|give~ing .. mist|misting|spray|spritz|spritzing|squirt',
    shape: 'object',
    care: 'mist',
  },
  {
    name: 'quick spritz for <plant>',
    kind: 'tend',
    head: 'spritz|misting|squirt for|over',
    shape: 'object',
    care: 'mist',
    when: (p, f, t) => f < 3 && closeBehind(p, t, 'plant', 'place'),
    unless: (p, f, t) => WANTING.test(wordAt(p, f - 1)) || followsWord(p, t, /^(?:needed|wanted|later)$/),
    phrasings: ['quick spritz for the Salt Harrier'],
    mustNot: ['no misting for the Salt Harrier', 'spritz for the Salt Harrier needed'],
  },
  roundDone('misting|spraying', 'mist', {
    phrasings: ['misting done'],
    mustNot: ['no misting done'],
  }),
  didThe('misting|spraying', 'mist', {
    phrasings: ['did the misting in the greenhouse', 'did the misting'],
  }),
  {
    name: 'went over <plant> with the mister',
    kind: 'tend',
    head: 'go~past|whizzed|walked|been .. with the|a|my mister|sprayer|spray|atomiser|spritzer',
    shape: 'object',
    care: 'mist',
    when: (p, f, t) => among(p, f, t, 'plant', 'place'),
    phrasings: ['went over the Salt Harrier with the mister'],
  },
  {
    name: 'turned the mister on in <place>',
    kind: 'tend',
    head: 'turn~past|switch~past|put~|ran .. mister|misters|fogger|misting on?',
    shape: 'object',
    care: 'mist',
    when: (p, _f, t) => follows(p, t, 'plant', 'place'),
    unless: turnedOff,
    phrasings: ['turned the mister on in the propagator for ten minutes'],
    mustNot: ['turned the mister off in the propagator'],
  },
  {
    name: '<plant> got a mist',
    kind: 'tend',
    head: 'get~past|have~past .. mist|misting|spray|spritz',
    shape: 'subject',
    care: 'mist',
    when: (p, f) => precedes(p, f, 6, 'plant', 'place'),
  },
  bare('mist', 'mist'),
  bare('spray', 'mist'),
];
