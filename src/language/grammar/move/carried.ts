/** Plants carried: "moved the Salt Harrier to the greenhouse", "brought them in". */
import type { Piece } from '../../pieces/pieces.js';
import { RUINED } from '../loss/ruined.js';
import {
  endsAt,
  follows,
  followsInAct,
  followsWord,
  precedes,
  type Rule,
  untilNextDeed,
  wordAt,
} from '../rule.js';
import { isWhole, THEM } from '../stand-ins.js';
import { gotDone, gotSpoilt } from './got.js';
import { toPlace } from './to-place.js';
import { CARRY, PUT } from './verbs.js';

/** Plants, or a word for them, stand beside the head and a place behind. */
const plantLike = (pieces: readonly Piece[], from: number, to: number): boolean =>
  (follows(pieces, to, 'plant', 'count') ||
    followsWord(pieces, to, THEM) ||
    precedes(pieces, from, 8, 'plant', 'count')) &&
  toPlace(pieces, from, to);

/** "Moved on to the Salt Harrier next": what was looked after next. */
function isNextInTurn(pieces: readonly Piece[], to: number): boolean {
  const onto = wordAt(pieces, to) === 'onto' ? to + 1 : wordAt(pieces, to) === 'on' ? to + 2 : 0;
  if (onto === 0) return false;
  const plant = /^(?:the|my)$/.test(wordAt(pieces, onto)) ? onto + 1 : onto;
  // Heard as a number, "to" leads to an article all the same.
  return pieces[plant]?.is === 'plant' && (wordAt(pieces, onto - 1) === 'to' || plant > onto);
}

/** "Set the propagator to 20": a place itself is set, and nothing put there. */
function isThing(pieces: readonly Piece[], to: number): boolean {
  const at = /^(?:the|my|our)$/.test(wordAt(pieces, to)) ? to + 1 : to;
  const piece = pieces[at];
  return piece?.is === 'place' && piece.prep === undefined && !follows(pieces, at + 1, 'place', 'plant');
}

const isDeed = (piece: Piece | undefined): boolean => piece?.is === 'word' && piece.verb?.form === 'base';

/** "The other five", "the rest". */
const isOthers = (piece: Piece | undefined): boolean =>
  piece?.is === 'count' && (piece.quantity.besides === true || piece.quantity.whole === 'rest');

export const carried: readonly Rule[] = [
  {
    name: 'moved <plant> to <place>',
    kind: 'move',
    sense: 'plain move',
    head: CARRY,
    shape: 'object',
    unless: (p, f, t) =>
      (/^(?:on|house|in)$/.test(wordAt(p, t)) && !follows(p, t, 'plant') && !isWhole(p[t + 1])) ||
      isNextInTurn(p, t) ||
      // "The hose dragged over the Salt Harrier".
      (wordAt(p, t) === 'over' &&
        (p[t + 1]?.is === 'plant' || p[t + 2]?.is === 'plant') &&
        !follows(p, t, 'place')) ||
      // "…, that's them moved": the same once more.
      (/^(?:them|that|it|those|lot)$/.test(wordAt(p, f - 1)) &&
        endsAt(p, t) &&
        /^(?:that's|that|thats)$/.test(wordAt(p, f - 2))),
    phrasings: [
      'carried in all the plants that were on the step to the porch',
      'got the Salt Harrier shifted out to the cold frame',
    ],
    mustNot: ['moved on to the Salt Harrier next'],
  },
  {
    name: 'removed <plant> from <place> to <place>',
    kind: 'move',
    head: 'remove~past|kick~past|throw~past|chuck~past|toss~past|heave~past|hoick~past|fire~past|lob~past|fling~past',
    shape: 'object',
    when: (p, f, t) =>
      plantLike(p, f, t) &&
      // "Chucked four and carried the rest to the bench": those were carried.
      untilNextDeed(p, t)
        .slice(t)
        .some((piece) => piece.is === 'place' && /^(?:to|into|onto|in|on|under)$/.test(piece.prep ?? '')) &&
      !p
        .slice(t)
        .some(
          (piece) =>
            piece.is === 'place' &&
            /\b(?:bin|compost|heap|skip|tip|bonfire|rubbish|fire|dustbin)\b/.test(piece.place),
        ) &&
      !followsWord(p, t, /^(?:bin|compost|heap|skip|tip|bonfire|rubbish|fire|dustbin|fleece|lid|cover)$/) &&
      // "Chucked two of those on the sill, gone slimy": thrown out.
      !p.slice(t).some((piece) => piece.is === 'word' && RUINED.test(piece.text)),
    phrasings: [
      'removed the Salt Harrier from the cold frame to the greenhouse',
      'threw four Tallow Bell into the shed',
    ],
    mustNot: ['threw four Tallow Bell on the compost heap'],
  },
  {
    name: 'lifted <plant> onto <place>',
    kind: 'move',
    head: 'lift~past|raise~past',
    shape: 'object',
    when: (p, f, t) =>
      plantLike(p, f, t) &&
      p
        .slice(t, t + 8)
        .some((piece) => piece.is === 'place' && /^(?:to|into|onto|on|in)$/.test(piece.prep ?? '')) &&
      // "Lifted the tubers and put them in the shed": by the next deed.
      !p
        .slice(t, t + 4)
        .some((piece) => piece.is === 'word' && /^(?:put|stored|tucked|popped|stuck)$/.test(piece.text)),
    phrasings: [
      'lifted the Salt Harrier up onto the windowsill',
      "lost three Salt Harrier, I've the rest of them lifted up onto the windowsill",
    ],
    mustNot: ['lifted the Tallow Bell tubers', 'lifted the lid in the propagator'],
  },
  {
    name: 'swapped <plant> over to <place>',
    kind: 'move',
    head: 'swap~past|nip~past|ran|whizzed|walked .. over|across|out|round|back? to|into|onto the|my? <place>',
    shape: 'object',
    when: (p, f, t) => {
      const within = p.slice(f, t);
      return (
        within.some(({ is }) => is === 'plant') &&
        !within.some((piece) => piece.is === 'word' && /^(?:for|with|labels?|pots?)$/.test(piece.text))
      );
    },
    phrasings: [
      'swapped the Salt Harrier over to the greenhouse',
      'nipped the Salt Harrier across to the porch',
    ],
    mustNot: ['swapped the labels on the Salt Harrier over to the greenhouse'],
  },
  {
    name: 'brought <plant> into <place>',
    kind: 'move',
    head: 'bring~past|fetch~past',
    shape: 'object',
    when: plantLike,
  },
  {
    name: 'brought in <plant>',
    kind: 'move',
    sense: 'indoors',
    head: 'bring~past|fetch~past|carry~past|lug~past|haul~past in|inside|indoors',
    shape: 'object',
    when: (p, _f, t) =>
      p[t]?.is !== 'place' &&
      (follows(p, t, 'plant') || isOthers(p[t]) || (isWhole(p[t]) && follows(p, t, 'place'))) &&
      !followsWord(p, t, /^(?:to|into|from|plugs?)$/),
    phrasings: [
      'brought in all the Salt Harrier on account of the frost',
      'carried in everything that was on the step',
    ],
  },
  {
    name: 'brought <plant> back in',
    kind: 'move',
    sense: 'indoors',
    head: 'bring~past|fetch~past .. back? in|inside|indoors',
    shape: 'object',
    when: (p, f, t) =>
      (p
        .slice(f, t)
        .some(
          (piece) =>
            piece.is === 'plant' || piece.is === 'count' || (piece.is === 'word' && THEM.test(piece.text)),
        ) ||
        // "The Salt Harrier were brought in off the cold frame".
        (/^(?:was|were|been|got|all)$/.test(wordAt(p, f - 1)) && precedes(p, f, 5, 'plant'))) &&
      (p[t] === undefined ||
        p[t]?.is === 'break' ||
        p[t]?.is === 'when' ||
        /^(?:for|because|as|before|and|off|from)$/.test(wordAt(p, t))),
    phrasings: [
      'brought the Salt Harrier back in, frost tonight',
      'the Salt Harrier were brought in off the cold frame',
      'brought them back in for the night',
      'brought the Salt Harrier in last night',
    ],
    mustNot: ['brought the Salt Harrier back in the car'],
  },
  {
    name: 'put <plant> in <place>',
    kind: 'move',
    head: PUT,
    shape: 'object',
    when: plantLike,
    unless: (p, f, t) =>
      isThing(p, t) ||
      p[t]?.is === 'medium' ||
      gotSpoilt(p, f, t) ||
      gotDone(p, f, t) ||
      // "Was all set to mist the propagator when …": made ready, for another deed.
      (wordAt(p, f) === 'set' && wordAt(p, t) === 'to' && isDeed(p[t + 1])) ||
      // "Got the dahlias going in the greenhouse".
      (wordAt(p, f) === 'got' && followsWord(p, t, /^going$/)) ||
      // "I've fuchsias stood out on the step": where they are.
      (wordAt(p, f) === 'stood' &&
        p[f - 1]?.is === 'plant' &&
        p
          .slice(Math.max(0, f - 4), f)
          .some((piece) => piece.is === 'word' && /^(?:i've|we've|have|with)$/.test(piece.text))) ||
      (/^(?:down|up)$/.test(wordAt(p, t)) && wordAt(p, t + 1) === 'to') ||
      (/^(?:got|took|taken|sent)$/.test(wordAt(p, f)) &&
        !followsWord(p, t, /^(?:to|into|onto|outside|indoors|inside|out|in)$/)) ||
      followsInAct(
        p,
        t,
        /^(?:fleece|lid|cover|cutting|cuttings|planted|potted|watered|rooted|sown|newspaper|net|bag)$/,
      ),
    phrasings: [
      'took all the Salt Harrier into the greenhouse',
      'took the Salt Harrier into the greenhouse',
      'took Salt Harrier to the greenhouse',
    ],
    mustNot: [
      'was all set to mist the greenhouse when Doreen came round',
      'the Salt Harrier are all set to go in the greenhouse',
      'took 8 Salt Harrier into a pot',
      'took all the tips off the Salt Harrier into a jar',
      'the Salt Harrier got fried in the sunroom',
      'the Salt Harrier got cooked in the greenhouse',
    ],
  },
  {
    name: 'emptied <place> into <place>',
    kind: 'move',
    sense: 'emptying',
    head: 'empty~past|clear~past',
    shape: 'object',
    when: (p, _f, t) =>
      follows(p, t, 'place') && (followsWord(p, t, /^(?:into|to|onto)$/) || isAllElsewhere(p, t)),
    phrasings: [
      'cleared the greenhouse, whole lot now in the porch',
      'emptied the propagator, everything is in the porch now',
      'emptied the propagator, all moved over to the porch',
    ],
    mustNot: [
      'cleared the greenhouse, all tidy in the porch too',
      'emptied the greenhouse, everything now on the heap',
      'cleared the greenhouse, two now in the porch',
    ],
  },
];

/** "…, whole lot now in tunnel 2": where all that stood in an emptied place is now. */
function isAllElsewhere(pieces: readonly Piece[], from: number): boolean {
  const lot = pieces.findIndex((piece, at) => at > from && isWhole(piece));
  const place = pieces.findIndex(({ is }, at) => at > lot && is === 'place');
  const between = pieces.slice(lot + 1, place).map((_, n) => wordAt(pieces, lot + 1 + n));
  return (
    lot > 0 &&
    place > lot &&
    between.every((word) =>
      /^(?:is|are|has|it|of|now|in|on|to|into|under|over|across|out|back|the|my|gone|went|moved|shifted)$/.test(
        word,
      ),
    ) &&
    (between.some((word) => /^(?:now|gone|went|moved|shifted)$/.test(word)) ||
      wordAt(pieces, place + 1) === 'now')
  );
}
