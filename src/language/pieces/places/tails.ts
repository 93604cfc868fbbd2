/** "The bed by the gate", "a table under the window": what tells one such place from another belongs to its name. */
import { placeNouns } from '../../row/lexicon.js';
import { wordsOf } from '../../phrases.js';
import { textAt, type Token } from '../../row/tokens.js';
import { DETERMINER } from './prepositions.js';

const BESIDE =
  /^(?:by|under|beside|near|behind|below|above|along|against|beneath|opposite|outside|next|nearest|at)$/;
/** What stands where places are told by it, and is none for plants itself. */
export const LANDMARKS: ReadonlySet<string> = new Set(wordsOf`
  gate door doors window windows skylight wall fence hedge path drive driveway steps stairs railings kerb road street
  lane line entrance front arch pergola trellis swing sandpit sundial garage gable chimney
  pond stream well tank butt tap sink radiator boiler heater oven cooker stove aga fridge freezer fan vent telly sofa
  tree trees oak pear plum fig heap bin bins oil barn byre stable stables kennel coop henhouse hives
`);
/** "At the back", "at the far end": of the place itself. */
const ENDS = /^(?:front|back|end|top|bottom|side)$/;
/** "By the old back door". */
const MOST_WORDS = 3;

const endsPart = (token: Token | undefined): boolean =>
  token === undefined || token.is === 'line' || /^[,;.!]$/.test(token.text);

/** "From the back verandah along the front fence": from one place to another. */
const isWayTo = (tokens: readonly Token[], to: number): boolean =>
  textAt(tokens, to) === 'along' && [2, 3, 4].some((n) => FROM.test(textAt(tokens, to - n)));
const FROM = /^(?:from|off)$/;
/** "At the yard sale", "at the gate party": something that goes on there. */
const EVENT = /^(?:sales?|party|show|fair|open|do)$/;

/** Where the words that tell which place it is end; `to` itself where there are none. */
export function tailEnd(tokens: readonly Token[], to: number, free: (at: number) => boolean): number {
  const lead = textAt(tokens, to);
  if (!BESIDE.test(lead) || isWayTo(tokens, to)) return to;
  const article = to + (lead === 'next' ? 2 : 1);
  if (lead === 'next' && textAt(tokens, to + 1) !== 'to') return to;
  // "The bed by gate", in the short form of a note, where nothing goes on behind it.
  if (!DETERMINER.has(textAt(tokens, article)))
    return LANDMARKS.has(textAt(tokens, article)) && free(article) && endsPart(tokens[article + 1])
      ? article + 1
      : to;
  for (let at = article + 1; at <= article + MOST_WORDS; at++) {
    if (!free(at) || tokens[at]?.is !== 'word') return to;
    const word = textAt(tokens, at);
    const isLandmark = LANDMARKS.has(word) || placeNouns.has(word) || (lead === 'at' && ENDS.test(word));
    const goesOn = LANDMARKS.has(textAt(tokens, at + 1)) || placeNouns.has(textAt(tokens, at + 1));
    if (isLandmark && !goesOn) return EVENT.test(textAt(tokens, at + 1)) ? to : at + 1;
  }
  return to;
}
