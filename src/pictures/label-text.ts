/** Fits words into the room that a label has: as large as goes, on as few lines as do. */

/** Width of a text at a size in points, in points. */
export type Measure = (text: string, size: number) => number;

export interface Fitted {
  readonly lines: readonly string[];
  /** Points. */
  readonly size: number;
}

const lineHeight = 1.15;
const smallest = 4;

/**
 * The largest size between `largest` and 4 pt at which `text` fits into `width` × `height` points, broken between words
 * on up to `maxLines` lines and, where one word alone is too long, within it. Nothing is ever cut off.
 */
export function fit(
  text: string,
  room: { width: number; height: number; largest: number; maxLines: number },
  measure: Measure,
): Fitted {
  for (let size = room.largest; size > smallest; size -= 0.5) {
    const lines = wrap(text, room.width, (part) => measure(part, size));
    const fits = lines.every((line) => measure(line, size) <= room.width);
    if (fits && lines.length <= room.maxLines && lines.length * size * lineHeight <= room.height)
      return { lines, size };
  }
  return squeezed(text, room, measure);
}

/** The last resort: as many lines as it takes at a size at which they all go in, however small. */
function squeezed(text: string, room: { width: number; height: number }, measure: Measure): Fitted {
  for (let size = smallest; ; size *= 0.9) {
    const lines = wrap(text, room.width, (part) => measure(part, size)).flatMap((line) => breakWord(line, room.width, (part) => measure(part, size))); // prettier-ignore
    if (lines.length * size * lineHeight <= room.height || size < 1) return { lines, size };
  }
}

function wrap(text: string, width: number, measure: (part: string) => number): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(' ')) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (line !== '' && measure(longer) > width) {
      lines.push(line);
      line = word;
    } else line = longer;
  }
  return [...lines, line];
}

function breakWord(line: string, width: number, measure: (part: string) => number): string[] {
  if (measure(line) <= width) return [line];
  const parts: string[] = [];
  let part = '';
  for (const letter of line) {
    if (part !== '' && measure(part + letter) > width) {
      parts.push(part);
      part = letter;
    } else part += letter;
  }
  return [...parts, part];
}
