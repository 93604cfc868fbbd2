/** What comes next for a batch, as its receipt says it: from when, and on what ground. */
import type { Due } from '../outlook/due.js';
import { rootsExpected } from './due-reason.js';
import { tellWords } from './prompts.js';
import { capital, dayWords, type Speech } from './speech.js';

/** "Look for roots from Thu 12 Mar; half should be ready 14–22 Mar (10–14 days is usual, a starting guess)." */
export function nextWords(due: Due, speech: Speech & { readonly named: boolean }): string {
  const words = tellWords(due, speech);
  const deed = speech.named ? words : words.replace(/^[^:]*: /, '');
  const from = due.from <= speech.today ? 'now' : `from ${dayWords(due.from, speech)}`;
  return `${capital(deed)} ${from}${groundWords(due, speech)}.`;
}

function groundWords({ why }: Due, speech: Speech): string {
  switch (why.because) {
    case 'rootsExpected':
      return `; ${rootsExpected(why, speech)}`;
    case 'plantingNears':
      return `, to go out about ${dayWords(why.plantOutOn, speech)}`;
    default:
      return '';
  }
}
