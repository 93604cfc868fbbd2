/** Hardening off begins. */
import type { Piece } from '../pieces/pieces.js';
import { endsAt, follows, precedes, type Rule, wordAt } from './rule.js';
import { namesPlant, outByDay } from './harden-off/out-by-day.js';
import { THEM } from './stand-ins.js';

const GOES = /^(?:is|was|has|went|goes|going|seems|seemed|took|takes)$/;

/** "Hardening off is going well": how it goes, and no beginning. */
const tellsHowItGoes = (pieces: readonly Piece[], from: number, to: number): boolean =>
  wordAt(pieces, from) === 'hardening' && GOES.test(wordAt(pieces, to));

/** "Planted out six hardened off Salt Harrier": which, beside another deed. */
const tellsWhichSort = (pieces: readonly Piece[], from: number, to: number): boolean =>
  wordAt(pieces, from) === 'hardened' &&
  (pieces[from - 1]?.is === 'count' || /^(?:the|my|those)$/.test(wordAt(pieces, from - 1))) &&
  pieces[to]?.is === 'plant' &&
  pieces.slice(0, from).some((piece) => piece.is === 'word' && piece.verb?.form === 'past');

export const hardenOffRules: readonly Rule[] = [
  {
    name: 'hardening <plant> off',
    kind: 'hardenOff',
    head: 'harden~ .. off|of',
    shape: 'object',
    unless: (p, f, t) => tellsHowItGoes(p, f, t) || tellsWhichSort(p, f, t),
    mustNot: ['hardening off is going well with the Salt Harrier', 'planted out 6 hardened off Salt Harrier'],
    phrasings: ['hardening Salt Harrier off', 'hardening off Salt Harrier'],
  },
  {
    name: '<plant> hardening',
    kind: 'hardenOff',
    head: 'for? hardening',
    shape: 'object',
    when: (p, _f, t) => namesPlant(p) && !GOES.test(wordAt(p, wordAt(p, t) === 'off' ? t + 1 : t)),
  },
  {
    name: '<act>, hardening off begun',
    kind: 'hardenOff',
    head: 'hardening off|of have~|be~|now? now|officially|finally|well? begun|started|underway|under way?',
    shape: 'subject',
    when: (p, f, t) => namesPlant(p.slice(0, f)) && endsAt(p, t),
    phrasings: [
      'moved the Salt Harrier to the cold frame, hardening off begun',
      'wheeled three Salt Harrier out, hardening off has officially started',
    ],
    mustNot: ['moved the Salt Harrier, is hardening off begun?'],
  },
  {
    name: '<act> and began hardening off',
    kind: 'hardenOff',
    head: 'begin~|start~ to? hardening|harden off|of',
    shape: 'subject',
    when: (p, f, t) => namesPlant(p.slice(0, f)) && endsAt(p, t),
    phrasings: ['moved the Salt Harrier to the cold frame and began hardening off'],
    mustNot: ['moved the Salt Harrier, must start hardening off'],
  },
  ...outByDay,
  {
    name: '<plant> getting used to outside',
    kind: 'hardenOff',
    head: 'used to .. outside|outdoors|sun|cold|wind|weather|open|chill|elements|it',
    shape: 'subject',
    when: (p, f) =>
      namesPlant(p) &&
      p.some(
        (piece) =>
          // "To get them used to the cold": what they were put there for.
          (/^(?:them|those|these|it)$/.test(wordAt(p, f - 1)) && wordAt(p, f - 2) === 'get') ||
          (piece.is === 'word' && /^(?:outside|outdoors|out|outdoor)$/.test(piece.text)) ||
          (piece.is === 'place' && /\bframe$/.test(piece.place)),
      ),
    phrasings: ['stood the Salt Harrier in the porch to get them used to the cold before planting'],
    mustNot: ['the Salt Harrier have got used to the cold'],
  },
  {
    name: 'accustoming <plant> to outside',
    kind: 'hardenOff',
    head: 'accustom|accustoming|accustomed .. to the? outside|outdoors|sun|cold|wind|open|weather|elements',
    shape: 'object',
    when: namesPlant,
    phrasings: ['accustomed the Salt Harrier to the open today'],
  },
  {
    name: '<plant> getting a few hours outside each day',
    kind: 'hardenOff',
    head: 'hours|hrs|hour .. outside|outdoors|out each|every|a|per day|morning|afternoon',
    shape: 'subject',
    when: (p, f) => p.slice(0, f).some(({ is }) => is === 'plant') && f < 10,
    unless: (p, f) =>
      p.slice(0, f).some((_, at) => /^(?:need|needs|want|wants|should|could|will)$/.test(wordAt(p, at))),
    phrasings: ['the Salt Harrier are getting a few hours of air outside each day now'],
    mustNot: ['the Salt Harrier need two hours outside each day'],
  },
  {
    name: 'easing <plant> into life outside',
    kind: 'hardenOff',
    head: 'easing|eased|introducing|introduced|breaking .. outside|outdoors|outdoor|open|fresh|elements|weather',
    shape: 'object',
    when: (p, f, t) =>
      p.slice(f, t).some(({ is }) => is === 'plant') || /^(?:them|these|those)$/.test(wordAt(p, f + 1)),
    phrasings: [
      'began easing the Salt Harrier into life outside today, an hour on the deck to start',
      'started introducing the Salt Harrier to the fresh air',
      'eased the Salt Harrier outside',
    ],
    mustNot: [
      'eased the lid off the Salt Harrier outside',
      'must begin easing the Salt Harrier into life outside',
    ],
    unless: (p, f, t) =>
      p
        .slice(f, t)
        .some(
          (_, n) =>
            /^(?:lid|pots?|trays?|off)$/.test(wordAt(p, f + n)) ||
            (wordAt(p, f + n) === 'out' && wordAt(p, f + n + 1) === 'of'),
        ),
  },
  {
    name: 'out to harden',
    phrasings: ['Salt Harrier out to harden', 'everything outside to harden'],
    kind: 'hardenOff',
    head: 'to start|begin|get? harden|hardening|toughen|toughening|acclimatise|acclimatising|acclimatize|acclimate',
    shape: 'subject',
    unless: (p, f) =>
      /^(?:ready|need|needs|want|wants|time|due|about|going|have|has|enough|safe|early|late)$/.test(
        wordAt(p, f - 1),
      ) || [2, 3].some((n) => wordAt(p, f - n) === 'too'),
    mustNot: ['Salt Harrier ready to toughen up', 'Salt Harrier still too soft to harden off'],
    when: (p) =>
      namesPlant(p) ||
      p.some(
        (piece) =>
          (piece.is === 'word' && THEM.test(piece.text)) ||
          (piece.is === 'count' && piece.quantity.whole === 'all'),
      ),
  },
  {
    name: 'acclimatising <plant>',
    kind: 'hardenOff',
    head: 'acclimatise~|acclimatize~|acclimate~|wean~',
    shape: 'object',
    when: (p, f, t) => follows(p, t, 'plant') || precedes(p, f, 6, 'plant', 'word'),
  },
  {
    name: '<plant> out to toughen up',
    kind: 'hardenOff',
    head: 'out|outside .. toughen|harden up|off',
    shape: 'subject',
  },
  { name: 'toughening up <plant>', kind: 'hardenOff', head: 'toughen~ up', shape: 'object' },
];
