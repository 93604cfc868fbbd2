/** Parts of a row that name what was not dealt with, beside what was: "…, the Tallow Bell still to do", "didn't get as far as the porch". */
import { isJoint, partsOfLine } from './left-undone/parts.js';
import { isLeft, isLeftOut, isNotReached } from './left-undone/phrases.js';
import { findHits } from '../grammar/hits.js';
import { rules } from '../grammar/rules.js';
import { isWhole } from '../grammar/stand-ins.js';
import type { Piece } from '../pieces/pieces.js';
import type { Proposal } from '../proposal.js';
import { firstOf, plantsIn, textOf } from '../sentences/sentences.js';
import type { Utterance } from '../pieces/utterance.js';
import { isToCome } from '../mood/yet-to-be.js';

export interface DoneAndLeft {
  /** The row without those parts. */
  readonly done: readonly Piece[];
  /** Those with a day to come: what is intended. */
  readonly later: readonly (readonly Piece[])[];
}

const isAll = (piece: Piece): boolean =>
  isWhole(piece) || (piece.is === 'word' && /^(?:all|everything|every|lot)$/.test(piece.text));

/** Takes from a row what it names as left undone; as it was where nothing else was done. */
export function doneAndLeft(row: readonly Piece[]): DoneAndLeft {
  const parts = partsOfLine(row);
  const same: DoneAndLeft = { done: row, later: [] };
  if (parts.length < 2) return same;
  // "Misted all the cuttings but not the Salt Harrier": all the others, as the draft of the act tells.
  const whole = row.some(isAll);
  const left = parts.map(
    ({ line }, n) => (n > 0 && isLeft(line)) || (isNotReached(line) && !(whole && isLeftOut(line))),
  );
  if (!left.includes(true)) return same;
  const hits = findHits(rules, row);
  for (const [n, { from, to }] of parts.entries())
    if (hits.some((hit) => !hit.rule.faint && hit.own.some((at) => at >= from && at < to))) left[n] = false;
  // "…, the Tallow Bell and the Marble Wren still to do": both.
  for (let n = parts.length - 1; n > 1; n--)
    if (left[n] && parts[n]?.joined && parts[n - 1]?.bare) left[n - 1] = true;
  const isDone = (at: number): boolean => parts.some(({ from, to }, n) => !left[n] && at >= from && at < to);
  if (!left.includes(true) || !hits.some(({ own }) => own.every(isDone))) return same;
  return {
    done: row.filter((_, at) => isDone(at)),
    later: parts.flatMap(({ from, to }, n) => {
      const part = left[n] ? row.slice(from, to) : [];
      return part.some(isToCome) ? [part] : [];
    }),
  };
}

/** "…, the Tallow Bell tomorrow": an intention, with its day. */
export function leftForLater(
  parts: readonly (readonly Piece[])[],
  utterance: Utterance,
): readonly Proposal[] {
  return parts.map((part) => {
    const when = firstOf(part, 'when')?.when;
    const [named, another] = plantsIn(part);
    return {
      kind: 'remind',
      rule: '<plant> <later>',
      slots: {
        text: textOf(
          part.filter((piece) => !isJoint(piece)),
          utterance,
          ({ is }) => is === 'when',
        ),
      },
      draft: { ...(when ? { when } : {}), ...(named && !another ? { plant: named.plant } : {}) },
      future: true,
    };
  });
}
