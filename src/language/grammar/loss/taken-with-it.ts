/** Losses told of what took them: "hard frost, took two with it", "there was a fox and it had three". */
import type { Piece } from '../../pieces/pieces.js';
import { endsAt, follows, followsWord, type Rule } from '../rule.js';

/** Whether such words stand before `from` in the same breath. */
const tellsOf = (pieces: readonly Piece[], from: number, words: RegExp): boolean => {
  const start = pieces.slice(0, from).findLastIndex((piece) => piece.is === 'break' && piece.hard) + 1;
  return pieces.slice(start, from).some((piece) => piece.is === 'word' && words.test(piece.text));
};

/** "That one spell did for five": which of the numbers is meant is not for us to say. */
const countsBefore = (pieces: readonly Piece[], from: number): boolean =>
  pieces
    .slice(pieces.slice(0, from).findLastIndex(({ is }) => is === 'break') + 1, from)
    .some(({ is }) => is === 'count');

/** "I froze and took out four", "fixed the heater and took out six": somebody did. */
const someoneTook = (pieces: readonly Piece[], from: number): boolean =>
  pieces
    .slice(0, from)
    .some(
      (piece) =>
        piece.is === 'word' &&
        /^(?:i|we|i've|we've|he|she|they|fixed|mended|moved|checked|opened|turned|switched|set|plugged|replaced)$/.test(
          piece.text,
        ),
    );

export const takenWithIt: readonly Rule[] = [
  {
    name: 'there was frost and it took <count> <plant>',
    kind: 'loss',
    head: 'it take~past|have~past|get~past <count>',
    shape: 'object',
    when: (p, f) =>
      p
        .slice(0, f)
        .some(
          (piece) =>
            (piece.is === 'celsius' && piece.celsius < 3) ||
            (piece.is === 'word' &&
              /^(?:frost|cold|freeze|rot|botrytis|mould|heat|slug|fox|cat)$/.test(piece.text)),
        ),
    phrasings: ['there was a frost and it took two of the Salt Harrier'],
    mustNot: ['it took two hours to pot the Salt Harrier'],
  },
  {
    name: '<place> froze and took out <count> <plant>',
    kind: 'loss',
    head: 'and take~past|finish~past out|off <count>',
    shape: 'object',
    cause: 'frost',
    when: (p, f, t) =>
      follows(p, t, 'plant') &&
      !followsWord(p, t, /^cuttings?$/) &&
      tellsOf(p, f, /^(?:froze|frozen|freezing|frosted)$/),
    unless: someoneTook,
    phrasings: ['the basement froze last night and took out four Salt Harrier'],
    mustNot: ['I froze and took out four Salt Harrier', 'the shed froze and took six Salt Harrier in'],
  },
  {
    name: 'the heater failed and took out <count> <plant>',
    kind: 'loss',
    head: 'fail~past|conk~past|break~past|collapse~past|blew|come~past|go~past|fall~past|tripped out|down|off|in|over? and take~past|finish~past out|off <count>',
    shape: 'object',
    when: (p, f, t) =>
      follows(p, t, 'plant') &&
      tellsOf(
        p,
        f,
        /^(?:heater|thermostat|heating|boiler|fan|pump|timer|power|electric|fuse|shelf|storm|gale|wind|hail|snow|branch|gutter)$/,
      ),
    unless: someoneTook,
    phrasings: [
      'heater failed and took out six Salt Harrier',
      'the shelf collapsed and took out three Salt Harrier',
    ],
    mustNot: [
      'Edna mended the heater and took out six Salt Harrier',
      'the power came on and I took out six Salt Harrier',
    ],
  },
  {
    name: '<something> did for <count> <plant>',
    kind: 'loss',
    head: 'did for <count>',
    shape: 'object',
    when: (p, f, t) => p.slice(f, t + 3).some(({ is }) => is === 'plant'),
    // "What I did for five of them" was a kindness.
    unless: (p, f) => tellsOf(p, f, /^(?:i|we|you|he|she|they|who|what|as|like)$/) || countsBefore(p, f),
    phrasings: ['that wet spell did for five of the Salt Harrier', 'the wind did for two Salt Harrier'],
    mustNot: ['what I did for five of the Salt Harrier', 'bone meal is what we did for two Salt Harrier'],
  },
  {
    name: '<something> put paid to <count> <plant>',
    kind: 'loss',
    head: 'put paid to <count>',
    shape: 'object',
    when: (p, f, t) => p.slice(f, t + 3).some(({ is }) => is === 'plant'),
    phrasings: ['hail put paid to three Salt Harrier'],
    mustNot: ['rain put paid to the potting on, three Salt Harrier still to do'],
  },
  {
    name: '<something> made short work of <count> <plant>',
    kind: 'loss',
    head: 'made short work of <count>',
    shape: 'object',
    when: (p, f, t) => p.slice(f, t + 3).some(({ is }) => is === 'plant'),
    unless: (p, f) => tellsOf(p, f, /^(?:i|we|you|he|she|they|who)$/),
    phrasings: ['a snail made short work of two Salt Harrier'],
    mustNot: ['I made short work of potting six Salt Harrier', 'we made short work of 6 Salt Harrier'],
  },
  {
    name: 'took <count> <plant> with it',
    kind: 'loss',
    head: 'take~past <count> .. with it',
    shape: 'object',
    when: (p, f, t) => endsAt(p, t) && p.slice(f, t).some(({ is }) => is === 'plant'),
    mustNot: ['took 2 of the Salt Harrier, with it being so warm', 'took 2 of the Salt Harrier with me'],
    phrasings: [
      'took five Salt Harrier with it',
      'hard frost last night, took 2 of the Salt Harrier with it',
    ],
  },
];
