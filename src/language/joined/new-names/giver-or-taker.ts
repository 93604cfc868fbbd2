/** Names of people where a plant's might stand. */
import { wordAt } from '../../grammar/rule.js';
import { NEVER } from './no-names.js';
import type { Piece } from '../../pieces/pieces.js';

const HANDS_ON = /^(?:sell|give|send|hand|post|pass|flog|mail|ship|invoice|supply)$/;
const GAVE = /^(?:gave|brought|sent|sold|handed|dropped|posted)$/;

type HasCapital = (piece: Piece) => boolean;

/**
 * Whether a name so many words long, between `before` and `behind`, is of who had plants or gave them; `isCapital` asks
 * it of the name, `hasCapital` of a piece behind.
 */
export function isGiverOrTaker(
  before: readonly Piece[],
  behind: readonly Piece[],
  length: number,
  isCapital: boolean,
  hasCapital: HasCapital,
): boolean {
  // "Sold the Potting Shed 60 Salt Harrier".
  const verb = before.at(/^(?:the|our|my)$/.test(wordAt(before, before.length - 1)) ? -2 : -1);
  // "Sold Pauline 3 Salt Harrier", "sold Marsh & Sons 60 Salt Harrier".
  const had =
    isCapital &&
    verb?.is === 'word' &&
    HANDS_ON.test(verb.verb?.lemma ?? '') &&
    countsPlant(behind.slice(pastPartners(behind, hasCapital)), hasCapital);
  // "Ten plugs Nuala gave me".
  const gave = length === 1 && GAVE.test(wordAt(behind, 0)) && /^(?:me|us)$/.test(wordAt(behind, 1));
  return had || gave;
}

/** Behind "took", of how many words the name is of those whom so many of a known plant were taken to: "took Mrs Pike 3 Salt Harrier". */
export function namedTaker(
  before: readonly Piece[],
  behind: readonly Piece[],
  hasCapital: HasCapital,
): number {
  if (wordAt(before, before.length - 1) !== 'took') return 0;
  let length = 0;
  for (let piece = behind[0]; piece?.is === 'word' && hasCapital(piece); piece = behind[length]) {
    if (NEVER.has(piece.text) || /^(?:heel|nodal|stem|semi|soft|hard)$/.test(piece.text)) return 0;
    length++;
  }
  return length > 0 && length < 4 && countsKnown(behind.slice(length)) ? length : 0;
}

/** "3 Salt Harrier", "three of the Salt Harrier", and no number behind. */
function countsKnown(behind: readonly Piece[]): boolean {
  if (behind[0]?.is !== 'count') return false;
  let at = 1;
  while (/^(?:of|the|my|our|best)$/.test(wordAt(behind, at))) at++;
  const plant = behind[at];
  return (
    plant?.is === 'plant' &&
    plant.known &&
    behind[at + 1]?.is !== 'count' &&
    !/^(?:cuttings?|slips|tips|shoots|basals)$/.test(wordAt(behind, at + 1))
  );
}

/** Past "& Sons", "and Mary Abbery". */
function pastPartners(behind: readonly Piece[], hasCapital: HasCapital): number {
  let past = 0;
  for (let at = 0; at < 5; at++) {
    const piece = behind[at];
    if (piece?.is !== 'word') break;
    if (hasCapital(piece)) past = at + 1;
    else if (!/^(?:and|&)$/.test(piece.text)) break;
  }
  return past;
}

/** Whether the word between `before` and `behind` joins the names of those who had plants: "sold Marsh and Sons 60 Salt Harrier". */
export function isJointOfTakers(
  before: readonly Piece[],
  behind: readonly Piece[],
  hasCapital: HasCapital,
): boolean {
  let at = before.length - 1;
  while (at > 0) {
    const piece = before[at];
    if (piece?.is !== 'word' || !(piece.text === '&' || hasCapital(piece))) break;
    at--;
  }
  return (
    at < before.length - 1 &&
    behind[0]?.is === 'word' &&
    hasCapital(behind[0]) &&
    isGiverOrTaker(before.slice(0, at + 1), behind, 0, true, hasCapital)
  );
}

/** "60 Salt Harrier + 45 Tallow Bell"; no "60, Salt Harrier 45" or "60 Salt Harrier 45", where numbers follow their plants. */
function countsPlant(behind: readonly Piece[], hasCapital: HasCapital): boolean {
  if (behind[0]?.is !== 'count') return false;
  // "Sold Len three of the biggest".
  if (/^(?:of|the|my|best|biggest|good|others?|them|those|these)$/.test(wordAt(behind, 1))) return true;
  const named = (piece: Piece): boolean => piece.is === 'plant' || (piece.is === 'word' && hasCapital(piece));
  const at = behind.findIndex((piece, n) => n > 0 && (/^(?:break|count)$/.test(piece.is) || named(piece)));
  const plant = behind[at];
  return at > 0 && at < 4 && plant !== undefined && named(plant) && behind[at + 1]?.is !== 'count';
}
