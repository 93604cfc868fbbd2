/** Judges what came of the hostile drill: in the ledgers, among the updates set aside, and in what was said. */
import type { Update } from '../../../channels/telegram.js';
import type { BotInHand, Reached } from '../bot-in-hand.js';
import { mustHold } from '../drill.js';
import { Expectations } from './expectations.js';
import { corners, secretsFrom } from './people.js';
import { letters } from './texts.js';
import { messageLeft } from './wrong-types.js';

/** What no reply may hold: a program's own words. */
const INNARDS = /\[object |native code|undefined|TypeError|SQLITE/;

/** `chat message` of an update, as the journal names them. */
function keyOf(json: string): string {
  const { chat, message_id: number } = messageLeft(JSON.parse(json) as object);
  return `telegram:${String(chat?.id)} ${String(number)}`;
}

export class Judge {
  readonly expectations = new Expectations((key) => this.shown(key));
  /** All that the bot said. */
  readonly reached: Reached[] = [];
  /** Updates as JSON. */
  private readonly sent: string[] = [];
  /** Numbers of updates that the Bot API would never send. */
  private readonly mayBeSetAside = new Set<number>();
  /** Texts that ought to be answered, as `chat message`. */
  private readonly unanswered = new Set<string>();

  /** These are about to be sent. */
  sees(updates: readonly Update[]): void {
    this.sent.push(...updates.map((update) => JSON.stringify(update)));
  }

  /** The bot said this. */
  hears(what: Reached): void {
    this.reached.push(what);
    this.unanswered.delete(`${what.chat} ${what.replyTo}`);
  }

  /** The bot must say something to that message. */
  mustAnswer(chat: number, message: number): void {
    this.unanswered.add(`${chat} ${message}`);
  }

  /** The update of that number is none that the Bot API would send. */
  maySetAside(updateId: number): void {
    this.mayBeSetAside.add(updateId);
  }

  /** Throws `DrillFailed` where something did not hold; else what was seen. */
  hold({ database, erasures }: Pick<BotInHand, 'database' | 'erasures'>): string {
    const { honest, other } = this.expectations.hold(database);
    for (const each of this.reached) this.holdReached(each);
    const aside = database.all<{ update_id: number; fault: string }>(
      'SELECT update_id, fault FROM inbox WHERE fault IS NOT NULL',
    );
    const defeated = aside.filter(({ update_id }) => !this.mayBeSetAside.has(update_id));
    mustHold(
      defeated.length === 0,
      () => `well-formed updates set aside: ${JSON.stringify(defeated.slice(0, 3))}`,
    );
    mustHold(
      this.unanswered.size === 0,
      () =>
        `texts without an answer: ${[...this.unanswered].slice(0, 3).map((key) => this.shown(`telegram:${key}`))}`,
    );
    mustHold(erasures.length === 0, () => 'a ledger was erased');
    return `${aside.length} malformed ones set aside, ${other} entries of notes in disguise and no others, all of ${honest} good notes between them, ${this.reached.length} messages without a foreign name`;
  }

  /** The update of that `chat message`. */
  private shown(key: string): string {
    return this.sent.findLast((update) => keyOf(update) === key) ?? 'nothing';
  }

  private holdReached({ chat, text, buttons, file }: Reached): void {
    const said = [text, ...buttons.flatMap(({ label, data }) => [label, data]), file].join('\n');
    const corner = corners.find((each) => each.chat === chat);
    // The answer to a press is the same for all: it names nothing of anybody's.
    const secrets = corner ? secretsFrom(corner) : corners.flatMap(({ varieties }) => varieties);
    const plain = letters(said);
    for (const secret of secrets)
      mustHold(
        !plain.includes(letters(secret)),
        () => `chat ${chat} read of ${secret}: ${said.slice(0, 500)}`,
      );
    mustHold(!INNARDS.test(text), () => `a reply shows the program's innards: ${text.slice(0, 500)}`);
    mustHold(text.length <= 4096, () => `a message of ${text.length} characters`);
  }
}
