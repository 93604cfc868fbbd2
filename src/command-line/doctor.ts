/** `doctor`: looks at everything a start needs, and says what to do about each fault; exit status 1 if there is any. */
import { accessSync, constants, existsSync, mkdirSync, statfsSync } from 'node:fs';
import { machineClock } from '../calendar/clock.js';
import { asDay } from '../calendar/day.js';
import { instantAt, isZone, localDay } from '../calendar/zone.js';
import { BotFault, connectBot } from '../channels/telegram.js';
import { backupsIn, faultOf, lastGoodBackup } from '../ledger/backups.js';
import { ledgerPathIn } from '../ledger/ledger-file.js';
import { shippedFonts } from '../pictures/font.js';
import { readSettings, type Settings, settingsHere, SettingsFault } from '../settings.js';
import { howToInstall, speechFault } from '../voice/engines.js';
import type { Run } from './commands.js';

/** What a check found: all is well and how, or what is wrong and what to do. */
type Finding = { readonly well: string } | { readonly fault: string };

interface Check {
  readonly what: string;
  readonly look: (settings: Settings) => Finding | Promise<Finding>;
}

const MEGABYTE = 1024 * 1024;
const LEAST_FREE_MB = 200;
const EARLIEST_SANE = Date.UTC(2026, 0, 1);

const checks: readonly Check[] = [
  { what: 'Node', look: () => nodeFinding(process.versions.node) },
  { what: 'data folder', look: ({ dataFolder }) => folderFinding(dataFolder) },
  { what: 'ledger', look: ({ dataFolder }) => ledgerFinding(dataFolder) },
  { what: 'backups', look: ({ dataFolder }) => backupFinding(dataFolder) },
  { what: 'clock', look: ({ zone }) => clockFinding(machineClock.now(), zone) },
  { what: 'zone data', look: () => zoneFinding() },
  { what: 'speech', look: ({ speech }) => speechFinding(speech) },
  { what: 'fonts', look: () => fontFinding() },
  { what: 'Bot API', look: (settings) => botFinding(settings) },
];

export const doctor: Run = async (_args, { output }) => {
  let faults = 0;
  const say = (what: string, finding: Finding) => {
    if ('fault' in finding) faults += 1;
    output.write(
      'fault' in finding ? `FAULT  ${what}: ${finding.fault}\n` : `well   ${what}: ${finding.well}\n`,
    );
  };
  const settings = settingsFound();
  if (!('dataFolder' in settings)) {
    for (const fault of settings.faults) say('settings', { fault });
  } else say('settings', { well: 'they make sense' });
  const usable = 'dataFolder' in settings ? settings : readSettings({});
  for (const { what, look } of checks) {
    say(what, await Promise.resolve(look(usable)).catch((fault: Error) => ({ fault: `${fault.message}` })));
  }
  output.write(faults === 0 ? 'All is well.\n' : `${faults} to mend.\n`);
  return faults === 0 ? 0 : 1;
};

function settingsFound(): Settings | { readonly faults: readonly string[] } {
  try {
    return settingsHere();
  } catch (fault) {
    if (fault instanceof SettingsFault) return { faults: fault.message.split('\n') };
    throw fault;
  }
}

function nodeFinding(version: string): Finding {
  const [major = 0, minor = 0] = version.split('.').map(Number);
  return major > 20 || (major === 20 && minor >= 19)
    ? { well: version }
    : { fault: `${version} is too old: install Node 20.19 or newer` };
}

function folderFinding(folder: string): Finding {
  try {
    mkdirSync(folder, { recursive: true, mode: 0o700 });
    accessSync(folder, constants.R_OK | constants.W_OK);
  } catch (fault) {
    return {
      fault: `${folder} can't be used (${(fault as NodeJS.ErrnoException).code}): set SLIPNOTE_DATA to a folder of this user's`,
    };
  }
  const { bavail, bsize } = statfsSync(folder);
  const freeMb = Math.floor((bavail * bsize) / MEGABYTE);
  return freeMb < LEAST_FREE_MB
    ? { fault: `only ${freeMb} MB are free at ${folder}: make room` }
    : { well: `${folder}, ${freeMb} MB free` };
}

function ledgerFinding(folder: string): Finding {
  const path = ledgerPathIn(folder);
  if (!existsSync(path)) return { well: 'none yet; npm start makes one' };
  const fault = faultOf(path);
  if (fault === null) return { well: `${path} is whole` };
  const good = lastGoodBackup(folder);
  return {
    fault: `${path}: ${fault}. ${good ? `Restore the last good backup: npm run -s restore -- ${good.path}` : 'There is no good backup to restore.'}`,
  };
}

function backupFinding(folder: string): Finding {
  const all = backupsIn(folder);
  if (all.length === 0) return { well: 'none yet; the running bot makes one a day' };
  const bad = all.filter(({ path }) => faultOf(path) !== null);
  if (bad.length > 0)
    return {
      fault: `can't be opened: ${bad.map(({ path }) => path).join(', ')}. Delete them; the next day makes a new one`,
    };
  return { well: `${all.length}, the newest of ${all[0]?.day}` };
}

function clockFinding(now: number, zone: string): Finding {
  return now < EARLIEST_SANE
    ? { fault: `it says ${new Date(now).toISOString()}: set the machine's clock` }
    : { well: `${localDay(now, zone)} in ${zone}` };
}

/** Summer time of three zones, of which old or cut-down zone data know nothing. */
function zoneFinding(): Finding {
  const known = [
    ['Europe/London', '2026-07-01', '2026-07-01T07:00:00.000Z'],
    ['America/Santiago', '2026-01-15', '2026-01-15T11:00:00.000Z'],
    ['Pacific/Apia', '2026-01-15', '2026-01-14T19:00:00.000Z'],
  ] as const;
  const wrong = known.filter(
    ([zone, day, at]) => !isZone(zone) || new Date(instantAt(asDay(day), '08:00', zone)).toISOString() !== at,
  );
  return wrong.length === 0
    ? { well: `whole (ICU ${process.versions.icu ?? 'none'}, tz ${process.versions.tz ?? 'unknown'})` }
    : {
        fault: `wrong or missing for ${wrong.map(([zone]) => zone).join(', ')}: install a Node with full ICU data`,
      };
}

function speechFinding(speech: Settings['speech']): Finding {
  if (speech.kind === 'off') return { well: 'switched off (SLIPNOTE_SPEECH=off)' };
  const fault = speechFault(speech);
  if (fault === undefined)
    return { well: speech.kind === 'model' ? `the model in ${speech.folder}` : 'PocketSphinx' };
  // Speech that nobody asked for is no fault when it is not there.
  return speech.kind === 'best' ? { well: `off; voice notes need: ${howToInstall}` } : { fault };
}

function fontFinding(): Finding {
  const missing = shippedFonts
    .flatMap(({ regular, bold }) => [regular, bold])
    .filter((path) => !existsSync(path));
  return missing.length === 0
    ? { well: shippedFonts.map(({ name }) => name).join(', ') }
    : { fault: `missing: ${missing.join(', ')}. Run npm ci again` };
}

async function botFinding({ botToken, botApiRoot }: Settings): Promise<Finding> {
  if (botToken === undefined) return { well: 'not asked for (no BOT_TOKEN); the terminal needs none' };
  try {
    const { username } = await connectBot({ token: botToken, root: botApiRoot }).me();
    return { well: `reached as @${username}` };
  } catch (fault) {
    if (!(fault instanceof BotFault)) throw fault;
    return fault.kind === 'badToken'
      ? { fault: 'it refuses the token: set BOT_TOKEN to the one that BotFather gave, whole' }
      : { fault: `not reached at ${botApiRoot} (${fault.why}): check the network, or BOT_API_ROOT` };
  }
}
