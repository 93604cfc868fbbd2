/** Enough plants in time, or how many cuttings more. */
import { describe, expect, it } from 'vitest';
import { asDay } from '../../src/calendar/day.js';
import { cuttingsToTake } from '../../src/horticulture/cuttings-to-take.js';
import { nextBatchRate } from '../../src/horticulture/strike-rate.js';
import { plansOf } from '../../src/outlook/plan.js';
import { keeper, kindsDue, ledgerOf, northern, seen, the, type Told } from './scene.js';

const target = {
  kind: 'target',
  variety: 'Ember Fox',
  crop: 'dahlia',
  count: 12,
  date: '2026-05-21',
} as const;
const strike = (count: number, date: string, label = 'EF1'): Told => ({
  kind: 'strike', label, variety: 'Ember Fox', crop: 'dahlia', count, place: 'propagator', date,
}); // prettier-ignore

function plan(told: readonly Told[], today: string, site = northern) {
  const [only] = plansOf({ ledger: ledgerOf(...told), today: asDay(today), site, keeper });
  if (!only) throw new Error('no plan');
  return only;
}

describe('a plan', () => {
  it('counts back from planting out over hardening and growing on', () => {
    expect(plan([target], '2026-02-01')).toMatchObject({
      by: '2026-05-21',
      rootedBy: '2026-04-18',
      chance: 0,
      living: 0,
    });
  });

  // cuttingsToTake itself is held to R's 90 smallest numbers elsewhere; here the time is ample.
  it('takes as many as the strike rate and losses after rooting ask for', () => {
    const expected = cuttingsToTake({
      want: 12,
      confidence: 0.9,
      rate: nextBatchRate({ a: 6, b: 2 }),
      survival: { a: 18, b: 2 },
    });
    const { take } = plan([target], '2026-02-01');
    expect(Math.abs((take ?? 0) - (expected?.take ?? 0))).toBeLessThanOrEqual(1);
  });

  it('is content once enough live, and says the chance before that', () => {
    expect(plan([target, strike(40, '2026-03-01')], '2026-03-10')).toMatchObject({ take: 0, strikeBy: null });
    const few = plan([target, strike(14, '2026-03-01')], '2026-03-10');
    expect(few.chance).toBeGreaterThan(0.1);
    expect(few.chance).toBeLessThan(0.7);
    expect(few.take).toBeGreaterThan(0);
  });

  it('learns from a look: many rooted raise the chance, few lower it', () => {
    const chance = (rooted: number) =>
      plan(
        [target, strike(16, '2026-03-01'), { kind: 'check', batch: 'EF1', rooted, date: '2026-03-14' }],
        '2026-03-15',
      ).chance;
    expect(chance(15)).toBeGreaterThan(chance(8));
    expect(chance(8)).toBeGreaterThan(chance(1));
  });

  it('counts planted ones as sure, and those lost not at all', () => {
    const planted = [
      strike(12, '2026-02-10'),
      { kind: 'plantOut', batch: 'EF1', count: 12, date: '2026-05-10' },
    ] as const;
    expect(plan([target, ...planted], '2026-05-12').chance).toBe(1);
    const lost = [
      strike(12, '2026-03-01'),
      { kind: 'loss', batch: 'EF1', count: 12, date: '2026-03-05' },
    ] as const;
    expect(plan([target, ...lost], '2026-03-06').chance).toBe(0);
  });

  it('names the last day on which that many still do, and gives up when it is too late', () => {
    const early = plan([target], '2026-02-01');
    expect(early.strikeBy! > '2026-03-15' && early.strikeBy! < '2026-04-10').toBe(true);
    expect(plan([target], '2026-04-17').take).toBeNull();
  });

  it('takes the next safe day to plant out where no day was named', () => {
    const undated = { ...target, date: '1970-01-01' };
    expect(plan([undated], '1970-01-02').by).toBe('1970-05-21');
  });

  it('lets the latest target of a plant stand', () => {
    expect(plan([target, { ...target, count: 20 }], '2026-02-01').want).toBe(20);
  });
});

describe('the next round', () => {
  it('is asked for when the stock has shot again, and no more once enough live or it is too late', () => {
    const told = [target, strike(8, '2026-03-01')];
    expect(kindsDue(ledgerOf(...told), '2026-03-10')).not.toContain('strike');
    const round = the('strike', seen(ledgerOf(...told), '2026-03-16'));
    expect(round).toMatchObject({ key: 'strike:1:1', from: '2026-03-15', variety: 'Ember Fox', asks: true });
    expect(kindsDue(ledgerOf(...told, strike(30, '2026-03-16', 'EF2')), '2026-03-17')).not.toContain(
      'strike',
    );
    expect(kindsDue(ledgerOf(...told), '2026-04-17')).not.toContain('strike');
  });

  it('comes back when losses have made it too few', () => {
    const enough = [target, strike(40, '2026-03-01')];
    expect(kindsDue(ledgerOf(...enough), '2026-03-20')).not.toContain('strike');
    const fewer = [...enough, { kind: 'loss', batch: 'EF1', count: 34, date: '2026-03-19' } as const];
    expect(kindsDue(ledgerOf(...fewer), '2026-03-20')).toContain('strike');
  });

  it('waits for the season of the cuttings', () => {
    expect(the('strike', seen(ledgerOf(target), '1970-01-02')).from).toBe('1970-02-01');
  });
});
