/** What a drill is: a fault brought about on purpose, and what must hold all the same. */
import { RunningBot } from './running-bot.js';

/** Something did not hold. */
export class DrillFailed extends Error {}

export interface Drill {
  readonly name: string;
  /** What is done, in a line. */
  readonly does: string;
  /** Runs at `scale` times its full size (1 in full, 0.1 in CI); answers what was seen, in a line. Throws `DrillFailed`. */
  readonly run: (scale: number) => Promise<string>;
}

export function mustHold(holds: boolean, what: () => string): void {
  if (!holds) throw new DrillFailed(what());
}

/** So many, at a scale; at least `least`. */
export function scaled(full: number, scale: number, least = 1): number {
  return Math.max(least, Math.round(full * scale));
}

/** Runs `work` with a bot that is ended and cleared away after it. */
export async function withBot(work: (bot: RunningBot) => Promise<string>): Promise<string> {
  const bot = await RunningBot.prepare();
  try {
    return await work(bot);
  } finally {
    await bot.end();
  }
}

/** Repeatable chance, so that a drill that failed can be run again: a linear congruential sequence in [0, 1) (Numerical Recipes' constants). */
export function chanceFrom(seed: number): () => number {
  let state = seed >>> 0;
  return () => (state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0) / 2 ** 32;
}
