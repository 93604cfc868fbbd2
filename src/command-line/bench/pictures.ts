/** Season picture and label sheet of 200 batches, beside the raw raster and the bare PDF of as many words. */
import PDFDocument from 'pdfkit';
import { asDay } from '../../calendar/day.js';
import { fold } from '../../ledger/fold.js';
import { labelSheet } from '../../pictures/label-sheet.js';
import { labelSizes } from '../../pictures/label-layout.js';
import { chartSvg } from '../../pictures/chart.js';
import { pngOf } from '../../pictures/raster.js';
import { seasonPicture } from '../../pictures/season-picture.js';
import { seasonSpec } from '../../pictures/season-spec.js';
import { seasonViewOf } from '../../pictures/season-view.js';
import { typefaces } from '../../pictures/typeface.js';
import { type Measurement, median } from './measurement.js';

const batches = 200;
const runs = 5;

export async function pictures(): Promise<readonly Measurement[]> {
  const view = seasonOf(batches);
  const svg = await chartSvg(seasonSpec(view));
  const faces = typefaces();
  const labels = Array.from({ length: batches }, (_, index) => ({
    label: `EF${index + 1}`,
    name: 'Ember Fox',
    detail: 'dahlia · struck 2 Mar 2026 · 12',
    code: `https://t.me/slipnote_bot?start=b_EF${index + 1}`,
  }));
  const options = { paper: 'A4', size: labelSizes['63.5x38.1'], faces } as const;
  return [
    {
      name: `season picture of ${batches} batches`,
      unit: 'ms',
      ours: await middle(() => seasonPicture(view)),
      baseline: await middle(async () => pngOf(svg)),
      against: 'the raster step alone',
      aim: 'under 1500 ms',
    },
    {
      name: `label sheet of ${batches}`,
      unit: 'ms',
      ours: await middle(() => labelSheet(labels, options)),
      baseline: await middle(async () => barePdf(labels.map(({ name }) => name))),
      against: 'pdfkit writing as many names',
      aim: 'under 1000 ms',
    },
  ];
}

function seasonOf(count: number) {
  const struck = {
    kind: 'strike',
    variety: 'Ember Fox',
    crop: 'dahlia',
    count: 12,
    date: asDay('2026-03-02'),
  } as const;
  const lines = Array.from({ length: count }, (_, index) => ({
    line: index + 1,
    at: 0,
    postedAt: 0,
    by: null,
    source: null,
    what: { ...struck, label: `EF${index + 1}` },
  }));
  const ahead = { rooting: () => null, frost: null, targets: [] };
  return seasonViewOf(fold(lines).ledger, asDay('2026-05-01'), asDay('2026-01-01'), ahead);
}

async function middle(make: () => Promise<unknown>): Promise<number> {
  await make();
  const times: number[] = [];
  for (let run = 0; run < runs; run++) {
    const start = performance.now();
    await make();
    times.push(performance.now() - start);
  }
  return median(times);
}

function barePdf(names: readonly string[]): void {
  const document = new PDFDocument();
  for (const name of names) document.text(name);
  document.end();
}
