/**
 * Words that nobody accounts for where a plant would stand: "2 gull lantern rooted", "tat n tails 5 have rooted", "Ferry Queue: 3 with roots",
 * "potted on 5 tat n tails and …". Whatever they mean elsewhere, they are read as a name, so that it is asked about; the lot that is
 * alone or was prompted is not what was said.
 */
import { causes, media, phraseAt, placeNouns, verbSense } from '../../row/lexicon.js';
import { numberAt } from '../../pieces/numbers.js';
import { isThing } from '../../pieces/other-things.js';
import { whole } from '../../phrases.js';
import type { PlaceName } from '../../pieces/places/known.js';
import { nameAt } from '../../pieces/told-names/name-piece.js';
import { textAt, type Token } from '../../row/tokens.js';
import { NEVER_WITHIN } from './counted.js';
import { cropLength } from './crop-words-said.js';
import { onlyDescribes } from './describing.js';
import { isAdverbOrDoing } from './no-names.js';
import { isFirm, isPerson, isTitled } from './people.js';
import { endsPart, type Search } from './search.js';

/** Notes, and the name that is told in each. */
export const phrasings: readonly (readonly [note: string, name: string])[] = [
  ['2 gull lantern rooted', 'Gull Lantern'],
  ['6 of treacle nan got roots already', 'Treacle Nan'],
  ['jot n tittle 5 have rooted', 'Jot N Tittle'],
  ['Ferry Bonnet: 3 with roots now', 'Ferry Bonnet'],
  ['close kettle 5 rooted', 'Close Kettle'],
  ['potted on 5 tin curate and binned the other 2', 'Tin Curate'],
  ['lost 3 of the gull lantern', 'Gull Lantern'],
  ['had a look at the tin curate and nine of them have rooted', 'Tin Curate'],
  ['another 6 cuttings of larder hymn today', 'Larder Hymn'],
  ['took eight penstemon cuttings of widow lantern', 'Widow Lantern'],
  ['took 8 cuttings of wobbly kettle', 'Wobbly Kettle'],
  ['took 8 cuttings of Salt Harrier and 5 of larder hymn', 'Larder Hymn'],
  ['slack order should be 5', 'Slack Order'],
];

/** Notes that tell no name there: they are of the lot that lives. */
export const mustNot: readonly string[] = [
  'three little ones rooted',
  '2 of the leggy ones died',
  'good news: 3 have rooted',
  'looks like 7 with roots',
  'grey mould 2 lost',
  'top shelf: 3 rooted',
  'had a look at the poor things and 4 have roots',
  'checked the heat mat, 5 rooted',
  'slug trouble, 2 lost',
  'lost 2 of the poor babies',
  'plant count should be 5',
  'pot number should be 5',
];

type Free = Search['free'];

/** What is told of plants behind their name. */
const FARES = whole`rooted|have|has|got|had|with|now|rotted|died|dead|struck|potted|showing|gone`;

/** Behind a number that stands behind a name. */
const FARES_BEHIND_NUMBER = whole`rooted|have|has|got|with|rotted|died|potted|more|now|lost|dead|gone|roots`;

/** What befalls so many of a plant. */
const BEFELL = whole`lost|binned|chucked|dumped|composted|potted|sold|gave|given|swapped|planted|pinched`;

const GOES_ON = whole`and|to|into|in|they|they're|today|yesterday|this|last|because|cos|so|but|now|all|both|died|rotted`;

/** Nouns that stand for whatever plants are talked of. */
const ANY_PLANTS = whole`
  things?|babies|baby|beauties|beauty|lads|lasses|fellas|fellows|specimens?|survivors?|monsters?|beasts?|devils?|buggers?|sods?|darlings?|blighters?
  temperatures?|levels?|odds|ends|sorts|allsorts|kinds|varieties|guys|kids|children|heroes|stars|champions|winners|losers|casualties|goners|hopefuls|examples|individuals|growers|growths?|flowers?|lots?|batch|surprises
`;

/** What opens a telling and is no plant. */
const OPENINGS = whole`
  news|update|updates|look|check|checks|report|reports|time|tally|count|result|results|days?|inspection|round|rounds|progress|score|success|luck
  job|work|list|notes?|summary|verdict|call|stuff|chance|like|enough|heavens|god|gosh|god's|lord|morning|evening|afternoon|night|all|folks|everyone|mates?|status|head|total|numbers?|figures?|amount
`;

const ROOTS_BEHIND = whole`of|out|have|has|rooted|with|got|now|more`;
const SORT = whole`tip|basal|nodal|heel|stem|softwood|hardwood|semi-ripe`;
const JOINTS = /^(?:and|n|of)$/;
const ROOTED = /^(?:rooted|roots)$/;

export function unaccountedNames({ text, tokens, places, free, claim }: Search): void {
  for (let at = 0; at < tokens.length; at++) {
    const to = free(at)
      ? (behindCuttingsOf(tokens, at, free) ??
        behindLook(tokens, at, free) ??
        behindNumber(tokens, at, free) ??
        beforeNumber(tokens, at, free))
      : undefined;
    if (to === undefined || isPlaceKnown(tokens, at, to, places)) continue;
    claim(nameAt(text, tokens, at, to));
    at = to - 1;
  }
}

/**
 * "Took eight penstemon cuttings of widow lantern and another eight of corporal plum", "6 tip cuttings of larder hat":
 * whatever the words mean elsewhere.
 */
function behindCuttingsOf(tokens: readonly Token[], at: number, free: Free): number | undefined {
  const before = at - (SORT.test(textAt(tokens, at - 3)) ? 4 : 3);
  const isCuttings =
    textAt(tokens, at - 1) === 'of' &&
    /^(?:cuttings|tips|slips)$/.test(textAt(tokens, at - 2)) &&
    ((free(before) && cropLength(tokens, before) > 0) || numberAt(tokens, before)?.to === before + 1);
  const isAnother =
    textAt(tokens, at - 1) === 'of' &&
    numberAt(tokens, at - 2)?.to === at - 1 &&
    (textAt(tokens, at - 3) === 'another' ||
      // "Took 8 cuttings of wobbly kettle and 5 of larder hymn".
      (textAt(tokens, at - 3) === 'and' &&
        /^(?:cuttings|tips|slips)$/.test(textAt(tokens, cuttingsBefore(tokens, at)))));
  if (!isCuttings && !isAnother) return undefined;
  const to = nameEnd(tokens, at, free);
  if (to === undefined || !isName(tokens, at, to)) return undefined;
  if (isPerson(tokens.slice(at, to).map(({ text }) => text))) return undefined;
  return endsPart(tokens[to]) || /^(?:and|in|into|on|at|both|today|yesterday|this)$/.test(textAt(tokens, to))
    ? to
    : undefined;
}

/** Where cuttings were last counted before `at`. */
const cuttingsBefore = (tokens: readonly Token[], at: number): number =>
  tokens.findLastIndex((_, n) => n < at - 3 && numberAt(tokens, n - 1)?.to === n);

/** "Had a look at the auntie breda and nine of them have rooted", "checked the gull lantern, five rooted". */
function behindLook(tokens: readonly Token[], at: number, free: Free): number | undefined {
  const isThe = /^(?:the|my|our)$/.test(textAt(tokens, at - 1));
  const verb = isThe ? at - 2 : at - 1;
  const isLook =
    /^(?:checked|inspected)$/.test(textAt(tokens, verb)) ||
    (textAt(tokens, verb) === 'at' && /^(?:look|looked|peek|peep)$/.test(textAt(tokens, verb - 1)));
  if (!isLook) return undefined;
  const to = nameEnd(tokens, at, free);
  if (to === undefined || !isName(tokens, at, to) || placeNouns.has(textAt(tokens, to - 1))) return undefined;
  const next = textAt(tokens, to) === 'and' || tokens[to]?.raw === ',' ? to + 1 : to;
  const number = numberAt(tokens, next);
  return number && ROOTS_BEHIND.test(textAt(tokens, number.to)) ? to : undefined;
}

/** "2 gull lantern rooted", "6 of disco nan got roots", "lost 3 of the gull lantern". */
function behindNumber(tokens: readonly Token[], at: number, free: Free): number | undefined {
  let number = textAt(tokens, at - 1) === 'the' ? at - 1 : at;
  if (textAt(tokens, number - 1) === 'of') number--;
  else if (number < at) return undefined;
  const from = [1, 2].find((length) => numberAt(tokens, number - length)?.to === number);
  if (from === undefined) return undefined;
  const to = nameEnd(tokens, at, free);
  if (to === undefined || !isName(tokens, at, to)) return undefined;
  if (FARES.test(textAt(tokens, to)) && opensAt(tokens, number - from)) return to;
  if (!endsPart(tokens[to]) && !GOES_ON.test(textAt(tokens, to))) return undefined;
  const deed = /^(?:on|up|out|off)$/.test(textAt(tokens, number - from - 1))
    ? number - from - 2
    : number - from - 1;
  return BEFELL.test(textAt(tokens, deed)) && !isSomebody(tokens, at, to) ? to : undefined;
}

/** "Tat n tails 5 have rooted", "Ferry Queue: 3 with roots now", "gull lantern 2 of 6 rooted". */
function beforeNumber(tokens: readonly Token[], at: number, free: Free): number | undefined {
  if (!opensAt(tokens, at)) return undefined;
  const to = nameEnd(tokens, at, free);
  if (to === undefined) return undefined;
  const last = textAt(tokens, to - 1);
  if (OPENINGS.test(last) || placeNouns.has(last) || isSomebody(tokens, at, to)) return undefined;
  // "Close cat should be 5": no other lot's number is put right.
  const isMended = textAt(tokens, to) === 'should' && textAt(tokens, to + 1) === 'be';
  if (isMended) return at === 0 && numberAt(tokens, to + 2) && isName(tokens, at, to, true) ? to : undefined;
  const number = numberAt(tokens, /^[:,-]$/.test(tokens[to]?.raw ?? '') ? to + 1 : to);
  const next = number?.to ?? tokens.length;
  const behind = textAt(tokens, next);
  // "Close cat 5 rooted": nothing roots by a cat.
  const rooted =
    ROOTED.test(behind) || (/^(?:have|has)$/.test(behind) && ROOTED.test(textAt(tokens, next + 1)));
  if (!isName(tokens, at, to, rooted)) return undefined;
  // "4 of 6", "4 out of 6"; no "resist forty of the …".
  const of =
    number && behind === 'of' ? number.to + 1 : number && behind === 'out' ? number.to + 2 : undefined;
  const fares = of === undefined ? FARES_BEHIND_NUMBER.test(behind) : numberAt(tokens, of) !== undefined;
  return fares ? to : undefined;
}

/** Where a telling begins: the note, a sentence, or what "and" joins. */
const opensAt = (tokens: readonly Token[], at: number): boolean =>
  at === 0 ||
  /^(?:mark|line)$/.test(tokens[at - 1]?.is ?? '') ||
  /^(?:and|but|also|so|got|have|has|only|now|another|all|about|just|had|today|yesterday|of)$/.test(
    textAt(tokens, at - 1),
  );

/** Where two to four words end that may be of a name; at what is told of it. */
function nameEnd(tokens: readonly Token[], at: number, free: Free): number | undefined {
  let to = at;
  while (to - at < 5 && free(to) && isOfName(tokens, at, to)) to++;
  return to - at < 2 || to - at > 4 ? undefined : to;
}

function isOfName(tokens: readonly Token[], from: number, at: number): boolean {
  const token = tokens[at];
  if (token?.is !== 'word') return false;
  const word = token.text;
  // "Tat n tails", "Cup of Tin".
  if (token.raw.toLowerCase() === 'n') return at > from;
  if (word === 'of') return at > from && tokens[at - 1]?.capital === true;
  return (
    !NEVER_WITHIN.has(word) &&
    !(at > from && (FARES.test(word) || GOES_ON.test(word))) &&
    verbSense(word)?.form !== 'past' &&
    !isAdverbOrDoing(word) &&
    !/(?:n't|'(?:d|ve|ll|m|re))$/.test(word) &&
    numberAt(tokens, at) === undefined &&
    cropLength(tokens, at) === 0
  );
}

/** No description, no medium, nothing that stands for any plants, and no cause where one may be told. */
/** Words that may be a name by what they are: no description, no cause, nothing that stands for any plant. */
export function isName(tokens: readonly Token[], from: number, to: number, rooted = false): boolean {
  const words = tokens.slice(from, to).map(({ text }) => text);
  const last = words.at(-1) ?? '';
  return (
    !onlyDescribes(words) &&
    !JOINTS.test(last) &&
    !ANY_PLANTS.test(last) &&
    !isThing(last) &&
    !/(?:'s|s')$/.test(last) &&
    !words.some((_, at) => (!rooted && phraseAt(causes, words, at)) || phraseAt(media, words, at))
  );
}

const isSomebody = (tokens: readonly Token[], from: number, to: number): boolean => {
  const words = tokens.slice(from, to).map(({ text }) => text);
  // "Close Cat", but "Cat Close".
  return isPerson(words) || isTitled(words) || isFirm(words.slice(1));
};

const isPlaceKnown = (
  tokens: readonly Token[],
  from: number,
  to: number,
  places: readonly PlaceName[],
): boolean => {
  const words = tokens.slice(from, to).map(({ text }) => text.replace(/'/g, ''));
  return places.some((place) => place.words.every((word, n) => words[n] === word));
};
