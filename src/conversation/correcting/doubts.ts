/** How a grower takes back what was just said: the words before it, and behind it. */
import { secondThoughts } from '../../language/grammar/second-thoughts.js';

const phrases = [...secondThoughts]
  .sort((one, other) => other.length - one.length)
  .map((phrase) => phrase.replace(/'/g, "['’]"))
  .join('|');

/** What is wrong, or should be otherwise, said before it. */
const WRONG =
  "wrong (?:one|plant|pot|batch|name|number|date|day|place|size)|(?:that |it )?should(?:['’]ve| have)? be(?:en)?|should have said";

/** The source of a pattern for the doubts at the start of a text, if any. */
export const lead = `^(?:(?:and|${WRONG}|${phrases})[,:;. ]+)*`;

/** "Sorry", "no, wait", "I tell a lie": as the first words. A bare "no" or "wrong" may answer something else. */
export const doubtsFirst = new RegExp(
  String.raw`^(?:no[, ]+(?:wait|sorry|just|only|it was|make that)|(?!no\b|nope\b|wrong\b|in fact\b|recount\b)(?:${phrases})|${WRONG}|recount(?:ed)?)\b`,
  'i',
);

/** "To Nora, I mean", "three in fact". */
export const doubtsLast =
  /(?<![, ])[, ]+(?:i mean|i meant|i should say|i should have said|actually|in fact|sorry|(?:that|it) should (?:be|have been|say))[.!]?$/i;
