/** What counted containers tell beyond their number: one for each plant, what one holds, those of the next plant. */
import { wordAt } from '../../grammar/rule.js';
import { type Case, passOver, type Seen } from './case.js';
import { leadsToAnother } from './leads-to-plant.js';
import { fillSlot } from './slots-filled.js';

export const potCases: readonly Case<Seen<'pots'>>[] = [
  {
    name: '<count> in each of <pots>',
    phrasings: ['In each of the 3 pots I put 4 Salt Harrier cuttings'],
    when: ({ piece, pieces, at }) =>
      piece.pots !== undefined &&
      /^(?:each|every|of|the)$/.test(wordAt(pieces, at - 1)) &&
      [1, 2, 3].some((back) => /^(?:each|every)$/.test(wordAt(pieces, at - back))),
    does: ({ piece, told }) => {
      fillSlot(piece, told);
      told.eachOfPots = true;
    },
  },
  {
    name: '<count> to a pot',
    phrasings: ['Took 12 Salt Harrier, three to a 4 inch pot'],
    when: ({ piece, pieces, at }) =>
      piece.pots === 1 && wordAt(pieces, at - 1) === 'to' && pieces[at - 2]?.is === 'count',
    does: passOver,
  },
  {
    name: '<count> <plant>, each in a pot',
    phrasings: ['Took six Salt Harrier, each in a pot'],
    when: ({ piece, pieces, at, clause }) =>
      clause.hit?.rule.kind === 'strike' &&
      piece.pots === 1 &&
      wordAt(pieces, at - 1) === 'in' &&
      wordAt(pieces, at - 2) === 'each',
    does: ({ draft }) => {
      draft.each ??= 1;
    },
  },
  {
    name: '<plant> and <plant>, one pot each',
    phrasings: ['Took three Salt Harrier and two Tallow Bell, one pot each'],
    when: ({ told, pieces, at }) => told.drafts.length > 1 && wordAt(pieces, at + 1) === 'each',
    does: ({ piece, told }) => {
      for (const draft of told.drafts) if (piece.pots !== undefined) draft.pots ??= piece.pots;
    },
  },
  {
    name: '<count> <plant> and <count> <plant>, all in the same pot',
    phrasings: ['Took three Salt Harrier and two Tallow Bell, all in the one pot'],
    when: ({ told, piece, pieces, at, clause }) =>
      clause.hit?.rule.kind === 'strike' &&
      piece.pots === 1 &&
      told.drafts.length > 1 &&
      told.drafts.every(({ pots, each, plant, quantity }) => !(pots ?? each) && plant && quantity) &&
      (/^(?:together|between)$/.test(wordAt(pieces, at + 1)) ||
        /^(?:the|sharing|in|into)$/.test(wordAt(pieces, at - 1))),
    does: ({ piece, told }) => {
      for (const draft of told.drafts) if (piece.pots !== undefined) draft.pots = piece.pots;
    },
  },
  {
    name: '<count> <plant>, a pot each',
    phrasings: ['Took ten Salt Harrier, a pot apiece'],
    when: ({ draft, piece, pieces, at, clause }) =>
      clause.hit?.rule.kind === 'strike' &&
      piece.pots === 1 &&
      draft.quantity?.value !== undefined &&
      /^(?:each|apiece)$/.test(wordAt(pieces, at + 1)),
    does: ({ draft }) => {
      const plants = draft.quantity?.value;
      if (plants !== undefined) draft.pots ??= plants;
    },
  },
  {
    name: '<pots> of <plant>, <pots> of <plant>',
    phrasings: ['Took two pots of Salt Harrier and one pot of Tallow Bell'],
    when: ({ draft, pieces, at, clause }) =>
      draft.plant !== undefined && leadsToAnother(pieces, at, clause.to),
    does: ({ piece, told }) => {
      told.drafts.push({});
      fillSlot(piece, told);
    },
  },
];
