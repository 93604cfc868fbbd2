/** A note end to end (taken, read, posted, reply queued), beside a bare grammy echo that makes one insert as durable. */
import { once } from 'node:events';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Bot } from 'grammy';
import type { Update } from 'grammy/types';
import { machineClock } from '../../calendar/clock.js';
import type { BotApi } from '../../channels/telegram.js';
import { TelegramChannel } from '../../channels/telegram-channel.js';
import { Admission } from '../../conversation/settings/admission.js';
import { openDatabase } from '../../ledger/database.js';
import { migrate } from '../../ledger/migrations.js';
import { silentLog } from '../../log.js';
import { Addresses } from '../../post/addresses.js';
import { Inbox } from '../../post/inbox.js';
import { Program } from '../../program.js';
import { fakeBot } from '../fake-bot-api/calls.js';
import { fakeToken } from '../fake-bot-api/fake-bot-api.js';
import { type Measurement } from './measurement.js';

const NOTES = 600;
const GROWERS = 30;
const BATCH = 100;

export async function notesInHand(): Promise<readonly Measurement[]> {
  const folder = mkdtempSync(join(tmpdir(), 'slipnote-bench-'));
  try {
    // Warmed up, then measured in turns, since the disk's own pace swings from second to second.
    await ours(folder, 'warm', NOTES, BATCH);
    await echo(folder, 'warm', NOTES, BATCH);
    const one = { ours: await ours(folder, 'one', NOTES, 1), echo: await echo(folder, 'one', NOTES, 1) };
    const burst = {
      ours: await ours(folder, 'burst', NOTES, BATCH),
      echo: await echo(folder, 'burst', NOTES, BATCH),
    };
    const against = 'bare grammy echo, one FULL insert each';
    return [
      {
        name: 'notes with one in flight',
        unit: 'per second',
        ours: one.ours,
        baseline: one.echo,
        against,
        aim: 'at least half',
      },
      {
        name: 'notes in a burst',
        unit: 'per second',
        ours: burst.ours,
        baseline: burst.echo,
        against,
        aim: 'at least half',
      },
      {
        name: 'notes in a burst',
        unit: 'per second',
        ours: burst.ours,
        baseline: 30,
        against: "the Bot API's own ceiling",
        aim: 'ten times',
      },
    ];
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** Notes a second through inbox, reader, ledger and outbox, `atOnce` in a poll. */
async function ours(folder: string, name: string, notes: number, atOnce: number): Promise<number> {
  const database = openDatabase(join(folder, `ours-${name}.sqlite`));
  migrate(database, name);
  const admission = new Admission(database, { kind: 'anyone' }, () => 0);
  const runErrand = () => Promise.resolve(null);
  const program = new Program({
    database,
    clock: machineClock,
    log: silentLog,
    zone: 'Europe/London',
    admission,
    runErrand,
  });
  const stop = new AbortController();
  const polls = batchesOf(updates(notes), atOnce);
  const settled = () =>
    database.get<{ n: number }>('SELECT count(*) AS n FROM inbox WHERE settled_at IS NULL')?.n === 0;
  let begunAt = 0;
  let took = 0;
  const api = {
    ...quietApi(once(stop.signal, 'abort')),
    updates: async (): Promise<Update[]> => {
      if (begunAt === 0) begunAt = performance.now();
      // The next poll comes when what the last one brought is dealt with, as with one in flight.
      while (!settled()) await new Promise((resolve) => setImmediate(resolve));
      const next = polls.shift();
      if (next) return next;
      took = performance.now() - begunAt;
      stop.abort();
      return [];
    },
  };
  const channel = new TelegramChannel({
    api,
    self: fakeBot,
    inbox: new Inbox(database),
    addresses: new Addresses(database, machineClock),
    desk: program.desk,
    log: silentLog,
    now: () => machineClock.now(),
    atomically: (work) => program.atomically(work),
    passes: () => false,
    knows: () => true,
    joined: () => undefined,
    hear: () => Promise.resolve({ other: 'voice' }),
    beat: () => undefined,
  });
  await program.serve(channel, stop.signal, () => false);
  await program.stop();
  const lines = database.get<{ n: number }>('SELECT count(*) AS n FROM journal')?.n;
  database.close();
  if (lines !== notes) throw new Error(`${notes} notes made ${lines} lines`);
  return (notes / took) * 1000;
}

/** A reply is done when it is queued: nothing goes out until all has been measured. */
function quietApi(measured: Promise<unknown>): Omit<BotApi, 'updates'> {
  return {
    me: () => Promise.resolve(fakeBot),
    deleteWebhook: () => Promise.resolve(),
    sendText: () => measured.then(() => 1),
    sendFile: () => measured.then(() => 1),
    showMaking: () => Promise.resolve(),
    answerTap: () => Promise.resolve(),
    setCommands: () => Promise.resolve(),
    fetchFile: () => Promise.resolve(new Uint8Array()),
  };
}

/** Notes a second through grammy's own middleware with an insert and a reply that goes nowhere. */
async function echo(folder: string, name: string, notes: number, atOnce: number): Promise<number> {
  const database = openDatabase(join(folder, `echo-${name}.sqlite`));
  database.script('CREATE TABLE notes (id INTEGER PRIMARY KEY, text TEXT)');
  const bot = new Bot(fakeToken, {
    botInfo: {
      ...fakeBot,
      can_join_groups: true,
      can_read_all_group_messages: false,
      supports_inline_queries: false,
    } as never,
  });
  bot.api.config.use(() => Promise.resolve({ ok: true, result: true }) as never);
  bot.on('message:text', async (context) => {
    database.run('INSERT INTO notes (text) VALUES (?)', context.message.text);
    await context.reply(context.message.text);
  });
  const begunAt = performance.now();
  for (const batch of batchesOf(updates(notes), atOnce))
    await Promise.all(batch.map((update) => bot.handleUpdate(update)));
  const took = performance.now() - begunAt;
  database.close();
  return (notes / took) * 1000;
}

function updates(count: number): Update[] {
  const now = Math.floor(machineClock.now() / 1000);
  return Array.from({ length: count }, (_, index) => {
    const id = 1_000 + (index % GROWERS);
    return {
      update_id: 1 + index,
      message: {
        message_id: 1 + index,
        date: now - (count - index) * 61,
        text: `took ${2 + (index % 9)} tip cuttings of Ember Fox dahlia in one pot`,
        from: { id, is_bot: false, first_name: 'Bea' },
        chat: { id, type: 'private', first_name: 'Bea' },
      },
    };
  });
}

function batchesOf<T>(list: readonly T[], size: number): T[][] {
  return Array.from({ length: Math.ceil(list.length / size) }, (_, index) =>
    list.slice(index * size, (index + 1) * size),
  );
}
