import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { asDay } from '../../src/calendar/day.js';
import { alive, placeOf } from '../../src/ledger/batch.js';
import { fold, postTo } from '../../src/ledger/fold.js';
import { nextLabel } from '../../src/ledger/label.js';
import { emptyLedger, type Ledger } from '../../src/ledger/ledger.js';
import type { Amendment, JournalLine, Posting } from '../../src/ledger/posting.js';
import { isRefusal } from '../../src/ledger/refusal.js';

const day = asDay('2026-03-20');
const ember = { kind: 'strike', variety: 'Ember Fox', crop: 'dahlia', label: 'EF1', count: 10, pots: 2, date: asDay('2026-03-02'), place: 'propagator' } as const; // prettier-ignore

function journalOf(...whats: (Posting | Amendment)[]): JournalLine[] {
  return whats.map((what, index) => ({ line: index + 1, at: 0, postedAt: 0, by: null, source: null, what }));
}

function ledgerOf(...whats: (Posting | Amendment)[]): Ledger {
  const { ledger, conflicts } = fold(journalOf(...whats));
  expect(conflicts).toEqual([]);
  return ledger;
}

const onEmber = { batch: 'EF1', date: day };

describe('folding a journal', () => {
  it('keeps alive at struck less lost less dispatched', () => {
    const batch = ledgerOf(
      ember,
      { kind: 'loss', count: 2, cause: 'rot', ...onEmber },
      { kind: 'dispatch', count: 3, how: 'given', to: 'Nell', ...onEmber },
    ).batches.get('EF1');
    expect(batch && [alive(batch), batch.lost, batch.dispatched]).toEqual([5, 2, 3]);
  });

  it('raises rooted with potting on, and potted on with planting out', () => {
    const batch = ledgerOf(ember, { kind: 'plantOut', count: 4, place: 'top bed', ...onEmber }).batches.get(
      'EF1',
    );
    expect(batch).toMatchObject({
      rooted: 4,
      pottedOn: 4,
      plantedOut: 4,
      standing: { propagator: 6, 'top bed': 4 },
    });
  });

  it('takes all for the rooted where a check is known', () => {
    const batch = ledgerOf(ember, { kind: 'check', rooted: 6, ...onEmber }, { kind: 'potOn', ...onEmber });
    expect(batch.batches.get('EF1')).toMatchObject({ rooted: 6, pottedOn: 6 });
  });

  it('does not count plants twice that go into larger pots', () => {
    const batch = ledgerOf(
      ember,
      { kind: 'potOn', count: 6, potSize: '9cm', ...onEmber },
      { kind: 'potOn', count: 6, potSize: '2l', ...onEmber },
      { kind: 'potOn', count: 2, potSize: '9cm', ...onEmber },
    ).batches.get('EF1');
    expect(batch?.pottedOn).toBe(8);
  });

  it('covers every batch of a place when it is said of the place', () => {
    const other = { ...ember, label: 'EF2' };
    const ledger = ledgerOf(ember, other, {
      kind: 'move',
      fromPlace: 'Propagator',
      place: 'cold frame',
      date: day,
    });
    expect([...ledger.batches.values()].map(placeOf)).toEqual(['cold frame', 'cold frame']);
  });

  it.each([
    [
      { kind: 'loss', count: 11, ...onEmber },
      { refused: 'tooMany', there: 10, wanted: 11 },
    ],
    [
      { kind: 'check', rooted: 11, ...onEmber },
      { refused: 'tooManyRooted', atMost: 10 },
    ],
    [{ kind: 'loss', count: 1, batch: 'EF1', date: asDay('2026-02-01') }, { refused: 'beforeItBegan' }],
    [{ kind: 'loss', count: 1, variety: 'Marble Wren', date: day }, { refused: 'noBatch' }],
    [{ kind: 'loss', ...onEmber }, { refused: 'countMissing' }],
  ] as [Posting, object][])('refuses what cannot be: %j', (entry, refusal) => {
    const before = fold(journalOf(ember)).ledger;
    expect(
      postTo(before, { line: 2, at: 0, postedAt: 0, by: null, source: null, what: entry }),
    ).toMatchObject(refusal);
    expect(before.batches.get('EF1')?.lost).toBe(0);
  });

  it('asks which batch is meant where two live', () => {
    const { conflicts } = fold(
      journalOf(
        ember,
        { ...ember, label: 'EF2' },
        { kind: 'loss', variety: 'ember fox', count: 1, date: day },
      ),
    );
    expect(conflicts).toMatchObject([
      { line: 3, refusal: { refused: 'severalBatches', labels: ['EF1', 'EF2'] } },
    ]);
  });

  it('puts a line right where it stood, and says what no longer follows', () => {
    const { ledger, conflicts } = fold(
      journalOf(
        ember,
        { kind: 'loss', count: 8, ...onEmber },
        { amends: 1, entries: [{ ...ember, count: 5 }] },
      ),
    );
    expect(ledger.batches.get('EF1')?.count).toBe(5);
    expect(conflicts).toMatchObject([{ line: 2, refusal: { refused: 'tooMany', there: 5, wanted: 8 } }]);
  });

  it('lets an amendment be taken back in its turn', () => {
    const ledger = ledgerOf(
      ember,
      { amends: 1, entries: [{ ...ember, count: 5 }] },
      { amends: 2, entries: [] },
    );
    expect(ledger.batches.get('EF1')?.count).toBe(10);
    expect(ledgerOf(ember, { amends: 1, entries: [] }).batches.size).toBe(0);
  });

  it('shares a split batch so that the parts add up', () => {
    const ledger = ledgerOf(
      ember,
      { kind: 'check', rooted: 7, ...onEmber },
      { kind: 'loss', count: 1, ...onEmber },
      { kind: 'split', batch: 'EF1', parts: [{ label: 'EF2', count: 4 }], date: day },
    );
    const [kept, part] = ['EF1', 'EF2'].map((label) => ledger.batches.get(label));
    expect(
      kept && part && [alive(kept), alive(part), kept.count + part.count, kept.rooted + part.rooted],
    ).toEqual([5, 4, 10, 7]);
  });

  it('joins several batches under one label, with what was lost of each', () => {
    const ledger = ledgerOf(
      ember,
      { ...ember, label: 'EF2', count: 6 },
      { kind: 'loss', batch: 'EF2', count: 2, date: day },
      { kind: 'merge', batches: ['EF1', 'EF2'], into: 'EF1', date: day },
    );
    const numbers = [...ledger.batches.values()].map((batch) => [
      batch.label,
      batch.count,
      batch.lost,
      alive(batch),
    ]);
    expect(numbers).toEqual([
      ['EF1', 16, 2, 14],
      ['EF2', 0, 0, 0],
    ]);
  });

  it.each([
    [2, 3, 5],
    [2, undefined, null],
    [undefined, 3, null],
  ])('knows the pots of two batches joined where it knows both: %s and %s', (one, other, joined) => {
    const withPots = (pots: number | undefined): Posting => {
      const strike: Posting = { ...ember };
      if (pots === undefined) delete strike.pots;
      else strike.pots = pots;
      return strike;
    };
    const ledger = ledgerOf(withPots(one), { ...withPots(other), label: 'EF2' } as Posting, {
      kind: 'merge',
      batches: ['EF1', 'EF2'],
      into: 'EF1',
      date: day,
    });
    expect(ledger.batches.get('EF1')?.pots).toBe(joined);
  });

  it('has a batch that stands in halves where the second half was told to go', () => {
    const moved = ledgerOf(ember, { kind: 'move', count: 5, place: 'cold frame', ...onEmber });
    expect([...moved.batches.values()].map(placeOf)).toEqual(['cold frame']);
  });

  it('renames a variety wherever it stands', () => {
    const ledger = ledgerOf(ember, {
      kind: 'rename',
      variety: 'ember fox',
      to: { variety: 'Ember Fax' },
      date: day,
    });
    expect([ledger.batches.get('EF1')?.variety, [...ledger.varieties]]).toEqual([
      'Ember Fax',
      [['Ember Fax', 'dahlia']],
    ]);
  });
});

describe('any journal', () => {
  const posting: fc.Arbitrary<Posting | Amendment> = fc.oneof(
    fc.record({ count: fc.integer({ min: -1, max: 12 }), label: fc.constantFrom('EF1', 'EF2', 'MW1') }).map((each) => ({ ...ember, ...each })), // prettier-ignore
    fc
      .record({
        kind: fc.constantFrom('loss', 'dispatch', 'potOn', 'pinch', 'plantOut', 'move', 'hardenOff' as const),
        batch: fc.constantFrom('EF1', 'EF2', 'MW1'),
        count: fc.oneof(fc.integer({ min: 0, max: 12 }), fc.constantFrom('all', 'rest' as const)),
        place: fc.constantFrom('propagator', 'cold frame'),
      })
      .map((each) => ({ ...each, date: day }) as Posting),
    fc
      .record({
        rooted: fc.oneof(fc.integer({ min: 0, max: 12 }), fc.constantFrom('all', 'none', 'some' as const)),
      })
      .map(({ rooted }) => ({ kind: 'check', rooted, ...onEmber }) as Posting),
    fc.integer({ min: 1, max: 20 }).map((amends) => ({ amends, entries: [] })),
    fc.integer({ min: 1, max: 5 }).map((count) => ({ kind: 'split', batch: 'EF1', parts: [{ label: `S${count}`, count }], date: day }) as Posting), // prettier-ignore
    fc.constant({ kind: 'merge', batches: ['EF1', 'EF2'], into: 'EF2', date: day } as Posting),
  );

  it('adds up for every batch, and stands nowhere twice', () => {
    fc.assert(
      fc.property(fc.array(posting, { maxLength: 30 }), (whats) => {
        const { ledger } = fold(journalOf(...whats));
        for (const batch of ledger.batches.values()) {
          const placed = Object.values(batch.standing).reduce((sum, count) => sum + count, 0);
          expect(alive(batch)).toBeGreaterThanOrEqual(0);
          expect(placed).toBeLessThanOrEqual(alive(batch));
          expect(batch.rooted).toBeLessThanOrEqual(batch.count);
          expect(batch.rooted).toBeGreaterThanOrEqual(batch.pottedOn);
          expect(batch.pottedOn).toBeGreaterThanOrEqual(batch.plantedOut);
        }
      }),
      { numRuns: 500 },
    );
  });

  it('folds to the same state line by line as at once', () => {
    fc.assert(
      fc.property(fc.array(posting, { maxLength: 20 }), (whats) => {
        const journal = journalOf(...whats.filter((what) => !('amends' in what)));
        const stepwise = journal.reduce<Ledger>((ledger, line) => {
          const after = postTo(ledger, line as JournalLine & { what: Posting });
          return isRefusal(after) ? ledger : after;
        }, emptyLedger);
        const whole = fold(journal).ledger;
        expect([...stepwise.batches]).toEqual([...whole.batches]);
        expect(stepwise.standing).toEqual(whole.standing);
      }),
    );
  });
});

describe('batch labels', () => {
  it('tell varieties apart by their letters, and batches by their numbers', () => {
    const labels: string[] = [];
    let ledger = emptyLedger;
    for (const variety of ['Ember Fox', 'Ember Fox', 'Ebony Fern', 'Marble', "Grandad's Elbow"]) {
      const label = nextLabel(ledger, variety, 'dahlia');
      labels.push(label);
      const line = { line: labels.length, at: 0, postedAt: 0, by: null, source: null };
      const after = postTo(ledger, { ...line, what: { ...ember, variety, label } });
      if (!isRefusal(after)) ledger = after;
    }
    expect(labels).toEqual(['EF1', 'EF2', 'EBF1', 'MA1', 'GE1']);
  });

  it('never come back, even after they were taken back', () => {
    const { ledger } = fold(journalOf(ember, { amends: 1, entries: [] }));
    expect(nextLabel(ledger, 'Ember Fox', 'dahlia')).toBe('EF2');
  });
});
