/** Starts the program: the real clock, files and network, and one clear line and exit 1 where a start cannot be. */
import { randomInt } from 'node:crypto';
import { mkdirSync, writeFileSync } from 'node:fs';
import { userInfo } from 'node:os';
import { basename, join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { machineClock } from './calendar/clock.js';
import type { BotApi } from './channels/telegram.js';
import type { Hear } from './channels/telegram-channel.js';
import type { BotSelf } from './channels/telegram-message.js';
import { Terminal } from './channels/terminal.js';
import { Admission, type AdmissionPolicy, spacedCode } from './conversation/settings/admission.js';
import { keepDailyBackups } from './ledger/daily-backup.js';
import { LedgerFault } from './ledger/database.js';
import { type LedgerFile, openLedgerFile } from './ledger/ledger-file.js';
import { atTheMachine, firstLedger, ledgerNamed } from './ledger/ledgers.js';
import { eraseGrower, eraseShared } from './ledger/erasure.js';
import { createLog, type Log, traced } from './log.js';
import { Addresses } from './post/addresses.js';
import { Heartbeat } from './post/heartbeat.js';
import { Inbox } from './post/inbox.js';
import { hearingFiles, hearingWith } from './notes-heard.js';
import { Program } from './program.js';
import { type Growers, readSettings, type Settings, SettingsFault } from './settings.js';
import { openTranscriber } from './voice/engines.js';
import { channelWords } from './words/channel-words.js';
import { doorWords } from './words/door-words.js';

/** After a signal: replies to what was taken get this long, then all ends; what is left is kept for the next start. */
const LAST_REPLIES_MS = 2_000;
const END_MS = 4_500;

/** The start cannot be; the message is one line that says what to do. */
class StartFault extends Error {}

interface Here {
  readonly settings: Settings;
  readonly ledger: LedgerFile;
  readonly log: Log;
  readonly stop: AbortSignal;
  readonly admission: Admission;
  readonly program: Program;
  readonly hear: Hear;
}

const now = () => machineClock.now();

async function main(): Promise<void> {
  const settings = readSettings(process.env);
  const log = createLog({ level: settings.logLevel, write: (line) => process.stderr.write(line), now });
  process.on('uncaughtException', (fault) => crash(log, fault));
  process.on('unhandledRejection', (fault) => crash(log, fault));
  const stop = new AbortController();
  for (const signal of ['SIGTERM', 'SIGINT'] as const) process.on(signal, () => end(stop, log));
  const ledger = openLedgerFile(settings.dataFolder);
  try {
    await run(settings, ledger, log, stop.signal);
  } finally {
    ledger.close();
  }
}

async function run(settings: Settings, ledger: LedgerFile, log: Log, stop: AbortSignal): Promise<void> {
  const { database } = ledger;
  const { dataFolder, zone } = settings;
  const admission = new Admission(database, policyOf(settings.growers), randomInt);
  const program: Program = new Program({
    database,
    clock: machineClock,
    log,
    zone,
    ...(settings.ledger !== undefined ? { terminalLedger: settings.ledger } : {}),
    admission,
    // Drawing and printing take half a second and 30 MB to load: only when they are asked for.
    runErrand: async (errand, incoming) =>
      (await import('./errands.js')).runErrand(errand, incoming, {
        admission,
        now,
        worldOf: (speaker) => program.worldOf(speaker),
        erase: (grower) => {
          const owner = grower === atTheMachine ? (firstLedger(database, now()).owner ?? grower) : grower;
          const erased = eraseGrower(database, dataFolder, owner, now());
          program.forget();
          return erased;
        },
        eraseShared: (shared) => {
          const erased = eraseShared(database, dataFolder, shared, now());
          program.forget();
          return erased;
        },
        bot: () => program.bot,
      }),
  });
  const transcriber = openTranscriber(settings.speech, { dataFolder });
  const hear = hearingWith(transcriber, program, log);
  const here: Here = { settings, ledger, log, stop, admission, program, hear };
  const stopBackups = keepDailyBackups({ database, dataFolder, clock: machineClock, zone, log });
  try {
    if (settings.botToken) await serveTelegram(here, settings.botToken);
    else await serveTerminal(here);
    await Promise.race([program.allSaid(), sleep(LAST_REPLIES_MS, undefined, { ref: false })]);
  } finally {
    await transcriber.close();
    await program.stop();
    await stopBackups();
  }
}

async function serveTelegram(
  { settings, ledger, log, stop, admission, program, hear }: Here,
  token: string,
): Promise<void> {
  const { database } = ledger;
  // The terminal need not wait for what only Telegram needs.
  const { connectBot } = await import('./channels/telegram.js');
  const { TelegramChannel } = await import('./channels/telegram-channel.js');
  const api = connectBot({ token, root: settings.botApiRoot });
  const code = database.transaction(() => admission.ownerCode(now()));
  if (code !== null) process.stdout.write(`${doorWords.ownerCode(spacedCode(code))}\n`);
  const self = await introduce(api, log, stop);
  program.bot = self.username;
  log.info('started', { bot: self.id });
  const heartbeat = new Heartbeat(join(settings.dataFolder, 'heartbeat.json'), now, log);
  const channel = new TelegramChannel({
    api,
    self,
    inbox: new Inbox(database),
    addresses: new Addresses(database, machineClock),
    desk: program.desk,
    log,
    now,
    atomically: (work) => program.atomically(work),
    passes: (fault) => fault instanceof LedgerFault,
    knows: (grower) => admission.knows(grower),
    hear,
    joined: (speaker) => program.joined(speaker),
    beat: () => heartbeat.beat(),
  });
  await program.serve(channel, stop, () => heartbeat.alive);
  heartbeat.stop();
  log.info('stopped');
}

async function serveTerminal({ settings, ledger, log, stop, program, hear }: Here): Promise<void> {
  if (settings.ledger !== undefined && !ledgerNamed(ledger.database, settings.ledger))
    throw new StartFault(`SLIPNOTE_LEDGER is "${settings.ledger}": there is no ledger of that name.`);
  const terminal = new Terminal({
    input: process.stdin,
    output: process.stdout,
    interactive: Boolean(process.stdin.isTTY),
    name: userInfo().username,
    now,
    desk: program.desk,
    allSaid: () => program.allSaid(),
    failed: (fault) => {
      log.error('note set aside', traced(fault));
      return channelWords.setAside;
    },
    save: (name, bytes) => savePaper(settings.dataFolder, name, bytes),
    hear: hearingFiles(hear),
  });
  await program.serve(terminal, stop);
}

/** Asks the Bot API who the bot is, again and again while it cannot be reached; a token that it refuses ends the start. */
async function introduce(api: BotApi, log: Log, stop: AbortSignal): Promise<BotSelf> {
  const { BotFault } = await import('./channels/telegram.js');
  for (let failures = 0; ; failures++) {
    try {
      return await api.me();
    } catch (fault) {
      if (!(fault instanceof BotFault)) throw fault;
      if (fault.kind === 'badToken')
        throw new StartFault(
          `BOT_TOKEN is refused by the Bot API (${fault.why}): set it to the token that BotFather gave, whole.`,
        );
      log.warn('Bot API not reached', { why: fault.why, failures: failures + 1 });
      const waitMs = fault.waitSeconds * 1000 || Math.min(500 * 2 ** Math.min(failures, 10), 30_000);
      await sleep(waitMs, undefined, { signal: stop });
    }
  }
}

function policyOf(growers: Growers): AdmissionPolicy {
  return growers.kind === 'listed'
    ? { kind: 'listed', ids: growers.ids.map((id) => `telegram:${id}`) }
    : growers;
}

function savePaper(dataFolder: string, name: string, bytes: Uint8Array): string {
  const folder = join(dataFolder, 'papers');
  mkdirSync(folder, { recursive: true });
  const path = join(folder, basename(name));
  writeFileSync(path, bytes);
  return path;
}

function end(stop: AbortController, log: Log): void {
  if (stop.signal.aborted) return;
  stop.abort();
  setTimeout(() => {
    log.warn('stopped with a sending in hand');
    process.exit(0);
  }, END_MS).unref();
}

/** Without the message, which may quote a note. */
function crash(log: Log, fault: unknown): never {
  log.error('crashed', traced(fault));
  process.exit(1);
}

try {
  await main();
} catch (fault) {
  if (fault instanceof Error && fault.name === 'AbortError') process.exitCode = 0;
  else if (fault instanceof SettingsFault || fault instanceof LedgerFault || fault instanceof StartFault) {
    process.stderr.write(`${fault.message}\n`);
    process.exitCode = 1;
  } else throw fault;
}
