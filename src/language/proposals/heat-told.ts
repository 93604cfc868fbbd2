/** "38 in the tunnel yesterday, opened the vents": a bare number and a place before what was done, or befell, because of the heat. */
import { wordAt } from '../grammar/rule.js';
import { whole } from '../phrases.js';
import type { Piece } from '../pieces/pieces.js';

/** Judgement, in °C and in °F: growers tell a warmth in a bare number where it is out of the common. */
const HOT = { celsius: [30, 55], fahrenheit: [86, 130] } as const;

const FOR_HEAT = whole`
  shade|shaded|shadecloth|shading|cloth|netting|vent|vents|vented|ventilated|doors?|louvres?|windows?|airing|aired|fan|fans
  cooked|cook|fried|fry|baked|bake|scorched|scorch|roasted|wilted|flopped|frazzled|crisp|crisped|toast
`;
const LEADS = /^(?:was|it|it's|its|were|is|already|now|got|up|to|hit|a|about|around|nearly)$/;

/** Whether a part tells nothing but a number, a place and a time, and what follows it tells of heat. */
export function tellsHeat(part: readonly Piece[], behind: readonly Piece[]): boolean {
  let at = 0;
  while (LEADS.test(wordAt(part, at))) at++;
  const count = part[at];
  if (
    count?.is !== 'count' ||
    !isHot(count.quantity.value) ||
    !/^(?:in|inside|under|on)$/.test(wordAt(part, at + 1))
  )
    return false;
  const place = /^(?:the|my|our)$/.test(wordAt(part, at + 2)) ? at + 3 : at + 2;
  if (part[place]?.is !== 'place') return false;
  if (!part.slice(place + 1).every(({ is }) => is === 'when')) return false;
  return behind.some((piece) => piece.is === 'word' && FOR_HEAT.test(piece.text));
}

const isHot = (value: number | undefined): boolean =>
  value !== undefined && Object.values(HOT).some(([from, to]) => from <= value && value <= to);
