/** One walk to the bench serves several batches where looking a little early costs little. */
import { addDays, type Day } from '../calendar/day.js';
import type { Due } from './due.js';

/** Looks at one place are brought forward to the day of the first of them, as far as each can spare the days. */
export function bundled(all: readonly Due[]): readonly Due[] {
  const walks = new Map<string, Day>();
  const moved = new Map<string, Due>();
  const looks = all.filter(({ kind }) => kind === 'check').sort((a, b) => (a.from < b.from ? -1 : 1));
  for (const look of looks) {
    const place = look.place ?? '';
    const walk = walks.get(place);
    const spare = look.why.because === 'rootsExpected' ? look.why.rooting.spareDays : 0;
    if (walk !== undefined && walk < look.from && addDays(look.from, -spare) <= walk)
      moved.set(look.key, { ...look, from: walk });
    else if (walk === undefined || look.from > walk) walks.set(place, look.from);
  }
  return all.map((due) => moved.get(due.key) ?? due);
}
