/** `export --format csv|ics|json --out PATH`: the ledger as a file, also while the bot runs. */
import { writeFileSync } from 'node:fs';
import { machineClock } from '../calendar/clock.js';
import { ledgerCsv } from '../exchange/ledger-csv.js';
import { ledgerJson } from '../exchange/ledger-json.js';
import { calendarPaper } from '../papers/calendar-paper.js';
import { type AtHand, ledgerView, replayedView } from './papers-at-hand.js';
import { argumentsOf, plainly, UsageFault } from './usage.js';

const usage = 'npm run -s export -- --format csv|ics|json --out PATH [--replay FILE]';

export const exportLedger = plainly(async (args, { output }) => {
  const options = {
    format: { type: 'string' },
    out: { type: 'string' },
    replay: { type: 'string' },
  } as const;
  const { format, out, replay } = argumentsOf(args, options, usage).values;
  if (out === undefined) throw new UsageFault(`Name the file to write. Usage: ${usage}`);
  const at = replay === undefined ? await ledgerView() : replayedView(replay);
  writeFileSync(out, written(format, at));
  output.write(`Written to ${out}: ${at.journal.length} lines of the ledger "${at.name}".\n`);
  return 0;
});

function written(format: string | undefined, { name, journal, view }: AtHand): string | Uint8Array {
  const now = machineClock.now();
  switch (format) {
    case 'csv':
      return ledgerCsv(view.ledger);
    case 'json':
      return ledgerJson({ name, settings: { ...view.settings }, journal }, now);
    case 'ics':
      return calendarPaper(view, name, now).bytes;
    default:
      throw new UsageFault(
        `--format is csv, ics or json${format === undefined ? '' : `, not "${format}"`}. Usage: ${usage}`,
      );
  }
}
