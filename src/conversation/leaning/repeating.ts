/** The same words from the same person within a minute: asked about, never doubled and never dropped. */
import type { Sitting } from '../sitting.js';
import type { Talk } from '../talk.js';

const WITHIN_MS = 60_000;

/** Asks whether it is a second time, and answers whether it asked. */
export function asksAgain(sitting: Sitting, text: string): boolean {
  if (!sameLately(sitting, text).some(({ counted }) => counted)) return false;
  const { from, at, message } = sitting.origin;
  sitting.change({ heard: [...sitting.talk.heard, { message, from, at, text, counted: false }] });
  sitting.ask({ ask: 'repeat', text });
  return true;
}

/** Whether the same grower said the same in a message before this one, within a minute. */
export function saidLately(sitting: Sitting, text: string): boolean {
  return sameLately(sitting, text).length > 0;
}

function sameLately({ talk, origin }: Sitting, text: string): Talk['heard'] {
  return talk.heard.filter(
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
