/** The conversation on standard input and output: a chat with a prompt, or one note a line where input is no terminal. */
import { createInterface, type Interface } from 'node:readline';
import type { Readable, Writable } from 'node:stream';
import type { Incoming, Outgoing } from '../conversation/turn.js';
import type { Sent } from '../post/delivery.js';
import type { WaitingLetter } from '../post/outbox.js';
import { unhurried } from '../post/pace.js';
import type { Channel } from './channel.js';
import { noteOfCommand } from './chat-commands.js';
import type { Desk } from './desk.js';
import { sayingOf } from './letter.js';

export const terminalChat = 'terminal';

export interface TerminalPorts {
  readonly input: Readable;
  readonly output: Writable;
  /** Whether someone sits at it. */
  readonly interactive: boolean;
  readonly name: string;
  readonly now: () => number;
  readonly desk: Desk;
  /** Resolves when what was queued has been said. */
  readonly allSaid: () => Promise<void>;
  /** Tells of a turn that failed, and answers what the grower is told. */
  readonly failed: (fault: unknown) => string;
  /** Keeps a picture or paper and answers where. */
  readonly save: (name: string, bytes: Uint8Array) => string;
  /** What the sound file of that path says; null where the line is no path to a sound file. */
  readonly hear: (line: string, incoming: Incoming) => Promise<Partial<Incoming> | null>;
}

export class Terminal implements Channel {
  readonly name = terminalChat;
  readonly limits = unhurried;
  private lines: Interface | undefined;
  private sequence = 0;
  private readonly startedAt: number;

  constructor(private readonly ports: TerminalPorts) {
    this.startedAt = ports.now();
  }

  isGroup(): boolean {
    return false;
  }

  pieces(outgoing: Outgoing): readonly Outgoing[] {
    return [outgoing];
  }

  /** Prints what is said, with its buttons' words under it. */
  send(letter: WaitingLetter): Promise<Sent> {
    const { text, buttons, file } = sayingOf(letter);
    const parts = [text.trim()];
    if (file) parts.push(`(${this.ports.save(file.name, file.bytes)})`);
    for (const row of buttons ?? []) parts.push(row.map(({ label }) => `[${label}]`).join(' '));
    this.print(parts.filter((part) => part !== '').join('\n'));
    return Promise.resolve({ outcome: 'arrived' });
  }

  async run(stop: AbortSignal): Promise<void> {
    const { input, output, interactive, allSaid } = this.ports;
    const lines = createInterface({
      input,
      crlfDelay: Infinity,
      ...(interactive ? { output, prompt: '> ' } : { terminal: false }),
    });
    this.lines = lines;
    const close = () => lines.close();
    stop.addEventListener('abort', close, { once: true });
    if (interactive) {
      lines.on('SIGINT', close);
      await this.take('/start');
      lines.prompt();
    }
    for await (const line of lines) {
      if (stop.aborted) break;
      if (line.trim() !== '') await this.take(line);
      if (interactive) lines.prompt();
    }
    await allSaid();
    stop.removeEventListener('abort', close);
    this.lines = undefined;
  }

  private async take(line: string): Promise<void> {
    const { desk, now, name, allSaid, failed, hear } = this.ports;
    const incoming: Incoming = {
      chat: terminalChat,
      group: false,
      from: { id: terminalChat, name },
      message: `${this.startedAt}.${++this.sequence}`,
      at: now(),
    };
    try {
      desk.turn({ ...incoming, ...((await hear(line, incoming)) ?? { text: noteOfCommand(line) }) });
      desk.committed();
    } catch (fault) {
      this.print(failed(fault));
    }
    await allSaid();
  }

  /** Leaves the line that is being typed below what is printed. */
  private print(text: string): void {
    const { output, interactive } = this.ports;
    if (!interactive || !this.lines) return void output.write(`${text}\n`);
    output.write(`\r\u001B[K${text}\n`);
    this.lines.prompt(true);
  }
}
