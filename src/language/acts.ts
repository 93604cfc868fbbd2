/** The acts that a row of pieces tells of: its clauses, their moods, and what each names or carries over. */
import { type Clause, clausesOf } from './clauses.js';
import { type Draft, draftsOf } from './drafting.js';
import type { Cause } from '../ledger/entry.js';
import { findHits, wordAt } from './grammar/rule.js';
import { rules } from './grammar/rules.js';
import { causes, phraseAt } from './lexicon.js';
import { moodOf } from './mood.js';
import { elidedLooks } from './elided.js';
import type { Note } from './note.js';
import { partsOf } from './act-parts.js';
import { actsOnPlants, tendsSomethingElse } from './objects.js';
import type { Piece, PlantWords } from './pieces.js';
import { proposeReading } from './reading-proposal.js';
import type { Quantity } from './quantities.js';
import type { Proposal } from './refining.js';
import { proposeRemark } from './remark-proposal.js';
import { sentenceOf } from './sentences.js';
import { slotsOf } from './slots.js';
import type { Utterance } from './utterance.js';
import { eachPlace, placeThere, STANDS, withWhereTo } from './where-to.js';

export interface Acts {
  readonly proposals: readonly Proposal[];
  /** How many acts were named, done or not. */
  readonly hits: number;
}

export function proposeActs(
  row: readonly Piece[],
  earlier: readonly Proposal[],
  utterance: Utterance,
  note: Note,
): Acts {
  if (isSupposed(row)) return { proposals: [], hits: findHits(rules, row).length };
  const proposals: Proposal[] = [];
  let hits = 0;
  for (const pieces of telegraphs(row)) {
    const temperatures = isTemperature(pieces)
      ? proposeReading(sentenceOf(pieces, utterance), note)
      : undefined;
    if (temperatures) {
      proposals.push(...temperatures);
      hits++;
      continue;
    }
    const acts = actsOf(pieces, [...earlier, ...proposals], utterance);
    proposals.push(...acts.proposals);
    hits += acts.hits;
  }
  return { proposals: visited(backwards(dated(proposals, row), row), row), hits };
}

/** "If they had rooted I'd have potted them": nothing in it was done. */
function isSupposed(pieces: readonly Piece[]): boolean {
  const first = pieces[0]?.is === 'break' ? 1 : 0;
  if (/^(?:if|unless|suppose|supposing|imagine|assuming)$/.test(wordAt(pieces, first))) return true;
  return (
    /^(?:when|once|after|as)$/.test(wordAt(pieces, first)) &&
    pieces.some(
      (piece) =>
        piece.is === 'word' && /^(?:will|i'll|we'll|must|going|they'll|can|should|need)$/.test(piece.text),
    )
  );
}

/**
 * A row cut at its commas where a part stands for itself without a verb ("bitter tom to c/frame"); all other parts stay
 * together.
 */
function telegraphs(row: readonly Piece[]): readonly (readonly Piece[])[] {
  const parts: Piece[][] = [[]];
  for (const piece of row) {
    if (piece.is === 'break' && piece.mark === ',') parts.push([]);
    parts.at(-1)?.push(piece);
  }
  if (parts.length < 2) return [row];
  const rows: Piece[][] = [];
  let alone = false;
  for (const [n, part] of parts.entries()) {
    const hits = findHits(rules, part);
    const [only] = hits;
    const stands =
      (hits.length === 1 &&
        only?.rule.faint === true &&
        /^(?:move|dispatch|potOn)$/.test(only.rule.kind) &&
        part.some(({ is }) => is === 'plant')) ||
      (hits.length === 1 &&
        only?.rule.faint === true &&
        only.rule.kind === 'strike' &&
        nextIsAnother(parts, n)) ||
      isTemperature(part);
    const last = rows.at(-1);
    if (!last || stands || (alone && hits.length > 0)) rows.push([...part]);
    else last.push(...part);
    alone = stands;
  }
  return rows;
}

/** "20 Salt Harrier cuttings in, binned two Tallow Bell": the next part is an act on a plant of its own. */
function nextIsAnother(parts: readonly (readonly Piece[])[], n: number): boolean {
  const part = parts[n] ?? [];
  const next = parts[n + 1] ?? [];
  return (
    part.some(({ is }) => is === 'plant') &&
    part.some(({ is }) => is === 'count' || is === 'pots') &&
    next.some(({ is }) => is === 'plant') &&
    findHits(rules, next).some(({ rule }) => rule.faint !== true)
  );
}

/** "Glasshouse 4 at 26" between acts. */
function isTemperature(pieces: readonly Piece[]): boolean {
  if (!pieces.some(({ is }) => is === 'place') || pieces.some(({ is }) => is === 'plant')) return false;
  const told = pieces.some(
    (piece, at) =>
      piece.is === 'celsius' ||
      (piece.is === 'count' && /^(?:at|to|hit|reading)$/.test(wordAt(pieces, at - 1))),
  );
  return told && findHits(rules, pieces).length === 0;
}

/** The first plant of a row stands behind "on", "of" and the like, with no act behind it. */
function isNamedLast(row: readonly Piece[]): boolean {
  let at = row.findIndex(({ is }) => is === 'plant') - 1;
  while (/^(?:the|my|those|these|our)$/.test(wordAt(row, at))) at--;
  return (
    /^(?:on|of|from|for|with|in|off|to)$/.test(wordAt(row, at)) ||
    row[at]?.is === 'count' ||
    row[at]?.is === 'break'
  );
}

/** "Sunday: pinched these, watered those": a day that opens the sentence belongs to all that it tells. */
function dated(proposals: readonly Proposal[], row: readonly Piece[]): readonly Proposal[] {
  const first = row[/^(?:on|so|and)$/.test(wordAt(row, 0)) ? 1 : 0];
  if (first?.is !== 'when' || first.struck === true || first.when.past === undefined) return proposals;
  const { when } = first;
  return proposals.map((proposal) =>
    proposal.draft.when === undefined ? { ...proposal, draft: { ...proposal.draft, when } } : proposal,
  );
}

const CAME = new Set(['stock', 'receive', 'dispatch']);

/** "Val turned up at the weekend and gave me two": the day of the visit is the gift's. */
function visited(proposals: readonly Proposal[], row: readonly Piece[]): readonly Proposal[] {
  const [only, another] = proposals;
  if (!only || another || !CAME.has(only.kind) || only.draft.when) return proposals;
  const days = row.flatMap((piece, at) =>
    piece.is === 'when' && (row[at + 1]?.is === 'break' || wordAt(row, at + 1) === 'and') ? [piece.when] : [],
  );
  const [when, more] = days;
  return when && !more && when.past !== undefined ? [{ ...only, draft: { ...only.draft, when } }] : proposals;
}

/** "Two rooted and one rotted on the Granite Poppy": a plant named last is meant by what precedes it. */
function backwards(proposals: readonly Proposal[], row: readonly Piece[]): readonly Proposal[] {
  const first = proposals.findIndex(({ draft }) => draft.plant !== undefined);
  const plant = proposals[first]?.draft.plant;
  if (plant === undefined || !isNamedLast(row)) return proposals;
  return proposals.map((proposal) =>
    proposal.draft.plant === undefined &&
    proposal.carried === undefined &&
    !(proposal.kind === 'tend' && proposal.draft.place !== undefined)
      ? { ...proposal, carried: plant }
      : proposal,
  );
}

function actsOf(pieces: readonly Piece[], earlier: readonly Proposal[], utterance: Utterance): Acts {
  const proposals: Proposal[] = [];
  let hits = 0;
  let plantNamed: PlantWords | undefined;
  let lookedAt: number | undefined;
  // How many were said not to have rooted: "they" that go out behind it.
  let unrooted: Quantity | undefined;
  const clauses = clausesOf(pieces, rules);
  for (const [n, clause] of clauses.entries()) {
    if (!clause.hit) continue;
    hits++;
    const mood = moodOf(pieces, clause);
    const { rule } = clause.hit;
    const { kind } = rule;
    if (kind === 'aside') {
      const [aside] = draftsOf(pieces, clause);
      plantNamed = aside?.plant ?? plantNamed;
      lookedAt = rule.name.startsWith('pulled') ? aside?.quantity?.value : undefined;
      continue;
    }
    const carriedHere = (): PlantWords | undefined => plantNamed ?? carriedFrom([...earlier, ...proposals]);
    if (mood === 'denied' && kind === 'check' && rule.head !== 'check~|inspect~past') {
      const [draft] = draftsOf(pieces, clause);
      // "Six of them haven't rooted": of the others nothing is said.
      if (draft?.quantity?.value !== undefined && draft.quantity.value > 0) {
        unrooted = draft.quantity;
        plantNamed = draft.plant ?? plantNamed;
        continue;
      }
      const carried = draft?.plant === undefined ? carriedHere() : undefined;
      proposals.push({
        kind,
        draft: {
          ...(draft?.plant ? { plant: draft.plant } : {}),
          ...(draft?.when ? { when: draft.when } : {}),
        },
        slots: { rooted: 'none' },
        rule: `not ${rule.name}`,
        ...(carried ? { carried } : {}),
      });
      continue;
    }
    if (mood !== 'done') continue;
    const purpose =
      kind === 'hardenOff' &&
      (wordAt(pieces, clause.hit.from - 1) === 'to' || wordAt(pieces, clause.hit.from) === 'to');
    const told = rule.how === 'swapped' ? beforeReturn(pieces, clause) : clause;
    const parts = partsOf(pieces, told);
    const drafts = parts.flatMap((part) =>
      draftsOf(pieces, part).map((found) =>
        withWhereTo(found, rule, pieces, rule.kind === 'move' || parts.length > 1 ? part : clause, utterance),
      ),
    );
    const guarded = drafts.filter((found) =>
      PLANT_ACTS.has(kind)
        ? parts.length > 1 || actsOnPlants(found, pieces, clause)
        : kind !== 'tend' ||
          (actsOnPlants({ ...found, pronoun: true }, pieces, clause) &&
            !tendsSomethingElse(found, pieces, clause)),
    );
    for (const drafted of kind === 'tend' ? eachPlace(guarded, pieces, clause) : guarded) {
      // "Checked everything": looked at, which says nothing of roots.
      const looked =
        kind === 'check' &&
        /^(?:checked|looked|had a look|tugged|gave)/.test(rule.name) &&
        (drafted.quantity?.whole !== undefined || drafted.quantity?.weak === true);
      // "Lost all those not rooted": how many that is, nobody has said.
      const allUnrooted =
        drafted.quantity?.whole === 'all' &&
        pieces
          .slice(clause.from, clause.to)
          .some(
            (_, n) =>
              wordAt(pieces, clause.from + n) === 'not' && wordAt(pieces, clause.from + n + 1) === 'rooted',
          );
      // "Her big old Soot Angel, pot and all": no number of plants.
      const whole = kind === 'stock' && drafted.quantity?.whole === 'all';
      const found: Draft =
        looked || whole
          ? withoutQuantity(drafted)
          : allUnrooted
            ? { ...drafted, quantity: { vague: true } }
            : kind === 'loss' && drafted.quantity === undefined && unrooted
              ? { ...drafted, quantity: unrooted }
              : rule.count
                ? { ...drafted, quantity: { whole: rule.count } }
                : drafted;
      const counted =
        kind === 'check' &&
        lookedAt !== undefined &&
        found.quantity?.value !== undefined &&
        found.quantity.outOf === undefined;
      const there =
        STANDS.has(kind) && found.place === undefined
          ? placeThere(pieces, clause, [...earlier, ...proposals])
          : undefined;
      const ofIt =
        kind === 'tend' && found.place === undefined
          ? placeOfIt(pieces, clause, [...earlier, ...proposals])
          : undefined;
      const cause =
        kind === 'loss' && (found.cause === undefined || isMush(pieces, clause))
          ? causeBefore(pieces, clause)
          : undefined;
      const draft: Draft =
        cause !== undefined
          ? { ...found, cause }
          : ofIt !== undefined
            ? { ...found, place: ofIt }
            : there !== undefined
              ? { ...found, place: there }
              : counted && lookedAt !== undefined
                ? { ...found, quantity: { ...found.quantity, outOf: lookedAt } }
                : found;
      const placed = kind === 'tend' && draft.place !== undefined;
      const carried =
        draft.plant === undefined && !placed
          ? ((draft.pronoun ? spokenOf(pieces, clause) : undefined) ??
            carriedHere() ??
            (draft.pronoun ? plantBefore(pieces, clause) : undefined))
          : undefined;
      // "Threw eight Mossy Dell into the propagator, tips, no powder": cuttings, however they were told.
      const inserted = kind === 'move' && (draft.cutting !== undefined || draft.hormone !== undefined);
      proposals.push({
        kind: inserted ? 'strike' : kind,
        draft,
        slots: slotsOf(inserted ? { ...rule, kind: 'strike' } : rule, draft),
        rule: rule.name,
        ...(carried && !draft.leftOut ? { carried } : {}),
        ...(purpose ? { purpose } : {}),
        ...(draft.leftOut ? { ask: 'batch' } : {}),
      });
      if (draft.plant) plantNamed = draft.plant;
    }
    const state = stateBehind(pieces, clause.to, clauses[n + 1]?.from ?? pieces.length);
    if (state && mood === 'done' && guarded.length > 0 && clauses[n + 1] === undefined)
      proposals.push(...(proposeRemark(sentenceOf(state, utterance), utterance) ?? []));
    if (proposals.some((told) => told.kind === 'check'))
      for (const draft of elidedLooks(pieces, clause.to, clauses[n + 1]?.from ?? pieces.length)) {
        proposals.push({ kind: 'check', draft, slots: {}, rule: '<plant> <count>, behind a look' });
        plantNamed = draft.plant;
      }
  }
  return { proposals, hits };
}

/** Of a swap, what came back ("for one of her ferns") is no part of what left. */
function beforeReturn(pieces: readonly Piece[], clause: Clause): Clause {
  const from = clause.hit?.to ?? clause.from;
  const named = clause.hit?.rule.shape === 'subject' ? clause.from : from;
  for (let at = from; at < clause.to; at++) {
    const piece = pieces[at];
    if (
      piece?.is === 'word' &&
      piece.text === 'for' &&
      pieces.slice(named, at).some(({ is }) => is === 'plant')
    )
      return { ...clause, to: at };
  }
  return clause;
}

/** "Propagator at 24 so I opened its vents": the place whose temperature was just told. */
function placeOfIt(
  pieces: readonly Piece[],
  clause: Clause,
  earlier: readonly Proposal[],
): string | undefined {
  const last = earlier.at(-1);
  const it = pieces
    .slice(clause.from, clause.to)
    .some((piece) => piece.is === 'word' && /^(?:it|its|there)$/.test(piece.text));
  const told = last?.kind === 'reading' || (last?.kind === 'tend' && last.draft.plant === undefined);
  return it && told ? (last.slots['place'] as string | undefined) : undefined;
}

/** What decay looks like, whatever brought it about. */
function isMush(pieces: readonly Piece[], clause: Clause): boolean {
  return pieces
    .slice(clause.from, clause.to)
    .some((piece) => piece.is === 'word' && /^(?:mush|mushy|black|slime)$/.test(piece.text));
}

/** "Frost got into the igloo, five are mush": what did it, told just before; it outranks what the words of decay would tell. */
function causeBefore(pieces: readonly Piece[], clause: Clause): Cause | undefined {
  const words = pieces.slice(0, clause.from).map((_, at) => wordAt(pieces, at));
  if (pieces[clause.from - 1]?.is !== 'break' && pieces[clause.from]?.is !== 'break') return undefined;
  for (let at = words.length - 1; at >= 0; at--) {
    const cause = phraseAt(causes, words, at)?.value;
    if (cause === 'frost' || cause === 'pest' || cause === 'drought') return cause;
    if (pieces[at]?.is === 'plant') return undefined;
  }
  return undefined;
}

/** Acts that are told of other things in the same words. */
const PLANT_ACTS: ReadonlySet<string> = new Set(
  'loss dispatch potOn plantOut pinch stock receive strike move hardenOff'.split(' '),
);

/** "The Soot Angel want watering, so I gave them a soak": the plant that the sentence spoke of. */
function plantBefore(pieces: readonly Piece[], clause: Clause): PlantWords | undefined {
  const piece = pieces.slice(0, clause.hit?.from ?? clause.from).findLast(({ is }) => is === 'plant');
  return piece?.is === 'plant' ? piece.plant : undefined;
}

/** The same where that plant opened what stands since the last break, whatever was named before ("…, Second Cousin need water so I watered them"). */
function spokenOf(pieces: readonly Piece[], clause: Clause): PlantWords | undefined {
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

function withoutQuantity(draft: Draft): Draft {
  const bare: { -readonly [Slot in keyof Draft]: Draft[Slot] } = { ...draft };
  delete bare.quantity;
  return bare;
}

/** "… and the fuchsias are starting to flower": what is told of another plant behind the acts, without the words that join it. */
function stateBehind(pieces: readonly Piece[], from: number, to: number): readonly Piece[] | undefined {
  let start = from;
  while (
    start < to &&
    (pieces[start]?.is === 'break' || /^(?:and|but|by|way|oh|also|so)$/.test(wordAt(pieces, start)))
  )
    start++;
  if (/^(?:the|my)$/.test(wordAt(pieces, start)) && wordAt(pieces, start + 1) === 'way') start += 2;
  const plant = /^(?:the|my|our)$/.test(wordAt(pieces, start)) ? start + 1 : start;
  const isState =
    start > from &&
    pieces[plant]?.is === 'plant' &&
    /^(?:are|is|look|looks|looking|seem|seems|smell|have|has|starting|showing|getting|going)$/.test(
      wordAt(pieces, plant + 1),
    );
  return isState ? pieces.slice(start, to) : undefined;
}

/** The plant named last, which a pronoun or silence in what follows means. */
function carriedFrom(proposals: readonly Proposal[]): PlantWords | undefined {
  for (let at = proposals.length - 1; at >= 0; at--) {
    const plant = proposals[at]?.draft.plant ?? proposals[at]?.carried;
    if (plant) return plant;
  }
  return undefined;
}
