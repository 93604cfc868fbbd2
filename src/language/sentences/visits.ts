/** Talk of a visit to the bench before the telling begins: "grand morning so I finally got at the dahlias, ten basals off …". */
import { clausesOf } from '../clauses/clauses.js';
import { wordAt } from '../grammar/rule.js';
import { rules } from '../grammar/rules.js';
import type { Piece } from '../pieces/pieces.js';

const GROWER = /^(?:i|we|i've|we've)$/;
/** What stands between the grower, or the start, and what the grower went about. */
const JUST = /^(?:finally|just|only|have|had|at|last|eventually|also|then|and|so|today)$/;
/** Talk of a time that may never come, or of somebody else's. */
const DOUBT = /^(?:if|when|once|unless|not|never|didn't|haven't|hope|should|would|will|need)$/;

/** A visit of which nothing is told yet. */
const VISITS: readonly (readonly RegExp[])[] = [
  [/^got$/, /^(?:at|stuck|round|around|started|cracking)$/],
  [/^(?:made|had)$/, /^an?$/, /^(?:start|go|blitz|session|morning|afternoon|day)$/],
  [/^(?:was|been)$/, /^(?:at|busy|out|in)$/],
  [/^spent$/, /^(?:an?|the|all|most|half)$/],
  [/^(?:started|turned)$/, /^(?:on|in|to|with)$/],
];

/**
 * The row without a visit to a crop that stands before its first number, where what was done there is told of a plant
 * behind the break; the day of the visit stays.
 */
export function withoutVisit(row: readonly Piece[]): readonly Piece[] {
  const number = row.findIndex(
    (piece) => piece.is === 'pots' || (piece.is === 'count' && piece.quantity.value !== undefined),
  );
  const end = row.slice(0, Math.max(0, number)).findLastIndex(({ is }) => is === 'break');
  const talk = row.slice(0, Math.max(0, end));
  const crop = talk.findIndex(({ is }) => is === 'plant');
  const visited = talk[crop];
  if (visited?.is !== 'plant' || visited.plant.variety !== undefined || visited.plant.batch !== undefined)
    return row;
  if (!isVisit(talk, crop) || talk.slice(crop + 1).some(({ is }) => is === 'plant')) return row;
  if (!row.slice(end).some(({ is }) => is === 'plant')) return row;
  // "Spent the morning potting on fuchsias, then …": something was done there.
  if (clausesOf(talk, rules).some(({ hit }) => hit && hit.rule.kind !== 'aside' && hit.rule.faint !== true))
    return row;
  const day = talk.filter(({ is }) => is === 'when');
  return [...day, ...row.slice(end + (day.length === 0 ? 1 : 0))];
}

/** Whether a visit of the grower's own stands before the crop that was visited. */
function isVisit(talk: readonly Piece[], crop: number): boolean {
  if (talk.some((_, at) => DOUBT.test(wordAt(talk, at)))) return false;
  for (let at = 0; at < crop; at++) {
    if (!VISITS.some((words) => words.every((word, n) => word.test(wordAt(talk, at + n))))) continue;
    let who = at - 1;
    while (JUST.test(wordAt(talk, who)) || talk[who]?.is === 'when') who--;
    return who < 0 || talk[who]?.is === 'break' || GROWER.test(wordAt(talk, who));
  }
  return false;
}
