/** The way in of `npm run -s <command>`: looks the command up and runs it. */
import { commands } from './commands.js';

// Whoever reads the answers may have had enough of them (a pipe into head).
process.stdout.on('error', (fault: NodeJS.ErrnoException) => process.exit(fault.code === 'EPIPE' ? 0 : 1));

const [name = 'help', ...args] = process.argv.slice(2);
const command = commands.find((each) => each.name === name);
if (command) {
  const run = await command.load();
  process.exitCode = await run(args, {
    input: process.stdin,
    output: process.stdout,
    errors: process.stderr,
  });
} else {
  process.stderr.write(
    `There is no command "${name}". Commands: ${commands.map((each) => each.name).join(', ')}.\n`,
  );
  process.exitCode = 2;
}
