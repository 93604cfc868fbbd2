/** Lays the season picture out as a chart: 1080 px wide, rows down, time across, text large enough for a phone. */
import { addDays, type Day, daysBetween } from '../calendar/day.js';
import { pictureWords as words, monthWord } from '../words/picture-words.js';
import type { ChartSpec } from './chart.js';
import { mark, type MarkSpec, textMark, limitOf } from './chart-mark.js';
import { faintInk, frostColour, ink, paper, rule, stageColour, todayColour } from './palette.js';
import { legendMarks } from './season-legend.js';
import type { Row, SeasonView } from './season-view.js';

export const widthPixels = 1080;
const marginPixels = 28;
const innerPixels = widthPixels - 2 * marginPixels;
const frostTop = 206;
const frostBottom = 316;
const axisY = 338;
const rowsTop = 364;

/** A phone shows 1080 px on about 390 points: 28 px is about 10 points there. */
const roomy = { row: 90, bar: 34, text: 28 };
/** For long ledgers: a chat takes no picture whose sides add up to more than 10,000 px. */
const close = { row: 41, bar: 12, text: 19 };
const rowsThatFitRoomy = 90;
type Sizes = typeof roomy;

interface Placed extends Row {
  /** Top of the row. */
  readonly y: number;
}

interface Line {
  readonly y: number;
  readonly text: string;
  readonly bold: boolean;
}

const atX = (field: string) => ({ scale: 'x', field });
const atDay = (day: Day, offset = 0) => ({ scale: 'x', value: time(day), offset });

/** The season as a chart description. */
export function seasonSpec(view: SeasonView): ChartSpec {
  const rowCount = view.groups.reduce((sum, group) => sum + group.rows.length, 0);
  const sizes = rowCount > rowsThatFitRoomy ? close : roomy;
  const { rows, lines, bottom } = place(view, sizes);
  return {
    $schema: 'https://vega.github.io/schema/vega/v6.json',
    width: innerPixels,
    height: bottom + 40,
    padding: { left: marginPixels, right: marginPixels, top: 24, bottom: 16 },
    autosize: 'none',
    background: paper,
    data: dataOf(view, rows, lines, sizes),
    scales: [
      { name: 'x', type: 'utc', domain: [time(view.from), time(view.to)], range: [0, innerPixels] },
      { name: 'risk', domain: [0, 1], range: [frostBottom, frostTop] },
    ],
    marks: [
      textMark({ x: 0, y: 30, text: words.season, fontSize: 40, fontWeight: 'bold' }),
      ...legendMarks(92),
      ...frostMarks(view),
      ...monthMarks(view, bottom),
      ...rowMarks(sizes),
      ...todayMarks(view, bottom),
    ],
  };
}

function place(view: SeasonView, sizes: Sizes): { rows: Placed[]; lines: Line[]; bottom: number } {
  const rows: Placed[] = [];
  const lines: Line[] = [];
  let y = rowsTop;
  const line = (text: string, bold: boolean) => {
    lines.push({ y: y + sizes.text, text, bold });
    y += sizes.text * (bold ? 1.9 : 1.6);
  };
  for (const { crop, rows: its, targets } of view.groups) {
    line(crop === 'other' ? words.other : crop, true);
    for (const { name, wanted, by, chance } of targets) line(words.target(name, wanted, by, chance), false);
    for (const row of its) {
      rows.push({ ...row, y });
      y += sizes.row;
    }
  }
  if (rows.length === 0) line(words.nothingYet, false);
  return { rows, lines, bottom: y + 10 };
}

function dataOf(
  view: SeasonView,
  rows: readonly Placed[],
  lines: readonly Line[],
  sizes: Sizes,
): NonNullable<ChartSpec['data']> {
  const middle = (row: Placed) => row.y + sizes.text * 1.55 + sizes.bar / 2;
  return [
    { name: 'lines', values: [...lines] },
    {
      name: 'rows',
      values: rows.map((row) => ({
        y: row.y + sizes.text * 0.8,
        text: `${row.label}  ${row.name}, ${words.living(row.alive, row.count)}`,
        ink: row.alive === 0 ? faintInk : ink,
      })),
    },
    {
      // The whole bar as it would be had nothing gone, so that losses show as what is missing.
      name: 'outlines',
      values: rows.flatMap((row) => {
        const [first, last] = [row.pieces[0], row.pieces.at(-1)];
        return first && last ? [{ x: time(first.from), x2: time(last.to), y: middle(row) }] : [];
      }),
    },
    {
      name: 'pieces',
      values: rows.flatMap((row) =>
        row.pieces.map((piece) => ({
          x: time(piece.from),
          x2: time(piece.to),
          y: middle(row),
          colour: stageColour[piece.stage],
          thick: Math.max(3, piece.share * sizes.bar),
        })),
      ),
    },
    {
      name: 'ranges',
      values: rows.flatMap((row) => {
        if (!row.rooting) return [];
        const { p10, p50, p90 } = row.rooting;
        const y = middle(row);
        const half = sizes.bar / 2;
        return [
          { x: time(p10), x2: time(addDays(p90, 1)), middle: time(p50), y, top: y - half, bottom: y + half },
        ];
      }),
    },
    {
      name: 'pinches',
      values: rows.flatMap((row) =>
        row.marks
          .filter(({ what }) => what === 'pinched')
          .map(({ day }) => ({ x: time(day), y: middle(row) - sizes.bar / 2 - 4 })),
      ),
    },
    {
      name: 'risk',
      values: (view.frost?.risk ?? [])
        .filter(({ day }) => day >= view.from && day <= view.to)
        .map(({ day, p }) => ({ x: time(day), p })),
    },
  ];
}

function rowMarks(sizes: Sizes): MarkSpec[] {
  const bar = { x: atX('x'), x2: atX('x2'), yc: { field: 'y' } };
  return [
    mark('rect', { ...bar, height: sizes.bar, stroke: rule, fill: '#f4f4f0' }, 'outlines'),
    mark(
      'rect',
      { ...bar, height: { field: 'thick' }, fill: { field: 'colour' }, stroke: ink, strokeWidth: 0.6 },
      'pieces',
    ),
    mark(
      'rect',
      { ...bar, height: sizes.bar, stroke: ink, strokeWidth: 2.5, strokeDash: [7, 5], cornerRadius: 5 },
      'ranges',
    ),
    mark(
      'rule',
      { x: atX('middle'), y: { field: 'top' }, y2: { field: 'bottom' }, stroke: ink, strokeWidth: 3 },
      'ranges',
    ),
    mark(
      'symbol',
      { x: atX('x'), y: { field: 'y' }, shape: 'triangle-down', size: sizes.bar * 7, fill: ink },
      'pinches',
    ),
    textMark({ x: 0, y: { field: 'y' }, text: { field: 'text' }, fontSize: sizes.text, fill: { field: 'ink' }, limit: limitOf(innerPixels) }, 'rows'), // prettier-ignore
    textMark(
      {
        x: 0,
        y: { field: 'y' },
        text: { field: 'text' },
        fontSize: { signal: `datum.bold ? ${sizes.text * 1.15} : ${sizes.text}` },
        fontWeight: { signal: "datum.bold ? 'bold' : 'normal'" },
        limit: limitOf(innerPixels),
      },
      'lines',
    ),
  ];
}

function frostMarks(view: SeasonView): MarkSpec[] {
  if (!view.frost) return [];
  const curve = [
    textMark({ x: 0, y: frostTop - 22, text: words.frost }),
    mark('area', { x: atX('x'), y: { scale: 'risk', field: 'p' }, y2: { scale: 'risk', value: 0 }, fill: frostColour, fillOpacity: 0.45 }, 'risk'), // prettier-ignore
    mark(
      'line',
      { x: atX('x'), y: { scale: 'risk', field: 'p' }, stroke: frostColour, strokeWidth: 4 },
      'risk',
    ),
  ];
  const day = view.frost.plantOutOn;
  if (day === null || day < view.from || day > view.to) return curve;
  const late = daysBetween(view.from, day) > daysBetween(view.from, view.to) * 0.6;
  return [
    ...curve,
    mark('rule', { x: atDay(day), y: frostTop - 36, y2: frostBottom, stroke: ink, strokeWidth: 3 }),
    textMark({ x: atDay(day, late ? -10 : 10), y: frostTop - 22, align: late ? 'right' : 'left', text: words.plantOut(day), fontWeight: 'bold' }), // prettier-ignore
  ];
}

function monthMarks(view: SeasonView, bottom: number): MarkSpec[] {
  const days = Array.from({ length: daysBetween(view.from, view.to) + 1 }, (_, index) =>
    addDays(view.from, index),
  );
  return days
    .filter((day) => day.endsWith('-01'))
    .flatMap((day) => [
      mark('rule', { x: atDay(day), y: frostBottom, y2: bottom, stroke: rule, strokeWidth: 2 }),
      textMark({ x: atDay(day, 8), y: axisY, text: monthWord(day), fontSize: 26, fill: faintInk }),
    ]);
}

function todayMarks(view: SeasonView, bottom: number): MarkSpec[] {
  const line = { y: axisY + 20, y2: bottom, stroke: todayColour, strokeWidth: 3, strokeDash: [10, 6] };
  return [
    mark('rule', { x: atDay(view.today), ...line }),
    textMark({ x: atDay(view.today), y: bottom + 20, align: 'center', text: words.today, fontSize: 26, fontWeight: 'bold', fill: todayColour }), // prettier-ignore
  ];
}

/** A day's midnight UTC in milliseconds, the unit of the chart's time axis. */
export function time(day: Day): number {
  return Date.parse(`${day}T00:00:00Z`);
}
