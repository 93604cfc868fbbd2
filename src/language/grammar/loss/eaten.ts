/** What animals, children and feet did: "slugs had three", "two eaten by mice", "one got trodden on". */
import type { Piece } from '../../pieces/pieces.js';
import { closeBehind, endsAt, pastOf, precedes, type Rule, wordAt } from '../rule.js';
import { counted, isOnlyPlantBefore, needsPlantOrCount } from './counted.js';
import { PESTS } from './pests.js';

const ANY_PEST = PESTS.join('|');
const ANY_PEST_HAS = PESTS.map((pest) => `${pest}'s`).join('|');
/** "Vine weevil grubs", "sciarid fly". */
const YOUNG = 'fly|flies|grubs|grub|larvae|larva';
/** Behind "have" and "'s". */
const EATEN =
  'munched|scoffed|destroyed|devoured|eaten|finished|killed|nibbled|demolished|done|dug|wiped|been off|for|up|out?';

/** What pests and paws do to plants. */
const HAD = `ripped|tore|shredded|uprooted|scratched|trashed|ruined|mowed|sat|dug|${pastOf`
  have get take do eat munch scoff chomp devour nibble finish polish demolish destroy kill wipe clear
  dig break snap knock flatten wreck pull trample squash
`}`;
const SOMETHING = "something|summat|somethin|something's|summat's|critters|critter|beasties|bugs";

/** Of "been at": whether anything came of it. */
const doesHarm = (pieces: readonly Piece[], to: number): boolean =>
  !pieces
    .slice(to)
    .some(
      (piece) =>
        piece.is === 'word' &&
        /^(?:harm|damage|fine|ok|okay|survive|recover|recovered|untouched|unharmed|unscathed)$/.test(
          piece.text,
        ),
    );

/** "The slugs have been at two": what they had, unless nothing came of it. */
const haveHad = (pieces: readonly Piece[], from: number, to: number): boolean =>
  needsPlantOrCount(pieces, from, to) &&
  (wordAt(pieces, to - 1) !== 'been' || doesHarm(pieces, to)) &&
  // "Have had a go at them": they may live.
  !/^(?:go|nibble|munch|bite|chew|taste|feed|try|peck|dig)$/.test(wordAt(pieces, to + 1));

/** "Three", "three of the Salt Harrier", "all of them": of plants, and of nothing else. */
function countedAlone(pieces: readonly Piece[], from: number): boolean {
  let at = from - 1;
  while (
    pieces[at]?.is === 'plant' ||
    /^(?:of|the|my|them|those|these|more|have|has|had|just|are|is|were|was|cuttings|plants|ones|babies)$/.test(
      wordAt(pieces, at),
    )
  )
    at--;
  const count = pieces[at];
  // "SH1, three down".
  return count?.is === 'count' || (count?.is === 'break' && pieces[at - 1]?.is === 'count');
}

const isAtNight = (pieces: readonly Piece[], at: number): boolean =>
  pieces[at]?.is === 'when' || /^(?:in|over|during|by|the|without)$/.test(wordAt(pieces, at));

/** "Slug trails", "slime everywhere", "mouse droppings": what those leave that ate. */
const tracksBehind = (pieces: readonly Piece[], from: number): boolean =>
  pieces
    .slice(from)
    .some(
      (piece) =>
        piece.is === 'word' &&
        (/^(?:trails?|slime|slimy|droppings|nibbled|chewed|munched|stumps?)$/.test(piece.text) ||
          PESTS.includes(piece.text)),
    );

/** "Gone in the car", "gone to Doreen", "gone in the greenhouse". */
const isTaken = (pieces: readonly Piece[], at: number): boolean =>
  /^(?:to|with|for|on)$/.test(wordAt(pieces, at)) ||
  (/^(?:in|into|out|off|by)$/.test(wordAt(pieces, at)) &&
    pieces[at + 1]?.is !== 'when' &&
    !/^(?:night|dark)$/.test(wordAt(pieces, at + 2)));

/** "The kids took 18, six pots with three to a pot", "the kids took six home": put in to root, or carried along. */
const tookCuttings = (pieces: readonly Piece[], from: number, to: number): boolean =>
  /^(?:kids|grandson|toddler)$/.test(wordAt(pieces, from)) &&
  wordAt(pieces, to - 1) === 'took' &&
  pieces
    .slice(to)
    .some(
      (piece) =>
        /^(?:pots|cutting|medium)$/.test(piece.is) ||
        (piece.is === 'word' && /^(?:cuttings?|slips|tips|home|school|along)$/.test(piece.text)),
    );

export const eaten: readonly Rule[] = [
  {
    name: 'something ate <count> <plant>',
    kind: 'loss',
    head: `${SOMETHING} have~? eat~past|munched|scoffed|devoured|nibbled|chewed|dug|demolished`,
    shape: 'object',
    cause: 'pest',
    when: (p, f, t) => t > f + 1 && closeBehind(p, t, 'count'),
    phrasings: ['something ate three Salt Harrier', "summat's eaten two Salt Harrier down to stumps"],
    mustNot: ['something ate into the Salt Harrier label'],
  },
  {
    name: '<count> gone in the night, slug trails everywhere',
    kind: 'loss',
    head: 'gone|vanished|disappeared|missing|down|went',
    shape: 'subject',
    cause: 'pest',
    when: (p, f, t) =>
      countedAlone(p, f) && (endsAt(p, t) || isAtNight(p, t)) && tracksBehind(p, t) && !isTaken(p, t),
    phrasings: [
      'three gone in the night slug trails everywhere',
      'four Salt Harrier vanished overnight, mouse droppings on the bench',
      '2 Salt Harrier went in the night, snails',
    ],
    mustNot: [
      'three Salt Harrier gone in the car to Doreen, slugs everywhere',
      'three slugs gone in the bucket, slug trails everywhere',
      'two nights gone and slug trails everywhere',
      'three gone in the night',
    ],
  },
  {
    name: '<count> <plant> trodden on',
    kind: 'loss',
    head: 'get~past|be~ trodden|stood|sat|stepped|trampled|trod on',
    shape: 'subject',
    cause: 'broken',
    when: counted,
    phrasings: ['one of the Salt Harrier got trodden on by the dog'],
  },
  {
    name: '<count> eaten',
    kind: 'loss',
    head: 'eaten|munched|devoured|scoffed|nibbled',
    shape: 'subject',
    cause: 'pest',
    when: (p, f, t) =>
      precedes(p, f, 6, 'count') ||
      (wordAt(p, t) === 'by' && wordAt(p, f) !== 'nibbled' && isOnlyPlantBefore(p, f)),
    phrasings: ['five eaten', 'five eaten by slugs', 'the Salt Harrier got eaten by slugs'],
    mustNot: ['the Salt Harrier got nibbled by slugs', 'the label on the Salt Harrier got eaten by slugs'],
  },
  {
    name: '<pest> had <count> <plant>',
    kind: 'loss',
    head: `${ANY_PEST} ${YOUNG}? ${HAD} up|off|through|over|for?`,
    shape: 'object',
    cause: 'pest',
    when: (p, f, t) => needsPlantOrCount(p, f, t) && wordAt(p, t) !== 'been',
    // "The fox ripped three bags of compost".
    unless: (p, f, t) =>
      // "Pigeons had the tops off two".
      /^(?:tops?|tips?|leaves|heads?|flowers|buds|edges)$/.test(
        wordAt(p, /^(?:the|all|some)$/.test(wordAt(p, t)) ? t + 1 : t),
      ) ||
      (p[t]?.is === 'pots' && p.slice(t, t + 3).some(({ is }) => is === 'medium')) ||
      tookCuttings(p, f, t) ||
      !doesHarm(p, t),
    phrasings: ['sciarid fly finished off four Salt Harrier'],
    mustNot: [
      'the fox ripped three bags of compost by the Salt Harrier',
      'the kids took 18 Salt Harrier this morning, six pots with three to a pot',
      'the kids took 2 Salt Harrier home',
    ],
  },
  {
    name: '<count> which the <pest> had',
    kind: 'loss',
    head: `which|that the|my|next? ${ANY_PEST} ${HAD}`,
    shape: 'subject',
    cause: 'pest',
    when: (p, f) => p[f - 1]?.is === 'count',
    phrasings: ['Salt Harrier planted out by the gate, all bar one which the slugs had'],
    mustNot: ['the Salt Harrier which the slugs had are recovering'],
  },
  {
    name: '<pest> made off with <count> <plant>',
    kind: 'loss',
    head: `${ANY_PEST} made|ran|went|flew|walked|legged off|away with <count>`,
    shape: 'object',
    cause: 'pest',
    when: (p, _f, t) =>
      p[t]?.is === 'plant' ||
      (/^(?:of|the|my)$/.test(wordAt(p, t)) && p.slice(t, t + 3).some(({ is }) => is === 'plant')),
    phrasings: ['a monkey made off with two Salt Harrier'],
    mustNot: ['the fox made off with two hens by the Salt Harrier'],
  },
  {
    name: '<pest> are after eating <count> <plant>',
    kind: 'loss',
    head: `${ANY_PEST} are|is|was|were after eat~|take~|have~|get~|dig~|munching|demolishing|destroying|scoffing`,
    shape: 'object',
    cause: 'pest',
    when: needsPlantOrCount,
    phrasings: ['the slugs are after eating two of the Salt Harrier'],
    mustNot: ['the slugs are after the Salt Harrier'],
  },
  {
    name: '<pest> have had <count> <plant>',
    kind: 'loss',
    head: `${ANY_PEST} ${YOUNG}? have~ have~past|get~past|eat~past|take~past|${EATEN}`,
    shape: 'object',
    cause: 'pest',
    when: haveHad,
    phrasings: ['slugs have had five Salt Harrier', 'slugs have been at the Salt Harrier, three gone'],
    mustNot: [
      'the cat has been at the Salt Harrier, no harm done',
      "slugs have been at the Salt Harrier but they'll be fine",
    ],
  },
  {
    name: '<pest> has had <count> <plant>',
    kind: 'loss',
    head: `${ANY_PEST_HAS} had|got|taken|${EATEN}`,
    shape: 'object',
    cause: 'pest',
    when: haveHad,
    phrasings: [
      "a slug's had one of the Salt Harrier, the swine",
      "vine weevil's done for two Salt Harrier",
      "the badger's dug up four Salt Harrier",
    ],
  },
];
