/** Two numbers before one act, of which one is all there are or what is left of them. */
import { type Case, isBeforeAct } from './case.js';
import type { CountSeen } from './count-seen.js';

/** The number of the draft, in place of the one that it had. */
export const takeOver = ({ draft, count }: CountSeen): void => {
  draft.quantity = count;
};

export const restCases: readonly Case<CountSeen>[] = [
  {
    // Whether those were told as rooted too, nobody can say: how many, the grower knows.
    name: '<count> and the rest have rooted',
    phrasings: ['Salt Harrier: five and the rest rooted'],
    when: (seen) =>
      seen.clause.hit?.rule.kind === 'check' &&
      seen.count.whole === 'rest' &&
      seen.draft.quantity?.value !== undefined &&
      isBeforeAct(seen),
    does: ({ draft }) => {
      draft.quantity = { vague: true };
    },
  },
  {
    name: '<count> and the rest are dead',
    phrasings: [
      'Five of the Salt Harrier and the rest are dead',
      'We have four Salt Harrier the other two died',
    ],
    when: (seen) =>
      (seen.count.whole === 'rest' || (seen.count.besides === true && seen.count.value !== undefined)) &&
      seen.draft.quantity?.value !== undefined &&
      !seen.leads &&
      isBeforeAct(seen),
    does: takeOver,
  },
  {
    // The first tells where all of them stood.
    name: '<count> <plant> in <place>, <count> sold',
    phrasings: [
      '8 Salt Harrier out on the honesty stall, 3 sold already',
      '8 Salt Harrier in the porch, 3 rooted',
    ],
    when: ({ draft, count, pieces, at, clause }) =>
      /^(?:check|dispatch|loss|potOn|move|plantOut)$/.test(clause.hit?.rule.kind ?? '') &&
      at + 1 === clause.hit?.from &&
      pieces[at - 1]?.is === 'break' &&
      draft.plant !== undefined &&
      count.value !== undefined &&
      draft.quantity?.value !== undefined &&
      count.value < draft.quantity.value,
    does: takeOver,
  },
  {
    // The number beside the act.
    name: 'all of them and <count> are holding',
    phrasings: ['Salt Harrier: tugged on all of them and eleven are holding'],
    when: (seen) =>
      seen.draft.quantity?.whole !== undefined &&
      seen.count.value !== undefined &&
      !seen.leads &&
      isBeforeAct(seen),
    does: takeOver,
  },
];
