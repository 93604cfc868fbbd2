/** Second thoughts before and behind a restatement: "no wait", "sorry", "8 I mean". */
import { wordAt } from '../../grammar/rule.js';
import { secondThoughts } from '../../grammar/second-thoughts.js';
import { byFirstWord } from '../../phrases-by-word.js';
import type { Piece } from '../../pieces/pieces.js';

/** The phrases word by word, the longest first. */
const SECOND_THOUGHTS = byFirstWord(
  secondThoughts
    .filter((phrase) => !/^(?:in fact|wrong)/.test(phrase))
    .map((phrase) => phrase.split(' '))
    .sort((one, other) => other.length - one.length),
);
const FILLER = /^(?:oh|ah|ok|okay|right|so|and|but|well|damn|argh|please|hmm|hey|then|the)$/;

/** How many pieces at the start are second thoughts and talk, and whether any takes back what was said. */
export function secondThoughtsBefore(pieces: readonly Piece[]): {
  readonly to: number;
  readonly doubted: boolean;
} {
  let at = 0;
  let doubted = false;
  for (;;) {
    // "Had another look at the Salt Harrier": at plants, not at the note.
    const thought = SECOND_THOUGHTS.get(wordAt(pieces, at))?.find(
      (words) =>
        words.every((word, n) => wordAt(pieces, at + n) === word) &&
        !/^(?:at|under)$/.test(wordAt(pieces, at + words.length)),
    );
    if (thought) {
      at += thought.length;
      doubted = true;
    } else if (wordAt(pieces, at) === 'wrong' && wordAt(pieces, at + 1) !== '') {
      at += 2;
      doubted = true;
    } else if (FILLER.test(wordAt(pieces, at)) && pieces[at + 1]?.is !== 'plant') at++;
    else break;
  }
  return { to: at, doubted };
}

/** How many pieces at the end take back what was said: "three, sorry", "8 I mean". */
export function secondThoughtBehind(pieces: readonly Piece[]): number {
  const last = wordAt(pieces, pieces.length - 1);
  if (/^(?:sorry|oops|whoops|rather)$/.test(last)) return 1;
  // "Yesterday, I should have said".
  if (
    /^i should have said$/.test(
      pieces
        .slice(-4)
        .map((_, n) => wordAt(pieces, pieces.length - 4 + n))
        .join(' '),
    )
  )
    return 4;
  return /^(?:mean|meant)$/.test(last) && wordAt(pieces, pieces.length - 2) === 'i' ? 2 : 0;
}
