/** The note contract's own examples, read to the letter, and every answer in the contract's shape. */
import { Ajv2020 } from 'ajv/dist/2020.js';
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { answerOf, noteOf } from '../../src/command-line/parse.js';
import { explanation } from '../../src/language/explanation.js';
import { read } from '../../src/language/read.js';
import type { CorpusNote } from '../corpus/corpus-note.js';
import { type Answer, judge } from '../corpus/score.js';

const examples = readFileSync('fixtures/contract/examples.jsonl', 'utf8')
  .trim()
  .split('\n')
  .map((line) => JSON.parse(line) as CorpusNote);
const fits = new Ajv2020().compile(JSON.parse(readFileSync('shared/answer.schema.json', 'utf8')) as object);

describe("the contract's examples", () => {
  for (const example of examples)
    it(`reads ${JSON.stringify(example.text)}`, () => {
      const note = noteOf(example as unknown as Record<string, unknown>);
      const answer = JSON.parse(JSON.stringify(answerOf(read(note)))) as Answer;
      const judgement = judge(example, answer);
      const why = judgement.outcome === 'exact' ? '' : `${judgement.faults.join('; ')}\n${explanation(note)}`;
      expect(why).toBe('');
      expect(fits({ id: example.id, ...answer }), JSON.stringify(fits.errors)).toBe(true);
    });
});
