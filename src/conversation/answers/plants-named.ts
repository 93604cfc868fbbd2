/** The plant that a question of ours is about, in the words of the reply; and another plant beside it. */
import type { Plant } from '../../ledger/entry.js';
import type { Ledger } from '../../ledger/ledger.js';

const varietyOf = (ledger: Ledger, { variety, batch }: Plant): string | undefined =>
  variety ?? ledger.batches.get(batch ?? '')?.variety ?? undefined;

/** Whether both are known, and are not the same plant. */
export function isOther(ledger: Ledger, own: Plant, said: Plant): boolean {
  const differ = (one: string | undefined, other: string | undefined) =>
    one !== undefined && other !== undefined && one.toLowerCase() !== other.toLowerCase();
  return differ(own.batch, said.batch) || differ(varietyOf(ledger, own), varietyOf(ledger, said));
}

/** "There were eight of the Salt Harrier cuttings": without the plant that was asked about. */
export function withoutPlant(ledger: Ledger, own: Plant, words: string): string {
  const name = varietyOf(ledger, own) ?? '';
  const at = name === '' ? -1 : words.toLowerCase().indexOf(name.toLowerCase());
  if (at < 0) return words;
  const before = words.slice(0, at).replace(/(?:\bof )?(?:\b(?:the|my|those|them) )?$/i, '');
  const behind = words.slice(at + name.length).replace(/^s?(?: (?:cuttings|plants|ones))?\b/i, '');
  return `${before.trim()} ${behind.replace(/^[\s,:–—-]+/u, '')}`.trim();
}

/** "No, Marble Wren, 2", of what was asked about another: its number is not the one that is asked for. */
export function namesOther(ledger: Ledger, own: Plant, text: string): boolean {
  const bare = withoutPlant(ledger, own, text).toLowerCase();
  const labels = [...ledger.batches.keys()].filter((label) => isOther(ledger, own, { batch: label }));
  return [...ledger.varieties.keys(), ...labels].some((name) => bare.includes(name.toLowerCase()));
}

/** The text with another word for each known plant: "Late Weather" tells of no weather. */
export function withoutNames({ varieties }: Ledger, text: string): string {
  let bare = text.toLowerCase();
  for (const name of varieties.keys()) bare = bare.replaceAll(name.toLowerCase(), 'plantname');
  return bare;
}
