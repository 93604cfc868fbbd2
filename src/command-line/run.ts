/** The way in of `npm run -s <command>`: looks the command up and runs it. */
import { commands } from './commands.js';

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
