/** Carried to another place. */
import type { Piece } from '../pieces.js';
import { isReceiver } from './other-people.js';
import { groundAt } from './plant-out.js';
import { follows, followsWord, precedes, type Rule, wordAt } from './rule.js';
import { THEM } from './stand-ins.js';

const OUTSIDE = /^(?:outside|indoors|inside|outdoors|under|upstairs|downstairs)$/;
const toPlace = (pieces: readonly Piece[], _from: number, to: number): boolean =>
  follows(pieces, to, 'place') || followsWord(pieces, to, OUTSIDE);
const plantLike = (pieces: readonly Piece[], from: number, to: number): boolean =>
  (follows(pieces, to, 'plant', 'count') ||
    followsWord(pieces, to, THEM) ||
    precedes(pieces, from, 8, 'plant', 'count')) &&
  toPlace(pieces, from, to);
const standing = (pieces: readonly Piece[], from: number, to: number): boolean =>
  (precedes(pieces, from, 8, 'plant') ||
    pieces.slice(0, from).some((piece) => piece.is === 'count' && piece.quantity.whole === 'all')) &&
  toPlace(pieces, from, to) &&
  !pieces
    .slice(from)
    .some(
      (piece) =>
        (piece.is === 'word' && /^(?:bin|bed|border|ground|heap)$/.test(piece.text)) ||
        (piece.is === 'place' && /(?<!standing )\b(?:bed|border|ground)$/.test(piece.place)),
    );

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

export const moveRules: readonly Rule[] = [
  {
    name: 'moved <plant> to <place>',
    kind: 'move',
    sense: 'plain move',
    head: 'move~past|shift~past|carry~past|transfer~past|relocate~past|lug~past|haul~past|drag~past|cart~past|evict~past|turf~past|trundle~past|trolley~past|wheel~past|schlep~past|banish~past|promote~past|demote~past|migrate~past|switch~past|ferry~past|shuffle~past|shunt~past|slide~past',
    shape: 'object',
    unless: (p, _f, t) =>
      (/^(?:on|house|in)$/.test(wordAt(p, t)) && !follows(p, t, 'plant')) || isNextInTurn(p, t),
    mustNot: ['moved on to the Salt Harrier next'],
  },
  {
    name: 'removed <plant> from <place> to <place>',
    kind: 'move',
    head: 'remove~past|kick~past|throw~past|chuck~past|toss~past|heave~past|hoick~past',
    shape: 'object',
    when: (p, f, t) =>
      plantLike(p, f, t) &&
      p
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
      !p
        .slice(t)
        .some(
          (piece) =>
            piece.is === 'word' &&
            /^(?:gone|brown|slimy|mushy|rotten|rotted|dead|mouldy|black)$/.test(piece.text),
        ),
    phrasings: [
      'removed the Salt Harrier from the cold frame to the greenhouse',
      'threw four Tallow Bell into the shed',
    ],
    mustNot: ['threw four Tallow Bell on the compost heap'],
  },
  {
    name: '<plant> came out of <place> into <place>',
    kind: 'move',
    head: 'come~|came|go~|gone out? of|from|off the? <place>',
    shape: 'subject',
    when: (p, f, t) => precedes(p, f, 8, 'plant') && p.slice(t).some(({ is }) => is === 'place'),
    phrasings: ['the Salt Harrier have come out of the propagator and are in the cold frame'],
  },
  {
    name: 'everything that was in <place> is in <place> now',
    kind: 'move',
    sense: 'emptying',
    head: 'that|which was|were .. is|are',
    shape: 'subject',
    when: (p, f, t) => {
      const [from, to] = [p.slice(f, t).find(({ is }) => is === 'place'), p.slice(t, t + 4)];
      const place = to.find(({ is }) => is === 'place');
      const isIn = /^(?:in|on|under)$/;
      return (
        (p[f - 1]?.is === 'count' || p[f - 1]?.is === 'plant') &&
        from?.is === 'place' &&
        isIn.test(from.prep ?? '') &&
        place?.is === 'place' &&
        isIn.test(place.prep ?? '') &&
        (p.slice(t).some(({ is }) => is === 'when') || followsWord(p, t, /^now$/))
      );
    },
    phrasings: ['everything that was in the propagator is in the cold frame since Thursday'],
    mustNot: [
      'the Salt Harrier that were in the propagator are rooted now',
      'everything that was in the propagator is dead since Thursday',
    ],
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
    head: 'bring~past|fetch~past in|inside|indoors',
    shape: 'object',
    when: (p, _f, t) =>
      p[t]?.is !== 'place' && follows(p, t, 'plant') && !followsWord(p, t, /^(?:to|into|from|plugs?)$/),
    phrasings: ['brought in all the Salt Harrier on account of the frost'],
  },
  {
    name: 'brought <plant> back in',
    kind: 'move',
    sense: 'indoors',
    head: 'bring~past|fetch~past .. back? in|inside|indoors',
    shape: 'object',
    when: (p, f, t) =>
      p
        .slice(f, t)
        .some(
          (piece) =>
            piece.is === 'plant' || piece.is === 'count' || (piece.is === 'word' && THEM.test(piece.text)),
        ) &&
      (p[t] === undefined ||
        p[t]?.is === 'break' ||
        p[t]?.is === 'when' ||
        /^(?:for|because|as|before|and)$/.test(wordAt(p, t))),
    phrasings: [
      'brought the Salt Harrier back in, frost tonight',
      'brought them back in for the night',
      'brought the Salt Harrier in last night',
    ],
    mustNot: ['brought the Salt Harrier back in the car'],
  },
  {
    name: 'put <plant> in <place>',
    kind: 'move',
    head: 'put~|pop~past|stick~past|place~past|set~past|stand~past|bung~past|shove~past|plonk~past|tuck~past|chuck~past|whack~past|pop~base|sling~past|take~past|get~past|send~past',
    shape: 'object',
    when: plantLike,
    unless: (p, f, t) =>
      isThing(p, t) ||
      p[t]?.is === 'medium' ||
      // "I've fuchsias stood out on the step": where they are.
      (wordAt(p, f) === 'stood' &&
        p[f - 1]?.is === 'plant' &&
        p
          .slice(Math.max(0, f - 4), f)
          .some((piece) => piece.is === 'word' && /^(?:i've|we've|have|with)$/.test(piece.text))) ||
      (/^(?:down|up)$/.test(wordAt(p, t)) && wordAt(p, t + 1) === 'to') ||
      (/^(?:got|get|took|taken|sent)$/.test(wordAt(p, f)) &&
        !followsWord(p, t, /^(?:to|into|onto|outside|indoors|inside|out|in)$/)) ||
      followsWord(
        p,
        t,
        /^(?:fleece|lid|cover|cutting|cuttings|planted|potted|watered|rooted|sown|newspaper|net|bag)$/,
      ),
  },
  {
    name: 'took <plant> to <place>',
    kind: 'move',
    head: 'take~past them|em|those|it|these',
    shape: 'object',
    when: toPlace,
  },
  {
    name: 'emptied <place> into <place>',
    kind: 'move',
    sense: 'emptying',
    head: 'empty~past|clear~past',
    shape: 'object',
    when: (p, _f, t) => follows(p, t, 'place') && followsWord(p, t, /^(?:into|to|onto)$/),
  },
  {
    name: '<plant> came in to <place>',
    kind: 'move',
    head: 'come~past|come|came in|inside|indoors|back|up|down|over|across',
    shape: 'subject',
    when: (p, f, t) =>
      standing(p, f, t) &&
      p.slice(t).some((piece) => piece.is === 'place' && piece.prep === 'off') &&
      p.slice(t).some((piece) => piece.is === 'place' && /^(?:to|into|onto)$/.test(piece.prep ?? '')),
    phrasings: ['half the Salt Harrier have come in off the porch to the windowsill'],
  },
  {
    name: '<plant> went to <place>',
    kind: 'move',
    head: 'go~past|gone|go~ over|across|back|off|up|down|out? into|to|in|out|onto|on|under|back|up|down',
    shape: 'subject',
    when: standing,
    unless: (p, _f, t) => p.slice(t, t + 2).some(isReceiver),
  },
  {
    name: 'everything that was in <place> is sitting on <place>',
    kind: 'move',
    head: 'be~ sitting|standing|living|sat in|on|under|at',
    shape: 'subject',
    when: (p, f, t) =>
      standing(p, f, t) &&
      p.slice(0, f).some((piece) => piece.is === 'word' && /^(?:was|were|stood|lived)$/.test(piece.text)),
    phrasings: ['everything that was in the propagator is sitting on the windowsill as of this morning'],
    mustNot: ['the Salt Harrier is sitting on the windowsill'],
  },
  {
    name: '<plant> live in <place>',
    kind: 'move',
    head: 'live~|lives|living in|on|under|at',
    shape: 'subject',
    when: standing,
    // "Potted on the Salt Harrier that were living in the porch": which ones.
    unless: (p, f) =>
      p
        .slice(Math.max(0, f - 2), f)
        .some((piece) => piece.is === 'word' && /^(?:that|which)$/.test(piece.text)),
  },
  {
    name: '<plant> are in <place> now',
    kind: 'move',
    head: 'be~ out|up|down|over|back? in|on|under|at the|my? <place> now|<when>',
    shape: 'subject',
    when: (p, f) => p.slice(0, f).some(({ is }) => is === 'plant'),
    // "Pinched the Salt Harrier that are in the tunnel yesterday": which ones.
    unless: (p, f, t) => /^(?:that|which)$/.test(wordAt(p, f - 1)) || groundAt(p, t - 2),
  },
  {
    name: 'everything out of <place> into <place>',
    kind: 'move',
    head: 'everything|all|<count> out|from .. into|to|onto',
    shape: 'object',
    faint: true,
    when: (p) => p.filter(({ is }) => is === 'place').length > 1,
  },
  {
    name: '<plant> now in <place>',
    phrasings: ['everything in the propagator is now in the greenhouse'],
    kind: 'move',
    head: 'now in|on|under|at|outside|inside|indoors',
    shape: 'subject',
    when: (p, f, t) =>
      (precedes(p, f, 5, 'plant') ||
        p.slice(0, f).some((piece) => piece.is === 'count' && piece.quantity.whole === 'all')) &&
      (p[t]?.is === 'place' || wordAt(p, t) === 'the' || OUTSIDE.test(wordAt(p, t - 1))),
  },
  {
    name: '<plant> to <place>',
    kind: 'move',
    head: 'to|into|onto|off the? <place>',
    shape: 'subject',
    faint: true,
    // Into a border is planted out.
    unless: (p, f, t) => {
      const place = p[t - 1];
      return wordAt(p, f) === 'into' && place?.is === 'place' && /\bborder$/.test(place.place);
    },
    when: (p, f) =>
      p
        .slice(0, f)
        .some((piece) => piece.is === 'plant' || (piece.is === 'count' && piece.quantity.whole === 'all')) &&
      !p
        .slice(0, f)
        .some(
          (piece) =>
            piece.is === 'word' && piece.verb !== undefined && !/^(?:mist|pot|water)$/.test(piece.text),
        ) &&
      !p.some(
        (piece) =>
          piece.is === 'word' &&
          /^(?:cuttings|cutting|next|close|want|need|going|how|why|will|tomorrow)$/.test(piece.text),
      ),
  },
];
