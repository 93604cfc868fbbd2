/** `help`: the commands and settings, as text or as the tables that README shows. */
import { settingTable } from '../settings.js';
import { commands, type Run } from './commands.js';

export const help: Run = async (args, { output }) => {
  output.write(args.includes('--markdown') ? `${commandTable()}\n\n${settingsTable()}\n` : plainHelp());
  return 0;
};

/** The commands as a Markdown table. */
export function commandTable(): string {
  return table(
    ['command', 'does'],
    commands.map(({ name, does }) => [`\`npm run -s ${name}\``, does]),
  );
}

/** The settings as a Markdown table. */
export function settingsTable(): string {
  return table(
    ['setting', 'meaning', 'otherwise'],
    settingTable.map(({ name, meaning, otherwise }) => [`\`${name}\``, meaning, otherwise]),
  );
}

function plainHelp(): string {
  const width = Math.max(
    ...commands.map(({ name }) => name.length),
    ...settingTable.map(({ name }) => name.length),
  );
  const lines = [
    'npm start: the chat. Others, as npm run -s NAME -- ARGUMENTS:',
    ...commands.map(({ name, does }) => `  ${name.padEnd(width)}  ${does}`),
    'Settings, by environment:',
    ...settingTable.map(({ name, meaning }) => `  ${name.padEnd(width)}  ${meaning}`),
  ];
  return `${lines.join('\n')}\n`;
}

function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const line = (cells: readonly string[]) =>
    `| ${cells.map((cell) => cell.replaceAll('|', '\\|')).join(' | ')} |`;
  return [line(head), line(head.map(() => '---')), ...rows.map(line)].join('\n');
}
