/** Words that lead to a place, and those that may stand between. */
import { textAt, type Token } from '../../row/tokens.js';

export const PREPOSITION = new Set(
  'in into on onto to from under at by off outside inside near beside behind above below along'.split(' '),
);
export const DETERMINER = new Set([
  'the',
  'a',
  'an',
  'my',
  'our',
  'his',
  'her',
  'their',
  'your',
  'that',
  'this',
  'its',
]);

/** The preposition that governs what begins at token `at`, past an article. */
export function prepositionBefore(tokens: readonly Token[], at: number): string | undefined {
  let before = at - 1;
  while (DETERMINER.has(textAt(tokens, before))) before--;
  const text = textAt(tokens, before);
  if (text === 'of' && /^(?:out|outside|inside)$/.test(textAt(tokens, before - 1))) return 'from';
  if (text === 'off' && /^(?:hardening|harden|hardened)$/.test(textAt(tokens, before - 1))) return undefined;
  return PREPOSITION.has(text) ? text : undefined;
}
