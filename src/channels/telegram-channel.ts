/** Telegram as a channel: updates into the inbox and, a chat at a time, to the desk; letters out. */
import { setImmediate as othersFirst, setTimeout as sleep } from 'node:timers/promises';
import type { Incoming, Outgoing, WhyUnheard } from '../conversation/turn.js';
import { type Log, traced } from '../log.js';
import type { Addresses } from '../post/addresses.js';
import { Chains } from '../post/chains.js';
import type { Sent } from '../post/delivery.js';
import type { Arrival, Inbox } from '../post/inbox.js';
import type { WaitingLetter } from '../post/outbox.js';
import { telegramPace } from '../post/pace.js';
import { channelWords } from '../words/channel-words.js';
import { soundLimits } from '../voice/transcriber.js';
import type { Channel } from './channel.js';
import { chatCommands } from './chat-commands.js';
import type { Desk } from './desk.js';
import { type BotApi, BotFault, type Update } from './telegram.js';
import { sendLetter, telegramPieces } from './telegram-letters.js';
import { pollUpdates } from './telegram-poll.js';
import { type BotSelf, type Received, readUpdate, type SentFile } from './telegram-update.js';

/** What a voice note says, with the probability of each word, or why it cannot be heard. */
export type Hear = (
  incoming: Incoming,
  audio: Uint8Array,
) => Promise<Pick<Incoming, 'heard' | 'other' | 'unheard'>>;

export interface TelegramPorts {
  readonly api: BotApi;
  readonly self: BotSelf;
  readonly inbox: Inbox;
  readonly addresses: Addresses;
  readonly desk: Desk;
  readonly log: Log;
  readonly now: () => number;
  readonly atomically: (work: () => void) => void;
  /** Whether a fault passes by itself, a full disk for one, so that the same update is tried again. */
  readonly passes: (fault: unknown) => boolean;
  readonly hear: Hear;
  /** Something may be sent that could not before. */
  readonly wake: () => void;
  readonly beat: () => void;
}

const FILE_BYTES = 10_000_000;
/**
 * Taken and not yet dealt with: past that, polling waits, and the Bot API keeps the rest. So many that a chat which
 * floods does not keep the others' messages from being seen; each is a kilobyte or so.
 */
const IN_HAND = 5_000;
const RETRY_MS = 5_000;

/** By what the sender says of it, before anything is fetched. */
function isTooMuch({ seconds, bytes }: SentFile): WhyUnheard | undefined {
  if (seconds !== undefined && seconds > soundLimits.seconds) return 'tooLong';
  return bytes !== undefined && bytes > FILE_BYTES ? 'tooLarge' : undefined;
}

export class TelegramChannel implements Channel {
  readonly name = 'telegram';
  readonly limits = telegramPace;
  private readonly chains = new Chains();
  private inHand = 0;
  private roomAgain: (() => void) | undefined;

  constructor(private readonly ports: TelegramPorts) {}

  /** Groups have negative ids. */
  isGroup(chat: string): boolean {
    return chat.startsWith('telegram:-');
  }

  pieces(outgoing: Outgoing): readonly Outgoing[] {
    return telegramPieces(outgoing);
  }

  send(letter: WaitingLetter): Promise<Sent> {
    return sendLetter(this.ports.api, letter);
  }

  async run(stop: AbortSignal): Promise<void> {
    const { api, inbox, log, now, beat, self } = this.ports;
    const bot = String(self.id);
    this.prepare();
    inbox.prune(now());
    const left = inbox.waiting(bot);
    if (left.length > 0) log.info('left from before', { count: left.length });
    this.handleAll(left, stop);
    await pollUpdates(
      { api, bot, inbox, log, now, beat, taken: (arrivals) => this.take(arrivals, stop) },
      stop,
    );
    await this.chains.finished();
  }

  /** Neither is needed for the conversation to go on, so that neither may hold it up. */
  private prepare(): void {
    const { api, log } = this.ports;
    const failed = (what: string) => (fault: unknown) => log.warn(what, traced(fault));
    api.deleteWebhook().catch(failed('webhook not deleted'));
    const commands = chatCommands.map(({ name, does }) => ({ command: name, description: does }));
    api.setCommands(commands).catch(failed('commands not set'));
  }

  private async take(arrivals: readonly Arrival[], stop: AbortSignal): Promise<void> {
    this.handleAll(arrivals, stop);
    if (this.inHand > IN_HAND) await new Promise<void>((resolve) => (this.roomAgain = resolve));
  }

  private handleAll(arrivals: readonly Arrival[], stop: AbortSignal): void {
    for (const arrival of arrivals) {
      this.inHand++;
      const received = this.read(arrival);
      if (received?.kind === 'tapped') this.answerTap(received);
      if (received?.kind === 'said' && received.voice) void this.hearFirst(arrival, received, stop);
      else void this.chains.add(arrival.chat, () => this.handle(arrival, received, stop));
    }
  }

  /** Recognition takes seconds: the chat's other messages don't wait for it. */
  private async hearFirst(
    arrival: Arrival,
    received: Extract<Received, { kind: 'said' }>,
    stop: AbortSignal,
  ): Promise<void> {
    let ready: Received | null = null;
    try {
      const incoming = await this.withFiles(received);
      ready = {
        kind: 'said',
        incoming,
        ...(received.thread !== undefined ? { thread: received.thread } : {}),
      };
    } catch (fault) {
      this.setAside(arrival, fault, received);
    }
    await this.chains.add(arrival.chat, () => this.handle(arrival, ready, stop));
  }

  /** Null where it was set aside. */
  private read(arrival: Arrival): Received | null {
    try {
      return readUpdate(JSON.parse(arrival.body) as Update, this.ports.self, this.ports.now());
    } catch (fault) {
      this.setAside(arrival, fault);
      return null;
    }
  }

  private async handle(arrival: Arrival, received: Received | null, stop: AbortSignal): Promise<void> {
    // Messages of other chats, sendings and the stop get their turn in between.
    await othersFirst();
    while (received && !stop.aborted) {
      try {
        await this.deal(arrival, received);
        break;
      } catch (fault) {
        if (!this.ports.passes(fault)) {
          this.setAside(arrival, fault, received);
          break;
        }
        this.ports.log.error('update waits', { ...traced(fault), update: arrival.updateId });
        await sleep(RETRY_MS, undefined, { signal: stop }).catch(() => undefined);
      }
    }
    if (--this.inHand <= IN_HAND) this.roomAgain?.();
  }

  private async deal(arrival: Arrival, received: Received): Promise<void> {
    const { inbox, addresses, atomically, desk, now, wake } = this.ports;
    const settle = () => inbox.settle(arrival, now());
    switch (received.kind) {
      case 'said': {
        const incoming = await this.withFiles(received);
        const answers =
          received.incoming.replyTo && desk.keyOfMessage(incoming.chat, received.incoming.replyTo);
        this.turn({ ...incoming, ...(answers ? { answers } : {}) }, received.thread, settle);
        return wake();
      }
      case 'tapped': {
        const offer = desk.offerOf(received.incoming.chat, received.incoming.tap ?? '');
        if (!offer) return settle();
        return this.turn(
          { ...received.incoming, tap: offer.means, answers: offer.key },
          received.thread,
          settle,
        );
      }
      case 'moved':
        return atomically(() => {
          addresses.moved(received.chat, received.to);
          settle();
        });
      case 'closed':
        return atomically(() => {
          addresses.closed(received.chat, 'left or blocked');
          settle();
        });
      case 'opened':
        atomically(() => {
          addresses.heardFrom(received.chat);
          settle();
        });
        return wake();
      case 'nothing':
        return settle();
    }
  }

  private turn(incoming: Incoming, thread: number | undefined, settle: () => void): void {
    const { addresses, desk } = this.ports;
    const heard = () => {
      addresses.heardFrom(incoming.chat, thread);
      settle();
    };
    desk.turn(incoming, heard, thread);
  }

  private async withFiles(received: Extract<Received, { kind: 'said' }>): Promise<Incoming> {
    const { incoming, voice, document } = received;
    if (document) {
      const bytes = await this.fetched(document);
      return bytes
        ? { ...incoming, document: { name: document.name, bytes } }
        : { ...incoming, other: 'unknown' };
    }
    if (!voice) return incoming;
    const audio = isTooMuch(voice) ? null : await this.fetched(voice);
    if (!audio) return { ...incoming, other: 'voice', unheard: isTooMuch(voice) ?? 'notFetched' };
    return { ...incoming, ...(await this.ports.hear(incoming, audio)) };
  }

  /** Null where it is too large or cannot be had. */
  private async fetched(file: SentFile): Promise<Uint8Array | null> {
    try {
      return await this.ports.api.fetchFile(file.fileId, FILE_BYTES);
    } catch (fault) {
      if (!(fault instanceof BotFault)) throw fault;
      this.ports.log.warn('file not fetched', { kind: fault.kind, why: fault.why });
      return null;
    }
  }

  /** A press is kept 150 seconds only: it is answered before the chat's queue. */
  private answerTap({ tapId, incoming }: Extract<Received, { kind: 'tapped' }>): void {
    const { api, desk, log } = this.ports;
    const known = desk.offerOf(incoming.chat, incoming.tap ?? '') !== undefined;
    if (!known) log.warn('press of a button that was not offered');
    api
      .answerTap(tapId, known ? undefined : channelWords.oldButton)
      .catch((fault: unknown) => log.debug('press not answered', traced(fault)));
  }

  /** Kept with its fault, and told to the chat, so that the grower can say it otherwise; the rest goes on. */
  private setAside(arrival: Arrival, fault: unknown, received?: Received): void {
    const { inbox, desk, log, now, atomically } = this.ports;
    log.error('update set aside', { update: arrival.updateId, ...traced(fault) });
    try {
      atomically(() => {
        inbox.setAside(arrival, String(fault), now());
        if (received?.kind === 'said' || received?.kind === 'tapped')
          desk.say({
            chat: arrival.chat,
            key: `aside-${arrival.updateId}`,
            text: channelWords.setAside,
            replyTo: received.incoming.message,
          });
      });
    } catch (second) {
      // It stays in the inbox and comes again at the next start.
      log.error('update not set aside', { update: arrival.updateId, ...traced(second) });
    }
  }
}
