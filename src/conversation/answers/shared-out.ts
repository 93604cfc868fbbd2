/** "One of each", "two from the first and one from the second": what was asked of one batch fell on several. */
import type { LoggedEntry } from '../../ledger/entry.js';
import { batchLabelled } from '../../ledger/ledger.js';
import { chooseBatch } from './choosing.js';
import { withBatch } from './completing.js';
import { numberIn } from '../correcting/few-words.js';
import { dayIn } from '../reading/day-in.js';
import type { Sitting } from '../sitting.js';
import type { SlotAsk } from '../talk.js';

/** In UTF-16 units. */
const LONGEST = 90;
const EACH =
  /^(?:it was |they were |just |oh |that was )?(?<number>\d+|\p{L}+) (?:(?:out )?(?:of|from|in|off|to) )?(?:each|both|either|every one)(?: (?:one|lot|batch|pot|tray)| of (?:them|the lots|the batches|the pots))?(?: i think)?[.!]?$/iu;
const PART =
  /^(?:and |just |it was )?(?<number>\d+|\p{L}+)(?: (?:out )?(?:of|from|in|off|to))? (?<which>.{2,40})$/iu;

/** The entries, one a batch, that together are as many as were told; null where the words do not say so. */
export function sharedOut(
  sitting: Sitting,
  { entry, slot, options, then }: SlotAsk,
  text: string,
): readonly LoggedEntry[] | null {
  const { count } = entry as { readonly count?: unknown };
  if (slot !== 'batch' || typeof count !== 'number' || then.length > 0 || text.length > LONGEST) return null;
  const labels = options.flatMap((option) =>
    typeof option === 'string' && batchLabelled(sitting.ledger, option) ? [option] : [],
  );
  const words = text.trim().replace(/[.!]$/, '');
  const shares = eachOf(sitting, words, labels) ?? partsOf(sitting, words, labels);
  const sum = shares?.reduce((so, { number }) => so + number, 0);
  if (!shares || sum !== count || new Set(shares.map(({ label }) => label)).size < 2) return null;
  return shares.flatMap(({ number, label }) => {
    const batch = batchLabelled(sitting.ledger, label);
    return batch ? [{ ...withBatch(entry, batch), count: number } as LoggedEntry] : [];
  });
}

interface Share {
  readonly number: number;
  readonly label: string;
}

function eachOf(sitting: Sitting, words: string, labels: readonly string[]): readonly Share[] | null {
  const number = numberIn(sitting, EACH.exec(words)?.groups?.['number'] ?? '');
  return number === null ? null : labels.map((label) => ({ number, label }));
}

/** "2 from the March lot, 1 from the other". */
function partsOf(sitting: Sitting, words: string, labels: readonly string[]): readonly Share[] | null {
  const parts = words.split(/, and |,| and | plus /).map((part) => PART.exec(part.trim())?.groups);
  const shares: Share[] = [];
  for (const part of parts) {
    const which = part?.['which'] ?? '';
    const number = numberIn(sitting, part?.['number'] ?? '');
    const left = labels.filter((each) => !shares.some(({ label }) => label === each));
    const [only, another] = left;
    const isOther = /\bother\b/i.test(which) && shares.length > 0 && another === undefined;
    // "The second" of two lots is no day.
    const isOrdinal = /^(?:the )?(?:first|second|third)(?: (?:one|lot|batch|pot|tray))?$/i.test(which);
    const day = isOrdinal ? null : dayIn(which, sitting.origin.at, sitting.settings, 'past');
    const label = isOther ? only : chooseBatch(which, labels, sitting.ledger, day)?.label;
    if (number === null || label === undefined) return null;
    shares.push({ number, label });
  }
  return shares;
}
