/** Why rounds of cuttings are planned so, in a sentence or two. */
import type { Schedule } from '../horticulture/schedule.js';
import { percent } from './rooting-reason.js';
import { rateWords, type TakingBasis } from './taking-reason.js';

export interface ScheduleBasis extends TakingBasis {
  /** Usual range in days, and whether the crop table or the grower says so. */
  readonly usualDays: readonly [number, number];
  readonly growOnDays: number;
  readonly hardenOffDays: number;
}

/** "24 cuttings in 2 rounds for 12 plants (91% sure): …; 10–14 days to root, 24 to grow on, 10 to harden off." */
export function scheduleReason(schedule: Schedule, basis: ScheduleBasis): string {
  const { want, usualDays, growOnDays, hardenOffDays } = basis;
  if (want === 0) return 'None wanted, none to take.';
  const plants = plantsWords(want);
  const time = `${usualDays[0]}–${usualDays[1]} days to root, ${growOnDays} to grow on, ${hardenOffDays} to harden off`;
  const cuttings = schedule.rounds.reduce((sum, { take }) => sum + take, 0);
  if (!schedule.tooLate) {
    const rounds = schedule.rounds.length === 1 ? '' : ` in ${schedule.rounds.length} rounds`;
    return `${cuttingsWords(cuttings)}${rounds} for ${plants} (${percent(schedule.p)} sure): ${rateWords(basis)}; ${time}.`;
  }
  if (cuttings === 0) return `Too late for ${plants} by that day: ${time}.`;
  const instead =
    schedule.canHave === 0
      ? 'not even one is as sure as you want'
      : `${plantsWords(schedule.canHave)} can still be had as surely as you want`;
  return `Too late for ${plants} by that day: ${cuttingsWords(cuttings)} would give them with ${percent(schedule.p)}, and ${instead}. ${rateWords(basis)}; ${time}.`.replace(
    /\. ([a-z])/,
    (_, letter: string) => `. ${letter.toUpperCase()}`,
  );
}

function plantsWords(count: number): string {
  return count === 1 ? '1 plant' : `${count} plants`;
}

function cuttingsWords(count: number): string {
  return count === 1 ? '1 cutting' : `${count} cuttings`;
}
