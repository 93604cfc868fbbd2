/** The ledger that the settings name, opened for a command: beside a running bot, or alone to write it. */
import { existsSync } from 'node:fs';
import { machineClock } from '../calendar/clock.js';
import { type Database, LedgerFault, openDatabase } from '../ledger/database.js';
import { ledgerPathIn, openLedgerFile } from '../ledger/ledger-file.js';
import { allLedgers, firstLedger, ledgerNamed, type LedgerRecord } from '../ledger/ledgers.js';
import { requireCurrent } from '../ledger/migrations.js';
import { type Settings, settingsHere } from '../settings.js';

export interface LedgerAtHand {
  readonly settings: Settings;
  readonly database: Database;
  readonly record: LedgerRecord;
}

/** Reads beside whoever writes. Throws `LedgerFault` where there is no ledger yet or it can't be read. */
export async function readingLedger<T>(work: (at: LedgerAtHand) => T | Promise<T>): Promise<T> {
  const settings = settingsHere();
  const path = ledgerPathIn(settings.dataFolder);
  if (!existsSync(path)) {
    throw new LedgerFault(
      'noFile',
      `There is no ledger at ${path} yet: npm start makes one, or set SLIPNOTE_DATA to its folder.`,
    );
  }
  const database = openDatabase(path, { mode: 'read' });
  try {
    requireCurrent(database, path);
    return await work({ settings, database, record: named(database, settings) });
  } finally {
    database.close();
  }
}

/** Takes the write lock; refuses while the bot or the terminal runs. Throws `LedgerFault`. */
export async function writingLedger<T>(work: (at: LedgerAtHand) => T | Promise<T>): Promise<T> {
  const settings = settingsHere();
  const { database, close } = openLedgerFile(settings.dataFolder);
  try {
    firstLedger(database, machineClock.now());
    return await work({ settings, database, record: named(database, settings) });
  } finally {
    close();
  }
}

/** Without making a first ledger, which only a writer may. */
function named(database: Database, settings: Settings): LedgerRecord {
  if (settings.ledger === undefined) {
    const [first] = allLedgers(database);
    if (!first)
      throw new LedgerFault('noFile', 'The ledger holds nothing yet: npm start takes the first note.');
    return first;
  }
  const record = ledgerNamed(database, settings.ledger);
  if (!record)
    throw new LedgerFault(
      'noFile',
      `SLIPNOTE_LEDGER is "${settings.ledger}": there is no ledger of that name.`,
    );
  return record;
}
