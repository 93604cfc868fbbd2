/** Sheets of labels: which paper, how large each label, how many across and down. All lengths in millimetres. */

export type Paper = 'A4' | 'Letter';

/** ISO 216 and ANSI/ASME Y14.1. */
export const paperMillimetres: Readonly<Record<Paper, readonly [width: number, height: number]>> = {
  A4: [210, 297],
  Letter: [215.9, 279.4],
};

export interface LabelSize {
  readonly width: number;
  readonly height: number;
}

/** Sizes that self-adhesive sheets and plant tags commonly come in (common practice), and strips to cut along their lines. */
export const labelSizes = {
  '63.5x38.1': { width: 63.5, height: 38.1 },
  '70x37': { width: 70, height: 37 },
  '99x38': { width: 99, height: 38 },
  '45x25': { width: 45, height: 25 },
  strip: { width: 130, height: 18 },
} as const satisfies Record<string, LabelSize>;

export type LabelSizeName = keyof typeof labelSizes;

export interface Cell {
  readonly page: number;
  readonly left: number;
  readonly top: number;
}

/** Printers leave about 5 mm unprinted at each edge. */
const edge = 5;

/** How many labels of a size a sheet takes, centred; throws a RangeError where not one fits. */
export function gridOf(
  paper: Paper,
  size: LabelSize,
): { columns: number; rows: number; left: number; top: number } {
  const [width, height] = paperMillimetres[paper];
  const columns = Math.floor((width - 2 * edge + 0.01) / size.width) || fitsExactly(width, size.width);
  const rows = Math.floor((height - 2 * edge + 0.01) / size.height);
  if (columns < 1 || rows < 1)
    throw new RangeError(`a label of ${size.width} × ${size.height} mm does not fit on ${paper}`);
  return { columns, rows, left: (width - columns * size.width) / 2, top: (height - rows * size.height) / 2 };
}

/** Where the label number `index` (from 0) stands, filled row by row. */
export function cellAt(index: number, paper: Paper, size: LabelSize): Cell {
  const { columns, rows, left, top } = gridOf(paper, size);
  const onPage = index % (columns * rows);
  return {
    page: Math.floor(index / (columns * rows)),
    left: left + (onPage % columns) * size.width,
    top: top + Math.floor(onPage / columns) * size.height,
  };
}

function fitsExactly(paper: number, label: number): number {
  return label <= paper ? 1 : 0;
}
