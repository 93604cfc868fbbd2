/** Whole seasons of invented growers who answer, forget and lose plants: nothing silly is asked, and not much at all. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addDays, asDay, type Day } from '../../src/calendar/day.js';
import { alive } from '../../src/ledger/batch.js';
import { digestOf } from '../../src/outlook/digest.js';
import type { Due } from '../../src/outlook/due.js';
import { days, ledgerOf, seen, type Told } from './scene.js';
import { silly } from './silly.js';

const crops = ['dahlia', 'pelargonium', 'penstemon', 'lupin', 'hydrangea', 'african violet', 'starbush'];

const batch = fc.record({
  crop: fc.constantFrom(...crops),
  struckAfter: fc.integer({ min: 0, max: 200 }),
  count: fc.integer({ min: 1, max: 12 }),
  place: fc.constantFrom('propagator', 'windowsill', 'cold frame'),
});
/** What the grower does with each question: how soon, and how it went (0–1). */
const habits = fc.record({
  answersOneIn: fc.integer({ min: 1, max: 4 }),
  share: fc.double({ min: 0, max: 1, noNaN: true }),
  losesOneIn: fc.integer({ min: 20, max: 200 }),
});

function answer(due: Due, told: readonly Told[], today: Day, share: number): Told | null {
  const [label] = due.labels;
  const found = label === undefined ? undefined : ledgerOf(...told).batches.get(label);
  if (!found) return null;
  switch (due.kind) {
    case 'check':
      return {
        kind: 'check',
        batch: label,
        rooted: Math.max(found.rooted, Math.round(share * alive(found))),
        date: today,
      };
    case 'potOn':
    case 'pinch':
    case 'hardenOff':
    case 'plantOut':
      return { kind: due.kind, batch: label, date: today };
    default:
      return null;
  }
}

describe('a season', () => {
  it('asks nothing silly, whatever is told, forgotten or lost', () => {
    fc.assert(
      fc.property(
        fc.array(batch, { minLength: 1, maxLength: 3 }),
        habits,
        (batches, { answersOneIn, share, losesOneIn }) => {
          const start = asDay('2026-02-15');
          let told: Told[] = [];
          let turn = 0;
          const faults: string[] = [];
          for (const today of days('2026-02-15', '2027-06-30')) {
            for (const [index, { crop, struckAfter, count, place }] of batches.entries())
              if (addDays(start, struckAfter) === today)
                told.push({
                  kind: 'strike',
                  label: `B${index}`,
                  variety: `Variety ${index}`,
                  crop,
                  count,
                  place,
                  date: today,
                });
            if (told.length === 0) continue;
            const ledger = ledgerOf(...told);
            const all = seen(ledger, today);
            faults.push(...silly(ledger, all, today));
            if (digestOf(all, { today, lastDay: addDays(today, -1) }) === null) continue;
            for (const due of all.filter(({ asks, from }) => asks && from <= today)) {
              turn++;
              const said = turn % answersOneIn === 0 ? answer(due, told, today, share) : null;
              if (said) told = [...told, said];
            }
            if (turn % losesOneIn === losesOneIn - 1) {
              const lost = [...ledgerOf(...told).batches.values()].find((each) => alive(each) > 0);
              if (lost) told = [...told, { kind: 'loss', batch: lost.label, count: 1, date: today }];
              turn++;
            }
          }
          expect(faults).toEqual([]);
        },
      ),
      { numRuns: 10 },
    );
  }, 240_000);

  it('of a grower who answers asks each batch fewer than a dozen times from striking to planting out', () => {
    let told: Told[] = [{ kind: 'strike', label: 'EF1', variety: 'Ember Fox', crop: 'dahlia', count: 10, place: 'propagator', date: '2026-03-02' }]; // prettier-ignore
    const asked: string[] = [];
    for (const today of days('2026-03-02', '2026-06-30'))
      for (const due of seen(ledgerOf(...told), today).filter(({ asks, from }) => asks && from <= today)) {
        asked.push(due.kind);
        const said = answer(due, told, today, today < '2026-03-14' ? 0 : 0.8);
        if (said) told = [...told, said];
      }
    expect(asked).toEqual(['check', 'check', 'potOn', 'pinch', 'hardenOff', 'plantOut']);
  });
});
