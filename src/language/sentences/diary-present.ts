/** "I throw away half of them today": a day told as a diary tells it, by those who write so in their own language; given as past. */
import { wordAt } from '../grammar/rule.js';
import { wordsOf } from '../phrases.js';
import type { Piece } from '../pieces/pieces.js';

/** Deeds of the bench; of those that need no such mending the rules read the plain form themselves. */
const DEEDS: ReadonlySet<string> = new Set(wordsOf`
  throw bin chuck toss dump discard compost lose give sell swap send pinch nip move carry bring shift plant stick strike
`);

const OF_TODAY = /^(?:today|yesterday|earlier|last night|this (?:morning|afternoon|evening))/i;

/** What makes it no telling of one day. */
const OTHERWISE =
  /^(?:if|when|whenever|unless|before|until|till|once|should|would|will|must|can|could|may|might|shall|always|usually|never|every|each|normally|often|hope|hoping|plan|planning|think|want|maybe|perhaps|what|why|how|do|does)$/;

/** The row with such verbs marked as past; everything else as it stands. */
export function settleDiary(pieces: readonly Piece[]): readonly Piece[] {
  // "Tomorrow I plant them out, today only watered": not all of it is done.
  const days = pieces.filter((piece) => piece.is === 'when');
  const isDone = days.length > 0 && days.every(({ when }) => OF_TODAY.test(when.words));
  if (!isDone || pieces.some((piece) => piece.is === 'word' && OTHERWISE.test(piece.text))) return pieces;
  const opening = pieces.findIndex(
    (piece, at) => isDeed(piece) && /^(?:i|we)$/.test(wordAt(pieces, at - 1)) && opensTelling(pieces, at - 2),
  );
  if (opening < 0) return pieces;
  return pieces.map((piece, at) =>
    isDeed(piece) && (at === opening || (at > opening && /^(?:and|then|i|we)$/.test(wordAt(pieces, at - 1))))
      ? { ...piece, verb: { lemma: piece.verb.lemma, form: 'past' as const } }
      : piece,
  );
}

type Deed = Extract<Piece, { is: 'word' }> & {
  readonly verb: NonNullable<Extract<Piece, { is: 'word' }>['verb']>;
};

const isDeed = (piece: Piece | undefined): piece is Deed =>
  piece?.is === 'word' && piece.verb?.form === 'base' && DEEDS.has(piece.verb.lemma);

/** At the beginning, behind a mark or the day. */
const opensTelling = (pieces: readonly Piece[], at: number): boolean =>
  at < 0 || /^(?:break|when)$/.test(pieces[at]?.is ?? '') || /^(?:and|then|so|but)$/.test(wordAt(pieces, at));
