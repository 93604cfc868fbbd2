/** The word that leads up to a piece, across a break or across what is said of the plants. */
import { wordAt } from '../../grammar/rule.js';
import type { Piece } from '../../pieces/pieces.js';

const SAID_OF_PLANTS =
  /^(?:mouldy|moldy|dead|rotten|rotted|poor|sad|mushy|soggy|limp|wilted|broken|sickly|manky|good|big|new|old|little|nice|rooted|spare|whole|lovely|small|large|fine|decent|of|the|my|her|his)$/;

/** The word before a piece, or before the break that parts them. */
export function wordBefore(pieces: readonly Piece[], at: number): string {
  return pieces[at - 1]?.is === 'break' ? wordAt(pieces, at - 2) : wordAt(pieces, at - 1);
}

/** The word before a piece, articles and adjectives passed over: "a nice big Salt Harrier". */
export function nearestWord(pieces: readonly Piece[], at: number): string {
  let before = at - 1;
  while (SAID_OF_PLANTS.test(wordAt(pieces, before)) && at - before < 5) before--;
  return wordAt(pieces, before);
}
