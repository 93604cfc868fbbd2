/** How an entry lies in the columns of a spreadsheet, and how it is read back. */
import { parseDay } from '../calendar/day.js';
import { firstDay, isSpan } from '../calendar/span.js';
import type { Posting } from '../ledger/posting.js';

/** In this order; `until` is the last day where only a span was told. */
export const columns = [
  'date', 'until', 'kind', 'batch', 'variety', 'crop', 'count', 'pots', 'rooted', 'cutting', 'medium', 'hormone',
  'potSize', 'place', 'fromPlace', 'cause', 'care', 'how', 'to', 'celsius', 'time', 'text', 'by',
] as const; // prettier-ignore
export type Column = (typeof columns)[number];
export type Cells = Partial<Record<Column, string>>;

const numeric: readonly Column[] = ['count', 'pots', 'rooted', 'celsius'];

/** An entry's cells; slots that have no column (the parts of a split) go into `text`, for the eye. */
export function cellsOf(entry: Posting, by: string | null): Cells {
  const { kind, date } = entry;
  const cells: Cells = {
    date: firstDay(date),
    kind,
    ...(isSpan(date) ? { until: date.to } : {}),
    ...(by === null ? {} : { by }),
  };
  for (const [slot, value] of Object.entries(entry)) {
    if (slot === 'date' || slot === 'kind' || value === undefined) continue;
    if (slot === 'label') cells.batch = String(value);
    else if (isColumn(slot) && typeof value !== 'object') cells[slot] = String(value);
  }
  if (kind === 'split')
    cells.text = entry.parts
      .map(({ label, count, place }) => `${count} to ${label}${place === undefined ? '' : ` (${place})`}`)
      .join(', ');
  if (kind === 'merge') cells.text = `${entry.batches.join(', ')} into ${entry.into}`;
  if (kind === 'rename')
    cells.text = `now ${[entry.to.variety, entry.to.crop].filter((each) => each !== undefined).join(', ')}`;
  if (kind === 'teach') cells.text = `roots in ${entry.daysToRoot.join(' to ')} days`;
  return cells;
}

/** The kinds that a row can carry whole. */
const readable: ReadonlySet<string> = new Set([
  'stock', 'receive', 'reading', 'strike', 'tend', 'check', 'loss', 'potOn', 'pinch', 'move', 'hardenOff', 'plantOut',
  'dispatch', 'remark', 'target', 'remind',
]); // prettier-ignore

/** Why a row can't be read. */
export type RowFault = { readonly fault: 'kind' | 'date' | 'number'; readonly value: string };

/** Reads a row's cells back into an entry, unchecked against any ledger. */
export function entryOf(cells: Cells): Posting | RowFault {
  const kind = cells.kind ?? '';
  if (!readable.has(kind)) return { fault: 'kind', value: kind };
  const date = parseDay(cells.date ?? '');
  const until = cells.until ? parseDay(cells.until) : undefined;
  if (date === null || until === null) return { fault: 'date', value: cells.until || cells.date || '' };
  const slots: Record<string, unknown> = {
    kind,
    date: until === undefined ? date : { from: date, to: until },
  };
  for (const column of columns) {
    const cell = cells[column];
    if (cell === undefined || cell === '' || ['date', 'until', 'kind', 'by'].includes(column)) continue;
    const value = valueOf(column, cell);
    if (value === null) return { fault: 'number', value: cell };
    slots[column === 'batch' && (kind === 'strike' || kind === 'receive') ? 'label' : column] = value;
  }
  return slots as unknown as Posting;
}

function valueOf(column: Column, cell: string): string | number | boolean | null {
  if (column === 'hormone') return cell === 'true';
  if (!numeric.includes(column)) return cell;
  if (column !== 'celsius' && ['all', 'rest', 'none', 'some'].includes(cell)) return cell;
  const number = Number(cell);
  return Number.isFinite(number) ? number : null;
}

function isColumn(slot: string): slot is Column {
  return (columns as readonly string[]).includes(slot);
}
