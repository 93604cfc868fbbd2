/** Numbers that count no plants: money, a share in per cent, the number of a house or page. */
import { NUMBER_WORDS, numberAt } from './numbers.js';
import { isHundredPercent, percentAt } from './quantities/shares.js';
import { wordsOf } from '../phrases.js';
import { startsWithFigure, textAt, type Token } from '../row/tokens.js';

/** What may tell of money, beside figures and the signs of money. */
const OPENING: ReadonlySet<string> = new Set([
  ...wordsOf`no number nr room page chapter step version day week half-past`,
  ...NUMBER_WORDS,
]);

/** "No 9", "page 4": the number of something, and no price. */
export const isNumberOf = (tokens: readonly Token[], at: number): boolean =>
  /^(?:no|nr|number|page|chapter|version)$/.test(textAt(tokens, at));

/** Where the money that begins at token `at` ends. */
export function moneyAt(tokens: readonly Token[], at: number): number | undefined {
  const token = tokens[at];
  if (!token) return undefined;
  const isSign = token.is === 'mark' && /^[£$€]$/.test(token.raw);
  if (!isSign && !OPENING.has(token.text) && !startsWithFigure(token)) return undefined;
  if (isSign && tokens[at + 1]?.is === 'number')
    return /^(?:each|apiece|per|a)$/.test(textAt(tokens, at + 2)) ? at + 3 : at + 2;
  // "Five bucks", "twenty quid".
  const unit = numberAt(tokens, at)?.to ?? tokens.length;
  if (
    !isHundredPercent(tokens, at) &&
    !percentAt(tokens, at) &&
    (/^(?:p|quid|pounds|dollars|bucks|euro|euros|pence|%|percent|nzd|aud)$/.test(textAt(tokens, unit)) ||
      /^[£$€%]$/.test(tokens[unit]?.raw ?? ''))
  )
    return /^(?:each|apiece)$/.test(textAt(tokens, unit + 1)) ? unit + 2 : unit + 1;
  // "Two pound each"; by itself a pound is a weight.
  if (/^(?:pound|dollar)$/.test(textAt(tokens, unit)) && /^(?:each|apiece)$/.test(textAt(tokens, unit + 1)))
    return unit + 2;
  if (/^a$/.test(token.text) && /^(?:quid|fiver|tenner|pound|dollar)$/.test(textAt(tokens, at + 1)))
    return /^(?:each|apiece)$/.test(textAt(tokens, at + 2)) ? at + 3 : at + 2;
  if (
    // "A hot week. 3 died": a sentence ends there; "no." is short for something.
    /^(?:no|nr)$/.test(textAt(tokens, at)) &&
    tokens[at + 1]?.text === '.' &&
    tokens[at + 2]?.is === 'number'
  )
    return at + 3;
  // "The woman at no 9": where, not how many.
  const isAddress =
    textAt(tokens, at) === 'no' &&
    /^(?:at|to|from|outside|opposite|bench|shelf|table|tunnel|house|bay|row)$/.test(textAt(tokens, at - 1));
  if (
    (isAddress || (isNumberOf(tokens, at) && !/^n[or]$/.test(textAt(tokens, at)))) &&
    tokens[at + 1]?.is === 'number'
  )
    return at + 2;
  return undefined;
}
