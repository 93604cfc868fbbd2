/** Whether a text answers before it could put anything right. */
import type { Context } from '../answers/answering.js';
import type { Sitting } from '../sitting.js';

/** A question of ours, or the prompt that it replies to, is answered first. */
export function isAnswering({ ledger }: Sitting, { ask, explicit, prompts }: Context): boolean {
  const last = ledger.standing.at(-1)?.journal;
  return (
    (explicit && prompts.some(({ open }) => open)) ||
    (ask !== null && (last === undefined || last.postedAt <= ask.askedAt))
  );
}
