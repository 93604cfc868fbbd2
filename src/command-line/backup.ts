/** `backup PATH`: a consistent copy of the ledger, also while the bot runs. */
import { copyLedger } from '../ledger/backups.js';
import { readingLedger } from './ledger-at-hand.js';
import { argumentsOf, plainly, UsageFault } from './usage.js';

const usage = 'npm run -s backup -- PATH';

export const backup = plainly(async (args, { output }) => {
  const [path] = argumentsOf(args, {}, usage).positionals;
  if (path === undefined) throw new UsageFault(`Name the file to write. Usage: ${usage}`);
  await readingLedger(({ database }) => copyLedger(database, path));
  output.write(`Copied the ledger to ${path} and checked the copy.\n`);
  return 0;
});
