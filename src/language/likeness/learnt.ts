/** The weights that were learnt from the corpus, as one table; `npm run -s learn` writes them anew. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Learnt } from './learning.js';
import { lettersOf, numbersOf } from './letters.js';

/** A row of weights for each trait, one after another; `rows` says where each begins. */
export interface Table {
  readonly kinds: readonly string[];
  readonly bias: readonly number[];
  readonly rows: ReadonlyMap<string, number>;
  readonly weights: Int8Array;
}

/** As it stands in the file: a letter for each weight, a column a kind. */
interface Written {
  readonly kinds: readonly string[];
  readonly bias: string;
  readonly weights: Readonly<Record<string, string>>;
}

const file = join(import.meta.dirname, '../../../shared/likeness.json');
let table: Table | undefined;

/** Read when the first note comes. */
export function learnt(): Table {
  return (table ??= tableOf(JSON.parse(readFileSync(file, 'utf8')) as Written));
}

function tableOf({ kinds, bias, weights }: Written): Table {
  const traits = Object.entries(weights);
  const rows = new Map<string, number>();
  const all = new Int8Array(traits.length * kinds.length);
  traits.forEach(([trait, letters], at) => {
    rows.set(trait, at * kinds.length);
    all.set(numbersOf(letters), at * kinds.length);
  });
  return { kinds, bias: numbersOf(bias), rows, weights: all };
}

/** The text of the file, a trait a line. */
export function written({ kinds, bias, weights }: Learnt): string {
  const rows = [...weights].map(([trait, each]) => `${JSON.stringify(trait)}: "${lettersOf(each)}"`);
  return [
    `{\n"kinds": ${JSON.stringify(kinds)},`,
    `"bias": "${lettersOf(bias)}",`,
    `"weights": {\n${rows.join(',\n')}\n}\n}\n`,
  ].join('\n');
}
