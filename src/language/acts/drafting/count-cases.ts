/** What a number in a clause tells: how many, of how many, in each, of another plant, or nothing of plants at all. */
import { wordAt } from '../../grammar/rule.js';
import { countsNoPlants, isBesideAct, isExcepted, isOutOf, isSource } from './beside-counts.js';
import { type Case, isBeforeAct, passOver } from './case.js';
import { lastPotCases } from './last-pot.js';
import { type CountSeen, numberOf } from './count-seen.js';
import { cutUp } from './cut-up.js';
import { eachCases } from './each-cases.js';
import { plainCountCases } from './plain-count-cases.js';
import { isCheck, yesAndNo } from './yes-and-no.js';
import { restCases, takeOver } from './rest-cases.js';

export const countCases: readonly Case<CountSeen>[] = [
  ...lastPotCases,
  {
    name: '<plant>, each one in a pot of its own',
    phrasings: ['Put the Salt Harrier each one in its own 9cm pot'],
    when: ({ pieces, at, count }) => count.weak === true && wordAt(pieces, at - 1) === 'each',
    does: passOver,
  },
  {
    // "Tips off both": the plants just named, and no number of its own.
    name: '<count> each of <plant> and <plant>, … both',
    phrasings: ['Took three each of Salt Harrier and Tallow Bell, tips off both'],
    when: ({ told, count }) =>
      count.both === true && told.drafts.length > 1 && told.drafts.every(({ plant }) => plant !== undefined),
    does: passOver,
  },
  {
    // No number of plants.
    name: 'roots out of <count> pots',
    phrasings: [
      'Checked Salt Harrier, roots out of three of the four pots',
      'Looked at Salt Harrier, ten basal shoots',
    ],
    when: (seen) =>
      isCheck(seen) &&
      /^(?:pots?|trays?|shoots?|buds?|flowers?)$/.test(
        wordAt(seen.pieces, seen.pieces[seen.at + 1]?.is === 'cutting' ? seen.at + 2 : seen.at + 1),
      ),
    does: passOver,
  },
  ...yesAndNo,
  {
    name: 'out of the <count>',
    phrasings: ['Out of the 12 Salt Harrier, 7 have rooted'],
    when: ({ draft, pieces, at, clause }) => draft.quantity === undefined && isSource(pieces, at, clause),
    does: ({ told }) => {
      told.sourced = true;
    },
    goesOn: true,
  },
  {
    name: 'no roots except on <count>',
    phrasings: ['No roots yet except on two', 'None of the Salt Harrier rooted bar one'],
    when: ({ draft, clause, count, pieces, at }) =>
      clause.hit?.rule.kind === 'check' &&
      (clause.hit.rule.rooted === 'none' || draft.quantity?.value === 0) &&
      count.value !== undefined &&
      isExcepted(pieces, /^(?:on|in|for)$/.test(wordAt(pieces, at - 1)) ? at - 1 : at),
    does: ({ draft, count }) => {
      draft.quantity = { value: numberOf(count), settles: true };
    },
  },
  {
    name: 'all bar <count>',
    phrasings: [
      'Salt Harrier all rooted bar two',
      'Salt Harrier all rooted apart from two',
      'The Salt Harrier have rooted, bar three',
      'Potted all the Salt Harrier on except the sulker',
      'The rest of the Salt Harrier are rooted bar one',
    ],
    when: ({ draft, count, pieces, at, clause }) =>
      (draft.quantity?.whole === 'all' ||
        (clause.hit?.rule.kind === 'check' && draft.quantity?.whole === 'rest') ||
        // No "of the Tallow Bell but four".
        (draft.quantity === undefined && draft.plant !== undefined && wordAt(pieces, at - 1) !== 'but')) &&
      (count.allBut !== undefined || (count.value !== undefined && isExcepted(pieces, at))),
    does: ({ draft, count }) => {
      draft.quantity = { allBut: count.allBut ?? numberOf(count) };
    },
  },
  {
    name: '<count> rooted of <count>',
    phrasings: [
      'Salt Harrier: six rooted of eleven',
      '190 rooted of 240 Salt Harrier',
      '190 have rooted out of the 240 Salt Harrier',
    ],
    when: (seen) =>
      isCheck(seen) &&
      seen.at > (seen.clause.hit?.to ?? 0) &&
      isOutOf(seen.pieces, seen.at) &&
      (!seen.leads || seen.draft.plant === undefined) &&
      seen.draft.quantity?.value !== undefined &&
      seen.count.value !== undefined &&
      seen.draft.quantity.value <= numberOf(seen.count),
    does: ({ draft, count }) => {
      draft.quantity = { ...draft.quantity, outOf: numberOf(count) };
    },
  },
  {
    // What there were of them, and then how many of those.
    name: '<count> <plant>, <count> rooted',
    phrasings: ['12 Salt Harrier, nine rooted', '12 Salt Harrier: nine rooted'],
    when: ({ clause, pieces, at, draft, count }) =>
      clause.subjectFirst &&
      /^(?:check|loss)$/.test(clause.hit?.rule.kind ?? '') &&
      at === (clause.hit?.from ?? 0) - 1 &&
      pieces[at - 1]?.is === 'break' &&
      pieces[at - 2]?.is === 'plant' &&
      pieces[at - 3]?.is === 'count' &&
      count.value !== undefined &&
      !count.more &&
      (draft.quantity?.value ?? 0) > count.value,
    does: ({ draft, count, clause }) => {
      const outOf = clause.hit?.rule.kind === 'check' ? draft.quantity?.value : undefined;
      draft.quantity = { value: numberOf(count), ...(outOf === undefined ? {} : { outOf }) };
    },
  },
  {
    // The cuttings are the pieces.
    name: 'a <plant> leaf into <count>',
    phrasings: ['Chopped a streptocarpus leaf into nine and stood the bits in perlite'],
    when: (seen) => wordAt(seen.pieces, seen.at - 1) === 'into' && cutUp(seen) !== undefined,
    does: (seen) => {
      takeOver(seen);
      const part = cutUp(seen);
      if (part && part !== 'stem') seen.draft.cutting ??= part;
    },
  },
  {
    name: '<count> leaves of <plant>',
    phrasings: ['Took two leaves off the streptocarpus and put them in water'],
    when: ({ draft, clause, pieces, at, count }) =>
      clause.hit?.rule.kind === 'strike' &&
      draft.quantity === undefined &&
      count.value !== undefined &&
      /^(?:leaf|leaves)$/.test(wordAt(pieces, at + 1)) &&
      /^(?:of|off|from)$/.test(wordAt(pieces, at + 2)) &&
      !/^(?:with|to|has|have|leaving|into)$/.test(wordAt(pieces, at - 1)),
    does: (seen) => {
      takeOver(seen);
      seen.draft.cutting ??= 'leaf';
    },
  },
  {
    // How many plants went with it, is asked.
    name: 'lost <count> of the trays',
    phrasings: ['Lost one of the trays off the shelf'],
    when: ({ clause, pieces, at }) =>
      clause.hit?.rule.kind === 'loss' &&
      wordAt(pieces, at + 1) === 'the' &&
      /^(?:trays|boxes|flats)$/.test(wordAt(pieces, at + 2)),
    does: ({ draft }) => {
      draft.quantity = { vague: true };
    },
  },
  {
    name: '<count> left',
    phrasings: ['Lost three Salt Harrier, down to five', 'Potted on Salt Harrier, 9 left'],
    when: ({ pieces, at }) => countsNoPlants(pieces, at),
    does: passOver,
  },
  {
    // Of which sort, not how many.
    name: '<count>, all <plant>',
    phrasings: ['Took five, potted three - all Salt Harrier'],
    when: ({ draft, count, leads, pieces, at }) =>
      count.whole === 'all' && draft.quantity?.value !== undefined && leads && pieces[at - 1]?.is === 'break',
    does: passOver,
  },
  {
    name: '<count> from the pot of <count>',
    phrasings: ['Salt Harrier: binned two from the pot of four'],
    when: ({ draft, pieces, at }) =>
      draft.quantity?.value !== undefined &&
      wordAt(pieces, at - 1) === 'of' &&
      /^(?:pot|tray|batch|lot)$/.test(wordAt(pieces, at - 2)),
    does: passOver,
  },
  {
    name: 'out of the <count>, <count>',
    phrasings: ['Out of the 12 Salt Harrier, 7 have rooted'],
    when: ({ told, draft, count, leads }) =>
      told.sourced && draft.quantity?.value !== undefined && count.value !== undefined && !leads,
    does: ({ told, draft, count }) => {
      draft.quantity = { ...count, outOf: numberOf(draft.quantity) };
      told.sourced = false;
    },
  },
  {
    name: 'out of the <count>, all',
    phrasings: ['From the 14 Salt Harrier all but two have rooted'],
    when: ({ told, count }) => told.sourced && (count.whole !== undefined || count.allBut !== undefined),
    does: (seen) => {
      takeOver(seen);
      seen.told.sourced = false;
    },
  },
  ...eachCases,
  {
    name: 'a few, <count>',
    phrasings: ['Took some cuttings of Salt Harrier, eight of them'],
    when: ({ draft, count, leads }) => draft.quantity?.vague === true && count.value !== undefined && !leads,
    does: takeOver,
  },
  {
    // The number behind the act.
    name: '<count> of <plant>: potted <count>',
    phrasings: ['24 of the Salt Harrier: potted on 20'],
    when: (seen) =>
      !seen.clause.subjectFirst &&
      seen.at > (seen.clause.hit?.from ?? seen.pieces.length) &&
      seen.told.countedBefore &&
      !isCheck(seen) &&
      seen.draft.plant !== undefined &&
      seen.count.value !== undefined &&
      !seen.leads,
    does: (seen) => {
      takeOver(seen);
      seen.told.countedBefore = false;
    },
  },
  {
    // The number beside the act.
    name: '<count> fine, <count> dead',
    phrasings: ['Salt Harrier: 9 fine, 3 dead', 'Had six Salt Harrier but only four rooted'],
    when: (seen) =>
      seen.clause.subjectFirst &&
      isBeforeAct(seen) &&
      seen.draft.quantity?.value !== undefined &&
      seen.count.value !== undefined &&
      !seen.leads &&
      isBesideAct(seen.pieces, seen.at),
    does: takeOver,
  },
  ...restCases,
  ...plainCountCases,
];
