/** Small whole numbers as letters, one each, so that a table of them can be read down its columns. */

const UPPER = 'A'.charCodeAt(0) - 1;
const LOWER = 'a'.charCodeAt(0) - 1;
const MOST = 26;

/** `a` to `z` for 1 to 26, `A` to `Z` for −1 to −26, a point for nought; what is beyond stands at the end of its row. */
export function lettersOf(numbers: readonly number[]): string {
  return numbers
    .map((number) => Math.max(-MOST, Math.min(MOST, number)))
    .map((number) => (number === 0 ? '.' : String.fromCharCode(number > 0 ? LOWER + number : UPPER - number)))
    .join('');
}

/** The numbers again. */
export function numbersOf(letters: string): readonly number[] {
  return [...letters].map((letter) => {
    const code = letter.charCodeAt(0);
    return letter === '.' ? 0 : code > LOWER ? code - LOWER : UPPER - code;
  });
}
