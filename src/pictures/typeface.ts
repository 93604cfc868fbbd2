/** Which font has which letter, and in what order letters of mixed direction stand; the only file that knows fontkit and bidi-js. */
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import bidiModule, { type Bidi } from 'bidi-js';
import * as fontkit from 'fontkit';
import { type FontFile, shippedFonts } from './font.js';

export interface Typeface {
  readonly file: FontFile;
  has(codePoint: number): boolean;
}

/** A stretch of text that one font draws, in the order in which it is seen from left to right. */
export interface Run {
  readonly text: string;
  readonly typeface: Typeface;
}

// The package is a CommonJS function whose types describe an ES module.
const bidi = (bidiModule as unknown as () => Bidi)();

/** The shipped fonts, then every .ttf and .otf of `folder`, in the order of their names. */
export function typefaces(folder?: string): Typeface[] {
  const own = folder === undefined ? [] : readdirSync(folder).filter((name) => /\.(?:ttf|otf)$/i.test(name));
  const files = own.sort().map((name) => {
    const path = join(folder ?? '', name);
    return { name, regular: path, bold: path };
  });
  return [...shippedFonts, ...files].map(typefaceOf);
}

/** The characters of `text` that no font has; empty where all can be drawn. */
export function missingLetters(text: string, faces: readonly Typeface[]): string[] {
  const missing = [...text].filter((letter) => !faces.some((face) => face.has(letter.codePointAt(0) ?? 0)));
  return [...new Set(missing)];
}

const rightToLeft = /[\p{Script=Hebrew}\p{Script=Arabic}\p{Script=Syriac}\p{Script=Thaana}\p{Script=Nko}]/u;

/**
 * Splits text into runs by font and direction, in the order in which they are seen (Unicode annex 9). Within a
 * right-to-left word the letters keep the order in which they are written, since fontkit itself sets such words from
 * right to left, and joins them where the script does.
 */
export function runsOf(text: string, faces: readonly Typeface[]): Run[] {
  const runs: { text: string; typeface: Typeface; leftward: boolean }[] = [];
  for (const letter of asSeen(text)) {
    const typeface = faces.find((face) => face.has(letter.codePointAt(0) ?? 0)) ?? faces[0];
    if (!typeface) continue;
    const leftward = rightToLeft.test(letter);
    const last = runs.at(-1);
    if (last && last.typeface === typeface && last.leftward === leftward) {
      last.text = leftward ? letter + last.text : last.text + letter;
    } else runs.push({ text: letter, typeface, leftward });
  }
  return runs;
}

function asSeen(text: string): string {
  return bidi.getReorderedString(text, bidi.getEmbeddingLevels(text));
}

function typefaceOf(file: FontFile): Typeface {
  const opened = fontkit.openSync(file.regular);
  if (!('hasGlyphForCodePoint' in opened)) throw new Error(`${file.name} is a collection: give single fonts`);
  return { file, has: (codePoint) => opened.hasGlyphForCodePoint(codePoint) };
}
