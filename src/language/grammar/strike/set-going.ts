/** Cuttings told by their start: "got six going in water". */
import type { Piece } from '../../pieces/pieces.js';
import { closeBehind, endsAt, follows, followsWord, type Rule, wordAt } from '../rule.js';
import { CUTTINGS } from '../taken-away.js';

/** More plants than vessels: rooted ones would have a pot each. */
const sharesVessel = (pieces: readonly Piece[], from: number, to: number): boolean => {
  const plants = pieces.slice(from, to).find(({ is }) => is === 'count');
  const vessels = pieces.slice(to).find(({ is }) => is === 'pots');
  return (
    plants?.is === 'count' &&
    vessels?.is === 'pots' &&
    (plants.quantity.value ?? 0) > (vessels.pots ?? Infinity)
  );
};

/** So many cuttings, or so many plants in what only cuttings stand in, that are going there, and nowhere else. */
const rootThere = (pieces: readonly Piece[], from: number, to: number): boolean => {
  const told = pieces.slice(from, to);
  const ofCuttings = told.some(
    (piece) => piece.is === 'cutting' || (piece.is === 'word' && CUTTINGS.test(piece.text)),
  );
  return (
    told.some(({ is }) => is === 'count' || is === 'pots') &&
    told.some(({ is }) => is === 'plant') &&
    (ofCuttings ||
      sharesVessel(pieces, from, to) ||
      follows(pieces, to, 'medium') ||
      // "… going today, nodal, two to a pot".
      pieces
        .slice(to)
        .some((piece) => piece.is === 'cutting' || (piece.is === 'pots' && (piece.each ?? 0) > 1))) &&
    (endsAt(pieces, to) || pieces[to]?.is === 'when' || /^(?:in|under|at|again)$/.test(wordAt(pieces, to))) &&
    !followsWord(pieces, to, /^(?:bin|heap|skip|compost|van|post|tomorrow)$/) &&
    !told.some((piece) => piece.is === 'word' && /^(?:tubers?|crowns?|stools?)$/.test(piece.text))
  );
};

const isState = (pieces: readonly Piece[], from: number): boolean =>
  /^(?:have|has|had|i've|we've|still)$/.test(wordAt(pieces, from - 1));

export const setGoing: readonly Rule[] = [
  {
    name: 'started <pots> of <plant> off',
    kind: 'strike',
    head: 'start~past off?',
    shape: 'object',
    when: (p, _f, t) =>
      follows(p, t, 'plant') &&
      (follows(p, t, 'pots') || (p[t]?.is === 'count' && followsWord(p, t, /^off$/))) &&
      !followsWord(p, t, /^(?:tubers?|crowns?|seeds?)$/),
    phrasings: ['started 10 Salt Harrier off, tips, in a half tray'],
  },
  {
    name: "that's <count> <plant> cuttings tucked up",
    kind: 'strike',
    head: "that's|thats|there's <count> <plant> cuttings|slips|tips|basals|<cutting> cuttings? <count>? safely|nicely? done|tucked|settled|dibbed|struck|stuck|sorted|under|in|into",
    shape: 'object',
    phrasings: [
      "that's a dozen Salt Harrier cuttings all tucked up in the propagator",
      "that's eleven Salt Harrier tips under the cloche",
    ],
    mustNot: ["that's a dozen Salt Harrier cuttings all gone", "that's a dozen Salt Harrier cuttings rooted"],
  },
  {
    name: 'got <count> <plant> going in <medium>',
    kind: 'strike',
    head: 'get~past|set~past|start~past .. going',
    shape: 'object',
    when: (p, f, t) =>
      rootThere(p, f, t) &&
      (f === 0 || p[f - 1]?.is !== 'word' || /^(?:i|we|and|then|also|finally|just)$/.test(wordAt(p, f - 1))),
    phrasings: [
      'got 6 Salt Harrier cuttings going in water on the windowsill',
      'set six Salt Harrier going in a jar',
      'got another 6 Salt Harrier going this afternoon, nodal, two to a pot',
    ],
    mustNot: [
      'got 6 Salt Harrier going to Edna',
      'got 6 Salt Harrier going spare',
      'got 6 Salt Harrier cuttings going mouldy in water',
      'got the Salt Harrier going again after the drought',
      'got 6 Salt Harrier tubers going on the heat mat',
      "I've got 6 Salt Harrier cuttings going in water",
    ],
  },
  {
    // How things stand: when they were struck, nobody has said.
    name: 'I have <count> <plant> going in <medium>',
    kind: 'aside',
    head: 'have~|get~past .. going',
    shape: 'object',
    when: (p, f, t) => rootThere(p, f, t) && (wordAt(p, f) !== 'got' || isState(p, f)),
  },
  {
    name: 'rooting <count> <plant> in <medium>',
    kind: 'strike',
    head: 'root~ing|try~ing',
    shape: 'object',
    when: (p, f, t) =>
      closeBehind(p, t, 'count') &&
      follows(p, t, 'plant') &&
      (wordAt(p, f) === 'rooting' || (f === 0 && follows(p, t, 'medium'))) &&
      !/^(?:be|is|are|were|not)$/.test(wordAt(p, f - 1)),
  },
];
