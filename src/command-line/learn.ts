/** `npm run -s learn`: what notes whose entries are known say of others, learnt anew: words of the kind, and of the words beside them. */
import { createInterface } from 'node:readline';
import { actPhrasings, phrasingContext } from '../language/grammar/phrasings.js';
import { learn as learnFrom, type Example } from '../language/likeness/learning.js';
import { written } from '../language/likeness/learnt.js';
import { traitsOf, wordsOf } from '../language/likeness/words.js';
import { piecesOf } from '../language/read.js';
import { neighbourOf } from '../language/row/spelling/beside.js';
import { writtenNeighbours } from '../language/row/spelling/learnt-neighbours.js';
import { WRITTEN_FOR } from '../language/row/spelling/written-for.js';
import { learnNeighbours, SELDOM } from '../language/row/spelling/neighbours.js';
import { settledRow } from '../language/row/settled-row.js';
import type { Run } from './commands.js';
import { BadLine, parseObject } from './json-lines.js';
import { noteOf } from './parse.js';

/** Lines of `fixtures/notes/dev` in, the whole of `shared/likeness.json` out or, asked for neighbours, of `shared/neighbours.json`. */
export const learn: Run = async ([what = 'likeness'], { input, output, errors }) => {
  if (what !== 'likeness' && what !== 'neighbours') {
    errors.write(`nothing called "${what}" is learnt: say likeness or neighbours\n`);
    return 2;
  }
  const lines: Record<string, unknown>[] = [];
  for await (const text of createInterface({ input, crlfDelay: Infinity })) {
    if (text.trim() === '') continue;
    try {
      lines.push(parseObject(text));
    } catch (error) {
      if (!(error instanceof BadLine)) throw error;
      errors.write(`${error.message}: ${text.slice(0, 100)}\n`);
      return 1;
    }
  }
  const learnt = what === 'neighbours' ? neighboursOf(lines) : likenessOf(lines);
  output.write(learnt);
  errors.write(`${lines.length} notes, ${learnt.split('\n').length} lines\n`);
  return 0;
};

const likenessOf = (lines: readonly Record<string, unknown>[]): string =>
  written(learnFrom([...ofRules(), ...lines.map(exampleOf)]));

const neighboursOf = (lines: readonly Record<string, unknown>[]): string =>
  writtenNeighbours(learnNeighbours(lines.map(rowOfNote)));

const COMMON = new Set(['to', 'too', 'for']);
const MISHEARD = new Set([...WRITTEN_FOR.keys()].filter((word) => !COMMON.has(word)));

/** A note's words, and its names as names, also those that nobody knew before. */
function rowOfNote(line: Record<string, unknown>): readonly string[] {
  const asItIs = <Row>(row: Row): Row => row;
  const { tokens, names } = settledRow(noteOf(line), asItIs, asItIs);
  const told = new Set(
    entriesOf(line).flatMap(({ variety, to, from }) =>
      [variety, to, from].flatMap((name) => (typeof name === 'string' ? name.toLowerCase().split(' ') : [])),
    ),
  );
  return tokens.map((token, at) => {
    const isName = names.some(({ from, to }) => from <= at && at < to);
    // What dictation wrote for another word says nothing of that word's own neighbours.
    if (line['voice'] === 'dictated' && MISHEARD.has(token.text)) return SELDOM;
    return neighbourOf(token, isName || (token.capital && told.has(token.text)));
  });
}

/** The phrasings of the rules are notes too; of those that look like a rule’s kind only that much is known, that they are not. */
function ofRules(): readonly Example[] {
  const traits = (text: string) => traitsOf(wordsOf(piecesOf({ ...DAY, text }).pieces));
  return actPhrasings.flatMap(({ kind, phrasings, mustNot }) => [
    ...phrasings.map((text) => ({ traits: traits(text), kinds: new Set([kind]) })),
    ...mustNot.map((text) => ({ traits: traits(text), kinds: new Set<string>(), only: kind })),
  ]);
}

const DAY = { now: Date.parse('2026-05-09T09:00:00Z'), zone: 'Europe/London', context: phrasingContext };

/** A kind of its own for notes that tell nothing; of entries that may be one or another, the first. */
function exampleOf(line: Record<string, unknown>): Example {
  const kinds = entriesOf(line).map(({ kind }) => (typeof kind === 'string' ? kind : (kind.any[0] ?? '')));
  return {
    traits: traitsOf(wordsOf(piecesOf(noteOf(line)).pieces)),
    kinds: new Set(kinds.length === 0 ? ['nothing'] : kinds),
  };
}

interface Gold {
  readonly kind: string | { any: string[] };
  readonly variety?: unknown;
  readonly to?: unknown;
  readonly from?: unknown;
}

function entriesOf(line: Record<string, unknown>): readonly Gold[] {
  const { entries } = (line['gold'] ?? {}) as { entries?: readonly Gold[] };
  if (!entries) throw new BadLine('no gold: give the right entries as "gold"');
  return entries;
}
