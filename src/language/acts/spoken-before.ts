/** What an act leans on that was told before it: a plant, a place, a day, a cause. */
import { addDays } from '../../calendar/day.js';
import { firstDay, lastDay } from '../../calendar/span.js';
import type { Cause } from '../../ledger/entry.js';
import { isBeastAt } from '../clauses/beast-next.js';
import type { Clause } from '../clauses/clauses.js';
import { wordAt } from '../grammar/rule.js';
import { causes, phraseAt } from '../row/lexicon.js';
import type { Piece, PlantWords, When } from '../pieces/pieces.js';
import type { Quantity } from '../pieces/quantities/quantity.js';
import type { Proposal } from '../proposal.js';

const LIDDED = /\b(?:propagators?|frames?|cloches?|incubator|hotbed)(?: \w)?$/;
const OPENINGS = /^(?:ends?|doors?|sides?|windows?|lights?|vents?|flaps?)$/;

/** "Propagator at 24 so I opened its vents": the place whose temperature was just told. */
export function placeOfIt(
  pieces: readonly Piece[],
  clause: Clause,
  earlier: readonly Proposal[],
): string | undefined {
  const last = earlier.at(-1);
  const it = pieces.slice(clause.from, clause.to).some(
    (piece, n) =>
      piece.is === 'word' &&
      /^(?:it|its|there)$/.test(piece.text) &&
      // "While I was at it".
      wordAt(pieces, clause.from + n - 1) !== 'at',
  );
  // "Tunnel 2 at 34, vented both ends": what warms a place is let out of it.
  const isAired =
    last?.kind === 'reading' &&
    /^(?:vent|shade)$/.test(clause.hit?.rule.care ?? '') &&
    !pieces
      .slice(clause.from, clause.to)
      .some(
        ({ is }, n) =>
          is === 'plant' || (is === 'count' && !OPENINGS.test(wordAt(pieces, clause.from + n + 1))),
      );
  const told =
    last?.kind === 'reading' ||
    (last?.kind === 'tend' && last.draft.plant === undefined) ||
    // "Moved everything to the greenhouse and opened the vents in there".
    (last?.kind === 'move' &&
      pieces.slice(clause.from, clause.to).some((piece) => piece.is === 'word' && piece.text === 'there'));
  // "Propagator at 19, lids on", "opened the frame, put the lid back": what has a lid is covered; no garden is.
  const isCovered =
    told &&
    /^(?:cover|uncover)$/.test(clause.hit?.rule.care ?? '') &&
    typeof last.slots['place'] === 'string' &&
    LIDDED.test(last.slots['place']) &&
    !pieces.slice(clause.from, clause.to).some(({ is }) => /^(?:plant|count|place)$/.test(is));
  if (isAired || isCovered) return last.slots['place'] as string | undefined;
  return it && told ? (last.slots['place'] as string | undefined) : undefined;
}

const AFTER_STRIKING = new Set(['check', 'loss', 'potOn', 'pinch', 'hardenOff', 'plantOut']);

/** "Potted nine on Sunday and gave two away": the day of the act before in the sentence, where both were done in one go. */
export function dayBefore(
  pieces: readonly Piece[],
  { from, hit, subjectFirst }: Clause,
  before: Proposal | undefined,
): When | undefined {
  const when = before?.draft.when;
  const past = when?.past;
  const head = hit && pieces[hit.from];
  if (!past || past === 'ask' || lastDay(past) > addDays(firstDay(past), 6)) return undefined;
  // What has become of them since is told of the day of the note.
  if (subjectFirst || head?.is !== 'word' || head.verb?.form !== 'past') return undefined;
  if (before?.kind === 'strike' && AFTER_STRIKING.has(hit?.rule.kind ?? '')) return undefined;
  const isSince = pieces
    .slice(from, hit?.from)
    .some((_, n) => /^(?:have|has|had|i've|we've|now|just|since|later)$/.test(wordAt(pieces, from + n)));
  return isSince ? undefined : when;
}

/** What decay looks like, whatever brought it about. */
export function isMush(pieces: readonly Piece[], clause: Clause): boolean {
  return pieces
    .slice(clause.from, clause.to)
    .some((piece) => piece.is === 'word' && /^(?:mush|mushy|black|slime)$/.test(piece.text));
}

/** "Frost got into the igloo, five are mush": what did it, told just before; it outranks what the words of decay would tell. */
export function causeBefore(pieces: readonly Piece[], clause: Clause): Cause | undefined {
  const words = pieces.slice(0, clause.from).map((_, at) => wordAt(pieces, at));
  if (pieces[clause.from - 1]?.is !== 'break' && pieces[clause.from]?.is !== 'break') return undefined;
  for (let at = words.length - 1; at >= 0; at--) {
    const cause = phraseAt(causes, words, at)?.value;
    if (cause === 'frost' || cause === 'pest' || cause === 'drought') return cause;
    if (pieces[at]?.is === 'plant') return undefined;
  }
  return undefined;
}

/** "Three were foul, these I have thrown away": how many a loss tells of that only points at them, and of what; `since` is where the act before it ends. */
export function sortedOut(
  pieces: readonly Piece[],
  clause: Clause,
  since: number,
): { readonly quantity: Quantity; readonly cause?: Cause } | undefined {
  const end = clause.hit?.from ?? clause.from;
  for (let at = end - 1; at >= since; at--) {
    const piece = pieces[at];
    if (piece?.is === 'plant') return undefined;
    if (piece?.is !== 'count' || (piece.quantity.value === undefined && piece.quantity.whole !== 'rest'))
      continue;
    const of = /^(?:of|them|had|have|has)$/;
    let next = at + 1;
    while (of.test(wordAt(pieces, next))) next++;
    // "Chucked two of them gone all rotten": told of those by the act itself.
    if (wordAt(pieces, next) === 'gone' && !/^(?:have|had)$/.test(wordAt(pieces, next - 1))) return undefined;
    if (
      !/^(?:were|was|are|is|became|become|got|gone|went|look|looked|that|which|had|turned)$/.test(
        wordAt(pieces, next),
      ) &&
      // "One has my cat broken, so I threw it away".
      !(next > at + 1 && isBeastAt(pieces, next))
    )
      return undefined;
    const words = pieces.slice(next, end).map((_, n) => wordAt(pieces, next + n));
    const cause = words.flatMap((_, n) => phraseAt(causes, words, n)?.value ?? [])[0];
    return { quantity: piece.quantity, ...(cause === undefined ? {} : { cause }) };
  }
  return undefined;
}

/** "The Soot Angel want watering, so I gave them a soak": the plant that the sentence spoke of. */
export function plantBefore(pieces: readonly Piece[], clause: Clause): PlantWords | undefined {
  const piece = pieces.slice(0, clause.hit?.from ?? clause.from).findLast(({ is }) => is === 'plant');
  return piece?.is === 'plant' ? piece.plant : undefined;
}

/** The same where that plant opened what stands since the last break, whatever was named before ("…, Second Cousin need water so I watered them"). */
export function spokenOf(pieces: readonly Piece[], clause: Clause): PlantWords | undefined {
  const end = clause.hit?.from ?? clause.from;
  for (let at = end - 1; at > 0; at--) {
    const piece = pieces[at];
    if (piece?.is === 'plant') {
      while (/^(?:the|my|our|and|but)$/.test(wordAt(pieces, at - 1))) at--;
      return pieces[at - 1]?.is === 'break' ? piece.plant : undefined;
    }
    if (piece?.is === 'break') return undefined;
  }
  return undefined;
}

/** The plant named last, which a pronoun or silence in what follows means. */
export function carriedFrom(proposals: readonly Proposal[]): PlantWords | undefined {
  for (let at = proposals.length - 1; at >= 0; at--) {
    const plant = proposals[at]?.draft.plant ?? proposals[at]?.carried;
    if (plant) return plant;
  }
  return undefined;
}
