/** Numbers of plants alone: of this plant, of the next, of its part in another size. */
import { wordAt } from '../../grammar/rule.js';
import { countsAnotherLot, nextLot } from './another-lot.js';
import { type Case, isBeforeAct } from './case.js';
import type { CountSeen } from './count-seen.js';
import { isOfHeading } from './one-plant.js';
import { takeOver } from './rest-cases.js';

/** "Four of them have rooted, none of the Tallow Bell": the number before the act is of those spoken of. */
const isOfThemBefore = ({ draft, clause, at, pieces }: CountSeen): boolean =>
  draft.pronoun === true &&
  clause.subjectFirst &&
  at >= (clause.hit?.to ?? at) &&
  pieces.slice(0, clause.from).some(({ is }) => is === 'plant');

export const plainCountCases: readonly Case<CountSeen>[] = [
  {
    name: '<count> of the older <plant> and <count> of the younger',
    phrasings: [
      'Potted on 7 of the older Salt Harrier and 4 of the younger',
      'Lost 2 of the greenhouse Salt Harrier and 1 of the porch Salt Harrier',
      'Planted out 5 of the March Salt Harrier and 3 of the April ones',
    ],
    when: (seen) => (seen.draft.quantity ?? seen.draft.which) !== undefined && countsAnotherLot(seen),
    does: ({ told, draft, count }) => {
      nextLot(told, draft).quantity = count;
    },
  },
  {
    // That it is all of them tells no number.
    name: 'all in now, <count> of them',
    phrasings: ['Salt Harrier heel cuttings all in now, 200 of'],
    when: ({ draft, count, leads, clause, pieces, at }) =>
      clause.hit?.rule.kind === 'strike' &&
      draft.quantity?.whole === 'all' &&
      count.value !== undefined &&
      count.weak !== true &&
      pieces[at - 1]?.is === 'break' &&
      pieces[at + 1]?.is !== 'pots' &&
      !leads,
    does: takeOver,
  },
  {
    // The article tells of one plant, off which they came.
    name: 'a <plant>, <count> cuttings',
    phrasings: ['Took a fuchsia called Tallow Bell, eight softwood cuttings'],
    when: ({ draft, count, clause, pieces, at }) =>
      clause.hit?.rule.kind === 'strike' &&
      draft.quantity?.value === 1 &&
      (count.value ?? 0) > 1 &&
      wordAt(pieces, at - 1) !== 'and' &&
      /^(?:cuttings|slips)$/.test(wordAt(pieces, pieces[at + 1]?.is === 'cutting' ? at + 2 : at + 1)) &&
      pieces.slice(0, at).some(({ is }, n) => is === 'plant' && /^an?$/.test(wordAt(pieces, n - 1))),
    does: takeOver,
  },
  {
    name: '<count>',
    phrasings: ['Took five Salt Harrier', 'Tallow Bell: six of the fuchsias have rooted'],
    when: ({ draft, leads, pieces, at }) =>
      draft.quantity === undefined && (draft.plant === undefined || !leads || isOfHeading(pieces, at)),
    does: (seen) => {
      takeOver(seen);
      seen.told.countedBefore = seen.told.drafts.length === 1 && isBeforeAct(seen);
    },
  },
  {
    name: '<count> <plant> in <size> and <count> in <size>',
    phrasings: ['Potted on five Salt Harrier in 9cm and five in 3 inch'],
    // No "60 9cm Salt Harrier + 45 1L Tallow Bell".
    when: ({ draft, pieces, at, leads }) =>
      !leads &&
      draft.plant !== undefined &&
      draft.quantity !== undefined &&
      draft.size !== undefined &&
      wordAt(pieces, at - 1) === 'and' &&
      pieces.slice(at + 1, at + 3).some(({ is }) => is === 'size'),
    does: ({ told, draft, count }) => {
      if (draft.plant) told.drafts.push({ quantity: count, plant: draft.plant, known: draft.known ?? true });
    },
  },
  {
    // Of two numbers before a plant the one that leads to it.
    name: '<count>, <count> <plant>',
    phrasings: ['Took five, three Salt Harrier'],
    when: (seen) =>
      seen.leads &&
      seen.draft.plant === undefined &&
      seen.draft.quantity !== undefined &&
      !isOfThemBefore(seen),
    does: takeOver,
  },
  {
    name: '<count> <plant>, <count> <plant>',
    phrasings: ['Took 5 Salt Harrier and 3 Tallow Bell'],
    when: (seen) => seen.leads && (seen.draft.plant !== undefined || isOfThemBefore(seen)),
    does: ({ told, count }) => {
      told.drafts.push({ quantity: count });
    },
  },
];
