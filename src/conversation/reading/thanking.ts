/** Thanks and good nights that tell nothing: "cheers bot", "ok thanks, night". */
import { wordsOf } from '../../language/phrases.js';

const THANKS = new Set(wordsOf`thanks thank thx thanx ta cheers night goodnight bye`);
// No "one", "all" or "later": "one, ta" answers how many have rooted.
const AROUND = new Set(wordsOf`
  you very much so a lot million bunch many again for that then and
  ok okay great lovely perfect brilliant good grand super right ah oh nice now
  bot slipnote mate love pet lads everyone see
  x xx xxx
`);

/** Whether a text is that and nothing more. */
export function thanks(text: string): boolean {
  const words = text.toLowerCase().match(/[\p{L}\d']+/gu) ?? [];
  return (
    words.some((word) => THANKS.has(word)) && words.every((word) => THANKS.has(word) || AROUND.has(word))
  );
}
