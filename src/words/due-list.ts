/** What is due, in lines. */
import type { Span } from '../calendar/span.js';
import type { Due } from '../outlook/due.js';
import { tellWords } from './prompts.js';
import { capital, dayWords, type Speech } from './speech.js';

/** "EF1 Ember Fox: look for roots from Thu 12 Mar." */
export function comingWords(due: Due, speech: Speech): string {
  const words = tellWords(due, speech);
  if (due.bestBy < speech.today) return `${words} (since ${dayWords(due.from, speech)})`;
  return due.from <= speech.today ? `${words} (now)` : `${words} from ${dayWords(due.from, speech)}`;
}

export function dueWords(dues: readonly Due[], span: Span, speech: Speech): string {
  if (dues.length === 0) return `Nothing is due up to ${dayWords(span.to, speech)}.`;
  return dues
    .map((due) => `${capital(comingWords(due, speech))}${due.place ? `, ${due.place}` : ''}`)
    .join('\n');
}
