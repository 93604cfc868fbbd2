/** Batch labels: short enough for a plant label, unique for ever in a ledger. */
import type { Ledger } from './ledger.js';

const fallback = 'B';

/**
 * The next label for a new batch: initials of the variety (else the start of the crop) and a number: EF1, EF2. A second
 * variety of the same initials gets longer ones (Ember Fox EF, Ebony Fern EBF), so that letters alone tell the variety.
 */
export function nextLabel(ledger: Ledger, variety: string | null, crop: string | null): string {
  const owner = ownerOf(variety, crop);
  for (const prefix of prefixes(variety ?? crop ?? fallback)) {
    const holders = holdersOf(ledger, prefix);
    if (holders.size === 0 || (holders.size === 1 && holders.has(owner))) return numbered(ledger, prefix);
  }
  return numbered(ledger, fallback);
}

function numbered(ledger: Ledger, prefix: string): string {
  let number = 1;
  while (ledger.labels.has(`${prefix}${number}`)) number += 1;
  return `${prefix}${number}`;
}

/** Whose labels begin with exactly these letters; taken-back batches have no owner left and count as nobody's. */
function holdersOf(ledger: Ledger, prefix: string): Set<string> {
  const holders = new Set<string>();
  for (const batch of ledger.batches.values()) {
    if (lettersOf(batch.label) === prefix) holders.add(ownerOf(batch.variety, batch.crop));
  }
  return holders;
}

function ownerOf(variety: string | null, crop: string | null): string {
  return (variety ?? `crop ${crop ?? ''}`).toLowerCase();
}

function lettersOf(label: string): string {
  return label.replace(/\d/g, '');
}

/** Ever longer candidates: EF, EBF, EBFE, EBEFE … for Ember Fox's neighbour Ebony Fern. */
function* prefixes(name: string): Generator<string> {
  const words = name
    .normalize('NFKD')
    .toUpperCase()
    .replace(/['’]/g, '')
    .split(/\P{L}+/u)
    .filter((word) => word !== '');
  if (words.length === 0) words.push(fallback);
  const first = words[0] ?? fallback;
  const rest = words.slice(1, 3).map((word) => word[0] ?? '');
  const shortest = words.length === 1 ? 2 : 1;
  for (let length = shortest; length <= Math.max(first.length, shortest); length++) {
    yield first.slice(0, length) + rest.join('');
  }
  const whole = words.join('');
  for (let length = 3; length <= whole.length; length++) yield whole.slice(0, length);
}
