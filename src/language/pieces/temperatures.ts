/** Temperatures: a number that says itself to be one, by its unit or by the words around it. */
import { placeNouns } from '../row/lexicon.js';
import { numberAt } from './numbers.js';
import { mayMeasure } from './sizes.js';
import type { Token } from '../row/tokens.js';

const text = (tokens: readonly Token[], at: number): string => tokens[at]?.text ?? '';

export interface FoundTemperature {
  readonly celsius: number;
  readonly to: number;
}

const round = (value: number): number => Math.round(value * 10) / 10;

/**
 * A number that says itself to be a temperature: "18C", "68°F", "20 degrees", "minus two degrees", "-2", "two below".
 * °F is converted to °C, (F − 32) × 5/9, to a tenth.
 */
export function temperatureAt(
  tokens: readonly Token[],
  at: number,
  fahrenheit: boolean,
): FoundTemperature | undefined {
  if (!mayMeasure(tokens[at])) return undefined;
  // "Half a degree in the frame".
  if (text(tokens, at) === 'half' && text(tokens, at + 1) === 'a' && text(tokens, at + 2) === 'degree')
    return { celsius: 0.5, to: at + 3 };
  let from = at;
  let sign = 1;
  if (/^(?:minus|negative)$/.test(text(tokens, from))) {
    sign = -1;
    from++;
  } else if (
    text(tokens, from) === '-' &&
    tokens[from + 1]?.is === 'number' &&
    tokens[from + 1]?.glued === true &&
    !(tokens[from]?.glued === true && tokens[from - 1]?.is !== 'mark')
  ) {
    sign = -1;
    from++;
  }
  const found = numberAt(tokens, from);
  if (!found || found.collective) return undefined;
  let { value, to } = found;
  let decimal =
    found.figures &&
    !Number.isInteger(value) &&
    (placeNouns.has(text(tokens, from - 1)) ||
      /^(?:temp|temperature|at|to|heat|hit|reads|reading|read|showing|min|max|now)$/.test(
        text(tokens, from - 1),
      ) ||
      // "Temp in cold frame 16.5".
      [2, 3, 4, 5].some((back) =>
        /^(?:temp|temps|temperature|thermometer)$/.test(text(tokens, from - back)),
      ));
  if (text(tokens, to) === 'point') {
    const tenth = numberAt(tokens, to + 1);
    if (tenth && tenth.value < 10) {
      value += tenth.value / 10;
      to = tenth.to;
      decimal = true;
    }
  }
  if (/^and$/.test(text(tokens, to)) && text(tokens, to + 1) === 'a' && text(tokens, to + 2) === 'half') {
    value += 0.5;
    to += 3;
  }
  let scale = '';
  let marked = false;
  if (
    /^(?:°|degree|degrees|o)$/.test(text(tokens, to)) &&
    !(text(tokens, to) === 'o' && !tokens[to]?.glued)
  ) {
    marked = true;
    to++;
  }
  const unit = text(tokens, to);
  const next = tokens[to];
  if (
    /^(?:c|celsius|centigrade)$/.test(unit) &&
    (marked || next?.glued === true || unit.length > 1 || next?.raw === 'C')
  ) {
    scale = 'c';
    to++;
  } else if (
    /^(?:f|fahrenheit)$/.test(unit) &&
    (marked || next?.glued === true || unit.length > 1 || next?.raw === 'F')
  ) {
    scale = 'f';
    to++;
  } else if (/^oc$/.test(unit)) {
    scale = 'c';
    to++;
  }
  if (
    /^(?:below|frost)$/.test(text(tokens, to)) &&
    scale === '' &&
    sign === 1 &&
    (marked || text(tokens, to) === 'below')
  ) {
    sign = -1;
    marked = true;
    to++;
    if (/^(?:zero|freezing|nought)$/.test(text(tokens, to))) to++;
  }
  if (scale === '' && !marked && sign === 1 && !decimal) return undefined;
  value *= sign;
  if (
    scale === 'f' ||
    (scale === '' && fahrenheit && (marked || decimal || sign === 1) && Math.abs(value) > 0)
  )
    value = ((value - 32) * 5) / 9;
  return { celsius: round(value), to };
}
