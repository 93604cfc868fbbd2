/** Plans, frost and comparisons in words. */
import { describe, expect, it } from 'vitest';
import { asDay } from '../../src/calendar/day.js';
import { plansOf } from '../../src/outlook/plan.js';
import { siteOf } from '../../src/outlook/site.js';
import { whichBetter } from '../../src/outlook/which-better.js';
import { frostUnknown, frostWords } from '../../src/words/frost-words.js';
import { planWords } from '../../src/words/plan-words.js';
import { rateWords } from '../../src/words/question-answers.js';
import type { Speech } from '../../src/words/speech.js';
import { keeper, ledgerOf, northern, type Told } from '../outlook/scene.js';

const speech: Speech = { wording: 'GB', units: 'metric', today: asDay('2026-03-16') };

describe('the plan in words', () => {
  const target = {
    kind: 'target',
    variety: 'Ember Fox',
    crop: 'dahlia',
    count: 12,
    date: '2026-05-21',
  } as const;
  const strike = (count: number): Told => ({
    kind: 'strike', label: 'EF1', variety: 'Ember Fox', crop: 'dahlia', count, place: 'propagator', date: '2026-03-01',
  }); // prettier-ignore
  const plan = (...told: readonly Told[]) =>
    planWords(plansOf({ ledger: ledgerOf(...told), today: speech.today, site: northern, keeper }), speech);

  it('gives the chance, what more to take and by when, and the pots and compost that takes', () => {
    const text = plan(target, strike(14));
    expect(text).toMatch(
      /^12 Ember Fox wanted by 21 May, rooted by 18 Apr: 14 alive, enough with a chance of \d+%\./,
    );
    expect(text).toMatch(
      /\nTake \d+ more cuttings now, \d+ (?:Mar|Apr) at the latest: nine times in ten that is enough\./,
    );
    expect(text).toMatch(
      /\nTo strike in: \d × 9 cm pots\. To pot on: 12 × 10 cm pots, some \d+ litres of compost in all\./,
    );
  });

  it('is content when enough live', () => {
    expect(plan(target, strike(40)).split('\n')).toHaveLength(1);
    expect(plan(target, strike(10))).toContain('10 alive, too few.');
  });

  it('asks for a target where there is none', () => {
    expect(plan(strike(10))).toMatch(/haven’t said what you want/);
  });
});

describe('frost in words', () => {
  it('gives both risks, the ground they rest on, and how it was read', () => {
    const text = frostWords(northern, speech);
    expect(text).toContain('Spring: frost after 5 May in one year of two, after 21 May in one of ten.');
    expect(text).toContain('taken as the middle, with 12 days of spread');
  });

  it('says what to tell where nothing is known', () => {
    expect(frostWords(siteOf({ zone: 'UTC', lastFrost: null, firstFrost: null }), speech)).toBe(frostUnknown);
  });
});

describe('which does better', () => {
  const batch = (n: number, place: string, rooted: number): Told[] => [
    { kind: 'strike', label: `B${n}`, crop: 'dahlia', count: 12, place, date: '2025-03-01' },
    { kind: 'check', batch: `B${n}`, rooted, date: '2025-03-20' },
    { kind: 'potOn', batch: `B${n}`, date: '2025-03-21' },
    { kind: 'loss', batch: `B${n}`, count: 12 - rooted, date: '2025-03-21' },
  ];
  const many = (place: string, from: number, rooted: number, count: number) =>
    Array.from({ length: count }, (_, index) => batch(from + index, place, rooted)).flat();
  const better = (...told: readonly Told[]) => whichBetter([...ledgerOf(...told).batches.values()]);

  it('is said when the records bear it', () => {
    const found = better(...many('propagator', 0, 11, 6), ...many('windowsill', 10, 4, 6));
    expect(found).toMatchObject([{ crop: 'dahlia', by: 'place', better: 'propagator', than: 'windowsill' }]);
    expect(rateWords([{ of: 'dahlia', struck: 1, rooted: 1, batches: 1 }], found, {})).toMatch(
      /Dahlia does better: propagator \(some \d+% strike\) than windowsill \(\d+%\); .*% sure\./,
    );
  });

  it('is not said of two batches, nor of a difference that chance explains', () => {
    expect(better(...many('propagator', 0, 11, 1), ...many('windowsill', 10, 4, 1))).toEqual([]);
    expect(better(...many('propagator', 0, 9, 5), ...many('windowsill', 10, 8, 5))).toEqual([]);
  });
});
