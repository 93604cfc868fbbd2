/** What a search in remarks found. */
import type { Day } from '../calendar/day.js';
import { firstDay, type Span } from '../calendar/span.js';
import { dateWords, many, type Speech } from './speech.js';

export interface FoundRemark {
  readonly on: Day | Span;
  readonly about: readonly string[];
  readonly text: string;
}

export function foundNothing(words: string): string {
  return `No remark says “${words}”.`;
}

export function foundRemarks(found: readonly FoundRemark[], speech: Speech): string {
  const lines = found.map(
    ({ on, about, text }) =>
      `${dateWords(firstDay(on), speech)}${about.length > 0 ? ` ${about.join(', ')}` : ''}: ${text}`,
  );
  return [`${many(found.length, 'remark')}:`, ...lines].join('\n');
}
