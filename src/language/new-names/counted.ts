/** Names told between a number and a crop: whatever its words mean elsewhere, "six monday blanket salvia" names the salvia. */
import { crops, phraseAt, verbSense } from '../lexicon.js';
import { numberAt } from '../numbers.js';
import { whole, wordsOf } from '../phrases.js';
import type { Piece } from '../pieces.js';
import { textAt, type Token } from '../tokens.js';
import { titleCase } from '../told-names.js';
import { LED_BY, onlyDescribes } from './describing.js';
import { isPerson } from './people.js';

type Claim = (piece: Piece) => boolean;

/** Words that stand in no name, so that none goes past them. */
const NEVER_WITHIN: ReadonlySet<string> = new Set(wordsOf`
  i we he she they it you me us them him my her our your his its their own mine yours ours theirs hers a an this that these those and & or but than so
  if as because while yes no not to in into on onto from off ex with without for at by under over out up down about through during till until after before
  of since per apiece near beside behind each every all some any both which who what when where why how
  is are was were be been being am has have had do did does can could will would should
  am pm oclock o'clock minutes mins min hours hrs hour days weeks months years degrees celsius cm mm inch inches in ins litre litres liter ltr gallon gal quart ml l percent pence quid
  p x cells cell times only just also too still yet again already here there now then today yesterday tomorrow tonight ones one's
  cuttings cutting slips tips pots pot trays tray plugs plants shoots stems bits pieces tubers crowns divisions seedlings roots leaves nodes heads
  i'm i've i'll it's its that's they're there's thanks please ta
`);

/** What is counted of a plant. */
const COUNTED = whole`
  cuttings?|tips?|slips?|bits?|pieces?|sprigs?|stems?|shoots?|plugs?|liners?|plants?|pots?|trays?|tubers?|crowns?|divisions?|leaves|nodes?|starts?
  stalks?|sticks?|lengths|basals|heels?|offsets|runners|seedlings|layers|couple|some|more|few|lots|dozen
`;

const TAKING = whole`took|taken|tk|struck|stuck|did|done|made|cut|inserted|rooted|propagated|got|bought|received|had|potted|lost|binned|sold|gave|swapped|and|also|,`;

/** Before an article, what tells that a plant was come by: "bought a …", "home with a …". */
const COMING_BY = whole`bought|got|given|brought|scored|bagged|inherited|treated|acquired|with|found|won|ordered|received|adopted|for|of|potted|picked|up|home|myself|me|ourselves`;

/** A number behind these counts nothing: "at 6", "bench 2", "order 2213". */
const NUMBERS_NO_PLANTS = whole`
  at|by|until|till|around|about|past|no|number|bench|tray|tunnel|house|shelf|bay|bed|block|row|plot|zone|frame|polytunnel|glasshouse|greenhouse
  order|invoice|docket|batch|page|week|day|in|to|from|since|on
`;

/** Crops named by words that everyday talk uses as often: no name is told by these alone. */
const EVERYDAY = whole`box|boxes|bay|bays|pans?|hops?|vines?|elder|orange|peach|plum|pear|apple|olive|cherry|mum|laurel|iris`;

const MONTH = /^(?:jan|feb|mar|apr|jun|jul|aug|sep|oct|nov|dec)[a-z]*$|^(?:may|march|april|june|july)$/;

/** Where a crop begins, and of how many words. */
function cropLength(tokens: readonly Token[], at: number): number {
  const words = [0, 1, 2].map((n) => textAt(tokens, at + n).replace(/'s$/, ''));
  return phraseAt(crops, words, 0)?.words.length ?? 0;
}

/** Joins words within a name: "queen of the bins", "salt and vinegar". */
function jointBefore(tokens: readonly Token[], at: number): number {
  if (
    textAt(tokens, at) === 'the' &&
    textAt(tokens, at - 1) === 'of' &&
    !COUNTED.test(textAt(tokens, at - 2))
  )
    return 2;
  if (textAt(tokens, at) === 'the' && textAt(tokens, at - 1) === 'on') return 0;
  return textAt(tokens, at) === 'of' && !COUNTED.test(textAt(tokens, at - 1)) ? 1 : 0;
}

/** What stands before a name from `start` on and tells that a plant follows; "number" where it counts it. */
function leadBefore(tokens: readonly Token[], start: number): 'number' | 'of' | 'article' | undefined {
  let at = start - 1;
  const last = textAt(tokens, at);
  if (/^an?$/.test(last)) {
    const verb = textAt(tokens, at - 1);
    return COMING_BY.test(verb) && !/^(?:of|for)$/.test(verb) ? 'article' : undefined;
  }
  if (/^(?:the|my|our|that|this|these|those|her|his|your|their)$/.test(last)) at--;
  if (/^(?:of|off|from)$/.test(textAt(tokens, at))) {
    const counted = textAt(tokens, at - 1);
    return COUNTED.test(counted) || numberBefore(tokens, at) ? 'of' : undefined;
  }
  if (at < start - 1) return undefined;
  if (COUNTED.test(last) && !/^(?:some|few|lots|couple|dozen|more)$/.test(last))
    return numberBefore(tokens, at) ? 'number' : undefined;
  if (last === 'x') return numberBefore(tokens, at) ? 'number' : undefined;
  return numberBefore(tokens, start) ? 'number' : undefined;
}

/** Whether a number that may count plants ends at `to`. */
function numberBefore(tokens: readonly Token[], to: number): boolean {
  if (to <= 0) return false;
  for (let from = to - 1; from >= 0 && to - from <= 4; from--) {
    const number = numberAt(tokens, from);
    if (number?.to !== to) continue;
    const before = textAt(tokens, from - 1);
    // "Potted on 4 wet slate salvias".
    const isVerbs = /^(?:on|in)$/.test(before) && verbSense(textAt(tokens, from - 2))?.form === 'past';
    if (NUMBERS_NO_PLANTS.test(before) && !isVerbs) return false;
    if (tokens[from - 1]?.raw === '/' || (tokens[from - 1]?.raw === ':' && tokens[from]?.glued)) return false;
    // "24 nine bob duchess": the second is of the name.
    if (tokens[from]?.is === 'word' && tokens[from - 1]?.is === 'number') return false;
    return tokens[from]?.is !== 'ordinal';
  }
  return false;
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
  else while (end - start > 1 && LED_BY.test(textAt(tokens, start))) start++;
  return /^(?:of|the)$/.test(textAt(tokens, start)) ? undefined : start;
}

function isNameHere(
  tokens: readonly Token[],
  from: number,
  end: number,
  lead: 'number' | 'of' | 'article',
  isTitle: boolean,
): boolean {
  const words = tokens.slice(from, end).map(({ text }) => text);
  const written =
    !isTitle && tokens.slice(from, end).every(({ capital, text }) => capital || /^(?:of|the)$/.test(text));
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

/** Words that say of a name what crop it is: "its a pothos", "which is apparently a coleus", "it's one of the fuchsias". */
function cropSaidAt(tokens: readonly Token[], at: number): boolean {
  let next = at;
  if (/^(?:it|that|which|they)$/.test(textAt(tokens, next))) next++;
  const verb = textAt(tokens, next);
  if (next > at ? !/^(?:is|was|are)$/.test(verb) : !/^(?:that's|thats|it's|its|they're|theyre)$/.test(verb))
    return false;
  next++;
  while (
    /^(?:apparently|actually|basically|supposedly|probably|really|just|i|think|believe)$/.test(
      textAt(tokens, next),
    )
  )
    next++;
  const article = next;
  while (/^(?:a|an|the|my|our|one|of|another|new|kind|sort|type|some)$/.test(textAt(tokens, next))) next++;
  return next > article && cropLength(tokens, next) > 0;
}

export function countedNames(
  text: string,
  tokens: readonly Token[],
  free: (at: number) => boolean,
  claim: Claim,
): void {
  const shouted = tokens.every(({ is, raw }) => is !== 'word' || raw === raw.toUpperCase());
  for (let at = 2; at < tokens.length; at++) {
    if (!free(at)) continue;
    const crop = at;
    const length = cropLength(tokens, at);
    if (length > 1) at += length - 1;
    const isSaid = length === 0 && cropSaidAt(tokens, at);
    if (length === 0 && !isSaid) continue;
    const end = isSaid && tokens[crop - 1]?.raw === ',' ? crop - 1 : crop;
    if (!isSaid && !endsName(tokens, crop, length)) continue;
    const isTitle = shouted || (!isSaid && tokens[crop]?.capital === true);
    const from = isSaid
      ? (openingBefore(tokens, end, free) ?? beginningOf(tokens, end, free, 1, isTitle))
      : beginningOf(tokens, end, free, 2, isTitle);
    if (from === undefined) continue;
    const name = text.slice(tokens[from]?.start ?? 0, tokens[end - 1]?.end ?? 0);
    claim({ is: 'plant', from, to: end, known: false, plant: { variety: titleCase(name) } });
  }
}

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
