/** The standing entries as CSV (RFC 4180), and a CSV of entries read back; harmless to any spreadsheet that opens it. */
import { createRequire } from 'node:module';
import type * as CsvWriter from 'csv-stringify/sync';
import type { Ledger } from '../ledger/ledger.js';
import type { Posting } from '../ledger/posting.js';
import { csvRows } from './csv-rows.js';
import { cellsOf, type Cells, columns, entryOf, type RowFault } from './entry-columns.js';

const require = createRequire(import.meta.url);
/** Loaded when a ledger is first exported. */
let writer: typeof CsvWriter | undefined;

/** A header and a row an entry, in the order told; lines end with CRLF. */
export function ledgerCsv(ledger: Ledger): string {
  const rows = ledger.standing.map(({ entry, by }) => {
    const cells = cellsOf(entry, by);
    return columns.map((column) => harmless(cells[column] ?? ''));
  });
  writer ??= require('csv-stringify/sync') as typeof CsvWriter;
  return writer.stringify([[...columns], ...rows], { record_delimiter: '\r\n' });
}

export interface ReadCsv {
  readonly entries: readonly { readonly row: number; readonly entry: Posting; readonly by: string | null }[];
  readonly faults: readonly ({ readonly row: number } & RowFault)[];
}

/** Reads rows under a header that names `date` and `kind`; null where there is no such header. Row 1 is the header. */
export function readLedgerCsv(text: string): ReadCsv | null {
  const [header = [], ...rows] = csvRows(text);
  const names = header.map((name) => name.toLowerCase());
  const at = columns.map((column) => names.indexOf(column.toLowerCase()));
  if (!names.includes('date') || !names.includes('kind')) return null;
  const entries: ReadCsv['entries'][number][] = [];
  const faults: ReadCsv['faults'][number][] = [];
  for (const [index, row] of rows.entries()) {
    const cells: Cells = Object.fromEntries(
      columns.map((column, place) => [column, unquoted(row[at[place] ?? -1] ?? '')]),
    );
    const entry = entryOf(cells);
    if ('fault' in entry) faults.push({ row: index + 2, ...entry });
    else entries.push({ row: index + 2, entry, by: cells.by || null });
  }
  return { entries, faults };
}

const number = /^-?\d+(?:\.\d+)?$/;

/** A cell that a spreadsheet would run as a formula gets an apostrophe in front; numbers are left as they are. */
function harmless(cell: string): string {
  return /^[=+\-@\t\r]/.test(cell) && !number.test(cell) ? `'${cell}` : cell;
}

function unquoted(cell: string): string {
  return /^'[=+\-@\t\r]/.test(cell) ? cell.slice(1) : cell;
}
