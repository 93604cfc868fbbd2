/** Aired: "opened the vents", "lid off", "sides up". */
import type { Piece } from '../../pieces/pieces.js';
import { closeBehind, follows, followsWord, precedes, type Rule, wordAt } from '../rule.js';
import { isWhole } from '../stand-ins.js';
import { bare, isOpenedOrLaid, leftByOthers, SOMEBODY, verb } from './telling.js';

/** "Somebody opened the vents". */
const byOthers = (pieces: readonly Piece[], from: number): boolean =>
  SOMEBODY.test(wordAt(pieces, from - 1)) || leftByOthers(pieces, from);

/** "Minus 3 when I lifted the lid": when something was seen. */
const whenIDid = (pieces: readonly Piece[], from: number): boolean =>
  /^(?:i|we)$/.test(wordAt(pieces, from - 1)) && wordAt(pieces, from - 2) === 'when';

/** "Opened both doors to let some air through": why, behind what was opened. */
const isWhy = (pieces: readonly Piece[], from: number): boolean =>
  wordAt(pieces, from - 1) === 'to' &&
  pieces
    .slice(0, from)
    .some(
      (piece) =>
        piece.is === 'word' &&
        /^(?:opened|open|opening|propped|cracked|lifted|raised|tilted|wedged|ajar|rolled|wound|unzipped)$/.test(
          piece.text,
        ),
    );

/** "Watered the propagator, then opened it": what was tended just before. */
function isPlaceTended(pieces: readonly Piece[], from: number): boolean {
  let at = from - 1;
  while (
    pieces[at]?.is === 'when' ||
    pieces[at]?.is === 'break' ||
    /^(?:and|then|also|i|we)$/.test(wordAt(pieces, at))
  )
    at--;
  if (pieces[at]?.is !== 'place') return false;
  const tended = pieces[/^(?:the|my|our)$/.test(wordAt(pieces, at - 1)) ? at - 2 : at - 1];
  return tended?.is === 'word' && /^(?:water|mist|spray|feed|shade|damp)$/.test(tended.verb?.lemma ?? '');
}

const OPENED = /^(?:lids?|lid's|vents?|windows?|covers?|cover's|lights?|dome|hatch)$/;

export const vented: readonly Rule[] = [
  verb('vent ventilate air', 'vent', 'vented <place>'),
  {
    name: 'opened the vents',
    kind: 'tend',
    head: 'open~past|prop~past|crack~past|throw~past|lift~past|raise~past|tilt~past|wedge~past|leave~past .. vents|vent|lid|lids|windows|window|door|doors|lights|flaps|sides|tops|lantern|louvres',
    shape: 'object',
    care: 'vent',
    // "Lifted the lid and there was mould on two": what was seen.
    unless: (p, f, t) =>
      whenIDid(p, f) ||
      byOthers(p, f) ||
      (/^lift/.test(wordAt(p, f)) &&
        wordAt(p, t) === 'and' &&
        /^(?:there|found|saw)$/.test(wordAt(p, t + 1))),
  },
  {
    name: 'opened up both ends of <place>',
    kind: 'tend',
    head: 'open~past|prop~past up? both|the|one|<count> ends|end|sides|doors',
    shape: 'object',
    care: 'vent',
    phrasings: ['opened up both ends of the polytunnel to let some air through'],
  },
  {
    name: 'lid steaming up, propped it open',
    kind: 'tend',
    head: 'prop~past|crack~past|wedge~past|lift~past it|that|them open|up|ajar',
    shape: 'object',
    care: 'vent',
    when: (p, f) => p.slice(0, f).some((piece) => piece.is === 'word' && OPENED.test(piece.text)),
    phrasings: ["lid's been steaming up so propped it open a crack"],
    mustNot: ['jar of hormone powder was stuck so propped it open'],
  },
  {
    name: 'watered <place> and opened it up',
    kind: 'tend',
    head: 'open~past|prop~past it|that up|wide|out?',
    shape: 'object',
    care: 'vent',
    when: (p, f) => isPlaceTended(p, f),
    phrasings: ['watered the propagator and opened it up a bit'],
    mustNot: ['carried the parcel to the propagator and opened it up'],
  },
  {
    name: 'opened up <place>',
    kind: 'tend',
    head: 'open~past up? the|my? <place>',
    shape: 'object',
    care: 'vent',
    unless: byOthers,
  },
  {
    name: 'opened everything up in <place>',
    kind: 'tend',
    head: 'open~past|throw~past up? <count> up|open? wide?',
    shape: 'object',
    care: 'vent',
    when: (p, f, t) =>
      p.slice(f, t).some(isWhole) && closeBehind(p, t, 'place') && (t > f + 2 || wordAt(p, f) === 'opened'),
    unless: byOthers,
    phrasings: [
      'opened everything up in the greenhouse to let some air through',
      'threw everything open in the greenhouse',
    ],
    mustNot: ['opened everything up in the post this morning', 'threw everything in the greenhouse'],
  },
  {
    name: 'cracked the roof lights',
    kind: 'tend',
    head: 'open~past|crack~past|prop~past|lift~past|raise~past up? the|both|all? <place>',
    shape: 'object',
    care: 'vent',
    when: (p, _f, t) => isOpenedOrLaid(p[t - 1]),
    unless: byOthers,
    phrasings: ['cracked the roof lights in the greenhouse'],
    mustNot: ['the wind opened the roof lights in the greenhouse'],
  },
  {
    name: 'made the window open',
    kind: 'tend',
    head: 'make~past|had|have .. window|windows|door|doors|vent|vents|lid open',
    shape: 'object',
    care: 'vent',
    unless: byOthers,
    phrasings: ['I have made the window open in the greenhouse'],
    mustNot: ['the wind had the door open in the greenhouse'],
  },
  {
    name: 'propped <place> open',
    kind: 'tend',
    head: 'prop~past|wedge~past|throw~past|crack~past the|my? <place> wide? open|ajar|up',
    shape: 'object',
    care: 'vent',
    unless: byOthers,
    phrasings: ['propped the cold frame open'],
    mustNot: ['the wind threw the cold frame open'],
  },
  {
    name: 'rolled up the sides on <place>',
    kind: 'tend',
    head: 'rolled|wound|ran|turned|switched|kicked|flicked|put up|on? the|both|an? extractor|exhaust|circulation? sides|side|flaps|vents|fan|fans on?',
    shape: 'object',
    care: 'vent',
    when: (p, _f, t) => follows(p, t, 'place') || precedes(p, t, 8, 'place'),
    unless: byOthers,
    phrasings: ['rolled up the sides on the polytunnel', 'ran the exhaust fan in the greenhouse for an hour'],
  },
  {
    name: 'vents open',
    kind: 'tend',
    head: 'vents|vent|lid|lids|doors|door|lights|windows are|is|all|now? open|opened|full|up|ajar|wide|cracked|propped',
    shape: 'object',
    care: 'vent',
    unless: leftByOthers,
    phrasings: ['the vents are open in the greenhouse'],
    mustNot: ['4 Salt Harrier died, somebody left the vent open', 'are the vents open in the greenhouse?'],
  },
  {
    name: 'sides up',
    phrasings: ['greenhouse sides up'],
    kind: 'tend',
    head: 'sides|side|doors|door|flaps|flap rolled? up',
    shape: 'object',
    care: 'vent',
    when: (p) => p.some(({ is }) => is === 'place'),
  },
  {
    name: 'door left open',
    kind: 'tend',
    head: 'vents|vent|lid|lids|doors|door|lights|windows|window left|kept|held|wedged|standing open|ajar|up',
    shape: 'object',
    care: 'vent',
    when: (p, f, t) => precedes(p, f, 3, 'place') || follows(p, t, 'place'),
    unless: (p, f, t) =>
      leftByOthers(p, f) ||
      followsWord(p, t, /^(?:by|overnight|mistake|accident)$/) ||
      /^(?:died|lost|dead)$/.test(wordAt(p, 0)),
    phrasings: ['greenhouse door left open to cool it'],
    mustNot: ['greenhouse door left open by somebody'],
  },
  {
    name: 'lid off',
    kind: 'tend',
    head: 'lid|lids off',
    shape: 'object',
    care: 'vent',
    unless: leftByOthers,
  },
  {
    name: 'took the lid off',
    kind: 'tend',
    head: 'take~past|pull~past|whip~past|remove~past|pop~past|lift~past .. lid|lids off?',
    shape: 'object',
    care: 'vent',
    unless: (p, f) => whenIDid(p, f) || byOthers(p, f),
  },
  {
    name: 'gave <place> some air',
    kind: 'tend',
    head: 'give~past|give~ing|let~ .. air|airing|ventilation|breather|blow',
    shape: 'object',
    care: 'vent',
    unless: isWhy,
    phrasings: ['gave the greenhouse some air', 'had to let some air into the greenhouse'],
  },
  bare('vent', 'vent'),
];
