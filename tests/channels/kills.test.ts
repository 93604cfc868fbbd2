/** The built program against a fake Bot API, killed under load: nothing lost, nothing doubled, everything answered. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { Program, until } from '../../src/command-line/drills/program.js';
import { type FakeBotApi, startFakeBotApi } from '../../src/command-line/fake-bot-api/fake-bot-api.js';
import { Grower } from '../../src/command-line/fake-bot-api/grower.js';
import { openDatabase } from '../../src/ledger/database.js';
import { ledgerPathIn } from '../../src/ledger/ledger-file.js';

let dataFolder: string;
let fake: FakeBotApi;
let program: Program | undefined;

beforeEach(async () => {
  dataFolder = mkdtempSync(join(tmpdir(), 'slipnote-'));
  fake = await startFakeBotApi();
});
afterEach(async () => {
  await program?.kill();
  await fake.close();
  rmSync(dataFolder, { recursive: true, force: true });
});

/** How many journal lines each message made, by `chat message`. */
function linesByMessage(): Map<string, number> {
  const database = openDatabase(ledgerPathIn(dataFolder), { mode: 'read' });
  const rows = database.all<{ source: string; lines: number }>(
    "SELECT chat || ' ' || message AS source, count(*) AS lines FROM journal GROUP BY chat, message",
  );
  database.close();
  return new Map(rows.map(({ source, lines }) => [source, lines]));
}

describe('a burst of 300 notes with five kills', () => {
  it(
    'is logged once each and answered, distinct and identical notes alike',
    { timeout: 120_000 },
    async () => {
      const growers = Array.from({ length: 60 }, (_, index) => new Grower(fake, 1_000 + index));
      const expected = new Set<string>();
      // An hour lies between a grower's notes, so that the same words are no slip of the thumb.
      const firstAt = Math.floor(Date.now() / 1000) - 6 * 3600;
      for (let round = 0; round < 5; round++)
        for (const [index, grower] of growers.entries()) {
          const count = round % 2 === 0 ? 3 : 2 + ((index + round) % 7);
          const message = grower.says(`took ${count} basal cuttings of Ember Fox dahlia in one pot`, {
            date: firstAt + round * 3600,
          });
          expected.add(`telegram:${grower.chat} ${message}`);
        }
      for (let kill = 0; kill < 5; kill++) {
        program = new Program({ dataFolder, fake });
        const before = fake.sent.length;
        await until(() => fake.sent.length > before, 20_000);
        await sleep(150 + kill * 170);
        await program.kill();
      }
      program = new Program({ dataFolder, fake });
      const answered = () =>
        new Set(fake.sent.map(({ chat, replyTo, text }) => `${chat} ${replyTo ?? text}`));
      await until(() => fake.queue.length === 0 && linesByMessage().size === 300, 60_000);
      await until(
        () => growers.every(({ chat }) => fake.sent.filter((sent) => sent.chat === chat).length >= 5),
        60_000,
        () => `only ${fake.sent.length} messages were sent, ${answered().size} of them different`,
      );
      const lines = linesByMessage();
      expect(new Set(lines.keys())).toEqual(expected);
      expect([...lines.values()].filter((count) => count !== 1)).toEqual([]);
      // At most one doubt for each sending in flight at a kill.
      expect(fake.sent.length).toBeGreaterThanOrEqual(300);
      expect(fake.sent.length).toBeLessThanOrEqual(300 + 5 * 3);
    },
  );
});

describe('a stop by signal', () => {
  it('finishes what is in hand and exits 0 within five seconds', async () => {
    const grower = new Grower(fake, 77);
    program = new Program({ dataFolder, fake });
    grower.says('took 3 basal cuttings of Ember Fox dahlia in one pot');
    await until(() => fake.sent.length > 0, 15_000);
    for (let count = 4; count < 9; count++)
      grower.says(`took ${count} tip cuttings of Marble Wren fuchsia in a tray`);
    await until(() => fake.queue.length === 0 || linesByMessage().size > 1, 10_000);
    const askedAt = performance.now();
    expect(await program.kill('SIGTERM')).toBe(0);
    expect(performance.now() - askedAt).toBeLessThan(5_000);
    program = new Program({ dataFolder, fake });
    await until(() => linesByMessage().size === 6 && fake.sent.length === 6, 15_000);
    expect([...linesByMessage().values()]).toEqual([1, 1, 1, 1, 1, 1]);
  });
});
