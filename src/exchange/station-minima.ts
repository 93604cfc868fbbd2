/** Daily minima of a weather station, from the files in which growers get them. */
import { gunzipSync } from 'node:zlib';
import type { Day } from '../calendar/day.js';
import type { DailyMinimum } from '../horticulture/frost-record.js';
import type { MinimaFault } from '../words/minima-words.js';
import { csvRows } from './csv-rows.js';
import { type MinimaColumns, minimaColumns } from './minima-columns.js';
import { type DateOrder, dateReader } from './station-dates.js';
import { celsiusFrom, type TemperatureUnit, unitOf } from './station-units.js';

export interface MinimaHints {
  /** What the grower said of the numbers; worked out where nothing was said. */
  readonly unit?: TemperatureUnit;
  /** Of dates such as 3/4/2020 that could be read either way. */
  readonly dateOrder?: DateOrder;
  /** Which station, where the file holds several. */
  readonly station?: string;
}

export interface StationMinima {
  /** Ascending, each day once. */
  readonly minima: readonly DailyMinimum[];
  readonly unit: TemperatureUnit;
  /** Rows without a minimum, flagged by the station's quality checks, or beyond what weather can be. */
  readonly skipped: { readonly empty: number; readonly flagged: number; readonly impossible: number };
}

const LARGEST_BYTES = 200_000_000;
const EMPTY = /^(?:na|nan|null|none|m|-|--|-?9999(?:\.0+)?)$/i;
const COLDEST_CELSIUS = -90;
const WARMEST_CELSIUS = 60;

/**
 * Reads GHCN-Daily CSV (a station's own file with a TMIN column, or the long form with one element a row) or two columns, date and
 * minimum, with or without a header. Gzip is unpacked. Days that are missing stay missing.
 */
export function stationMinima(bytes: Uint8Array, hints: MinimaHints = {}): StationMinima | MinimaFault {
  const text = textOf(bytes);
  if (text === null) return { refused: 'notText' };
  const rows = csvRows(text);
  if (rows.length === 0) return { refused: 'noRows' };
  const columns = minimaColumns(rows);
  if (columns === null) return { refused: 'whichColumns', columns: rows[0] ?? [] };
  const body = rows
    .slice(columns.firstRow)
    .map((cells, index) => ({ cells, row: columns.firstRow + index + 1 }));
  const wanted = ofOneStation(
    body.filter(({ cells }) => columns.element === null || cells[columns.element] === 'TMIN'),
    columns,
    hints.station,
  );
  return 'refused' in wanted ? wanted : readRows(wanted.rows, columns, hints);
}

interface Row {
  readonly cells: readonly string[];
  /** As counted in the file, from 1. */
  readonly row: number;
}

function ofOneStation(
  rows: readonly Row[],
  { station }: MinimaColumns,
  wanted: string | undefined,
): { readonly rows: readonly Row[] } | MinimaFault {
  if (rows.length === 0) return { refused: 'noRows' };
  if (station === null) return { rows };
  const stations = [...new Set(rows.map(({ cells }) => cells[station] ?? ''))];
  if (wanted === undefined)
    return stations.length === 1 ? { rows } : { refused: 'severalStations', stations };
  const name = stations.find((each) => each.toLowerCase() === wanted.toLowerCase());
  if (name === undefined) return { refused: 'noSuchStation', station: wanted, stations };
  return { rows: rows.filter(({ cells }) => cells[station] === name) };
}

function readRows(
  rows: readonly Row[],
  columns: MinimaColumns,
  hints: MinimaHints,
): StationMinima | MinimaFault {
  const readDate = dateReader(
    rows.map(({ cells }) => cells[columns.date] ?? ''),
    hints.dateOrder,
  );
  const skipped = { empty: 0, flagged: 0, impossible: 0 };
  const numbers: { date: Day; number: number; text: string }[] = [];
  for (const { cells, row } of rows) {
    const text = cells[columns.minimum] ?? '';
    if (text === '' || EMPTY.test(text)) {
      skipped.empty++;
      continue;
    }
    if (isFlagged(cells, columns)) {
      skipped.flagged++;
      continue;
    }
    const date = readDate(cells[columns.date] ?? '');
    if (date === null) return { refused: 'badDate', row, text: cells[columns.date] ?? '' };
    const number = Number(text.replace(',', '.').replace('−', '-'));
    if (!Number.isFinite(number)) return { refused: 'badNumber', row, text };
    numbers.push({ date, number, text });
  }
  if (numbers.length === 0) return { refused: 'noRows' };
  const unit = hints.unit ?? unitOf(numbers, columns);
  const lowest = new Map<Day, number>();
  for (const { date, number } of numbers) {
    const celsius = celsiusFrom(number, unit);
    if (celsius < COLDEST_CELSIUS || celsius > WARMEST_CELSIUS) skipped.impossible++;
    else lowest.set(date, Math.min(celsius, lowest.get(date) ?? Number.POSITIVE_INFINITY));
  }
  const minima = [...lowest]
    .map(([date, celsius]) => ({ date, celsius }))
    .sort((a, b) => (a.date < b.date ? -1 : 1));
  return { minima, unit, skipped };
}

/** A quality flag stands in a column of its own, or second in the attributes `measurement,quality,source`. */
function isFlagged(cells: readonly string[], { qualityFlag, attributes }: MinimaColumns): boolean {
  if (qualityFlag !== null) return (cells[qualityFlag] ?? '') !== '';
  if (attributes !== null) return ((cells[attributes] ?? '').split(',')[1] ?? '').trim() !== '';
  return false;
}

function textOf(bytes: Uint8Array): string | null {
  try {
    const plain =
      bytes[0] === 0x1f && bytes[1] === 0x8b ? gunzipSync(bytes, { maxOutputLength: LARGEST_BYTES }) : bytes;
    return new TextDecoder('utf-8', { fatal: true }).decode(plain);
  } catch {
    return null;
  }
}
