/** Whether words that may name a type of cutting do: "tips", "heel" and "leaf" are parts of a plant too. */
import { numberAt } from './numbers.js';
import { textAt, type Token } from '../row/tokens.js';

/** What has been understood already stands masked. */
const OPAQUE_TEXT = '\u0000';

/** Whether the `length` words at token `at` say how the cuttings were taken. */
export function isCuttingType(tokens: readonly Token[], at: number, length: number): boolean {
  const words = tokens
    .slice(at, at + length)
    .map(({ text }) => text)
    .join(' ');
  const next = textAt(tokens, at + length);
  const nextIsCutting = /^(?:cuttings?|slips?|wood)$/.test(next);
  const before = textAt(tokens, at - 1);
  if (/^basil$/.test(words)) return false;
  // "Heeled them into the frame", "heeled eight in": set in the ground for now.
  if (
    words === 'heeled' &&
    (/^(?:them|em|it|these|those|all|both|the|my|in|into)$/.test(next) || numberAt(tokens, at + 1))
  )
    return false;
  if (/^(?:root|leaf|tip|tips|node|leaf bud|leaf buds|heel|heels)$/.test(words)) {
    if (/^leaf bud/.test(words) && (/^(?:x|,)$/.test(next) || tokens[at + length]?.is === 'number'))
      return true;
    // "Two went down the tip": where rubbish goes.
    if (words === 'tip' && before === 'the' && /^(?:to|down|up|at|on)$/.test(textAt(tokens, at - 2)))
      return nextIsCutting;
    // "Seven cuttings off the tips": whence they were cut.
    if (
      /^(?:tips|tip)$/.test(words) &&
      before === 'the' &&
      /^(?:off|from)$/.test(textAt(tokens, at - 2)) &&
      /^(?:cuttings?|slips?|pieces|bits)$/.test(textAt(tokens, at - 3))
    )
      return true;
    // "Stuck four of the tips in": what was pinched out.
    if (
      words === 'tips' &&
      /^(?:the|those|these)$/.test(before) &&
      textAt(tokens, at - 2) === 'of' &&
      /^(?:in|into|as|round)$/.test(next)
    )
      return true;
    // "Cut just below a node".
    if (
      words === 'node' &&
      /^(?:a|the)$/.test(before) &&
      /^(?:below|under|beneath)$/.test(textAt(tokens, at - 2))
    )
      return true;
    if (nextIsCutting || (next === '-' && /^cutting/.test(textAt(tokens, at + length + 1)))) return true;
    // ", tips,": how they were taken, said by itself.
    if (/^(?:tip|tips)$/.test(words))
      return (
        isByItself(tokens, at, at + length) ||
        // ", all tips,".
        (/^(?:all|both)$/.test(before) && isByItself(tokens, at - 1, at + length)) ||
        // ", soft tips,".
        (SORT_OF_TIP.test(before) && isByItself(tokens, at - 1, at + length)) ||
        next === 'ones' ||
        // "Stuck four of the tips in as cuttings".
        (isCounted(tokens, at) && asCuttings(tokens, next === 'in' ? at + length + 1 : at + length)) ||
        // "Stuck this morning tips no hormone".
        (before === OPAQUE_TEXT && /^(?:no|dipped|without)$/.test(next)) ||
        // "Half a dozen soft tips, in the propagator", "eleven tips under the cloche".
        (isCounted(tokens, at) &&
          (tokens[at + length] === undefined ||
            DIVIDES.has(tokens[at + length]?.raw ?? '') ||
            /^(?:under|round|into|this|today|yesterday|and|on|dipped|dunked|no|all)$/.test(next) ||
            next === OPAQUE_TEXT)) ||
        // "Ten grevillea tips in today": put in to root.
        (next === 'in' && endsThere(tokens, at + length + 1) && isCounted(tokens, at)) ||
        // "Eight tips of Widow Tansy": the cuttings themselves.
        (/^(?:of|off|from)$/.test(next) &&
          // "Eight 4 inch tips": a length between.
          (numberAt(tokens, at - 1) !== undefined || tokens[at - 1]?.text === OPAQUE_TEXT))
      );
    if (/^(?:heel|heels)$/.test(words))
      return (
        /^(?:with|a|have)$/.test(before) ||
        // "With a nice heel".
        (/^(?:nice|good|decent|proper|little|wee|tiny|clean|small)$/.test(before) &&
          /^(?:with|a|have)$/.test(textAt(tokens, at - 2))) ||
        /^(?:ones|on)$/.test(next) ||
        // "A dozen lavender heels in".
        (next === 'in' && isCounted(tokens, at)) ||
        isByItself(tokens, at, at + length)
      );
    return false;
  }
  return true;
}

const SORT_OF_TIP = /^(?:soft|fresh|green|short|young|good|strong|growing|nice|new|non-flowering)$/;

/** What divides the parts of a note. */
const DIVIDES = new Set([',', '-', '–', ':', ';', '(', ')', '/', '.', '\n']);

/** ", tips,", " - heel - ", "(tip)": said between two marks. */
const isByItself = (tokens: readonly Token[], from: number, to: number): boolean =>
  DIVIDES.has(tokens[from - 1]?.raw ?? '') &&
  (tokens[to] === undefined || DIVIDES.has(tokens[to]?.raw ?? ''));

const asCuttings = (tokens: readonly Token[], at: number): boolean =>
  textAt(tokens, at) === 'as' && /^cuttings?$/.test(textAt(tokens, at + 1));

/** A mark, the end or a day: nothing is named that they are in. */
const endsThere = (tokens: readonly Token[], at: number): boolean =>
  tokens[at] === undefined ||
  tokens[at]?.is === 'mark' ||
  tokens[at]?.is === 'line' ||
  /^(?:today|yesterday|this|last|now|on)$/.test(textAt(tokens, at));

/** A number with no mark since it, over the plant's name. */
function isCounted(tokens: readonly Token[], at: number): boolean {
  for (let before = at - 1; before >= Math.max(0, at - 5); before--) {
    if (numberAt(tokens, before) !== undefined) return true;
    if (/^[,.:;]$/.test(tokens[before]?.raw ?? '')) return false;
  }
  return false;
}
