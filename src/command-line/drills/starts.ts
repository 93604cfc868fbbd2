/** Starts on a ledger that is locked, newer, truncated, overwritten or unreadable: one clear line each, exit 1, nothing changed. */
import { readFileSync, statSync, truncateSync, writeFileSync } from 'node:fs';
import { openDatabase } from '../../ledger/database.js';
import { ledgerPathIn, openLedgerFile } from '../../ledger/ledger-file.js';
import { schemaVersion } from '../../ledger/migrations.js';
import { type Drill, mustHold, withBot } from './drill.js';
import { Grower } from '../fake-bot-api/grower.js';
import { noteNumber } from './notes.js';
import { until } from './program.js';
import type { RunningBot } from './running-bot.js';

interface BadLedger {
  readonly name: string;
  readonly spoil: (folder: string) => (() => void) | void;
  readonly says: RegExp;
}

const badLedgers: readonly BadLedger[] = [
  {
    name: 'locked',
    spoil: (folder) => {
      const held = openLedgerFile(folder);
      return () => held.close();
    },
    says: /being written by another slipnote/,
  },
  {
    name: 'newer',
    spoil: (folder) => {
      const database = openDatabase(ledgerPathIn(folder));
      database.script(`PRAGMA user_version = ${schemaVersion + 1}`);
      database.close();
    },
    says: /newer slipnote/,
  },
  { name: 'truncated', spoil: (folder) => truncateSync(ledgerPathIn(folder), 9_000), says: /damaged/ },
  {
    name: 'overwritten',
    spoil: (folder) => writeFileSync(ledgerPathIn(folder), 'no ledger at all '.repeat(1_000)),
    says: /damaged/,
  },
];

export const starts: Drill = {
  name: 'starts',
  does: 'a start on a ledger that is locked, newer, truncated or overwritten: one clear line, exit 1, the file left alone',
  async run() {
    for (const bad of badLedgers) await withBot((bot) => tryStart(bot, bad));
    return `${badLedgers.map(({ name }) => name).join(', ')}: one clear line each`;
  },
};

async function tryStart(bot: RunningBot, { name, spoil, says }: BadLedger): Promise<string> {
  const first = bot.start();
  new Grower(bot.fake, 7).says(noteNumber(1));
  await until(() => bot.textsTo(7).length === 1, 15_000);
  await first.kill('SIGTERM');
  const release = spoil(bot.dataFolder);
  const path = ledgerPathIn(bot.dataFolder);
  const before = readFileSync(path);
  const program = bot.start();
  const status = await program.ended;
  release?.();
  const lines = program.stderr.trim().split('\n');
  mustHold(status === 1, () => `${name}: exit ${status}`);
  mustHold(lines.length === 1 && says.test(program.stderr), () => `${name}: said ${program.stderr}`);
  mustHold(
    name === 'locked' || (statSync(path).size === before.length && readFileSync(path).equals(before)),
    () => `${name}: the file was changed`,
  );
  return name;
}
