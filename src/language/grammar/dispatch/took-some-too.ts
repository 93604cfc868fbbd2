/** What somebody had of plants that left already: "sold 7 Salt Harrier and Gran took 2", "…, Doreen bought three". */
import type { Piece } from '../../pieces/pieces.js';
import { PESTS } from '../loss/pests.js';
import { CUTTINGS } from '../taken-away.js';
import { endsAt, followsWord, type Rule, wordAt } from '../rule.js';
import { isSomebody } from './fetched.js';

const LEFT = /^(?:sell|give|donate|swap|flog|dispatch|gift)$/;

/** Plants were named that were sold or given away, by a deed before it in the row. */
function haveLeft(pieces: readonly Piece[], from: number): boolean {
  const deed = pieces.findIndex(
    (piece) => piece.is === 'word' && piece.verb?.form === 'past' && LEFT.test(piece.verb.lemma),
  );
  return deed >= 0 && deed < from && pieces.slice(0, from).some(({ is }) => is === 'plant');
}

/** "Took 2", "took the rest", "had two more home": so many, and no thing that they are of. */
function tellsNumber(pieces: readonly Piece[], at: number): boolean {
  const count = pieces[at];
  if (count?.is !== 'count' || (count.quantity.value === undefined && count.quantity.whole === undefined))
    return false;
  let end = at + 1;
  while (/^(?:of|them|more|home|away|as|well|with|him|her|off|me)$/.test(wordAt(pieces, end))) end++;
  return endsAt(pieces, end) || /^(?:for|at)$/.test(wordAt(pieces, end));
}

/** "He said his wife had six last year": what somebody told of plants of their own. */
const isHearsay = (pieces: readonly Piece[], from: number): boolean =>
  [2, 3, 4, 5].some((back) =>
    /^(?:said|says|reckons|reckoned|told|tells|thinks)$/.test(wordAt(pieces, from - back)),
  );

/** Somebody who has so many of the plants that left before, and no cuttings of them. */
export const hadSomeToo: NonNullable<Rule['when']> = (pieces, from, to) =>
  haveLeft(pieces, from) &&
  isSomebody(pieces, from) &&
  !isHearsay(pieces, from) &&
  ![1, 2].some((n) => PESTS.includes(wordAt(pieces, from - n))) &&
  tellsNumber(pieces, to) &&
  !followsWord(pieces, to, CUTTINGS);

export const tookSomeToo: readonly Rule[] = [
  {
    name: 'sold <count> <plant> and <recipient> took <count>',
    kind: 'dispatch',
    sense: 'recipient first',
    head: 'take~past|have~past|grab~past|nab~past|pick~past|collect~past up|home|away|off?',
    shape: 'object',
    when: hadSomeToo,
    phrasings: [
      'gave 7 Salt Harrier to the school and Gran took 2',
      'sold 7 Salt Harrier at the fete, my sister had two more',
      'gave four Salt Harrier to Doreen, mum took the rest home',
    ],
    mustNot: ['potted on 7 Salt Harrier and Gran took 2', 'lost 7 Salt Harrier and it took two days'],
  },
  {
    name: 'sold <count> <plant>, <recipient> bought <count>',
    kind: 'dispatch',
    sense: 'recipient first',
    how: 'sold',
    head: 'buy~past',
    shape: 'object',
    when: hadSomeToo,
    phrasings: ['gave 7 Salt Harrier to the school, and Doreen bought three'],
  },
];
