/** What is due, a line each: what to do, to what, and why. */
import type { Day } from '../calendar/day.js';
import { type Due, isLate } from '../outlook/due.js';
import { dueReason, groundsWords } from './due-reason.js';
import { dayWords, listWords, plural, type Say, sayOf } from './say.js';

/** "Look for roots: EF1 Ember Fox, 10 cuttings (a starting guess from the crop table, 10–14 days)". */
export function dueLine(due: Due, today: Day, say: Say = sayOf()): string {
  const late = isLate(due, today) ? 'Late: ' : '';
  const reason =
    due.why.because === 'rootsExpected' ? groundsWords(due.why.rooting.grounds) : dueReason(due, say);
  return `${late}${taskWords(due, say)} (${reason})`;
}

export const TENDING_WORDS = 'mist if dry, let in air, take out what moulds';

/** The task alone: "Pot on EF1 Ember Fox, 5 plants". */
export function taskWords(due: Due, say: Say = sayOf()): string {
  switch (due.kind) {
    case 'check':
      return `Look for roots: ${batchWords(due, 'cutting')}`;
    case 'potOn':
      return `Pot on ${batchWords(due, 'cutting')}`;
    case 'pinch':
      return `Pinch out ${batchWords(due, 'plant')}`;
    case 'hardenOff':
      return `Start hardening off ${batchWords(due, 'plant')}`;
    case 'plantOut':
      return `Plant out ${batchWords(due, 'plant')}`;
    case 'strike':
      return `Take ${plural(due.count ?? 0, 'more cutting', 'more cuttings')} of ${due.variety ?? due.crop ?? ''} by ${dayWords(due.bestBy, say)}`;
    case 'clearOut':
      return `Clear out ${batchWords(due, 'cutting')}`;
    case 'bringIn':
      return `Bring in ${placeWords(due)} by ${dayWords(due.bestBy, say)}`;
    case 'frostWarning':
      return `Frost: cover or bring in ${placeWords(due)} tonight`;
    case 'tend':
      return `${due.place ? capital(due.place) : 'Cuttings'}: ${TENDING_WORDS}`;
    case 'reminder':
      return due.why.because === 'asked' ? capital(due.why.text) : 'Reminder';
  }
}

function batchWords({ labels, variety, crop, count }: Due, what: string): string {
  const name = variety ?? crop;
  const batch = name === null ? (labels[0] ?? '') : `${labels[0] ?? ''} ${name}`;
  return count === null ? batch : `${batch}, ${plural(count, what, `${what}s`)}`;
}

function placeWords({ labels, place }: Due): string {
  return place ? `${listWords(labels)} (${place})` : listWords(labels);
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
