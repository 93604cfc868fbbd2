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
    } else if (doubted && theOther(pieces, at) > at) {
      at = theOther(pieces, at);
    } else if (FILLER.test(wordAt(pieces, at)) && pieces[at + 1]?.is !== 'plant') at++;
    else break;
  }
  return { to: at, doubted };
}

/** Behind "the other one", "the other batch", "the other fuchsia", where the plant that was meant follows; `at` itself elsewhere. */
function theOther(pieces: readonly Piece[], at: number): number {
  const one = pieces[at];
  let to = at;
  if (one?.is === 'count' && one.quantity.besides === true && one.quantity.value === 1) to = at + 1;
  else {
    const other = wordAt(pieces, at) === 'the' ? at + 1 : at;
    const what = pieces[other + 1];
    const isWhat =
      (what?.is === 'plant' && what.plant.variety === undefined) ||
      (what?.is === 'word' && /^(?:one|lot|batch|pot|tray|plant|variety)$/.test(what.text));
    if (wordAt(pieces, other) === 'other' && isWhat) to = other + 2;
  }
  return to > at && pieces.slice(to).some(({ is }) => is === 'plant') ? to : at;
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
