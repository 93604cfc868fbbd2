/** The built program running as the bot of a fake Bot API, on a folder of its own. */
import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Program, type ProgramStart } from './program.js';
import { type FakeBotApi, startFakeBotApi } from '../fake-bot-api/fake-bot-api.js';
import { openDatabase, type Row, type SqlValue } from '../../ledger/database.js';
import { versionOf } from '../../ledger/migrations.js';
import { ledgerPathIn } from '../../ledger/ledger-file.js';

export class RunningBot {
  readonly dataFolder = mkdtempSync(join(tmpdir(), 'slipnote-'));
  readonly programs: Program[] = [];

  private constructor(readonly fake: FakeBotApi) {}

  static async prepare(): Promise<RunningBot> {
    return new RunningBot(await startFakeBotApi());
  }

  start(more: Partial<ProgramStart> = {}): Program {
    const program = new Program({ dataFolder: this.dataFolder, fake: this.fake, ...more });
    this.programs.push(program);
    return program;
  }

  /** Reads the ledger beside its writer. */
  rows<R = Row>(sql: string, ...values: SqlValue[]): R[] {
    return this.rowsIn<R>(this.dataFolder, sql, ...values);
  }

  rowsIn<R = Row>(folder: string, sql: string, ...values: SqlValue[]): R[] {
    const path = ledgerPathIn(folder);
    if (!existsSync(path)) return [];
    const database = openDatabase(path, { mode: 'read' });
    try {
      // A start that has only just begun has made no tables yet.
      return versionOf(database) === 0 ? [] : database.all<R>(sql, ...values);
    } finally {
      database.close();
    }
  }

  count(sql: string, ...values: SqlValue[]): number {
    return this.rows(sql, ...values).length;
  }

  /** How many journal lines each message made, by `chat message`. */
  linesByMessage(): Map<string, number> {
    const rows = this.rows<{ source: string; lines: number }>(
      "SELECT chat || ' ' || message AS source, count(*) AS lines FROM journal GROUP BY chat, message",
    );
    return new Map(rows.map(({ source, lines }) => [source, lines]));
  }

  /** What was sent to a chat, in order. */
  textsTo(chat: number): string[] {
    return this.fake.sent.filter((sent) => sent.chat === chat).map(({ text }) => text);
  }

  async end(): Promise<void> {
    await Promise.all(this.programs.map((program) => program.kill()));
    await this.fake.close();
    rmSync(this.dataFolder, { recursive: true, force: true });
  }
}
