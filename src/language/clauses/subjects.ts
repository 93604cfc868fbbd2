/** Where what an act is told of stands, and where the next subject takes over. */
import { isBoundary } from './boundaries.js';
import { isDeniedState } from './denied-state.js';
import { DUDS } from '../pieces/duds.js';
import type { Hit } from '../grammar/hits.js';
import { wordAt } from '../grammar/rule.js';
import { isWhole } from '../grammar/stand-ins.js';
import type { Piece } from '../pieces/pieces.js';
import { isDoing, isSeenOn, isSeenOnThem } from './seen-on.js';

const BE = new Set(['be', 'get', 'have']);
const STATE = /^(?:be|have|get|look|need|want|seem|smell)$/;

const NOT_DONE =
  /^(?:should've|would've|could've|should|would|could|meant|(?:did|have|has|had|could)n't|forgot|ran)$/;

/** "Sixteen into pots then, and the Cinder Mabel has shifted": what precedes the break before the subject is no part of it. */
export function ownSubject(pieces: readonly Piece[], start: number, hit: Hit): number {
  for (let at = hit.from - 1; at > start; at--) {
    if (pieces[at]?.is !== 'break') continue;
    const own = pieces.slice(at, hit.from).some(({ is }) => is === 'plant');
    const before = pieces.slice(start, at).some(({ is }) => is === 'plant');
    const counted = (from: number, to: number): boolean =>
      pieces.slice(from, to).some(({ is }) => is === 'count');
    // "Four in the long border, two given to Nell".
    if (!before && counted(at, hit.from) && counted(start, at)) return at + 1;
    // "Should've done these too but ran out of pots, so it was only those got potted on".
    if (own && pieces.slice(start, at).some((piece) => piece.is === 'word' && NOT_DONE.test(piece.text)))
      return at + 1;
    // "Salt Harrier showing its first buds, Tallow Bell watered": how another is doing, told before.
    if (own && isDoing(pieces.slice(start, at))) return at + 1;
    return own && !before && pieces.slice(start, at).some(({ is }) => is === 'word') ? at + 1 : start;
  }
  return start;
}

/** "Pinched these and by the way the Tin Mandolin look happy": another plant's state is told, no act on it. */
export function anotherState(pieces: readonly Piece[], hit: Hit, end: number): number {
  for (let at = hit.to; at + 1 < end; at++) {
    if (!isBoundary(pieces[at])) continue;
    let plant = at + 1;
    while (/^(?:and|the|but|my|by|way|oh|also|so)$/.test(wordAt(pieces, plant))) plant++;
    // "…, the other half are sulking in the greenhouse".
    const others = wordAt(pieces, plant) === 'other' && pieces[plant + 1]?.is === 'count';
    if (others) plant++;
    const verb = pieces[plant + 1];
    const before = pieces.slice(0, at);
    const named = before.some(({ is }) => is === 'plant');
    const told = named || before.some((piece) => piece.is === 'place' || isAllOrThem(piece));
    if (told && !isReason(pieces, at) && (isSeenOn(pieces, plant) || isSeenOnThem(pieces, plant))) return at;
    if (
      (named || (/^gets?$/.test(wordAt(pieces, plant + 1)) && before.some(isWhole))) &&
      (others || pieces[plant]?.is === 'plant') &&
      // "…, Late Bus is the name on it": no state.
      wordAt(pieces, plant + 3) !== 'name' &&
      (isState(verb) || isDeniedState(pieces, plant + 1))
    )
      return at;
  }
  return end;
}

const isState = (verb: Piece | undefined): boolean =>
  verb?.is === 'word' &&
  verb.verb !== undefined &&
  STATE.test(verb.verb.lemma) &&
  verb.verb.form !== 'ing' &&
  verb.text !== 'got';

const isAllOrThem = (piece: Piece): boolean =>
  isWhole(piece) || (piece.is === 'word' && /^(?:them|those|these|it)$/.test(piece.text));

/** "Sprayed the porch because there's greenfly on these": why it was done, and what to. */
const isReason = (pieces: readonly Piece[], at: number): boolean =>
  /^(?:because|as|since|so|though|although|while)$/.test(wordAt(pieces, at));

/** Where another plant takes over behind a break ("these rooted, Braai Smoke still nothing"), else the end. */
export function anotherSubject(pieces: readonly Piece[], start: number, hit: Hit, end: number): number {
  const subject = pieces.slice(start, hit.from);
  const named = subject.some(({ is }) => is === 'plant') || isBesideToldOf(pieces, hit.from);
  const counted = subject.some(({ is }) => is === 'count');
  if (!named && !counted) return end;
  for (let at = hit.to; at + 1 < end; at++) {
    if (pieces[at]?.is !== 'break') continue;
    let plant = at + 1;
    while (/^(?:and|the|but|my)$/.test(wordAt(pieces, plant))) plant++;
    // "PE17 pinched today, first buds on AR33".
    const seen = /^(?:first|buds|flowers?|flower|aphids|greenfly|roots)$/.test(wordAt(pieces, plant));
    if (named && seen && pieces.slice(plant, plant + 5).some(({ is }) => is === 'plant')) return at;
    const behind = pieces[plant + 1];
    if (
      pieces[plant]?.is === 'plant' &&
      behind &&
      (named ||
        behind.is === 'count' ||
        /^(?:still|is|are|was|were|has|have|look|looks|not|no)$/.test(wordAt(pieces, plant + 1))) &&
      behind.is !== 'break' &&
      wordAt(pieces, plant + 1) !== 'and'
    )
      return at;
  }
  return end;
}

/** Whether what an act is told of stands before its head. */
export const isToldOfBefore = (pieces: readonly Piece[], start: number, hit: Hit): boolean =>
  hit.rule.shape === 'subject' || isPassive(pieces, start, hit) || isWithout(pieces, start, hit);

/** "Salt Harrier still no roots, …": what a plant is without, and nothing behind it but a mark. */
function isWithout(pieces: readonly Piece[], start: number, { rule, from, to }: Hit): boolean {
  const behind = pieces[to];
  if (rule.kind !== 'check' || rule.rooted !== 'none' || (behind && behind.is !== 'break')) return false;
  let at = from - 1;
  while (/^(?:has|have|had|got|still|with|showing|are|is|just)$/.test(wordAt(pieces, at))) at--;
  return at >= start && pieces[at]?.is === 'plant';
}

/** "The Marble Wren got potted on": a form of be or get before a past participle, with a plant or count before that. */
function isPassive(pieces: readonly Piece[], start: number, hit: Hit): boolean {
  const head = pieces[hit.from];
  if (head?.is !== 'word' || head.verb?.form !== 'past') return false;
  // "So those four went into pots": what went stands before.
  const mover = pieces[hit.from - 1];
  if (head.text === 'went' && mover?.is === 'count' && hit.from - 1 >= start) return true;
  // Pasts that no passive has: "pinched the Soot Angel gave four to Brenda".
  if (/^(?:gave|took|went|did|ate|broke|froze|threw|grew|shook)$/.test(head.text)) return false;
  if (/^(?:them|em|those|it|these)$/.test(wordAt(pieces, hit.from + 1))) return false;
  let at = hit.from - 1;
  while (
    at >= start &&
    /^(?:been|now|all|just|also|already|finally|not|n't|both|being|today)$/.test(wordAt(pieces, at))
  )
    at--;
  const aux = pieces[at];
  const between = pieces
    .slice(hit.to)
    .findIndex((piece, n) => piece.is === 'break' || leadsOn(pieces, hit.to + n));
  const after = pieces.slice(hit.to, between < 0 ? undefined : hit.to + between);
  const placed = pieces[hit.from - 1]?.is === 'place';
  const plantBefore =
    placed || pieces.slice(start, hit.from).some(({ is }) => is === 'plant' || is === 'count');
  const plantAfter = after.some(({ is }) => is === 'plant');
  if (aux?.is === 'word' && aux.verb && BE.has(aux.verb.lemma) && aux.verb.lemma !== 'have')
    return plantBefore || !plantAfter;
  const been = pieces.slice(at + 1, hit.from).some((piece) => piece.is === 'word' && piece.text === 'been');
  if (been && (plantBefore || !plantAfter)) return true;
  if (!plantAfter && plantToldOf(pieces, start, at) !== undefined) return true;
  if (!plantAfter && isBesideToldOf(pieces, hit.from)) return true;
  // Telegraphic: "5 Copper Lantern potted on", "FU22 misted".
  // "Salt Harrier just watered".
  const direct =
    pieces[/^(?:just|now|also|already|finally|only)$/.test(wordAt(pieces, hit.from - 1)) ? at : hit.from - 1];
  const subject =
    direct?.is === 'plant' ||
    (/^(?:those|these|them)$/.test(wordAt(pieces, hit.from - 1)) &&
      pieces[wordAt(pieces, hit.from - 2) === 'of' ? hit.from - 3 : hit.from - 2]?.is === 'count') ||
    (direct?.is === 'count' && !after.some(({ is }) => is === 'count')) ||
    direct?.is === 'place' ||
    direct?.is === 'when' ||
    (direct?.is === 'word' &&
      (/^(?:cuttings|cutting|plants|all|others|other|ones|rest)$/.test(direct.text) ||
        DUDS.test(direct.text))) ||
    (direct?.is === 'break' &&
      !direct.hard &&
      pieces[hit.from - 2]?.is === 'plant' &&
      // "Off a Salt Harrier, stuck six in perlite".
      pieces[hit.from + 1]?.is !== 'count' &&
      pieces[hit.to]?.is !== 'count');
  // "Lost three Salt Harrier brought the others in": what was brought stands behind.
  const own = pieces.slice(hit.from + 1, hit.from + 4);
  const next = own.find(({ is }, n) => is !== 'word' || !/^(?:on|up|out|in|off)$/.test(wordAt(own, n)));
  const othersBehind =
    next?.is === 'count' && (next.quantity.whole === 'rest' || next.quantity.besides === true);
  return subject && plantBefore && !plantAfter && !othersBehind;
}

/** "… and the Tallow Bell I gave away": what the next act was done to is told before it. */
function leadsOn(pieces: readonly Piece[], boundary: number): boolean {
  if (!isBoundary(pieces[boundary])) return false;
  let at = boundary + 1;
  // "… and four binned".
  const told = pieces[at + 1];
  if (
    pieces[at]?.is === 'count' &&
    told?.is === 'word' &&
    told.verb?.form === 'past' &&
    told.verb.lemma !== 'be'
  )
    return true;
  while (pieces[at]?.is === 'count' || /^(?:the|my|of|all|oh|well)$/.test(wordAt(pieces, at))) at++;
  return pieces[at]?.is === 'plant' && /^(?:i|we|i've|we've)$/.test(wordAt(pieces, at + 1));
}

/** "Salt Harrier fed and vented", "Salt Harrier all pulled up and binned": beside what was told of the plant before both. */
function isBesideToldOf(pieces: readonly Piece[], from: number): boolean {
  if (wordAt(pieces, from - 1) !== 'and') return false;
  let at = from - 2;
  if (/^(?:up|off|out|on)$/.test(wordAt(pieces, at))) at--;
  const beside = pieces[at];
  if (beside?.is !== 'word' || beside.verb?.form !== 'past') return false;
  at--;
  while (wordAt(pieces, at) === 'both' || isAll(pieces[at]) || pieces[at]?.is === 'break') at--;
  if (pieces[at]?.is !== 'plant') return false;
  const lead = pieces[at - 1];
  return (
    lead === undefined ||
    lead.is === 'break' ||
    lead.is === 'count' ||
    lead.is === 'when' ||
    /^(?:the|my|and)$/.test(wordAt(pieces, at - 1))
  );
}

const isAll = (piece: Piece | undefined): boolean => piece?.is === 'count' && piece.quantity.whole === 'all';

/** "The Nettle Duchess are out of the frame and planted": where the plant stands of which the words before `and` tell. */
export function plantToldOf(pieces: readonly Piece[], start: number, and: number): number | undefined {
  if (wordAt(pieces, and) !== 'and') return undefined;
  for (let at = and - 1; at > start && pieces[at]?.is !== 'break'; at--) {
    const verb = pieces[at];
    if (verb?.is === 'word' && verb.verb?.lemma === 'be' && pieces[at - 1]?.is === 'plant') return at - 1;
  }
  return undefined;
}

/** "… and the Ember Fox are all dead", "…, the Ember Fox have got 5 rooted": where the plant ends of which so many are told. */
export function floatedFrom(pieces: readonly Piece[], count: number): number | undefined {
  const quantity = pieces[count];
  let at = count;
  while (/^(?:have|had|has|got|now|already|only|just)$/.test(wordAt(pieces, at - 1))) at--;
  const isHad = /^(?:have|had|has)$/.test(wordAt(pieces, at));
  if (
    quantity?.is === 'count' &&
    (quantity.quantity.whole === 'all' || quantity.quantity.both === true) &&
    /^(?:are|were|is|was)$/.test(wordAt(pieces, at - 1))
  )
    at--;
  else if (!isHad) return undefined;
  return pieces[at - 1]?.is === 'plant' ? at : undefined;
}
