/** The fourth stage: pieces to clauses, one act each, cut where a new act or sentence begins. */
import { actHits } from './act-hits.js';
import type { Hit } from '../grammar/hits.js';
import { follows, type Rule, wordAt } from '../grammar/rule.js';
import { isBeastBehind } from './beast-next.js';
import { boundaryBefore, isBoundary, isCut } from './boundaries.js';
import { excepts } from '../acts/drafting/except-words.js';
import { DUDS } from '../pieces/duds.js';
import { behindOtherDeed } from './other-deed.js';
import { whole } from '../phrases.js';
import type { Piece } from '../pieces/pieces.js';
import { rootlessFrom } from './rootless.js';
import { sourceLedFrom } from './source-led.js';
import {
  anotherState,
  anotherSubject,
  floatedFrom,
  isToldOfBefore,
  ownSubject,
  plantToldOf,
} from './subjects.js';

export interface Clause {
  /** Pieces [from, to) that belong to the act; breaks inside are kept. */
  readonly from: number;
  readonly to: number;
  readonly hit: Hit | undefined;
  /** Which sentence of the note it stands in. */
  readonly sentence: number;
  /** The sentence ends in a question mark. */
  readonly asked: boolean;
  /** The plant stands before the head: "were potted on", "rooted". */
  readonly subjectFirst: boolean;
}

/** A row without an act, as one clause. */
export const wholeOf = (pieces: readonly Piece[]): Clause => ({
  from: 0,
  to: pieces.length,
  hit: undefined,
  sentence: 0,
  asked: false,
  subjectFirst: false,
});

const LEAD = new Set(
  "i we have had has just also then and but so finally now already he she they who it you been be being am is are was were got get not never did do will would could should might may must ive weve i've we've still only all both even probably nearly almost one another since that which again ended up having going to didn't haven't hasn't hadn't wasn't weren't couldn't if i'd we'd".split(
    ' ',
  ),
);

/** Words of the subject that a head follows. */
const LED_BY = whole`
  older|younger|newer
  of|the|my|those|these|them|others|other|ones|cuttings|cutting|plugs|liners|tubers|crowns|from|more|they|which|that
  a|only|odd|single|little|poor|remaining|black|weedy|weak|sickly|sad|soft|limp|mushy|mouldy|manky|brown|good|bad|small|dead|rotten
`;

/** Clauses in the order of the text; every piece but the breaks between them belongs to one. */
export function clausesOf(pieces: readonly Piece[], rules: readonly Rule[]): readonly Clause[] {
  const clauses: Clause[] = [];
  let sentence = 0;
  for (const [from, to, mark] of sentences(pieces)) {
    const row = pieces.slice(from, to);
    const hits = actHits(rules, row).map((hit) => ({
      ...hit,
      from: hit.from + from,
      to: hit.to + from,
      own: hit.own.map((at) => at + from),
    }));
    const asked = mark === '?';
    if (hits.length === 0) clauses.push({ from, to, hit: undefined, sentence, asked, subjectFirst: false });
    let start = from;
    for (const [n, hit] of hits.entries()) {
      const next = hits[n + 1];
      const subjectFirst = isToldOfBefore(pieces, start, hit);
      const cut = next ? cutBetween(pieces, hit, next) : to;
      const end = anotherState(pieces, hit, subjectFirst ? anotherSubject(pieces, start, hit, cut) : cut);
      const named = pieces.slice(hit.to, end).some(({ is }) => is === 'plant');
      const begin =
        subjectFirst || !named ? ownSubject(pieces, start, hit) : behindOtherDeed(pieces, start, hit.from);
      clauses.push({ from: begin, to: end, hit, sentence, asked, subjectFirst });
      start = cut;
    }
    sentence++;
  }
  return clauses;
}

function* sentences(pieces: readonly Piece[]): Generator<[number, number, string]> {
  let from = 0;
  for (let at = 0; at <= pieces.length; at++) {
    const piece = pieces[at];
    if (piece && !(piece.is === 'break' && piece.hard)) continue;
    if (at > from) yield [from, at, piece?.is === 'break' ? piece.mark : ''];
    from = at + 1;
  }
}

function cutBetween(pieces: readonly Piece[], before: Hit, next: Hit): number {
  const low = before.to;
  const high = next.from;
  if (high <= low) return Math.max(low - 1, high);
  // "Five rooted, the cat walked across the Tallow Bell and snapped two".
  for (let at = low; at < high; at++) if (isBeastBehind(pieces, at)) return boundaryBefore(pieces, low, at);
  // The last break or conjunction before the next head, unless it only joins the subject of that head.
  const subject = subjectStart(pieces, low, next);
  for (let at = subject; at >= low; at--) {
    const piece = pieces[at];
    if (at < high && isCut(pieces, at)) return boundaryBefore(pieces, low, at);
    if (at < subject && piece && piece.is !== 'word') break;
    if (
      at < subject &&
      piece?.is === 'word' &&
      piece.verb?.form === 'past' &&
      !/^(?:found|managed|got|started|began|decided|went|helped|remembered|had|was|were|been|did)$/.test(
        piece.text,
      )
    )
      break;
  }
  return subject;
}

/** Where the words that lead up to a head begin: its auxiliaries, and for a head that follows its subject, that subject. */
function subjectStart(pieces: readonly Piece[], low: number, hit: Hit): number {
  let at = hit.from;
  let pronoun = false;
  const skipLead = (): void => {
    while (at > low) {
      const piece = pieces[at - 1];
      if (
        piece?.is !== 'word' ||
        !(LEAD.has(piece.text) || /^(?:after|fine|well|happy|grand|found)$/.test(piece.text))
      )
        break;
      if (isCut(pieces, at - 1)) break;
      at--;
      // "Binned two Ember Fox they went mouldy": they are the subject.
      if (
        /^(?:they|it)$/.test(piece.text) ||
        (/^(?:that|which)$/.test(piece.text) && pieces[at - 1]?.is === 'plant')
      ) {
        pronoun = true;
        break;
      }
    }
  };
  skipLead();
  if (!isToldOfBefore(pieces, low, hit)) {
    if (pieces[at - 1]?.is === 'when' && at - 1 > low && isBoundary(pieces[at - 2])) at--;
    // No "and of the Ember Fox I sold the Tallow Bell".
    const source = follows(pieces, hit.to, 'plant') ? undefined : sourceLedFrom(pieces, low, hit.from);
    at = source ?? objectLedFrom(pieces, low, at, hit) ?? at;
    return boundaryBefore(pieces, low, at);
  }
  if (pronoun) return boundaryBefore(pieces, low, at);
  at = rootlessFrom(pieces, plantToldOf(pieces, low, at - 1) ?? at);
  let plant = false;
  let count = false;
  if (isAllInThere(pieces, at)) return boundaryBefore(pieces, low, at - 3);
  while (at > low) {
    const piece = pieces[at - 1];
    // "Roots on five of them Ember Fox nothing yet": so many of the plant before.
    if (plant && wordAt(pieces, at - 1) === 'them' && wordAt(pieces, at - 3) === 'on') break;
    const floated = count && !plant ? floatedFrom(pieces, at) : undefined;
    if (piece?.is === 'plant' && !plant) plant = true;
    else if (piece?.is === 'count' && !count) {
      // "All moved, bar the six that were sold": the number is left out of the deed before.
      if (piece.quantity.allBut !== undefined && /^(?:which|that)$/.test(wordAt(pieces, at))) break;
      if (excepts(pieces, /^(?:the|those)$/.test(wordAt(pieces, at - 2)) ? at - 3 : at - 2)) break;
      count = true;
    }
    // "Mist bench 1 misted and tunnel 5 vented", "tunnel 1 5 rooted, tunnel 2 3 rooted".
    else if (
      piece?.is === 'place' &&
      !plant &&
      (count ? /^(?:check|loss)$/ : /^tend$/).test(hit.rule.kind) &&
      isBoundary(pieces[/^(?:the|my|our)$/.test(wordAt(pieces, at - 2)) ? at - 3 : at - 2])
    )
      plant = true;
    // "…, the two from last week have rooted": which lot.
    else if (
      piece?.is === 'when' &&
      /^from\b/i.test(piece.when.words) &&
      (pieces[at - 2]?.is === 'count' || /^(?:ones|lot|batch)$/.test(wordAt(pieces, at - 2)))
    ) {
      // carries on
    }
    // "…, tunnel 2: 3 rooted".
    else if (count && !plant && isHeadOf(pieces, at - 1)) {
      // carries on
    } else if (floated !== undefined) {
      at = floated;
      continue;
    } else if (piece?.is === 'word' && (LED_BY.test(piece.text) || DUDS.test(piece.text))) {
      // carries on
    } else break;
    at--;
    if (count && plant) {
      while (at > low && /^(?:the|my|of|all)$/.test(wordAt(pieces, at - 1))) at--;
      break;
    }
  }
  return boundaryBefore(pieces, low, at);
}

/** The colon behind a place. */
const isHeadOf = (pieces: readonly Piece[], at: number): boolean => {
  const colon = pieces[at];
  return colon?.is === 'break' && colon.mark === ':' && pieces[at - 1]?.is === 'place';
};

/** "Everything in there": all of a place named before. */
function isAllInThere(pieces: readonly Piece[], behind: number): boolean {
  const all = pieces[behind - 3];
  return (
    wordAt(pieces, behind - 1) === 'there' &&
    wordAt(pieces, behind - 2) === 'in' &&
    all?.is === 'count' &&
    all.quantity.whole === 'all'
  );
}

/**
 * "…, and the rest I gave to my sister", "…, and the Salt Harrier I gave four of to the school", "… but the Salt Harrier I only
 * watered": where what an act was done to begins, told before it behind a boundary. A plant may be told by its act ("and
 * the ones I pinched yesterday"), but not by one that took it away, nor where it is set apart.
 */
function objectLedFrom(pieces: readonly Piece[], low: number, at: number, hit: Hit): number | undefined {
  let from = rootlessFrom(pieces, at) - 1;
  const led = pieces[from];
  if (from <= low || !/^(?:i|we|i've|we've)$/.test(wordAt(pieces, at))) return undefined;
  if (led?.is === 'count' && !follows(pieces, hit.to, 'count', 'plant')) {
    // "…, and the 3 without roots I have thrown away".
    if (from < at - 1 && /^(?:the|those)$/.test(wordAt(pieces, from - 1))) from--;
    return isBoundary(pieces[from - 1]) ? from : undefined;
  }
  if (led?.is !== 'plant' || follows(pieces, hit.to, 'plant')) return undefined;
  while (
    from > low &&
    (pieces[from - 1]?.is === 'count' || /^(?:the|my|of|all|oh|well)$/.test(wordAt(pieces, from - 1)))
  )
    from--;
  if (!isBoundary(pieces[from - 1])) return undefined;
  if (hit.rule.kind === 'dispatch') return from;
  const isSetApart =
    pieces[from - 1]?.is === 'break' ||
    pieces[from - 2]?.is === 'break' ||
    wordAt(pieces, from - 1) === 'but' ||
    /^(?:only|just|also|then|still|simply|merely)$/.test(wordAt(pieces, at + 1));
  return isSetApart && !follows(pieces, hit.to, 'count') ? from : undefined;
}
