/** Plants that somebody takes to somebody else, told in the words of taking cuttings. */
import { isKnown } from '../row/lexicon.js';
import { whole } from '../phrases.js';
import { FOLK } from '../mood/somebody-else.js';
import type { Piece } from '../pieces/pieces.js';
import { wordAt } from './rule.js';

/** What is taken from a plant to be rooted. */
export const CUTTINGS =
  /^(?:cutting|cuttings|slip|slips|piece|pieces|stem|stems|shoots|shoot|bits|bit|basals|tips|nodes|babies|snippets|starts|sprigs|twigs|wands)$/;

/** What carries plants away, as the subject of a sentence: "the van took two dozen". */
const CARRIER = /^(?:van|lorry|truck|trailer|courier|carrier|haulier|driver|postman|postie)$/;

/** Where plants are sold, shown or given. */
const OUTLET =
  /^(?:shops?|markets?|nursery|nurseries|centre|center|fairs?|fayre|f[eê]te|sales?|show|stall|auction|jumble|raffle|depot|florists?|wholesalers?|customers?|school|church|hospice|caf[eé]|club|society|wi)$/;

/** What may follow an outlet that is told to its end. */
const PAST_OUTLET = /^(?:for|on|by|and|but|before|after|as|at|in|with|who|where|because|so|first|again|too)$/;

/** "The van took …": whether what stands before the words carries plants away. */
export const isCarried = (pieces: readonly Piece[], from: number): boolean =>
  CARRIER.test(subjectOf(pieces, from));

/** Who comes to have plants: "a customer took six". */
const BUYER =
  /^(?:customers?|buyers?|punters?|clients?|visitors?|shoppers?|florist|stallholder|trader|sister|brother|neighbou?rs?|friends?|mate|pal|cousin|aunt|auntie|aunty|uncle|niece|nephew|colleague)$/;

/** Bodies of people, who grow nothing with us: "the Rotary took six". */
const BODY = whole`
  rotary|rotarians|wi|u3a|scouts|cubs|beavers|guides|brownies|rainbows|legion|lions|table|oddfellows|masons
  pub|chapel|cathedral|bank|surgery|hospital|hospice|museum|library|caf[eé]|home|parish|committee|station|band
  society|council|union|charity|playgroup|tenants|residents|landlord|landlady|caretaker|warden|bowls|bowlers
`;

export const isBuyer = (pieces: readonly Piece[], from: number): boolean =>
  (BUYER.test(subjectOf(pieces, from)) ||
    FOLK.test(subjectOf(pieces, from)) ||
    isBody(pieces, from) ||
    isFirmAt(pieces, subjectAt(pieces, from)) ||
    isTakerAgain(pieces, from)) &&
  // "The lads took 40, two trays of 20": put in to root.
  !pieces.slice(from).some(({ is }) => is === 'pots' || is === 'medium');

/** Where the last word before a deed stands, or before its "has" or "just". */
const subjectAt = (pieces: readonly Piece[], from: number): number =>
  /^(?:has|had|have|just|also|then)$/.test(wordAt(pieces, from - 1)) ? from - 2 : from - 1;

const subjectOf = (pieces: readonly Piece[], from: number): string => wordAt(pieces, subjectAt(pieces, from));

/** "Gave Derek two and he took six": by whom more was had. */
const isTakerAgain = (pieces: readonly Piece[], from: number): boolean =>
  /^(?:he|she)$/.test(subjectOf(pieces, from)) && !/^(?:has|had)$/.test(wordAt(pieces, from - 1));

/** "The Rotary", "the allotment society", "the village pub", which is heard as a place; nowhere that anything was done in. */
function isBody(pieces: readonly Piece[], from: number): boolean {
  const at = subjectAt(pieces, from);
  const subject = pieces[at];
  const name = subject?.is === 'place' && subject.prep === undefined ? subject.place : wordAt(pieces, at);
  return (
    BODY.test(name.slice(name.lastIndexOf(' ') + 1)) &&
    [1, 2, 3].some((n) => /^(?:the|our|local|village|a)$/.test(wordAt(pieces, at - n)))
  );
}

/** "Wickett Barn took six": a place that nothing is done in, behind a word of no list of ours, is the name of whoever took them. */
export function isFirmAt(pieces: readonly Piece[], at: number): boolean {
  const place = pieces[at];
  const named = pieces[at - 1];
  return (
    place?.is === 'place' &&
    place.prep === undefined &&
    named?.is === 'word' &&
    named.verb === undefined &&
    !isKnown(named.text) &&
    (at === 1 || pieces[at - 2]?.is === 'break' || /^(?:the|and|but|then)$/.test(wordAt(pieces, at - 2)))
  );
}

/** "To the farm shop", "to market": where what is brought leaves the collection. */
export function goesToOutlet(pieces: readonly Piece[], from: number): boolean {
  const to = pieces.findIndex(
    (piece, at) => at >= from && (piece.is === 'break' || wordAt(pieces, at) === 'to'),
  );
  if (wordAt(pieces, to) !== 'to') return false;
  for (let at = to + 1; at <= to + 6; at++) {
    const piece = pieces[at];
    if (piece?.is !== 'word') return false;
    const next = pieces[at + 1];
    const isEnd = next === undefined || next.is === 'break' || next.is === 'when';
    // "The church sale".
    if (OUTLET.test(piece.text) && next?.is === 'word' && OUTLET.test(next.text)) continue;
    if (OUTLET.test(piece.text)) return isEnd || (at > to + 1 && PAST_OUTLET.test(wordAt(pieces, at + 1)));
  }
  return false;
}

/** Plants and no cuttings, to an outlet, or to somebody who is named in a word and nothing more. */
export function leavesWith(pieces: readonly Piece[], from: number): boolean {
  let to = from;
  while (to < pieces.length && wordAt(pieces, to) !== 'to') to++;
  if (to === 0 || to === pieces.length) return false;
  const whom = pieces[to + 1];
  const end = pieces[to + 2];
  return (
    pieces.slice(from, to).some(({ is }) => is === 'plant') &&
    !pieces
      .slice(from, to)
      .some(
        (piece) =>
          piece.is === 'cutting' ||
          piece.is === 'break' ||
          (piece.is === 'word' && CUTTINGS.test(piece.text)),
      ) &&
    (goesToOutlet(pieces, from) ||
      (whom?.is === 'word' &&
        whom.verb === undefined &&
        !isKnown(whom.text) &&
        (end === undefined ||
          end.is === 'break' ||
          end.is === 'when' ||
          (end.is === 'word' && /^(?:and|but|then|for)$/.test(end.text)))))
  );
}

/** "…, that's all he wanted". */
export const asTheyWanted = (pieces: readonly Piece[], from: number): boolean =>
  pieces
    .slice(from)
    .some(
      (_, n) =>
        /^(?:he|she|they)$/.test(wordAt(pieces, from + n)) &&
        /^(?:wanted|needed|asked)$/.test(
          wordAt(pieces, from + n + (wordAt(pieces, from + n + 1) === 'only' ? 2 : 1)),
        ),
    );
