/**
 * Names said without a mark behind what was taken of their crop: "12 dahlia cuttings copper nan in the propagator", "took nine dahlia cuttings plum billy
 * and put them in the hothouse". Growers dictate so; what stands there and is no day, no place, no description and nobody is the name.
 */
import { wordAt } from '../../grammar/rule.js';
import { placeNouns, verbSense } from '../../row/lexicon.js';
import { numberAt } from '../../pieces/numbers.js';
import { whole } from '../../phrases.js';
import type { Piece } from '../../pieces/pieces.js';
import { findPlaces } from '../../pieces/places.js';
import { nameAt } from '../../pieces/told-names/name-piece.js';
import { textAt, type Token } from '../../row/tokens.js';
import { NEVER_WITHIN } from './counted.js';
import { cropLength } from './crop-words-said.js';
import { namesCropBefore, THINGS } from './names-crop-before.js';
import { isCrop } from './position.js';
import { endsPart, type Search } from './search.js';

/** Notes, and the name that is told in each. */
export const phrasings: readonly (readonly [note: string, name: string])[] = [
  ['12 dahlia cuttings copper aunt in the propagator', 'Copper Aunt'],
  ['and 7 salvia cuttings barn bell, porch', 'Barn Bell'],
  ['16 argyranthemum cuttings tramway star spare room', 'Tramway Star'],
  ['took fifteen penstemon cuttings yesterday plovers apron theyre in the cold frame', 'Plovers Apron'],
  ['and ten lavender cuttings this evening muddy katie also in the cold frame', 'Muddy Katie'],
  ['took nine dahlia cuttings plum wilfrid and put them in the hothouse', 'Plum Wilfrid'],
  ['took eight cuttings of the delphinium bishop grey those are in the cold frame', 'Bishop Grey'],
  [
    'took twelve rosemary cuttings there this morning pier lights is the name theyre in the polytunnel',
    'Pier Lights',
  ],
  ['forty plugs of petunia meadow gossip came from the nursery today', 'Meadow Gossip'],
  ['put in 10 fuchsia cuttings cold frame clement in the greenhouse', 'Cold Frame Clement'],
  ['struck 9 penstemons dustpan blue in the porch', 'Dustpan Blue'],
  ['5 verbena cuttings tray pirate cold frame', 'Tray Pirate'],
  ['took nine fuchsia cuttings march otter theyre on the windowsill', 'March Otter'],
  ['9 fuchsia cuttings, tin hat, spare room', 'Tin Hat'],
  ['9 fuchsia cuttings, damson dog, spare room', 'Damson Dog'],
  ['11 fuchsia cuttings, rude hare, spare room', 'Rude Hare'],
];

/** Notes that tell no name there. */
export const mustNot: readonly string[] = [
  '12 dahlia cuttings nice and strong in the propagator',
  '9 penstemon cuttings top shelf',
  '9 fuchsia cuttings, good ones, spare room',
  '9 fuchsia cuttings, tea time, spare room',
  '9 fuchsia cuttings, bloody cat, spare room',
  '9 fuchsia cuttings, bottom heat, spare room',
  '6 salvia cuttings shed roof',
  'took ten dahlia cuttings yesterday really chuffed theyre in the cold frame',
  '6 hebe cuttings two quid each',
  '12 penstemon cuttings short stubby ones in the cold frame',
  '9 salvia cuttings pouring rain so porch',
  '6 hebe cuttings mary dolan in the porch',
  '12 penstemon cuttings peat free compost in the porch',
  'took 8 rosemary cuttings easter monday',
  'took 4 fuchsia cuttings bottom heat in the porch',
  'took 4 fuchsia cuttings good luck to them',
  'took 6 fuchsia cuttings torrential rain in the porch',
  'took 6 fuchsia cuttings loo windowsill',
  'took 6 fuchsia cuttings tea break, porch',
  'took 6 dahlia cuttings square pots in the porch',
  'lost 3 fuchsia cuttings copper aunt in the porch',
];

type Free = Search['free'];

const COUNTED = whole`cuttings|tips|slips|plugs|liners`;
const OF = whole`of|of the|of my|of our|of a|from the|from my|from our|off the|off my|off our`;

/** What may stand between the cuttings and the name: when they were taken, and that they were more. */
const BETWEEN: readonly (readonly string[])[] = [
  'today|yesterday|tonight|earlier|there|too|also|aswell|just now|as well|last night|there now',
  'this morning|this afternoon|this evening|this arvo|yesterday morning|yesterday afternoon|yesterday evening|taken|done|struck|the',
  'on monday|on tuesday|on wednesday|on thursday|on friday|on saturday|on sunday|on the weekend|at the weekend',
]
  .flatMap((phrases) => phrases.split('|').map((phrase) => phrase.split(' ')))
  .sort((a, b) => b.length - a.length);

/** Deeds by which plants come to be there; any other deed before the number says something else of plants that have their name. */
const BEGUN = /^(?:take|strike|stick|insert|do|make|get|buy|receive|propagate|have|snip|start|slip|set|put)$/;

/** What may stand before the number where no deed is told. */
const LEADS = whole`and|also|another|then|plus|right|ok|so|well|hi|hello|now|today|yesterday|further|other|the|did|had|morning|evening|more`;

/** What goes on behind the name. */
const GOES_ON = whole`
  in|into|inside|from|all in|today|yesterday|tonight|this morning|this afternoon|this evening|last night|before|after|while|just now|also in|same place|same as|is the name|is its name|is what
  they're|theyre|they are|those are|these are|them are|he's|hes|she's|shes|it's in|its in|which are|that are|all are
  and put|and popped|and they're|and theyre|and they|and stuck|and set|and stood|put them|came from|came in|came today|arrived
`;

export function namesBehindCuttings({ text, tokens, places, free, claim }: Search): void {
  const placeStarts = new Map<number, number>();
  for (const { from, to } of findPlaces(tokens, places, free)) placeStarts.set(from, to);
  for (let at = 1; at < tokens.length - 1; at++) {
    const behind = free(at) ? behindCuttings(tokens, at) : undefined;
    if (behind === undefined) continue;
    const from = pastTimes(tokens, behind);
    const isLoose = tokens[behind]?.raw === ',' || !isOfCuttings(tokens, at, behind);
    const to = nameEnd(tokens, from, free, (n) => placeStarts.has(n));
    if (to === undefined || placeStarts.get(from) === to) continue;
    // "Loo windowsill" where nothing more is said; no "harbour lights in the porch".
    if (placeNouns.has(textAt(tokens, to - 1)) && !STANDS.test(textAt(tokens, to))) continue;
    // "9 fuchsia cuttings, larder hat, spare room": between the crop and the place, each behind its mark.
    const isListed = tokens[to]?.raw === ',' && placeStarts.has(to + 1) && !placeStarts.has(from);
    if (namesCropBefore(tokens, from, to, isLoose && !isListed))
      claim({ ...nameAt(text, tokens, from, to), besideCuttings: true } as Piece);
  }
}

const STANDS = whole`in|into|is|they're|theyre|those|these|and`;

const isOfCuttings = (tokens: readonly Token[], crop: number, to: number): boolean =>
  tokens.slice(Math.max(0, crop - 3), to).some(({ text }) => COUNTED.test(text));

/** Behind "12 dahlia cuttings", "12 cuttings of the dahlia", where the crop stands at `at` and nothing else was done before. */
function behindCuttings(tokens: readonly Token[], at: number): number | undefined {
  const crop = cropLength(tokens, at);
  if (crop === 0) return undefined;
  const next = at + crop;
  if (COUNTED.test(textAt(tokens, next))) return isTaken(tokens, at) ? next + 1 : undefined;
  const counted = [1, 2, 3].find(
    (n) => COUNTED.test(textAt(tokens, at - n)) && (n === 1 || OF.test(wordsIn(tokens, at - n + 1, at))),
  );
  if (counted !== undefined) return isTaken(tokens, at - counted) ? next : undefined;
  return isStruckItself(tokens, at, next) ? next : undefined;
}

/** "Struck 9 penstemons": the crop itself, for its cuttings. */
function isStruckItself(tokens: readonly Token[], crop: number, next: number): boolean {
  const number = textAt(tokens, next - 1).endsWith('s') ? numberBefore(tokens, crop) : undefined;
  return number !== undefined && /^(?:took|struck|stuck|inserted)$/.test(textAt(tokens, number - 1));
}

/** Whether what stands at `to` is of a number that was taken: "6 more", "eight heel". */
function isTaken(tokens: readonly Token[], to: number): boolean {
  const end = /^(?:more|extra|heel|tip|basal|nodal|softwood|stem|root|leaf|little|nice|good)$/.test(
    textAt(tokens, to - 1),
  )
    ? to - 1
    : to;
  const number = numberBefore(tokens, end);
  return number !== undefined && isBegun(tokens, number);
}

const wordsIn = (tokens: readonly Token[], from: number, to: number): string =>
  tokens
    .slice(Math.max(0, from), to)
    .map((token) => token.text)
    .join(' ');

/** Where the number begins that ends before `to`. */
function numberBefore(tokens: readonly Token[], to: number): number | undefined {
  for (let from = to - 1; from >= 0 && to - from <= 4; from--)
    if (numberAt(tokens, from)?.to === to && tokens[from]?.is !== 'ordinal') {
      while (from > 0 && /^(?:a|another|about)$/.test(textAt(tokens, from - 1))) from--;
      return from;
    }
  return undefined;
}

/** Whether the word before the number takes the cuttings, or opens what is said. */
function isBegun(tokens: readonly Token[], number: number): boolean {
  const before = tokens[number - 1];
  if (before === undefined || before.is !== 'word') return before?.is !== 'number';
  // "Put in 12 dahlia cuttings".
  const at = /^(?:in|on)$/.test(before.text) ? number - 2 : number - 1;
  const verb = verbSense(textAt(tokens, at));
  return verb?.form === 'past' ? BEGUN.test(verb.lemma) : LEADS.test(before.text);
}

/** Past a comma and words of time. */
function pastTimes(tokens: readonly Token[], from: number): number {
  let at = tokens[from]?.raw === ',' ? from + 1 : from;
  for (;;) {
    const words = BETWEEN.find((each) => each.every((word, n) => textAt(tokens, at + n) === word));
    if (words === undefined) return at;
    at += words.length;
    if (tokens[at]?.raw === ',') at++;
  }
}

/** Where two to four words end behind which the telling stops or goes on with a place, a day or a deed. */
function nameEnd(
  tokens: readonly Token[],
  from: number,
  free: Free,
  isPlace: (at: number) => boolean,
): number | undefined {
  for (let to = from; to - from <= 4; to++) {
    if (to - from >= 2 && (isStop(tokens, to) || isPlace(to) || goesOn(tokens, to))) return to;
    const token = tokens[to];
    if (!free(to) || (token?.is !== 'word' && token?.is !== 'number')) return undefined;
    const isWithin = isJoint(tokens, from, to) || (to === from && THINGS.test(token.text));
    if (NEVER_WITHIN.has(token.text) && !isWithin) return undefined;
  }
  return undefined;
}

const isJoint = (tokens: readonly Token[], from: number, at: number): boolean =>
  at > from && /^(?:n|of|on|the)$/.test(textAt(tokens, at));

const isStop = (tokens: readonly Token[], at: number): boolean =>
  endsPart(tokens[at]) || (textAt(tokens, at) === 'and' && numberAt(tokens, at + 1) !== undefined);

const goesOn = (tokens: readonly Token[], at: number): boolean =>
  [1, 2, 3].some((n) => GOES_ON.test(wordsIn(tokens, at, at + n))) ||
  (/^(?:on|at|under)$/.test(textAt(tokens, at)) && /^(?:the|my|our|a)$/.test(textAt(tokens, at + 1)));

/** The row with each such name straight behind its crop, where a time or "as well" stands between them, and without what only says that it is the name. */
export function withNamesBesideCrop(pieces: readonly Piece[]): readonly Piece[] {
  const name = pieces.findIndex((piece) => piece.is === 'plant' && piece.besideCuttings === true);
  const crop = pieces.findLastIndex((piece, at) => at < name && piece.is === 'plant');
  const piece = pieces[name];
  if (piece === undefined || !isCrop(pieces[crop])) return pieces;
  const isSaid = IS_THE_NAME.find((words) => words.every((word, n) => wordAt(pieces, name + 1 + n) === word));
  const behind = pieces.slice(name + 1 + (isSaid?.length ?? 0));
  const between = pieces.slice(crop + 1, name).filter(({ is }) => is !== 'break');
  return [...pieces.slice(0, crop + 1), piece, ...between, ...withNamesBesideCrop(behind)];
}

const IS_THE_NAME = ['is the name', 'is its name'].map((phrase) => phrase.split(' '));
