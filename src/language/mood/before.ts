/** The words before a head that tell in which mood it is: what is said of hormone or of another deed is none of them. */
import type { Clause } from '../clauses/clauses.js';
import type { Hit } from '../grammar/hits.js';
import { wordAt } from '../grammar/rule.js';
import { isOneOfSeveral } from '../lots/lot-words.js';
import { pastTalk } from './past-talk.js';
import type { Piece } from '../pieces/pieces.js';
import type { VerbForm } from '../row/lexicon.js';
import { MANAGED } from './words.js';

export interface Before {
  /** Where they begin. */
  readonly start: number;
  readonly words: readonly string[];
}

/** The words before the head of a clause, from where its own telling begins; a "not" within the head is one of them. */
export function wordsBefore(
  pieces: readonly Piece[],
  clause: Clause,
  hit: Hit,
  form: VerbForm | undefined,
): Before {
  const start = tellingFrom(pieces, clause, hit, form);
  const words: string[] = [];
  for (let at = start; at < hit.from; at++) {
    const text = wordAt(pieces, at);
    // "That never rooted": right before the roots it denies them.
    const isOfRoots = at === hit.from - 1 && hit.rule.kind === 'check';
    const isSaid = isOfRoots || !(deniesNoDeed(pieces, at) || isOfPlants(pieces, at, hit.from));
    if (text !== '' && isSaid && !isMonth(pieces, at) && !isUntold(pieces, at, hit.from)) words.push(text);
    // "Neither watered nor fed".
    if (hit.rule.kind === 'tend' && isZero(pieces[at])) words.push('not');
  }
  for (const at of hit.own)
    if (
      at > hit.from &&
      /^(?:not|never)$/.test(wordAt(pieces, at)) &&
      !/^(?:check|loss)$/.test(hit.rule.kind)
    )
      words.push('not');
  return { start, words };
}

/** "6 of the May lot have rooted": the month in which they were struck, and no doubt. */
const isMonth = (pieces: readonly Piece[], at: number): boolean =>
  wordAt(pieces, at) === 'may' && isOneOfSeveral(pieces, at);

export const isZero = (piece: Piece | undefined): boolean =>
  piece?.is === 'count' && piece.quantity.value === 0;

function tellingFrom(
  pieces: readonly Piece[],
  { from }: Clause,
  hit: Hit,
  form: VerbForm | undefined,
): number {
  let start = from;
  // A verb told in the past stands for itself behind "and" ("forgot to water and lost three").
  const managed =
    hit.from > from && wordAt(pieces, hit.from - 1) === 'to' && MANAGED.test(wordAt(pieces, hit.from - 2));
  // "Forgot the watering and came home to three dead": what was found, and no watering.
  const found = (at: number): boolean =>
    hit.rule.kind === 'loss' && /^(?:came|got|found|went|returned|walked)$/.test(wordAt(pieces, at + 1));
  // "Forgot to water and five have had it": what came of it.
  const isLot = (at: number): boolean =>
    hit.rule.kind === 'loss' && hit.rule.shape === 'subject' && pieces[at + 1]?.is === 'count';
  const own = form === 'past' || managed || wordAt(pieces, hit.from) === 'done';
  for (let at = from; at < hit.from; at++)
    if ((own || found(at) || isLot(at)) && opensOwn(pieces, from, at)) start = at + 1;
  // "Wasn't going to bother but ended up sticking five": done after all.
  for (let at = from; at + 1 < hit.from; at++)
    if (/^(?:ended|wound|finished)$/.test(wordAt(pieces, at)) && wordAt(pieces, at + 1) === 'up') start = at;
  return form === 'past' || hit.rule.kind === 'loss'
    ? Math.max(start, pastTalk(pieces, from, hit.from))
    : start;
}

/** "But I", or an "and" behind what was forgotten or said. */
function opensOwn(pieces: readonly Piece[], from: number, at: number): boolean {
  const word = wordAt(pieces, at);
  if (!/^(?:and|but|so|then)$/.test(word)) return false;
  if (/^(?:but|so)$/.test(word) && /^(?:i|we|i've|we've|it|only)$/.test(wordAt(pieces, at + 1))) return true;
  // "Bernie reckons they're hungry, so fed them".
  const deed = pieces[at + 1];
  if (word === 'so' && deed?.is === 'word' && deed.verb?.form === 'past') return true;
  return pieces
    .slice(from, at)
    .some((_, n) => /^(?:forgot|forgotten|didn't|said|told|asked)$/.test(wordAt(pieces, from + n)));
}

/**
 * "No hormone" denies nothing but the hormone; "the four with no roots went in the bin" tells which ones; "no I gave one"
 * denies what was said before.
 */
function deniesNoDeed(pieces: readonly Piece[], at: number): boolean {
  const next = wordAt(pieces, at + 1);
  const isRootless = [next, wordAt(pieces, at + 2)].some((word) => /^roots?$/.test(word));
  return (
    (wordAt(pieces, at) === 'without' && isRootless) ||
    // "The three that didn't root went on the heap": which ones.
    (/^(?:didn't|hadn't|haven't|never|won't|wouldn't)$/.test(wordAt(pieces, at)) &&
      /^(?:that|which|who)$/.test(wordAt(pieces, at - 1)) &&
      /^(?:count|plant)$/.test(pieces[at - 2]?.is ?? '')) ||
    (wordAt(pieces, at) === 'no' &&
      (/^(?:i|we|i've|we've|i'd|we'd|they|they've|it)$/.test(next) ||
        (/^roots?$/.test(next) && wordAt(pieces, at - 1) === 'with') ||
        // "Ag no, the hail smashed six", "no man, …".
        (/^(?:ag|ach|och|ah|aw|oh)$/.test(wordAt(pieces, at - 1)) && pieces[at + 1]?.is === 'break') ||
        /^(?:man|joke|doubt|wonder|surprise|kidding|good|use|hormone|powder|rooting|gel|dip|cover|lid|bag)$/.test(
          next,
        )))
  );
}

const DID_NOTHING =
  /^(?:(?:did|do) (?:anything|a thing|much|owt|well|any)|(?:got|get) (?:going|anywhere|started|away)|(?:came|come|amounted|amount) to|(?:made|make) it|grew|grow|thrived|recovered|perked|picked up|rooted|root)\b/;

/** "The other two Salt Harrier never did a thing, thrown out": what the plants did not do, and then what was done to them. */
function isOfPlants(pieces: readonly Piece[], at: number, head: number): boolean {
  if (!/^(?:never|didn't|hadn't|haven't)$/.test(wordAt(pieces, at))) return false;
  const who = pieces[at - 1];
  const isPlants =
    who?.is === 'plant' ||
    who?.is === 'count' ||
    /^(?:which|ones|they|them|these|those|rest)$/.test(wordAt(pieces, at - 1));
  return (
    isPlants &&
    DID_NOTHING.test([1, 2, 3].map((n) => wordAt(pieces, at + n)).join(' ')) &&
    pieces
      .slice(at + 2, head)
      .some(
        (piece, n) =>
          piece.is === 'break' ||
          wordAt(pieces, at + 2 + n) === 'so' ||
          (wordAt(pieces, at + 2 + n) === 'and' &&
            /^(?:got|were|was|went|have|i|we)$/.test(wordAt(pieces, at + 3 + n))),
      )
  );
}

/** "Forgot to say, took six on Sunday", "never told you about the pileas, I …": only the telling was forgotten. */
function isUntold(pieces: readonly Piece[], at: number, head: number): boolean {
  if (neverTold(pieces, at) || neverTold(pieces, at - 1))
    return pieces
      .slice(at, head)
      .some((piece, n) => piece.is === 'break' && /^(?:i|we|i've|we've)$/.test(wordAt(pieces, at + n + 1)));
  const forgot = /^(?:nearly|almost)$/.test(wordAt(pieces, at)) ? at + 1 : at;
  return (
    forgot + 2 < head &&
    /^forgot(?:ten)?$/.test(wordAt(pieces, forgot)) &&
    wordAt(pieces, forgot + 1) === 'to' &&
    /^(?:say|tell|mention|add|log|note|record|write|put|report|text)$/.test(wordAt(pieces, forgot + 2))
  );
}

const neverTold = (pieces: readonly Piece[], at: number): boolean =>
  /^(?:never|didn't|haven't)$/.test(wordAt(pieces, at)) &&
  /^(?:told|tell|said|say|mentioned|mention)$/.test(wordAt(pieces, at + 1));
