/** Temperatures told as a list: places with a number each. */
import { ABOUT, BETWEEN } from '../grammar/reading.js';
import type { Note } from '../note.js';
import type { Piece, When } from '../pieces/pieces.js';
import type { Proposal } from '../proposal.js';
import { isAmerican } from '../pieces/utterance.js';

const HEADING = /^(?:temps?|temperatures?|readings?|thermometers?|first|thing|last|overnight|min|max)$/;

/** "Prop 21", "utility room sitting at 12, propagator 19": places with a number each, and nothing else. */
export function listedReadings(
  pieces: readonly Piece[],
  line: string,
  note: Note,
): readonly Proposal[] | undefined {
  const parts: Piece[][] = [[]];
  let when: When | undefined;
  for (const piece of pieces) {
    // "Cold frame: 6C at 7am".
    if (piece.is === 'break' && piece.mark === ':' && parts.at(-1)?.at(-1)?.is === 'place') continue;
    if (piece.is === 'break' || (piece.is === 'word' && piece.text === 'and')) parts.push([]);
    else if (piece.is === 'when' && hourOf(piece.when) === undefined) when = piece.when;
    else if (!(piece.is === 'word' && BETWEEN.test(piece.text))) parts.at(-1)?.push(piece);
  }
  const readings: Proposal[] = [];
  const told = parts.filter(
    (part, n) =>
      part.length > 0 && !(n === 0 && part.every((piece) => piece.is === 'word' && HEADING.test(piece.text))),
  );
  // "19.5 in the propagator, 16 on the bench": no plants come in halves.
  const inTenths = pieces.some((piece) => piece.is === 'word' && TENTHS.test(piece.text));
  for (const part of told) {
    const [first, second, more] = warmthOf(part, told.length);
    const behind =
      (inTenths || (first?.is === 'celsius' && told.length > 1)) &&
      second?.is === 'place' &&
      /^(?:in|on|inside|at)$/.test(second.prep ?? '');
    const [place, value] = behind ? [second, first] : [first, second];
    // "Propagator up to 24".
    const [, upTo] =
      /\bup to (\d{1,2}(?:\.\d)?)(?=$| (?:now|already|today|by|at|before|again)\b)/.exec(line) ?? [];
    const celsius =
      upTo !== undefined && value?.is === 'count' && value.quantity.vague === true
        ? degrees(Number(upTo), note)
        : value && celsiusOf(value, note);
    if (place?.is !== 'place' || (place.prep !== undefined && !behind) || more) return undefined;
    // "Greenhouse nearly 35": how warm, is asked.
    const about =
      told.length === 1 && value?.is === 'count' && value.quantity.vague === true && ABOUT.test(line);
    if (celsius === undefined && !about) return undefined;
    readings.push({
      kind: 'reading',
      rule: '<place> <celsius>, …',
      slots: { ...(celsius === undefined ? {} : { celsius }), place: place.place },
      draft: when ? { when } : {},
      ...(celsius === undefined ? { ask: 'celsius' } : {}),
    });
  }
  return readings.length > 0 ? readings : undefined;
}

/** "Prop 19, bench 14": beside another reading, the number is no bench's. */
function warmthOf(part: readonly Piece[], parts: number): readonly Piece[] {
  const [only, another] = part;
  const [, place, number] =
    (only?.is === 'place' && !only.known && /^(.+) (\d{1,2})$/.exec(only.place)) || [];
  if (another || parts < 2 || only?.is !== 'place' || place === undefined) return part;
  const { from, to } = only;
  return [
    { ...only, place },
    { is: 'count', from, to, quantity: { value: Number(number) } },
  ];
}

/** A number that counts nothing. */
const TENTHS = /^\d{1,2}\.\d$/;

function celsiusOf(piece: Piece, note: Note): number | undefined {
  if (piece.is === 'celsius') return piece.celsius;
  if (piece.is === 'word') return TENTHS.test(piece.text) ? degrees(Number(piece.text), note) : undefined;
  const value =
    piece.is === 'when'
      ? hourOf(piece.when)
      : piece.is === 'count' && !piece.quantity.weak
        ? piece.quantity.value
        : undefined;
  return value === undefined ? undefined : degrees(value, note);
}

/** "At 12", which beside a place and no act is no hour but degrees. */
function hourOf({ words }: When): number | undefined {
  const [, hour] = /^at (\d{1,2})$/i.exec(words) ?? [];
  return hour === undefined ? undefined : Number(hour);
}

/** A bare number in the grower's own scale; above 45 no bench is so warm but in °F. */
export function degrees(value: number, note: Note, isFahrenheit = isAmerican(note)): number {
  return isFahrenheit || value > 45 ? Math.round((((value - 32) * 5) / 9) * 10) / 10 : value;
}
