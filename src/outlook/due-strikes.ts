/** The next round of cuttings, while it can still make up the number that is wanted. */
import { addDays } from '../calendar/day.js';
import { isOf } from '../ledger/batch.js';
import type { Due } from './due.js';
import type { Outlook } from './dues.js';
import { plansOf } from './plan.js';

/** So close to the last day that this number still does, it is said once more. */
const LAST_CALL_DAYS = 2;

export function strikeDues(outlook: Outlook): readonly Due[] {
  return plansOf(outlook).flatMap(
    ({ line, plant, variety, crop, want, by, living, chance, take, from, strikeBy }) => {
      if (take === null || take === 0 || by === null || strikeBy === null || strikeBy < outlook.today)
        return [];
      const rounds = [...outlook.ledger.batches.values()].filter(
        (batch) => batch.struck !== null && isOf(batch, plant),
      ).length;
      return [
        {
          key: `strike:${line}:${rounds}${strikeBy <= addDays(outlook.today, LAST_CALL_DAYS) ? ':last' : ''}`,
          kind: 'strike' as const,
          labels: [],
          variety,
          crop,
          place: null,
          count: take,
          from,
          bestBy: strikeBy,
          // Past the last day that same number no longer does; the plan then names another or none.
          tooLateAfter: strikeBy,
          at: null,
          asks: true,
          why: { because: 'tooFew' as const, want, by, living, chance, take },
        },
      ];
    },
  );
}
