/** Rounds and the time they have, against R; the source stands in each fixture. */
import { describe, expect, it } from 'vitest';
import answers from '../../fixtures/statistics/schedule.json' with { type: 'json' };
import taking from '../../fixtures/statistics/taking.json' with { type: 'json' };
import { addDays, asDay } from '../../src/calendar/day.js';
import { normalQuantile } from '../../src/horticulture/normal.js';
import { chanceOfRounds, type TimingNode } from '../../src/horticulture/rounds.js';

const PROBABILITY = 0.005;
const inTime: readonly TimingNode[] = [{ logMedian: 0, within: 0.01, weight: 1 }];
const rounds = (counts: readonly number[]) => counts.map((take) => ({ take, daysLeft: 100 }));

describe('several rounds', () => {
  it.each(taking.rounds_overdispersed)('share a mean rate and differ about it: $ns for $N', (each) => {
    const { ns, N, a, b, s, P } = each;
    const question = { want: N, rate: { a, b }, timing: inTime, concentration: s };
    expect(Math.abs(chanceOfRounds(rounds(ns.split('+').map(Number)), question) - P)).toBeLessThan(
      PROBABILITY,
    );
  });

  it.each(taking.rounds)(
    'with one rate for all are as one batch: $ns for $N',
    ({ ns, N, a, b, P_shared_p }) => {
      const question = { want: N, rate: { a, b }, timing: inTime, concentration: Infinity };
      expect(Math.abs(chanceOfRounds(rounds(ns), question) - P_shared_p)).toBeLessThan(PROBABILITY);
    },
  );
});

describe('the time a round has', () => {
  // The row's model: log T ~ N(μ_b, 0.22), μ_b ~ N(log √210, 0.25² + 0.13²), one rate p ~ Beta(a, b).
  const nodes = 200;
  const timing = Array.from({ length: nodes }, (_, i) => ({
    logMedian: Math.log(Math.sqrt(210)) + Math.hypot(0.25, 0.13) * normalQuantile((i + 0.5) / nodes),
    within: 0.22,
    weight: 1 / nodes,
  }));

  it.each(answers.backschedule.rows)('$n for $N at Beta($a, $b): the chance by each day agrees', (row) => {
    const chance = (daysLeft: number) =>
      chanceOfRounds([{ take: row.n, daysLeft }], {
        want: row.N,
        rate: { a: row.a, b: row.b },
        timing,
        concentration: Infinity,
      });
    for (const [days, expected] of [
      [14, row.P14],
      [21, row.P21],
      [28, row.P28],
      [35, row.P35],
      [100_000, row.P_ever],
    ] as const)
      expect(Math.abs(chance(days) - expected), `${days} days`).toBeLessThan(PROBABILITY);
    const days = Array.from({ length: 400 }, (_, i) => i + 1).find((each) => chance(each) >= 0.9) ?? null;
    expect(days).toBe(row['days_for_0.9']);
  });

  it.each(answers.backschedule.dates)('counts back from $plant_out to $strike_by', (each) => {
    const { plant_out, grow_on_days, harden_days, root_days, strike_by } = each;
    expect(addDays(asDay(plant_out), -(grow_on_days + harden_days + root_days))).toBe(strike_by);
  });
});
