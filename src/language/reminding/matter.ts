/** What a reminder is about, in the grower's words, without its day and the words that only lead to it. */
import { wordAt } from '../grammar/rule.js';
import type { Piece } from '../pieces/pieces.js';
import { textOf } from '../sentences/sentences.js';
import type { Utterance } from '../pieces/utterance.js';

const LEAD =
  /^(?:to|about|that|for|i need to|i have to|i must|of|and|on|at|by|i should|me to|please|would you|will you|:)\s+/iu;
const TAIL =
  /[ ,](?:please|pls|would you|will you|thanks|ok|okay|could you|can you|on|at|by|in|for|from|to|before|around|about|until|till|and|or so|if i can)$/iu;

/** Of the pieces behind the words that ask for it, else of those before. */
export function matterOf(behind: readonly Piece[], before: readonly Piece[], utterance: Utterance): string {
  const written = (pieces: readonly Piece[]): string =>
    textOf(pieces, utterance, (piece) => piece.is === 'when');
  const text = written(stripLead(behind)) || written(before);
  // "Bring the pellies in on the tenth": the "in" belongs to the bringing.
  const inwards = /^(?:to )?(?:bring|take|get|fetch|move|carry|come)\b.* in$/i.test(text);
  const onwards =
    /\b(?:pot|potted|potting|repotted|move|moved|bring|brought)(?: \S+){0,4} on$/i.test(text) &&
    !/ (?:up|out|in|off|over) on$/i.test(text);
  return (
    text
      .replace(LEAD, '')
      .replace(TAIL, (tail) =>
        (inwards && / in$/i.test(tail)) || (onwards && / on$/i.test(tail)) ? tail : '',
      )
      // "… , would you?".
      .replace(/ ?,$/, '')
  );
}

function stripLead(pieces: readonly Piece[]): readonly Piece[] {
  let at = 0;
  while (
    at < pieces.length &&
    (pieces[at]?.is === 'when' ||
      pieces[at]?.is === 'break' ||
      /^(?:to|about|that|for|please|and|then|,|also|just|on|at|by)$/.test(wordAt(pieces, at)))
  )
    at++;
  return pieces.slice(at);
}
