/** Names told between a number and a crop: whatever its words mean elsewhere, "six monday blanket salvia" names the salvia. */
import { placeNouns, verbSense } from '../../row/lexicon.js';
import { numberAt } from '../../pieces/numbers.js';
import { whole, wordsOf } from '../../phrases.js';
import { textAt, type Token } from '../../row/tokens.js';
import { nameAt } from '../../pieces/told-names/name-piece.js';
import { LED_BY, onlyDescribes } from './describing.js';
import { COUNTED, leadBefore, numberBefore } from './before-name.js';
import { isBehindCounted } from '../../pieces/number-in-name.js';
import { cropLength, cropSaidAt } from './crop-words-said.js';
import { isPerson } from './people.js';
import type { Search } from './search.js';

/** Words that stand in no name, so that none goes past them. */
export const NEVER_WITHIN: ReadonlySet<string> = new Set(wordsOf`
  i we he she they it you me us them him my her our your his its their own mine yours ours theirs hers the a an this that these those and & or but than so
  if as because while yes no not to in into on onto from off ex with without for at by under over out up down about through during till until after before
  of since per apiece near beside behind each every all some any both which who what when where why how
  is are was were be been being am has have had do did does can could will would should
  am pm oclock o'clock minutes mins min hours hrs hour days weeks months years degrees celsius cm mm inch inches in ins litre litres liter ltr gallon gal quart ml l percent pence quid
  p x cells cell times only just also too still yet again already here there now then today yesterday tomorrow tonight ones one's
  cuttings cutting slips tips pots pot trays tray plugs plants shoots stems bits pieces tubers crowns divisions seedlings roots leaves nodes heads
  i'm i've i'll it's its that's they're there's thanks please ta cheers
`);

const TAKING = whole`took|taken|tk|struck|stuck|did|done|made|cut|inserted|rooted|propagated|got|bought|received|had|potted|lost|binned|sold|gave|swapped|and|also|,`;

/** Crops named by words that everyday talk uses as often: no name is told by these alone. */
const EVERYDAY = whole`box|boxes|bay|bays|pans?|hops?|vines?|elder|orange|peach|plum|pear|apple|olive|cherry|mum|laurel|iris`;

const MONTH = /^(?:jan|feb|mar|apr|jun|jul|aug|sep|oct|nov|dec)[a-z]*$|^(?:may|march|april|june|july)$/;

/** How many words ending at `at` join others within a name: "queen of the bins", "salt and vinegar", "man on the moon". */
function jointBefore(tokens: readonly Token[], at: number): number {
  const word = textAt(tokens, at);
  const length = word === 'the' && /^(?:of|on|in|under|over|by|to|at)$/.test(textAt(tokens, at - 1)) ? 2 : 1;
  const joint = textAt(tokens, at + 1 - length);
  const before = textAt(tokens, at - length);
  if (COUNTED.test(before) || !/^(?:word|number)$/.test(tokens[at - length]?.is ?? '')) return 0;
  if (joint === 'of') return numberAt(tokens, at - length) ? 0 : length;
  const behind = textAt(tokens, at + 1);
  const isPlain = verbSense(before)?.form !== 'past' && !NEVER_WITHIN.has(before) && !onlyDescribes([before]);
  if (length === 2)
    return isPlain && leadBefore(tokens, at - length) === 'number' && !placeNouns.has(behind) ? 2 : 0;
  // A word each, and nothing before the first: "five Rhubarb and Custard dahlia".
  return joint === 'and' &&
    isPlain &&
    !isPerson([before]) &&
    cropLength(tokens, at - length) === 0 &&
    numberAt(tokens, at + 1) === undefined &&
    !onlyDescribes([behind]) &&
    cropLength(tokens, at + 2) > 0 &&
    leadBefore(tokens, at - length) !== undefined
    ? 1
    : 0;
}

/** Where the name begins that ends before `end`, if one does. */
function beginningOf(
  tokens: readonly Token[],
  end: number,
  free: (at: number) => boolean,
  least: number,
  isTitle: boolean,
): number | undefined {
  let start = end;
  while (end - start < 6) {
    const lead = start < end ? leadBefore(tokens, start) : undefined;
    if (lead !== undefined) {
      const from = withoutLead(tokens, start, end, isTitle);
      if (from !== undefined && end - from >= least && isNameHere(tokens, from, end, lead, isTitle))
        return from;
      if (lead !== 'number') return undefined;
    }
    const joint = start < end ? jointBefore(tokens, start - 1) : 0;
    if (joint > 0) {
      start -= joint;
      continue;
    }
    const token = tokens[start - 1];
    if (token?.is !== 'word' || !free(start - 1) || NEVER_WITHIN.has(token.text)) return undefined;
    start--;
  }
  return undefined;
}

/** Past the words in small letters before capitals, or past those that say how a plant fares. */
function withoutLead(
  tokens: readonly Token[],
  from: number,
  end: number,
  isTitle: boolean,
): number | undefined {
  const hasCapital = !isTitle && tokens.slice(from, end).some(({ capital }) => capital);
  let start = from;
  if (hasCapital) while (tokens[start]?.capital !== true) start++;
  else
    while (end - start > 1 && LED_BY.test(textAt(tokens, start)) && !isNickname(tokens, start, end)) start++;
  return /^(?:of|the|and|on|in)$/.test(textAt(tokens, start)) ? undefined : start;
}

/** "Big dave", "little nell". */
const isNickname = (tokens: readonly Token[], start: number, end: number): boolean =>
  end === start + 2 &&
  /^(?:big|little|tiny)$/.test(textAt(tokens, start)) &&
  isPerson([textAt(tokens, start + 1)]);

function isNameHere(
  tokens: readonly Token[],
  from: number,
  end: number,
  lead: 'number' | 'of' | 'article',
  isTitle: boolean,
): boolean {
  const words = tokens.slice(from, end).map(({ text }) => text);
  const written =
    !isTitle &&
    tokens.slice(from, end).every(({ capital, text }) => capital || /^(?:of|the|and|on|in)$/.test(text));
  if (/(?:'s|s')$/.test(words.at(-1) ?? '')) return false;
  if (written) return end - from > 1;
  if (onlyDescribes(words) || (lead === 'of' && isPerson(words))) return false;
  // "On 3 april wet slate salvia".
  if (lead === 'number' && MONTH.test(words[0] ?? '') && !TAKING.test(textAt(tokens, from - 2))) return false;
  // "Took 6 potted up …": a deed between them.
  const isDeed = verbSense(words[0] ?? '')?.form === 'past';
  return (
    !isDeed || lead !== 'number' || /^(?:took|taken|tk|struck|stuck|inserted)$/.test(textAt(tokens, from - 2))
  );
}

export function countedNames({ text, tokens, free, claim }: Search): void {
  const shouted = tokens.every(({ is, raw }) => is !== 'word' || raw === raw.toUpperCase());
  for (let at = 2; at < tokens.length; at++) {
    if (!free(at)) continue;
    const crop = at;
    const length = cropLength(tokens, at);
    if (length > 1) at += length - 1;
    const isSaid = length === 0 && cropSaidAt(tokens, at);
    if (length === 0 && !isSaid) continue;
    if (!isSaid && !endsName(tokens, crop, length)) continue;
    const mark = isSaid && tokens[crop - 1]?.raw === ',' ? crop - 1 : nameEnd(tokens, crop, length);
    // "Twenty of Harbour Sugar taken, that's the chrysanthemum".
    const end =
      mark < crop && /^(?:taken|struck|stuck|inserted|done|rooted)$/.test(textAt(tokens, mark - 1))
        ? mark - 1
        : mark;
    const isTitle = shouted || (!isSaid && tokens[crop]?.capital === true);
    const from = isSaid
      ? (openingBefore(tokens, end, free) ?? beginningOf(tokens, end, free, 1, isTitle))
      : beginningOf(tokens, end, free, 2, isTitle);
    if (from === undefined) {
      for (const [first, last] of eachBefore(tokens, end, free)) claim(nameAt(text, tokens, first, last));
      continue;
    }
    claim(nameAt(text, tokens, isBehindCounted(tokens, from - 1) ? from - 1 : from, end));
  }
}

/** "Five each of the brass neck and jelly baby salvias": where both names stand. */
function eachBefore(
  tokens: readonly Token[],
  end: number,
  free: (at: number) => boolean,
): readonly (readonly [number, number])[] {
  const isPart = (at: number): boolean =>
    tokens[at]?.is === 'word' && free(at) && !NEVER_WITHIN.has(textAt(tokens, at));
  let second = end;
  while (end - second < 4 && isPart(second - 1)) second--;
  if (textAt(tokens, second - 1) !== 'and') return [];
  let first = second - 1;
  while (second - first < 5 && isPart(first - 1)) first--;
  const of = textAt(tokens, first - 1) === 'the' ? first - 2 : first - 1;
  if (textAt(tokens, of) !== 'of' || textAt(tokens, of - 1) !== 'each' || !numberBefore(tokens, of - 1))
    return [];
  const names = [[first, second - 1] as const, [second, end] as const];
  const areNames = names.every(([from, to]) => {
    const words = tokens.slice(from, to).map((token) => token.text);
    return (
      words.length > 0 && !onlyDescribes(words) && words.every((_, n) => cropLength(tokens, from + n) === 0)
    );
  });
  return areNames ? names : [];
}

/** Where the name before a crop ends: "wet paint coleus", "wet paint (coleus)", "wet paint, a coleus", "wet paint another coleus", "wet paint also a coleus". */
function nameEnd(tokens: readonly Token[], crop: number, length: number): number {
  if (tokens[crop - 1]?.raw === '(' && tokens[crop + length]?.raw === ')') return crop - 1;
  const apposed = APPOSED.find((words) => endsIn(tokens, crop, words));
  if (apposed === undefined) return crop;
  const end = crop - apposed.split(' ').length;
  if (tokens[end - 1]?.raw === ',') return end - 1;
  return /^(?:another|also|a new)/.test(apposed) ? end : crop;
}

const APPOSED = [
  'another new',
  'also another',
  'another',
  'a new',
  'also a',
  'also an',
  'a',
  'an',
  'also',
  'my',
  'our',
];

/** Whether these words stand straight before `to`. */
const endsIn = (tokens: readonly Token[], to: number, words: string): boolean =>
  words.split(' ').every((word, n, all) => textAt(tokens, to - all.length + n) === word);

/** "Apricot Sexton, that's a pelargonium: …": written as a name where the telling begins. */
function openingBefore(
  tokens: readonly Token[],
  end: number,
  free: (at: number) => boolean,
): number | undefined {
  let start = end;
  while (start > 0 && end - start < 5 && free(start - 1) && tokens[start - 1]?.capital === true) start--;
  const isOpening = start === 0 || /^(?:mark|line)$/.test(tokens[start - 1]?.is ?? '');
  return isOpening && end - start > 1 && tokens[end]?.is === 'mark' ? start : undefined;
}

/** Whether the crop there is one of what was counted, and not itself part of a name or of a longer crop. */
function endsName(tokens: readonly Token[], at: number, length: number): boolean {
  const next = at + length;
  if (cropLength(tokens, next) > 0) return false;
  const word = textAt(tokens, at);
  return (
    length > 1 ||
    !EVERYDAY.test(word) ||
    /^(?:cuttings?|plants?|plugs?|slips|tips)$/.test(textAt(tokens, next)) ||
    (tokens[at - 1]?.capital === true && tokens[at]?.capital === false && word === 'mum')
  );
}
