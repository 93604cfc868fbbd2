/** Hormone and cause, which are told by plain words. */
import { wordAt } from '../../grammar/rule.js';
import { causes, phraseAt } from '../../row/lexicon.js';
import type { Seen } from './case.js';
import { currentDraft, noteSlot } from './told-so-far.js';

/** Puts what a word of the clause tells of hormone or cause with the plant that was told of last. */
export function tellHormoneAndCause(
  { pieces, clause, told }: Pick<Seen<'word'>, 'pieces' | 'clause' | 'told'>,
  texts: readonly string[],
  at: number,
): void {
  const draft = currentDraft(told);
  const text = texts[at] ?? '';
  if (namesHormone(texts, at) && draft.hormone === undefined) {
    const lead = texts.slice(Math.max(clause.from, at - (isDippedIn(texts, at) ? 7 : 4)), at);
    draft.hormone = !lead.some((word) => /^(?:no|without|not|skipped|forgot|didn't|sans)$/.test(word));
    noteSlot(told, 'hormone');
  }
  if (
    (/^(?:iba|dipped)$/.test(text) && texts[at + 1] !== 'in' && !isDippedInOther(texts, at)) ||
    (clause.hit?.rule.kind === 'strike' && isPowdered(texts, at))
  ) {
    if (draft.hormone === undefined && isOfAll(pieces, at)) noteSlot(told, 'hormone');
    draft.hormone ??= !/^(?:not|never|un|without|no|aren't|weren't)$/.test(texts[at - 1] ?? '');
  }
  if (/^(?:undipped|undoctored|unpowdered)$/.test(text)) draft.hormone ??= false;
  const cause = phraseAt(causes, texts, at);
  // "Thrown to the hens": no pests.
  if (cause && text !== 'root' && draft.cause === undefined && clause.hit?.rule.cause !== 'other') {
    draft.cause = cause.value;
    noteSlot(told, 'cause');
  }
}

/** The words of a clause by their places, with four before it, which may deny its first. */
export function textsOf({ pieces, clause }: Pick<Seen<'word'>, 'pieces' | 'clause'>): readonly string[] {
  const texts: string[] = [];
  for (let at = Math.max(0, clause.from - 4); at < clause.to; at++) texts[at] = wordAt(pieces, at);
  return texts;
}

/** "Hormone", a brand, "rooting powder", "without the gel". */
function namesHormone(texts: readonly string[], at: number): boolean {
  const text = texts[at] ?? '';
  if (/^(?:hormone|clonex|rootgrow)$/.test(text)) return true;
  const before = texts[at - 1] ?? '';
  return (
    /^(?:powder|gel)$/.test(text) &&
    (isDippedIn(texts, at) ||
      /^(?:rooting|root|hormone|no|without|dip|with|any)$/.test(before) ||
      (before === 'the' && /^(?:without|no|skipped|with)$/.test(texts[at - 2] ?? '')))
  );
}

/** "Six stuck, powdered"; no "in powdered pumice", and none "powdered with sulphur". */
const isPowdered = (texts: readonly string[], at: number): boolean =>
  /^(?:powdered|gelled)$/.test(texts[at] ?? '') &&
  !/^(?:in|into|of|with|on)$/.test(texts[at - 1] ?? '') &&
  !/^(?:with|by|in)$/.test(texts[at + 1] ?? '');

/** "Three Salt Harrier and two Tallow Bell, dipped the lot", "…, all dipped": told of the whole list. */
const isOfAll = (pieces: Seen<'word'>['pieces'], at: number): boolean =>
  [pieces[at - 1], pieces[at + 1], pieces[at + 2]].some(
    (piece) => piece?.is === 'count' && (piece.quantity.whole === 'all' || piece.quantity.both === true),
  );

/** "Dipped em in honey": in no hormone. */
const isDippedInOther = (texts: readonly string[], at: number): boolean =>
  /^(?:them|it|those|these|each|all)$/.test(texts[at + 1] ?? '') &&
  texts[at + 2] === 'in' &&
  /^(?:honey|cinnamon|charcoal|aloe|water|willow|sulphur|sulfur|fungicide|soap|vinegar)$/.test(
    texts[at + 3] ?? '',
  );

/** "Dipped in the powder", "dipped the lot into gel". */
function isDippedIn(texts: readonly string[], at: number): boolean {
  const into = /^(?:the|some|my)$/.test(texts[at - 1] ?? '') ? at - 2 : at - 1;
  return (
    /^(?:in|into)$/.test(texts[into] ?? '') &&
    texts.slice(Math.max(0, into - 4), into).some((word) => /^dip(?:ped|ping|s)?$/.test(word))
  );
}
