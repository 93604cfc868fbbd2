/** What is due, from what was told. */
import { describe, expect, it } from 'vitest';
import { asDay } from '../../src/calendar/day.js';
import { days, kindsDue, ledgerOf, northern, seen, southern, the } from './scene.js';

const struck = { kind: 'strike', label: 'EF1', variety: 'Ember Fox', crop: 'dahlia', count: 10, place: 'propagator', date: '2026-03-02' } as const; // prettier-ignore
const check = (rooted: number | string, date: string) =>
  ({ kind: 'check', batch: 'EF1', rooted, date }) as const;
const potOn = (date: string) => ({ kind: 'potOn', batch: 'EF1', date, potSize: '10cm' }) as const;

describe('a look for roots', () => {
  it('is asked for once there is something to see, and not before', () => {
    const ledger = ledgerOf(struck);
    const look = the('check', seen(ledger, '2026-03-03'));
    expect(look.from >= '2026-03-11' && look.from <= '2026-03-16').toBe(true);
    expect(look).toMatchObject({
      key: 'check:EF1:0',
      labels: ['EF1'],
      place: 'propagator',
      count: 10,
      asks: true,
    });
    expect(kindsDue(ledger, '2026-03-08')).toEqual([]);
    expect(kindsDue(ledger, look.from)).toEqual(['check']);
  });

  it('is asked for anew after one that found nothing, two days later at the earliest', () => {
    const again = the('check', seen(ledgerOf(struck, check('none', '2026-03-13')), '2026-03-13'));
    expect(again.key).toBe('check:EF1:1');
    expect(again.from >= '2026-03-15').toBe(true);
  });

  it('is not asked of a batch that was lost, potted on, hardened or given away', () => {
    const all = [
      { kind: 'loss', batch: 'EF1', count: 10, date: '2026-03-09' },
      { kind: 'potOn', batch: 'EF1', count: 10, date: '2026-03-09' },
      { kind: 'hardenOff', batch: 'EF1', date: '2026-03-09' },
      { kind: 'dispatch', batch: 'EF1', count: 10, date: '2026-03-09' },
    ] as const;
    for (const done of all) {
      const kinds = days('2026-03-10', '2026-06-30').flatMap((day) => kindsDue(ledgerOf(struck, done), day));
      expect(kinds, done.kind).not.toContain('check');
    }
  });

  it('learns from earlier batches that were slow here', () => {
    const earlier = [1, 2, 3, 4, 5, 6].flatMap((n) => [
      { ...struck, label: `OLD${n}`, date: `2025-0${Math.min(n, 5)}-02` },
      { kind: 'check', batch: `OLD${n}`, rooted: 0, date: `2025-0${Math.min(n, 5)}-20` },
      { kind: 'check', batch: `OLD${n}`, rooted: 8, date: `2025-0${Math.min(n, 5)}-25` },
      { kind: 'potOn', batch: `OLD${n}`, date: `2025-0${Math.min(n, 5)}-26` },
      { kind: 'loss', batch: `OLD${n}`, count: 2, date: `2025-0${Math.min(n, 5)}-26` },
    ]) as never[];
    const fresh = the('check', seen(ledgerOf(struck), '2026-03-03'));
    const slow = the('check', seen(ledgerOf(...earlier, struck), '2026-03-03').filter(({ labels }) => labels[0] === 'EF1')); // prettier-ignore
    expect(slow.from > fresh.from).toBe(true);
    expect(slow.why).toMatchObject({ rooting: { grounds: { batches: 6, here: true, usualFrom: 'table' } } });
  });

  it('keeps to a range that the grower taught', () => {
    const taught = ledgerOf(
      { kind: 'teach', crop: 'starbush', daysToRoot: [40, 50], date: '2026-03-01' },
      { ...struck, crop: 'starbush' },
    );
    const look = the('check', seen(taught, '2026-03-03'));
    expect(look.from >= '2026-04-06' && look.from <= '2026-04-25').toBe(true);
  });

  it('waits for months where hardwood does', () => {
    const rose = ledgerOf({
      ...struck,
      crop: 'rose',
      cutting: 'hardwood',
      place: 'cold frame',
      date: '2025-11-20',
    });
    expect(the('check', seen(rose, '2025-11-21')).from > '2026-04-01').toBe(true);
  });
});

describe('one walk to the bench', () => {
  it('serves batches at one place whose looks lie close together', () => {
    const ledger = ledgerOf(struck, {
      ...struck,
      label: 'EF2',
      variety: 'Copper Lantern',
      date: '2026-03-03',
    });
    const looks = seen(ledger, '2026-03-05').filter(({ kind }) => kind === 'check');
    expect(new Set(looks.map(({ from }) => from)).size).toBe(1);
  });

  it('does not hurry one that stands elsewhere', () => {
    const ledger = ledgerOf(struck, { ...struck, label: 'EF2', place: 'greenhouse', date: '2026-03-03' });
    const looks = seen(ledger, '2026-03-05').filter(({ kind }) => kind === 'check');
    expect(new Set(looks.map(({ from }) => from)).size).toBe(2);
  });
});

describe('potting on', () => {
  it('is asked for from the day after half of those expected were seen rooted', () => {
    const ledger = ledgerOf(struck, check(5, '2026-03-14'));
    expect(kindsDue(ledger, '2026-03-14')).toEqual([]);
    expect(kindsDue(ledger, '2026-03-15')).toEqual(['potOn']);
    expect(the('potOn', seen(ledger, '2026-03-15'))).toMatchObject({ key: 'potOn:EF1:0', count: 5 });
  });

  it('waits while only the first have rooted and more are expected', () => {
    expect(kindsDue(ledgerOf(struck, check(1, '2026-03-14')), '2026-03-15')).toEqual([]);
  });

  it('is advised for a few good ones where no more are to be hoped for', () => {
    const ledger = ledgerOf(struck, check(2, '2026-03-14'), check(2, '2026-04-20'), check(2, '2026-05-20'));
    expect(kindsDue(ledger, '2026-05-22')).toEqual(['potOn']);
  });

  it('gives way to clearing out where nothing rooted and nothing will, and says so once', () => {
    const ledger = ledgerOf(struck, check('none', '2026-04-20'), check('none', '2026-06-01'));
    expect(kindsDue(ledger, '2026-06-03')).toEqual(['clearOut']);
    expect(kindsDue(ledger, '2026-07-01')).toEqual([]);
  });
});

describe('growing on', () => {
  const potted = [struck, check(9, '2026-03-14'), potOn('2026-03-16'), { kind: 'loss', batch: 'EF1', count: 1, date: '2026-03-16' }] as const; // prettier-ignore

  it('asks for pinching two weeks after potting on, and no more once it is too late', () => {
    const ledger = ledgerOf(...potted);
    expect(kindsDue(ledger, '2026-03-29')).toEqual([]);
    expect(kindsDue(ledger, '2026-03-30')).toEqual(['pinch']);
    expect(kindsDue(ledger, '2026-04-22')).toEqual([]);
    expect(
      kindsDue(ledgerOf(...potted, { kind: 'pinch', batch: 'EF1', date: '2026-03-30' }), '2026-03-31'),
    ).toEqual([]);
  });

  it('does not ask for pinching what is not pinched at all', () => {
    const lupin = ledgerOf({ ...struck, crop: 'lupin' }, potOn('2026-04-05'));
    expect(days('2026-04-06', '2026-07-30').flatMap((day) => kindsDue(lupin, day))).not.toContain('pinch');
  });

  it('asks to harden off so that it ends when frost is rare, and to plant out then', () => {
    const harden = the('hardenOff', seen(ledgerOf(...potted), '2026-05-01'));
    expect(harden).toMatchObject({ from: '2026-05-11', count: 9, why: { plantOutOn: '2026-05-21' } });
    const hardening = ledgerOf(...potted, { kind: 'hardenOff', batch: 'EF1', date: '2026-05-12' });
    expect(days('2026-05-12', '2026-05-21').flatMap((day) => kindsDue(hardening, day))).toEqual([]);
    expect(the('plantOut', seen(hardening, '2026-05-22'))).toMatchObject({
      from: '2026-05-22',
      count: 9,
      asks: true,
    });
    const out = ledgerOf(
      ...potted,
      { kind: 'hardenOff', batch: 'EF1', date: '2026-05-12' },
      { kind: 'plantOut', batch: 'EF1', place: 'long border', date: '2026-05-23' },
    );
    expect(days('2026-05-23', '2026-08-30').flatMap((day) => kindsDue(out, day))).toEqual([]);
  });

  it('stops asking when planting out would be too late, and asks again in the next spring', () => {
    const hardening = ledgerOf(...potted, { kind: 'hardenOff', batch: 'EF1', date: '2026-05-12' });
    expect(kindsDue(hardening, '2026-09-05')).toEqual(['plantOut']);
    expect(days('2026-09-15', '2027-05-20').flatMap((day) => kindsDue(hardening, day))).toEqual([]);
    const again = the('plantOut', seen(hardening, '2027-05-21'));
    expect(again.from).toBe('2027-05-21');
    expect(again.key).not.toBe(the('plantOut', seen(hardening, '2026-06-01')).key);
  });

  it('lets hardy plants out without waiting for the frost to end', () => {
    const pinks = ledgerOf({ ...struck, crop: 'nepeta', date: '2026-03-02' }, potOn('2026-03-25'));
    expect(the('hardenOff', seen(pinks, '2026-04-01')).from < '2026-05-01').toBe(true);
  });

  it('never hardens house plants', () => {
    const violets = ledgerOf({ ...struck, crop: 'african violet', cutting: 'leaf' }, potOn('2026-05-01'));
    const kinds = days('2026-05-02', '2027-05-01').flatMap((day) => kindsDue(violets, day));
    expect(kinds).not.toContain('hardenOff');
    expect(kinds).not.toContain('plantOut');
  });

  it('takes plants that came in for what they are', () => {
    const plugs = ledgerOf({ kind: 'receive', label: 'CL1', variety: 'Copper Lantern', crop: 'dahlia', count: 6, potSize: '9cm', date: '2026-04-10' }); // prettier-ignore
    const kinds = new Set(days('2026-04-10', '2026-05-20').flatMap((day) => kindsDue(plugs, day)));
    expect([...kinds].sort()).toEqual(['hardenOff', 'pinch']);
  });
});

describe('cuttings that stand over winter', () => {
  const late = { ...struck, crop: 'pelargonium', cutting: 'tip', place: 'windowsill' } as const;

  it('are let alone from November to February, and go out in the next calendar year', () => {
    const ledger = ledgerOf({ ...late, date: '2026-08-25' }, check(8, '2026-10-01'), potOn('2026-10-05'));
    expect(days('2026-11-01', '2027-02-28').flatMap((day) => kindsDue(ledger, day))).toEqual([]);
    expect(the('hardenOff', seen(ledger, '2027-03-01'))).toMatchObject({ from: '2027-05-11' });
  });

  it('are potted on after the winter where they were seen rooted in it', () => {
    const ledger = ledgerOf({ ...late, date: '2026-09-25' }, check(8, '2026-11-20'));
    expect(days('2026-11-21', '2027-02-28').flatMap((day) => kindsDue(ledger, day))).toEqual([]);
    expect(the('potOn', seen(ledger, '2027-03-01')).from).toBe('2027-03-01');
  });

  it('keep the southern winter in the south', () => {
    const ledger = ledgerOf({ ...late, date: '2026-02-25' }, check(8, '2026-04-01'), potOn('2026-04-05'));
    const site = { site: southern };
    expect(days('2026-05-01', '2026-08-31').flatMap((day) => kindsDue(ledger, day, site))).toEqual([]);
    expect(the('hardenOff', seen(ledger, '2026-09-05', site)).from >= '2026-10-20').toBe(true);
  });
});

describe('frost', () => {
  const outside = [
    struck,
    check(9, '2026-03-14'),
    potOn('2026-03-16'),
    { kind: 'hardenOff', batch: 'EF1', place: 'patio', date: '2026-05-10' },
  ] as const;
  const reading = (celsius: number, date: string, place?: string) =>
    ({ kind: 'reading', celsius, date, ...(place ? { place } : {}) }) as const;

  it('warns when a low minimum is reported while tender plants stand outside, and not the day after next', () => {
    const ledger = ledgerOf(...outside, reading(1, '2026-05-12'));
    expect(kindsDue(ledger, '2026-05-12')).toContain('frostWarning');
    expect(the('frostWarning', seen(ledger, '2026-05-12'))).toMatchObject({ labels: ['EF1'], place: 'patio', asks: false }); // prettier-ignore
    expect(kindsDue(ledger, '2026-05-14')).not.toContain('frostWarning');
  });

  it('does not warn of a mild night, of a heated place, or where nothing stands outside', () => {
    expect(kindsDue(ledgerOf(...outside, reading(5, '2026-05-12')), '2026-05-12')).not.toContain(
      'frostWarning',
    );
    expect(kindsDue(ledgerOf(...outside, reading(1, '2026-05-12', 'propagator')), '2026-05-12')).not.toContain('frostWarning'); // prettier-ignore
    expect(kindsDue(ledgerOf(struck, reading(-3, '2026-03-04')), '2026-03-04')).not.toContain('frostWarning');
  });

  it('is not put off by a snooze', () => {
    const ledger = ledgerOf(...outside, reading(1, '2026-05-12'));
    const snoozes = [{ until: asDay('2026-05-16') }];
    expect(kindsDue(ledger, '2026-05-12', { snoozes })).toContain('frostWarning');
  });

  it('calls tender plants in before the first of autumn', () => {
    const ledger = ledgerOf({ ...struck, place: 'patio', date: '2026-07-02' }, potOn('2026-08-01'));
    expect(kindsDue(ledger, '2026-09-20')).not.toContain('bringIn');
    // 25 October is the even chance; one year in ten it comes before 9 October.
    expect(the('bringIn', seen(ledger, '2026-10-01'))).toMatchObject({
      from: '2026-09-29',
      bestBy: '2026-10-09',
    });
  });
});

describe('reminders', () => {
  const remind = { kind: 'remind', text: 'order compost', date: '2026-04-10', time: '18:00' } as const;

  it('come on the day asked for, in the words given, and grow old', () => {
    const ledger = ledgerOf(remind);
    expect(kindsDue(ledger, '2026-04-09')).toEqual([]);
    expect(the('reminder', seen(ledger, '2026-04-10'))).toMatchObject({
      at: '18:00',
      why: { text: 'order compost' },
    });
    expect(kindsDue(ledger, '2026-04-20')).toEqual([]);
  });

  it('are moot once their plant is gone or they were settled', () => {
    const gone = ledgerOf(struck, { ...remind, batch: 'EF1' }, { kind: 'loss', batch: 'EF1', count: 10, date: '2026-04-01' }); // prettier-ignore
    expect(kindsDue(gone, '2026-04-10')).toEqual([]);
    expect(kindsDue(ledgerOf(remind), '2026-04-10', { settled: new Set(['reminder:1']) })).toEqual([]);
  });
});

describe('tending', () => {
  it('is one line a place while cuttings root there, and silent for a while after it was told', () => {
    const two = [struck, { ...struck, label: 'EF2', variety: 'Marble Wren' }] as const;
    const tending = (today: string, ...more: never[]) =>
      seen(ledgerOf(...two, ...more), today).filter(({ kind }) => kind === 'tend');
    expect(tending('2026-03-06')).toHaveLength(1);
    expect(tending('2026-03-06')[0]).toMatchObject({
      place: 'propagator',
      asks: false,
      labels: ['EF1', 'EF2'],
    });
    const misted = { kind: 'tend', care: 'mist', place: 'propagator', date: '2026-03-05' } as never;
    expect(tending('2026-03-06', misted)).toEqual([]);
    expect(tending('2026-03-08', misted)).toHaveLength(1);
  });
});

describe('what a grower put off', () => {
  const ledger = ledgerOf(struck, { ...struck, label: 'MW1', variety: 'Marble Wren', place: 'mist bench' });

  it('waits until the day named, for one plant or for all', () => {
    expect(kindsDue(ledger, '2026-03-16')).toEqual(['check', 'check']);
    const snooze = { until: asDay('2026-03-21') };
    expect(kindsDue(ledger, '2026-03-16', { snoozes: [snooze] })).toEqual([]);
    expect(kindsDue(ledger, '2026-03-21', { snoozes: [snooze] })).toEqual(['check', 'check']);
    const one = { ...snooze, plant: { variety: 'Marble Wren' } };
    expect(
      seen(ledger, '2026-03-16', { snoozes: [one] }).filter(
        ({ kind, from }) => kind === 'check' && from > '2026-03-16',
      ),
    ).toHaveLength(1);
  });
});

describe('where nobody named a last frost', () => {
  it('tender plants are still kept in until late spring', () => {
    const ledger = ledgerOf(struck, check(9, '2026-03-14'), potOn('2026-03-16'));
    const site = { ...northern, spring: null, autumn: null };
    expect(the('hardenOff', seen(ledger, '2026-04-01', { site })).from >= '2026-05-01').toBe(true);
  });
});
