/** `restore PATH`: a backup back in the ledger's place, never over newer entries unless told. */
import { machineClock } from '../calendar/clock.js';
import { restoreLedger } from '../ledger/restoring.js';
import { settingsHere } from '../settings.js';
import { argumentsOf, plainly, UsageFault } from './usage.js';

const usage = 'npm run -s restore -- PATH [--over-newer]';

export const restore = plainly(async (args, { output }) => {
  const { positionals, values } = argumentsOf(args, { 'over-newer': { type: 'boolean' } }, usage);
  const [path] = positionals;
  if (path === undefined) throw new UsageFault(`Name the backup to restore. Usage: ${usage}`);
  const { dataFolder } = settingsHere();
  const { lines, movedTo, erasedAgain } = restoreLedger(
    path,
    dataFolder,
    machineClock.now(),
    values['over-newer'] === true,
  );
  output.write(`Restored ${lines} lines from ${path}.\n`);
  if (movedTo !== null) output.write(`The ledger that stood there is kept at ${movedTo}.\n`);
  if (erasedAgain > 0) output.write(`Erased again: ${erasedAgain} who had asked to be forgotten since.\n`);
  return 0;
});
