/** The ledger's SQLite file, opened safely; the only file that knows better-sqlite3, and a narrow view of it. */
import { createRequire } from 'node:module';
import type SqliteDatabase from 'better-sqlite3';

const require = createRequire(import.meta.url);

export type SqlValue = string | number | bigint | Uint8Array | null;
export type Row = Record<string, SqlValue>;

/** Prepared statements only: values never become part of the SQL. */
export interface Database {
  /** Runs one statement; answers how many rows it changed and the row id of the last insert. */
  run(sql: string, ...values: SqlValue[]): { readonly changes: number; readonly lastId: number };
  /** First row, or undefined. */
  get<R = Row>(sql: string, ...values: SqlValue[]): R | undefined;
  all<R = Row>(sql: string, ...values: SqlValue[]): R[];
  /** Runs several statements that carry no values. */
  script(sql: string): void;
  /**
   * All of `work` or nothing of it. A call inside another leaves nothing behind where it throws, and is kept with the other.
   */
  transaction<T>(work: () => T): T;
  /** SQLite's own online backup to a new file at `path`; the ledger stays in use meanwhile. */
  backup(path: string): Promise<void>;
  close(): void;
}

export interface OpenMode {
  /** `write` creates the file where there is none; `read` never changes it and works beside a writer. */
  readonly mode: 'write' | 'read';
  /** How long a statement waits for another process, in milliseconds. */
  readonly waitMs?: number;
  /** `ahead` is SQLite's write-ahead log, under which others read while one writes; `file` its older journal. */
  readonly journal?: 'ahead' | 'file';
}

/** What is wrong with a ledger file, so that the start can say what to do about it. */
export type LedgerFaultKind = 'locked' | 'readOnly' | 'noFile' | 'full' | 'corrupt' | 'newer' | 'broken';

/** The ledger file cannot be used; the message says why and what would help. */
export class LedgerFault extends Error {
  constructor(
    readonly kind: LedgerFaultKind,
    message: string,
    options?: { readonly cause?: unknown },
  ) {
    super(message, options);
  }
}

let loaded: typeof SqliteDatabase | undefined;

/**
 * The library itself; a bench measures against it bare. Its version 13 needs Node-API 10 (Node 22.14) and crashes without;
 * its version 12 is aborted by Node from 24.19 on, as soon as a statement is collected (WiseLibs/better-sqlite3, issue
 * 1515). So each Node gets the one that it can run. Throws `LedgerFault` where that is not built.
 */
export function sqliteLibrary(): typeof SqliteDatabase {
  try {
    loaded ??= (
      Number(process.versions.napi) >= 10 ? require('better-sqlite3') : require('better-sqlite3-node20')
    ) as typeof SqliteDatabase;
    return loaded;
  } catch (error) {
    throw new LedgerFault(
      'broken',
      `SQLite cannot be loaded (${(error as NodeJS.ErrnoException).code}): run npm ci again; where there is none ready-built it needs python3, make and g++.`,
      { cause: error },
    );
  }
}

/** In memory where `path` is `:memory:`. Throws `LedgerFault`. */
export function openDatabase(
  path: string,
  { mode, waitMs = 5_000, journal = 'ahead' }: OpenMode = { mode: 'write' },
): Database {
  return naming(path, () => {
    const sqlite = new (sqliteLibrary())(path, {
      timeout: waitMs,
      readonly: mode === 'read',
      fileMustExist: mode === 'read',
    });
    try {
      if (mode === 'write' && journal === 'ahead') sqlite.pragma('journal_mode = WAL');
      // better-sqlite3 is built with SQLITE_DEFAULT_WAL_SYNCHRONOUS=1: without this line, a reopened WAL file
      // runs at NORMAL, and a power cut loses what was acknowledged.
      sqlite.pragma('synchronous = FULL');
      // Some 16 MB of log between checkpoints, each of which costs as much as many commits.
      if (mode === 'write') sqlite.pragma('wal_autocheckpoint = 4000');
      sqlite.pragma('foreign_keys = ON');
      // A turn changes some twenty pages, which a savepoint keeps as they were: past 64 kB in a file of its own, made and
      // deleted with each note.
      sqlite.pragma('temp_store = MEMORY');
      // Also proves that the file is a database at all.
      sqlite.prepare('SELECT count(*) FROM sqlite_master').get();
    } catch (error) {
      sqlite.close();
      throw error;
    }
    return new SqliteView(sqlite, path);
  });
}

class SqliteView implements Database {
  private readonly statements = new Map<string, SqliteDatabase.Statement>();
  /** Inside another, better-sqlite3 makes it a savepoint. */
  private readonly whole: SqliteDatabase.Transaction<(work: () => unknown) => unknown>;

  constructor(
    private readonly sqlite: SqliteDatabase.Database,
    private readonly path: string,
  ) {
    this.whole = sqlite.transaction((work: () => unknown) => work());
  }

  run(sql: string, ...values: SqlValue[]) {
    const { changes, lastInsertRowid } = naming(this.path, () => this.prepared(sql).run(...values));
    return { changes, lastId: Number(lastInsertRowid) };
  }

  get<R>(sql: string, ...values: SqlValue[]): R | undefined {
    return naming(this.path, () => this.prepared(sql).get(...values)) as R | undefined;
  }

  all<R>(sql: string, ...values: SqlValue[]): R[] {
    return naming(this.path, () => this.prepared(sql).all(...values)) as R[];
  }

  script(sql: string): void {
    naming(this.path, () => this.sqlite.exec(sql));
  }

  transaction<T>(work: () => T): T {
    return naming(this.path, () => this.whole.immediate(work)) as T;
  }

  async backup(path: string): Promise<void> {
    await this.sqlite.backup(path);
  }

  close(): void {
    this.sqlite.close();
  }

  private prepared(sql: string): SqliteDatabase.Statement {
    let statement = this.statements.get(sql);
    if (!statement) {
      statement = this.sqlite.prepare(sql);
      this.statements.set(sql, statement);
    }
    return statement;
  }
}

const faultKinds: readonly (readonly [prefix: string, kind: LedgerFaultKind, advice: string])[] = [
  ['SQLITE_BUSY', 'locked', 'another program holds it: stop that program, then start again'],
  ['SQLITE_LOCKED', 'locked', 'another program holds it: stop that program, then start again'],
  ['SQLITE_READONLY', 'readOnly', 'it cannot be written: give this user the right to write to it and its folder'],
  ['SQLITE_PERM', 'readOnly', 'it cannot be written: give this user the right to write to it and its folder'],
  ['SQLITE_CANTOPEN', 'noFile', 'it cannot be opened: check that its folder exists and that this user may use it'],
  ['SQLITE_FULL', 'full', 'the disk is full: free some space; nothing that was acknowledged is lost'],
  ['SQLITE_IOERR', 'broken', 'the disk does not read or write: check the disk and its free space'],
  ['SQLITE_CORRUPT', 'corrupt', 'it is damaged: restore the last good backup'],
  ['SQLITE_NOTADB', 'corrupt', 'it is no ledger or is damaged: restore the last good backup'],
]; // prettier-ignore

/** Turns SQLite's own error codes into faults that name the file and what to do. */
function naming<T>(path: string, work: () => T): T {
  try {
    return work();
  } catch (error) {
    if (!(error instanceof sqliteLibrary().SqliteError)) throw error;
    const [, kind, advice] = faultKinds.find(([prefix]) => error.code.startsWith(prefix)) ?? [];
    if (!kind) throw error;
    throw new LedgerFault(kind, `The ledger ${path}: ${advice} (${error.code}).`, { cause: error });
  }
}
