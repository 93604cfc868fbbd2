/** Looks told by yes and no: "root check: two yes, three no" is two of five. */
import { endsAt, wordAt } from '../../grammar/rule.js';
import { type Case, passOver } from './case.js';
import { type CountSeen, numberOf } from './count-seen.js';

export const isCheck = ({ clause }: CountSeen): boolean => clause.hit?.rule.kind === 'check';

/** "Two yes, three no": the three, where this is the two. */
function noesBehind({ pieces, at }: Pick<CountSeen, 'pieces' | 'at'>): number | undefined {
  if (!/^(?:yes|yeses)$/.test(wordAt(pieces, at + 1))) return undefined;
  const next = pieces[at + 2]?.is === 'break' || wordAt(pieces, at + 2) === 'and' ? at + 3 : at + 2;
  const noes = pieces[next];
  const isNo = /^(?:no|noes|not|nos)$/.test(wordAt(pieces, next + 1)) && endsAt(pieces, next + 2);
  return noes?.is === 'count' && isNo ? noes.quantity.value : undefined;
}

export const yesAndNo: readonly Case<CountSeen>[] = [
  {
    // Of so many looked at together.
    name: '<count> yes, <count> no',
    phrasings: ['Salt Harrier root check: two yes, three no'],
    when: (seen) => isCheck(seen) && seen.count.value !== undefined && noesBehind(seen) !== undefined,
    does: (seen) => {
      const yeses = numberOf(seen.count);
      seen.draft.quantity = { value: yeses, outOf: yeses + (noesBehind(seen) ?? 0) };
    },
  },
  {
    name: '<count> no, behind <count> yes',
    phrasings: ['Checked the Salt Harrier for roots, four yes two no'],
    when: (seen) =>
      isCheck(seen) && wordAt(seen.pieces, seen.at + 1) === 'no' && seen.draft.quantity?.outOf !== undefined,
    does: passOver,
  },
];
