/** For tests: the built program running as the bot of a fake Bot API, on a folder of its own. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Program, type ProgramStart } from '../../src/command-line/drills/program.js';
import { type FakeBotApi, startFakeBotApi } from '../../src/command-line/fake-bot-api/fake-bot-api.js';
import { openDatabase, type Row, type SqlValue } from '../../src/ledger/database.js';
import { ledgerPathIn } from '../../src/ledger/ledger-file.js';

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
    const database = openDatabase(ledgerPathIn(this.dataFolder), { mode: 'read' });
    try {
      return database.all<R>(sql, ...values);
    } finally {
      database.close();
    }
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
