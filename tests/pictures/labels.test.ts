import jsqrModule from 'jsqr';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { describe, expect, it } from 'vitest';
import { cellAt, gridOf, labelSizes, paperMillimetres } from '../../src/pictures/label-layout.js';
import { labelSheet, type PlantLabel, type SheetOptions } from '../../src/pictures/label-sheet.js';
import { fit } from '../../src/pictures/label-text.js';
import { runsOf, typefaces } from '../../src/pictures/typeface.js';

// The package is a CommonJS function whose types describe an ES module.
const jsQR = jsqrModule as unknown as typeof jsqrModule.default;

const faces = typefaces();
const sheet: SheetOptions = { paper: 'A4', size: labelSizes['63.5x38.1'], faces };

const ember: PlantLabel = { label: 'EF1', name: 'Ember Fox', detail: 'dahlia · 2 Mar 2026 · 12', code: 'https://t.me/slipnote_bot?start=b_EF1' }; // prettier-ignore

async function pdf(labels: Parameters<typeof labelSheet>[0], options = sheet): Promise<Uint8Array> {
  const made = await labelSheet(labels, options);
  if (!(made instanceof Uint8Array)) throw new Error(`missing letters: ${JSON.stringify(made)}`);
  return made;
}

async function open(bytes: Uint8Array) {
  return getDocument({ data: new Uint8Array(bytes), verbosity: 0 }).promise;
}

async function textOf(bytes: Uint8Array): Promise<string> {
  const document = await open(bytes);
  const pages = await Promise.all(
    Array.from({ length: document.numPages }, async (_, index) =>
      (await document.getPage(index + 1)).getTextContent(),
    ),
  );
  return pages.flatMap((page) => page.items.map((item) => ('str' in item ? item.str : ''))).join(' ');
}

/** Every square code on a page of the sheet, read from its raster label by label. */
async function codesOn(
  bytes: Uint8Array,
  options: SheetOptions,
  count: number,
): Promise<(string | undefined)[]> {
  const scale = 4;
  const document = await open(bytes);
  const page = await document.getPage(1);
  const viewport = page.getViewport({ scale });
  const factory = document.canvasFactory as {
    create(width: number, height: number): { canvas: never; context: CanvasLike };
  };
  const { canvas, context } = factory.create(Math.ceil(viewport.width), Math.ceil(viewport.height));
  await page.render({ canvas, canvasContext: context as never, viewport }).promise;
  const pixels = (millimetres: number) => Math.round((millimetres * 72 * scale) / 25.4);
  return Array.from({ length: count }, (_, index) => {
    const { left, top } = cellAt(index, options.paper, options.size);
    const [width, height] = [pixels(options.size.width), pixels(options.size.height)];
    const { data } = context.getImageData(pixels(left), pixels(top), width, height);
    return jsQR(new Uint8ClampedArray(data), width, height)?.data;
  });
}

interface CanvasLike {
  getImageData(x: number, y: number, width: number, height: number): { data: Uint8ClampedArray };
}

describe('a sheet of labels', () => {
  it('carries the words that a text extractor finds (pdfjs-dist)', async () => {
    const text = await textOf(await pdf([ember]));
    for (const words of ['EF1', 'Ember Fox', 'dahlia · 2 Mar 2026 · 12']) expect(text).toContain(words);
  });

  it.each(Object.entries(labelSizes))(
    'has square codes that a reader decodes from the raster, at %s mm (jsqr)',
    async (_, size) => {
      const labels = [1, 2, 3].map((number) => ({
        ...ember,
        label: `EF${number}`,
        code: `${ember.code}${number}`,
      }));
      const options = { ...sheet, size };
      expect(await codesOn(await pdf(labels, options), options, 3)).toEqual(labels.map(({ code }) => code));
    },
  );

  it.each(['A4', 'Letter'] as const)('keeps every label on the paper, %s', (paper) => {
    const [width, height] = paperMillimetres[paper];
    for (const size of Object.values(labelSizes)) {
      const { columns, rows } = gridOf(paper, size);
      const last = cellAt(columns * rows - 1, paper, size);
      expect(last.page).toBe(0);
      expect(last.left + size.width).toBeLessThanOrEqual(width);
      expect(last.top + size.height).toBeLessThanOrEqual(height);
      expect(cellAt(columns * rows, paper, size).page).toBe(1);
    }
  });

  it('prints Latin, Greek, Cyrillic and Hebrew names from the shipped fonts', async () => {
    const names = ['Żółty Świerk', 'Κόκκινη Αλεπού', 'Медный Фонарь', 'שועל אדום'];
    const text = await textOf(await pdf(names.map((name) => ({ ...ember, name }))));
    for (const name of names.slice(0, 3)) expect(text).toContain(name);
    expect(text).toMatch(/[\u0590-\u05ff]/u);
  });

  it('sets right-to-left words in the order in which they are read', () => {
    const words = (text: string) => runsOf(text, faces).map((run) => run.text);
    expect(words('EF1 שלום')).toEqual(['EF1 ', 'שלום']);
    expect(words('שועל אדום')).toEqual(['אדום', ' ', 'שועל']);
  });

  it('says which letters no font has, before it prints anything', async () => {
    const made = await labelSheet([ember, { ...ember, label: 'XX1', name: '紅狐' }], sheet);
    expect(made).toEqual({ missing: [{ label: 'XX1', letters: ['紅', '狐'] }] });
  });

  it('prints blanks to write on', async () => {
    expect((await open(await pdf(['blank', 'blank']))).numPages).toBe(1);
  });
});

describe('fitting words into a label', () => {
  const measure = (text: string, size: number) => text.length * size * 0.6;

  it('keeps every letter of a long name', () => {
    const name = 'Great Aunt Wilhelmina of the Crooked Chimney';
    const { lines, size } = fit(name, { width: 90, height: 26, largest: 14, maxLines: 2 }, measure);
    expect(lines.join(' ')).toBe(name);
    for (const line of lines) expect(measure(line, size)).toBeLessThanOrEqual(90);
  });

  it('breaks a single word that is longer than the label', () => {
    const { lines } = fit(
      'Rhabarberbarbarabarbarbarenbart',
      { width: 30, height: 12, largest: 14, maxLines: 2 },
      measure,
    );
    expect(lines.join('')).toBe('Rhabarberbarbarabarbarbarenbart');
  });
});
