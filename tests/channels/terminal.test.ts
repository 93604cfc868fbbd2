/** The program in the terminal: piped, one note a line and a reply each; the ledger stays from start to start. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { Program } from '../../src/command-line/drills/program.js';
import { RunningBot } from '../../src/command-line/drills/running-bot.js';

let bot: RunningBot;
beforeEach(async () => {
  bot = await RunningBot.prepare();
});
afterEach(() => bot.end());

async function say(...lines: string[]): Promise<string> {
  const program = new Program({ dataFolder: bot.dataFolder });
  program.feed(lines.map((line) => `${line}\n`).join(''));
  expect(await program.ended).toBe(0);
  expect(program.stderr).toBe('');
  return program.stdout;
}

describe('piped notes', () => {
  it('get a reply each, and exit 0 at their end', async () => {
    const said = await say(
      'took 3 basal cuttings of Copper Lantern dahlia in one pot today',
      'lost one to rot',
      'what is due this week?',
    );
    expect(said).toMatch(/3 basal cuttings of Copper Lantern/);
    expect(said).toMatch(/1 lost to rot; 2 left/);
    expect(said).toMatch(/due/i);
  });

  it('are still known at the second start', async () => {
    await say('took 3 basal cuttings of Copper Lantern dahlia in one pot today', 'lost one to rot');
    expect(await say('how many Copper Lantern are alive?')).toMatch(/\b2\b/);
  });

  it('go on after a line that is hostile', async () => {
    const said = await say(
      '\u0000\u001B[2J',
      'x'.repeat(5_000),
      'took 4 tip cuttings of Marble Wren fuchsia in one pot',
    );
    expect(said).toMatch(/4 tip cuttings of Marble Wren/);
    expect(bot.rows('SELECT 1 FROM journal')).toHaveLength(1);
  });
});
