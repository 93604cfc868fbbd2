/** Plants given or sold: "gave three to Doreen", "sold six", "pressed two on Ken". */
import { whole } from '../../phrases.js';
import type { Piece } from '../../pieces/pieces.js';
import { pastPerson } from '../../mood/somebody-else.js';
import { isSomebody } from './fetched.js';
import { closeBehind, follows, followsWord, pastOf, precedes, type Rule, wordAt } from '../rule.js';

/** What somebody does who will hear no "no". */
export const PRESSED = 'press~past|palm~past|foist~past|force~past|thrust~past|push~past';

/** "… on me", "… onto us": the grower has them now. */
export const ontoUs = (pieces: readonly Piece[], from: number): boolean =>
  pieces.some(
    (_, at) =>
      at >= from &&
      /^(?:on|onto|upon|at)$/.test(wordAt(pieces, at)) &&
      /^(?:me|us)$/.test(wordAt(pieces, at + 1)),
  );

/** "Free to a good home", "on freecycle": given to whoever took them. */
const goesFree = (pieces: readonly Piece[], from: number): boolean =>
  pieces.some(
    (_, at) =>
      at >= from &&
      (/^(?:freecycle|freegle)$/.test(wordAt(pieces, at)) ||
        (wordAt(pieces, at) === 'free' &&
          /^(?:to a good|to good|to whoever|to anyone|for the|gratis)/.test(textFrom(pieces, at + 1)))),
  );

const textFrom = (pieces: readonly Piece[], at: number): string =>
  [0, 1, 2].map((n) => wordAt(pieces, at + n)).join(' ');

const NOT_GIVEN = whole`
  (drink|watering|soak|soaking|feed|misting|mist|spray|dose|trim|haircut|prune|pot|wipe|clean|stir)s?|water
  check|look|inspection|shake|tug|talking|thought|outing|airing|air|shade|turn|room|space|spot|corner|berth|slot|sides
  chance|miss|rest|go|shot|once|good|wide|up|longer
  time|minute|while|nights?|days?|weeks?|fortnight|month
`;

/** "Gave Nora three potted up Salt Harrier", "two of the good ones": how they were says nothing of what was given. */
const withoutLooks = (pieces: readonly Piece[]): readonly Piece[] =>
  pieces.map((piece, at) =>
    piece.is === 'word' &&
    ((piece.text === 'up' && wordAt(pieces, at - 1) === 'potted') ||
      (piece.text === 'good' &&
        (pieces[at + 1]?.is === 'plant' || /^(?:ones|uns|sized?|plants?)$/.test(wordAt(pieces, at + 1)))))
      ? { ...piece, text: 'potted' }
      : piece,
  );

const TOWARDS = /^(?:to|on|for)$/;

/** "2 Salt Harrier left over, …": what there was too much of. */
const isOfSpares = (pieces: readonly Piece[], from: number): boolean =>
  pieces.slice(0, from).some(({ is }) => is === 'plant') &&
  pieces
    .slice(0, from)
    .some((piece) => piece.is === 'word' && /^(?:spare|surplus|over|extra|leftover)$/.test(piece.text));

/** Past those who are somebody by their capital: "took Mrs Pike 3 Salt Harrier". */
function pastSomebody(pieces: readonly Piece[], from: number): number {
  let at = from;
  for (let piece = pieces[at]; piece?.is === 'word' && piece.somebody; piece = pieces[at]) at++;
  return at;
}

/** "Its own 9cm pot", "a bigger pot": what plants are given, straight behind them. */
const givesOwnPot = (pieces: readonly Piece[], at: number): boolean =>
  pieces[at]?.is === 'plant' &&
  /^(?:its|their) own$/.test(`${wordAt(pieces, at + 1)} ${wordAt(pieces, at + 2)}`) &&
  (pieces[at + 3]?.is === 'size' || /^pots?$/.test(wordAt(pieces, at + 3)));

export const given: readonly Rule[] = [
  {
    name: 'gave <count> <plant> to <recipient>',
    kind: 'dispatch',
    head: `${pastOf`give hand pass donate gift present offload rehome slip`} away|on|over?`,
    shape: 'object',
    how: 'given',
    when: (p, f, t) =>
      follows(p, t, 'plant', 'count') ||
      (precedes(p, f, 6, 'plant', 'count') && followsWord(p, t, /^(?:to|away)$/)) ||
      (wordAt(p, t) === 'them' && isOfSpares(p, f)),
    phrasings: [
      '2 Salt Harrier left over, gave them to the chapel',
      'five Salt Harrier surplus, gave them to Jean',
    ],
    mustNot: ['gave every Salt Harrier its own 9cm pot', 'he handed over six Salt Harrier plants'],
    unless: (p, f, t) =>
      /^(?:up|in)$/.test(wordAt(p, t)) ||
      // "Gave every Salt Harrier its own pot".
      p.slice(t, t + 6).some((_, n) => givesOwnPot(p, t + n)) ||
      // "Doreen was given three by her sister": theirs.
      (/^(?:given|handed|gifted)$/.test(wordAt(p, f)) &&
        /^(?:was|were|been|got)$/.test(wordAt(p, f - 1)) &&
        followsWord(p, t, /^by$/) &&
        isSomebody(p, f - 1)) ||
      // "He handed over six plants": come in, where nobody is named to whom.
      (wordAt(p, t - 1) === 'over' &&
        (/^(?:he|she)$/.test(wordAt(p, f - 1)) || isSomebody(p, f)) &&
        !followsWord(p, t, TOWARDS)) ||
      // "Given six cuttings of Salt Harrier by Doreen": come in.
      (wordAt(p, f) === 'given' &&
        (f === 0 || p[f - 1]?.is === 'break') &&
        followsWord(p, t, /^by$/) &&
        !followsWord(p, t, /^(?:to|me|us)$/)) ||
      /^(?:stools?|tubers?|crowns?|plants?|stock|feed|water|seaweed|drink|tomorite)$/.test(
        wordAt(p, f - 1),
      ) ||
      // "Tubers of the Salt Harrier gave six shoots".
      (/^(?:shoots?|cuttings|slips)$/.test(wordAt(p, t + 1)) &&
        p
          .slice(0, f)
          .some((piece) => piece.is === 'word' && /^(?:tubers?|stools?|crowns?)$/.test(piece.text))) ||
      // "Gave seven of them a pot each".
      (follows(p, t, 'pots') && !followsWord(p, t, TOWARDS) && followsWord(p, t, /^each$/)) ||
      (followsWord(withoutLooks(p), t, NOT_GIVEN) && !followsWord(p, t, TOWARDS)) ||
      /^(?:me|us)$/.test(wordAt(p, t)) ||
      (/^(?:passed|slipped)$/.test(wordAt(p, f)) && !followsWord(p, t, TOWARDS)),
  },
  {
    name: 'took <recipient> <count> <plant>',
    kind: 'dispatch',
    sense: 'recipient within',
    head: 'take~past .. <count>',
    shape: 'object',
    when: (p, f, t) => {
      const named = pastSomebody(p, f + 1);
      const person = named > f + 1 ? { to: named, sure: true } : pastPerson(p, f + 1);
      const end =
        person && /^(?:her|his|their|the|some)$/.test(wordAt(p, person.to)) ? person.to + 1 : person?.to;
      return (
        person?.sure === true &&
        end === t - 1 &&
        follows(p, t, 'plant') &&
        // "Took my neighbour's three in": hers.
        !wordAt(p, person.to - 1).endsWith("'s")
      );
    },
    phrasings: ['took my sister two Salt Harrier', 'took mum her 3 Salt Harrier'],
    mustNot: [
      'took two Salt Harrier',
      'the club took three Salt Harrier',
      "took my neighbour's three Salt Harrier in",
      'took Pauline 3, Salt Harrier 4',
    ],
  },
  {
    name: 'sold <count> <plant>',
    kind: 'dispatch',
    sense: 'delivery',
    head: 'sell~past|flog~past|invoice~past|raffled|auctioned off?',
    shape: 'object',
    how: 'sold',
    unless: (p, f, t) =>
      /^(?:me|us|out)$/.test(wordAt(p, t)) ||
      // "I was sold two": bought.
      (/^(?:was|were|been|got)$/.test(wordAt(p, f - 1)) && /^(?:i|we|i've|we've)$/.test(wordAt(p, f - 2))) ||
      // "Of a hebe sold as Silver Whistle": by what name.
      (wordAt(p, t) === 'as' && p[t + 1]?.is === 'plant') ||
      // "Was invoiced for 20": bought.
      (wordAt(p, f) === 'invoiced' && /^(?:was|were|got|been|being|is|are)$/.test(wordAt(p, f - 1))),
  },
  {
    name: 'made <money> on <count> <plant>',
    kind: 'dispatch',
    head: 'make~past|take~past|get~past <money> on|for|from|off',
    shape: 'object',
    how: 'sold',
    when: (p, _f, t) => closeBehind(p, t, 'count') && closeBehind(p, t, 'plant'),
    phrasings: ['made £12 on six Salt Harrier at the fete'],
    mustNot: ['spent £12 on six Salt Harrier'],
  },
  {
    name: 'got rid of <count> <plant>, free',
    kind: 'dispatch',
    head: 'get~past rid|shot|shut of',
    shape: 'object',
    how: 'given',
    when: (p, _f, t) => closeBehind(p, t, 'count') && closeBehind(p, t, 'plant') && goesFree(p, t),
    phrasings: [
      'got rid of three Salt Harrier, free to a good home',
      'got rid of three Salt Harrier on freecycle',
    ],
    mustNot: ['got rid of four Salt Harrier to free the bench'],
  },
  {
    name: 'got rid of <count> <plant> to <recipient>',
    kind: 'dispatch',
    head: 'get~past rid of',
    shape: 'object',
    when: (p, _f, t) =>
      closeBehind(p, t, 'count') &&
      closeBehind(p, t, 'plant') &&
      !p.slice(t).some(({ is }) => is === 'place') &&
      followsWord(p, t, /^to$/) &&
      !goesFree(p, t) &&
      !followsWord(p, t, /^(?:compost|bin|heap|bonfire|tip|skip|make|rot|mould|free|save|clear)$/),
    phrasings: ['got rid of four Salt Harrier to Doreen'],
    mustNot: [
      'got rid of four Salt Harrier to free the bench',
      'got rid of four Salt Harrier to make room',
      'got rid of four Salt Harrier, rotten',
    ],
  },
  {
    name: 'parted with <count> <plant>',
    kind: 'dispatch',
    head: 'part~past|part~ with|from',
    shape: 'object',
    when: (p, _f, t) =>
      wordAt(p, t - 1) === 'with' && closeBehind(p, t, 'count') && closeBehind(p, t, 'plant'),
    phrasings: ['parted with two Salt Harrier'],
    mustNot: ['parted with £12 for two Salt Harrier', "can't bear to part with two Salt Harrier"],
    unless: (p, _f, t) => p[t]?.is === 'money',
  },
  {
    name: 'shouted <recipient> <count> <plant>',
    kind: 'dispatch',
    head: 'shout~past|spare~past|treat~past|gift~past|fob~past',
    shape: 'object',
    how: 'given',
    when: (p, f, t) =>
      closeBehind(p, t, 'count') &&
      closeBehind(p, t, 'plant') &&
      p[t]?.is === 'word' &&
      !/^(?:at|me|us|to|with|myself|for|about|by)$/.test(wordAt(p, t)) &&
      !/^(?:was|were|got|be)$/.test(wordAt(p, f - 1)),
    phrasings: ['shouted Doreen a couple of Salt Harrier', 'spared Doreen two Salt Harrier'],
    mustNot: ['shouted at the kids, three Salt Harrier knocked over', 'the frost spared 3 Salt Harrier'],
  },
  {
    name: 'pressed <count> <plant> on <recipient>',
    kind: 'dispatch',
    head: PRESSED,
    shape: 'object',
    how: 'given',
    when: (p, _f, t) =>
      follows(p, t, 'plant', 'count') && followsWord(p, t, /^(?:on|onto|upon|off)$/) && !ontoUs(p, t),
    phrasings: ['pressed five Salt Harrier on Doreen', 'palmed six Salt Harrier off on Edna'],
    mustNot: ['Edna pressed five rooted Salt Harrier on me', 'Edna palmed six Salt Harrier off on us'],
  },
];
