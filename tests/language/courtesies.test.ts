/** Courtesies tell nothing: with a greeting before it or thanks behind, a note is read as without. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { noteOf } from '../../src/command-line/parse.js';
import { withoutCourtesy } from '../../src/language/row/courtesies.js';
import { read } from '../../src/language/read.js';
import type { CorpusNote } from '../corpus/corpus-note.js';

const examples = readFileSync('fixtures/contract/examples.jsonl', 'utf8')
  .trim()
  .split('\n')
  .map((line) => JSON.parse(line) as CorpusNote);

/** Entries without a remark's words, which are the note's own; asks; an instruction. */
function reading(example: CorpusNote, text: string): unknown {
  const note = noteOf({ ...example, text } as unknown as Record<string, unknown>);
  const { entries, asks, instruction } = read(note);
  return { entries: entries.map(({ entry }) => ({ ...entry, text: undefined })), asks, instruction };
}

describe('a courtesy', () => {
  it.each([
    'Hi there, ',
    'Morning all! ',
    'Good evening. ',
    'Quick one: ',
    'fyi ',
    'btw ',
    'Just to let you know, ',
    'oh and ',
    'well ',
    'hello slipnote, quick update: ',
    'Rain’s stopped at last so ',
    'hands filthy but ',
    'Had my tea then ',
    'Before I forget, ',
    'Up early, ',
    'Lovely and quiet here. ',
  ])('changes nothing before a note: “%s”', (opening) => {
    for (const example of examples)
      expect(reading(example, opening + example.text), opening + example.text).toEqual(
        reading(example, example.text),
      );
  });

  it.each([
    ', thanks',
    ' x',
    ' at last',
    ' and that’s me done for the day',
    ' (finally)',
    ', pleased with that',
    ' tbh',
    ', sadly',
    ' btw',
    ' thats all for now',
    ', not bad going',
    '. My knees are killing me',
    '. Off for my tea now',
  ])('changes nothing behind one: “%s”', (closing) => {
    for (const example of examples) {
      const told = example.text.replace(/[.!]$/, '');
      expect(reading(example, told + closing), told + closing).toEqual(reading(example, told));
    }
  });

  it.each([
    ['hi all, make that four please x', 'make that four please'],
    ['oh and the Salt Harrier too', 'oh and the Salt Harrier too'],
    ['thanks', 'thanks'],
    ['Good Morning lost two', 'Good Morning lost two'],
    ['what is due? cheers', 'what is due?'],
    ['have they rooted at last?', 'have they rooted at last?'],
    ['actually, how many are left?', 'how many are left?'],
    ['actually is it going to freeze', 'is it going to freeze'],
    ['actually have six', 'actually have six'],
    ['actually 5', 'actually 5'],
    ['back from the shops, undo that', 'undo that'],
    ['phew. -5 in the frame', '-5 in the frame'],
    ['Good Morning so lost two', 'Good Morning so lost two'],
    ['too cold, lost two', 'too cold, lost two'],
    ['hot day, lost two', 'hot day, lost two'],
    ['my neighbour is off, took six', 'my neighbour is off, took six'],
    ['back from the nursery, two lost', 'back from the nursery, two lost'],
    ['lovely day', 'lovely day'],
    ['lost two, very happy', 'lost two, very happy'],
    ['potted on, all in the bed now', 'potted on, all in the bed now'],
  ])('is left out of what is said in a talk: “%s”', (said, left) => {
    expect(withoutCourtesy(said, { varieties: [{ name: 'Good Morning' }] })).toBe(left);
  });
});
