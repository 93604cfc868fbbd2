/** Watered: "gave them a drink", "stood in a tray of water", "ran the hose over the cold frame". */
import type { Piece } from '../../pieces/pieces.js';
import { closeBehind, follows, followsWord, precedes, type Rule, wordAt } from '../rule.js';
import { isWhole } from '../stand-ins.js';
import {
  ALL_OF_THEM,
  among,
  bare,
  didThe,
  ON_PAPER,
  roundDone,
  turnedOff,
  verb,
  WANTING,
} from './telling.js';

const aboutPlants = (pieces: readonly Piece[], from: number, to: number): boolean =>
  follows(pieces, to, 'plant', 'place') ||
  followsWord(pieces, to, /^(?:them|everything|all|it|lot|cuttings|babies|those|trays|pots|plants)$/) ||
  precedes(pieces, from, 8, 'plant', 'place');

/** Water, as a word or as what something stands in. */
const isWatery = (pieces: readonly Piece[], from: number, to: number): boolean =>
  pieces
    .slice(from, to)
    .some(
      (piece) =>
        (piece.is === 'medium' && /water$/.test(piece.medium)) ||
        (piece.is === 'word' && /water$/.test(piece.text)),
    );

export const watered: readonly Rule[] = [
  {
    name: 'watered <plant> in',
    kind: 'tend',
    head: 'water~past',
    shape: 'object',
    care: 'water',
    unless: (p, f, t) =>
      /^(?:over|under)$/.test(wordAt(p, f - 1)) ||
      (wordAt(p, t) === 'it' && wordAt(p, t + 1) === 'down') ||
      (wordAt(p, t) === 'down' &&
        (!follows(p, t, 'plant', 'place') ||
          followsWord(p, t, /^(?:feed|seaweed|tomorite|fertiliser|fertilizer)$/))),
    mustNot: [
      'lost 3 Salt Harrier, I think I over watered',
      'watered down the paint',
      'opened the feed and watered it down',
      'watered down the feed for the Salt Harrier',
    ],
    phrasings: ['watered Salt Harrier in', 'bottom watered Salt Harrier'],
  },
  verb(
    'soak dunk drench irrigate hose sprinkle',
    'water',
    'soaked <plant>',
    (p, f, t) =>
      !aboutPlants(p, f, t) ||
      /^(?:got|am|was|i'm|be|is|are|absolutely|completely|tubers)$/.test(wordAt(p, f - 1)),
  ),
  {
    name: 'gave <plant> a drink',
    kind: 'tend',
    head: 'give~past|give~ing|give~base .. drink|drinks|water|soak|soaks|watering|waterings|soaking|soakings|dunk|drench|dousing',
    shape: 'object',
    care: 'water',
  },
  {
    name: 'gave <plant> a drop of water',
    kind: 'tend',
    head: 'give~past|give~ing|give~base .. <medium>|rainwater',
    shape: 'object',
    care: 'water',
    when: (p, f, t) =>
      isWatery(p, t - 1, t) &&
      (among(p, f, t, 'plant') || followsWord(p.slice(0, t), f, ALL_OF_THEM)) &&
      !followsWord(p.slice(0, t), f, /^(?:in|with|from)$/),
    phrasings: [
      'gave the Salt Harrier a drop of water',
      'gave the Salt Harrier some rainwater',
      'gave all the Salt Harrier plenty of water',
    ],
    mustNot: ['gave Ines two Salt Harrier in a bit of water', 'gave Ines some rainwater'],
  },
  {
    name: '<plant> treated to a drink',
    kind: 'tend',
    head: 'treat~past .. drink|water|soak|watering|soaking|drench',
    shape: 'object',
    care: 'water',
    phrasings: ['treated the Salt Harrier to a good soak'],
    unless: (p, f) => /^(?:myself|ourselves|him|her|us)$/.test(wordAt(p, f + 1)),
    mustNot: ['treated myself to a drink after the Salt Harrier'],
  },
  {
    name: 'a drop of water over <plant>',
    kind: 'tend',
    head: 'drop|splash|skoosh|sup|bit|dash|sprinkle|glug|mouthful|can|cans|canful|cup|lick|bucket|bucketful|jug|jugful|<pots> of? water|rainwater|<medium> for|over|on|to|into',
    shape: 'object',
    care: 'water',
    when: (p, f, t) =>
      isWatery(p, f, t) && (follows(p, t, 'plant', 'place') || followsWord(p, t, ALL_OF_THEM)),
    unless: (p, f, t) =>
      (p[f]?.is === 'pots' && wordAt(p, t - 1) !== 'over') ||
      p.slice(Math.max(0, f - 4), f).some((_, n) => WANTING.test(wordAt(p, Math.max(0, f - 4) + n))),
    phrasings: [
      'quick splash of water over the Salt Harrier',
      'chucked a bucket of water over the cold frame',
      'drop of water for everything in the greenhouse',
    ],
    mustNot: ['no drop of water for the Salt Harrier', 'needs a drop of water on the Salt Harrier'],
  },
  {
    name: 'good soak for <plant>',
    kind: 'tend',
    head: 'good|nice|long|big|quick|proper long? drink|soak|watering|soaking|drench for|over all? of? the|my?',
    shape: 'object',
    care: 'water',
    when: (p, _f, t) => closeBehind(p, t, 'plant', 'place') || isWhole(p[t]),
    unless: (p, f) => [1, 2, 3].some((back) => WANTING.test(wordAt(p, f - back))),
    phrasings: ['good soak for everything in the greenhouse', 'a nice long drink for the Salt Harrier'],
    mustNot: ['needs a good soak for the Salt Harrier', 'good soak for me in the bath'],
  },
  roundDone('watering', 'water', {
    phrasings: ['watering round done', "that's the watering done"],
    mustNot: ['watering round not done'],
  }),
  didThe('watering', 'water', {
    phrasings: ['did the watering in the greenhouse', 'did the watering this morning'],
    mustNot: ['did the watering can turn up?', 'somebody else does the watering in the greenhouse'],
  }),
  {
    name: 'went round <place> with the watering can',
    kind: 'tend',
    head: 'go~past|whizzed|walked|been|ran|run|played .. with? the|a|my watering|hose|hosepipe|hosepipes can|over|round?',
    shape: 'object',
    care: 'water',
    when: (p, f, t) =>
      among(p, f, t, 'plant', 'place') ||
      (/^(?:over|round)$/.test(wordAt(p, t - 1)) && t < f + 5 && closeBehind(p, t, 'plant', 'place')),
    phrasings: [
      'ran the hose over the cold frame',
      'went round the greenhouse with the watering can',
      'went over the Salt Harrier with the hose',
    ],
    mustNot: ['broke 3 Salt Harrier with the hose'],
  },
  {
    name: 'turned the sprinkler on in <place>',
    kind: 'tend',
    head: 'turn~past|switch~past|put~|ran .. sprinkler|sprinklers|irrigation|drippers on?',
    shape: 'object',
    care: 'water',
    when: (p, _f, t) => follows(p, t, 'plant', 'place'),
    unless: turnedOff,
    phrasings: ['turned the sprinklers on in the greenhouse'],
  },
  {
    name: 'wet <plant> down',
    kind: 'tend',
    head: 'wet|wetted|damped|dampened|hosed .. down',
    shape: 'object',
    care: 'water',
    when: (p, f, t) =>
      (among(p, f, t, 'plant', 'place') && p[f + 1]?.is !== 'break') ||
      (t === f + 2 && precedes(p, f, 3, 'place')),
    unless: (p, f) => /^(?:was|were|is|are|too|very|so|got)$/.test(wordAt(p, f - 1)),
    phrasings: ['wet the Salt Harrier down', 'greenhouse damped down at lunch'],
    mustNot: ['too wet, the Salt Harrier went down with rot'],
  },
  {
    name: 'sat <plant> in a tray of water',
    kind: 'tend',
    head: 'sat|stood|stand~past .. in|into <pots>|sink|bath|basin|bucket of? <medium>|water',
    shape: 'object',
    care: 'water',
    when: (p, f, t) => isWatery(p, f, t) && among(p, f, t, 'plant') && !among(p, f, t, 'count', 'cutting'),
    unless: (p, f, t) =>
      p
        .slice(f, t)
        .some((piece) => piece.is === 'word' && /^(?:cuttings?|slips?|tips?|stems?)$/.test(piece.text)),
    phrasings: ['sat the Salt Harrier in a tray of water for an hour'],
    mustNot: ['stood the Salt Harrier cuttings in a jar of water'],
  },
  {
    name: 'topped <plant> up with water',
    kind: 'tend',
    head: 'top~past .. up with water|rainwater|<medium>',
    shape: 'object',
    care: 'water',
    when: isWatery,
    phrasings: ['topped the Salt Harrier up with water'],
    mustNot: ['topped the Salt Harrier pots up with compost'],
  },
  {
    name: 'irrigation run on <place>',
    kind: 'tend',
    head: 'irrigation|sprinkler|sprinklers|drippers run|ran|on|going on|in|at|over?',
    shape: 'object',
    care: 'water',
    when: (p, f, t) => closeBehind(p, t, 'place') || precedes(p, f, 3, 'place'),
    unless: (p, f, t) =>
      !(f === 0 || p[f - 1]?.is === 'place') ||
      followsWord(p, t, ON_PAPER) ||
      followsWord(p, t, /^(?:broken|broke|burst|leaking|leaks|blocked|fixed|mended|repaired|needs|off)$/),
    phrasings: ['irrigation run on the greenhouse', 'greenhouse sprinklers on'],
    mustNot: [
      'irrigation in the greenhouse blocked',
      'fixed the irrigation in the greenhouse',
      'sprinkler on order for the greenhouse',
    ],
  },
  {
    name: '<plant> got water',
    kind: 'tend',
    head: 'get~past|have~past .. water|drink|soak|watering|<medium>',
    shape: 'subject',
    care: 'water',
    phrasings: ['the Salt Harrier got a dribble of water'],
    mustNot: [
      'the Salt Harrier got shoved into water',
      'the Salt Harrier have had no water',
      'the Salt Harrier had too much water',
    ],
    unless: (p, f, t) => followsWord(p.slice(0, t), f, /^(?:no|too|not|any|without|never)$/),
    when: (p, f, t) =>
      (p[t - 1]?.is === 'word' ||
        (isWatery(p, t - 1, t) && !among(p, f, t, 'count') && /^(?:of|some|more)$/.test(wordAt(p, t - 2)))) &&
      (precedes(p, f, 6, 'plant', 'place') || /^(?:they|they've|they'd)$/.test(wordAt(p, 0))) &&
      p.slice(f, t).length < 6,
  },
  {
    name: 'topped up the water',
    kind: 'tend',
    head: 'top~past up',
    shape: 'object',
    care: 'water',
    when: (p, f, t) =>
      (followsWord(p, t, /^(?:water|jars|jar|glass|saucers|tray|reservoir)$/) ||
        p.slice(f).some(({ is }) => is === 'medium')) &&
      !p
        .slice(f)
        .some(
          (piece) =>
            piece.is === 'medium' &&
            /compost|grit|bark|soil|loam|mix|perlite|vermiculite|mulch/.test(piece.medium),
        ),
    mustNot: ['topped up the Salt Harrier pots with compost'],
  },
  bare('water', 'water'),
];
