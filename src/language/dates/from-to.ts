/** From one day or span to another, whichever of the two is open. */
import { type Day, daysBetween } from '../../calendar/day.js';
import { ambiguous, boundsOf, changed, impossible, isDoubt, type Resolved, type When } from './meaning.js';

export const joins = 'to|-|until|through';

/**
 * From the first day of one to the last of another. An open end is the first such after the start; an open start the
 * last such before the end; where both are open, things done end in the past and plans begin in the future.
 */
export function fromTo(start: When, end: When): When {
  return {
    certain: true,
    mean: (leaning, now) => {
      const endFirst = start.open === true && (end.open !== true || leaning === 'past');
      const first = endFirst ? end.mean(leaning, now) : start.mean(leaning, now);
      if (isDoubt(first)) return first;
      const bounds = boundsOf(first);
      if (endFirst) {
        const before = start.mean('past', { ...now, today: bounds.to });
        return isDoubt(before) ? before : ordered(boundsOf(before).from, bounds.to);
      }
      const after =
        end.open === true ? end.mean('future', { ...now, today: bounds.from }) : end.mean(leaning, now);
      return isDoubt(after) ? after : ordered(bounds.from, boundsOf(after).to);
    },
  };
}

function ordered(from: Day, to: Day): Resolved {
  return from <= to ? { from, to } : impossible;
}

/** Two days beside each other are a span; two apart are two days, of which a phrase cannot say one. */
export function pair(first: When, last: When): When {
  return changed(fromTo(first, last), ({ from, to }) =>
    daysBetween(from, to) === 1 ? { from, to } : ambiguous,
  );
}
