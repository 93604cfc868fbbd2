/** Parts of what there is: a half, three quarters. */
import { numberAt } from '../numbers.js';
import { textAt, type Token } from '../tokens.js';

const PARTS: Readonly<Record<string, number>> = {
  third: 3,
  thirds: 3,
  quarter: 4,
  quarters: 4,
  fifth: 5,
  fifths: 5,
};

/** "Three quarters of the", "a third of them": nothing of the clock or the calendar. */
export function shareAt(
  tokens: readonly Token[],
  at: number,
): { share: readonly [number, number]; to: number } | undefined {
  const one = /^(?:a|one)$/.test(textAt(tokens, at));
  const many = one ? undefined : numberAt(tokens, at);
  const to = one ? at + 1 : (many?.to ?? at);
  const part = textAt(tokens, to);
  if (to === at || !Object.hasOwn(PARTS, part)) return undefined;
  const whole = PARTS[part] ?? 1;
  const times = one ? 1 : (many?.value ?? 0);
  const ofThem = textAt(tokens, to + 1) === 'of' || tokens[to + 1] === undefined;
  return ofThem && times < whole ? { share: [times, whole], to: to + 1 } : undefined;
}

/** What a share of plants in per cent is told of; no humidity, no price off. */
const TOLD =
  /^(?:root|roots|rooted|rooting|struck|strike|take|taken|of|have|gone|dead|lost|loss|losses|died|survived|damped|rotted)$/;

/** "85% rooted", "rooting 85%": a share of them. */
export function percentAt(
  tokens: readonly Token[],
  at: number,
): { share: readonly [number, number]; to: number } | undefined {
  if (tokens[at]?.is !== 'number' || !/^(?:%|percent)$/.test(textAt(tokens, at + 1))) return undefined;
  const percent = Number(textAt(tokens, at));
  const told =
    TOLD.test(textAt(tokens, at + 2)) ||
    /^(?:rooting|rooted|strike|take|losses|loss|wastage)$/.test(textAt(tokens, at - 1));
  if (!told || !Number.isInteger(percent) || percent <= 0 || percent >= 100) return undefined;
  return { share: [percent, 100], to: at + 2 };
}

/** So many of `alive`, where that is a whole number of plants. */
export function shareOf(
  alive: number | undefined,
  [times, whole]: readonly [number, number],
): number | undefined {
  const value = alive === undefined ? NaN : (alive * times) / whole;
  return Number.isInteger(value) ? value : undefined;
}
