/** The same words from the same person within a minute: asked about, never doubled and never dropped. */
import type { Sitting } from './sitting.js';

const WITHIN_MS = 60_000;

/** Asks whether it is a second time, and answers whether it asked. */
export function asksAgain(sitting: Sitting, text: string): boolean {
  const { from, at, message } = sitting.origin;
  const same = sitting.talk.heard.findLast(
    (each) =>
      each.counted &&
      each.from === from &&
      each.message !== message &&
      Math.abs(at - each.at) <= WITHIN_MS &&
      normal(each.text) === normal(text),
  );
  if (!same) return false;
  sitting.change({ heard: [...sitting.talk.heard, { message, from, at, text, counted: false }] });
  sitting.ask({ ask: 'repeat', text });
  return true;
}

/** Whether the same grower said the same in a message before this one, within a minute. */
export function saidLately({ talk, origin }: Sitting, text: string): boolean {
  return talk.heard.some(
    (each) =>
      each.from === origin.from &&
      each.message !== origin.message &&
      Math.abs(origin.at - each.at) <= WITHIN_MS &&
      normal(each.text) === normal(text),
  );
}

function normal(text: string): string {
  return text
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();
}
