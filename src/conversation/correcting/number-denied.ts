/** The number that a correction denies. */
import type { ReadEntry } from '../../language/note.js';
import { numberAt } from '../../language/pieces/numbers.js';
import { tokenise } from '../../language/row/tokens.js';
import type { Plant } from '../../ledger/entry.js';
import type { StandingEntry } from '../../ledger/ledger.js';
import { plantOf } from '../../ledger/reach.js';
import type { Sitting } from '../sitting.js';
import { isAbout, numberOf, type Slots } from './entry-meant.js';

/** “Not five, four”: the number that is denied. */
export function deniedNumber(text: string): number | undefined {
  const denied = /\bnot (?:the )?([\p{L}\d]+)/iu.exec(text)?.[1];
  return denied === undefined ? undefined : numberAt(tokenise(denied), 0)?.value;
}

/** So long an entry may be put right by a number that it does not hold. */
export const FRESH_MS = 24 * 3_600_000;

/** "Not five, four" is not of what was noted long ago and never was five. */
export function deniesOther({ text, origin }: Sitting, { entry, journal }: StandingEntry): boolean {
  const number = deniedNumber(text);
  return number !== undefined && numberOf(entry) !== number && origin.at - journal.at > FRESH_MS;
}

/** "Three Salt Harrier, not four", of which nobody told four. */
export const deniesAll = ({ ledger, text }: Sitting, plant: Plant, set: Slots): boolean =>
  'count' in set &&
  !ledger.standing.some(
    (each) => isAbout(ledger, each, plant) && numberOf(each.entry) === deniedNumber(text),
  );

/** So long after a note is one that denies another number said of it. */
const LATELY_MS = 3_600_000;

/** "Three Salt Harrier lost, not two", right behind three that were lost: told as it stands, and no three more. */
export function standsSo({ ledger, origin, text }: Sitting, said: ReadEntry['entry']): boolean {
  const denied = deniedNumber(text);
  const last = ledger.standing.findLast(
    (each) => each.entry.kind === said.kind && isAbout(ledger, each, plantOf(said as Plant)),
  );
  return (
    denied !== undefined &&
    denied !== numberOf(said) &&
    last !== undefined &&
    numberOf(last.entry) === numberOf(said) &&
    origin.at - last.journal.at <= LATELY_MS
  );
}
