/** The environment, read once and checked; each fault names the setting, its value and what would do. */
import { homedir } from 'node:os';
import { isAbsolute, join } from 'node:path';
import { isZone, machineZone } from './calendar/zone.js';
import { type LogLevel, logLevels } from './log.js';

export type Growers =
  | { readonly kind: 'anyone' }
  /** Telegram user ids. */
  | { readonly kind: 'listed'; readonly ids: readonly string[] }
  | { readonly kind: 'invited' };

export type Speech =
  | { readonly kind: 'best' }
  | { readonly kind: 'off' }
  | { readonly kind: 'pocketsphinx' }
  | { readonly kind: 'model'; readonly folder: string };

export interface Settings {
  /** None: the conversation runs in the terminal. */
  readonly botToken?: string;
  /** Without a slash at its end. */
  readonly botApiRoot: string;
  readonly dataFolder: string;
  /** Name of the ledger that the terminal and the commands use; none: the owner's own. */
  readonly ledger?: string;
  readonly growers: Growers;
  readonly speech: Speech;
  readonly zone: string;
  readonly logLevel: LogLevel;
}

export type Environment = Readonly<Record<string, string | undefined>>;

/** One row of the table from which help, README and the checks come. */
export interface SettingRow {
  readonly name: string;
  readonly meaning: string;
  readonly otherwise: string;
  /** Its value is never shown. */
  readonly secret?: boolean;
  /** Null where the value will do, else what would do. */
  readonly fault: (value: string) => string | null;
}

const TOKEN = /^\d{3,20}:[\w-]{30,100}$/;
const GROWERS = /^(?:anyone|\d{1,20}(?:\s*,\s*\d{1,20})*)$/;

export const settingTable: readonly SettingRow[] = [
  {
    name: 'BOT_TOKEN',
    meaning: "the Telegram bot's token; never logged, never in an error",
    otherwise: 'none: the conversation runs in the terminal',
    secret: true,
    fault: (value) =>
      TOKEN.test(value) ? null : 'the token that BotFather gave, digits, a colon and some 35 letters',
  },
  {
    name: 'BOT_API_ROOT',
    meaning: 'another Bot API server',
    otherwise: 'https://api.telegram.org',
    fault: (value) =>
      /^https?:$/.test(urlOf(value)?.protocol ?? '') ? null : 'an address like http://localhost:8081',
  },
  {
    name: 'SLIPNOTE_DATA',
    meaning: 'folder of the ledger and its backups',
    otherwise: '$XDG_DATA_HOME/slipnote, else ~/.local/share/slipnote',
    fault: (value) => (value.includes('\0') ? 'the path of a folder' : null),
  },
  {
    name: 'SLIPNOTE_LEDGER',
    meaning: 'which ledger the terminal and the commands use',
    otherwise: "the owner's own",
    fault: (value) => (value.length <= 60 ? null : 'the name of a ledger, 60 characters at most'),
  },
  {
    name: 'SLIPNOTE_GROWERS',
    meaning: 'who may use the bot: Telegram user ids with commas, or anyone',
    otherwise: 'the first to send the code that the start prints owns it, and invites others',
    fault: (value) => (GROWERS.test(value) ? null : 'user ids with commas, like 1200345,1200346, or anyone'),
  },
  {
    name: 'SLIPNOTE_SPEECH',
    meaning: 'what turns voice notes into text: pocketsphinx, model:FOLDER or off',
    otherwise: 'the best that is installed',
    fault: (value) =>
      /^(?:pocketsphinx|off|model:.+)$/.test(value) ? null : 'pocketsphinx, model:FOLDER or off',
  },
  {
    name: 'SLIPNOTE_ZONE',
    meaning: 'time zone before a grower has set one',
    otherwise: "the machine's",
    fault: (value) => (isZone(value) ? null : 'a zone of the IANA list, like Europe/London'),
  },
  {
    name: 'LOG_LEVEL',
    meaning: "how much goes to the log; notes' text never does",
    otherwise: 'info',
    fault: (value) =>
      (logLevels as readonly string[]).includes(value) ? null : `one of ${logLevels.join(', ')}`,
  },
];

/** Settings make no sense; each line of the message names one. */
export class SettingsFault extends Error {}

/** Reads and checks the environment; an empty value counts as none. Throws `SettingsFault`. */
export function readSettings(environment: Environment): Settings {
  const value = (name: string): string | undefined => environment[name]?.trim() || undefined;
  const faults = settingTable.flatMap(({ name, secret, fault }) => {
    const given = value(name);
    const wanted = given === undefined ? null : fault(given);
    if (given === undefined || wanted === null) return [];
    return [`${name} is ${secret ? masked(given) : `"${given}"`}: it has to be ${wanted}.`];
  });
  if (faults.length > 0) throw new SettingsFault(faults.join('\n'));
  const botToken = value('BOT_TOKEN');
  const ledger = value('SLIPNOTE_LEDGER');
  return {
    ...(botToken !== undefined ? { botToken } : {}),
    botApiRoot: (value('BOT_API_ROOT') ?? 'https://api.telegram.org').replace(/\/$/, ''),
    dataFolder: value('SLIPNOTE_DATA') ?? join(dataHome(value('XDG_DATA_HOME')), 'slipnote'),
    ...(ledger !== undefined ? { ledger } : {}),
    growers: growersOf(value('SLIPNOTE_GROWERS')),
    speech: speechOf(value('SLIPNOTE_SPEECH')),
    zone: value('SLIPNOTE_ZONE') ?? machineZone(),
    logLevel: (value('LOG_LEVEL') ?? 'info') as LogLevel,
  };
}

/** A relative XDG path is to be ignored, says the base directory specification. */
function dataHome(xdg: string | undefined): string {
  return xdg !== undefined && isAbsolute(xdg) ? xdg : join(homedir(), '.local', 'share');
}

function growersOf(value: string | undefined): Growers {
  if (value === undefined) return { kind: 'invited' };
  if (value === 'anyone') return { kind: 'anyone' };
  return { kind: 'listed', ids: value.split(',').map((id) => id.trim()) };
}

function speechOf(value: string | undefined): Speech {
  if (value === undefined) return { kind: 'best' };
  if (value.startsWith('model:')) return { kind: 'model', folder: value.slice('model:'.length) };
  return { kind: value === 'off' ? 'off' : 'pocketsphinx' };
}

function masked(secret: string): string {
  return `… (${secret.length} characters)`;
}

function urlOf(value: string): URL | null {
  try {
    return new URL(value);
  } catch {
    return null;
  }
}

/** The settings of this process. Throws `SettingsFault`. */
export function settingsHere(): Settings {
  return readSettings(process.env);
}
