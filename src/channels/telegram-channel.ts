/** Telegram as a channel: updates into the inbox and, a chat at a time, to the desk; letters out. */
import type { Incoming, Outgoing, WhyUnheard } from '../conversation/turn.js';
import { type Log, traced } from '../log.js';
import type { Addresses } from '../post/addresses.js';
import type { Sent } from '../post/delivery.js';
import type { Arrival, Inbox } from '../post/inbox.js';
import type { WaitingLetter } from '../post/outbox.js';
import { telegramPace } from '../post/pace.js';
import { Turns, type Work } from '../post/turns.js';
import { channelWords } from '../words/channel-words.js';
import { soundLimits } from '../voice/transcriber.js';
import type { Channel } from './channel.js';
import { chatCommands } from './chat-commands.js';
import type { Desk } from './desk.js';
import { type BotApi, BotFault, type Update } from './telegram.js';
import { repeatedly } from './repeatedly.js';
import { numberOf, sendLetter, telegramPieces } from './telegram-letters.js';
import { pollUpdates } from './telegram-poll.js';
import type { BotSelf } from './telegram-message.js';
import type { Received, SentFile } from './telegram-received.js';
import { readUpdate } from './telegram-update.js';

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
  readonly atomically: <T>(work: () => T) => T;
  /** Whether a fault passes by itself, a full disk for one, so that the same update is tried again. */
  readonly passes: (fault: unknown) => boolean;
  /** Whether someone may use the bot. */
  readonly knows: (grower: string) => boolean;
  readonly hear: Hear;
  /** Someone let the bot into a group. */
  readonly joined: (speaker: Pick<Incoming, 'chat' | 'from' | 'group' | 'title'>) => void;
  /** A poll got through. */
  readonly beat: () => void;
}

const FILE_BYTES = 10_000_000;
/**
 * Taken and not yet dealt with: past that, polling waits, and the Bot API keeps the rest. So many that a chat which
 * floods does not keep the others' messages from being seen; each is a kilobyte or so.
 */
const IN_HAND = 5_000;
/** After a signal, what was taken has this long to be dealt with; the rest is dealt with after the next start. */
const GRACE_MS = 1_500;

/** By what the sender says of it, before anything is fetched. */
function isTooMuch({ seconds, bytes }: SentFile): WhyUnheard | undefined {
  if (seconds !== undefined && seconds > soundLimits.seconds) return 'tooLong';
  return bytes !== undefined && bytes > FILE_BYTES ? 'tooLarge' : undefined;
}

export class TelegramChannel implements Channel {
  readonly name = 'telegram';
  readonly limits = telegramPace;
  private readonly turns: Turns;

  constructor(private readonly ports: TelegramPorts) {
    const { atomically, passes, log, desk } = ports;
    this.turns = new Turns({ atomically, passes, log, committed: () => desk.committed() });
  }

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

  async showMaking(chat: string, what: 'picture' | 'document', thread?: number): Promise<() => void> {
    const { api, log } = this.ports;
    const target = { chat: numberOf(chat), ...(thread !== undefined ? { thread } : {}) };
    return repeatedly(() =>
      api.showMaking(target, what).catch((fault: unknown) => log.debug('making not shown', traced(fault))),
    );
  }

  async run(stop: AbortSignal): Promise<void> {
    const { api, inbox, log, now, beat, self } = this.ports;
    const bot = String(self.id);
    this.prepare();
    const left = inbox.waiting(bot);
    if (left.length > 0) log.info('left from before', { count: left.length });
    this.turns.add(() => left.map((arrival) => this.workOf(arrival)));
    const take = async (arrivals: readonly Arrival[]): Promise<void> => {
      this.turns.add(() => inbox.take(arrivals, now()).map((arrival) => this.workOf(arrival)));
      beat();
      await this.turns.roomFor(IN_HAND);
    };
    await pollUpdates({ api, bot, log, take }, stop);
    await this.turns.stop(GRACE_MS);
  }

  /** Neither is needed for the conversation to go on, so that neither may hold it up. */
  private prepare(): void {
    const { api, log } = this.ports;
    const failed = (what: string) => (fault: unknown) => log.warn(what, traced(fault));
    api.deleteWebhook().catch(failed('webhook not deleted'));
    const commands = chatCommands.map(({ name, does }) => ({ command: name, description: does }));
    api.setCommands(commands).catch(failed('commands not set'));
  }

  private workOf(arrival: Arrival): Work {
    let received: Received | undefined;
    let readFault: unknown;
    try {
      received = readUpdate(JSON.parse(arrival.body) as Update, this.ports.self, this.ports.now());
    } catch (fault) {
      readFault = fault;
    }
    if (received?.kind === 'tapped') this.answerTap(received);
    let incoming = received && 'incoming' in received ? received.incoming : undefined;
    const said = received?.kind === 'said' && (received.voice ?? received.document) ? received : undefined;
    return {
      chat: arrival.chat,
      ...(said
        ? {
            prepare: async () => {
              incoming = { ...said.incoming, other: 'unknown' };
              incoming = await this.withFiles(said);
            },
          }
        : {}),
      run: () => {
        if (!received) throw readFault;
        this.deal(arrival, received, incoming);
      },
      failed: (fault) => this.setAside(arrival, fault, incoming),
    };
  }

  private deal(arrival: Arrival, received: Received, incoming: Incoming | undefined): void {
    const { inbox, addresses, desk, now } = this.ports;
    inbox.settle(arrival, now());
    switch (received.kind) {
      case 'said': {
        if (!incoming) return;
        const answers = incoming.replyTo && desk.keyOfMessage(incoming.chat, incoming.replyTo);
        return this.turn({ ...incoming, ...(answers ? { answers } : {}) }, received.thread);
      }
      case 'tapped': {
        const offer = desk.offerOf(received.incoming.chat, received.incoming.tap ?? '');
        if (!offer) return;
        return this.turn({ ...received.incoming, tap: offer.means, answers: offer.key }, received.thread);
      }
      case 'moved':
        return addresses.moved(received.chat, received.to);
      case 'closed':
        return addresses.closed(received.chat, 'left or blocked');
      case 'opened':
        return addresses.heardFrom(received.chat);
      case 'joined':
        addresses.heardFrom(received.speaker.chat);
        return this.ports.joined(received.speaker);
      case 'left':
        return addresses.left(received.chat, received.grower);
      case 'nothing':
        return;
    }
  }

  private turn(incoming: Incoming, thread: number | undefined): void {
    const { addresses, desk } = this.ports;
    desk.turn(incoming, () => addresses.heardFrom(incoming.chat, thread), thread);
  }

  private async withFiles({
    incoming,
    voice,
    document,
  }: Extract<Received, { kind: 'said' }>): Promise<Incoming> {
    // A stranger is turned away by the turn; nothing of theirs is fetched or listened to.
    if (!this.ports.knows(incoming.from.id)) return { ...incoming, other: 'unknown' };
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
  private setAside(arrival: Arrival, fault: unknown, incoming: Incoming | undefined): void {
    const { inbox, desk, log, now } = this.ports;
    log.error('update set aside', { update: arrival.updateId, ...traced(fault) });
    inbox.setAside(arrival, String(fault), now());
    if (incoming)
      desk.queue({
        chat: arrival.chat,
        key: `aside-${arrival.updateId}`,
        text: channelWords.setAside,
        replyTo: incoming.message,
      });
  }
}
