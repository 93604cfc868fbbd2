/** Numbers that tell of each of several: of each plant of a list, of each container. */
import { wordAt } from '../../grammar/rule.js';
import type { Piece } from '../../pieces/pieces.js';
import { isInOnePot, isOfEach, isShareOf, isToldOfEach } from './beside-counts.js';
import { type Case, passOver } from './case.js';
import { type CountSeen, numberOf } from './count-seen.js';
import type { OpenDraft } from './draft.js';

/** Of "three pots of these and two of those": the drafts of pots that nobody has said yet what they hold. */
const pottedOf = ({ told }: CountSeen): readonly OpenDraft[] =>
  told.drafts.filter(({ pots, each, quantity }) => pots !== undefined && !each && !quantity);

const VESSELS = /(?:boxes|tubs|pots|baskets|barrels|troughs|urns|planters|beds|buckets|sinks)$/;

/** "Big urns", "window boxes": what plants are put out in. */
function vesselsAt(pieces: readonly Piece[], from: number): boolean {
  let at = from;
  while (
    /^(?:big|large|small|little|old|stone|terracotta|half|hanging|patio|tall|new)$/.test(wordAt(pieces, at))
  )
    at++;
  const piece = pieces[at];
  return piece?.is === 'place'
    ? piece.prep === undefined && VESSELS.test(piece.place)
    : piece?.is === 'word' && VESSELS.test(piece.text);
}

/** Of several people, who have so many each. */
const SHARED_BY = /^(?:children|child|kids|pupils|students|class|club|grandkids|everyone|everybody)$/;
const isSharedByPeople = (pieces: readonly Piece[], at: number): boolean =>
  pieces.slice(0, at).some((_, n) => SHARED_BY.test(wordAt(pieces, n)));

export const eachCases: readonly Case<CountSeen>[] = [
  {
    name: 'the children took <count>, <count> each',
    phrasings: ['The children took 24 Salt Harrier cuttings, two each'],
    when: ({ count, pieces, at, draft }) =>
      count.value !== undefined &&
      draft.quantity !== undefined &&
      wordAt(pieces, at + 1) === 'each' &&
      isSharedByPeople(pieces, at),
    does: passOver,
  },
  {
    name: 'each child potted one, <count> in all',
    phrasings: ['Each child potted on one Salt Harrier, nine in all'],
    when: ({ count, pieces, at, draft }) =>
      count.value !== undefined &&
      draft.quantity?.value === 1 &&
      (wordAt(pieces, at + 1) === 'altogether' ||
        (wordAt(pieces, at + 1) === 'in' && /^(?:all|total)$/.test(wordAt(pieces, at + 2))) ||
        (wordAt(pieces, at + 1) === 'in' && pieces[at + 2]?.is === 'count')) &&
      isSharedByPeople(pieces, at),
    does: ({ draft, count }) => {
      draft.quantity = count;
    },
  },
  {
    // Each in a pot of its own.
    name: '<plant> potted on, one each',
    phrasings: ['Salt Harrier and Tallow Bell potted on, one each'],
    when: ({ told, count, pieces, at, clause }) =>
      clause.hit?.rule.kind === 'potOn' &&
      count.value === 1 &&
      wordAt(pieces, at + 1) === 'each' &&
      wordAt(pieces, at + 2) !== 'of' &&
      told.drafts.some(({ plant }) => plant !== undefined) &&
      told.drafts.every(({ quantity }) => quantity === undefined),
    does: passOver,
  },
  {
    name: '<count> each of <plant> and <plant>',
    phrasings: [
      'Took three each of Salt Harrier and Tallow Bell',
      'Took three cuttings each of Salt Harrier and Tallow Bell',
    ],
    when: ({ told, count, pieces, at }) => {
      const each = /^(?:cuttings|slips|tips|plants|plugs)$/.test(wordAt(pieces, at + 1)) ? at + 2 : at + 1;
      return (
        count.value !== undefined &&
        wordAt(pieces, each) === 'each' &&
        (wordAt(pieces, each + 1) === 'of' || (each === at + 1 && told.drafts.length > 1))
      );
    },
    does: ({ told, count }) => {
      told.ofEach = count;
    },
  },
  {
    // How many those are, nobody has said.
    name: '<somebody> and <somebody> had <count> <plant> each',
    phrasings: ['Gave the girls two Salt Harrier each'],
    when: ({ told, count, pieces, at, clause }) =>
      clause.hit?.rule.kind === 'dispatch' &&
      count.value !== undefined &&
      told.drafts.length === 1 &&
      [1, 2, 3].some(
        (n) =>
          /^(?:each|apiece)$/.test(wordAt(pieces, at + n)) &&
          pieces.slice(at + 1, at + n).every((piece) => piece.is === 'plant' || piece.is === 'word'),
      ),
    does: ({ draft }) => {
      draft.quantity = { vague: true };
    },
  },
  {
    // Of cuttings, where they all went; how many is told already.
    name: '<count> each of <plant> and <plant>, all in <place>',
    phrasings: ['Three each of Salt Harrier and Tallow Bell taken, all in the propagator'],
    when: ({ told, count, clause }) =>
      count.whole === 'all' && clause.hit?.rule.kind === 'strike' && told.ofEach !== undefined,
    does: passOver,
  },
  {
    name: '<pots> of <plant>, <count> in each',
    phrasings: ['Three pots of Salt Harrier and two pots of Tallow Bell, four in each'],
    when: (seen) =>
      seen.count.value !== undefined && isOfEach(seen.pieces, seen.at) && pottedOf(seen).length > 0,
    does: (seen) => {
      for (const draft of pottedOf(seen)) draft.each = numberOf(seen.count);
    },
  },
  {
    name: 'one with <plant>',
    phrasings: ['Filled one tray with Salt Harrier and one with Tallow Bell, 24 in each'],
    when: ({ count, pieces, at, draft }) =>
      count.value === 1 &&
      draft.pots !== undefined &&
      wordAt(pieces, at + 1) === 'with' &&
      pieces.slice(at + 2, at + 4).some(({ is }) => is === 'plant'),
    does: ({ told }) => {
      told.drafts.push({ pots: 1 });
    },
  },
  {
    name: '<count> in each',
    phrasings: ['Took 12 Salt Harrier, three to a 4 inch pot'],
    when: ({ told, count, pieces, at }) =>
      count.value !== undefined && isOfEach(pieces, at) && told.drafts.length === 1,
    does: ({ draft, count }) => {
      draft.each ??= numberOf(count);
    },
  },
  {
    name: '<plant> and <plant>, <count> cuttings each',
    phrasings: [
      'Took Salt Harrier and Tallow Bell, five cuttings each',
      'From Salt Harrier and Tallow Bell each 6 cuttings taken yesterday',
    ],
    when: ({ told, count, pieces, at }) =>
      count.value !== undefined &&
      (isOfEach(pieces, at) || (wordAt(pieces, at - 1) === 'each' && told.drafts.length > 1)),
    does: ({ told, count }) => {
      for (const draft of told.drafts) draft.quantity ??= count;
    },
  },
  {
    name: '<pots> of <plant>, each of <count>',
    phrasings: [
      'Took two pots of Salt Harrier, each of 5',
      'Took four pots of Salt Harrier, three cuttings in one pot',
    ],
    when: ({ draft, pieces, at, count }) =>
      (draft.pots ?? 0) > 1 &&
      draft.quantity === undefined &&
      count.value !== undefined &&
      (isToldOfEach(pieces, at) || isInOnePot(pieces, at)),
    does: ({ draft, count }) => {
      draft.each ??= numberOf(count);
    },
  },
  {
    // Fewer than the pots: of those, not of what is in them.
    name: '<pots> of <plant>, <count> of them in <place>',
    phrasings: [
      'Took three pots of Salt Harrier, two of them in the propagator',
      'Took two pots of Salt Harrier, one with powder and one without',
    ],
    when: ({ clause, draft, count, leads }) =>
      clause.hit?.rule.kind === 'strike' &&
      draft.plant !== undefined &&
      draft.quantity?.value === undefined &&
      !leads &&
      count.value !== undefined &&
      count.value < (draft.pots ?? 0),
    does: passOver,
  },
  {
    // The first number is that of both parts.
    name: '<count> <plant>, <count> in <place>, <count> in <place>',
    phrasings: ['Planted five Salt Harrier, three by the gate, two in the tub'],
    when: ({ draft, count, pieces, at, clause }) =>
      /^(?:move|plantOut)$/.test(clause.hit?.rule.kind ?? '') &&
      draft.quantity?.value !== undefined &&
      draft.quantity.value > (count.value ?? Infinity) &&
      pieces[at - 1]?.is === 'break' &&
      isShareOf(pieces, at) &&
      pieces.some(({ is }, other) => is === 'count' && other > at && isShareOf(pieces, other)),
    does: ({ draft, count }) => {
      draft.quantity = count;
    },
  },
  {
    // What each holds tells how many.
    name: 'planted up <count> window boxes with <plant>',
    phrasings: [
      'Planted up two window boxes with Salt Harrier',
      'Filled the three big urns on the terrace with Salt Harrier, four in each',
      'Two troughs planted up with Salt Harrier, six per trough',
    ],
    when: ({ clause, pieces, at, count }) =>
      clause.hit?.rule.kind === 'plantOut' && count.value !== undefined && vesselsAt(pieces, at + 1),
    does: ({ draft, count }) => {
      draft.pots ??= numberOf(count);
    },
  },
];
