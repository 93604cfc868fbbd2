/** How a command says that it was called wrongly, or that the ledger can't be used: one line, exit status 1 or 2. */
import { parseArgs, type ParseArgsConfig } from 'node:util';
import { LedgerFault } from '../ledger/database.js';
import { SettingsFault } from '../settings.js';
import type { CommandStreams, Run } from './commands.js';

/** Called with the wrong words; the message says how to call it. */
export class UsageFault extends Error {}

/** Something else stands in the way; the message says what to do. */
export class CommandFault extends Error {}

/** Wraps a command so that what a user can mend is one line on standard error; anything else is a fault of ours and is thrown. */
export function plainly(run: Run): Run {
  return async (args, streams) => {
    try {
      return await run(args, streams);
    } catch (fault) {
      if (fault instanceof UsageFault) return say(streams, fault.message, 2);
      if (fault instanceof LedgerFault || fault instanceof SettingsFault || fault instanceof CommandFault) {
        return say(streams, fault.message, 1);
      }
      throw fault;
    }
  };
}

/** Options and the words between them; throws `UsageFault` with `usage` where they are none of the command's. */
export function argumentsOf<T extends NonNullable<ParseArgsConfig['options']>>(
  args: readonly string[],
  options: T,
  usage: string,
) {
  try {
    return parseArgs({ args: [...args], options, allowPositionals: true, strict: true });
  } catch (fault) {
    throw new UsageFault(`${(fault as Error).message.split('. ')[0]}. Usage: ${usage}`);
  }
}

function say({ errors }: CommandStreams, message: string, status: number): number {
  errors.write(`${message}\n`);
  return status;
}
