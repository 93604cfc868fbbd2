/** The neighbours that were learnt from the corpus, as one table; `npm run -s learn` writes them anew. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { type Neighbours, START } from './neighbours.js';

/** As it stands in the file: behind each word what follows it, and how often where more than once. */
type Written = Readonly<Record<string, string>>;

const file = join(import.meta.dirname, '../../../../shared/neighbours.json');
let table: Neighbours | undefined;

/** Read when a note first has a word that is none. */
export function learntNeighbours(): Neighbours {
  return (table ??= neighboursOf(JSON.parse(readFileSync(file, 'utf8')) as Written));
}

function neighboursOf(written: Written): Neighbours {
  const pairs = new Map<string, number>();
  const words = new Map<string, number>();
  let total = 0;
  for (const [first, row] of Object.entries(written)) {
    const following = row.split(' ');
    for (let at = 0; at < following.length; at++) {
      const second = following[at] ?? '';
      const times = Number(/^\d+$/.test(following[at + 1] ?? '') ? following[++at] : 1);
      pairs.set(`${first} ${second}`, times);
      // Every word follows another, but for the start of a row.
      for (const word of first === START ? [START, second] : [second]) {
        words.set(word, (words.get(word) ?? 0) + times);
        total += times;
      }
    }
  }
  return { words, pairs, total };
}

/** The text of the file, a word a line. */
export function writtenNeighbours({ pairs }: Neighbours): string {
  const rows = new Map<string, string[]>();
  for (const [pair, times] of [...pairs].sort(([a], [b]) => (a < b ? -1 : 1))) {
    const [first = '', second = ''] = pair.split(' ');
    rows.set(first, [...(rows.get(first) ?? []), times === 1 ? second : `${second} ${times}`]);
  }
  const lines = [...rows].map(([first, row]) => `${JSON.stringify(first)}: ${JSON.stringify(row.join(' '))}`);
  return `{\n${lines.join(',\n')}\n}\n`;
}
