/** Parts of what there is: a half, three quarters, 85%. */
import { verbSense } from '../../row/lexicon.js';
import { numberAt } from '../numbers.js';
import { type FoundQuantity, pastOf } from './quantity.js';
import { whole } from '../../phrases.js';
import { textAt, type Token } from '../../row/tokens.js';

const PARTS: Readonly<Record<string, number>> = {
  third: 3,
  thirds: 3,
  quarter: 4,
  quarters: 4,
  fifth: 5,
  fifths: 5,
};

/** "Three quarters of the", "a third of them": nothing of the clock or the calendar. */
export function shareAt(tokens: readonly Token[], at: number): FoundQuantity | undefined {
  const one = /^(?:a|one)$/.test(textAt(tokens, at));
  const many = one ? undefined : numberAt(tokens, at);
  const to = one ? at + 1 : (many?.to ?? at);
  const part = textAt(tokens, to);
  if (to === at || !Object.hasOwn(PARTS, part)) return undefined;
  const whole = PARTS[part] ?? 1;
  const times = one ? 1 : (many?.value ?? 0);
  const behind = textAt(tokens, to + 1);
  // "Two thirds potted on"; "a third died" may be one more.
  const isDone = !one && verbSense(behind)?.form === 'past';
  const ofThem = behind === 'of' || behind === '' || isDone;
  return ofThem && times < whole
    ? { quantity: { share: [times, whole] }, to: pastOf(tokens, to + 1) }
    : undefined;
}

/** "100% rooted", but "100% sure". */
export const isHundredPercent = (tokens: readonly Token[], at: number): boolean =>
  textAt(tokens, at) === '100' &&
  /^(?:%|percent)$/.test(textAt(tokens, at + 1)) &&
  !/^(?:sure|certain|positive|happy)$/.test(textAt(tokens, at + 2));

/** What a share of plants in per cent is told of; no humidity, no price off. */
const TOLD =
  /^(?:root|roots|rooted|rooting|struck|strike|take|taken|of|have|gone|dead|lost|loss|losses|died|survived|damped|rotted)$/;

/** "85% rooted", "rooting 85%": a share of them. */
export function percentAt(tokens: readonly Token[], at: number): FoundQuantity | undefined {
  if (tokens[at]?.is !== 'number' || !/^(?:%|percent)$/.test(textAt(tokens, at + 1))) return undefined;
  const percent = Number(textAt(tokens, at));
  const told =
    TOLD.test(textAt(tokens, at + 2)) ||
    /^(?:rooting|rooted|strike|take|losses|loss|wastage)$/.test(textAt(tokens, at - 1));
  if (!told || !Number.isInteger(percent) || percent <= 0 || percent >= 100) return undefined;
  return { quantity: { share: [percent, 100] }, to: pastOf(tokens, at + 2) };
}

/** What is not halved, or is halved and no plant: "half way", "half an hour", "half price". */
const HALF_OF_NO_PLANTS = whole`
  way|past|hour|day|time|term|an|a|price|inch|litre|liter|pint|barrels?|wine|whisky|whiskey|oak|cider|beer
  pots?|trays?|ripe|wood|hardened|hardy|dead|asleep|full|empty|open|baked|hearted|decent
`;

/** "Half", "the half", "a half". */
export function halfAt(tokens: readonly Token[], at: number): FoundQuantity | undefined {
  const half = /^(?:a|the)$/.test(textAt(tokens, at)) ? at + 1 : at;
  if (textAt(tokens, half) !== 'half' || numberAt(tokens, half)) return undefined;
  const [before, behind] = [textAt(tokens, half - 1), textAt(tokens, half + 1)];
  if (HALF_OF_NO_PLANTS.test(behind) || behind === '' || /^[.,!?-]$/.test(behind)) return undefined;
  // "Half and half compost and perlite".
  if (behind === 'and' && textAt(tokens, half + 2) === 'half') return undefined;
  if (before === 'and' && textAt(tokens, half - 2) === 'half') return undefined;
  return { quantity: { share: [1, 2] }, to: pastOf(tokens, half + 1) };
}

/** So many of `alive`, where that is a whole number of plants. */
export function shareOf(
  alive: number | undefined,
  [times, whole]: readonly [number, number],
): number | undefined {
  const value = alive === undefined ? NaN : (alive * times) / whole;
  return Number.isInteger(value) ? value : undefined;
}
