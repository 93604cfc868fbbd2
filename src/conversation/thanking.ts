/** Thanks and good nights that tell nothing: "cheers bot", "ok thanks, night". */
import { wordsOf } from '../language/phrases.js';

const THANKS = new Set(wordsOf`thanks thank thx thanx ta cheers night goodnight bye`);
const AROUND = new Set(wordsOf`
  you very much so a lot million bunch many again for that all then and
  ok okay great lovely perfect brilliant good grand super right ah oh nice one now
  bot slipnote mate love pet lads everyone see later tomorrow
  x xx xxx
`);

/** Whether a text is that and nothing more. */
export function thanks(text: string): boolean {
  const words = text.toLowerCase().match(/[\p{L}\d']+/gu) ?? [];
  return (
    words.some((word) => THANKS.has(word)) && words.every((word) => THANKS.has(word) || AROUND.has(word))
  );
}
