/** The fourth stage: pieces to clauses, one act each, cut where a new act or sentence begins. */
import { actHits } from './act-hits.js';
import { type Hit, type Rule, wordAt } from './grammar/rule.js';
import type { Piece } from './pieces.js';

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

const CONJUNCTION = new Set([
  'and',
  'then',
  'but',
  'plus',
  'also',
  'while',
  'so',
  'because',
  'though',
  'although',
  'however',
  'whilst',
  'after',
  'before',
  'whereas',
  'yet',
  'or',
]);
const LEAD = new Set(
  'i we have had has just also then and but so finally now already he she they who it you been be being am is are was were got get not never did do will would could should might may must ive weve still only all both even probably nearly almost one another since that which again only ended up having going to be'.split(
    ' ',
  ),
);
const BE = new Set(['be', 'get', 'have']);

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
      const subjectFirst = hit.rule.shape === 'subject' || isPassive(pieces, start, hit);
      const cut = next ? cutBetween(pieces, hit, next) : to;
      const end = anotherState(pieces, hit, subjectFirst ? anotherSubject(pieces, start, hit, cut) : cut);
      const named = pieces.slice(hit.to, end).some(({ is }) => is === 'plant');
      const begin = subjectFirst || !named ? ownSubject(pieces, start, hit) : start;
      clauses.push({ from: begin, to: end, hit, sentence, asked, subjectFirst });
      start = cut;
    }
    sentence++;
  }
  return clauses;
}

/** "Sixteen into pots then, and the Cinder Mabel has shifted": what precedes the break before the subject is no part of it. */
function ownSubject(pieces: readonly Piece[], start: number, hit: Hit): number {
  for (let at = hit.from - 1; at > start; at--) {
    if (pieces[at]?.is !== 'break') continue;
    const own = pieces.slice(at, hit.from).some(({ is }) => is === 'plant');
    const before = pieces.slice(start, at).some(({ is }) => is === 'plant');
    const counted = (from: number, to: number): boolean =>
      pieces.slice(from, to).some(({ is }) => is === 'count');
    // "Four in the long border, two given to Nell".
    if (!before && counted(at, hit.from) && counted(start, at)) return at + 1;
    return own && !before && pieces.slice(start, at).some(({ is }) => is === 'word') ? at + 1 : start;
  }
  return start;
}

const STATE = /^(?:be|have|look|need|want|seem|smell)$/;

/** "Pinched these and by the way the Tin Mandolin look happy": another plant's state is told, no act on it. */
function anotherState(pieces: readonly Piece[], hit: Hit, end: number): number {
  for (let at = hit.to; at + 1 < end; at++) {
    if (!isBoundary(pieces[at])) continue;
    let plant = at + 1;
    while (/^(?:and|the|but|my|by|way|oh|also|so)$/.test(wordAt(pieces, plant))) plant++;
    // "…, the other half are sulking in the greenhouse".
    const others = wordAt(pieces, plant) === 'other' && pieces[plant + 1]?.is === 'count';
    if (others) plant++;
    const verb = pieces[plant + 1];
    const named = pieces.slice(0, at).some(({ is }) => is === 'plant');
    if (
      named &&
      (others || pieces[plant]?.is === 'plant') &&
      verb?.is === 'word' &&
      verb.verb &&
      STATE.test(verb.verb.lemma) &&
      verb.verb.form !== 'ing'
    )
      return at;
  }
  return end;
}

/** Where another plant takes over behind a break ("these rooted, Braai Smoke still nothing"), else the end. */
function anotherSubject(pieces: readonly Piece[], start: number, hit: Hit, end: number): number {
  const subject = pieces.slice(start, hit.from);
  const named = subject.some(({ is }) => is === 'plant');
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

function* sentences(pieces: readonly Piece[]): Generator<[number, number, string]> {
  let from = 0;
  for (let at = 0; at <= pieces.length; at++) {
    const piece = pieces[at];
    if (piece && !(piece.is === 'break' && piece.hard)) continue;
    if (at > from) yield [from, at, piece?.is === 'break' ? piece.mark : ''];
    from = at + 1;
  }
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
  const between = pieces.slice(hit.to).findIndex((piece) => piece.is === 'break');
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
  // Telegraphic: "5 Copper Lantern potted on", "FU22 misted".
  const direct = pieces[hit.from - 1];
  const subject =
    direct?.is === 'plant' ||
    (/^(?:those|these|them)$/.test(wordAt(pieces, hit.from - 1)) &&
      pieces[wordAt(pieces, hit.from - 2) === 'of' ? hit.from - 3 : hit.from - 2]?.is === 'count') ||
    (direct?.is === 'count' && !after.some(({ is }) => is === 'count')) ||
    direct?.is === 'place' ||
    direct?.is === 'when' ||
    (direct?.is === 'word' &&
      /^(?:cuttings|cutting|plants|all|others|other|ones|stragglers|straggler|duds|dud|weaklings|weakling|runts|rest)$/.test(
        direct.text,
      )) ||
    (direct?.is === 'break' &&
      !direct.hard &&
      pieces[hit.from - 2]?.is === 'plant' &&
      pieces[hit.to]?.is !== 'count');
  return subject && plantBefore && !plantAfter;
}

/** "The Nettle Duchess are out of the frame and planted": where the plant stands of which the words before `and` tell. */
function plantToldOf(pieces: readonly Piece[], start: number, and: number): number | undefined {
  if (wordAt(pieces, and) !== 'and') return undefined;
  for (let at = and - 1; at > start && pieces[at]?.is !== 'break'; at--) {
    const verb = pieces[at];
    if (verb?.is === 'word' && verb.verb?.lemma === 'be' && pieces[at - 1]?.is === 'plant') return at - 1;
  }
  return undefined;
}

function cutBetween(pieces: readonly Piece[], before: Hit, next: Hit): number {
  const low = before.to;
  const high = next.from;
  if (high <= low) return Math.max(low - 1, high);
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
        !(LEAD.has(piece.text) || /^(?:after|fine|well|happy|grand)$/.test(piece.text))
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
  const passive = hit.rule.shape === 'subject' || isPassive(pieces, low, hit);
  if (!passive) {
    if (pieces[at - 1]?.is === 'when' && at - 1 > low && isBoundary(pieces[at - 2])) at--;
    return boundaryBefore(pieces, low, at);
  }
  if (pronoun) return boundaryBefore(pieces, low, at);
  at = plantToldOf(pieces, low, at - 1) ?? at;
  let plant = false;
  let count = false;
  while (at > low) {
    const piece = pieces[at - 1];
    if (piece?.is === 'plant' && !plant && !count) plant = true;
    else if (piece?.is === 'plant' && !plant && count) plant = true;
    else if (piece?.is === 'count' && !count) count = true;
    // "Mist bench 1 misted and tunnel 5 vented".
    else if (
      piece?.is === 'place' &&
      !plant &&
      !count &&
      hit.rule.kind === 'tend' &&
      isBoundary(pieces[at - 2])
    )
      plant = true;
    else if (
      piece?.is === 'word' &&
      /^(?:of|the|my|those|these|them|others|other|ones|cuttings|cutting|plugs|liners|tubers|crowns|from|little|poor|remaining|more|they|which|that|stragglers|straggler|duds|dud|weaklings|weakling|runts|black|weedy|weak|good|bad|small|dead|rotten)$/.test(
        piece.text,
      )
    ) {
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

function isBoundary(piece: Piece | undefined): boolean {
  return piece?.is === 'break' || (piece?.is === 'word' && CONJUNCTION.has(piece.text));
}

function boundaryBefore(pieces: readonly Piece[], low: number, at: number): number {
  let start = at;
  while (start - 1 >= low && isBoundary(pieces[start - 1])) start--;
  return start;
}

/** A break or conjunction, unless it joins two words about one subject ("fine and rooted", "are after dying"). */
function isCut(pieces: readonly Piece[], at: number): boolean {
  if (!isBoundary(pieces[at])) return false;
  const word = wordAt(pieces, at);
  if (
    word === 'and' &&
    /^(?:fine|well|happy|alive|healthy|good|strong|grand|up)$/.test(wordAt(pieces, at - 1))
  )
    return false;
  return !(
    /^(?:after|before|so|yet)$/.test(word) &&
    /^(?:are|is|am|were|was|as|not|even|just|ever)$/.test(wordAt(pieces, at - 1))
  );
}
