/** Plants that the grower has, told from the side of whoever came by so many: "Doreen got two", "the farm shop bought 60". */
import type { Piece } from '../../pieces/pieces.js';
import { pastPerson } from '../../mood/somebody-else.js';
import { isReceiver } from '../other-people.js';
import { CUTTINGS } from '../taken-away.js';
import { followsWord, type Rule, wordAt } from '../rule.js';
import { isSomebody } from './fetched.js';

/** "… only", "… another". */
const MORE_OR_LESS = /^(?:only|just|another|also|the|both|all)$/;
/** What tells that they came from elsewhere, or what became of their own. */
const ELSEWHERE =
  /^(?:from|off|at|by|to|through|rooted|potted|planted|going|growing|in|into|her|his|their|hers|theirs|own|out)$/;

/** So many of a plant that the grower has, and nothing of where else they came from. */
export function cameByOurs(pieces: readonly Piece[], from: number, to: number): boolean {
  let at = to;
  while (MORE_OR_LESS.test(wordAt(pieces, at))) at++;
  if (pieces[at]?.is !== 'count') return false;
  at++;
  while (/^(?:of|the|my|our|those|more)$/.test(wordAt(pieces, at))) at++;
  const plant = pieces[at];
  return (
    plant?.is === 'plant' &&
    plant.known &&
    (plant.plant.variety ?? plant.plant.batch) !== undefined &&
    isWho(pieces, from) &&
    !followsWord(pieces, at, CUTTINGS) &&
    // "… from me", and "… for me", which is no gift.
    followsWord(pieces, at, /^(?:me|us)$/) === followsWord(pieces, at, ELSEWHERE)
  );
}

/** "The temple committee", "Fenwold Garden Centre", "my sister Orla". */
function isWho(pieces: readonly Piece[], from: number): boolean {
  if (isSomebody(pieces, from) || isReceiver(pieces[from - 1])) return true;
  for (let at = from - 1; at >= Math.max(0, from - 5); at--) {
    if (pieces[at]?.is === 'break' || /^(?:and|then|but)$/.test(wordAt(pieces, at))) return false;
    const person = pastPerson(pieces, at);
    if (person?.to === from && person.sure) return true;
  }
  return false;
}

export const cameBy: readonly Rule[] = [
  {
    name: '<recipient> got <count> <plant>',
    kind: 'dispatch',
    sense: 'recipient first',
    head: 'got|received|gets|nabbed|bagged',
    shape: 'object',
    when: cameByOurs,
    phrasings: [
      'Doreen got two Salt Harrier',
      'my sister Orla got 2 Salt Harrier',
      'Birgit, my colleague, got 4 Salt Harrier',
      'Doreen next door got only one of the Salt Harrier',
      'my mother received one Salt Harrier',
      'the school received 6 Salt Harrier yesterday',
      'the school got 2 Salt Harrier for the garden',
    ],
    mustNot: [
      'I got two Salt Harrier',
      'slugs got two Salt Harrier',
      'the frost got 4 of the Salt Harrier',
      'Doreen got two Salt Harrier from the market',
      'Doreen got two Salt Harrier for me',
      'Doreen got two Salt Harrier cuttings to root',
      'Doreen got two of her Salt Harrier rooted',
    ],
  },
  {
    name: '<recipient> bought <count> <plant>',
    kind: 'dispatch',
    sense: 'recipient first',
    head: 'buy~past|purchased',
    shape: 'object',
    how: 'sold',
    when: cameByOurs,
    phrasings: [
      'Mrs Abbery bought four Salt Harrier',
      'Hexley Garden Centre bought 60 Salt Harrier',
      'the temple committee bought 14 Salt Harrier',
    ],
    mustNot: [
      'bought two Salt Harrier',
      'Doreen bought a Salt Harrier',
      'Doreen bought two Salt Harrier at the market',
      'we bought two Salt Harrier',
    ],
  },
];
