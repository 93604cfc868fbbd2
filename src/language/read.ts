/** The way in: a note to entries and asks, or to an instruction; never throws. */
import type { Plant } from '../ledger/entry.js';
import { proposeActs } from './acts.js';
import { joinContainers } from './containers.js';
import { settleCorrections } from './corrections.js';
import { fullerReply } from './fuller-replies.js';
import { findRemind } from './grammar/remind.js';
import { findHits, wordAt } from './grammar/rule.js';
import { rules } from './grammar/rules.js';
import { targetRules } from './grammar/target.js';
import { isUndo, undosIn, WHY } from './grammar/undo.js';
import { instruct } from './instructing.js';
import { causes, phraseAt } from './lexicon.js';
import { joinProposals } from './joining.js';
import { joinNewNames } from './new-names.js';
import type { Ask, Note, ReadEntry, ReadNote } from './note.js';
import type { Piece, PlantWords } from './pieces.js';
import { isQuestion, proposeQuestion } from './question-proposal.js';
import { proposeCrop } from './crop-proposal.js';
import { proposeAmend, proposeRestatement } from './amend-proposal.js';
import { proposeReply } from './answer-proposal.js';
import { proposeReading } from './reading-proposal.js';
import { proposeRemark } from './remark-proposal.js';
import { proposeRemind } from './remind-proposal.js';
import { proposeTarget } from './target-proposal.js';
import type { Proposal } from './proposal.js';
import { refine } from './refining.js';
import { lineOf, plantsIn, type Sentence, sentenceOf, sentencesOf } from './sentences.js';
import { mendedBy } from './mending.js';
import { settlePastForms } from './past-forms.js';
import { type Utterance, utteranceOf } from './utterance.js';

/** Every stage of a note's reading, for whoever wants to see how it came about. */
export interface Reading {
  readonly utterance: Utterance;
  /** With containers and new names joined. */
  readonly pieces: readonly Piece[];
  readonly sentences: readonly Sentence[];
  /** What each rule made of it, before the ledger was asked. */
  readonly proposals: readonly Proposal[];
  readonly outcome: ReadNote;
}

/** Reads a note of up to 4,096 characters in time linear in its length. */
export function read(note: Note): ReadNote {
  return readingOf(note).outcome;
}

/** The same, with the stages that led there. */
export function readingOf(note: Note): Reading {
  const utterance = utteranceOf(note);
  const pieces = joinNewNames(joinContainers(utterance.pieces), utterance.tokens, utterance.text);
  const line = lineOf(pieces, utterance);
  const seen = { utterance, pieces, sentences: [], proposals: [] };
  if (line === '') return { ...seen, outcome: { entries: [], asks: [] } };
  const answer = proposeReply(line, pieces, utterance, note);
  if (answer) return { ...seen, proposals: [answer], outcome: refined([answer], note) };
  const undone = isUndoInParts(pieces, utterance) ? 1 : undosIn(line);
  if (undone > 0) return { ...seen, outcome: { entries: Array(undone).fill(UNDO), asks: [] } };
  const instruction = instruct(line, pieces, utterance, note);
  if (instruction) return { ...seen, outcome: { entries: [], asks: [], instruction } };
  const reply = fullerReply(pieces, utterance, note);
  const sentences = sentencesOf(reply?.rest ?? pieces, utterance);
  const told: Proposal[] = [...(reply?.proposals ?? [])];
  // A sentence in which nothing was done, but a plant spoken of.
  let spokenOf: Sentence | undefined;
  for (const sentence of sentences) {
    const mended = mendedBy(told.at(-1), sentence, note);
    if (mended) told[told.length - 1] = mended;
    else {
      const [mentioned, another] = plantsIn(spokenOf?.pieces ?? []);
      const aside: Proposal[] = mentioned && !another ? [{ ...ASIDE, carried: mentioned.plant }] : [];
      const proposed = proposeSentence(sentence, utterance, note, told.length === 0 ? aside : told);
      told.push(...blamed(proposed, sentence, sentences[sentences.indexOf(sentence) - 1]));
      spokenOf = proposed.length === 0 ? sentence : undefined;
    }
  }
  const proposals = joinProposals(told);
  return { ...seen, sentences, proposals, outcome: refined(proposals, note) };
}

const UNDO: ReadEntry = { entry: { kind: 'undo' }, sources: {} };
const ASIDE = { kind: 'remark', rule: 'spoken of', slots: {}, draft: {} } as const;

/** "Bloody slugs. Lost four to them": what the sentence before names did it. */
function blamed(
  proposals: readonly Proposal[],
  { line }: Sentence,
  before: Sentence | undefined,
): readonly Proposal[] {
  if (!before || !/\b(?:to|by) (?:them|it|em)\b/.test(line)) return proposals;
  const words = before.line.split(' ');
  const cause = words.map((_, at) => phraseAt(causes, words, at)).find((found) => found)?.value;
  return proposals.map((each) =>
    each.kind === 'loss' && cause !== undefined && each.slots['cause'] === undefined
      ? { ...each, slots: { ...each.slots, cause } }
      : each,
  );
}

/** "Whoops, wrong one, take it back": one part undoes, the others only say why. */
function isUndoInParts(pieces: readonly Piece[], utterance: Utterance): boolean {
  const parts: Piece[][] = [[]];
  for (const piece of pieces) {
    if (piece.is === 'break') parts.push([]);
    else parts.at(-1)?.push(piece);
  }
  const said = parts.filter((part) => part.length > 0);
  if (said.length < 2 || said.length > 4) return false;
  const lines = said.map((part) => lineOf(part, utterance));
  return (
    lines.some((line) => isUndo(line)) &&
    lines.every((line, n) => isUndo(line) || WHY.test(line) || (n > 0 && onlySaysWhy(said[n] ?? [], line)))
  );
}

/** "…, they were only limp", "…, I'd picked up the wrong tray": words alone, that tell of nothing and put nothing else right. */
function onlySaysWhy(part: readonly Piece[], line: string): boolean {
  return (
    part.every(({ is }) => is === 'word') &&
    /^(?:i|i'd|i've|i'm|we|we'd|it|it's|they|they're|that|that's|there)\b/.test(line) &&
    !/\b(?:other|others|instead|meant|mean|should|rather|what|which|when|where|how|why|actually|really)\b/.test(
      line,
    ) &&
    findHits(rules, part).length === 0
  );
}

function refined(proposals: readonly Proposal[], note: Note): ReadNote {
  const entries: ReadEntry[] = [];
  const asks: Ask[] = [];
  for (const proposal of proposals) {
    const before = entries.at(-1)?.entry as Partial<Plant> | undefined;
    const one = refine(proposal, note.context ?? {}, before?.batch);
    if (!one) continue;
    asks.push(...one.asks.map((ask) => ({ entry: entries.length, ...ask })));
    entries.push(one.read);
  }
  return { entries, asks };
}

function proposeSentence(
  sentence: Sentence,
  utterance: Utterance,
  note: Note,
  earlier: readonly Proposal[],
): readonly Proposal[] {
  if (isUndo(sentence.line)) return [{ kind: 'undo', rule: 'undo that', slots: {}, draft: {} }];
  if (!asksToBeReminded(sentence.pieces) && (isQuestion(sentence) || sentence.pieces.length < 12)) {
    const split = questionStart(sentence, utterance, note);
    if (split > 0) {
      const before = part(sentence, 0, split, utterance, false);
      const after = part(sentence, split + 1, sentence.pieces.length, utterance, sentence.asked);
      return [
        ...proposeSentence(before, utterance, note, earlier),
        ...(proposeQuestion(after, utterance) ?? []),
      ];
    }
    const question = twoQuestions(sentence, utterance) ?? proposeQuestion(sentence, utterance);
    if (question) return question;
  }
  const corrected = part(
    { ...sentence, pieces: settlePastForms(settleCorrections(sentence.pieces)) },
    0,
    Number.POSITIVE_INFINITY,
    utterance,
    sentence.asked,
  );
  const wish = targetThenActs(corrected, utterance, note);
  if (wish) return wish;
  const { rest, before: readBefore, behind: readBehind } = withoutReadings(corrected, utterance, note);
  const acts = proposeActs(rest, [...earlier, ...readBefore], utterance, note);
  const amend =
    proposeCrop(sentence, note) ??
    proposeRestatement(sentence, utterance, note) ??
    proposeAmend(sentence, utterance, acts.hits > 0, note);
  if (amend) return [amend];
  const wanted = proposeTarget(corrected, acts.proposals.length > 0, lastPlant(earlier));
  if (wanted && wantsToHave(corrected.pieces)) return wanted;
  const remind = proposeRemind(corrected, utterance, note);
  if (remind) {
    const before = proposeActs(remind.before, earlier, utterance, note);
    return [...before.proposals, ...remind.proposals];
  }
  if (wanted) return wanted;
  const apart = [...readBefore, ...readBehind];
  const whole = acts.proposals.length === 0 ? proposeReading(corrected, note) : undefined;
  const readings = whole && apart.length >= whole.length ? apart : whole;
  if (readings) return readings;
  if (acts.hits > 0) return [...readBefore, ...acts.proposals, ...placedAs(acts.proposals, readBehind)];
  return proposeRemark(corrected, utterance) ?? [];
}

/** "38 degrees in the igloo so I vented it": parts of a sentence that tell a temperature and no act are taken apart. */
function withoutReadings(
  sentence: Sentence,
  utterance: Utterance,
  note: Note,
): {
  readonly rest: readonly Piece[];
  readonly before: readonly Proposal[];
  readonly behind: readonly Proposal[];
} {
  const { pieces } = sentence;
  const before: Proposal[] = [];
  const behind: Proposal[] = [];
  const rest: Piece[] = [];
  if (!pieces.some(({ is }) => is === 'celsius' || is === 'place')) return { rest: pieces, before, behind };
  let from = 0;
  for (let at = 0; at <= pieces.length; at++) {
    const piece = pieces[at];
    if (piece && piece.is !== 'break' && !(piece.is === 'word' && /^(?:and|so|but|then)$/.test(piece.text)))
      continue;
    const part = pieces.slice(from, at);
    const readings =
      part.some(({ is }) => is === 'celsius' || is === 'count') &&
      !part.some(({ is }) => is === 'plant') &&
      findHits(rules, part).length === 0
        ? proposeReading(sentenceOf(part, utterance), note)
        : undefined;
    if (readings) (rest.some(({ is }) => is === 'word') ? behind : before).push(...readings);
    else rest.push(...part);
    if (piece) rest.push(piece);
    from = at + 1;
  }
  return { rest: before.length + behind.length === 0 ? pieces : rest, before, behind };
}

/** No grower wishes and tells in more pieces than these; each joint costs two readings. */
const LONGEST_WISH = 60;

/** "I'd like twenty by mid May, oh and took the first five today": a wish, then a deed; or the other way about. */
function targetThenActs(
  sentence: Sentence,
  utterance: Utterance,
  note: Note,
): readonly Proposal[] | undefined {
  const { pieces } = sentence;
  if (pieces.length > LONGEST_WISH || !targetRules.some(({ pattern }) => pattern.test(sentence.line)))
    return undefined;
  for (let at = 1; at < pieces.length; at++) {
    if (pieces[at]?.is !== 'break' && wordAt(pieces, at) !== 'and') continue;
    const before = part(sentence, 0, at, utterance, false);
    const after = part(sentence, at + 1, pieces.length, utterance, false);
    // "Took eight, all basal, and I want twenty by the end of May".
    if (/^(?:i|we|i'd)$/.test(wordAt(after.pieces, 0))) {
      const done = proposeActs(before.pieces, [], utterance, note).proposals;
      const wish = done.length > 0 ? proposeTarget(after, false, lastPlant(done)) : undefined;
      if (wish) return [...done, ...wish];
    }
    const deeds = after.pieces.find((piece) => piece.is === 'word' && piece.verb !== undefined);
    if (deeds?.is !== 'word' || deeds.verb?.form !== 'past' || deeds.text === 'wanted') continue;
    const wanted = proposeTarget(
      before,
      proposeActs(before.pieces, [], utterance, note).proposals.length > 0,
    );
    const acts = wanted && proposeActs(after.pieces, wanted, utterance, note).proposals;
    if (wanted && acts && acts.length > 0) return [...wanted, ...acts];
  }
  return undefined;
}

/** "Opened the vents in the greenhouse, 28 degrees": it was that warm where something was just done. */
function placedAs(acts: readonly Proposal[], readings: readonly Proposal[]): readonly Proposal[] {
  const place = acts.at(-1)?.kind === 'tend' ? acts.at(-1)?.slots['place'] : undefined;
  return readings.map((each) =>
    place === undefined || each.slots['place'] !== undefined
      ? each
      : { ...each, slots: { ...each.slots, place } },
  );
}

/** The plant told of last. */
function lastPlant(told: readonly Proposal[]): PlantWords | undefined {
  const last = told.findLast(({ draft, carried }) => draft.plant ?? carried);
  return last?.draft.plant ?? last?.carried;
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
  const to = pieces[found.to]?.is === 'break' ? found.to + 1 : found.to;
  return !/^(?:what|when|where|whereabouts|how|which|who|if|whether|why)$/.test(wordAt(pieces, to));
}

/** "How many have I left, and when did I last feed them?" */
function twoQuestions(sentence: Sentence, utterance: Utterance): readonly Proposal[] | undefined {
  const { pieces } = sentence;
  const cut = pieces.findIndex(
    (_, at) =>
      at > 1 &&
      (wordAt(pieces, at - 1) === 'and' || pieces[at - 1]?.is === 'break') &&
      /^(?:when|where|how|what|which)$/.test(wordAt(pieces, at)),
  );
  if (cut < 0 || !/^(?:when|where|how|what|which|are|is|do|did|have)$/.test(wordAt(pieces, 0)))
    return undefined;
  const first = proposeQuestion(part(sentence, 0, cut - 1, utterance, true), utterance);
  const second = proposeQuestion(part(sentence, cut, pieces.length, utterance, true), utterance);
  const carried = first?.[0]?.draft.plant;
  if (!first?.[0] || !second?.[0]) return undefined;
  return [...first, ...second.map((each) => (carried && !each.draft.plant ? { ...each, carried } : each))];
}

/** "Lost half, no idea what did for them": told, not asked. */
const KNOWS_NOT =
  /^(?:and |but )?(?:(?:i've |i have )?no (?:idea|clue)|(?:god|goodness|lord|heaven|who) knows|dunno|(?:i )?don't know|(?:i )?(?:can't|cannot) think|beats me|not sure) (?:what|why|how)\b/;

/** What asks behind a statement by its question mark alone. */
const ALONE_ASKS = /^(?:are we |am i )?(?:on track|enough|doable|in time|too late|too many|too few)\b/;

/** Where a question begins behind a statement ("took 5, is that enough?"): the break before it, else 0. */
function questionStart(sentence: Sentence, utterance: Utterance, note: Note): number {
  for (let at = sentence.pieces.length - 1; at > 0; at--) {
    const piece = sentence.pieces[at];
    if (piece?.is !== 'break') continue;
    const rest = part(sentence, at + 1, sentence.pieces.length, utterance, false);
    if (
      (isQuestion(rest) || (sentence.asked && ALONE_ASKS.test(rest.line))) &&
      !KNOWS_NOT.test(rest.line) &&
      (proposeActs(sentence.pieces.slice(0, at), [], utterance, note).proposals.length > 0 ||
        // "Need 20 Ember Fox for 6 June, on track?"
        proposeTarget(part(sentence, 0, at, utterance, false), false) !== undefined)
    )
      return at;
  }
  return 0;
}

function part(sentence: Sentence, from: number, to: number, utterance: Utterance, asked: boolean): Sentence {
  const pieces = sentence.pieces.slice(from, to);
  return { from: 0, to: pieces.length, pieces, line: lineOf(pieces, utterance), asked };
}
