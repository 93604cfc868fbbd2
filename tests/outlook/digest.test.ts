/** The one message of a day. */
import { describe, expect, it } from 'vitest';
import { asDay, type Day } from '../../src/calendar/day.js';
import { type Digest, digestOf, dueWithin } from '../../src/outlook/digest.js';
import { days, ledgerOf, seen, type Told } from './scene.js';

const strike = (label: string, place: string, date: string): Told => ({
  kind: 'strike', label, variety: `Variety ${label}`, crop: 'dahlia', count: 10, place, date,
}); // prettier-ignore

/** The digests of each of these days, each remembered by the next. */
function digests(told: readonly Told[], from: string, to: string, skipped: readonly string[] = []): Digest[] {
  const sent: Digest[] = [];
  const mentioned = new Set<string>();
  let lastDay: Day | null = null;
  for (const today of days(from, to)) {
    if (skipped.includes(today)) continue;
    const soFar = told.filter(({ date }) => date <= today);
    const digest = digestOf(seen(ledgerOf(...soFar), today), { today, lastDay, mentioned });
    lastDay = today;
    if (digest === null) continue;
    sent.push(digest);
    for (const { key } of digest.parts.flatMap((part) => part.dues)) mentioned.add(key);
  }
  return sent;
}

describe('the digest', () => {
  const two = [strike('A1', 'propagator', '2026-03-02'), strike('B1', 'windowsill', '2026-02-20')];

  it('comes only on days that have something, and mentions it once', () => {
    const sent = digests([strike('A1', 'propagator', '2026-03-02')], '2026-03-02', '2026-03-15');
    expect(sent).toHaveLength(1);
    expect(sent[0]?.questions.map(({ key }) => key)).toEqual(['check:A1:0']);
  });

  it('mentions again what has grown late, then once a week at most', () => {
    const sent = digests([strike('A1', 'propagator', '2026-03-02')], '2026-03-02', '2026-03-31');
    expect(sent.length).toBeGreaterThanOrEqual(2);
    expect(sent.length).toBeLessThanOrEqual(4);
  });

  it('is one after an outage, with all that was missed', () => {
    const missed = days('2026-03-10', '2026-03-30');
    const sent = digests(two, '2026-03-02', '2026-03-31', missed).filter(({ day }) => day > '2026-03-09');
    expect(sent).toHaveLength(1);
    expect(sent[0]?.questions.map(({ labels }) => labels[0]).sort()).toEqual(['A1', 'B1']);
  });

  it('groups by place, late first', () => {
    const all = seen(ledgerOf(...two, strike('C1', 'propagator', '2026-03-01')), '2026-03-25');
    const digest = digestOf(all, { today: asDay('2026-03-25'), lastDay: null });
    expect(digest?.parts.map(({ place }) => place).sort()).toEqual(['propagator', 'windowsill']);
    expect(digest?.parts.find(({ place }) => place === 'propagator')?.dues).toHaveLength(2);
  });

  it('says tending beside the rest and never on its own account', () => {
    const quiet = seen(ledgerOf(strike('A1', 'propagator', '2026-03-02')), '2026-03-05');
    expect(quiet.some(({ kind }) => kind === 'tend')).toBe(true);
    expect(digestOf(quiet, { today: asDay('2026-03-05'), lastDay: null })).toBeNull();
    const busy = seen(ledgerOf(strike('A1', 'propagator', '2026-03-02')), '2026-03-16');
    expect(digestOf(busy, { today: asDay('2026-03-16'), lastDay: null })?.asides).toHaveLength(1);
  });

  it('mentions what was due before it was told of', () => {
    const late = [strike('A1', 'propagator', '2026-03-02')];
    const today = asDay('2026-04-20');
    const digest = digestOf(seen(ledgerOf(...late), today), { today, lastDay: asDay('2026-04-19') });
    expect(digest?.questions).toHaveLength(1);
  });
});

describe('what is due in a span', () => {
  it('is by day, late first, and includes what is coming', () => {
    const ledger = ledgerOf(
      strike('A1', 'propagator', '2026-03-02'),
      strike('B1', 'propagator', '2026-03-19'),
    );
    const today = asDay('2026-03-24');
    const all = dueWithin(seen(ledger, today), { from: today, to: asDay('2026-04-05'), today });
    expect(all.map(({ labels }) => labels[0])).toEqual(['A1', 'B1']);
    expect(dueWithin(seen(ledger, today), { from: today, to: today, today })).toHaveLength(1);
  });
});
