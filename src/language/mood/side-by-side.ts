/** What acts side by side share: a mood ("haven't misted or, god forbid, fed them"), an object ("watered but didn't feed them"). */
import type { Clause } from '../clauses/clauses.js';
import { draftsOf } from '../acts/drafting.js';
import { wordAt } from '../grammar/rule.js';
import type { Mood } from './case.js';
import type { Piece, PlantWords } from '../pieces/pieces.js';
import type { Utterance } from '../pieces/utterance.js';

/** Behind "or": no deed ("haven't misted or anything, fed them"). */
const AND_SO_ON = /^(?:anything|something|whatever|so|else|not|other|rather)$/;
/** Begins what was done for all that ("haven't misted or fed, but watered"). */
const ANEW = /^(?:i|we|i've|we've|but|then|only|just|instead|and)$/;

/**
 * Of clauses with their own moods, those by which they are meant: what is joined to something denied, intended or
 * supposed by "or", and what stands in one list with it, is so too.
 */
export function sharedMoods(
  pieces: readonly Piece[],
  clauses: readonly Clause[],
  own: readonly Mood[],
): readonly Mood[] {
  const moods = [...own];
  for (let n = 1; n < clauses.length; n++) {
    const before = moods[n - 1];
    if (before === undefined || before === 'done' || before === 'asked' || moods[n] !== 'done') continue;
    // "Haven't watered, misted or fed": the list goes on to its "or".
    let last = n;
    while (isListed(pieces, clauses, last)) last++;
    if (isAlternative(pieces, clauses, last)) for (let m = n; m <= last; m++) moods[m] = before;
  }
  return moods;
}

/** The words between the heads of a clause and of the one before it in the same sentence. */
function between(
  pieces: readonly Piece[],
  clauses: readonly Clause[],
  n: number,
): readonly Piece[] | undefined {
  const [before, here] = [clauses[n - 1], clauses[n]];
  if (!before?.hit || !here?.hit || before.sentence !== here.sentence) return undefined;
  return pieces.slice(before.hit.to, here.hit.from);
}

/** "Misted or fed", "misted, let alone fed": with no deed begun anew between. */
function isAlternative(pieces: readonly Piece[], clauses: readonly Clause[], n: number): boolean {
  const words = between(pieces, clauses, n);
  if (!words) return false;
  const or = words.findLastIndex(
    (_, at) =>
      (/^(?:or|nor)$/.test(wordAt(words, at)) && !AND_SO_ON.test(wordAt(words, at + 1))) ||
      (wordAt(words, at) === 'let' && wordAt(words, at + 1) === 'alone') ||
      (wordAt(words, at) === 'much' && wordAt(words, at + 1) === 'less'),
  );
  return or >= 0 && !words.slice(or).some((_, at) => ANEW.test(wordAt(words, or + at)));
}

/** "Watered, misted": one behind the other, and nothing but a comma between. */
function isListed(pieces: readonly Piece[], clauses: readonly Clause[], n: number): boolean {
  const words = between(pieces, clauses, n);
  return words?.length === 1 && words[0]?.is === 'break';
}

const BETWEEN_VERBS =
  /^(?:and|but|or|nor|yet|then|i|we|didn't|did|do|don't|not|never|haven't|have|won't|couldn't|forgot|to)$/;

/** "Watered but didn't feed the Salt Harrier": one object for what was done and what was not. */
export function sharedObject(
  pieces: readonly Piece[],
  clauses: readonly Clause[],
  moods: readonly Mood[],
  n: number,
): PlantWords | undefined {
  const [clause, next] = [clauses[n], clauses[n + 1]];
  if (!clause?.hit || !next?.hit || clause.sentence !== next.sentence) return undefined;
  const words = pieces.slice(clause.hit.to, next.hit.from);
  // "Fed and watered the Salt Harrier in the porch".
  // … "watered, fed and turned the Salt Harrier".
  const both =
    next.hit.rule.kind === 'tend' &&
    words.length === 1 &&
    (wordAt(words, 0) === 'and' || words[0]?.is === 'break');
  if (moods[n + 1] !== 'denied' && !(moods[n + 1] === 'done' && both)) return undefined;
  const joined = words.every(({ is }, at) => is === 'break' || BETWEEN_VERBS.test(wordAt(words, at)));
  return joined
    ? (draftsOf(pieces, next)[0]?.plant ?? sharedObject(pieces, clauses, moods, n + 1))
    : undefined;
}

/** "Fed and watered everything in the conservatory": one place for all that was done side by side. */
export function sharedPlace(
  pieces: readonly Piece[],
  clauses: readonly Clause[],
  moods: readonly Mood[],
  n: number,
): string | undefined {
  const next = clauses[n + 1];
  const words = between(pieces, clauses, n + 1);
  const head = next?.hit && pieces[next.hit.from];
  if (!next || words?.length !== 1 || moods[n + 1] !== 'done' || next.hit?.rule.kind !== 'tend')
    return undefined;
  // "Fed and opened the greenhouse vents" tells where it was aired.
  if (head?.is !== 'word' || !/^(?:feed|water|mist|spray)$/.test(head.verb?.lemma ?? '')) return undefined;
  if (words[0]?.is !== 'break' && wordAt(words, 0) !== 'and') return undefined;
  const [draft, another] = draftsOf(pieces, next);
  if (!draft || another || draft.plant !== undefined || draft.pronoun) return undefined;
  return draft.place ?? sharedPlace(pieces, clauses, moods, n + 1);
}

/** "… and watered everything": all there is, whatever was named before. */
export const saysEverything = (
  pieces: readonly Piece[],
  { from, to }: Clause,
  { tokens }: Utterance,
): boolean =>
  pieces
    .slice(from, to)
    .some(
      (piece) => piece.is === 'count' && /^(?:everything|everyone)$/.test(tokens[piece.from]?.text ?? ''),
    );
