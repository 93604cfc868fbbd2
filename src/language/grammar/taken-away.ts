/** Plants that somebody takes to somebody else, told in the words of taking cuttings. */
import { isKnown } from '../row/lexicon.js';
import { whole } from '../phrases.js';
import { FOLK, KIN, pastPerson } from '../mood/somebody-else.js';
import { isReceiver } from './other-people.js';
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

const TITLE =
  /^(?:mr|mrs|ms|miss|dr|doctor|father|fr|sister|brother|reverend|rev|sir|lady|old|poor|young|auntie?|aunty|uncle)$/;

/** "To the hospice", "to the WI ladies", "to a good home": whoever is told by what they are, at the end of so many words. */
const HAS_THEM = whole`
  raffle|tombola|fete|f[eê]te|fair|fayre|sale|auction|jumble|market|school|college|playgroup|church|chapel|cathedral|mosque|temple
  hospice|hospital|surgery|library|museum|pub|caf[eé]|hall|club|society|association|committee|council|parish|charity|institute|wi
  scouts|cubs|beavers|guides|brownies|rainbows|rotary|legion|u3a|florists?|wholesalers?|neighbou?rs?|postie|milkman|couple|family|team|staff
  ((good|new|loving|better|care|nursing|old people's) )homes?|(food|blood) bank|(garden|day|community) centre|(garden|day|community) center|(farm|charity|corner|village) shop
`;
const FIRM_END =
  /^(?:gc|ltd|limited|co|nursery|nurseries|growers|gardens|plants|centre|center|landscapes|stores|sons|farm|barn|estate|society|council|dept|department)$/;
/** Behind a name or a body of people it tells which, or what else was done. */
const ENDS_NAME =
  /^(?:for|on|by|and|but|then|before|after|as|at|in|from|with|who|where|because|so|first|again|too|next|down|over|up|round|opposite|behind|instead)$/;

/** Whether whoever has the plants is told at `at`, behind a "to": somebody's kin, folk, a firm, a body of people, or a name. */
export function isSomebody(pieces: readonly Piece[], at: number): boolean {
  if (isReceiver(pieces[at]) || isReceiver(pieces[at + 1])) return true;
  const article = /^(?:the|my|our|a|an|some|this|that|her|his|their)$/.test(wordAt(pieces, at));
  const from = article ? at + 1 : at;
  let to = from;
  while (to < from + 4 && pieces[to]?.is === 'word' && !ENDS_NAME.test(wordAt(pieces, to))) to++;
  // "To a friend's greenhouse": where they stand.
  const words = Array.from({ length: to - from }, (_, n) => wordAt(pieces, from + n));
  const last = words.at(-1);
  if (last === undefined || words.some((word) => word.endsWith("'s")) || pieces[to]?.is === 'place')
    return false;
  if ([HAS_THEM, FOLK, KIN].some((whom) => whom.test(last)) || HAS_THEM.test(words.slice(-2).join(' ')))
    return true;
  // "To Broadlea GC", "to Marsh Gate Growers".
  if (!article && words.length > 1 && !isKnown(words[0] ?? '') && FIRM_END.test(last)) return true;
  if (pastPerson(pieces, at)?.sure) return true;
  return !article && TITLE.test(wordAt(pieces, at)) && to > at + 1;
}

/** Plants and no cuttings, to an outlet, or to somebody. */
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
      isSomebody(pieces, to + 1) ||
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
