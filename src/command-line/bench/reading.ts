/** A note read whole, beside chrono-node's own time on the same text. */
import * as chrono from 'chrono-node';
import { readFileSync } from 'node:fs';
import type { Note } from '../../language/note.js';
import { read } from '../../language/read.js';
import { noteOf } from '../parse.js';
import { type Measurement, median, timeEach } from './measurement.js';

const rounds = 20;

/** As many again before anything is measured: so soon a bot that has been started is warm. */
const roundsToWarmUp = 20;

/** Texts of 4,096 characters that ask the most of one stage or another. */
const hostile = [
  'took 3 copper lantern and '.repeat(158),
  'no 4 not 5 or '.repeat(293),
  'pot '.repeat(1024),
  'no wait '.repeat(512),
  '4x84 '.repeat(820),
  'x9cm'.repeat(1024),
  'the 3rd to monday last week 3/4 '.repeat(128),
  `${'no actually '.repeat(11)}fern. `.repeat(30),
  `never ${'and the then but so '.repeat(205)}`,
  'and now, so it, '.repeat(256),
  'meant to pot on, did it '.repeat(171),
];

export async function reading(): Promise<readonly Measurement[]> {
  const examples = () => notesOf('contract/examples');
  for (let round = 0; round < roundsToWarmUp; round++) for (const note of examples()) read(note);
  // In a bot each note meets a ledger that has just changed, so no two share what the reader worked out from it.
  const notes = Array.from({ length: rounds }, examples).flat();
  const [first] = notes;
  const worst = first
    ? hostile.map((text) => measured('', [{ ...first, text: text.slice(0, 4096) }], 15))
    : [];
  const slowest = worst.reduce<Measurement | undefined>(
    (most, one) => (most && most.ours > one.ours ? most : one),
    undefined,
  );
  return [
    { ...measured('', notes, notes.length), name: 'a note read, median, once warm', aim: 'under 1 ms' },
    ...(slowest
      ? [
          {
            ...slowest,
            name: `4,096 hostile characters, the slowest of ${hostile.length}`,
            aim: 'under 50 ms',
          },
        ]
      : []),
  ];
}

function measured(name: string, notes: readonly Note[], runs: number): Measurement {
  const noteAt = (run: number): Note => notes[run % notes.length] as Note;
  return {
    name,
    unit: 'ms',
    ours: median(timeEach(runs, (run) => void read(noteAt(run)))),
    baseline: median(
      timeEach(runs, (run) => void chrono.casual.parse(noteAt(run).text, new Date(noteAt(run).now))),
    ),
    against: 'chrono-node on the same text',
  };
}

function notesOf(fixture: string): Note[] {
  const path = new URL(`../../../fixtures/${fixture}.jsonl`, import.meta.url);
  return readFileSync(path, 'utf8')
    .trim()
    .split('\n')
    .map((line) => noteOf(JSON.parse(line) as Record<string, unknown>));
}
