/** The acts that a row of pieces tells of: its clauses, their moods, and what each names or carries over. */
import { type Clause, clausesOf } from './clauses.js';
import { type Draft, draftsOf } from './drafting.js';
import { findHits, type Rule, wordAt } from './grammar/rule.js';
import { rules } from './grammar/rules.js';
import { loosePlace } from './loose-places.js';
import { moodOf } from './mood.js';
import type { Note } from './note.js';
import { actsOnPlants } from './objects.js';
import type { Piece, PlantWords } from './pieces.js';
import { proposeReading } from './reading-proposal.js';
import { recipientOf } from './recipients.js';
import type { Proposal } from './refining.js';
import { sentenceOf } from './sentences.js';
import { slotsOf } from './slots.js';
import type { Utterance } from './utterance.js';

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
  return { proposals: backwards(proposals), hits };
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

/** "Two rooted and one rotted on the Granite Poppy": a plant named last is meant by what precedes it. */
function backwards(proposals: readonly Proposal[]): readonly Proposal[] {
  const plant = proposals.find(({ draft }) => draft.plant !== undefined)?.draft.plant;
  if (plant === undefined) return proposals;
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
  for (const clause of clausesOf(pieces, rules)) {
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
    const drafts = draftsOf(pieces, told).map((found) => withWhereTo(found, rule, pieces, clause, utterance));
    const guarded = drafts.filter((found) =>
      PLANT_ACTS.has(kind)
        ? actsOnPlants(found, pieces, clause)
        : kind !== 'tend' || actsOnPlants({ ...found, pronoun: true }, pieces, clause),
    );
    for (const found of kind === 'tend' ? eachPlace(guarded, pieces, clause) : guarded) {
      const counted =
        kind === 'check' &&
        lookedAt !== undefined &&
        found.quantity?.value !== undefined &&
        found.quantity.outOf === undefined;
      const draft: Draft =
        counted && lookedAt !== undefined
          ? { ...found, quantity: { ...found.quantity, outOf: lookedAt } }
          : found;
      const placed = kind === 'tend' && draft.place !== undefined;
      const carried = draft.plant === undefined && !placed ? carriedHere() : undefined;
      // "Threw eight Mossy Dell into the propagator, tips, no powder": cuttings, however they were told.
      const inserted = kind === 'move' && (draft.cutting !== undefined || draft.hormone !== undefined);
      proposals.push({
        kind: inserted ? 'strike' : kind,
        draft,
        slots: slotsOf(inserted ? { ...rule, kind: 'strike' } : rule, draft),
        rule: rule.name,
        ...(carried ? { carried } : {}),
        ...(purpose ? { purpose } : {}),
      });
      if (draft.plant) plantNamed = draft.plant;
    }
  }
  return { proposals, hits };
}

/** "Watered both the greenhouse and the cold frame": one entry a place. */
function eachPlace(drafts: readonly Draft[], pieces: readonly Piece[], clause: Clause): readonly Draft[] {
  const [draft] = drafts;
  if (drafts.length !== 1 || !draft || draft.plant !== undefined) return drafts;
  const places = pieces
    .slice(clause.from, clause.to)
    .flatMap((piece) => (piece.is === 'place' ? [piece.place] : []));
  return places.length < 2 ? drafts : [...new Set(places)].map((place) => ({ ...draft, place }));
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

/** Acts that are told of other things in the same words. */
const PLANT_ACTS: ReadonlySet<string> = new Set(
  'loss dispatch potOn plantOut pinch stock receive strike move hardenOff'.split(' '),
);

const STANDS: ReadonlySet<string> = new Set(['move', 'plantOut', 'hardenOff', 'strike']);

/** Adds the recipient of what left, and a place that only a preposition tells. */
function withWhereTo(
  draft: Draft,
  rule: Rule,
  pieces: readonly Piece[],
  clause: Clause,
  { tokens, text }: Utterance,
): Draft {
  const { kind } = rule;
  if (kind === 'dispatch') {
    const to = draft.to ?? recipientOf(pieces, clause, tokens, text);
    return to === undefined ? draft : { ...draft, to };
  }
  if (rule.name.startsWith('emptied')) {
    const [from, to] = pieces
      .slice(clause.from, clause.to)
      .flatMap((piece) => (piece.is === 'place' ? [piece.place] : []));
    return {
      ...draft,
      ...(from === undefined ? {} : { fromPlace: from }),
      ...(to === undefined ? {} : { place: to }),
    };
  }
  if (kind === 'move') {
    const places = pieces
      .slice(clause.from, clause.to)
      .flatMap((piece) => (piece.is === 'place' && piece.place !== draft.stands ? [piece] : []));
    const moved =
      draft.quantity?.whole || rule.name.startsWith('moved')
        ? movedOn(pieces, clause, tokens, text, draft.stands)
        : undefined;
    if (moved) return { ...draft, ...moved };
    const inside = pieces
      .slice(clause.from, clause.to)
      .some((piece) => piece.is === 'word' && /^(?:indoors|inside)$/.test(piece.text));
    const [only] = places;
    if (
      places.length === 1 &&
      only &&
      inside &&
      draft.plant === undefined &&
      /^(?:in|from|on|off)$/.test(only.prep ?? '')
    )
      return { ...draft, place: 'indoors', fromPlace: only.place };
    const towards = places.find(({ prep }, n) => n > 0 && /^(?:to|into|onto|in|on)$/.test(prep ?? ''));
    const [first] = places;
    if (
      places.length > 1 &&
      towards &&
      first &&
      (first.prep === undefined || first.prep === 'from' || first.prep === 'off')
    )
      return { ...draft, place: towards.place, fromPlace: first.place };
  }
  if (!STANDS.has(kind) || draft.place !== undefined) return draft;
  const place = loosePlace(pieces, clause, tokens, text);
  return place === undefined || place === draft.fromPlace ? draft : { ...draft, place };
}

/** "Everything in the cold frame to the shed": where they stood before "to" is where they came from. */
function movedOn(
  pieces: readonly Piece[],
  clause: Clause,
  tokens: Utterance['tokens'],
  text: string,
  stands: string | undefined,
): Pick<Draft, 'place' | 'fromPlace'> | undefined {
  const from = clause.subjectFirst ? clause.from : (clause.hit?.to ?? clause.from);
  const at = pieces.findIndex(
    (piece, n) =>
      n >= from &&
      n < clause.to &&
      piece.is === 'place' &&
      piece.place !== stands &&
      /^(?:in|on|at|under|inside|by)$/.test(piece.prep ?? ''),
  );
  const stood = pieces[at];
  if (stood?.is !== 'place') return undefined;
  const to = pieces.findIndex(
    (_, n) => n > at && n < clause.to && /^(?:to|into|onto)$/.test(wordAt(pieces, n)),
  );
  const outside = /^(?:outside|outdoors|indoors|inside|upstairs|downstairs)$/.exec(
    wordAt(pieces, at + 1),
  )?.[0];
  if (to < 0 && outside !== undefined && wordAt(pieces, at + 2) !== 'the')
    return { fromPlace: stood.place, place: outside };
  if (to < 0) return undefined;
  const reached = pieces.slice(to, to + 4).find((piece) => piece.is === 'place');
  const place =
    reached?.is === 'place'
      ? reached.place
      : loosePlace(pieces, { ...clause, from: to, hit: undefined }, tokens, text);
  return place === undefined ? undefined : { fromPlace: stood.place, place };
}

/** The plant named last, which a pronoun or silence in what follows means. */
function carriedFrom(proposals: readonly Proposal[]): PlantWords | undefined {
  for (let at = proposals.length - 1; at >= 0; at--) {
    const plant = proposals[at]?.draft.plant ?? proposals[at]?.carried;
    if (plant) return plant;
  }
  return undefined;
}
