/** What reads like a phrase of time and names none: people called as months are, shares, numbers of plants. */
import { crops } from '../row/lexicon.js';
import { numberAt } from './numbers.js';
import { textAt, type Token } from '../row/tokens.js';

const GIVES = /^(?:gave|give|given|gives|sold|passed|handed|posted|swapped|dropped|went|gone)$/;

/** "Gave 2 to Jan, 3 to April": people, no days. */
export function isTaker(tokens: readonly Token[], at: number): boolean {
  const token = tokens[at];
  if (!token?.capital || !/^(?:jan|april|may|june|august)$/.test(token.text)) return false;
  if (/^(?:gave|give|given)$/.test(textAt(tokens, at - 1))) return true;
  return textAt(tokens, at - 1) === 'to' && tokens.slice(Math.max(0, at - 9), at - 1).some(isGiving);
}

const isGiving = ({ text }: Token): boolean => GIVES.test(text);

/** "Ember Fox 10/12 rooted, Marble Wren 8/9": so many of so many, as before, and no day. */
export function isShare(
  tokens: readonly Token[],
  from: number,
  to: number,
  isName: (at: number) => boolean,
): boolean {
  const [part, slash, whole] = tokens.slice(from, to);
  const asBefore = tokens.some(
    ({ text }, at) => at < from - 3 && text === '/' && tokens[at + 2]?.text === 'rooted',
  );
  return (
    to - from === 3 &&
    slash?.text === '/' &&
    Number(part?.text) <= Number(whole?.text) &&
    isName(from - 1) &&
    asBefore
  );
}

/** "5/6 Ember Fox have roots": how many of how many, with no other number before what became of them. */
export function isShareOfPlant(tokens: readonly Token[], behind: number, phrase: string): boolean {
  const [part = 0, whole = 0] = phrase.split('/').map(Number);
  if (part > whole) return false;
  for (let at = behind; at < behind + MOST_OF_PLANT; at++) {
    const token = tokens[at];
    if (token?.is !== 'word' || numberAt(tokens, at)) return false;
    if (/^(?:rooted|roots|have|survived|alive|dead|died)$/.test(token.text)) return true;
  }
  return false;
}

/** Words of a plant and what is told of it. */
const MOST_OF_PLANT = 6;

/** "The seven April Ember Fox": so many of the lot of a month. */
export const isCountedLot = (
  tokens: readonly Token[],
  from: number,
  to: number,
  isName: (at: number) => boolean,
): boolean => {
  const words = tokens.slice(textAt(tokens, from) === 'the' ? from + 1 : from, to);
  return (
    words.length === 2 &&
    /^(?:two|three|four|five|six|seven|eight|nine|ten|eleven|twelve)$/.test(words[0]?.text ?? '') &&
    MONTH.test(words[1]?.text ?? '') &&
    isName(to)
  );
};

/** "The third Ember Fox never rooted": one of them, and no day. */
export const isOneOfThem = (
  tokens: readonly Token[],
  from: number,
  to: number,
  isName: (at: number) => boolean,
): boolean =>
  to - from === 2 &&
  textAt(tokens, from) === 'the' &&
  /^(?:second|third|fourth|fifth|sixth|seventh|eighth|ninth|tenth)$/.test(textAt(tokens, from + 1)) &&
  isName(to);

/** "From the 16 Ashlar Pink": a number of plants, no day of the month. */
export function isCounted(
  tokens: readonly Token[],
  from: number,
  to: number,
  isName: (at: number) => boolean,
): boolean {
  const phrase = tokens
    .slice(from, to)
    .map(({ text }) => text)
    .join(' ');
  if (
    !/^(?:from |of |on |since |by |out of )?(?:the )?(?:\d+|one|two|three|four|five|six|seven|eight|nine|ten|twelve|twenty|thirty)$/.test(
      phrase,
    )
  )
    return false;
  return isName(to) || /^(?:of|cuttings|cutting|plants|pots|rooted|have|are)$/.test(tokens[to]?.text ?? '');
}

/** A month by its bare name; "last November" says which. */
export const MONTH =
  /^(?:(?:in|during|back in|around|from) )?(?:early |mid |late )?(?:january|february|march|april|may|june|july|august|september|october|november|december|jan|feb|mar|apr|jun|jul|aug|sept?|oct|nov|dec)\.?$/i;

const WEEKDAY = /^(?:mon|tues?|wed(?:nes)?|thu(?:r|rs)?|fri|sat(?:ur)?|sun)(?:day)?$/;

/** "On Sunday 6 Ember Fox", "Sun 6 velvet ox coleus", "on Sunday 6 more", "Monday 4 of the Ember Fox": so many of them, on the Sunday. */
export function isCountedOnDay(
  tokens: readonly Token[],
  at: number,
  isName: (at: number) => boolean,
): boolean {
  const [token, next] = [tokens[at], tokens[at + 1]];
  // "Of the six I looked at 4 have roots": no hour.
  const isLookedAt =
    textAt(tokens, at - 1) === 'at' &&
    /^(?:looked|looking|peeked|peered|poked)$/.test(textAt(tokens, at - 2));
  if (token?.is !== 'number' || token.glued || !(isLookedAt || WEEKDAY.test(textAt(tokens, at - 1))))
    return false;
  if (isName(at + 1) || next?.is !== 'word') return isName(at + 1);
  if (next.capital) return !MONTH.test(next.text);
  const isOfThem = next.text === 'of' && (OF_THEM.test(textAt(tokens, at + 2)) || isName(at + 2));
  return isOfThem || COUNTED.test(next.text) || isBeforeCrop(tokens, at + 1);
}

/** What so many of stand before. */
const COUNTED =
  /^(?:more|dead|outta|have|has|had|are|were|rooted|died|showed|cuttings?|slips|tips|plants?|plugs?|seedlings?|nodal|basal|heeled|softwood|hardwood)$/;
const OF_THEM = /^(?:the|my|our|those|these|them|em|mine)$/;

/** A crop, or a name of one or two words with its crop behind. */
function isBeforeCrop(tokens: readonly Token[], from: number): boolean {
  for (let at = from; at < from + 3 && tokens[at]?.is === 'word'; at++) {
    if (crops.has(textAt(tokens, at))) return true;
    if (NO_NAME.test(textAt(tokens, at))) return false;
  }
  return false;
}

const NO_NAME =
  /^(?:took|take|the|my|some|of|from|for|with|at|in|on|to|and|was|were|is|are|lost|potted|struck|sold|gave|all|no|i|we)$/;
