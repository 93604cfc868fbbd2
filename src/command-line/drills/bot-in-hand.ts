/** The whole bot in this process, on a ledger file of its own, its Bot API a few functions: for drills of very many updates. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { setTimeout as sleep } from 'node:timers/promises';
import { join } from 'node:path';
import { SetClock } from '../../calendar/clock.js';
import type { BotApi, SendTarget, Update } from '../../channels/telegram.js';
import { type Hear, TelegramChannel } from '../../channels/telegram-channel.js';
import { Admission } from '../../conversation/settings/admission.js';
import { runErrand } from '../../errands.js';
import { type Database, LedgerFault } from '../../ledger/database.js';
import { openLedgerFile } from '../../ledger/ledger-file.js';
import { createLog } from '../../log.js';
import { Addresses } from '../../post/addresses.js';
import { Inbox } from '../../post/inbox.js';
import { unhurried } from '../../post/pace.js';
import { Program } from '../../program.js';
import { fakeBot } from '../fake-bot-api/calls.js';

/** What reached a chat: words, buttons, a file's bytes as text, or the answer to a press. */
export interface Reached {
  /** Number of the chat, or null for the answer to a press, which has none. */
  readonly chat: number | null;
  readonly message: number;
  readonly replyTo?: number;
  readonly text: string;
  readonly buttons: readonly { readonly label: string; readonly data: string }[];
  readonly file: string;
}

export interface BotInHandPorts {
  readonly startsAt: number;
  /** Told of all that the bot says. */
  readonly reached: (what: Reached) => void;
  readonly hear?: Hear;
  /** Bytes that the Bot API hands out for a file's id. */
  readonly fileOf?: (id: string) => Uint8Array;
}

/** Telegram's pace would take an hour over what a drill says. */
class UnhurriedChannel extends TelegramChannel {
  override readonly limits = unhurried;
}

export class BotInHand {
  readonly clock: SetClock;
  /** Lines of the log. */
  readonly logged: string[] = [];
  /** Growers and ledgers whose erasure was begun; none of them is erased. */
  readonly erasures: string[] = [];
  readonly folder = mkdtempSync(join(tmpdir(), 'slipnote-'));
  readonly database: Database;
  /** Whether it speaks unasked. */
  speaksUnasked = false;
  private readonly ledger = openLedgerFile(this.folder);
  private readonly program: Program;
  private readonly stopping = new AbortController();
  private readonly running: Promise<void>;
  private batches: Update[][] = [];
  private poll: (() => void) | undefined;
  private nextMessage = 1_000_000;

  constructor(private readonly ports: BotInHandPorts) {
    const { hear = () => Promise.resolve({ other: 'voice', unheard: 'engineMissing' }) } = ports;
    const database = this.ledger.database;
    this.database = database;
    this.clock = new SetClock(ports.startsAt);
    const now = () => this.clock.now();
    const log = createLog({ level: 'info', write: (line) => void this.logged.push(line), now });
    const admission = new Admission(database, { kind: 'anyone' }, () => 0);
    const program: Program = new Program({
      database,
      clock: this.clock,
      log,
      zone: 'Europe/London',
      admission,
      runErrand: (errand, incoming) =>
        runErrand(errand, incoming, {
          admission,
          now,
          worldOf: (speaker) => program.worldOf(speaker),
          erase: (grower) => this.erased(grower),
          eraseShared: (shared) => this.erased(`ledger ${shared}`),
        }),
    });
    this.program = program;
    const channel = new UnhurriedChannel({
      api: this.api(),
      self: fakeBot,
      inbox: new Inbox(database),
      addresses: new Addresses(database, this.clock),
      desk: program.desk,
      log,
      now,
      atomically: (work) => program.atomically(work),
      passes: (fault) => fault instanceof LedgerFault,
      knows: () => true,
      joined: (speaker) => program.joined(speaker),
      hear,
      beat: () => undefined,
    });
    this.running = program.serve(channel, this.stopping.signal, () => this.speaksUnasked);
  }

  /** Resolves when these are dealt with and all that came of them was said. */
  async take(updates: readonly Update[]): Promise<void> {
    this.batches.push([...updates]);
    this.poll?.();
    await this.settled();
  }

  async settled(): Promise<void> {
    while (this.batches.length > 0 || this.waits()) await sleep(0);
    await this.program.allSaid();
  }

  async end(): Promise<void> {
    this.stopping.abort();
    this.poll?.();
    await this.running;
    await this.program.stop();
    this.ledger.close();
    rmSync(this.folder, { recursive: true, force: true });
  }

  private erased(whose: string) {
    this.erasures.push(whose);
    return { ledgers: 0, lines: 0, copiesRewritten: 0, copiesDropped: 0 };
  }

  private waits(): boolean {
    return this.database.get('SELECT 1 FROM inbox WHERE settled_at IS NULL LIMIT 1') !== undefined;
  }

  private api(): BotApi {
    const reach = (target: SendTarget, text: string, file = ''): Promise<number> => {
      const message = this.nextMessage++;
      this.ports.reached({
        chat: target.chat,
        message,
        text,
        buttons: (target.buttons ?? []).flat(),
        file,
        ...(target.replyTo !== undefined ? { replyTo: target.replyTo } : {}),
      });
      return Promise.resolve(message);
    };
    return {
      me: () => Promise.resolve(fakeBot),
      updates: async () => {
        while (this.batches.length === 0 && !this.stopping.signal.aborted)
          await new Promise<void>((resolve) => (this.poll = resolve));
        return this.batches.shift() ?? [];
      },
      showMaking: () => Promise.resolve(),
      deleteWebhook: () => Promise.resolve(),
      sendText: reach,
      sendFile: (target, { bytes }, caption) => reach(target, caption, Buffer.from(bytes).toString('latin1')),
      answerTap: (_, text = '') => {
        this.ports.reached({ chat: null, message: 0, text, buttons: [], file: '' });
        return Promise.resolve();
      },
      setCommands: () => Promise.resolve(),
      fetchFile: (id) => Promise.resolve(this.ports.fileOf?.(id) ?? new Uint8Array()),
    };
  }
}
