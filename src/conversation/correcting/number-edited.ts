/** An edited message in which one number alone is another: what it logged by that number. */
import { numberAt } from '../../language/pieces/numbers.js';
import { textAt, tokenise, type Token } from '../../language/row/tokens.js';
import type { Posting } from '../../ledger/posting.js';

/**
 * "And 25 Parish Pump from me" for "and 24 …", which is read by the note before it: the entries with the new number, or
 * null where more than a number was changed, or none of them holds the old one.
 */
export function withNumberEdited(
  entries: readonly Posting[],
  before: string,
  now: string,
): readonly Posting[] | null {
  const changed = numberChanged(tokenise(before), tokenise(now));
  if (!changed) return null;
  const holders = entries.filter((entry) => (entry as { readonly count?: unknown }).count === changed.from);
  const [only, another] = holders;
  if (!only || another) return null;
  return entries.map((entry) => (entry === only ? ({ ...entry, count: changed.to } as Posting) : entry));
}

/** The number before and now, where the rest of the words is the same. */
function numberChanged(
  before: readonly Token[],
  now: readonly Token[],
): { readonly from: number; readonly to: number } | null {
  let at = 0;
  while (at < before.length && textAt(before, at) !== '' && textAt(before, at) === textAt(now, at)) at++;
  const from = numberAt(before, at);
  const to = numberAt(now, at);
  if (!from || !to || from.value === to.value) return null;
  const rest = (tokens: readonly Token[], start: number): string =>
    tokens
      .slice(start)
      .map(({ text }) => text)
      .join(' ');
  return rest(before, from.to) === rest(now, to.to) ? { from: from.value, to: to.value } : null;
}
