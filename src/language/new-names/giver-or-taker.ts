/** Names of people where a plant's might stand. */
import { wordAt } from '../grammar/rule.js';
import type { Piece } from '../pieces.js';

const HANDS_ON = /^(?:sell|give|send|hand|post|pass|flog|mail|ship|invoice)$/;
const GAVE = /^(?:gave|brought|sent|sold|handed|dropped|posted)$/;

/** Whether a name so many words long, between `before` and `behind`, is of who had plants or gave them. */
export function isGiverOrTaker(
  before: readonly Piece[],
  behind: readonly Piece[],
  length: number,
  isCapital: boolean,
): boolean {
  const last = before.at(-1);
  // "Sold Pauline 3 Salt Harrier".
  const had =
    length < 3 &&
    isCapital &&
    last?.is === 'word' &&
    HANDS_ON.test(last.verb?.lemma ?? '') &&
    behind[0]?.is === 'count' &&
    behind.slice(0, 4).some(({ is }) => is === 'plant');
  // "Ten plugs Nuala gave me".
  const gave = length === 1 && GAVE.test(wordAt(behind, 0)) && /^(?:me|us)$/.test(wordAt(behind, 1));
  return had || gave;
}
