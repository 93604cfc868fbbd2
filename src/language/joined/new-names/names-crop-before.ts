/** Which words behind what was taken of a crop name it: no day, no place, no description, nobody, and no wish or cause. */
import { causes, cuttingTypes, isKnown, media, phraseAt, placeNouns, verbSense } from '../../row/lexicon.js';
import { isThing } from '../../pieces/other-things.js';
import { whole, wordsOf } from '../../phrases.js';
import { LANDMARKS } from '../../pieces/places/tails.js';
import type { Token } from '../../row/tokens.js';
import { cropLength } from './crop-words-said.js';
import { onlyDescribes } from './describing.js';
import { NEVER } from './no-names.js';
import { isFirm, isPerson, isTitled } from './people.js';

/** Words that lead to something else than a name: a wish, a cause, a view. */
const NO_OPENINGS: ReadonlySet<string> = new Set(wordsOf`
  nice good lovely great happy merry thank thanks bless fingers touch hope hopefully wish need needs want wants bit really very quite rather pretty fairly mostly mainly
  about around nearly roughly maybe perhaps probably possibly definitely sort kind another more extra spare plenty loads lots half quarter looking feeling pouring raining
  straight fresh freshly late early later first second last third best worst only same usual different various assorted mixed new old
  bloody blooming flipping damn damned naughty stupid blasted please sorry anyway because cos cause since although though whilst when where which who whoever what never always
  courtesy thanks via care per total altogether except minus plus including
  easter christmas xmas bank boxing whit new bottom jiffy hormone rooting neat plain clean sharp damp dry wet sunny shady warm hot
`);

/** Words for people and for times that end many a name: "copper nan", "wet sunday". */
const ENDS_NAMES = whole`nan|gran|lady|man|lad|lass|dad|mum|monday|tuesday|wednesday|thursday|friday|saturday|sunday|night|morning|blue|red|white|pink|yellow|purple|gold|star`;

/** What by itself would be a pot, a root, a time or a place: "tray bandit", "night bell". */
export const THINGS = whole`pot|tray|root|night|water|peat|box|slip|plug|leaf|bench|kitchen|garden|seed`;

/** "Sunday best", "march hare". */
const DAYS = whole`monday|tuesday|wednesday|thursday|friday|saturday|sunday|january|february|march|april|may|june|july|august|september|october|november|december`;

/** "Close cat": a beast alone spoils nothing, where a name may end with it. */
const BEASTS = whole`cat|dog|hare|mouse|rat|deer|rabbit|squirrel|pigeon|blackbird|possum|wallaby`;
const isBeast = (words: readonly string[], at: number): boolean =>
  at > 0 && at === words.length - 1 && BEASTS.test(words[at] ?? '');

/** What ends a wish or a place among words of everyday. */
export const NO_LAST = whole`
  time|times|way|thing|things|sort|sorts|season|weather|side|corner|end|afternoon|morning|lunch|dinner|tea|lunchtime|teatime|bedtime|dinnertime|sow|sowing|sale|market|show|class|club|course
  break|hour|hours|job|minute|minutes|session|shift|rota|routine|rain|sunshine|sun|wind|gale|gales|storm|storms|snow|hail|drizzle|showers|heatwave
  hall|toilet|loo|shop|school|church|pub|street|road|tub|tubs|punnets?|cartons?|cups?|cubes|blocks|boxes|bottles?|domes?|covers?|cloches?|sponge|mulch|wool
  trainers|pots|pellets|modules|cells|trays?|tray|mix|heat|lid|lids|bags?|jars?|jobs|blooms|flowers|tubers|plants|babies
`;

/** No names end so. */
const NO_END = /(?:ing|[a-z]{4}ly|early|only|[a-z]{3}ed|'s|s')$/;

/** Whether the words [from, to) name the crop before them; behind a mark (`isMarked`) everyday words alone name nothing. */
export function namesCropBefore(
  tokens: readonly Token[],
  from: number,
  to: number,
  isMarked: boolean,
): boolean {
  const said = tokens.slice(from, to);
  const words = said.map((token) => token.text);
  const [first = ''] = words;
  const last = words.at(-1) ?? '';
  if (said.some(({ capital, is }) => capital || is === 'number') || NO_OPENINGS.has(first)) return false;
  if (/^(?:n|of|on|the)$/.test(last) || NO_END.test(last) || onlyDescribes(words)) return false;
  if (isFirm(words.slice(1)) || (isPerson(words) && !isTitled(words)) || isThing(last) || NO_LAST.test(last))
    return false;
  if (
    words.some(
      (_, n) =>
        (phraseAt(causes, words, n)?.words.length ?? 0) > 1 ||
        (n > 0 && phraseAt(cuttingTypes, words, n) !== undefined) ||
        (DAYS.test(first) ? [] : [causes, cuttingTypes, media]).some(
          (table) =>
            phraseAt<unknown>(table, words, n)?.words.length === words.length - n && !isBeast(words, n),
        ),
    )
  )
    return false;
  // "Plum billy", and no "fuchsia mary".
  if (words.some((_, n) => cropLength(tokens, from + n) > 0 && !EVERYDAY.test(words[n] ?? ''))) return false;
  if (words.some((word) => /^(?:past|ing)$/.test(verbSense(word)?.form ?? ''))) return false;
  // "Shed roof".
  if (placeNouns.has(last) && words.every(isKnown)) return false;
  if (placeNouns.has(first) && (LANDMARKS.has(last) || /^(?:floor|roof|rafters|ceiling)$/.test(last)))
    return false;
  // "Depot star": a word in nobody's mouth every day. "Night bell": of everyday words only straight behind the cuttings.
  if (words.some((word) => !isKnown(word) && !NEVER.has(word) && !onlyDescribes([word]))) return true;
  if (isMarked) return false;
  if (DAYS.test(first)) return !NEVER.has(last);
  const isPlainEnd = !NEVER.has(last) && !onlyDescribes([last]);
  return (
    (isPlainEnd || ENDS_NAMES.test(last)) &&
    (THINGS.test(first) || placeNouns.has(first) || !onlyDescribes([first]))
  );
}

/** Crops whose names are words of everyday. */
const EVERYDAY = whole`box|bay|pan|hop|vine|elder|orange|peach|plum|pear|apple|olive|cherry|mum|laurel|iris|rose|lily|holly|ivy|daisy|violet|poppy|jasmine|heather|mint|sage|thyme|clover`;
