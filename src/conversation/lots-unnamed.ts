/** A lot that was told without a name which the reader knew for one, and that gets it when the grower uses it. */
import type { ReadNote } from '../language/note.js';
import { type Batch, isLive } from '../ledger/batch.js';
import type { Plant } from '../ledger/entry.js';
import { type Ledger, matching, type StandingEntry } from '../ledger/ledger.js';
import { lotCalled } from '../words/answers.js';
import { amendmentsOf } from './amending.js';
import type { Sitting } from './sitting.js';
import type { Heard } from './talk.js';

/**
 * "All the Neon Gravy have roots", of a lot noted as "5 coleus, stripy, Neon Gravy": the only one without a name whose
 * own note holds these words has it from now on. Answers whether one was named.
 */
export function namesLots(sitting: Sitting, { entries }: ReadNote): boolean {
  let named = false;
  for (const { entry } of entries) {
    const { variety } = entry as Plant;
    if (variety === undefined || BEGINS.has(entry.kind)) continue;
    if (matching(sitting.ledger, { variety }).length > 0) continue;
    const [lot, another] = lotsToldWith(sitting.ledger, sitting.talk.heard, variety);
    if (lot && !another) named = nameLot(sitting, lot, variety) || named;
  }
  return named;
}

/** What may be told of plants that are not there yet. */
const BEGINS: ReadonlySet<string> = new Set(['receive', 'stock', 'target']);

/** Gives a lot its name, in the note that it began with; answers false where it has one already. */
export function nameLot(sitting: Sitting, lot: Batch, variety: string): boolean {
  const begun = lot.variety === null ? beginningOf(sitting.ledger, lot) : undefined;
  if (!begun || sitting.amend(amendmentsOf(sitting.ledger, [begun], { variety })).length > 0) return false;
  sitting.reply.text.push(lotCalled(lot.label, variety));
  return true;
}

/** Live lots without a name whose note holds the words. */
export function lotsToldWith(ledger: Ledger, heard: readonly Heard[], name: string): Batch[] {
  const wanted = inWords(name);
  return [...ledger.batches.values()].filter((batch) => {
    if (batch.variety !== null || !isLive(batch)) return false;
    const source = beginningOf(ledger, batch)?.journal.source;
    return heard.some(({ message, text }) => message === source?.message && inWords(text).includes(wanted));
  });
}

const beginningOf = (ledger: Ledger, { label }: Batch): StandingEntry | undefined =>
  ledger.standing.find(
    ({ entry }) => (entry.kind === 'strike' || entry.kind === 'receive') && entry.label === label,
  );

const inWords = (text: string): string =>
  ` ${text
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim()} `;
