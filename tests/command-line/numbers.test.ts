/** The headless faces of forecast, take and schedule. */
import { PassThrough, Readable } from 'node:stream';
import { text } from 'node:stream/consumers';
import { describe, expect, it } from 'vitest';
import { addDays, asDay, daysBetween } from '../../src/calendar/day.js';
import type { Run } from '../../src/command-line/commands.js';
import { forecast } from '../../src/command-line/forecast.js';
import { schedule } from '../../src/command-line/schedule.js';
import { take } from '../../src/command-line/take.js';

type Answer = Record<string, never>;

async function answersOf(
  run: Run,
  ...lines: readonly object[]
): Promise<{ status: number; answers: Answer[] }> {
  const output = new PassThrough();
  const input = Readable.from(lines.map((line) => `${JSON.stringify(line)}\n`));
  const status = await run([], { input, output, errors: new PassThrough() });
  output.end();
  return {
    status,
    answers: (await text(output))
      .trim()
      .split('\n')
      .map((line) => JSON.parse(line) as Answer),
  };
}

async function answerTo(run: Run, line: object): Promise<Answer> {
  return (await answersOf(run, line)).answers[0]!;
}

const struck = '2026-03-02';
const on = (day: number) => addDays(asDay(struck), day);
const checks = (...seen: [day: number, rooted: number][]) =>
  seen.map(([day, rooted]) => ({ date: on(day), rooted }));
const batch = { id: 'b', daysToRoot: [10, 21], struck, cuttings: 10, checks: [], history: [], today: struck };

describe('forecast', () => {
  it('answers the fields of the contract, in its order', async () => {
    const answer = await answerTo(forecast, batch);
    expect(Object.keys(answer)).toEqual(['id', 'state', 'ready', 'pEver', 'pReadyBy', 'nextCheck', 'reason']);
    expect(Object.keys(answer['ready']!)).toEqual(['p10', 'p50', 'p90']);
    expect(answer).toMatchObject({ id: 'b', state: 'rooting' });
  });

  it('tells chances every seven days from today until they no longer rise', async () => {
    const { pReadyBy, pEver } = (await answerTo(forecast, batch)) as unknown as {
      pReadyBy: { date: string; p: number }[];
      pEver: number;
    };
    expect(pReadyBy[0]).toEqual({ date: struck, p: 0 });
    for (const [i, { date, p }] of pReadyBy.entries()) {
      expect(date).toBe(on(7 * i));
      const last = i === pReadyBy.length - 1;
      expect(p >= pEver - 0.005 - 1e-5).toBe(last);
      if (i > 0) expect(p).toBeGreaterThan(pReadyBy[i - 1]!.p);
    }
  });

  it('is ready when half of those struck, rounded up, have rooted, and then asks no more', async () => {
    const found = { ...batch, cuttings: 9, checks: checks([12, 2], [16, 5]), today: on(17) };
    const answer = await answerTo(forecast, found);
    expect(answer).toMatchObject({ state: 'ready', pEver: 1, nextCheck: null });
    const { p10, p90 } = answer['ready'] as unknown as { p10: number; p90: number };
    expect(p10).toBeGreaterThan(12);
    expect(p90).toBeLessThan(16);
    expect(await answerTo(forecast, { ...found, checks: checks([12, 2], [16, 4]) })).toMatchObject({
      state: 'rooting',
    });
  });

  it('gives up only when even one more root is unlikely, and pots on what has rooted', async () => {
    const few = { ...batch, checks: checks([14, 1], [60, 2]), today: on(60) };
    expect(await answerTo(forecast, few)).toMatchObject({
      state: 'giveUp',
      nextCheck: null,
      reason: expect.stringContaining('pot those on') as string,
    });
    expect(await answerTo(forecast, { ...few, checks: checks([14, 0]), today: on(14) })).toMatchObject({
      state: 'rooting',
    });
  });

  it('looks at least two days after the last look and never before today', async () => {
    const seen = await answerTo(forecast, { ...batch, checks: checks([13, 4]), today: on(13) });
    expect(daysBetween(on(13), seen['nextCheck']!)).toBeGreaterThanOrEqual(2);
    const late = await answerTo(forecast, { ...batch, today: on(40) });
    expect(String(late['nextCheck']) >= on(40)).toBe(true);
  });

  it('keeps lost cuttings among those struck, so that half may be out of reach', async () => {
    const answer = await answerTo(forecast, { ...batch, checks: checks([12, 1]), lost: 7, today: on(12) });
    expect(answer).toMatchObject({ state: 'rooting', pEver: 0, ready: { p10: null, p50: null, p90: null } });
    expect(answer['nextCheck']).not.toBeNull();
  });

  it('learns from earlier batches and says so', async () => {
    const slow = { struck, cuttings: 10, checks: checks([20, 1], [24, 6], [35, 8]), final: true };
    const guess = await answerTo(forecast, { ...batch, today: on(40) });
    const learnt = await answerTo(forecast, { ...batch, history: [slow, slow, slow], today: on(40) });
    const median = ({ ready }: Answer) => (ready as unknown as { p50: number }).p50;
    expect(median(learnt)).toBeGreaterThan(median(guess) + 3);
    expect(guess['reason']).toContain('starting guess');
    expect(learnt['reason']).toContain('3 of 3 earlier batches took 22 days');
  });

  it('takes the crop table’s range, and daysToRoot before it', async () => {
    const dahlia = await answerTo(forecast, { ...batch, crop: 'dahlia', daysToRoot: undefined });
    const slower = await answerTo(forecast, { ...batch, crop: 'dahlia', daysToRoot: [30, 50] });
    const median = ({ ready }: Answer) => (ready as unknown as { p50: number }).p50;
    expect(median(dahlia)).toBeLessThan(median(slower));
  });

  it('reads a cold spell as slower', async () => {
    const cold = Array.from({ length: 10 }, (_, i) => ({ date: on(i + 1), mean: 13 }));
    const median = ({ ready }: Answer) => (ready as unknown as { p50: number }).p50;
    expect(median(await answerTo(forecast, { ...batch, temperatures: cold }))).toBeGreaterThan(
      1.5 * median(await answerTo(forecast, batch)),
    );
  });

  it.each([
    [{ crop: 'moonflower vine of Zed', daysToRoot: undefined }, 'give daysToRoot'],
    [{ daysToRoot: [21, 10] }, 'the smaller first'],
    [{ cuttings: 0 }, 'whole number of 1 or more'],
    [{ struck: '2026-02-30' }, 'give a day as YYYY-MM-DD'],
    [{ checks: checks([5, 11]), today: on(5) }, '11 rooted of 10 struck'],
    [{ checks: checks([5, 3], [8, 2]), today: on(9) }, 'give deaths as lost'],
    [{ checks: checks([5, 3]), today: on(4) }, 'is after today'],
    [{ history: [{ struck, cuttings: 3, checks: [], final: true }] }, 'history 1: final'],
  ])('refuses %j with what would do, and goes on', async (wrong, message) => {
    const { status, answers } = await answersOf(forecast, { ...batch, ...wrong }, batch);
    expect(status).toBe(1);
    expect(answers[0]).toEqual({ id: 'b', error: expect.stringContaining(message) as string });
    expect(answers[1]).toMatchObject({ state: 'rooting' });
  });
});

describe('take', () => {
  it('answers as R does for the discounted records', async () => {
    const records = [
      { struck: 10, rooted: 7 },
      { struck: 8, rooted: 8 },
      { struck: 12, rooted: 5 },
    ];
    expect(await answerTo(take, { id: 1, want: 12, records })).toMatchObject({ id: 1, take: 24 });
    expect(await answerTo(take, { id: 1, want: 6 })).toMatchObject({
      take: 13,
      reason: expect.stringContaining('starting guess') as string,
    });
    expect(await answerTo(take, { id: 1, want: 0 })).toMatchObject({ take: 0, p: 1 });
  });

  it('takes more where some of the rooted die', async () => {
    const without = await answerTo(take, { want: 12 });
    const withLosses = await answerTo(take, { want: 12, survival: [{ rooted: 20, kept: 15 }] });
    expect(Number(withLosses['take'])).toBeGreaterThan(Number(without['take']));
  });

  it.each([
    [{ want: 6, confidence: 1 }, 'between 0 and 1'],
    [{ want: 6, records: [{ struck: 3, rooted: 4 }] }, 'cannot be more'],
    [{ want: 5001 }, 'more than 5000'],
    [{ want: -1 }, 'whole number'],
    [{ want: 6, prior: [0, 2] }, 'positive'],
  ])('refuses %j', async (line, message) => {
    const { status, answers } = await answersOf(take, { id: 7, ...line });
    expect(status).toBe(1);
    expect(answers).toEqual([{ id: 7, error: expect.stringContaining(message) as string }]);
  });
});

describe('schedule', () => {
  const plan = { id: 1, crop: 'dahlia', want: 6, plantOut: '2026-05-25', today: '2026-03-02' };

  it('takes no more than take does when there is time enough, and finds the last day for it', async () => {
    const answer = await answerTo(schedule, plan);
    expect(answer['rounds']).toEqual([{ strike: '2026-03-02', take: 13 }]);
    const last = String(answer['latestStrike']);
    const again = await answerTo(schedule, { ...plan, today: last });
    expect(again['rounds']).toEqual([{ strike: last, take: 13 }]);
    const [late] = (await answerTo(schedule, { ...plan, today: addDays(asDay(last), 1) }))[
      'rounds'
    ] as unknown as [{ take: number }];
    expect(late.take).toBeGreaterThan(13);
  });

  it('counts back from planting out to hardening off to potting on', async () => {
    const answer = await answerTo(schedule, { ...plan, growOnDays: [20, 29], hardenOffDays: 10 });
    expect(answer).toMatchObject({ hardenOff: '2026-05-15', potOn: '2026-04-20', plantOut: '2026-05-25' });
  });

  it('never takes more from the stock than it gives, and waits until it gives again', async () => {
    const answer = await answerTo(schedule, { ...plan, stock: { shoots: 6, everyDays: 10 } });
    const rounds = answer['rounds'] as unknown as { strike: string; take: number }[];
    expect(rounds.length).toBeGreaterThan(1);
    for (const [i, { strike, take: count }] of rounds.entries()) {
      expect(strike).toBe(addDays(asDay('2026-03-02'), 10 * i));
      expect(count).toBeLessThanOrEqual(6);
    }
  });

  it('says when it is too late, what can still be had and by when it could', async () => {
    const answer = await answerTo(schedule, { ...plan, today: '2026-04-16' });
    expect(answer).toMatchObject({ tooLate: true, latestStrike: null });
    expect(String(answer['earliestPlantOut']) > plan.plantOut).toBe(true);
    expect(Number(answer['canHave'])).toBeLessThan(6);
  });

  it('names what it lacks of a crop that the table has not', async () => {
    const { answers } = await answersOf(schedule, { ...plan, crop: 'zedwort' });
    expect(answers[0]).toEqual({ id: 1, error: expect.stringContaining('daysToRoot') as string });
    expect(
      await answerTo(schedule, {
        ...plan,
        crop: 'zedwort',
        daysToRoot: [10, 21],
        growOnDays: 28,
        hardenOffDays: 10,
      }),
    ).toHaveProperty('rounds');
  });
});
