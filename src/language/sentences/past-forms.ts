/** "Had to bin", "managed to take", "got round to misting": plain forms that tell of things done, given as past ones. */
import { wordAt } from '../grammar/rule.js';
import { settleDiary } from './diary-present.js';
import type { Piece } from '../pieces/pieces.js';

const DID = /^(?:had|managed|remembered|decided|able|proceeded|went|got|found|helped|ended)$/;
const ON_THE_WAY =
  /^(?:round|around|time|a|moment|minute|on|up|it|the|chance|finally|just|energy|strength|my|act|together|also)$/;

/** "Move the Salt Harrier to the greenhouse yesterday": dictation drops endings; what has a day gone by was done. */
function settleDropped(pieces: readonly Piece[]): readonly Piece[] {
  const [first] = pieces;
  if (first?.is !== 'word' || first.verb?.form !== 'base' || first.verb.lemma === 'be') return pieces;
  const gone = pieces.some(
    (piece) =>
      piece.is === 'when' &&
      /\b(?:yesterday|last|ago|gone|this morning|earlier)\b/i.test(piece.when.words) &&
      piece.when.past !== undefined,
  );
  if (!gone) return pieces;
  return [{ ...first, verb: { lemma: first.verb.lemma, form: 'past' as const } }, ...pieces.slice(1)];
}

/** Behind "what I did was", "all I've done is". */
function isWhatWasDone(pieces: readonly Piece[], at: number): boolean {
  const before = wordAt(pieces, at - 1) === 'to' ? at - 2 : at - 1;
  return (
    /^(?:was|is)$/.test(wordAt(pieces, before)) &&
    /^(?:did|done)$/.test(wordAt(pieces, before - 1)) &&
    /^(?:i|we|i've|we've|have)$/.test(wordAt(pieces, before - 2))
  );
}

/** "Did the potting on of the Salt Harrier", "did some pinching of": behind "did", before "of" and the plants. */
const isDeedDone = (pieces: readonly Piece[], at: number): boolean =>
  /^(?:the|my|our|some|more)$/.test(wordAt(pieces, at - 1)) &&
  /^(?:did|done)$/.test(wordAt(pieces, at - 2)) &&
  wordAt(pieces, /^(?:on|up|out|off)$/.test(wordAt(pieces, at + 1)) ? at + 2 : at + 1) === 'of';

/** The row with such verbs marked as past; everything else as it stands. */
export function settlePastForms(row: readonly Piece[]): readonly Piece[] {
  const pieces = settleDiary(settleDropped(row));
  return pieces.map((piece, at) => {
    if (piece.is !== 'word' || !piece.verb || (piece.verb.form !== 'base' && piece.verb.form !== 'ing'))
      return piece;
    let before = at - 1;
    const to = wordAt(pieces, before);
    if (to === 'did' && piece.verb.form === 'base')
      return { ...piece, verb: { lemma: piece.verb.lemma, form: 'past' as const } };
    // "Did the planting of three Salt Harrier": the noun for the deed.
    if (isDeedDone(pieces, at)) return { ...piece, verb: { lemma: piece.verb.lemma, form: 'past' as const } };
    // "What I did was shade the frame".
    if (isWhatWasDone(pieces, at))
      return { ...piece, verb: { lemma: piece.verb.lemma, form: 'past' as const } };
    // "I'm after bringing them in": just done.
    if (
      to === 'after' &&
      piece.verb.form === 'ing' &&
      /^(?:i'm|we're|i've|am|are|is|was|just|only)$|'s$/.test(wordAt(pieces, before - 1))
    )
      return { ...piece, verb: { lemma: piece.verb.lemma, form: 'past' as const } };
    // "Couldn't resist snipping another handful".
    if (to === 'resist' && piece.verb.form === 'ing')
      return { ...piece, verb: { lemma: piece.verb.lemma, form: 'past' as const } };
    if (to !== 'to' && !(to === 'up' && piece.verb.form === 'ing')) return piece;
    before--;
    while (ON_THE_WAY.test(wordAt(pieces, before)) && at - before < 7) before--;
    // "I'd to bin two": had to.
    const hadTo = /^(?:i'd|we'd)$/.test(wordAt(pieces, before)) && before === at - 2;
    if (!hadTo && !DID.test(wordAt(pieces, before))) return piece;
    // "Never got round to taking them".
    if (/^(?:never|not|nor)$/.test(wordAt(pieces, before - 1))) return piece;
    if (/^(?:going|supposed)$/.test(wordAt(pieces, before + 1))) return piece;
    // "I've got to pot them on" is a duty.
    if (wordAt(pieces, before) === 'got' && before === at - 2) return piece;
    if (wordAt(pieces, before) === 'had' && before !== at - 2) return piece;
    return { ...piece, verb: { lemma: piece.verb.lemma, form: 'past' as const } };
  });
}
