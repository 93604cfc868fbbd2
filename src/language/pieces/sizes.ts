/** Sizes of pots and trays: a number with its unit. */
import { NUMBER_WORDS, numberAt } from './numbers.js';
import { startsWithFigure, type Token } from '../row/tokens.js';

/** Parts of a container that things are put round. */
export const EDGES = /^(?:edges?|sides?|rims?|outside)$/;

const UNITS: Readonly<Record<string, string>> = {
  cm: 'cm', cms: 'cm', centimetre: 'cm', centimetres: 'cm', centimeter: 'cm', centimeters: 'cm', mm: 'mm', mil: 'mm', millimetre: 'mm', millimetres: 'mm',
  in: 'in', inch: 'in', inches: 'in', ins: 'in', '"': 'in', l: 'l', litre: 'l', litres: 'l', liter: 'l', liters: 'l', lt: 'l', ltr: 'l', ltrs: 'l', ls: 'l', lit: 'l',
  ml: 'ml', mls: 'ml', qt: 'qt', quart: 'qt', quarts: 'qt', gal: 'gal', gallon: 'gal', gallons: 'gal', cell: 'cell', cells: 'cell', celled: 'cell', hole: 'cell', holes: 'cell', module: 'cell', plug: 'cell', pack: 'cell', packs: 'cell', count: 'cell', ct: 'cell',
}; // prettier-ignore

export const CONTAINERS: ReadonlySet<string> = new Set(
  'pot pots potful potfuls tray trays trayful trayfuls jar jars glass glasses cup cups pan pans tub tubs punnet punnets container containers bag bags box boxes bucket buckets dish dishes basket baskets module modules tumbler tumblers jug jugs mug mugs flat flats pottle pottles tube tubes bottle bottles planter planters vase vases bundle bundles strip strips'.split(
    ' ',
  ),
);

export interface FoundSize {
  readonly size: string;
  readonly to: number;
  /** A word for the container follows and is taken in ("9cm pots"). */
  readonly container: boolean;
}

/** Pots by their width in centimetres ("into nines"). */
const BY_WIDTH: Readonly<Record<string, number>> = { sevens: 7, eights: 8, nines: 9, tens: 10, elevens: 11 };

const text = (tokens: readonly Token[], at: number): string => tokens[at]?.text ?? '';

/** What a size or a temperature may begin with, beside figures: most words begin none. */
const OPENING: ReadonlySet<string> = new Set([
  ...[
    'gallon',
    'gallons',
    'quart',
    'quarts',
    'litre',
    'litres',
    'liter',
    'liters',
    'pint',
    'minus',
    'negative',
    '-',
  ],
  ...Object.keys(BY_WIDTH),
  ...NUMBER_WORDS,
]);

/** Whether a token may begin a size or a temperature. */
export const mayMeasure = (token: Token | undefined): boolean =>
  token !== undefined && (OPENING.has(token.text) || startsWithFigure(token));

/** The size that begins at token `at`: "9cm", "3 inch pots", "2L", "72-cell tray", `4"`, "half litre". */
export function sizeAt(tokens: readonly Token[], at: number): FoundSize | undefined {
  if (!mayMeasure(tokens[at])) return undefined;
  // "A gallon pot", "quart tubs": one of them.
  if (
    /^(?:gallon|quart|litre|liter|pint)$/.test(text(tokens, at)) &&
    CONTAINERS.has(text(tokens, at + 1)) &&
    tokens[at - 1]?.is !== 'number'
  )
    return text(tokens, at) === 'pint'
      ? undefined
      : withContainer(tokens, `1${UNITS[text(tokens, at)]}`, at + 1);
  const halfLitre = text(tokens, at) === 'half' && /^(?:litre|liter|l)$/.test(text(tokens, at + 1));
  if (halfLitre) return withContainer(tokens, '500ml', at + 2);
  // "Into gallons", "one-litre" without its one, "in 84s".
  if (
    /^(?:gallons|gallon|quarts|quart|litres|liters)$/.test(text(tokens, at)) &&
    /^(?:into|in|to|on|up|a|one|an)$/.test(text(tokens, at - 1))
  )
    return withContainer(tokens, `1${UNITS[text(tokens, at)]}`, at + 1);
  // "Into 140s": pots by their width in millimetres, which no tray counts.
  if (
    text(tokens, at + 1) === 's' &&
    tokens[at + 1]?.glued === true &&
    /^(?:into|in|to)$/.test(text(tokens, at - 1)) &&
    /^(?:75|90|100|125|140|165|175|180|190)$/.test(text(tokens, at))
  )
    return withContainer(tokens, `${text(tokens, at)}mm`, at + 2);
  if (
    text(tokens, at + 1) === 's' &&
    tokens[at + 1]?.glued === true &&
    tokens[at]?.is === 'number' &&
    Number(text(tokens, at)) >= 20
  )
    return { ...withContainer(tokens, `${text(tokens, at)}cell`, at + 2), container: true };
  // "Up into 9s": nobody's pots of that number are inches.
  if (
    text(tokens, at + 1) === 's' &&
    tokens[at + 1]?.glued === true &&
    /^(?:into|in|to)$/.test(text(tokens, at - 1)) &&
    /^(?:[7-9]|1\d)$/.test(text(tokens, at))
  )
    return withContainer(tokens, `${text(tokens, at)}cm`, at + 2);
  const word = text(tokens, at);
  if (/^(?:into|in|to)$/.test(text(tokens, at - 1)) && Object.hasOwn(BY_WIDTH, word))
    return withContainer(tokens, `${BY_WIDTH[word]}cm`, at + 1);
  const found = numberAt(tokens, at);
  if (!found || found.collective || found.value <= 0) return undefined;
  let { value, to } = found;
  if (text(tokens, to) === 'and' && text(tokens, to + 1) === 'a' && text(tokens, to + 2) === 'half') {
    value += 0.5;
    to += 3;
  }
  if (text(tokens, to) === '-') to++;
  const raw = text(tokens, to);
  const unit = Object.hasOwn(UNITS, raw) ? UNITS[raw] : undefined;
  if (unit === undefined) return undefined;
  const glued = tokens[to]?.glued === true;
  const container =
    CONTAINERS.has(text(tokens, to + 1)) ||
    (text(tokens, to + 1) === 'square' && CONTAINERS.has(text(tokens, to + 2)));
  if (
    raw === '"' &&
    (!glued ||
      (tokens[to + 1]?.glued === true &&
        !/^[,.;)]$/.test(text(tokens, to + 1)) &&
        !CONTAINERS.has(text(tokens, to + 1))))
  )
    return undefined;
  // "Potted on the Salt Harrier, 4 in": alone behind a break, where potting was told.
  const alone =
    tokens[at - 1]?.is === 'mark' &&
    (tokens[to + 1] === undefined || tokens[to + 1]?.is === 'mark') &&
    tokens.slice(0, at).some((token) => /^(?:re)?pot(?:ted)?$|^upsized$/.test(token.text));
  if (raw === 'in' && alone) return withContainer(tokens, `${value}${unit}`, to + 1);
  // "put 2 in the frame": a lone "in" is a unit only when it touches its number or a container follows an "into".
  if (raw === 'in' && !glued && !(container && /^(?:into|to|in|on|up|the|own|x)$/.test(text(tokens, at - 1))))
    return undefined;
  if (raw === 'in' && glued && /^(?:the|a|my|each)$/.test(text(tokens, to + 1))) return undefined;
  // "14 in 1Ls".
  if (raw === 'ls' && !glued) return undefined;
  if (raw === 'l' && !glued && !container && !/^(?:into|to|in|on)$/.test(text(tokens, at - 1)))
    return undefined;
  if (
    unit === 'cell' &&
    /^(?:pack|packs)$/.test(raw) &&
    tokens[to]?.glued !== true &&
    tokens[to - 1]?.raw !== '-' &&
    !(value === 4 || value === 6 || value === 8 || value === 9 || value === 12)
  )
    return undefined;
  if (
    unit === 'cell' &&
    /^(?:module|plug|hole|holes|count|ct)$/.test(raw) &&
    !/^(?:trays?|flats?)$/.test(text(tokens, to + 1))
  )
    return undefined;
  // "One cell each" is no tray.
  if (/^(?:cell|cells)$/.test(raw) && (!Number.isInteger(value) || value === 1)) return undefined;
  return withContainer(tokens, `${value}${unit}`, to + 1);
}

function withContainer(tokens: readonly Token[], size: string, to: number): FoundSize {
  let end = to;
  if (
    /^(?:square|deep|round|plastic|clay|terracotta|plug|module|seed)$/.test(text(tokens, end)) &&
    CONTAINERS.has(text(tokens, end + 1))
  )
    end++;
  // "Two 12-cell packs"; of anything else a pack is no container.
  const container =
    CONTAINERS.has(text(tokens, end)) ||
    (size.endsWith('cell') && /^packs?$/.test(text(tokens, end)) && !/^packs?$/.test(text(tokens, end - 1)));
  return { size, to: container ? end + 1 : end, container };
}
