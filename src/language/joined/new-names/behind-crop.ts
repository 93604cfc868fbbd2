/** Names beside their crop where the telling begins: "salvia cold tap 12 cuttings", "prawn cocktail coleus arrived, 12 plugs". */
import { isKnown, placeNouns, verbSense } from '../../row/lexicon.js';
import { numberAt } from '../../pieces/numbers.js';
import { nameAt } from '../../pieces/told-names/name-piece.js';
import { textAt, type Token } from '../../row/tokens.js';
import { leadBefore } from './before-name.js';
import { NEVER_WITHIN } from './counted.js';
import { cropLength } from './crop-words-said.js';
import { LED_BY, onlyDescribes } from './describing.js';
import { isAdverbOrDoing, NEVER } from './no-names.js';
import { isPerson, isTitled } from './people.js';
import { endsPart, type Search } from './search.js';

const CUTTINGS = /^(?:cuttings?|tips|slips|basals|taken|struck|stuck|inserted|done)$/;
const TOOK = /^(?:took|tk|struck|stuck|taken|did)$/;

export function namesBehindCrop({ text, tokens, free, claim }: Search): void {
  for (let at = 0; at < tokens.length - 3; at++) {
    if (!opensTelling(tokens, at) || !free(at)) continue;
    const crop = cropLength(tokens, at);
    if (crop === 0) continue;
    const from = at + crop;
    let to = from;
    while (to - from < 4 && free(to) && isOfName(tokens[to])) to++;
    const words = tokens.slice(from, to).map((token) => token.text);
    if (words.length < 2 || words.length > 3) continue;
    if (words.every((word) => NEVER.has(word) || onlyDescribes([word]))) continue;
    if (!isTaken(tokens, to)) continue;
    claim(nameAt(text, tokens, from, to));
  }
}

/** "Prawn cocktail coleus arrived, 12 plugs": words that begin a telling, one of them in nobody's mouth every day. */
export function namesOpening({ text, tokens, free, claim }: Search): void {
  for (let at = 0; at < tokens.length - 3; at++) {
    if (!opensTelling(tokens, at)) continue;
    let from = at;
    while (LED_BY.test(textAt(tokens, from))) from++;
    let to = from;
    while (to - from < 4 && free(to) && isOfName(tokens[to]) && cropLength(tokens, to) === 0) to++;
    const words = tokens.slice(from, to).map((token) => token.text);
    const crop = cropLength(tokens, to);
    if (words.length < 2 || crop === 0 || !free(to) || words.every(isKnown) || onlyDescribes(words)) continue;
    if (/'s$/.test(words.at(-1) ?? '') || !isToldOf(tokens, to + crop)) continue;
    claim(nameAt(text, tokens, from, to));
  }
}

/** Behind the crop: "arrived", "cuttings, 12", ", 12 cuttings". */
function isToldOf(tokens: readonly Token[], at: number): boolean {
  if (/^(?:arrived|came|taken|struck)$/.test(textAt(tokens, at))) return true;
  const isNamed = /^(?:cuttings|plugs|liners|tips)$/.test(textAt(tokens, at));
  let next = isNamed ? at + 1 : at;
  if (/^[,:-]$/.test(tokens[next]?.raw ?? '')) next++;
  const number = numberAt(tokens, next);
  return number !== undefined && (isNamed || CUTTINGS.test(textAt(tokens, number.to)));
}

/** "8 cuttings of my coleus disco nan, in water": words behind the crop that cuttings are of, and nothing more said of them. */
export function namesOfParent({ text, tokens, free, claim }: Search): void {
  for (let at = 2; at < tokens.length - 1; at++) {
    const crop = free(at) ? cropLength(tokens, at) : 0;
    if (crop === 0 || leadBefore(tokens, at) !== 'of') continue;
    const from = at + crop;
    let to = from;
    while (to - from < 4 && free(to) && isOfName(tokens[to])) to++;
    const words = tokens.slice(from, to).map((token) => token.text);
    if (words.length < 2 || words.length > 3 || onlyDescribes(words) || /(?:'s|s')$/.test(words.at(-1) ?? ''))
      continue;
    // Written as a name it is known by that.
    if (tokens.slice(from, to).some(({ capital }) => capital)) continue;
    // "… the fuchsia mary dolan in the club": of whom, as likely as what.
    const isSomebody = isPerson(words);
    if (!isSomebody && !isTitled(words) && words.every(isKnown)) continue;
    const isTold = textAt(tokens, to) === 'and' && THEY.test(textAt(tokens, to + 1));
    if (endsPart(tokens[to]) || isTold || (isSomebody ? WHEN : WHEN_OR_WHERE).test(textAt(tokens, to)))
      claim(nameAt(text, tokens, from, to));
  }
}

/** "… and they've gone in the propagator". */
const THEY = /^(?:they|they've|they're|theyre|theyve|it|it's|put|stuck|popped|i|i've)$/;
const WHEN = /^(?:today|yesterday|this|they're|theyre)$/;
const WHEN_OR_WHERE = /^(?:today|yesterday|this|they're|theyre|in|into)$/;

const opensTelling = (tokens: readonly Token[], at: number): boolean =>
  at === 0 || tokens[at - 1]?.is === 'line' || /^[.!;]$/.test(tokens[at - 1]?.raw ?? '');

const isOfName = (token: Token | undefined): boolean =>
  token?.is === 'word' &&
  !NEVER_WITHIN.has(token.text) &&
  !placeNouns.has(token.text) &&
  verbSense(token.text) === undefined &&
  !isAdverbOrDoing(token.text);

/** "12 cuttings", "15 taken", "took 8". */
function isTaken(tokens: readonly Token[], at: number): boolean {
  const number = numberAt(tokens, TOOK.test(textAt(tokens, at)) ? at + 1 : at);
  return number !== undefined && (TOOK.test(textAt(tokens, at)) || CUTTINGS.test(textAt(tokens, number.to)));
}
