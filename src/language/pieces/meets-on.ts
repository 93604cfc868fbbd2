/** Days that only say which people: "the Thursday volunteers". */
import { whole } from '../phrases.js';
import { textAt, type Token } from '../row/tokens.js';

const WEEKDAY = /^(?:(?:mon|tues|wednes|thurs|fri|satur|sun)days?|weds?|mon|tues?|thurs?|fri|sat)$/;
export const GROUP = whole`
  volunteers?|group|club|class|crew|gang|team|ladies|girls|lads|boys|regulars?|gardeners|customers?|helpers?|visitors
  school|children|kids|society|circle|choir|walkers|people|folks?|man|woman|lady|chap|lunch|coffee
`;

/** "The Thursday volunteers": who, by the day on which they meet. */
export const isOfGroup = (tokens: readonly Token[], from: number, to: number): boolean =>
  WEEKDAY.test(textAt(tokens, to - 1)) &&
  GROUP.test(textAt(tokens, to)) &&
  (to - from === 1 || /^(?:the|my|our)$/.test(textAt(tokens, to - 2)));
