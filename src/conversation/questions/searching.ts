/** Finds words in remarks. */
import { entriesOf } from '../../ledger/ledger.js';
import { foundNothing, foundRemarks } from '../../words/search.js';
import { speechOf } from '../batches/deeds.js';
import type { Sitting } from '../sitting.js';

/** Remarks in which every word occurs, newest first. */
export function searchRemarks(sitting: Sitting, words: string): void {
  const wanted = words
    .toLowerCase()
    .split(/\s+/)
    .filter((word) => word !== '');
  const found = entriesOf(sitting.ledger, 'remark').filter(({ entry, touched }) => {
    const text = [entry.text ?? '', entry.variety ?? '', ...touched].join(' ').toLowerCase();
    return wanted.every((word) => text.includes(word));
  });
  sitting.reply.text.push(
    found.length === 0
      ? foundNothing(words)
      : foundRemarks(
          found
            .map(({ entry, touched }) => ({ on: entry.date, about: touched, text: entry.text ?? '' }))
            .reverse(),
          speechOf(sitting),
        ),
  );
}
