/** Two capitals that head a line of what was struck: "Ember Fox: 12 trays of 70 struck", "Ember Fox cuttings, six, basal". */
import { wordAt } from '../../grammar/rule.js';
import { isCapitalOf } from './capitals.js';
import type { RunSeen } from './run.js';

const STRUCK = /^(?:struck|stuck|taken|inserted)$/;
const TITLE =
  /^(?:mrs?|miss|ms|dr|auntie?|uncle|father|fr|sister|brother|nan|nana|gran|granny|grandad|cousin|lady|sir)$/;
const TAKEN = /^(?:struck|stuck|taken|inserted|cuttings?|slips?|basals?|tips?|nodes?|heels?)$/;

/** Whether behind a name at the head of a sentence stand a mark and a number, and something that only cuttings are; no other plant. */
export function headsCuttings({ pieces, tokens, at: from, end }: RunSeen): boolean {
  if (TITLE.test(wordAt(pieces, from))) return false;
  let at = end;
  if (wordAt(pieces, at) === 'cuttings' || STRUCK.test(wordAt(pieces, at))) at++;
  const mark = pieces[at];
  if (
    mark?.is !== 'break' ||
    /^[.!?\n]/.test(mark.mark) ||
    !/^(?:count|pots)$/.test(pieces[at + 1]?.is ?? '')
  )
    return false;
  let isTaken = at > end;
  for (const [n, piece] of pieces.entries()) {
    if (n <= at) continue;
    // "Doreen Hatch, two Marble Finch": the plant is another.
    if (piece.is === 'plant' || (n === at + 2 && isCapitalOf(tokens, piece))) return false;
    if (piece.is === 'break' && piece.hard) break;
    if (piece.is === 'cutting' || TAKEN.test(wordAt(pieces, n))) isTaken = true;
  }
  return isTaken;
}
