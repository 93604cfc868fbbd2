/** Runs of words that a note writes with capitals, as growers write a name: "Five Past Nine", "Pinch of Salt". */
import { isFirm, isPerson, isTitled } from '../joined/new-names/people.js';
import { NEVER } from '../joined/new-names/no-names.js';
import { isSentenceStart } from '../joined/new-names/run.js';
import type { Piece } from '../pieces/pieces.js';
import { crops, phraseAt } from '../row/lexicon.js';
import type { Token } from '../row/tokens.js';

/** A run of tokens [from, to). */
export interface Run {
  readonly from: number;
  readonly to: number;
  /** Behind "from" or "off": a plant that cuttings were taken of, or somebody. */
  readonly isSource: boolean;
}

/** They stand inside a name without a capital. */
const INSIDE = /^(?:of|the|o'|du|de|la)$/;
const ARTICLE = /^(?:the|my|our|a|an|your|his|her|their|old|some|those|these|more|another)$/;

/** In front of a capital they tell of somebody, or of a place. */
const BEFORE_OTHERS =
  /^(?:to|for|by|at|in|on|near|behind|under|into|onto|over|around|via|past|let|gave|give|sold|ask|told|tell|thanks)$/;
const BEFORE_SOURCE = /^(?:from|off|ex|of|with)$/;

/** "Dahlia, Name Rote Tante": what follows is one. */
const CALLS = /^(?:name|named|called|variety|sort|cultivar)$/;

/** Runs of two words and more, in the order of the note. */
export function titleRuns(tokens: readonly Token[], pieces: readonly Piece[]): readonly Run[] {
  // Where every word has a capital it says nothing.
  if (!tokens.some((token) => token.is === 'word' && !isCapital(token) && !INSIDE.test(token.text)))
    return [];
  const runs: Run[] = [];
  for (let at = 0; at < tokens.length; at++) {
    if (!isCapital(tokens[at])) continue;
    let to = at + 1;
    for (let next = to; ;) {
      while (next - to < 2 && INSIDE.test(tokens[next]?.text ?? '') && !isCapital(tokens[next])) next++;
      if (!isCapital(tokens[next])) break;
      to = ++next;
    }
    const from = pastOpening(tokens, pieces, at, to);
    const run = { from, to: beforeCrop(tokens, pieces, from, beforeDay(tokens, pieces, from, to)) };
    at = to - 1;
    if (isNameLike(tokens, pieces, run))
      runs.push({ ...run, isSource: BEFORE_SOURCE.test(wordBefore(tokens, from)) });
  }
  return runs;
}

const isCapital = (token: Token | undefined): boolean =>
  token !== undefined &&
  token.is === 'word' &&
  token.capital &&
  !/\d/.test(token.raw) &&
  !/^i(?:'|$)/.test(token.text);

/** "Woke the Smoked Haddock", "Sixteen Wandering Bus Stop": a sentence's first word has its capital for that. */
function pastOpening(tokens: readonly Token[], pieces: readonly Piece[], from: number, to: number): number {
  if (CALLS.test(tokens[from]?.text ?? '')) return from + 1;
  const first = pieces.find((piece) => piece.from <= from && piece.to > from);
  // "Took Six Parish Gossip", "took Six Parish Gossip": straight behind the deed that opens a note.
  if (first?.is === 'count' && from === 1) return first.to;
  // "Verbena Lilac Mile": the crop before the name.
  if (first?.is === 'plant' && first.plant.variety === undefined && to - first.to > 1) return first.to;
  if (!isSentenceStart(tokens, from) && tokens[from - 1]?.raw !== ':') return from;
  const verb = first?.is === 'word' && first.verb !== undefined;
  // "Take Ten: put in eleven".
  if (tokens[to]?.raw === ':' && !(first?.is === 'word' && first.verb?.form === 'past')) return from;
  const leads =
    INSIDE.test(tokens[from + 1]?.text ?? '') ||
    first?.is !== 'word' ||
    verb ||
    NEVER.has(first.text) ||
    /ly$/.test(first.text);
  if (!leads) return from;
  let past = from + 1;
  while (past < to && !isCapital(tokens[past])) past++;
  return past === 1 ? pastOpening(tokens, pieces, past, to) : past;
}

/** "Dusty Heron Sunday arvo": where the name before the day ends; a day behind a single word belongs to it ("Dreich Monday"). */
function beforeDay(tokens: readonly Token[], pieces: readonly Piece[], from: number, to: number): number {
  const day = pieces.find((piece) => piece.is === 'when' && piece.from < to && piece.to >= to);
  if (!day || day.from <= from) return to;
  if (to - from < 3) return to;
  let end = to - 1;
  while (end > from && !isCapital(tokens[end - 1])) end--;
  return end;
}

/** "Copper Lantern Coleus": where the name before its crop ends; a colour or a flower of its own belongs to it ("Gumboot Pink"). */
function beforeCrop(tokens: readonly Token[], pieces: readonly Piece[], from: number, to: number): number {
  const crop = pieces.find((piece) => piece.from > from && piece.to === to && piece.is === 'plant');
  if (crop?.is !== 'plant' || crop.plant.variety !== undefined) return to;
  // "Geranium Code Lilac": its crop was told before it.
  const isToldBefore = phraseAt(crops, [tokens[from - 1]?.text ?? ''], 0) !== undefined;
  return isToldBefore || /^(?:pink|rose|violet)$/.test(crop.plant.crop ?? '') ? to : crop.from;
}

function isNameLike(
  tokens: readonly Token[],
  pieces: readonly Piece[],
  { from, to }: Run | { from: number; to: number },
): boolean {
  if (tokens.slice(from, to).filter(isCapital).length < 2) return false;
  const before = wordBefore(tokens, from);
  if (BEFORE_OTHERS.test(before)) return false;
  // "Aunt Dot's greenhouse".
  if (/'s$/.test(tokens[to - 1]?.raw ?? '') && tokens[to]?.is === 'word') return false;
  const words = tokens.slice(from, to).map(({ text }) => text);
  if (
    (BEFORE_SOURCE.test(before) || isSentenceStart(tokens, from)) &&
    isOfOthers(words, tokens[to]?.text ?? '')
  )
    return false;
  return !pieces.some(
    (piece) =>
      piece.from < to &&
      piece.to > from &&
      ((piece.is === 'plant' &&
        ((piece.known && piece.plant.variety !== undefined) ||
          (piece.from === from && piece.to === to && piece.plant.crop === undefined))) ||
        (/^(?:place|medium)$/.test(piece.is) && piece.from <= from && piece.to >= to) ||
        (piece.is === 'when' &&
          piece.from <= from &&
          piece.to >= to &&
          !(/\bpast\b/i.test(piece.when.words) && isCountedAt(pieces, from)))),
  );
}

/** "Aunty Vi left me her …", "from Marsh & Sons"; no "Mrs Twill cuttings", "Custard Lane tuber". */
const isOfOthers = (words: readonly string[], next: string): boolean =>
  !/^(?:cuttings?|slips?|tips?|tubers?|plants?|shoots?|basals?|crowns?)$/.test(next) &&
  (isPerson(words) || isFirm(words) || (isTitled(words) && GIVES.test(next)));
const GIVES =
  /^(?:gave|left|brought|sent|dropped|handed|let|passed|had|has|came|swapped|took|gives|over|next)$/;

/** "Took 6 Half Past Ten"; no "took 6 Easter Monday". No hour is told straight behind a number or a crop, or behind "of". */
const isCountedAt = (pieces: readonly Piece[], from: number): boolean =>
  pieces.some(
    (piece) =>
      piece.to === from &&
      (/^(?:count|plant)$/.test(piece.is) || (piece.is === 'word' && piece.text === 'of')),
  );

/** The word before a run, past an article. */
function wordBefore(tokens: readonly Token[], from: number): string {
  let at = from - 1;
  while (ARTICLE.test(tokens[at]?.text ?? '')) at--;
  return tokens[at]?.text ?? '';
}
