/** Plants that died, in plain words and in the trade's jokes: "keeled over", "didn't make it", "kicked the bucket". */
import type { Piece } from '../../pieces/pieces.js';
import { closeBehind, endsAt, precedes, type Rule, wordAt } from '../rule.js';
import { counted, isOnlyPlantBefore } from './counted.js';
import { mourned } from './mourned.js';
import { cameToNothing } from './to-nothing.js';

/** What only looks so may live. */
const LOOKS = /^(?:look|looks|looked|looking|seem|seems|seemed|feel|apparently|as)$/;

/** Of these words nobody asks whether the plants may come round. */
const FOR_GOOD = /^(?:perished|croaked|cooked|fried|frazzled|drowned|shrivelled|withered|succumbed|expired)$/;

/** "Received 20 plugs, six dead on arrival"; of those that were sent elsewhere the ledger holds none any more. */
const onArrival = (pieces: readonly Piece[], from: number, to: number): boolean =>
  wordAt(pieces, to) === 'on' &&
  wordAt(pieces, to + 1) === 'arrival' &&
  precedes(pieces, from, 3, 'count') &&
  pieces
    .slice(0, from)
    .some(
      (piece) => piece.is === 'word' && /^(?:received|arrived|came|delivered|delivery)$/.test(piece.text),
    );

/** "Dead chuffed", ", dead early this year": very. */
const isVery = (pieces: readonly Piece[], from: number, to: number): boolean => {
  if (wordAt(pieces, from) !== 'dead') return false;
  const next = pieces[to];
  return next?.is === 'when'
    ? pieces[from - 1]?.is === 'break' && /^(?:early|late)/.test(next.when.words)
    : /^(?:early|late|easy|good|keen|chuffed|pleased|happy|proud|slow|quick|fast|simple|nice|lovely|cold|warm|hot|busy|tired|strong|healthy|leggy|straight|right)$/.test(
        wordAt(pieces, to),
      );
};

/** "Dead on the bench": a place, and no "dead on their feet". */
const isWhereTheyLie = (pieces: readonly Piece[], to: number): boolean =>
  wordAt(pieces, to) === 'on' &&
  [1, 2].some(
    (n) => pieces[to + n]?.is === 'place' || /^(?:bench|sill|tray|shelf)$/.test(wordAt(pieces, to + n)),
  );

/** "4 Salt Harrier, dropped one, it's toast": that one, and not the four. */
const isOneOfThem = (pieces: readonly Piece[], from: number): boolean => {
  const at = from - 3;
  const one = pieces[at];
  return (
    /^(?:it's|that's|he's|she's)$/.test(wordAt(pieces, from - 1)) &&
    pieces[from - 2]?.is === 'break' &&
    one?.is === 'count' &&
    one.quantity.value === 1 &&
    pieces.slice(0, at).some((piece) => piece.is === 'count' && piece.quantity.value !== 1)
  );
};

/** "The two dead ones are still in the pot": told before. */
const isToldBefore = (pieces: readonly Piece[], from: number, to: number): boolean =>
  /^(?:the|those|these)$/.test(wordAt(pieces, from - 2)) &&
  /^(?:ones?|plants?|cuttings?)$/.test(wordAt(pieces, to)) &&
  /^(?:are|were|is|was)$/.test(wordAt(pieces, to + 1)) &&
  !pieces.some(({ is }) => is === 'plant');

export const died: readonly Rule[] = [
  {
    name: '<count> <plant> died',
    kind: 'loss',
    head: 'die~',
    shape: 'subject',
    // "Are dying" may come round; "are after dying" is how Ireland says that they have died.
    unless: (p, f, t) =>
      /^(?:down|to|back|for)$/.test(wordAt(p, t)) ||
      (wordAt(p, f) === 'dying' && wordAt(p, f - 1) !== 'after'),
    phrasings: ['three of the Salt Harrier are after dying on me'],
    mustNot: ["you have 3 Salt Harrier in the greenhouse but they're dying"],
  },
  {
    name: '<count> <plant> dead',
    kind: 'loss',
    head: 'dead|goners|goner|deceased|kaput|toast|perished|brown?',
    shape: 'subject',
    when: (p, f, t) => wordAt(p, f) !== 'brown' && !LOOKS.test(wordAt(p, f - 1)) && !isVery(p, f, t),
    phrasings: [
      'five Salt Harrier dead',
      '6 Salt Harrier dead on the bench',
      'received 20 plugs of Salt Harrier, six dead on arrival',
    ],
    mustNot: [
      'sent 20 Salt Harrier to Doreen, six dead on arrival',
      'three of the Salt Harrier look dead',
      'the two dead ones are still in the pot',
      'the Salt Harrier seemed dead but they have come round',
      "oops 4 Salt Harrier, dropped one, it's toast",
      'first buds on the Salt Harrier, dead early this year',
    ],
    unless: (p, f, t) =>
      isOneOfThem(p, f) ||
      isToldBefore(p, f, t) ||
      (!onArrival(p, f, t) &&
        !isWhereTheyLie(p, t) &&
        /^(?:on|headed|heading|chuffed|pleased|good|leaf|leaves|mice|mouse|rats?|slugs?|snails?|bees?|birds?|flies|fly|wasps?|worms?|batter(?:y|ies)|bulbs?|heads|head|easy|tired|line|end|proud|slow|excited)$/.test(
          wordAt(p, t),
        )),
  },
  {
    name: 'rip <count> <plant>',
    kind: 'loss',
    head: 'rip',
    shape: 'object',
    when: (p, f, t) => f === 0 && closeBehind(p, t, 'plant', 'count'),
  },
  {
    name: '<count> <plant> keeled over',
    kind: 'loss',
    head: 'keel~|tip~past|curl~past|give~past over|up',
    shape: 'subject',
    when: (p, f, t) =>
      /^keel/.test(wordAt(p, f)) ||
      (precedes(p, f, 5, 'count') &&
        (/^curled/.test(wordAt(p, f)) ||
          (/^(?:gave|given)/.test(wordAt(p, f)) && (endsAt(p, t) || wordAt(p, t) === 'the')))),
    phrasings: ['five Salt Harrier keeled over', 'five gave up the ghost', 'five gave up'],
    mustNot: ['five Salt Harrier gave up flowering'],
  },
  {
    name: '<count> perished',
    kind: 'loss',
    head: 'perish~|croak~|collapse~past|shrivel~past|wither~past|succumb~|fail~past|frazzle~past|fry~past|drown~past|wilt~past|cook~past|scorch~past|bake~past|expire~past|conk~past|flop~past|crisp~past|dwindle~past',
    shape: 'subject',
    phrasings: [
      'five Salt Harrier perished',
      'three of the Salt Harrier crisped to nothing',
      'three Salt Harrier fried to a crisp in the porch',
      'three Salt Harrier baked to death',
      'the whole tray of Salt Harrier has cooked',
    ],
    mustNot: [
      'three Salt Harrier failed to root',
      'three Salt Harrier crisped at the edges',
      'Salt Harrier looking poorly, leaves all scorched down the one side',
    ],
    when: (p, f, t) =>
      (counted(p, f, t) || (isOnlyPlantBefore(p, f) && FOR_GOOD.test(wordAt(p, f)))) &&
      // "All flopped this evening": thirsty, not dead.
      !(
        /^flop/.test(wordAt(p, f)) &&
        p.slice(0, f).some((piece) => piece.is === 'count' && piece.quantity.whole === 'all')
      ),
    unless: (p, f, t) =>
      // "Crisped at the edges" may live.
      (wordAt(p, t) === 'at' && /^(?:edges?|tips?|margins?)$/.test(wordAt(p, t + 2))) ||
      (/^to$/.test(wordAt(p, t)) &&
        !/^succumb/.test(wordAt(p, f)) &&
        !cameToNothing(p, t + 1) &&
        !/^(?:rot|botrytis|mould|frost|the|slugs|black|blackleg)$/.test(wordAt(p, t + 1))) ||
      (/^dwindle/.test(wordAt(p, f)) && !cameToNothing(p, t + 1)),
  },
  { name: '<count> kicked the bucket', kind: 'loss', head: 'kicked|kick the bucket', shape: 'subject' },
  {
    name: '<plant> have had it',
    kind: 'loss',
    head: 'have~ had it',
    shape: 'subject',
    when: (p, f, t) => precedes(p, f, 5, 'plant', 'count') && endsAt(p, t),
    phrasings: ['the Salt Harrier have had it, every single one', 'two Salt Harrier have had it'],
    mustNot: ["I've had it with the Salt Harrier"],
  },
  ...mourned,
  { name: '<count> turned up their toes', kind: 'loss', head: 'turn~past up their toes', shape: 'subject' },
  { name: '<count> popped their clogs', kind: 'loss', head: 'popped .. clogs', shape: 'subject' },
  {
    name: "<count> didn't make it",
    phrasings: ["five Salt Harrier didn't make it"],
    kind: 'loss',
    head: "didn't|not|never|hasn't|haven't make~ it",
    shape: 'subject',
    // "Watered the greenhouse but didn't make it to the porch": how far the grower came.
    unless: (p, f, t) =>
      /^(?:to|as|round|over|back|down|up|out|outside|into|onto|home)$/.test(wordAt(p, t)) &&
      !precedes(p, f, 3, 'plant', 'count'),
    mustNot: [
      "watered the greenhouse but didn't make it to the propagator",
      'the Salt Harrier still in the greenhouse, never made it out',
    ],
  },
  {
    name: "<count> didn't survive",
    phrasings: ['two of the Salt Harrier did not survive'],
    kind: 'loss',
    head: "didn't|not|never survive|survived",
    shape: 'subject',
  },
  {
    name: "<count> didn't pull through",
    kind: 'loss',
    head: "didn't|not|never pull|pulled|come|came through|round",
    shape: 'subject',
    when: (p, f) => precedes(p, f, 6, 'count'),
    phrasings: ["one of my Salt Harrier didn't pull through", 'two Salt Harrier never came round'],
    mustNot: ["Edna didn't come round for the two Salt Harrier", 'two Salt Harrier pulled through'],
  },
  {
    name: '<count> <plant> beyond saving',
    kind: 'loss',
    head: 'beyond|past saving|help|hope|rescue|redemption|salvation',
    shape: 'subject',
    when: (p, f, t) => precedes(p, f, 6, 'count') && endsAt(p, t),
    phrasings: ['four of the Salt Harrier are beyond saving', 'two Salt Harrier past help'],
    mustNot: ['two of the Salt Harrier are past the gate'],
  },
  {
    name: 'rest in peace, <count> <plant>',
    kind: 'loss',
    head: 'rip',
    shape: 'subject',
    when: (p, f, t) =>
      p.slice(0, f).some(({ is }) => is === 'plant') &&
      (p.slice(0, f).some(({ is }) => is === 'count') || (p[t]?.is === 'count' && endsAt(p, t + 1))),
    phrasings: ['Salt Harrier 2 RIP', 'three Salt Harrier, RIP', 'Salt Harrier: rip two'],
    mustNot: ['Salt Harrier: rip two labels off'],
  },
  {
    name: 'none of <plant> survived',
    kind: 'loss',
    head: 'survive~past|make~past|pull~past|come~past|live~past it|through?',
    shape: 'subject',
    count: 'all',
    when: (p, f, t) =>
      (t > f + 1 || /^(?:survived|lived)$/.test(wordAt(p, f))) &&
      p
        .slice(Math.max(0, f - 6), f)
        .some((piece) => piece.is === 'count' && piece.quantity.value === 0 && !piece.quantity.vague),
    phrasings: ['none of the Salt Harrier survived', 'not one of the Salt Harrier made it'],
    mustNot: ['ten of the Salt Harrier survived', 'none of the Salt Harrier have roots'],
  },
  {
    name: '<count> were duds',
    kind: 'loss',
    head: 'be~past duds|useless|goners|hopeless',
    shape: 'subject',
    when: (p, f) => precedes(p, f, 4, 'count'),
    phrasings: ['potted up 20 Salt Harrier into 9cm, 2 were duds'],
    mustNot: ['the Salt Harrier were hopeless to label'],
  },
  { name: '<count> bit the dust', kind: 'loss', head: 'bit|bitten|bites|biting the dust', shape: 'subject' },
  {
    name: '<count> <plant> are no more',
    kind: 'loss',
    head: 'be~ no more|longer with? us?',
    shape: 'subject',
    when: (p, f, t) => precedes(p, f, 5, 'count') && endsAt(p, t) && wordAt(p, t - 1) !== 'longer',
    phrasings: ['four of the Salt Harrier are no more', 'two of the Salt Harrier are no longer with us'],
    mustNot: ['there are no more Salt Harrier', 'the Salt Harrier are no more trouble'],
  },
  {
    name: 'overwatered <count> <plant> to death',
    kind: 'loss',
    head: 'overwatered|watered|loved|cooked|baked|fried|scorched|boiled|roasted|frozen|froze .. to death',
    shape: 'object',
    when: (p, f, t) => p.slice(f, t).some(({ is }) => is === 'plant' || is === 'count'),
    phrasings: ['overwatered one Salt Harrier to death', 'I loved two Salt Harrier to death'],
    mustNot: ['bored to death watering the Salt Harrier'],
  },
];
