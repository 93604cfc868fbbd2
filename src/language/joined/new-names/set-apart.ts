/** Names set apart behind what was taken of their crop: "5 coleus cuttings too, Neon Gravy, on the sill", "…, the trailing one, Gull Ledge". */
import { isKnown, placeNouns } from '../../row/lexicon.js';
import { numberAt } from '../../pieces/numbers.js';
import { whole } from '../../phrases.js';
import type { Piece } from '../../pieces/pieces.js';
import { nameAt } from '../../pieces/told-names/name-piece.js';
import { textAt, type Token } from '../../row/tokens.js';
import { cropLength } from './crop-words-said.js';
import { COLOURS, onlyDescribes } from './describing.js';
import { NEVER, isWish } from './no-names.js';
import { isFirm, isPerson } from './people.js';
import { endsPart, type Search } from './search.js';

/** Notes, and the name that is told in each. */
export const phrasings: readonly (readonly [note: string, name: string])[] = [
  ['5 coleus cuttings too, Treacle Moon, bathroom windowsill', 'Treacle Moon'],
  ['16 correa cuttings taken as well, Magpie Hymn, in the shade house', 'Magpie Hymn'],
  ['5 cuttings of rosemary, the trailing one, Gull Verger', 'Gull Verger'],
  ["Took 30 lavender cuttings this arvo, Shearer's Monday, all heel cuttings", "Shearer's Monday"],
  ['15 chrysanth cuttings taken, Uncle Osbert, in the propagator', 'Uncle Osbert'],
  ['took 9 tradescantia cuttings too, Purple Kettle, on the sill', 'Purple Kettle'],
  ['20 verbena plugs came in the mail, Burnt Bonnet', 'Burnt Bonnet'],
  ['took 18 verbena cuttings, Marching Vicar, now on the classroom windowsill', 'Marching Vicar'],
];

/** Notes that tell no name there. */
export const mustNot: readonly string[] = [
  'took 5 coleus cuttings, Peat Free, in the porch',
  'took 5 coleus cuttings, Mary Dolan, in the porch',
  'took 5 coleus cuttings, Hexley Market, in the porch',
  'took 5 coleus cuttings, Cold Frame, all tips',
  'took 5 coleus cuttings, Happy Birthday',
];

type Free = Search['free'];

/** What may stand between the crop and the mark before its name. */
const BETWEEN = whole`
  cuttings?|tips|slips|plugs|liners|taken|took|done|did|struck|stuck|inserted|in|as|well|aswell|too|also|today|yesterday|this|last|morning|afternoon|evening|arvo|night|week|weekend
  came|come|arrived|mail|post|all|heel|tip|nodal|basal|softwood|hardwood|semi-ripe|leaf|the|one|ones|on|at|now|just
  monday|tuesday|wednesday|thursday|friday|saturday|sunday
`;

const BEGUN = whole`took|taken|done|did|struck|stuck|inserted|came|arrived|received|cuttings|slips|tips|plugs|liners`;

/** "Peat Free", "Easter Monday". */
const NO_NAMES = whole`rooting|peat|bank|easter|christmas|new|see`;

export function namesSetApart({ text, tokens, free, claim }: Search): void {
  if (isTitled(tokens)) return;
  for (let at = 3; at < tokens.length; at++) {
    if (tokens[at - 1]?.raw !== ',') continue;
    const to = nameEnd(tokens, at, free);
    if (to !== undefined && isOfCropBefore(tokens, at - 1, free))
      claim({ ...nameAt(text, tokens, at, to), besideCuttings: true } as Piece);
  }
}

/** Two words or more, each with a capital, up to a mark or the end: no place, nobody, and no day by itself. */
function nameEnd(tokens: readonly Token[], from: number, free: Free): number | undefined {
  let to = from;
  while (free(to) && tokens[to]?.is === 'word' && tokens[to]?.capital === true) to++;
  if (!endsPart(tokens[to]) && tokens[to]?.raw !== ')') return undefined;
  const words = tokens.slice(from, to).map((token) => token.text);
  const isPlace = placeNouns.has(words.at(-1) ?? '') && words.every(isKnown);
  const isNone =
    words.length < 2 ||
    words.length > 4 ||
    isPlace ||
    NO_NAMES.test(words[0] ?? '') ||
    isWish(words) ||
    (NEVER.has(words[0] ?? '') && !COLOURS.has(words[0] ?? '')) ||
    (onlyDescribes(words) && !isDayOwned(words)) ||
    words.some((_, n) => cropLength(tokens, from + n) > 0) ||
    /(?:'s|s')$/.test(words.at(-1) ?? '') ||
    isFirm(words.slice(1)) ||
    (isPerson(words) && !TITLE.test(words[0] ?? ''));
  return isNone ? undefined : to;
}

/** "Shearer's Sunday". */
const isDayOwned = ([whose = '', day = '', more]: readonly string[]): boolean =>
  more === undefined && /(?:'s|s')$/.test(whose) && /day$/.test(day);

/** "Uncle Wilf": behind "15 chrysanth cuttings taken," a name as likely as any. */
const TITLE =
  /^(?:auntie|aunt|aunty|uncle|nan|nana|gran|granny|grandma|grandad|grandpa|cousin|sister|brother)$/;

/** Whether the sentence up to the mark at `mark` tells of one crop only, of so many taken, and of nothing behind it. */
function isOfCropBefore(tokens: readonly Token[], mark: number, free: Free): boolean {
  let opens = mark;
  while (opens > 0 && !/^[.!?;:]$/.test(tokens[opens - 1]?.raw ?? '') && tokens[opens - 1]?.is !== 'line')
    opens--;
  const crops = [...tokens.keys()].filter(
    (at) => at >= opens && at < mark && free(at) && cropLength(tokens, at) > 0,
  );
  const [crop, another] = crops;
  if (crop === undefined || (another !== undefined && another !== crop + 1)) return false;
  const words = tokens.slice(opens, mark).map((_, n) => textAt(tokens, opens + n));
  const isCounted = words.some((_, n) => numberAt(tokens, opens + n) !== undefined);
  if (!isCounted || !words.some((word) => BEGUN.test(word))) return false;
  if (tokens.slice(opens, mark).some((_, n) => !free(opens + n))) return false;
  const behind = tokens.slice(crop + cropLength(tokens, crop), mark);
  const comma = behind.findIndex(({ raw }) => raw === ',');
  const told = comma < 0 ? behind : behind.slice(0, comma);
  const apart = comma < 0 ? [] : behind.slice(comma + 1).map((token) => token.text);
  return (
    told.every((token) => BETWEEN.test(token.text)) &&
    (apart.length === 0 || /^(?:the|a|my) (?:[a-z-]+ ){1,2}one$/.test(apart.join(' ')))
  );
}

/** A note of which every word has a capital tells no name by one. */
const isTitled = (tokens: readonly Token[]): boolean => {
  const words = tokens.filter(({ is, text }) => is === 'word' && text.length > 3);
  return words.filter(({ capital }) => capital).length > words.length * 0.7;
};
