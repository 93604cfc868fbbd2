/** Looks told as looks, at all or at the few that were pulled: "checked the Salt Harrier", "tipped out ten". */
import type { Piece } from '../../pieces/pieces.js';
import { PESTS } from '../loss/pests.js';
import { causeAt } from '../loss/counted.js';
import { anyStock } from '../stock/kinds-of-plant.js';
import { closeBehind, endsAt, follows, followsWord, precedes, type Rule, wordAt } from '../rule.js';

/** "…, nothing": what the look at a plant ends with. */
const NOTHING = /^(?:nothing|nowt|nada|zilch|zip|nil|none|nope)$/;
const saysNothing = (pieces: readonly Piece[], _from: number, to: number): boolean => {
  const at = pieces.findIndex((piece, n) => n > to && piece.is === 'break');
  const end = /^(?:yet|still|so)$/.test(wordAt(pieces, at + 2)) ? at + 3 : at + 2;
  return (
    pieces.slice(to, at).some(({ is }) => is === 'plant') &&
    NOTHING.test(wordAt(pieces, at + 1)) &&
    (pieces[end] === undefined || pieces[end].is === 'break')
  );
};

/** "Checked the Salt Harrier for greenfly": no look for roots. */
const seeksPests = (pieces: readonly Piece[], to: number): boolean =>
  pieces
    .slice(to)
    .some(
      (_, n) =>
        wordAt(pieces, to + n) === 'for' &&
        (causeAt(pieces, to + n + 1) !== undefined ||
          PESTS.includes(wordAt(pieces, to + n + 1)) ||
          /^(?:pests?|bugs|damage|losses|disease|water|moisture|flowers|buds|leaks|draughts|labels?)$/.test(
            wordAt(pieces, to + n + 1),
          )),
    );

const SAMPLES = /^(?:looked|sampled|tugged|lifted|pulled)$/;

/** What a look tells behind those it was at. */
const findsRoots = (pieces: readonly Piece[], from: number): boolean =>
  pieces.slice(from).some((_, n) => /^(?:roots?|rooted|rooting)$/.test(wordAt(pieces, from + n)));

/** "Tipped out four", "took four Salt Harrier out of their pots to look", and roots were told of. */
function isTurnedOut(pieces: readonly Piece[], from: number, to: number): boolean {
  let out = from + 1;
  while (out <= to + 4 && wordAt(pieces, out) !== 'out' && pieces[out]?.is !== 'break') out++;
  if (wordAt(pieces, out) !== 'out' || out > to + 4) return false;
  const isOfPot =
    wordAt(pieces, out + 1) === 'of' &&
    [2, 3].some(
      (n) =>
        /^(?:pots?|compost|trays?|modules?|cells?)$/.test(wordAt(pieces, out + n)) ||
        pieces[out + n]?.is === 'medium' ||
        pieces[out + n]?.is === 'pots',
    );
  return findsRoots(pieces, to) && (!/^(?:took|taken|had)$/.test(wordAt(pieces, from)) || isOfPot);
}

const wordsFrom = (pieces: readonly Piece[], from: number): string =>
  [0, 1, 2].map((n) => wordAt(pieces, from + n)).join(' ');

export const looked: readonly Rule[] = [
  {
    name: 'pulled: <count> checked',
    kind: 'aside',
    sense: 'sample',
    head: 'check~past|inspected',
    shape: 'subject',
    when: (p, f, t) =>
      precedes(p, f, 4, 'count', 'pots') &&
      endsAt(p, t) &&
      p.slice(t).some(({ is }) => is === 'count') &&
      !/^(?:i|we|have|i've)$/.test(wordAt(p, f - 1)),
  },
  {
    name: 'looked at <plant>, nothing',
    kind: 'check',
    head: 'check~past|inspect~past|tug~past|look~past at|on?',
    shape: 'object',
    rooted: 'none',
    when: saysNothing,
    phrasings: ['checked the Salt Harrier, nothing', 'tugged the Tallow Bell, nowt yet'],
  },
  {
    name: 'checked <plant>',
    kind: 'check',
    sense: 'look',
    head: 'check~|inspect~past',
    shape: 'object',
    unless: (p, f, t) =>
      (/^(?:the|my|on|for|out)$/.test(wordAt(p, t)) &&
        /^(?:weather|forecast|post|time|label|labels|door|thermostat|temperature|heating|phone|email|frost|heater|propagator)$/.test(
          wordAt(p, t + 1),
        )) ||
      p[t]?.is === 'place' ||
      // "Checked the tubers, all firm".
      anyStock(p.slice(Math.max(0, f - 2), t + 5)) ||
      seeksPests(p, t) ||
      (wordAt(p, f) === 'check' && /^(?:in|me|it|this|my)$/.test(wordAt(p, t))),
  },
  {
    name: 'looked at <plant>',
    kind: 'check',
    sense: 'look',
    head: 'look~past|peek~past|peer~past at|under|over|in',
    shape: 'object',
    when: (p, _f, t) => follows(p, t, 'plant'),
  },
  {
    name: 'had a look at <plant>',
    kind: 'check',
    sense: 'look',
    head: 'look|peek|gander|squint|nosy|check at|under|on|over',
    shape: 'object',
    when: (p, f, t) =>
      follows(p, t, 'plant') &&
      !followsWord(p, t, /^(?:stock|mother|parent|label|labels|roses?)$/) &&
      precedes(p, f, 4, 'word') &&
      p.slice(0, f).some((piece) => piece.is === 'word' && /^(?:had|took|have|quick|did)$/.test(piece.text)),
    phrasings: [
      'had a look at Salt Harrier',
      'took another look at Salt Harrier',
      'had a nosy at the Salt Harrier, nothing doing',
    ],
  },
  {
    name: 'tugged <plant>',
    kind: 'check',
    sense: 'look',
    head: 'tug~past|tip~past|knock~past|turn~past out|on?',
    shape: 'object',
    when: (p, f, t) =>
      closeBehind(p, t, 'plant') &&
      (wordAt(p, f) === 'tugged' ||
        p
          .slice(t)
          .some(
            (piece) =>
              piece.is === 'word' &&
              /^(?:root|roots|rooted|resist|resisted|held|tight|firm)$/.test(piece.text),
          )),
    phrasings: ['tipped out ten Salt Harrier, six had roots'],
  },
  {
    name: 'pulled: looked at <count>',
    kind: 'aside',
    sense: 'sample',
    head: 'look~past|sample~past|tug~past|lift~past|pull~past|tip~past|knock~past|turn~past|slip~past|eased|dig~past|take~past|had at|up|out? <count>',
    shape: 'object',
    when: (p, f, t) =>
      SAMPLES.test(wordAt(p, f))
        ? findsRoots(p, t) || p.slice(t).some(({ is }) => is === 'count')
        : isTurnedOut(p, f, t),
    // "Pulled 3 Salt Harrier and 2 Tallow Bell, they damped off": why, and no look.
    unless: (p, _f, t) =>
      p.some(
        (piece, at) =>
          at > t &&
          piece.is === 'break' &&
          /^(?:(?:they|all|both) )?(?:have |had )?damped/.test(wordsFrom(p, at + 1)),
      ),
  },
  {
    name: 'pulled: <count> looked at',
    kind: 'aside',
    sense: 'sample',
    head: '<count> looked at',
    shape: 'object',
    when: (p, _f, t) => p.slice(t).some(({ is }) => is === 'count'),
  },
  { name: 'pulled <count> from <plant>', kind: 'aside', sense: 'sample', head: 'pull~past', shape: 'object' },
];
