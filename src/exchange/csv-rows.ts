/** Cells of a CSV file, whatever separates them; the only file that knows the CSV reader. */
import { parse } from 'csv-parse/sync';

const SEPARATORS = [';', '\t', ',', '|'];

/**
 * Rows of cells, trimmed, empty lines left out; quotes and a byte order mark are understood. The separator is the first of `;`, tab,
 * `,` and `|` that the first line holds. Rows may differ in length.
 */
export function csvRows(text: string): string[][] {
  const plain = text.replace(/^\uFEFF/, '');
  const firstLine = /^[^\r\n]*/.exec(plain.trimStart())?.[0] ?? '';
  const delimiter = SEPARATORS.find((each) => firstLine.includes(each)) ?? ',';
  const rows: string[][] = parse(plain, {
    delimiter,
    relax_column_count: true,
    relax_quotes: true,
    skip_empty_lines: true,
  });
  return rows.map((cells) => cells.map((cell) => cell.trim()));
}
