/** How a grower takes back what was just said: the words before it, and behind it. */
import { secondThoughts } from '../../language/grammar/second-thoughts.js';

const phrases = [...secondThoughts]
  .sort((one, other) => other.length - one.length)
  .map((phrase) => phrase.replace(/'/g, "['’]"))
  .join('|');

/** What is wrong, or should be otherwise, said before it. */
const WRONG =
  "edit|more like|(?:(?:i(?:['’]d| had| got| picked| did| said| put| wrote)|that(?:['’]s| was| is)) )?(?:the )?wrong (?:one|pot|batch|lot|name|plant|label)|(?:that |it )?should(?:['’]ve| have)? be(?:en)?|should have said";

const DOUBT = new RegExp(`^(?:and|${WRONG}|${phrases})[,:;. –—-]+`, 'i');

/** No correction has more letters. */
export const LONGEST = 200;

/** "Lol no …", "oh god, sorry, …": the text from its first word that says something. */
export function withoutNoise(text: string): string {
  return text
    .trim()
    .replace(
      /^(?:lol|haha?|oh|ooh|ah|aw|och|um|er|erm|god|lord|lordy|omg|jeez|argh|ugh)[,.! ] ?(?=no\b|nope\b|sorry\b|wait\b|actually\b|i mean|oops\b|hang on\b|hold on\b)/i,
      '',
    );
}

/** The text without the doubts and the "and" that it begins with; taken off one by one, so that a row of them costs no more. */
export function withoutDoubts(text: string): string {
  let rest = text;
  for (;;) {
    const [doubt = ''] = DOUBT.exec(rest) ?? [];
    if (doubt === '' || doubt.length === rest.length) return rest;
    rest = rest.slice(doubt.length);
  }
}

/** "Sorry", "no, wait", "I tell a lie": as the first words. A bare "no" or "wrong" may answer something else. */
export const doubtsFirst = new RegExp(
  String.raw`^(?:(?:no|nope|nah)[, ]+(?:wait|sorry|just|only|it was|that was|make that|s?he (?:only |just )?(?:had|took|got|wanted)|they (?:only |just )?(?:had|took|got|wanted)|the [a-z]+ (?:ones?|lot|batch)$)|(?!no\b|nope\b|nah\b|wrong\b|in fact\b|recount\b)(?:${phrases})|${WRONG}|recount(?:ed)?)\b`,
  'i',
);

/** "To Nora, I mean", "three in fact". */
export const doubtsLast =
  /(?<![, ])[, ]+(?:i mean|i meant|i should say|i should have said|actually|in fact|sorry|rather|excuse me|pardon(?: me)?|my mistake|my bad|apologies|(?:that|it) should (?:be|have been|say))[.!]?$/i;

/** "6 sry", "*6", "6*": as they are meant. */
export function excused(text: string): string {
  const words = text.replace(/(?<![\p{L}\d])(?:sry|srry|soz)(?![\p{L}\d])/giu, 'sorry');
  const bare = words.trim();
  const inner = bare.startsWith('*') ? bare.slice(1) : bare.endsWith('*') ? bare.slice(0, -1) : '*';
  return inner.includes('*') || inner.length > 60 ? words : `sorry, ${inner.trim()}`;
}
