/** Where things stand: places the ledger knows, and places that only the words tell of. */
import { genericAt, NUMBERED } from './places/generic.js';
import { knownAt, type PlaceName } from './places/known.js';
import { tailEnd } from './places/tails.js';
import { textAt, type Token } from '../row/tokens.js';

export interface FoundPlace {
  readonly from: number;
  readonly to: number;
  readonly place: string;
  readonly known: boolean;
}

/** What stands inside a room or a house. */
const FURNITURE = /^(?:shelf|windowsill|sill|bench|ledge|table|floor|window)$/;

/** "Garage heat mat": what warms or lights what stands in a room. */
const WARMED = /^(?:heat|heated|light|lights) (?:mat|mats|pad|bench|shelf|stand|rack)$/;

/** What such a thing is fixed to. */
const WITHIN = /^(?:rail|railing|wall|corner|side|end|door|window|back|top|bottom)$/;

/** All places, of those `names` and others; `free(n)` says that token n belongs to nothing yet. */
export function findPlaces(
  tokens: readonly Token[],
  names: readonly PlaceName[],
  free: (at: number) => boolean,
): readonly FoundPlace[] {
  const finds: FoundPlace[] = [];
  const plain = tokens.map(({ text }) => text.replaceAll("'", ''));
  for (let at = 0; at < tokens.length; at++) {
    if (!free(at) || tokens[at]?.is === 'mark' || tokens[at]?.is === 'line') continue;
    const known = knownAt(plain, tokens, at, names, free);
    const generic = known === undefined || isHouse(known.place) ? genericAt(tokens, at, free) : undefined;
    // "The cold house" beside a house that is known.
    const own = generic && known && generic.from < known.from ? undefined : known;
    const room = own ?? generic;
    if (!room) continue;
    const whole = withFurniture({ ...room, known: own !== undefined }, tokens, free);
    const found = asWritten(withTail(withLetter(whole, tokens, free), tokens, free), tokens);
    const last = finds.at(-1);
    if (last && found.from < last.to) continue;
    finds.push(found);
    at = found.to - 1;
  }
  return finds;
}

/** "Prop bench", which the ledger does not know: of a propagator or for propagation, so that it stays as it is written. */
function asWritten(found: FoundPlace, tokens: readonly Token[]): FoundPlace {
  const short = tokens.slice(found.from, found.to).some(({ raw }) => raw.toLowerCase() === 'prop');
  return found.known || !short
    ? found
    : { ...found, place: found.place.replace(/\bpropagator(?= \p{L})/u, 'prop') };
}

const isHouse = (place: string): boolean => place.toLowerCase() === 'house';

/** "Spare room windowsill" where the spare room alone is known: a place of its own within it. */
function withFurniture(
  found: FoundPlace,
  tokens: readonly Token[],
  free: (at: number) => boolean,
): FoundPlace {
  const noun = textAt(tokens, found.to);
  // "The balcony rail shelf".
  const next = textAt(tokens, found.to + 1);
  if (free(found.to) && free(found.to + 1) && WITHIN.test(noun) && FURNITURE.test(next))
    return { ...found, to: found.to + 2, place: `${found.place} ${noun} ${next}`, known: false };
  if (free(found.to) && free(found.to + 1) && WARMED.test(`${noun} ${next}`) && !/\d$/.test(found.place))
    return { ...found, to: found.to + 2, place: `${found.place} ${noun} ${next}`, known: false };
  if (!free(found.to) || !FURNITURE.test(noun) || /\d$/.test(found.place)) return found;
  return { ...found, to: found.to + 1, place: `${found.place} ${noun}`, known: false };
}

/** "Bench A", and "bench 3" where a bench alone is known: one of several. */
function withLetter(found: FoundPlace, tokens: readonly Token[], free: (at: number) => boolean): FoundPlace {
  const { to, place } = found;
  const noun = place.split(' ').at(-1) ?? '';
  const raw = tokens[to]?.raw ?? '';
  const isOne =
    (/^[A-HJ-Z]$/.test(raw) && endsPlace(tokens, to + 1)) ||
    (/^[1-9]$/.test(raw) && FURNITURE.test(noun) && isMarkOrEnd(tokens, to + 1));
  if (!free(to) || !isOne || !NUMBERED.test(noun)) return found;
  return { ...found, to: to + 1, place: `${place} ${raw}`, known: false };
}

const isMarkOrEnd = (tokens: readonly Token[], at: number): boolean =>
  tokens[at] === undefined || tokens[at]?.is === 'mark' || tokens[at]?.is === 'line';

/** No "A" that begins what comes next. */
const endsPlace = (tokens: readonly Token[], at: number): boolean =>
  isMarkOrEnd(tokens, at) || /^(?:at|is|was|today|yesterday|and|on|for|to)$/.test(textAt(tokens, at));

/** "The bed by the gate" is another than "the bed". */
function withTail(found: FoundPlace, tokens: readonly Token[], free: (at: number) => boolean): FoundPlace {
  // In the ground, wherever that is: planted.
  const to = /\bground$/.test(found.place) ? found.to : tailEnd(tokens, found.to, free);
  if (to === found.to) return found;
  const tail = tokens.slice(found.to, to).map(({ text }) => text);
  return { ...found, to, place: `${found.place} ${tail.join(' ')}`, known: false };
}
