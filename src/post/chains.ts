/** Work of one chat in the order in which it came, that of different chats side by side. */

export class Chains {
  private readonly tails = new Map<string, Promise<void>>();

  /** Runs `work` after all that was given before for the same chat; `work` deals with its own faults. */
  add(chat: string, work: () => Promise<void>): Promise<void> {
    const tail = (this.tails.get(chat) ?? Promise.resolve()).then(work, work);
    this.tails.set(chat, tail);
    const tidy = () => {
      if (this.tails.get(chat) === tail) this.tails.delete(chat);
    };
    void tail.then(tidy, tidy);
    return tail;
  }

  /** Resolves when nothing is left to do. */
  async finished(): Promise<void> {
    while (this.tails.size > 0) await Promise.allSettled(this.tails.values());
  }
}
