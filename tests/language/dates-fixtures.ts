/** Reads the phrases of fixtures/dates: the moment on the first line, then a phrase a line with what it means. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Moment, Resolved } from '../../src/language/dates.js';

/** A phrase with what it means of things done and of plans: a day, `from..to`, or why it gives none. */
export interface PhraseOfTime {
  readonly text: string;
  readonly past: string;
  readonly future: string;
  readonly time?: string;
}

export function linesOf(name: string): Record<string, string>[] {
  const path = join(import.meta.dirname, '../../fixtures/dates', `${name}.jsonl`);
  return readFileSync(path, 'utf8')
    .trim()
    .split('\n')
    .map((line) => JSON.parse(line) as Record<string, string>);
}

export function phrasesOf(name: string): { now: Moment; phrases: PhraseOfTime[] } {
  const [now, ...lines] = linesOf(name);
  const phrases = lines.map(({ text = '', when = '', past = when, future = when, time }) => ({
    text,
    past,
    future,
    ...(time === undefined ? {} : { time }),
  }));
  return { now: now as unknown as Moment, phrases };
}

export function written(resolved: Resolved): string {
  if ('problem' in resolved) return resolved.problem;
  return 'date' in resolved ? resolved.date : `${resolved.from}..${resolved.to}`;
}
