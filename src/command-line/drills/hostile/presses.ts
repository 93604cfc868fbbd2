/** Presses that no message of the bot's offered in this chat: another's buttons, worn-out forms, bytes of no meaning. */

const forms = [
  'undo:1',
  'undo:1-99',
  'undo:0-4294967295',
  'undo:-1',
  'undo:NaN',
  'revert:1-99',
  'putBack:1',
  'change:1-3',
  'ask:1:0',
  'ask:99:x',
  'ask:__proto__:0',
  'ask:1:__proto__',
  'prompt:__proto__:all',
  'prompt:constructor:yes',
  'more',
  'more:9',
  'v0:undo:1',
  'v9/undo/1',
  'erase:1',
  '{"undo":1}',
  '#AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA',
  '__proto__',
  '',
] as const;

/** What a forged press carries; `others` is what other chats were offered. */
export function forgedPress(chance: () => number, others: readonly string[]): string {
  const pick = <T>(list: readonly T[]): T => list[Math.floor(chance() * list.length)] as T;
  const kind = chance();
  if (kind < 0.4 && others.length > 0) return pick(others);
  if (kind < 0.8) return pick(forms);
  const bytes = Uint8Array.from({ length: Math.floor(chance() * 64) }, () => Math.floor(chance() * 256));
  return Buffer.from(bytes).toString('latin1');
}
