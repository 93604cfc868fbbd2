/** Labels to print: a PDF with variety, crop, batch label, day, count and a square code for each batch. */
import PDFDocument from 'pdfkit';
import { fit } from './label-text.js';
import { cellAt, type LabelSize, type Paper, paperMillimetres } from './label-layout.js';
import { squareCode } from './square-code.js';
import { missingLetters, type Run, runsOf, type Typeface } from './typeface.js';

/** What one label says; words are ready to print. */
export interface PlantLabel {
  readonly label: string;
  readonly name: string;
  /** Crop, day and count: the small print. */
  readonly detail: string;
  /** What the square code holds: a link that opens the batch, or plain words. */
  readonly code: string;
}

/** A label with lines to write on. */
export type BlankLabel = 'blank';

export interface SheetOptions {
  readonly paper: Paper;
  readonly size: LabelSize;
  readonly faces: readonly Typeface[];
  /** Called after each label, so that long work can show how far it is. */
  readonly progress?: (done: number, of: number) => void;
}

/** Characters that no font has, by label: said before anything is printed. */
export interface MissingLetters {
  readonly missing: readonly { readonly label: string; readonly letters: readonly string[] }[];
}

const pointsPerMillimetre = 72 / 25.4;
const paddingMillimetres = 2;

/** PDF bytes, or which letters can't be printed and where: a label is never printed with boxes in it. */
export async function labelSheet(
  labels: readonly (PlantLabel | BlankLabel)[],
  options: SheetOptions,
): Promise<Uint8Array | MissingLetters> {
  const missing = labels.flatMap((label) => (label === 'blank' ? [] : lettersMissing(label, options.faces)));
  if (missing.length > 0) return { missing };
  const size = paperMillimetres[options.paper].map((length) => length * pointsPerMillimetre) as [
    number,
    number,
  ];
  const document = new PDFDocument({
    size,
    margin: 0,
    autoFirstPage: false,
    info: { Title: 'Plant labels' },
  });
  const chunks: Buffer[] = [];
  const ended = new Promise<void>((resolve, reject) => {
    document.on('data', (chunk: Buffer) => chunks.push(chunk));
    document.on('end', () => resolve());
    document.on('error', reject);
  });
  let page = -1;
  for (const [index, label] of labels.entries()) {
    const cell = cellAt(index, options.paper, options.size);
    if (cell.page !== page) {
      document.addPage();
      page = cell.page;
    }
    drawLabel(document, label, boxOf(cell, options.size), options.faces);
    options.progress?.(index + 1, labels.length);
  }
  if (labels.length === 0) document.addPage();
  document.end();
  await ended;
  return Buffer.concat(chunks);
}

/** In points. */
interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

function boxOf(cell: { left: number; top: number }, size: LabelSize): Box {
  const points = (millimetres: number) => millimetres * pointsPerMillimetre;
  return {
    x: points(cell.left),
    y: points(cell.top),
    width: points(size.width),
    height: points(size.height),
  };
}

function drawLabel(
  document: PDFKit.PDFDocument,
  label: PlantLabel | BlankLabel,
  box: Box,
  faces: readonly Typeface[],
): void {
  document
    .rect(box.x, box.y, box.width, box.height)
    .lineWidth(0.25)
    .dash(2, { space: 2 })
    .stroke('#999999')
    .undash();
  const padding = paddingMillimetres * pointsPerMillimetre;
  const inner = {
    x: box.x + padding,
    y: box.y + padding,
    width: box.width - 2 * padding,
    height: box.height - 2 * padding,
  };
  if (label === 'blank') {
    drawLines(document, inner);
    return;
  }
  const codeSide = Math.min(inner.height, inner.width * 0.34);
  drawCode(
    document,
    label.code,
    inner.x + inner.width - codeSide,
    inner.y + (inner.height - codeSide) / 2,
    codeSide,
  );
  const words = { ...inner, width: inner.width - codeSide - padding };
  const flat = inner.height < 45;
  const [head, middle, foot] = flat ? [0.4, 0.35, 0.25] : [0.38, 0.36, 0.26];
  const drawn = (text: string, top: number, share: number, bold: boolean, largest: number, maxLines: number) =>
    drawText(document, text, { ...words, y: inner.y + top * inner.height, height: share * inner.height }, { bold, largest, maxLines, faces }); // prettier-ignore
  drawn(label.label, 0, head, true, 28, 1);
  drawn(label.name, head, middle, true, 14, 2);
  drawn(label.detail, head + middle, foot, false, 9, 2);
}

function drawText(
  document: PDFKit.PDFDocument,
  text: string,
  box: Box,
  style: { bold: boolean; largest: number; maxLines: number; faces: readonly Typeface[] },
): void {
  const widths = new Map<string, number>();
  const widthAtOnePoint = (part: string) => {
    const known = widths.get(part);
    if (known !== undefined) return known;
    const runs = runsOf(part, style.faces);
    const width = runs.reduce(
      (sum, run) => sum + inFont(document, run, style.bold, 1).widthOfString(run.text),
      0,
    );
    widths.set(part, width);
    return width;
  };
  const measure = (part: string, size: number) => widthAtOnePoint(part) * size;
  const { lines, size } = fit(text, { ...box, largest: style.largest, maxLines: style.maxLines }, measure);
  for (const [index, line] of lines.entries()) {
    let x = box.x;
    for (const run of runsOf(line, style.faces)) {
      inFont(document, run, style.bold, size).fillColor('#000000').text(run.text, x, box.y + index * size * 1.15, { lineBreak: false }); // prettier-ignore
      x += document.widthOfString(run.text);
    }
  }
}

function inFont(document: PDFKit.PDFDocument, run: Run, bold: boolean, size: number): PDFKit.PDFDocument {
  return document.font(bold ? run.typeface.file.bold : run.typeface.file.regular).fontSize(size);
}

function drawCode(document: PDFKit.PDFDocument, text: string, x: number, y: number, side: number): void {
  const code = squareCode(text);
  // The standard asks for a quiet zone of four modules; the label's own white gives part of it.
  const quiet = 2;
  const module = side / (code.side + 2 * quiet);
  for (let row = 0; row < code.side; row++) {
    for (let column = 0; column < code.side; column++) {
      if (code.dark(row, column))
        document.rect(x + (column + quiet) * module, y + (row + quiet) * module, module, module);
    }
  }
  document.fill('#000000');
}

function drawLines(document: PDFKit.PDFDocument, box: Box): void {
  for (const share of [0.38, 0.68, 0.98]) {
    const y = box.y + box.height * share;
    document
      .moveTo(box.x, y)
      .lineTo(box.x + box.width, y)
      .lineWidth(0.4)
      .stroke('#666666');
  }
}

function lettersMissing(label: PlantLabel, faces: readonly Typeface[]): MissingLetters['missing'][number][] {
  const letters = missingLetters(`${label.label}${label.name}${label.detail}`.replace(/\s/g, ''), faces);
  return letters.length === 0 ? [] : [{ label: label.label, letters }];
}
