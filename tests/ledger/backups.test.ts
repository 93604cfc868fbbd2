import {
  cpSync,
  existsSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  truncateSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { addDays, asDay } from '../../src/calendar/day.js';
import {
  backUp,
  backupsIn,
  copyLedger,
  faultOf,
  keptByAge,
  lastGoodBackup,
} from '../../src/ledger/backups.js';
import { LedgerFault } from '../../src/ledger/database.js';
import { eraseGrower, eraseShared } from '../../src/ledger/erasure.js';
import { appendLine, readJournal } from '../../src/ledger/journal.js';
import { type LedgerFile, openLedgerFile } from '../../src/ledger/ledger-file.js';
import { createLedger } from '../../src/ledger/ledgers.js';
import { restoreLedger } from '../../src/ledger/restoring.js';

const today = asDay('2026-04-08');
let folder: string;
let file: LedgerFile | undefined;

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'slipnote-'));
  file = openLedgerFile(folder);
});

afterEach(() => {
  file?.close();
  rmSync(folder, { recursive: true, force: true });
});

function open(): LedgerFile {
  file ??= openLedgerFile(folder);
  return file;
}

function close(): void {
  file?.close();
  file = undefined;
}

function note(ledger: number, text: string, at = 1000): void {
  const { database } = open();
  const line = readJournal(database, ledger).length + 1;
  const what = { kind: 'remark', text, date: today } as const;
  appendLine(database, ledger, { line, at, postedAt: at, by: null, source: null, what });
}

function notes(count: number, each: (line: number) => void): void {
  open().database.transaction(() => Array.from({ length: count }, (_, line) => each(line)));
}

function messageOf(act: () => unknown): string {
  try {
    act();
  } catch (error) {
    if (error instanceof LedgerFault) return error.message;
    throw error;
  }
  return 'nothing thrown';
}

describe('a backup', () => {
  it('is whole, and made while the ledger is in use', async () => {
    const ledger = createLedger(open().database, 'own', 'bea', 0);
    notes(50, (line) => note(ledger, `leggy ${line}`));
    const path = await backUp(open().database, folder, today);
    note(ledger, 'written after');
    close();
    expect(faultOf(path)).toBeNull();
    expect(restoreLedger(path, folder, 5000, true)).toMatchObject({ lines: 50, erasedAgain: 0 });
    expect(readJournal(open().database, ledger)).toHaveLength(50);
  });

  it('replaces the same day’s, and never leaves half a file in its place', async () => {
    await backUp(open().database, folder, today);
    const [before] = backupsIn(folder);
    await expect(copyLedger(open().database, join(folder, 'no-such-folder', 'copy.sqlite'))).rejects.toThrow(
      /could not be written/,
    );
    await backUp(open().database, folder, today);
    expect(backupsIn(folder)).toEqual([before]);
  });

  it('is kept by its age: 14 days, 10 weeks, 24 months', () => {
    let kept: ReturnType<typeof keptByAge> = [];
    for (let index = 0; index < 1000; index++) {
      const day = addDays(asDay('2024-01-01'), index);
      kept = keptByAge([...kept, day], day);
    }
    const last = addDays(asDay('2024-01-01'), 999);
    const age = (day: (typeof kept)[number]) => (Date.parse(last) - Date.parse(day)) / 86_400_000;
    expect(kept.filter((day) => age(day) < 14)).toHaveLength(14);
    expect(kept.filter((day) => age(day) >= 14 && age(day) < 70).length).toBeGreaterThanOrEqual(8);
    expect(kept.filter((day) => age(day) >= 70).length).toBeGreaterThanOrEqual(20);
    expect(kept.length).toBeLessThan(60);
  });
});

describe('a damaged ledger', () => {
  async function damaged(how: (path: string) => void): Promise<string> {
    const ledger = createLedger(open().database, 'own', 'bea', 0);
    notes(400, (line) => note(ledger, `a remark of some length, number ${line}, to fill some pages`));
    const path = await backUp(open().database, folder, today);
    close();
    how(join(folder, 'ledger.sqlite'));
    expect(lastGoodBackup(folder)?.path).toBe(path);
    return path;
  }

  it.each([
    [
      'truncated',
      (path: string) => truncateSync(path, Math.floor(statSync(path).size / 2 / 4096) * 4096 + 100),
    ],
    [
      'overwritten in the middle',
      (path: string) => {
        const bytes = readFileSync(path);
        bytes.fill(0xa5, Math.floor(bytes.length / 2), Math.floor(bytes.length / 2) + 9000);
        writeFileSync(path, bytes);
      },
    ],
    ['no database at all', (path: string) => writeFileSync(path, 'took 3 cuttings, today. '.repeat(500))],
  ])('that is %s is refused in one line that names the last good backup', async (_, how) => {
    const path = await damaged(how);
    const message = messageOf(() => openLedgerFile(folder));
    expect(message).toContain(path);
    expect(message).not.toContain('\n');
    restoreLedger(path, folder, 9000, false);
    expect(readJournal(open().database, 1)).toHaveLength(400);
  });
});

describe('restoring', () => {
  it('refuses to put an older backup over later entries unless told, and then moves them aside', async () => {
    const ledger = createLedger(open().database, 'own', 'bea', 0);
    note(ledger, 'early', 1000);
    const path = await backUp(open().database, folder, today);
    note(ledger, 'late', 2000);
    close();
    expect(messageOf(() => restoreLedger(path, folder, 3000, false))).toContain('--over-newer');
    const { movedTo } = restoreLedger(path, folder, 3000, true);
    expect(movedTo && existsSync(movedTo)).toBe(true);
    expect(readJournal(open().database, ledger)).toHaveLength(1);
  });

  it('refuses while the ledger is being written', async () => {
    const path = await backUp(open().database, folder, today);
    expect(messageOf(() => restoreLedger(path, folder, 3000, true))).toContain('being written');
  });

  it('refuses a file that is no ledger and changes nothing', () => {
    close();
    writeFileSync(join(folder, 'notes.txt'), 'took 3');
    const before = readFileSync(join(folder, 'ledger.sqlite'));
    expect(messageOf(() => restoreLedger(join(folder, 'notes.txt'), folder, 3000, true))).toContain(
      "can't be used",
    );
    expect(readFileSync(join(folder, 'ledger.sqlite'))).toEqual(before);
  });
});

describe('erasing a grower', () => {
  const secret = 'Wilhelmina’s allotment';

  function bytesHold(text: string): string[] {
    const wanted = Buffer.from(text);
    return readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((name) => {
      const path = join(folder, name);
      return statSync(path).isFile() && readFileSync(path).includes(wanted);
    });
  }

  async function filled(): Promise<{ mine: number; theirs: number; backup: string }> {
    const mine = createLedger(open().database, 'own', 'bea', 0);
    const theirs = createLedger(open().database, 'own', 'tom', 0);
    notes(200, (line) => note(mine, `${secret} ${line}`));
    note(theirs, 'tom keeps this');
    const backup = await backUp(open().database, folder, today);
    expect(bytesHold(secret)).not.toEqual([]);
    return { mine, theirs, backup };
  }

  it('leaves no byte of the entries in the ledger, its log or its backups, and others’ entries alone', async () => {
    const { mine, theirs } = await filled();
    expect(eraseGrower(open().database, folder, 'bea', 5000)).toEqual({
      ledgers: 1,
      lines: 200,
      copiesRewritten: 1,
      copiesDropped: 0,
    });
    expect(readJournal(open().database, mine)).toEqual([]);
    expect(readJournal(open().database, theirs)).toHaveLength(1);
    close();
    expect(bytesHold(secret)).toEqual([]);
    expect(lastGoodBackup(folder)).not.toBeNull();
  });

  it('is done again when an older copy is restored', async () => {
    const { mine, backup } = await filled();
    const elsewhere = join(folder, '..', `copy-${process.pid}.sqlite`);
    cpSync(backup, elsewhere);
    eraseGrower(open().database, folder, 'bea', 5000);
    close();
    expect(restoreLedger(elsewhere, folder, 6000, true).erasedAgain).toBe(1);
    expect(readJournal(open().database, mine)).toEqual([]);
    close();
    rmSync(elsewhere);
    expect(bytesHold(secret)).toEqual([]);
  });

  it('leaves a group’s ledger, which is erased by itself, and again when an older copy is restored', async () => {
    const { database } = open();
    const group = createLedger(database, 'Bench', null, 40);
    const mine = createLedger(database, 'own', 'bea', 41);
    notes(20, (line) => note(group, `${secret} ${line}`));
    note(mine, 'bea keeps this');
    const backup = await backUp(database, folder, today);
    const elsewhere = join(folder, '..', `copy-${process.pid}.sqlite`);
    cpSync(backup, elsewhere);
    expect(eraseShared(database, folder, mine, 5000).ledgers).toBe(0);
    expect(eraseShared(database, folder, group, 5000)).toEqual({
      ledgers: 1,
      lines: 20,
      copiesRewritten: 1,
      copiesDropped: 0,
    });
    expect(readJournal(database, mine)).toHaveLength(1);
    close();
    expect(bytesHold(secret)).toEqual([]);
    expect(restoreLedger(elsewhere, folder, 6000, true).erasedAgain).toBe(1);
    rmSync(elsewhere);
    expect(readJournal(open().database, mine)).toHaveLength(1);
    close();
    expect(bytesHold(secret)).toEqual([]);
  });
});
