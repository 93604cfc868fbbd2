/** The headless face of the frost numbers. */
import { PassThrough, Readable } from 'node:stream';
import { text } from 'node:stream/consumers';
import { describe, expect, it } from 'vitest';
import { addDays, asDay } from '../../src/calendar/day.js';
import { frost } from '../../src/command-line/frost.js';

async function run(
  ...lines: readonly object[]
): Promise<{ status: number; answers: Record<string, unknown>[] }> {
  const output = new PassThrough();
  const input = Readable.from(lines.map((line) => `${JSON.stringify(line)}\n`));
  const status = await frost([], { input, output, errors: new PassThrough() });
  output.end();
  const answers = (await text(output)).trim().split('\n');
  return { status, answers: answers.map((line) => JSON.parse(line) as Record<string, unknown>) };
}

const minima = Array.from({ length: 1461 }, (_, index) => {
  const date = addDays(asDay('2020-01-01'), index);
  return { date, min: /-04-1[05]$/.test(date) ? -2 : 6 };
});

describe('frost', () => {
  it('answers years and days of risk', async () => {
    const { status, answers } = await run({ id: 1, minima, risk: [0.5, 0.1] });
    expect(status).toBe(0);
    expect(answers[0]).toEqual({
      id: 1,
      years: [2020, 2021, 2022, 2023].map((year) => ({ year, date: `${year}-04-15` })),
      at: [
        { risk: 0.5, date: '04-15' },
        { risk: 0.1, date: '05-01' },
      ],
    });
  });

  it('names the years that dropped out', async () => {
    const { answers } = await run({ id: 1, minima: minima.slice(0, 1200), risk: [0.1] });
    expect(answers[0]).toMatchObject({ note: expect.stringContaining('2023') as string });
  });

  it('answers bad lines with what to do, and goes on', async () => {
    const { status, answers } = await run(
      { id: 'a', minima: 3 },
      { id: 'b', minima, half: 'summer' },
      { id: 'c', minima, risk: [0] },
      { id: 'd', minima: [{ date: '2020-02-30', min: 1 }] },
      { id: 'e', minima: minima.slice(0, 200), risk: [0.1] },
      { id: 'f', minima },
    );
    expect(status).toBe(1);
    expect(answers.map((answer) => 'error' in answer)).toEqual([true, true, true, true, true, false]);
    expect(answers.map((answer) => answer['id'])).toEqual(['a', 'b', 'c', 'd', 'e', 'f']);
  });
});
