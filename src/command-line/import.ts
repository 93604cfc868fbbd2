/** `import PATH`: a ledger, rows of entries or a station's minima into the ledger, after saying what that would do. */
import { existsSync, readFileSync } from 'node:fs';
import { createInterface } from 'node:readline/promises';
import { machineClock } from '../calendar/clock.js';
import { localDay } from '../calendar/zone.js';
import { defaultSettings, type LedgerSettings } from '../conversation/settings/ledger-settings.js';
import { bringingIn, type BringingIn } from '../exchange/bringing-in.js';
import { appendLine, readJournal } from '../ledger/journal.js';
import { ledgerSettings, saveLedgerSettings } from '../ledger/ledgers.js';
import {
  bringInQuestion,
  bringingInWords,
  bringsAnything,
  broughtInWords,
  minimaTakenIn,
  leftOut,
} from '../words/bringing-in-words.js';
import type { CommandStreams } from './commands.js';
import { type LedgerAtHand, writingLedger } from './ledger-at-hand.js';
import { argumentsOf, CommandFault, plainly, UsageFault } from './usage.js';

const usage = 'npm run -s import -- PATH [--dry-run]';

export const importLedger = plainly(async (args, streams) => {
  const { positionals, values } = argumentsOf(args, { 'dry-run': { type: 'boolean' } }, usage);
  const [path] = positionals;
  if (path === undefined) throw new UsageFault(`Name the file to bring in. Usage: ${usage}`);
  if (!existsSync(path)) throw new CommandFault(`There is no file ${path}.`);
  const bytes = readFileSync(path);
  return writingLedger(async (at) => {
    const now = machineClock.now();
    const settings = {
      ...defaultSettings(at.settings.zone),
      ...ledgerSettings<LedgerSettings>(at.database, at.record.id),
    };
    const journal = readJournal(at.database, at.record.id);
    const found = bringingIn(bytes, journal, settings.zone, now);
    const today = localDay(now, settings.zone);
    streams.output.write(
      `${bringingInWords(found, settings.zone, { wording: settings.wording, units: settings.units, today })}\n`,
    );
    if (!bringsAnything(found)) return 'plan' in found ? 0 : 1;
    if (values['dry-run'] || !(await agreed(streams))) {
      streams.output.write(`${leftOut}\n`);
      return 0;
    }
    takeIn(at, found, settings, journal.length);
    streams.output.write(`${'plan' in found ? broughtInWords(found.plan.append.length) : minimaTakenIn}\n`);
    return 0;
  });
});

/** Asks where someone sits at a terminal; a script that calls the command has agreed by calling it. */
async function agreed({ input, output }: CommandStreams): Promise<boolean> {
  if (!('isTTY' in input) || !input.isTTY) return true;
  const asking = createInterface({ input, output });
  const answer = await asking.question(`${bringInQuestion} [yes/no] `);
  asking.close();
  return /^y(?:es)?$/i.test(answer.trim());
}

function takeIn(
  { database, record }: LedgerAtHand,
  found: BringingIn,
  settings: LedgerSettings,
  lines: number,
): void {
  database.transaction(() => {
    if (found.holds === 'minima')
      saveLedgerSettings(database, record.id, { ...settings, recordedFrost: found.frost });
    if (found.holds !== 'ledger' && found.holds !== 'rows') return;
    for (const [index, line] of found.plan.append.entries()) {
      appendLine(database, record.id, { ...line, line: lines + index + 1 });
    }
    // A ledger that comes in whole brings its settings where this one has none of its own yet.
    if (found.holds === 'ledger' && lines === 0)
      saveLedgerSettings(database, record.id, { ...found.settings });
  });
}
