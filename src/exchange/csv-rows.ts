/** Cells of a CSV file, whatever separates them; the only file that knows the CSV reader. */
import { createRequire } from 'node:module';
import type * as CsvReader from 'csv-parse/sync';

const require = createRequire(import.meta.url);
/** Loaded when the first such file comes. */
let reader: typeof CsvReader | undefined;

const SEPARATORS = [';', '\t', ',', '|'];

/**
 * Rows of cells, trimmed, empty lines left out; quotes and a byte order mark are understood. The separator is the first of `;`, tab,
 * `,` and `|` that the first line holds. Rows may differ in length. Where a quote is never closed, quotes are characters like any.
 */
export function csvRows(text: string): string[][] {
  const plain = text.replace(/^\uFEFF/, '');
  const firstLine = /^[^\r\n]*/.exec(plain.trimStart())?.[0] ?? '';
  const delimiter = SEPARATORS.find((each) => firstLine.includes(each)) ?? ',';
  const { parse } = (reader ??= require('csv-parse/sync') as typeof CsvReader);
  const rows = (quote: '"' | false): string[][] =>
    parse(plain, { delimiter, quote, relax_column_count: true, relax_quotes: true, skip_empty_lines: true });
  let read: string[][];
  try {
    read = rows('"');
  } catch {
    read = rows(false);
  }
  return read.map((cells) => cells.map((cell) => cell.trim()));
}
