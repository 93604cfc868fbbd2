import { readFileSync } from 'node:fs';
import { Ajv } from 'ajv';
import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { asDay } from '../../src/calendar/day.js';
import { planRows, planWhole } from '../../src/exchange/import-plan.js';
import { ledgerCsv, readLedgerCsv } from '../../src/exchange/ledger-csv.js';
import { ledgerJson, readLedgerJson } from '../../src/exchange/ledger-json.js';
import { fold } from '../../src/ledger/fold.js';
import { emptyLedger } from '../../src/ledger/ledger.js';
import type { Amendment, JournalLine, Posting } from '../../src/ledger/posting.js';

const now = Date.UTC(2026, 3, 8, 9, 0, 0, 123);
const date = asDay('2026-03-20');
const struck = { kind: 'strike', label: 'EF1', variety: 'Ember Fox', crop: 'dahlia', count: 12, pots: 2, hormone: false, place: 'propagator', date: asDay('2026-03-02') } as const; // prettier-ignore

function journalOf(...whats: (Posting | Amendment)[]): JournalLine[] {
  return whats.map((what, index) => ({
    line: index + 1,
    at: now + index,
    postedAt: now + index + 5,
    by: index % 2 === 0 ? null : 'Bea',
    source: index % 2 === 0 ? { chat: 'terminal', message: String(index) } : null,
    what,
  }));
}

const season = journalOf(
  struck,
  { kind: 'check', batch: 'EF1', rooted: 5, date },
  { kind: 'loss', batch: 'EF1', count: 2, cause: 'rot', date },
  { kind: 'reading', celsius: -2, date },
  {
    kind: 'remark',
    text: '=HYPERLINK("http://example.org","a, ""b""")\nleggy',
    date: { from: date, to: asDay('2026-03-22') },
  },
  { kind: 'split', batch: 'EF1', parts: [{ label: 'EF2', count: 3 }], date },
  { amends: 3, entries: [{ kind: 'loss', batch: 'EF1', count: 1, cause: 'rot', date }] },
);

describe('a ledger as JSON', () => {
  const validate = new Ajv().compile(
    JSON.parse(readFileSync(new URL('../../shared/ledger.schema.json', import.meta.url), 'utf8')) as object,
  );

  it('obeys its schema (ajv)', () => {
    const document: unknown = JSON.parse(
      ledgerJson({ name: 'own', settings: { zone: 'Europe/London' }, journal: season }, now),
    );
    expect(validate(document), JSON.stringify(validate.errors)).toBe(true);
  });

  it('comes back to the letter', () => {
    const whole = { name: 'own', settings: { zone: 'Europe/London' }, journal: season };
    expect(readLedgerJson(ledgerJson(whole, now))).toEqual(whole);
  });

  it.each([
    ['no JSON', 'hello', { fault: 'notJson' }],
    ['other JSON', '[1]', { fault: 'notALedger' }],
    [
      'a newer version',
      '{"format":"slipnote-ledger","version":2,"journal":[]}',
      { fault: 'newerVersion', version: 2 },
    ],
    [
      'a broken line',
      '{"format":"slipnote-ledger","version":1,"journal":[{"line":1}]}',
      { fault: 'line', line: 1 },
    ],
  ])('says what is wrong with %s', (_, text, fault) => {
    expect(readLedgerJson(text)).toEqual(fault);
  });

  it('never throws, whatever it is given', () => {
    fc.assert(fc.property(fc.oneof(fc.string(), fc.json()), (text) => void readLedgerJson(text)));
  });
});

describe('bringing a whole ledger in', () => {
  it('appends what is new and knows what is there', () => {
    expect(planWhole(season.slice(0, 2), season)).toMatchObject({ known: 2, append: season.slice(2) });
    expect(planWhole(season, season.slice(0, 3))).toMatchObject({ known: 3, append: [] });
  });

  it('never mixes two different stories', () => {
    const other = journalOf({ ...struck, count: 11 });
    expect(planWhole(other, season)).toEqual({ diverged: { line: 1 } });
  });
});

describe('a ledger as CSV', () => {
  const { ledger } = fold(season);
  const csv = ledgerCsv(ledger);

  it('is read by a strict parser, every row as long as its header (csv-parse; RFC 4180)', () => {
    const rows: string[][] = parse(csv, {
      relax_column_count: false,
      relax_quotes: false,
      record_delimiter: '\r\n',
    });
    expect(rows).toHaveLength(ledger.standing.length + 1);
    expect(csv.endsWith('\r\n')).toBe(true);
  });

  it('disarms cells that a spreadsheet would run, and leaves numbers alone', () => {
    const rows: Record<string, string>[] = parse(csv, { columns: true });
    expect(rows.map(({ text }) => text).find((text) => text?.includes('HYPERLINK'))).toMatch(/^'=/);
    expect(rows.map(({ celsius }) => celsius)).toContain('-2');
  });

  it('comes back as the entries that it carries whole', () => {
    const read = readLedgerCsv(csv);
    const carried = ledger.standing.map(({ entry }) => entry).filter(({ kind }) => kind !== 'split');
    expect(read?.entries.map(({ entry }) => entry)).toEqual(carried);
    expect(read?.faults).toEqual([{ row: 7, fault: 'kind', value: 'split' }]);
  });

  it('says which rows cannot follow, and gives new labels where the old are taken', () => {
    const text =
      'date,kind,batch,variety,count\n2026-03-02,strike,EF1,Ember Fox,5\n2026-03-20,loss,EF1,,9\n2026-03-20,loss,EF1,,2\n';
    const read = readLedgerCsv(text);
    if (read === null) throw new Error('no header');
    const plan = planRows(ledger, read, now);
    expect(plan.relabelled).toEqual([['EF1', 'EF3']]);
    expect(plan.append.map(({ what }) => what)).toMatchObject([{ label: 'EF3' }, { batch: 'EF3', count: 2 }]);
    expect(plan.refused).toMatchObject([{ row: 3, refusal: { refused: 'tooMany', there: 5, wanted: 9 } }]);
    expect(planRows(emptyLedger, read, now).relabelled).toEqual([]);
  });

  it('is refused without a header', () => {
    expect(readLedgerCsv('took 3 cuttings, today')).toBeNull();
  });
});
