/** Tells what a file holds that someone brings in, and what taking it in would do; nothing is done here. */
import type { Instant } from '../calendar/clock.js';
import { fold } from '../ledger/fold.js';
import type { JournalLine } from '../ledger/posting.js';
import { recordedFrost, type RecordedFrost } from '../outlook/site.js';
import { type Diverged, type ImportPlan, planRows, planWhole } from './import-plan.js';
import { readLedgerCsv, type ReadCsv } from './ledger-csv.js';
import type { LedgerFileFault } from '../words/bringing-in-words.js';
import { readLedgerJson } from './ledger-json.js';
import type { MinimaFault, MinimaRead } from '../words/minima-words.js';
import { stationMinima } from './station-minima.js';

/** Entries that were written down before: by this program, or in a spreadsheet. */
export type LedgerFound =
  | {
      readonly holds: 'ledger';
      readonly plan: ImportPlan;
      readonly settings: Readonly<Record<string, unknown>>;
    }
  | { readonly holds: 'rows'; readonly plan: ImportPlan; readonly faults: ReadCsv['faults'] }
  | { readonly holds: 'otherStory'; readonly line: number }
  | { readonly holds: 'badLedger'; readonly fault: LedgerFileFault };

export type BringingIn =
  | LedgerFound
  | ({ readonly holds: 'minima'; readonly frost: RecordedFrost } & MinimaRead)
  | { readonly holds: 'nothing'; readonly refusal: MinimaFault };

/** Works out what the bytes of a file would bring into the ledger of that journal. */
export function bringingIn(
  bytes: Uint8Array,
  journal: readonly JournalLine[],
  zone: string,
  now: Instant,
): BringingIn {
  const found = ledgerIn(bytes, journal, now);
  if (found !== null) return found;
  const read = stationMinima(bytes);
  if ('refused' in read) return { holds: 'nothing', refusal: read };
  const { minima, unit, skipped } = read;
  return {
    holds: 'minima',
    days: minima.length,
    unit,
    flagged: skipped.flagged,
    frost: recordedFrost(minima, zone),
  };
}

/** The ledger or the rows of entries that a file holds; null where it is another sort of file. */
export function ledgerIn(
  bytes: Uint8Array,
  journal: readonly JournalLine[],
  now: Instant,
): LedgerFound | null {
  const text = textOf(bytes);
  if (text?.trimStart().startsWith('{')) return wholeLedger(text, journal);
  const rows = text === null ? null : readLedgerCsv(text);
  return rows && { holds: 'rows', plan: planRows(fold(journal).ledger, rows, now), faults: rows.faults };
}

function wholeLedger(text: string, journal: readonly JournalLine[]): LedgerFound {
  const read = readLedgerJson(text);
  if ('fault' in read) return { holds: 'badLedger', fault: read };
  const plan: ImportPlan | Diverged = planWhole(journal, read.journal);
  if ('diverged' in plan) return { holds: 'otherStory', line: plan.diverged.line };
  return { holds: 'ledger', plan, settings: read.settings };
}

/** Null where the bytes are no UTF-8 text; a header that no CSV of ours has is told by its reader. */
function textOf(bytes: Uint8Array): string | null {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return null;
  }
}
