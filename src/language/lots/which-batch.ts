/** Which of several batches a note means: where they stand, when they were struck, the older lot or the newer. */
import type { Clause } from '../clauses/clauses.js';
import { monthWords } from '../dates/words.js';
import { wordAt } from '../grammar/rule.js';
import { ageOf, ARTICLE, isOfTheTwo, isOneOfSeveral, SEVERAL, sizeOf } from './lot-words.js';
import type { Piece, When } from '../pieces/pieces.js';

/** Words that single a batch out and are no slot of the entry. */
export interface WhichBatch {
  /** "The ones that were on the sill". */
  readonly stands?: string;
  /** "The ones I took on 5 March". */
  readonly struckOn?: When;
  /** "The March lot": 1–12. */
  readonly month?: number;
  readonly age?: 'first' | 'second' | 'last';
  /** Told by words that set two lots apart, and no more: "the old ones", "the new ones". */
  readonly ofTwo?: true;
  /** "The rooted ones". */
  readonly rooted?: true;
  /** "The batch of 8": how many it holds. */
  readonly holds?: number;
  /** "The bigger lot": of those alive. */
  readonly size?: 'largest' | 'smallest';
  /** "The ones in four pots". */
  readonly pots?: number;
}

const monthNames = monthWords.map((names) => names.split(' '));

/** What the piece tells of which batch is meant, if anything. */
export function whichAt(pieces: readonly Piece[], at: number, clause: Clause): WhichBatch | undefined {
  const piece = pieces[at];
  if (piece?.is === 'place' && isWholePlace(pieces, at, clause)) return undefined;
  if (
    piece?.is === 'place' &&
    (tellsWhere(pieces, at, clause) || isOfThePlace(pieces, at, clause) || isLeft(pieces, at, clause))
  )
    return { stands: piece.place };
  if (piece?.is === 'when' && isAgeOfLot(pieces, at, clause))
    return { age: /second$/i.test(piece.when.words) ? 'second' : 'first' };
  if (piece?.is === 'when' && tellsStruck(pieces, at, clause)) return { struckOn: piece.when };
  if (piece?.is === 'count' && isBatchOf(pieces, at, clause)) return { holds: piece.quantity.value ?? 0 };
  // "The earlier of the two": how many lots there are, and no plants.
  if (piece?.is === 'count' && AGE.test(wordAt(pieces, at - 3)) && isOfTheTwo(pieces, at - 3)) return {};
  if (piece?.is === 'pots' && piece.pots !== undefined && isOnesIn(pieces, at)) return { pots: piece.pots };
  if (piece?.is !== 'word') return undefined;
  if (!isOneOfSeveral(pieces, at)) return undefined;
  if (piece.text === 'rooted' && SEVERAL.test(wordAt(pieces, at + 1))) return { rooted: true };
  const month = monthNames.findIndex((names) => names.includes(piece.text)) + 1;
  if (month > 0) return { month };
  const size = sizeOf(pieces, at);
  if (size) return { size, ...(/^(?:big|large|small)$/.test(piece.text) ? { ofTwo: true } : {}) };
  const age = ageOf(pieces, at);
  return age === undefined
    ? undefined
    : { age, ...(/^(?:old|new)$/.test(piece.text) ? { ofTwo: true } : {}) };
}

const AGE = /^(?:older|younger|newer|earlier|later)$/;

/** "The ones in four pots", "the lot in two trays". */
const isOnesIn = (pieces: readonly Piece[], at: number): boolean =>
  wordAt(pieces, at - 1) === 'in' &&
  SEVERAL.test(wordAt(pieces, at - 2)) &&
  /^(?:the|those)$/.test(wordAt(pieces, at - 3));

/** "The batch of 8", behind its article; where nothing else says how many died or went, it tells that too. */
function isBatchOf(pieces: readonly Piece[], at: number, { from, to, hit }: Clause): boolean {
  const counts = pieces.slice(from, to).filter(({ is }) => is === 'count').length;
  const isWhole = /^(?:move|hardenOff|potOn|pinch|plantOut)$/.test(hit?.rule.kind ?? '');
  return (
    (isWhole || counts > 1) &&
    wordAt(pieces, at - 1) === 'of' &&
    /^(?:lot|batch)$/.test(wordAt(pieces, at - 2)) &&
    // "The new batch of 8".
    ARTICLE.test(
      wordAt(pieces, /^(?:new|old|other|small|little|big)$/.test(wordAt(pieces, at - 3)) ? at - 4 : at - 3),
    )
  );
}

/** "Everything that was in the propagator has gone out", "moved all that was there to the shed": what stood there, whatever it is. */
function isWholePlace(pieces: readonly Piece[], at: number, { from, hit }: Clause): boolean {
  const before = pieces.slice(from, at);
  return (
    hit?.rule.kind === 'move' &&
    before.some((piece) => piece.is === 'count' && piece.quantity.whole === 'all') &&
    !before.some(({ is }) => is === 'plant')
  );
}

/** A place behind "that was on the …": it says which plants, not where they went. */
function tellsWhere(pieces: readonly Piece[], at: number, { from, hit }: Clause): boolean {
  let before = at - 1;
  while (before >= from && /^(?:the|my|our|in|on|at|under|a|out|over)$/.test(wordAt(pieces, before)))
    before--;
  // "Off the one by the gate": where the mother plant stands.
  while (before >= from && /^(?:by|near|beside)$/.test(wordAt(pieces, before))) before--;
  if (/^(?:one|plant|bush)$/.test(wordAt(pieces, before)) || pieces[before]?.is === 'count')
    return wordAt(pieces, before - 1) === 'the' && /^(?:off|from)$/.test(wordAt(pieces, before - 2));
  if (
    !/^(?:was|were|is|are|been|sitting|stood|standing|sat|lived|living|that's|ones)$/.test(
      wordAt(pieces, before),
    )
  )
    return false;
  // "Took nine of the Morepork Moon, nodal ones in the tunnel": the cuttings themselves.
  const isStruck = hit?.rule.kind === 'strike' && !ARTICLE.test(wordAt(pieces, before - 1));
  if (wordAt(pieces, before) === 'ones' && isStruck) return false;
  // "Planted out the older ones in the front bed": where they went, as their age tells which they are.
  const isGoing = hit?.rule.kind === 'plantOut' || hit?.rule.kind === 'hardenOff';
  if (wordAt(pieces, before) === 'ones' && isGoing && !ARTICLE.test(wordAt(pieces, before - 1))) return false;
  if (wordAt(pieces, before) === 'ones' || wordAt(pieces, before) === "that's") return true;

  return /^(?:that|which|who|what|ones|still)$/.test(wordAt(pieces, before - 1));
}

/** Kinds of what is done to plants that were struck before. */
const LATER = new Set(['check', 'loss', 'potOn', 'pinch', 'plantOut', 'dispatch', 'move']);

/** "Planted out 8 of the greenhouse Ember Fox": of those that stand there. What moves or is tended tells of the place itself. */
function isOfThePlace(pieces: readonly Piece[], at: number, clause: Clause): boolean {
  const kind = clause.hit?.rule.kind ?? '';
  const piece = pieces[at];
  // "Put them out on the back porch Salt Harrier potted on": where they went, and then of others.
  const isWhere = kind === 'hardenOff' && piece?.is === 'place' && piece.prep !== undefined;
  return (
    (LATER.has(kind) || kind === 'hardenOff') &&
    !isWhere &&
    kind !== 'move' &&
    (pieces[at + 1]?.is === 'plant' || SEVERAL.test(wordAt(pieces, at + 1))) &&
    (ARTICLE.test(wordAt(pieces, at - 1)) || pieces[at - 1]?.is === 'count')
  );
}

/** "Planted six Salt Harrier in the greenhouse out in the long border": left for the place that follows. */
function isLeft(pieces: readonly Piece[], at: number, { hit, to }: Clause): boolean {
  let before = at - 1;
  while (/^(?:in|on|under|the|my|our)$/.test(wordAt(pieces, before))) before--;
  const onward = pieces
    .slice(at + 1, Math.min(at + 4, to))
    .map((_, n) => wordAt(pieces, at + 1 + n))
    .join(' ');
  return (
    /^(?:plantOut|hardenOff)$/.test(hit?.rule.kind ?? '') &&
    pieces[before]?.is === 'plant' &&
    /^(?:out (?:in|on|to|into|onto)|to|into|onto)\b/.test(onward)
  );
}

/** "One of the first Salt Harrier has gone soft": of the first lot, and of no day; "the first Salt Harrier have rooted" may be any. */
const isAgeOfLot = (pieces: readonly Piece[], at: number, { hit }: Clause): boolean => {
  const piece = pieces[at];
  const kind = hit?.rule.kind ?? '';
  return (
    piece?.is === 'when' &&
    LATER.has(kind) &&
    /^(?:(?:of|from) )?the (?:first|second)$/i.test(piece.when.words) &&
    pieces[at + 1]?.is === 'plant' &&
    (kind !== 'check' || pieces[at - 1]?.is === 'count' || /^of /i.test(piece.when.words))
  );
};

const isFrom = (piece: Piece): boolean => piece.is === 'when' && /^(?:from|of)\b/i.test(piece.when.words);

/** A day behind "the ones I took on …", or that tells the lot ("the Tuesday lot", "the Ember Fox from March"). */
function tellsStruck(pieces: readonly Piece[], at: number, clause: Clause): boolean {
  const piece = pieces[at];
  if (piece?.is !== 'when') return false;
  // "From the 12 fuchsias 4 are dead": how many they were.
  if (/^(?:from|of) the \d+$/i.test(piece.when.words) && pieces[at + 1]?.is === 'plant') return false;
  const behindThe = wordAt(pieces, at - 1) === 'the' || /^(?:from |of )?the /i.test(piece.when.words);
  if (behindThe && /^(?:lot|ones|batch|batches|cuttings)$/.test(wordAt(pieces, at + 1))) return true;
  const isLater = LATER.has(clause.hit?.rule.kind ?? '');
  // "Potted up the ten from 5 March"; "seven of Sunday" may be when they were done.
  if (isLater && isFrom(piece) && pieces[at - 1]?.is === 'count') return true;
  // "Three of last month's lot", "Sunday's Ember Fox".
  const isOfIt = /'s$/.test(piece.when.words);
  if (isOfIt && isLater && (pieces[at + 1]?.is === 'plant' || SEVERAL.test(wordAt(pieces, at + 1))))
    return true;
  if (isLater && (piece.struck ?? (behindThe && pieces[at + 1]?.is === 'plant'))) return true;
  const isNamed = (n: number) =>
    pieces[n]?.is === 'plant' ||
    SEVERAL.test(wordAt(pieces, n)) ||
    /^(?:these|those|them|they're)$/.test(wordAt(pieces, n));
  if (isLater && isNamed(at - 1) && isFrom(piece)) return true;
  // "Salt Harrier of 21 March: 6 have roots".
  if (isLater && isNamed(at - 2) && wordAt(pieces, at - 1) === 'of') return true;
  for (let before = at - 1; before >= Math.max(clause.from, at - 4); before--) {
    const piece = pieces[before];
    if (
      piece?.is === 'word' &&
      piece.verb &&
      ((/^(?:take|strike|stick)$/.test(piece.verb.lemma) &&
        // "I've got ten cuttings, took them on Sunday": when these were taken, and no other lot.
        !(clause.hit?.rule.kind === 'strike' && /^(?:them|these|it)$/.test(wordAt(pieces, before + 1)))) ||
        // "The cuttings I did on Sunday".
        (piece.text === 'did' &&
          /^(?:i|we)$/.test(wordAt(pieces, before - 1)) &&
          pieces[before - 2]?.is !== 'break' &&
          // "Nipped the Salt Harrier so I did Friday".
          wordAt(pieces, before - 2) !== 'so' &&
          !/^(?:it|them|that|this|those)$/.test(wordAt(pieces, before + 1)) &&
          before - 1 > (clause.hit?.from ?? 0))) &&
      !(clause.hit?.own.includes(before) ?? false)
    )
      return true;
    if (piece?.is !== 'word') return false;
  }
  return false;
}
