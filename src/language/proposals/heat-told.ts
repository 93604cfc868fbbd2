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
/** Given because of the heat where "so" says it. */
const AGAINST_THIRST = whole`water|watered|watering|drink|soak|soaked|drench|drenched|mist|misted|sprayed|hosed|hosing`;
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
  const isSo = wordAt(behind, 0) === 'so' && wordAt(behind, 1) !== 'far';
  return behind.some(
    (piece) =>
      piece.is === 'word' && (FOR_HEAT.test(piece.text) || (isSo && AGAINST_THIRST.test(piece.text))),
  );
}

/** "Heat mat says 22 tonight": read off a thing of ours; what is said by others is foretold. */
export const isReadTonight = (pieces: readonly Piece[]): boolean => {
  const place = pieces.findIndex(({ is }) => is === 'place');
  const told = /^(?:is|was)$/.test(wordAt(pieces, place + 1)) ? place + 2 : place + 1;
  return (
    place >= 0 &&
    pieces.slice(0, place).every((piece) => piece.is === 'word' && GAUGE.test(piece.text)) &&
    /^(?:says|saying|reads|reading|shows|showing)$/.test(wordAt(pieces, told)) &&
    /^(?:celsius|count)$/.test(pieces[told + 1]?.is ?? '') &&
    pieces.slice(told + 2).every((piece) => piece.is === 'break' || piece.is === 'when')
  );
};
const GAUGE = whole`the|my|our|in|on|thermometer|gauge|sensor|probe|dial`;

const isHot = (value: number | undefined): boolean =>
  value !== undefined && Object.values(HOT).some(([from, to]) => from <= value && value <= to);
