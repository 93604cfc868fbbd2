/** What is said when something is taken back. */
import { listWords } from './speech.js';

/** `kind` as the grower calls it: "sale", "potting on". */
export const noneToUndo = (kind: string, plant: string): string =>
  `I have no note of ${/^[aeiou]/.test(kind) ? 'an' : 'a'} ${kind}${plant === '' ? '' : ` of ${plant}`} to take back.`;
export const nothingToUndo = 'There is nothing left to take back.';
export const undoLabel = 'Undo';
export const changeLabel = 'Change';
export const putBackLabel = 'Put it back';
export const takeAllBack = 'Take all of it back';
export const alreadyTakenBack = 'That was taken back already.';

export function undoManyLabel(count: number): string {
  return count === 2 ? 'Undo both' : `Undo all ${count}`;
}

/** "Taken back: EF1, 12 cuttings of Ember Fox (2 Mar)." */
export function takenBack(deeds: readonly string[]): string {
  return `Taken back: ${deeds.join('; ')}.`;
}

/** "As it was before: …" after a correction is undone. */
export function asBefore(deeds: readonly string[]): string {
  return deeds.length === 0 ? 'The correction is taken back.' : `Back as it was: ${deeds.join('; ')}.`;
}

export function dependantsQuestion(deeds: readonly string[], dependants: readonly string[]): string {
  return `If ${listWords(deeds)} goes, this no longer holds: ${dependants.join('; ')}. Take all of it back?`;
}

export function putBack(deeds: readonly string[]): string {
  return `Put back: ${deeds.join('; ')}.`;
}
