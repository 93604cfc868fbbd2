/** Phrases of time found in notes, beside chrono-node's own time on the same texts. */
import * as chrono from 'chrono-node';
import { readFileSync } from 'node:fs';
import { asDay } from '../../calendar/day.js';
import { datesIn, type Moment } from '../../language/dates.js';
import { type Measurement, median, timeEach } from './measurement.js';

const now: Moment = {
  today: asDay('2026-05-20'),
  timeNow: '10:00',
  zone: 'Europe/London',
  dateOrder: 'DMY',
};
const rounds = 20;

export async function dates(): Promise<readonly Measurement[]> {
  const notes = textsOf('contract/examples');
  const phrases = textsOf('dates/british');
  return [
    measured('phrases of time in a note, median', notes, rounds * notes.length, 'under 0.5 ms'),
    measured('a phrase of time alone, median', phrases, 4 * phrases.length),
    measured('4,096 hostile characters', ['the 3rd to monday last week 3/4 '.repeat(128)], 5, 'under 50 ms'),
  ];
}

function measured(name: string, texts: readonly string[], runs: number, aim?: string): Measurement {
  const reference = new Date(Date.UTC(2026, 4, 20, 9));
  const textOf = (run: number) => texts[run % texts.length] ?? '';
  return {
    name,
    unit: 'ms',
    ours: median(timeEach(runs, (run) => void datesIn(textOf(run), now))),
    baseline: median(timeEach(runs, (run) => void chrono.casual.parse(textOf(run), reference))),
    against: 'chrono-node on the same text',
    ...(aim === undefined ? {} : { aim }),
  };
}

function textsOf(fixture: string): string[] {
  const path = new URL(`../../../fixtures/${fixture}.jsonl`, import.meta.url);
  return readFileSync(path, 'utf8')
    .trim()
    .split('\n')
    .map((line) => (JSON.parse(line) as { text?: string }).text ?? '')
    .filter((text) => text.trim() !== '');
}
