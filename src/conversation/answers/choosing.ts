/** Which of the offered batches an answer means: by label, name, place, day, size or order. */
import type { Batch } from '../../ledger/batch.js';
import { alive, began, placeOf } from '../../ledger/batch.js';
import type { Day } from '../../calendar/day.js';
import { firstDay, lastDay, type Span } from '../../calendar/span.js';
import { batchLabelled, type Ledger } from '../../ledger/ledger.js';
import { crops, phraseAt } from '../../language/row/lexicon.js';
import { numberAt } from '../../language/pieces/numbers.js';
import { tokenise } from '../../language/row/tokens.js';
import { standingAt } from '../../ledger/place-meant.js';
import { dateWords } from '../../words/speech.js';

const ordinals: readonly (readonly [RegExp, (batches: readonly Batch[]) => Batch | undefined])[] = [
  [/\b(?:first|1st|oldest|older|earlier|earliest|old)\b/i, (batches) => batches[0]],
  [/\b(?:last|latest|newest|newer|later|new|youngest|younger)\b/i, (batches) => batches.at(-1)],
  [/\b(?:bigger|biggest|larger|largest)\b/i, (batches) => bySize(batches)[0]],
  [/\b(?:smaller|smallest)\b/i, (batches) => bySize(batches).at(-1)],
  [/\b(?:second|2nd)\b/i, (batches) => batches[1]],
  [/\b(?:third|3rd)\b/i, (batches) => batches[2]],
];

/** The largest first; none where two are alike. */
function bySize(batches: readonly Batch[]): readonly Batch[] {
  const sorted = [...batches].sort((a, b) => alive(b) - alive(a));
  return new Set(sorted.map(alive)).size === sorted.length ? sorted : [];
}

/**
 * The one batch meant, or null where the words fit none or several. Batches come oldest first; `day` is what the words
 * name of time ("the ones from the 9th", "the August ones").
 */
export function chooseBatch(
  text: string,
  labels: readonly string[],
  ledger: Ledger,
  day: Day | Span | null,
): Batch | null {
  const offered = labels
    .flatMap((label) => batchLabelled(ledger, label) ?? [])
    .sort((a, b) => (began(a) < began(b) ? -1 : began(a) > began(b) ? 1 : 0));
  const meant = withoutDenied(text);
  const lower = ` ${meant.toLowerCase().replace(/[^\p{L}\p{N}'’]+/gu, ' ')} `;
  const byWord = (word: string | null) =>
    word !== null && lower.includes(` ${word.toLowerCase().replace(/[^\p{L}\p{N}'’]+/gu, ' ')} `);
  const speech = { wording: 'GB', units: 'metric', today: began(offered[0] ?? ({} as Batch)) } as const;
  // "From the batch of 5", "out of the ten".
  const [, sized] =
    / (?:(?:batch|lot) of|(?:from|of|off|out of) the) (\p{L}+|\d+)(?: ones| lot)? $/u.exec(lower) ?? [];
  const size = sized === undefined ? undefined : numberAt(tokenise(sized), 0)?.value;
  const tries: readonly ((batch: Batch) => boolean)[] = [
    (batch) => byWord(batch.label),
    (batch) => byWord(batch.variety),
    (batch) => byWord(placeOf(batch)),
    ...placeTries(lower, offered),
    (batch) => offered.length > 0 && byWord(dateWords(began(batch), speech)),
    (batch) => day !== null && firstDay(day) <= began(batch) && began(batch) <= lastDay(day),
    (batch) => byWord(batch.crop) || (batch.crop !== null && namesCrop(lower, batch.crop)),
    (batch) => isNamedInPart(lower, batch, offered),
    (batch) => alive(batch) === size,
  ];
  for (const fits of tries) {
    const found = offered.filter(fits);
    if (found.length === 1) return found[0] ?? null;
  }
  // "Old Nettie" is a name, "the new greenhouse" a place, and neither an older or a newer lot.
  const names = offered.flatMap((batch) => [batch.variety, batch.crop, placeOf(batch)]);
  const rest = names.reduce<string>(
    (words, name) => (name === null ? words : words.replaceAll(name.toLowerCase(), ' ')),
    meant.toLowerCase(),
  );
  for (const [pattern, pick] of ordinals) if (pattern.test(rest)) return pick(offered) ?? null;
  return null;
}

/** "The salvias", "the geraniums" of a pelargonium: by any of the crop's names, in a few words. */
function namesCrop(lower: string, crop: string): boolean {
  const words = lower.trim().split(' ');
  return words.length <= MOST_WORDS && words.some((_, at) => phraseAt(crops, words, at)?.value === crop);
}

/** "The second lot, not the first", "not the old one, the new one": without the one that is not meant. */
function withoutDenied(text: string): string {
  const at = text.search(/\bnot (?:the|those|that|from|in)\b/i);
  if (at < 0) return text;
  const before = text.slice(0, at);
  return /[\p{L}\p{N}]/u.test(before.replace(/^(?:no|nope|sorry|that was)\b/i, ''))
    ? before
    : text.slice(at).replace(/^[^,;.–—]*/, '');
}

/** Words that say nothing of where plants stand. */
const SMALL =
  /^(?:the|an?|ones?|lots?|batch|batches|pots?|trays?|cuttings?|plants?|that|those|these|them|they|they['’]re|it|it['’]s|is|are|was|were|in|on|at|by|under|from|of|near|over|my|our|i|think|mean|meant|just|sorry|please)$/;

/** No longer reply names a plant by one word of its name. */
const MOST_WORDS = 6;

/** "Of the Bishop", "the Bishops": a word of its name that no other on offer has. */
function isNamedInPart(lower: string, { variety }: Batch, offered: readonly Batch[]): boolean {
  const said = lower.trim().split(' ');
  if (said.length > MOST_WORDS || variety === null) return false;
  const wordsOf = (name: string) => name.toLowerCase().split(/[^\p{L}\p{N}'’]+/u);
  const others = new Set(
    offered.flatMap((other) =>
      other.variety === null || other.variety === variety ? [] : wordsOf(other.variety),
    ),
  );
  return wordsOf(variety).some(
    (word) =>
      word.length > 3 &&
      !others.has(word) &&
      !isOrdinal(word) &&
      (said.includes(word) || said.includes(`${word}s`)),
  );
}

const isOrdinal = (word: string): boolean => ordinals.some(([pattern]) => pattern.test(word));

/** A place in a few of its words: by its noun ("the windowsill ones" of the kitchen windowsill), or by any of them. */
function placeTries(lower: string, offered: readonly Batch[]): readonly ((batch: Batch) => boolean)[] {
  const wordsOf = (name: string | null) => (name ?? '').toLowerCase().split(/[^\p{L}\p{N}'’]+/u);
  const places = new Set(offered.flatMap((batch) => wordsOf(placeOf(batch))));
  const names = new Set(offered.flatMap(({ variety, crop }) => [...wordsOf(variety), ...wordsOf(crop)]));
  const told = wordsOf(lower).filter(
    (word) =>
      word !== '' &&
      !SMALL.test(word) &&
      !ordinals.some(([pattern]) => pattern.test(word)) &&
      (places.has(word) || !names.has(word)),
  );
  if (told.length === 0) return [];
  const there = standingAt(offered, placeOf, told.join(' '));
  return [
    (batch) => there.includes(batch),
    (batch) => told.every((word) => wordsOf(placeOf(batch)).includes(word)),
  ];
}
