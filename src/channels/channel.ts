/** What every channel does: takes in what growers say, and brings them what is said. */
import type { Outgoing } from '../conversation/turn.js';
import type { WaitingLetter } from '../post/outbox.js';
import type { Sent } from '../post/delivery.js';
import type { PaceLimits } from '../post/pace.js';

export interface Channel {
  /** What stands before the colon of its chats' ids. */
  readonly name: string;
  readonly limits: PaceLimits;
  isGroup(chat: string): boolean;
  /** Messages as the channel can carry them, each under a key of its own; buttons stay with the last. */
  pieces(outgoing: Outgoing): readonly Outgoing[];
  send(letter: WaitingLetter): Promise<Sent>;
  /** Shows in a chat that a picture or paper is being made, until what it answers is called. */
  showMaking?(chat: string, what: 'picture' | 'document', thread?: number): Promise<() => void>;
  /** Takes in until the signal, or the end of what comes in; what was taken by then is dealt with. */
  run(stop: AbortSignal): Promise<void>;
}
