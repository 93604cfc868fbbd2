/** The one question of a prompt, and the words of its buttons. */
import type { Due, DueKind } from '../outlook/due.js';
import { dueReason } from './due-reason.js';
import { type Say, sayOf } from './say.js';

/** "EF1 Ember Fox, day 12: have any of the 10 cuttings rooted?", and why it is asked now. */
export function promptText(due: Due, say: Say = sayOf()): string {
  return `${questionOf(due)}\n${capital(dueReason(due, say))}.`;
}

/** What may be answered with a tap; the same words typed or spoken do the same. */
export function promptAnswers(kind: DueKind): readonly string[] {
  switch (kind) {
    case 'check':
      return ['All', 'Some', 'None yet'];
    case 'potOn':
    case 'pinch':
    case 'hardenOff':
    case 'plantOut':
    case 'strike':
      return ['Done', 'Not yet'];
    default:
      return ['Done'];
  }
}

function questionOf(due: Due): string {
  const name = due.variety ?? due.crop;
  const batch = [due.labels[0], name].filter((each) => each !== undefined && each !== null).join(' ');
  const number = due.count ?? 0;
  switch (due.kind) {
    case 'check': {
      const day = due.why.because === 'rootsExpected' ? `, day ${due.why.day}` : '';
      return number === 1
        ? `${batch}${day}: has the cutting rooted?`
        : `${batch}${day}: how many of the ${number} cuttings have rooted?`;
    }
    case 'potOn':
      return `${batch}: are the ${number} rooted potted on?`;
    case 'pinch':
      return `${batch}: are the ${number} pinched out?`;
    case 'hardenOff':
      return `${batch}: is hardening off begun?`;
    case 'plantOut':
      return `${batch}: are the ${number} planted out?`;
    case 'strike':
      return `${name ?? ''}: have you taken ${number} more?`;
    default:
      return batch;
  }
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
