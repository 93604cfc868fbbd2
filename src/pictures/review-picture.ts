/** A year looked back on: how well what struck, with intervals as wide as the records leave them. */
import { pictureWords as words } from '../words/picture-words.js';
import { chartSvg, type ChartSpec } from './chart.js';
import { mark, type MarkSpec, textMark, limitOf } from './chart-mark.js';
import { faintInk, ink, paper, rule, stageColour } from './palette.js';
import { pngOf } from './raster.js';

export interface ReviewRow {
  readonly name: string;
  readonly struck: number;
  readonly rooted: number;
  readonly batches: number;
  /** Strike rate and its central 80 % interval, 0–1. */
  readonly rate: number;
  readonly low: number;
  readonly high: number;
}

export interface ReviewView {
  readonly year: number;
  /** "by crop", "by method", "by place": each with its rows, best first. */
  readonly sections: readonly { readonly name: string; readonly rows: readonly ReviewRow[] }[];
}

const width = 1080;
const plot = { left: 40, right: 1040 };
const rowPixels = 92;

/** PNG bytes, 1080 px wide. */
export async function reviewPicture(view: ReviewView): Promise<Uint8Array> {
  return pngOf(await chartSvg(reviewSpec(view)));
}

export function reviewSpec(view: ReviewView): ChartSpec {
  const marks: MarkSpec[] = [
    textMark({ x: 40, y: 58, text: words.review(view.year), fontSize: 40, fontWeight: 'bold' }),
    textMark({ x: 40, y: 108, text: words.reviewKey, fontSize: 24, fill: faintInk }),
  ];
  const rows: object[] = [];
  let y = 150;
  for (const section of view.sections) {
    marks.push(textMark({ x: 40, y: y + 30, text: section.name, fontSize: 32, fontWeight: 'bold' }));
    y += 64;
    for (const row of section.rows) {
      rows.push({ ...row, y, text: words.reviewRow(row.name, row.rooted, row.struck, row.batches) });
      y += rowPixels;
    }
  }
  if (rows.length === 0)
    marks.push(textMark({ x: 40, y: y + 30, text: words.nothingToReview, fontSize: 28 }));
  const bottom = y + 10;
  return {
    $schema: 'https://vega.github.io/schema/vega/v6.json',
    width,
    height: bottom + 70,
    padding: 0,
    autosize: 'none',
    background: paper,
    data: [{ name: 'rows', values: rows }],
    scales: [{ name: 'x', domain: [0, 1], range: [plot.left, plot.right] }],
    marks: [...(rows.length > 0 ? shareLines(bottom) : []), ...marks, ...rowMarks()],
  };
}

function shareLines(bottom: number): MarkSpec[] {
  return [0, 0.25, 0.5, 0.75, 1].flatMap((share) => [
    mark('rule', { x: { scale: 'x', value: share }, y: 160, y2: bottom, stroke: rule, strokeWidth: 2 }),
    textMark({ x: { scale: 'x', value: share }, y: bottom + 26, align: share === 0 ? 'left' : share === 1 ? 'right' : 'center', text: `${share * 100} %`, fontSize: 26, fill: faintInk }), // prettier-ignore
  ]);
}

function rowMarks(): MarkSpec[] {
  const y = { field: 'y', offset: 58 };
  return [
    textMark(
      { x: 40, y: { field: 'y', offset: 22 }, text: { field: 'text' }, fontSize: 28, limit: limitOf(1000) },
      'rows',
    ),
    mark('rect', { x: { scale: 'x', field: 'low' }, x2: { scale: 'x', field: 'high' }, yc: y, height: 18, fill: stageColour.rooted, stroke: ink, strokeWidth: 0.8, cornerRadius: 9 }, 'rows'), // prettier-ignore
    mark('symbol', { x: { scale: 'x', field: 'rate' }, y, size: 420, fill: stageColour.plantedOut }, 'rows'),
  ];
}
