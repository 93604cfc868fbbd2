/** The way in: a note to entries and asks, or to an instruction; never throws. */
import { type Clause, clausesOf } from './clauses.js';
import { joinContainers } from './containers.js';
import { settleCorrections } from './corrections.js';
import { type Draft, draftsOf } from './drafting.js';
import { loosePlace } from './loose-places.js';
import { recipientOf } from './recipients.js';
import { findRemind } from './grammar/remind.js';
import { findHits, type Rule, wordAt } from './grammar/rule.js';
import { rules } from './grammar/rules.js';
import { isUndo, WHY } from './grammar/undo.js';
import { instruct } from './instructing.js';
import { joinProposals } from './joining.js';
import { moodOf } from './mood.js';
import { joinNewNames } from './new-names.js';
import type { Ask, Note, ReadEntry, ReadNote } from './note.js';
import type { Piece, PlantWords } from './pieces.js';
import {
  isQuestion,
  proposeAmend,
  proposeAnswer,
  proposeQuestion,
  proposeReading,
  proposeRemark,
  proposeRemind,
  proposeTarget,
} from './proposing.js';
import { type Proposal, refine } from './refining.js';
import { lineOf, type Sentence, sentencesOf } from './sentences.js';
import { settlePastForms } from './past-forms.js';
import { slotsOf } from './slots.js';
import { type Utterance, utteranceOf } from './utterance.js';

/** Reads a note of up to 4,096 characters in time linear in its length. */
export function read(note: Note): ReadNote {
  const utterance = utteranceOf(note);
  const pieces = joinNewNames(joinContainers(utterance.pieces), utterance.tokens, utterance.text);
  const line = lineOf(pieces, utterance);
  if (line === '') return { entries: [], asks: [] };
  const answer = proposeAnswer(line, pieces, note);
  if (answer) return refined([answer], note);
  if (isUndo(line) || isUndoInParts(pieces, utterance))
    return { entries: [{ entry: { kind: 'undo' }, sources: {} }], asks: [] };
  const instruction = instruct(line, pieces, utterance, note);
  if (instruction) return { entries: [], asks: [], instruction };
  const proposals: Proposal[] = [];
  for (const sentence of sentencesOf(pieces, utterance))
    proposals.push(...proposeSentence(sentence, utterance, note, proposals));
  return refined(joinProposals(proposals), note);
}

/** "Whoops, wrong one, take it back": one part undoes, the others only say why. */
function isUndoInParts(pieces: readonly Piece[], utterance: Utterance): boolean {
  const parts: Piece[][] = [[]];
  for (const piece of pieces) {
    if (piece.is === 'break') parts.push([]);
    else parts.at(-1)?.push(piece);
  }
  const lines = parts.filter((part) => part.length > 0).map((part) => lineOf(part, utterance));
  if (lines.length < 2 || lines.length > 4) return false;
  return lines.some((line) => isUndo(line)) && lines.every((line) => isUndo(line) || WHY.test(line));
}

function refined(proposals: readonly Proposal[], note: Note): ReadNote {
  const entries: ReadEntry[] = [];
  const asks: Ask[] = [];
  for (const proposal of proposals) {
    const one = refine(proposal, note.context ?? {});
    if (!one) continue;
    asks.push(...one.asks.map((ask) => ({ entry: entries.length, ...ask })));
    entries.push(one.read);
  }
  return { entries, asks };
}

/** The plant named last, which a pronoun or silence in what follows means. */
function carriedFrom(proposals: readonly Proposal[]): PlantWords | undefined {
  for (let at = proposals.length - 1; at >= 0; at--) {
    const plant = proposals[at]?.draft.plant ?? proposals[at]?.carried;
    if (plant) return plant;
  }
  return undefined;
}

function proposeSentence(
  sentence: Sentence,
  utterance: Utterance,
  note: Note,
  earlier: readonly Proposal[],
): readonly Proposal[] {
  if (isUndo(sentence.line)) return [{ kind: 'undo', rule: 'undo that', slots: {}, draft: {} }];
  if (!asksToBeReminded(sentence.pieces) && (isQuestion(sentence) || sentence.pieces.length < 12)) {
    const split = questionStart(sentence, utterance);
    if (split > 0) {
      const before = part(sentence, 0, split, utterance, false);
      const after = part(sentence, split + 1, sentence.pieces.length, utterance, sentence.asked);
      return [
        ...proposeSentence(before, utterance, note, earlier),
        ...(proposeQuestion(after, utterance) ?? []),
      ];
    }
    const question = proposeQuestion(sentence, utterance);
    if (question) return question;
  }
  const corrected = part(
    { ...sentence, pieces: settlePastForms(settleCorrections(sentence.pieces)) },
    0,
    Number.POSITIVE_INFINITY,
    utterance,
    sentence.asked,
  );
  const acts = proposeActs(corrected.pieces, earlier, utterance);
  const amend = proposeAmend(sentence, utterance, acts.hits > 0);
  if (amend) return [amend];
  const wanted = proposeTarget(corrected, utterance, acts.proposals.length > 0);
  if (wanted && wantsToHave(corrected.pieces)) return wanted;
  const remind = proposeRemind(corrected, utterance, note);
  if (remind) {
    const before = proposeActs(remind.before, earlier, utterance);
    return [...before.proposals, ...remind.proposals];
  }
  if (wanted) return wanted;
  const readings = acts.proposals.length === 0 ? proposeReading(corrected, note) : undefined;
  if (readings) return readings;
  if (acts.hits > 0) return acts.proposals;
  return proposeRemark(corrected, utterance) ?? [];
}

/** "I want to have 15", "would like to end up with a dozen": plants to have, no act to be reminded of. */
function wantsToHave(pieces: readonly Piece[]): boolean {
  const found = findRemind(pieces);
  return (
    found === undefined ||
    (found.rule.beforeVerb === true &&
      /^(?:have|get|see|raise|grow|make|produce|reach|end|own|be|become)$/.test(wordAt(pieces, found.to)))
  );
}

/** "Give me a shout on Friday, would you?" asks for a reminder; "remind me when I took them" asks. */
function asksToBeReminded(pieces: readonly Piece[]): boolean {
  const found = findRemind(pieces);
  if (!found || found.rule.beforeVerb || found.from > 3) return false;
  return !/^(?:what|when|where|how|which|who|if|whether|why)$/.test(wordAt(pieces, found.to));
}

/** Where a question begins behind a statement ("took 5, is that enough?"): the break before it, else 0. */
function questionStart(sentence: Sentence, utterance: Utterance): number {
  for (let at = sentence.pieces.length - 1; at > 0; at--) {
    const piece = sentence.pieces[at];
    if (piece?.is !== 'break') continue;
    const rest = part(sentence, at + 1, sentence.pieces.length, utterance, false);
    if (isQuestion(rest) && proposeActs(sentence.pieces.slice(0, at), [], utterance).proposals.length > 0)
      return at;
  }
  return 0;
}

function part(sentence: Sentence, from: number, to: number, utterance: Utterance, asked: boolean): Sentence {
  const pieces = sentence.pieces.slice(from, to);
  return { from: 0, to: pieces.length, pieces, line: lineOf(pieces, utterance), asked };
}

interface Acts {
  readonly proposals: readonly Proposal[];
  /** How many acts were named, done or not. */
  readonly hits: number;
}

function proposeActs(row: readonly Piece[], earlier: readonly Proposal[], utterance: Utterance): Acts {
  if (isSupposed(row)) return { proposals: [], hits: findHits(rules, row).length };
  const proposals: Proposal[] = [];
  let hits = 0;
  for (const pieces of telegraphs(row)) {
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
  for (const part of parts) {
    const hits = findHits(rules, part);
    const [only] = hits;
    const stands =
      hits.length === 1 &&
      only?.rule.faint === true &&
      /^(?:move|dispatch|potOn)$/.test(only.rule.kind) &&
      part.some(({ is }) => is === 'plant');
    const last = rows.at(-1);
    if (!last || stands || (alone && hits.length > 0)) rows.push([...part]);
    else last.push(...part);
    alone = stands;
  }
  return rows;
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
    for (const found of kind === 'tend' ? eachPlace(drafts, pieces, clause) : drafts) {
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
      proposals.push({
        kind,
        draft,
        slots: slotsOf(rule, draft),
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
  for (let at = from; at < clause.to; at++) {
    const piece = pieces[at];
    if (
      piece?.is === 'word' &&
      piece.text === 'for' &&
      pieces.slice(from, at).some(({ is }) => is === 'plant')
    )
      return { ...clause, to: at };
  }
  return clause;
}

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
