/** Weather stations' files, in the shapes in which growers get them. */
import { readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import lastFrosts from '../../fixtures/weather/last-frosts.json' with { type: 'json' };
import { type MinimaHints, stationMinima, type StationMinima } from '../../src/exchange/station-minima.js';
import { frostRecord } from '../../src/horticulture/frost-record.js';

function read(text: string, hints?: MinimaHints) {
  return stationMinima(new TextEncoder().encode(text), hints);
}

function minimaOf(text: string, hints?: MinimaHints): readonly (readonly [string, number])[] {
  const got = read(text, hints);
  if ('refused' in got) throw new Error(`refused: ${JSON.stringify(got)}`);
  return got.minima.map(({ date, celsius }) => [date, celsius] as const);
}

const byStation = [
  '"STATION","DATE","LATITUDE","NAME","PRCP","PRCP_ATTRIBUTES","TMAX","TMAX_ATTRIBUTES","TMIN","TMIN_ATTRIBUTES"',
  '"XX000000001","2020-01-01","54.1","FERN HILL","    5",",,W","   56",",,W","  -22",",,W"',
  '"XX000000001","2020-01-02","54.1","FERN HILL","    0",",,W","   40",",,W","   11",",X,W"',
  '"XX000000001","2020-01-03","54.1","FERN HILL","    0",",,W","   61",",,W","",""',
  '"XX000000001","2020-01-04","54.1","FERN HILL","    0",",,W","   61",",,W","    0",",,W"',
].join('\n');

const longForm = [
  'XX000000001,20200101,TMAX,56,,,W,0700',
  'XX000000001,20200101,TMIN,-22,,,W,0700',
  'XX000000001,20200102,TMIN,11,,X,W,0700',
  'XX000000001,20200104,TMIN,0,,,W,',
].join('\n');

describe('GHCN-Daily', () => {
  it('is read from a station’s own file, in tenths of a degree, without what failed a quality check', () => {
    expect(read(byStation)).toEqual({
      unit: 'tenthsCelsius',
      minima: [
        { date: '2020-01-01', celsius: -2.2 },
        { date: '2020-01-04', celsius: 0 },
      ],
      skipped: { empty: 1, flagged: 1, impossible: 0 },
    });
  });

  it('is read from the long form, one element a row', () => {
    expect(minimaOf(longForm)).toEqual([
      ['2020-01-01', -2.2],
      ['2020-01-04', 0],
    ]);
  });

  it('is read packed with gzip', () => {
    expect(stationMinima(gzipSync(longForm))).toMatchObject({ minima: [{ celsius: -2.2 }, { celsius: 0 }] });
  });

  it('of several stations asks which', () => {
    const two = `${longForm}\nYY000000002,20200104,TMIN,30,,,W,`;
    expect(read(two)).toEqual({ refused: 'severalStations', stations: ['XX000000001', 'YY000000002'] });
    expect(minimaOf(two, { station: 'yy000000002' })).toEqual([['2020-01-04', 3]]);
    expect(read(two, { station: 'ZZ' })).toMatchObject({ refused: 'noSuchStation' });
  });
});

describe('two columns', () => {
  it.each([
    ['without a header', '2020-01-01,-2.5\n2020-01-02,3'],
    ['with one', 'date,minimum\n2020-01-01,-2.5\n2020-01-02,3'],
    ['with semicolons and decimal commas', 'Date;Min\n01.01.2020;-2,5\n02.01.2020;3,0'],
    ['with quoted decimal commas', 'date,min\n2020-01-01,"-2,5"\n2020-01-02,"3"'],
    ['with tabs and a byte order mark', '\uFEFFdate\ttmin\n20200101\t-2.5\n20200102\t3'],
    ['with a true minus', 'date,min\n2020-01-01,−2.5\n2020-01-02,3'],
    ['out of order, a day twice', '2020-01-02,3\n2020-01-01,0\n2020-01-01,-2.5'],
    ['with gaps', '2019-12-31,NA\n2020-01-01,-2.5\n2020-01-02,3\n2020-01-03,-9999'],
  ])('are read %s', (_, text) => {
    expect(minimaOf(text)).toEqual([
      ['2020-01-01', -2.5],
      ['2020-01-02', 3],
    ]);
  });

  it('read 3/4 day first, month first where told or where the file gives it away', () => {
    expect(minimaOf('3/4/2020,1')[0]?.[0]).toBe('2020-04-03');
    expect(minimaOf('3/4/2020,1', { dateOrder: 'MDY' })[0]?.[0]).toBe('2020-03-04');
    expect(minimaOf('3/4/2020,1\n3/14/2020,2')[0]?.[0]).toBe('2020-03-04');
  });

  it('are taken for °F where no night could be so warm in °C, or where the heading or the grower says so', () => {
    expect(minimaOf('date,min\n2020-01-01,32\n2020-07-01,68')).toEqual([
      ['2020-01-01', 0],
      ['2020-07-01', 20],
    ]);
    expect(minimaOf('date,min (°F)\n2020-01-01,14')).toEqual([['2020-01-01', -10]]);
    expect(minimaOf('2020-01-01,14', { unit: 'fahrenheit' })).toEqual([['2020-01-01', -10]]);
    expect(minimaOf('2020-01-01,14')).toEqual([['2020-01-01', 14]]);
  });
});

describe('a file that cannot be read', () => {
  it.each([
    ['a picture', new Uint8Array([0x89, 0x50, 0xff, 0xfe, 0x00]), 'notText'],
    ['broken gzip', new Uint8Array([0x1f, 0x8b, 1, 2, 3]), 'notText'],
    ['nothing', new Uint8Array(), 'noRows'],
    [
      'three columns without headings',
      new TextEncoder().encode('2020-01-01,3,4\n2020-01-02,3,4'),
      'whichColumns',
    ],
    ['a day that does not exist', new TextEncoder().encode('2020-02-30,3'), 'badDate'],
    ['a word for a number', new TextEncoder().encode('2020-02-03,3\n2020-02-04,cold9'), 'badNumber'],
    ['headings alone', new TextEncoder().encode('date,min'), 'noRows'],
  ])('says what is wrong with %s', (_, bytes, refused) => {
    expect(stationMinima(bytes)).toMatchObject({ refused });
  });

  it('names the row that is wrong', () => {
    expect(read('date,min\n2020-02-03,3\n2020-02-31,4')).toEqual({
      refused: 'badDate',
      row: 3,
      text: '2020-02-31',
    });
  });
});

// modeldata's Chicago (MIT) and vega-datasets' weather (BSD-3; US Government data), last frosts worked out in Python and R.
describe('open daily series, as files', () => {
  const spring = { half: 'spring', hemisphere: 'north' } as const;
  const frosts = (got: ReturnType<typeof stationMinima>) =>
    frostRecord((got as StationMinima).minima, spring, { thresholdCelsius: 0, orBelow: true }).years.map(
      ({ date }) => date,
    );

  it('Chicago in °F gives its last frosts to the day', () => {
    const got = stationMinima(
      readFileSync(new URL('../../fixtures/weather/chicago-daily.csv', import.meta.url)),
    );
    expect(got).toMatchObject({ unit: 'fahrenheit' });
    expect(frosts(got)).toEqual(lastFrosts['chicago-modeldata(F) <='].dates);
  });

  it.each(['Seattle', 'New York'] as const)(
    '%s out of two towns gives its last frosts to the day',
    (station) => {
      const path = new URL('../../node_modules/vega-datasets/data/weather.csv', import.meta.url);
      expect(stationMinima(readFileSync(path))).toMatchObject({ refused: 'severalStations' });
      expect(frosts(stationMinima(readFileSync(path), { station }))).toEqual(
        lastFrosts[`vega-${station} <=`].dates,
      );
    },
  );
});

describe('a table whose quote is never closed', () => {
  it('is read with its quotes as characters, or refused in words, and never thrown at whoever sent it', () => {
    const read = stationMinima(Buffer.from('date,minimum\n2026-01-01,-2\n"unclosed\n2026-01-02,-3'));
    expect('refused' in read ? read.refused : read.minima.length).toBe(2);
  });
});
