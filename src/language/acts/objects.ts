/** Whether an act is done to plants at all: "lost my secateurs", "sold the car" are told in the same words. */
import { countsBeasts } from './beasts-killed.js';
import { isBoundary } from '../clauses/boundaries.js';
import type { Clause } from '../clauses/clauses.js';
import type { Draft } from './drafting/draft.js';
import { DUDS } from '../pieces/duds.js';
import { RUINED } from '../grammar/loss/ruined.js';
import { isSomeones } from '../grammar/other-people.js';
import { endsAt, wordAt } from '../grammar/rule.js';
import { actsOnThing, isPartOf, isThingItself } from '../pieces/other-things.js';
import type { Piece } from '../pieces/pieces.js';

/** Words that may stand for plants, or beside them, where none is named. */
const PLANTISH =
  /^(?:cutting|cuttings|plant|plants|plug|plugs|liner|liners|tuber|tubers|crown|crowns|stool|stools|slip|slips|seedling|seedlings|baby|babies|stock|one|ones|others|other|rest|lot|lots|survivors|batch|batches|pot|pots|tray|trays|everything|pieces|bits|tips|tops|heads|them|em|those|these|it|they|tray's|lot's|batch's|rest's|root|roots|rooted|mush|compost|mother|division|divisions|dead|rotten|mouldy|weak|leggy|little|small|poor|best|strongest|biggest|first|last|few|couple|many|most|more|two|half|all|own|bigger|larger|mine|ours)$/;
const isPlantish = (word: string): boolean => PLANTISH.test(word) || DUDS.test(word);
/** How or where to, with nothing named that it was done to. */
const SOMEHOW =
  /^(?:again|individually|separately|outside|inside|outdoors|indoors|home|away|off|out|on|up|in|back|over|across|through|down|overnight)$/;
const FUNCTION =
  /^(?:the|a|an|my|our|whole|entire|of|some|to|and|then|but|so|i|we|have|has|had|just|also|too|now|from|with|for|at|by|into|onto|under|this|that|thats|that's|which|because|as|well|is|are|was|were|be|been|got|get|not|no|yet|already|finally|only|really|very|quite|properly|nicely|today|yesterday|since|me|us|you|he|she|who|there|here|after|before|each|every|per|about|or|even|still|when|where|if|while|again|please|sadly|unfortunately|alas|sorry|gone|went|going|did|do|done|found|oh|ah|um|er|anyway|anyhow)$/;
const PREPOSITION =
  /^(?:except|bar|apart|to|with|from|for|in|into|on|onto|at|by|along|beside|behind|round|around|near|under|against|before|after|during|while|when)$/;
const OTHERS = /^(?:his|her|their|hers|theirs|your)$/;

/**
 * False where the words name something else than plants as what the act was done to, or plants of somebody else. Only
 * asked where the clause names no plant, or a crop.
 */
export function actsOnPlants(draft: Draft, pieces: readonly Piece[], clause: Clause): boolean {
  if (ownedByOthers(pieces, clause) || doneForOthers(pieces, clause)) return false;
  // "Planted myself in the deckchair".
  if (
    clause.hit &&
    !/^(?:stock|receive|dispatch)$/.test(clause.hit.rule.kind) &&
    /^(?:my|your|him|her|our|them|it)sel(?:f|ves)$/.test(wordAt(pieces, clause.hit.from + 1))
  )
    return false;
  if (
    clause.hit &&
    /^(?:stock|receive)$/.test(clause.hit.rule.kind) &&
    isThingItself(pieces, clause.hit.from)
  )
    return false;
  if (
    clause.hit &&
    clause.hit.rule.kind !== 'tend' &&
    (actsOnThing(pieces, clause.hit.to) || isPartOf(draft, pieces, clause))
  )
    return false;
  if (countsBeasts(pieces, clause)) return false;
  if (draft.plant !== undefined || draft.pronoun || draft.leftOut) return true;
  const { hit } = clause;
  if (!hit) return true;
  const own = new Set(hit.own);
  // "Two labels lost", "rotten weather": with nothing on the side it is told from, the other side says it.
  const front = clause.subjectFirst ? hit.from > clause.from : hit.to >= clause.to;
  const from = front ? clause.from : hit.from;
  const to = front ? hit.from : clause.to;
  for (let at = from; at < to; at++) {
    // "Rotten at the base".
    if (clause.subjectFirst && !front && PREPOSITION.test(wordAt(pieces, at))) return true;
    if (own.has(at)) continue;
    const piece = pieces[at];
    if (!piece || piece.is === 'break') {
      if (at > from && !front) return true;
      continue;
    }
    // "Gave Tom two": how many, and nothing said to be something else.
    if (piece.is === 'count' && at > from && hit.rule.kind === 'dispatch' && endsAt(pieces, at + 1))
      return true;
    if (piece.is === 'when' || piece.is === 'count') continue;
    // "Sand, grit and perlite all delivered".
    if (piece.is === 'medium' && front && /^(?:dispatch|receive|stock)$/.test(hit.rule.kind)) return false;
    if (piece.is !== 'word') return true;
    // What was done it to stands before the first preposition.
    if (at > from && PREPOSITION.test(piece.text) && draft.quantity !== undefined) return true;
    // "Lost two and the rest are fine", "two lost and the rest are fine": the number stood alone.
    const number = at === hit.to ? hit.from - 1 : at - 1;
    if (!front && pieces[number]?.is === 'count' && tellsOn(pieces, at)) return true;
    // "Binned the last three riddled with whitefly": what they were like.
    if (pieces[at - 1]?.is === 'count' && isInfested(pieces, at)) return true;
    if (FUNCTION.test(piece.text)) continue;
    // "Two were black at the base so out they went": how those counted looked.
    if (front && clause.subjectFirst && at > from && RUINED.test(piece.text)) return true;
    if (hit.rule.kind === 'dispatch' && pieces[at + 1]?.is === 'count' && endsAt(pieces, at + 2)) return true;
    if (hit.rule.kind === 'dispatch' && givesSome(pieces, at + 1, to)) return true;
    const next = wordAt(pieces, at + 1);
    // "Snapped two clean off"; no "moved the car off the drive", "took two sausages off the table".
    const isThing = /^(?:the|my|our|a|an)$/.test(wordAt(pieces, at - 1)) || pieces[at - 1]?.is === 'count';
    const isAdverb =
      /ly$|^(?:clean|right|straight|well|close|further|even|some|overnight|together|bang|slap)$/.test(
        piece.text,
      );
    return (
      isPlantish(piece.text) ||
      SOMEHOW.test(piece.text) ||
      isPlantish(next) ||
      ((isAdverb || !isThing) && SOMEHOW.test(next))
    );
  }
  return true;
}

const isInfested = (pieces: readonly Piece[], at: number): boolean =>
  /^(?:riddled|crawling|full|covered|smothered|infested|ridden|heaving|alive|furry)$/.test(
    wordAt(pieces, at),
  ) && /^(?:with|of|in|by)$/.test(wordAt(pieces, at + 1));

/** "And the rest are fine", "but they look well": what is told behind is of others. */
function tellsOn(pieces: readonly Piece[], at: number): boolean {
  const next = pieces[at + 1];
  if (!/^(?:and|but|though|although)$/.test(wordAt(pieces, at))) return false;
  return next?.is === 'count'
    ? next.quantity.whole !== undefined
    : /^(?:i|we|they|it|others?)$/.test(wordAt(pieces, at + 1));
}

/** "Gave Piet two of the good ones": a number behind whoever had them, and a word for plants that ends it. */
function givesSome(pieces: readonly Piece[], from: number, to: number): boolean {
  const count = pieces.findIndex((piece, at) => at >= from && piece.is === 'count');
  if (count < from || count > from + 2) return false;
  let end = count + 1;
  while (
    end < to &&
    pieces[end]?.is === 'word' &&
    (wordAt(pieces, end) === 'of' || !PREPOSITION.test(wordAt(pieces, end))) &&
    !endsAt(pieces, end)
  )
    end++;
  return /^(?:ones|uns|plants|plugs|liners|cuttings|seedlings|tubers|best|strongest|biggest|largest|spares|others)$/.test(
    wordAt(pieces, end - 1),
  );
}

/** What a grower has besides plants. */
const PERSONAL =
  /^(?:the|my|our|his|her|your) (?:eyes?|face|head|feet|hands?|hair|nose|mouth|ears?|feelings|frustrations?|anger|spleen|tea|wine|dog|dogs|cat|cats|kids|children|baby|horse|pony|hens|chickens|birds|fish|sheep|cows|goats|pigs|lambs)$/;

/** "Watered the lawn": something by name that is no plant of ours, no place that the ledger would know. */
export function tendsSomethingElse(draft: Draft, pieces: readonly Piece[], { hit }: Clause): boolean {
  // "Shaded my eyes and stared at the propagator".
  if (
    hit &&
    PERSONAL.test(`${wordAt(pieces, hit.to)} ${wordAt(pieces, hit.to + 1)}`) &&
    // "Fed the baby fuchsias".
    pieces[hit.to + 2]?.is !== 'plant' &&
    !isPlantish(wordAt(pieces, hit.to + 2))
  )
    return true;
  if (
    (!hit || hit.rule.shape !== 'object' || draft.plant) ??
    draft.place ??
    draft.fromPlace ??
    draft.quantity
  )
    return false;
  const article = /^(?:the|my|our)$/.test(wordAt(pieces, hit.to));
  // "Covered the compost heap".
  const store = article ? hit.to + 1 : hit.to;
  if (
    pieces[store]?.is === 'medium' &&
    /^(?:heap|heaps|bin|bins|bag|bags|pile|bay|sack|sacks|bales?)$/.test(wordAt(pieces, store + 1))
  )
    return true;
  const object = wordAt(pieces, hit.to + 1);
  return (
    article &&
    hit.own.length === 1 &&
    object !== '' &&
    !isPlantish(object) &&
    !/^(?:benches|bench|house|tops)$/.test(object)
  );
}

/** "Potted on six of Edna's fuchsias for her", "watered Edna's greenhouse while she's away". */
function doneForOthers(pieces: readonly Piece[], { from, to, hit }: Clause): boolean {
  const own = pieces.slice(from, to);
  const theirs = own.some(
    ({ is }, at) => (is === 'plant' || is === 'place') && isSomeones(wordAt(own, at - 1)),
  );
  return (
    theirs &&
    own.some(
      (_, at) =>
        (wordAt(own, at) === 'for' &&
          /^(?:her|him|them)$/.test(wordAt(own, at + 1)) &&
          own[at + 2]?.is !== 'plant') ||
        // "Nicked six off Olwen's Salt Harrier while she saw to the tea": for ourselves.
        (hit?.rule.kind !== 'strike' &&
          /^(?:while|whilst)$/.test(wordAt(own, at)) &&
          /^(?:she|he|they)(?:'s|'re)?$/.test(wordAt(own, at + 1))),
    )
  );
}

/** "The neighbour lost all his dahlias", "Mum watered her own greenhouse". */
function ownedByOthers(pieces: readonly Piece[], clause: Clause): boolean {
  for (let at = clause.from; at < clause.to; at++) {
    // "Next door's dahlias".
    if (
      /^(?:door's|neighbour's|neighbor's|neighbours)$/.test(wordAt(pieces, at)) &&
      pieces[at + 1]?.is === 'plant'
    )
      return !/^(?:stock|receive|dispatch|strike)$/.test(clause.hit?.rule.kind ?? '');
    if (!OTHERS.test(wordAt(pieces, at)) || isReasonOfOthers(pieces, clause, at)) continue;
    const next = pieces[at + 1];
    const named =
      next?.is === 'plant' ||
      next?.is === 'place' ||
      next?.is === 'count' ||
      /^(?:own|whole|entire|last|lot|batch|cuttings|plants)$/.test(wordAt(pieces, at + 1));
    const given = clause.hit && /^(?:stock|receive|dispatch|strike)$/.test(clause.hit.rule.kind);
    if (
      named &&
      !given &&
      clause.hit &&
      wordAt(pieces, clause.hit.from - 1) !== 'i' &&
      !/^(?:their|your)$/.test(wordAt(pieces, at))
    )
      return true;
  }
  return false;
}

/** "Moved the lot, Dale needed his bench back": behind a deed of one's own, what somebody else was about. */
function isReasonOfOthers(pieces: readonly Piece[], { from, hit }: Clause, at: number): boolean {
  if (!hit || at < hit.to) return false;
  const before = wordAt(pieces, hit.from - 1);
  if (hit.from > from && !/^$|^(?:i|we|i've|we've|and|then|also|just|so)$/.test(before)) return false;
  const joint = pieces.findLastIndex((piece, n) => n >= hit.to && n < at && isBoundary(piece));
  if (joint < 0) return false;
  const verb = pieces.findIndex(
    (piece, n) => n > joint + 1 && piece.is === 'word' && piece.verb !== undefined,
  );
  return verb > 0 && verb < at && !/^(?:i|we|and|then)$/.test(wordAt(pieces, verb - 1));
}
