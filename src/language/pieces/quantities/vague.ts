/** Quantities of which no number can be had: "a few", "at least ten", "nearly a dozen". */
import { verbSense } from '../../row/lexicon.js';
import { numberAt } from '../numbers.js';
import { byFirstWord } from '../../phrases-by-word.js';
import { type FoundQuantity, pastOf } from './quantity.js';
import { isPhraseAt, textAt, type Token } from '../../row/tokens.js';

const BEYOND: readonly (readonly string[])[] = [
  ['at', 'least'], ['at', 'most'], ['more', 'than'], ['less', 'than'], ['fewer', 'than'], ['not', 'quite'], ['just', 'over'],
  ['just', 'under'], ['well', 'over'], ['close', 'to'], ['up', 'to'], ['upwards', 'of'], ['getting', 'on', 'for'],
  ['nearly'], ['almost'], ['over'], ['under'], ['nigh', 'on'], ['no', 'more', 'than'], ['a', 'good'], ['best', 'part', 'of'],
]; // prettier-ignore
const VAGUE: readonly (readonly string[])[] = [
  ['a', 'good', 'few'], ['quite', 'a', 'few'], ['a', 'few'], ['few'], ['some'], ['several'], ['a', 'handful'], ['handful'], ['loads'],
  ['a', 'load'], ['a', 'bunch'], ['bunch'], ['lots'], ['a', 'lot'], ['plenty'], ['tons'], ['heaps'], ['most'], ['many'], ['umpteen'],
  ['oodles'], ['masses'], ['a', 'number'], ['a', 'good', 'many'], ['various'], ['a', 'whole', 'load'], ['a', 'fair', 'few'], ['stacks'],
  ['quite', 'a', 'lot'], ['the', 'odd'], ['a', 'whole', 'bunch'], ['a', 'ton'], ['a', 'fair', 'whack'], ['a', 'batch'], ['a', 'wheen'], ['dozens'], ['hundreds'], ['one', 'or', 'two'],
  ['the', 'majority'],
]; // prettier-ignore

const beyondByWord = byFirstWord(BEYOND);
const vagueByWord = byFirstWord(VAGUE);

/** The words that may open either. */
export const vagueWords: readonly string[] = ['between', ...beyondByWord.keys(), ...vagueByWord.keys()];

/** "At least ten", "between four and six": on one side of a number. */
export function beyond(tokens: readonly Token[], at: number): FoundQuantity | undefined {
  if (textAt(tokens, at) === 'between') {
    const low = numberAt(tokens, at + 1);
    const high = low && textAt(tokens, low.to) === 'and' ? numberAt(tokens, low.to + 1) : undefined;
    if (high) return { quantity: { vague: true }, to: pastOf(tokens, high.to) };
  }
  for (const words of beyondByWord.get(textAt(tokens, at)) ?? []) {
    if (!isPhraseAt(tokens, at, words)) continue;
    // "Handed over six", "brought up to": the word is the verb's.
    if (
      /^(?:over|under|up|close)$/.test(words[0] ?? '') &&
      /^(?:hand|turn|pass|bring|go|come|put|carry|move|send|knock|keel)$/.test(
        verbSense(textAt(tokens, at - 1))?.lemma ?? '',
      )
    )
      continue;
    // "Greenfly all over three pots": on every side of them; "spread over two trays": in them.
    if (
      words[0] === 'over' &&
      /^(?:all|spread|divided|split|shared|spaced|distributed|dotted)$/.test(textAt(tokens, at - 1))
    )
      continue;
    // "Back up to 20": as warm as that.
    if (
      words[0] === 'up' &&
      /^(?:back|right|now|got|went|gone|climbed|shot|rose)$/.test(textAt(tokens, at - 1))
    )
      continue;
    const found = numberAt(tokens, at + words.length);
    // "They are up to four rooted now": so many have by now.
    if (words[0] === 'up' && found && ROOTED.test(textsFrom(tokens, found.to)))
      return { quantity: { value: found.value }, to: pastOf(tokens, found.to) };
    // "Over half a dozen" before "over half".
    if (found && Number.isInteger(found.value))
      return { quantity: { vague: true }, to: pastOf(tokens, found.to) };
    if (textAt(tokens, at + words.length) === 'half')
      return { quantity: { vague: true }, to: pastOf(tokens, at + words.length + 1) };
  }
  return undefined;
}

/** No "up to four rooted cuttings for each of you". */
const ROOTED =
  /^(?:of (?:them|those) )?(?:now )?(?:(?:with|have|having|showing|got|that have) (?:got )?)?(?:good |some )?(?:rooted|roots)(?! (?:cuttings?|plants?|plugs?|ones?|each|per|for|\0)(?: |$))/;

const textsFrom = (tokens: readonly Token[], at: number): string =>
  [0, 1, 2, 3, 4, 5, 6].map((n) => textAt(tokens, at + n)).join(' ');

/** "A few", "some", "loads". */
export function vaguely(tokens: readonly Token[], at: number): FoundQuantity | undefined {
  for (const words of vagueByWord.get(textAt(tokens, at)) ?? []) {
    if (!isPhraseAt(tokens, at, words)) continue;
    let to = at + words.length;
    if (words[0] === 'most' && !/^(?:of|have|are|had|rooted|\0|my)$/.test(textAt(tokens, to)))
      return undefined;
    if (textAt(tokens, to) === 'more') to++;
    return {
      quantity: { vague: true, ...(words[0] === 'some' ? { some: true as const } : {}) },
      to: pastOf(tokens, to),
    };
  }
  return undefined;
}
