/** `npm run -s learn`: what the words of a note say of its kind, learnt anew from notes whose entries are known. */
import { createInterface } from 'node:readline';
import { actPhrasings, phrasingContext } from '../language/grammar/phrasings.js';
import { learn as learnFrom, type Example } from '../language/likeness/learning.js';
import { written } from '../language/likeness/learnt.js';
import { traitsOf, wordsOf } from '../language/likeness/words.js';
import { piecesOf } from '../language/read.js';
import type { Run } from './commands.js';
import { BadLine, parseObject } from './json-lines.js';
import { noteOf } from './parse.js';

/** Lines of `fixtures/notes/dev` in, the whole of `shared/likeness.json` out, a trait a line. */
export const learn: Run = async (_, { input, output, errors }) => {
  const examples: Example[] = [...ofRules()];
  for await (const text of createInterface({ input, crlfDelay: Infinity })) {
    if (text.trim() === '') continue;
    try {
      examples.push(exampleOf(parseObject(text)));
    } catch (error) {
      if (!(error instanceof BadLine)) throw error;
      errors.write(`${error.message}: ${text.slice(0, 100)}\n`);
      return 1;
    }
  }
  const learnt = learnFrom(examples);
  output.write(written(learnt));
  errors.write(`${examples.length} notes, ${learnt.weights.size} traits\n`);
  return 0;
};

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
  const { entries } = (line['gold'] ?? {}) as { entries?: readonly { kind: string | { any: string[] } }[] };
  if (!entries) throw new BadLine('no gold: give the right entries as "gold"');
  const kinds = entries.map(({ kind }) => (typeof kind === 'string' ? kind : (kind.any[0] ?? '')));
  return {
    traits: traitsOf(wordsOf(piecesOf(noteOf(line)).pieces)),
    kinds: new Set(kinds.length === 0 ? ['nothing'] : kinds),
  };
}
