/** What else than cuttings may be taken: "took the lid off", "took 12 days", "took them to Nell". */
import type { Piece } from '../../pieces/pieces.js';
import { asTheyWanted, CUTTINGS, isBuyer, isCarried, leavesWith } from '../taken-away.js';
import { closeBehind, follows, followsWord, nextPlant, wordAt } from '../rule.js';
import { COVERINGS, isOpenedOrLaid } from '../tend/telling.js';
import { isAllOfPlace, isCarriedAlong, isCarriedInto, placeBehind } from './carried-off.js';
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
  if (isToTip(pieces, to)) return true;
  // "A frost, and it took two".
  if (wordAt(pieces, from - 1) === 'it') return true;
  // "Took the Salt Harrier out of the hot press", "took six Salt Harrier out of the propagator": carried.
  const plant = nextPlant(pieces, to);
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
  // "Took the row cover off the hoop house", "took the cloche off the Salt Harrier".
  if (
    followsWord(pieces, to, 'off') &&
    (pieces.slice(to, to + 3).some(isOpenedOrLaid) || followsWord(pieces, to, COVERED_OR_MARKED))
  )
    return true;
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
  if ((isBuyer(pieces, from) || asTheyWanted(pieces, to)) && !followsWord(pieces, to, CUTTINGS)) return true;
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
    /^(?:lid|lids|branch|limb|secateurs|scissors|snips|loppers|shears|cover|covers|fleece|tops|day|temperature|train|bus|car|dog|kids|children|photo|photos|pictures|picture|plunge|tips|heads|head|hint|morning|afternoon|opportunity|liberty|top|bag|bags|cloche|domes?|week|weekend|rest|lot|pinch|look|peek|gander|chance|risk|turn|stroll|walk|beating|knock|while|break|breather)$/.test(
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

/** "Took two Salt Harrier down the tip", "… to the compost heap": thrown away. */
function isToTip(pieces: readonly Piece[], from: number): boolean {
  const end = pieces.findIndex(({ is }, at) => at >= from && is === 'break');
  return pieces.slice(from, end < 0 ? pieces.length : end).some((_, n) => {
    const at = from + n;
    if (!/^(?:to|down)$/.test(wordAt(pieces, at)) || wordAt(pieces, at + 1) !== 'the') return false;
    if (/^(?:next|close)$/.test(wordAt(pieces, at - 1))) return false;
    const kind = /^(?:compost|council|green|brown)$/.test(wordAt(pieces, at + 2)) ? at + 3 : at + 2;
    return /^(?:tip|skip|dump|heap|bin|bonfire)$/.test(wordAt(pieces, kind));
  });
}
