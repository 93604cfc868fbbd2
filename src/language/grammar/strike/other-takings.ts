/** What else than cuttings may be taken: "took the lid off", "took 12 days", "took them to Nell". */
import type { Piece } from '../../pieces.js';
import { CUTTINGS, isBuyer, isCarried, leavesWith } from '../taken-away.js';
import { OUTSIDE } from '../move/to-place.js';
import { closeBehind, endsAt, follows, followsWord, wordAt } from '../rule.js';
import { COVERINGS, isOpenedOrLaid } from '../tend/telling.js';
import { isWhole } from '../stand-ins.js';
import { isRelative } from './told-before.js';

/** "Took" is a strike only with something taken from a plant behind it. */
export function takesSomethingElse(pieces: readonly Piece[], from: number, to: number): boolean {
  if (isRelative(pieces, from)) return true;
  // "Took 12 days", "took me 2 hours".
  const lasting = /^(?:me|us|about)$/.test(wordAt(pieces, to)) ? to + 1 : to;
  const span = pieces[lasting];
  if (
    (span?.is === 'count' &&
      /^(?:hours?|days?|weeks?|minutes?|mins|months?)$/.test(wordAt(pieces, lasting + 1))) ||
    (span?.is === 'when' &&
      /^(?:\d+|[a-z]+) (?:hours?|days?|weeks?|minutes?|months?)$/i.test(span.when.words))
  )
    return true;
  // "Took five in the deckchair".
  if (span?.is === 'count' && !follows(pieces, to, 'plant') && restsBehind(pieces, lasting + 1)) return true;
  // "Took no notice of the Salt Harrier".
  if (
    /^no (?:notice|heed|interest|part|chances|nonsense|pleasure|account)$/.test(
      `${wordAt(pieces, to)} ${wordAt(pieces, to + 1)}`,
    )
  )
    return true;
  // "Took a cloth to the pots".
  if (
    /^(?:a|the|my)$/.test(wordAt(pieces, to)) &&
    /^to (?:the|my)$/.test(`${wordAt(pieces, to + 2)} ${wordAt(pieces, to + 3)}`)
  )
    return true;
  // "A frost, and it took two".
  if (wordAt(pieces, from - 1) === 'it') return true;
  // "Took the Salt Harrier out of the hot press", "took six Salt Harrier out of the propagator": carried.
  const plant = pieces.findIndex(({ is }, at) => at >= to && is === 'plant');
  if (
    closeBehind(pieces, to, 'plant') &&
    (!closeBehind(pieces, to, 'count') || wordAt(pieces, plant + 1) === 'out') &&
    pieces.some((piece) => piece.is === 'place' && piece.prep === 'from') &&
    followsWord(pieces, to, /^out$/)
  )
    return true;
  // "Took the Salt Harrier stools out of store".
  if (
    plant >= 0 &&
    /^(?:tubers?|crowns?|stools?|rhizomes?)$/.test(wordAt(pieces, plant + 1)) &&
    /^(?:out|down|up|in)$/.test(wordAt(pieces, plant + 2))
  )
    return true;
  // "Took the Salt Harrier off the heat mat".
  if (
    /^(?:the|my|our|those)$/.test(wordAt(pieces, to)) &&
    pieces[to + 1]?.is === 'plant' &&
    placeBehind(pieces, to + 2)
  )
    return true;
  // "Took all the Salt Harrier into the greenhouse".
  if (isCarriedInto(pieces, to)) return true;
  // "Took everything out to the cold frame", "took all that was on the porch into the shed".
  if (isAllOfPlace(pieces, to)) return true;
  // "Took six Salt Harrier out for the sale".
  if (isCarriedAlong(pieces, to)) return true;
  // "Took the cuttings out of the propagator", "… to school".
  if (
    /^(?:the|my|all|those)$/.test(wordAt(pieces, to)) &&
    CUTTINGS.test(wordAt(pieces, to + 1)) &&
    (/^(?:out|in|into|back|over|home|down|inside|outside|indoors|along|round)$/.test(
      wordAt(pieces, to + 2),
    ) ||
      (wordAt(pieces, to + 2) === 'to' && !/^(?:root|strike)$/.test(wordAt(pieces, to + 3))))
  )
    return true;
  // "Took the row cover off the hoop house".
  if (followsWord(pieces, to, 'off') && followsWord(pieces, to, COVERED_OR_MARKED)) return true;
  // "Took the cloche off the Salt Harrier".
  if (pieces.slice(to, to + 3).some(isOpenedOrLaid) && followsWord(pieces, to, 'off')) return true;
  // "Took the dead leaves off the Salt Harrier".
  if (
    /^(?:the|all|any|some|most|those)$/.test(wordAt(pieces, to)) &&
    followsWord(pieces, to, /^(?:leaves|foliage|flowers?|blooms?|buds?|seedheads?|suckers)$/) &&
    followsWord(pieces, to, /^(?:off|from)$/) &&
    !followsWord(pieces, to, CUTTINGS)
  )
    return true;
  const next = wordAt(pieces, to);
  // "Doreen took six of the rooted Salt Harrier": plants.
  if (
    pieces
      .slice(to, to + 5)
      .some((_, n) => wordAt(pieces, to + n) === 'rooted' && pieces[to + n + 1]?.is === 'plant')
  )
    return true;
  // "Take the last six back".
  if (followsWord(pieces, to, 'back') && !follows(pieces, to, 'plant', 'cutting')) return true;
  // "Took three Salt Harrier to Nell".
  if (leavesWith(pieces, to)) return true;
  // "The van took two dozen".
  if (isCarried(pieces, from)) return true;
  // "A customer took six".
  if (isBuyer(pieces, from) && !followsWord(pieces, to, CUTTINGS)) return true;
  // "Took over twenty": more than that.
  if (next === 'over' && pieces[to + 1]?.is === 'count') return false;
  if (
    /^(?:out|off|away|delivery|photos?|pictures?|ages|stock|advice|care|time|notes?|part|place|over|down|it|him|her|home|apart|forever|long|root|roots|ill|pity|hours|days|weeks)$/.test(
      next,
    )
  )
    return true;
  if (
    /^(?:the|a|another|my|their|some)$/.test(next) &&
    /^(?:lid|lids|cover|covers|fleece|tops|day|temperature|train|bus|car|dog|kids|children|photo|photos|pictures|picture|plunge|tips|heads|head|hint|morning|afternoon|opportunity|liberty|top|bag|bags|cloche|domes?|week|weekend|rest|lot|pinch|look|peek|gander|chance|risk|turn|stroll|walk|beating|knock|while|break|breather)$/.test(
      wordAt(
        pieces,
        /^(?:good|proper|quick|long|lovely|nice|great|few|couple)$/.test(wordAt(pieces, to + 1))
          ? to + 2
          : to + 1,
      ),
    )
  )
    return true;
  if (/^(?:them|em|those|these|it|they)$/.test(next)) return !followsWord(pieces, to, /^(?:from|with)$/);
  if (
    follows(pieces, to, 'plant') &&
    goesTo(pieces, to) &&
    !follows(pieces, to, 'cutting') &&
    !followsWord(pieces, to, CUTTINGS)
  )
    return true;
  return !follows(pieces, to, 'plant', 'count', 'cutting') && !followsWord(pieces, to, CUTTINGS);
}

/** What is taken off a plant or a bench and is no part of it. */
const COVERED_OR_MARKED = new RegExp(
  `^(?:${COVERINGS}|shading|shade|labels?|tags?|canes?|ties?|strings?|wires?)$`,
);

/** Where a grower rests, or over what. */
const REST =
  /^(?:deckchair|armchair|chair|sofa|settee|couch|hammock|lounger|recliner|sun|sunshine|shade|tea|coffee|cuppa|brew|beer|break|breather|bath|feet|nap)$/;

/** "In the deckchair", "with a cuppa", with no cuttings told of. */
function restsBehind(pieces: readonly Piece[], from: number): boolean {
  const end = pieces.findIndex(({ is }, at) => at >= from && is === 'break');
  return pieces
    .slice(from, end < 0 ? undefined : end)
    .some(
      (piece) =>
        (piece.is === 'word' && REST.test(piece.text)) || (piece.is === 'place' && REST.test(piece.place)),
    );
}

/** A place straight behind, which something was taken off, or into. */
function placeBehind(pieces: readonly Piece[], from: number, prep: 'off' | 'into' = 'off'): boolean {
  const at = pieces.findIndex(({ is }, n) => n >= from && is !== 'word');
  const piece = pieces[at];
  return at <= from + 2 && piece?.is === 'place' && piece.prep === prep;
}

/** Plants that are there already, by an article or "all", straight before "into" a place. */
function isCarriedInto(pieces: readonly Piece[], to: number): boolean {
  const plant = pieces.findIndex(({ is }, at) => at >= to && is === 'plant');
  const before = pieces.slice(to, plant);
  return (
    plant >= to &&
    plant <= to + 4 &&
    wordAt(pieces, plant + 1) === 'into' &&
    placeBehind(pieces, plant + 1, 'into') &&
    before.every((piece) => piece.is === 'count' || (piece.is === 'word' && !CUTTINGS.test(piece.text))) &&
    before.some(
      (piece) => isWhole(piece) || (piece.is === 'word' && /^(?:the|my|our|those|these)$/.test(piece.text)),
    )
  );
}

/** All there is, or the others, no plant named, and a place that it was taken to or from; nothing was taken off anything. */
function isAllOfPlace(pieces: readonly Piece[], to: number): boolean {
  const all = pieces[to];
  if (all?.is !== 'count' || (all.quantity.whole === undefined && !all.quantity.besides)) return false;
  const end = pieces.findIndex((piece, at) => at > to && piece.is === 'break');
  const own = pieces.slice(to + 1, end < 0 ? undefined : end);
  return (
    own.some(({ is }) => is === 'place') &&
    own.every(
      (piece) =>
        !/^(?:plant|cutting|pots)$/.test(piece.is) && !(piece.is === 'word' && CUTTINGS.test(piece.text)),
    )
  );
}

/** Plants, and where they were carried: "out for", "along to", "home again", "indoors", "into work". */
function isCarriedAlong(pieces: readonly Piece[], to: number): boolean {
  const plant = pieces.findIndex(({ is }, n) => n >= to && is !== 'count' && is !== 'word');
  if (pieces[plant]?.is !== 'plant' || plant > to + 4) return false;
  if (pieces.slice(to, plant + 2).some((piece) => piece.is === 'word' && CUTTINGS.test(piece.text)))
    return false;
  const [whither, next] = [wordAt(pieces, plant + 1), wordAt(pieces, plant + 2)];
  return (
    (/^(?:out|along|over|round|home|away|back|across)$/.test(whither) &&
      /^(?:for|to|with|but|again|and)$/.test(next)) ||
    // "Took six Salt Harrier outside" may tell where they were put.
    (isThere(pieces[plant + 1]) &&
      (next === 'for' || endsAt(pieces, plant + 2)) &&
      !pieces.slice(to, plant).some(({ is }) => is === 'count')) ||
    // "Took the Salt Harrier out of the sun".
    (whither === 'out' && next === 'of' && !pieces.slice(to, plant).some(({ is }) => is === 'count')) ||
    (/^(?:home|in|out|away|back)$/.test(whither) && endsAt(pieces, plant + 2)) ||
    (/^(?:to|into)$/.test(whither) && /^(?:work|town|college|uni|hospital)$/.test(next))
  );
}

/** "Outside", "indoors": heard as a place or a word. */
const isThere = (piece: Piece | undefined): boolean =>
  (piece?.is === 'word' && OUTSIDE.test(piece.text)) || (piece?.is === 'place' && OUTSIDE.test(piece.place));

/** "To the greenhouse" before the next break or deed, not "two to a pot". */
const goesTo = (pieces: readonly Piece[], from: number): boolean => {
  const end = pieces.findIndex(
    (piece, at) =>
      at >= from && (piece.is === 'break' || (piece.is === 'word' && piece.verb?.form === 'past')),
  );
  return pieces
    .slice(from, end < 0 ? undefined : end)
    .some(
      (_, n) =>
        wordAt(pieces, from + n) === 'to' &&
        pieces.slice(from + n + 1, from + n + 4).some(({ is }) => is === 'place'),
    );
};

/** "Doreen took two for her mother": somebody else carried plants away. */
export function forTheirOwn(pieces: readonly Piece[], from: number, to: number): boolean {
  const who = wordAt(pieces, from - 1);
  return (
    who !== '' &&
    !/^(?:i|we|i've|we've|have|and|then|also|just|today)$/.test(who) &&
    pieces
      .slice(to)
      .some(
        (_, n) =>
          wordAt(pieces, to + n) === 'for' &&
          /^(?:his|her|their|herself|himself|themselves)$/.test(wordAt(pieces, to + n + 1)),
      )
  );
}
