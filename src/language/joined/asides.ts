/** Talk that only picks up the thread ("where was I", "what was I saying"), a pause and no question, thanks to heaven, "while I was at it" and "the same day". */
import { wordAt } from '../grammar/rule.js';
import { byFirstWord } from '../phrases-by-word.js';
import type { Piece } from '../pieces/pieces.js';

const ASIDES = byFirstWord([
  ['where', 'was', 'i'],
  ['where', 'were', 'we'],
  ['what', 'was', 'i', 'going', 'to', 'say'],
  ['what', 'was', 'i', 'saying'],
  ['what', 'was', 'i', 'on', 'about'],
  ['as', 'i', 'was', 'saying'],
  ...['thanks be', 'glory be', 'praise be', 'thanks'].flatMap((thanks) =>
    ['god', 'jesus', 'goodness', 'heaven'].map((whom) => [...thanks.split(' '), 'to', whom]),
  ),
  // Irish: "they are potted on, so they are".
  ...[
    'they are',
    'they were',
    'it is',
    'it was',
    'i am',
    'i did',
    'they did',
    'i have',
    'we did',
    'he is',
    'she is',
  ].map((tag) => ['so', ...tag.split(' ')]),
  ['do', 'you', 'know', 'what'],
  ['you', 'know', 'what'],
  ['guess', 'what'],
  ['tell', 'you', 'what'],
  ["i'll", 'tell', 'you', 'what'],
  // "Six have, I regret to say, perished", "I'm sorry to report that six have perished".
  ...[
    'i regret',
    "i'm sorry",
    'i am sorry',
    'sorry',
    "i'm pleased",
    'i am pleased',
    'pleased',
    "i'm happy",
    'i am happy',
    'happy',
    'sad',
    'delighted',
  ].flatMap((who) =>
    ['say', 'report', 'inform you', 'tell you', 'let you know']
      .flatMap((tells) => [`${tells} that`, tells])
      .map((tells) => [...who.split(' '), 'to', ...tells.split(' ')]),
  ),
  ['i', 'fear'],
  ['i', 'regret', 'that'],
  // "Inserted the following: …".
  ['the', 'following'],
  ['i', 'am', 'afraid'],
  ["i'm", 'afraid'],
  ['thank', 'god'],
  ['thank', 'goodness'],
  ['thank', 'heavens'],
  // "Gave two away on Sunday and planted out another four the same day": the day is told before.
  ...['day', 'afternoon', 'morning', 'evening', 'time'].flatMap((part) =>
    ['the', 'on the', 'at the', 'that'].map((led) => [...led.split(' '), 'same', part]),
  ),
  ['straight', 'after'],
  // "Put in nine more while I was at it, all in one pot".
  ...['i was', "i'm", 'i am', 'we were', "we're", 'he was', 'she was'].flatMap((who) =>
    ['while', 'whilst'].map((word) => [word, ...who.split(' '), 'at', 'it']),
  ),
]);

/** "Where was I with the Salt Harrier": asked after all. */
const ASKS_ON =
  /^(?:with|on|up|at|in|going|to|when|for|about|before|keeping|putting|taking|growing|rooting|working|meant|supposed)$/;

const GIVEN = /^(?:given|gifted|presented|sent|brought|handed)$/;

/** Past "by the sexton" between what says that the grower was given something and what it was; the same place where it is none. */
function pastGiver(pieces: readonly Piece[], from: number): number {
  let verb = from - 1;
  if (!GIVEN.test(wordAt(pieces, verb))) return from;
  do verb--;
  while (/^(?:was|were|been|have|had|just|also|kindly|very|most)$/.test(wordAt(pieces, verb)));
  let at = pieces[from]?.is === 'break' ? from + 1 : from;
  if (!/^(?:i|we|i've|we've)$/.test(wordAt(pieces, verb)) || wordAt(pieces, at) !== 'by') return from;
  const giver = ++at;
  if (/^an?$/.test(wordAt(pieces, at))) at++;
  while (at < giver + 6 && pieces[at]?.is === 'word' && !/^(?:with|an?|to)$/.test(wordAt(pieces, at))) at++;
  if (at === giver) return from;
  if (pieces[at]?.is === 'break') at++;
  return pieces[at]?.is === 'count' || /^(?:with|an?)$/.test(wordAt(pieces, at)) ? at : from;
}

/** The row with a break for each of them. */
export function withoutAsides(pieces: readonly Piece[]): readonly Piece[] {
  const rest: Piece[] = [];
  for (let at = 0; at < pieces.length; at++) {
    const piece = pieces[at];
    const aside = ASIDES.get(wordAt(pieces, at))?.find(
      (words) =>
        words.every((word, n) => wordAt(pieces, at + n) === word) &&
        !ASKS_ON.test(wordAt(pieces, at + words.length)) &&
        pieces[at + words.length]?.is !== 'when' &&
        // "Do you know what needs water": asked.
        (!/^(?:what|following)$/.test(words.at(-1) ?? '') || pieces[at + words.length]?.is === 'break') &&
        // "So they are in the porch now" tells something.
        (words[0] !== 'so' ||
          (at > 1 &&
            (pieces[at + words.length] === undefined ||
              pieces[at + words.length]?.is === 'break' ||
              /^(?:and|but)$/.test(wordAt(pieces, at + words.length))))),
    );
    if (!piece) continue;
    const given = pastGiver(pieces, at);
    if (given > at) {
      at = given - 1;
      continue;
    }
    if (!aside) {
      rest.push(piece);
      continue;
    }
    at += aside.length - 1;
    if (pieces[at + 1]?.is !== 'break')
      rest.push({ is: 'break', hard: false, mark: ',', from: piece.from, to: piece.from });
  }
  return rest;
}
