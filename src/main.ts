/** Builds the real things and introduces them to each other; one clear line and exit 1 where that cannot be. */
import { randomInt } from 'node:crypto';
import { mkdirSync, writeFileSync } from 'node:fs';
import { userInfo } from 'node:os';
import { basename, join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { machineClock } from './calendar/clock.js';
import type { Channel } from './channels/channel.js';
import { Desk } from './channels/desk.js';
import { type BotApi, BotFault, connectBot } from './channels/telegram.js';
import { TelegramChannel } from './channels/telegram-channel.js';
import type { BotSelf } from './channels/telegram-update.js';
import { Terminal } from './channels/terminal.js';
import { Admission, spacedCode } from './conversation/admission.js';
import { keptBooks } from './conversation/kept-books.js';
import type { Incoming } from './conversation/turn.js';
import { chatById } from './ledger/chats.js';
import { LedgerFault } from './ledger/database.js';
import { type LedgerFile, openLedgerFile } from './ledger/ledger-file.js';
import { firstLedger, ledgerNamed } from './ledger/ledgers.js';
import { createLog, type Log, traced } from './log.js';
import { Addresses } from './post/addresses.js';
import { Delivery } from './post/delivery.js';
import { Heartbeat } from './post/heartbeat.js';
import { Inbox } from './post/inbox.js';
import { Outbox } from './post/outbox.js';
import { Waking } from './post/waking.js';
import { type Growers, readSettings, type Settings, SettingsFault } from './settings.js';
import { channelWords } from './words/channel-words.js';
import { doorWords } from './words/door-words.js';

/** After a signal: replies to what was taken get this long, then all ends; what is left is kept for the next start. */
const LAST_REPLIES_MS = 2_000;
const END_MS = 4_500;

/** The start cannot be; the message is one line that says what to do. */
class StartFault extends Error {}

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
  const atomically = <T>(work: () => T): T => database.transaction(work);
  const outbox = new Outbox(database);
  const admission = new Admission(database, policyOf(settings.growers), randomInt);
  const desk = new Desk({
    outbox,
    now,
    atomically,
    takeTurn: (incoming) => takeTurn(incoming),
    pieces: (said) => (said.chat.split(':')[0] === channel.name ? channel.pieces(said) : []),
    threadOf: (chat) => chatById(database, chat)?.thread,
    queued: () => delivery.wake(),
  });
  const books = keptBooks({
    database,
    queue: (ledgerId, said) => desk.queue(said, ledgerId),
    ...(settings.ledger !== undefined ? { terminalLedger: settings.ledger } : {}),
  });

  const takeTurn = (incoming: Incoming): void => {
    if (channel.name !== 'terminal') {
      const admitted = admission.admit(incoming, now());
      if (!admitted.in) {
        if (admitted.say !== null)
          desk.queue({ chat: incoming.chat, key: `door-${incoming.message}`, text: admitted.say });
        return;
      }
    }
    const { id } = books.ledgerOf(incoming.chat, incoming.from, incoming.group, incoming.at);
    const line = books.linesAfter(id, 0).length + 1;
    const date = '2026-01-01' as never;
    books.append(id, {
      line,
      at: incoming.at,
      postedAt: now(),
      by: incoming.from.name,
      source: { chat: incoming.chat, message: incoming.message },
      what: { kind: 'remark', text: incoming.text ?? '', date },
    });
    desk.queue(
      { chat: incoming.chat, key: `noted-${incoming.message}`, text: `Noted: ${incoming.text}` },
      id,
    );
    waking.touched(id);
  };

  const waking = new Waking({
    database,
    clock: machineClock,
    log,
    look: () => null,
    queued: () => delivery.wake(),
  });
  const channel: Channel = settings.botToken ? await telegram(settings.botToken) : terminal();
  const delivery = new Delivery({
    channel: channel.name,
    database,
    outbox,
    clock: machineClock,
    log,
    limits: channel.limits,
    isGroup: (chat) => channel.isGroup(chat),
    send: (letter) => channel.send(letter),
    recheck: () => 'holds',
  });
  atomically(() => firstLedger(database, now()));
  delivery.start();
  waking.start();
  await channel.run(stop);
  waking.stop();
  await Promise.race([delivery.settled(), sleep(LAST_REPLIES_MS, undefined, { ref: false })]);
  await delivery.stop();
  if (channel.name !== 'terminal') log.info('stopped');

  async function telegram(token: string): Promise<Channel> {
    const api = connectBot({ token, root: settings.botApiRoot });
    const code = atomically(() => admission.ownerCode(now()));
    if (code !== null) process.stdout.write(`${doorWords.ownerCode(spacedCode(code))}\n`);
    const self = await introduce(api, log, stop);
    log.info('started', { bot: self.id });
    const heartbeat = new Heartbeat(join(settings.dataFolder, 'heartbeat.json'), now, log);
    return new TelegramChannel({
      api,
      self,
      inbox: new Inbox(database),
      addresses: new Addresses(database, machineClock),
      desk,
      log,
      now,
      atomically,
      passes: (fault) => fault instanceof LedgerFault,
      wake: () => delivery.wake(),
      beat: () => heartbeat.beat(),
    });
  }

  function terminal(): Channel {
    if (settings.ledger !== undefined && !ledgerNamed(database, settings.ledger))
      throw new StartFault(`SLIPNOTE_LEDGER is "${settings.ledger}": there is no ledger of that name.`);
    return new Terminal({
      input: process.stdin,
      output: process.stdout,
      interactive: Boolean(process.stdin.isTTY),
      name: userInfo().username,
      now,
      desk,
      allSaid: () => delivery.settled(),
      failed: (fault) => {
        log.error('note set aside', traced(fault));
        return channelWords.setAside;
      },
      save: (name, bytes) => savePaper(settings.dataFolder, name, bytes),
    });
  }
}

/** Asks the Bot API who the bot is, again and again while it cannot be reached; a token that it refuses ends the start. */
async function introduce(api: BotApi, log: Log, stop: AbortSignal): Promise<BotSelf> {
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
      await sleep(
        fault.waitSeconds * 1000 || Math.min(500 * 2 ** Math.min(failures, 10), 30_000),
        undefined,
        {
          signal: stop,
        },
      );
    }
  }
}

function policyOf(growers: Growers): ConstructorParameters<typeof Admission>[1] {
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
