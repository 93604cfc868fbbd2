/** The way in: a note to entries and asks, or to an instruction; never throws. */
import type { Plant } from '../ledger/entry.js';
import { mergedPlants } from './acts/drafting.js';
import { proposeReply } from './proposals/answer-proposal.js';
import { withoutAsides } from './joined/asides.js';
import { withFaultsJoined } from './amending/fault-owned.js';
import { withoutWeather } from './amending/weather.js';
import { blamed } from './sentences/blame.js';
import { withoutNeighbours } from './joined/beside-others.js';
import { joinContainers } from './joined/containers.js';
import { cropAlone, underHeading } from './sentences/crop-alone.js';
import { fullerReply } from './proposals/fuller-replies.js';
import { undosIn } from './grammar/undo.js';
import { instruct } from './instructions/instructing.js';
import { instructionInTalk } from './instructions/instruction-in-talk.js';
import { joinProposals } from './sentences/joining.js';
import { heeded } from './likeness/heeding.js';
import { withMarks } from './joined/marks-meant.js';
import { mendedBy } from './sentences/mending.js';
import { joinNewNames } from './joined/new-names.js';
import { withNamesBesideCrop } from './joined/new-names/behind-cuttings.js';
import { withCropsSaid } from './joined/new-names/crop-said.js';
import { withoutSortsCounted } from './joined/new-names/sorts-counted.js';
import { withoutCallings, withoutIntroductions } from './joined/new-names/introduced.js';
import { withNamedMeant, withNamesToldOf } from './joined/new-names/told-of.js';
import type { Ask, Note, ReadEntry, ReadNote } from './note.js';
import { withNthPlants } from './joined/nth-plant.js';
import { onceMore } from './sentences/once-more.js';
import { datedBy, underDay } from './sentences/day-behind.js';
import { withoutLookOver } from './joined/looked-over.js';
import { withoutLotBrackets } from './lots/lot-in-brackets.js';
import { eachNamed, withNumberOf } from './joined/of-each.js';
import { withRootsSummed } from './joined/roots-summed.js';
import { withTheirOwn } from './joined/respectively.js';
import { withOpenings } from './joined/openings.js';
import type { Piece } from './pieces/pieces.js';
import { withoutAnother } from './sentences/another-today.js';
import { withTowards } from './joined/down-the.js';
import { withDeeds } from './proposals/planned-then-done.js';
import type { Proposal } from './proposal.js';
import { refine } from './refining/refining.js';
import { proposeSentence } from './proposals/sentence-proposal.js';
import { lineOf, type Sentence, sentenceOf, sentencesOf } from './sentences/sentences.js';
import { saidOfAll, speaksOfSeveral } from './sentences/said-of-all.js';
import { sizedBy } from './sentences/sizes-told.js';
import { undoApart, undosInParts } from './amending/undo-in-parts.js';
import { withSums } from './sentences/sums-told.js';
import { withoutTotals } from './joined/totals-told.js';
import { withNamesSupposed } from './supposing/supposing.js';
import { type Utterance, utteranceOf } from './pieces/utterance.js';

/** Every stage of a note's reading, for whoever wants to see how it came about. */
export interface Reading {
  readonly utterance: Utterance;
  /** With containers and new names joined, and the marks that speech left out. */
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
  const reading = withNamesSupposed(readByRules(note), note, readByRules);
  if (note.byRules) return reading;
  // What leads into the matter and rounds it off stays outside: between heading and matter it would be part of both.
  const { tokens, text } = reading.utterance;
  const matter = text.slice(tokens[0]?.start, tokens.at(-1)?.end);
  const readUnder = (heading: string): ReadNote =>
    readByRules({ ...note, text: `${heading}: ${matter}` }).outcome;
  return { ...reading, outcome: heeded(reading.outcome, reading.pieces, readUnder) };
}

type Step = (pieces: readonly Piece[]) => readonly Piece[];

/** What joins or leaves out pieces before names that nobody knows yet are looked for, in order. */
const BEFORE_NEW_NAMES: readonly Step[] = [
  withoutAsides,
  withoutTotals,
  withRootsSummed,
  withSums,
  withoutCallings,
  withTowards,
  withoutNeighbours,
  joinContainers,
  withNamesBesideCrop,
];

/** The same behind that. */
const BEHIND_NEW_NAMES: readonly Step[] = [
  withoutIntroductions,
  withNamesToldOf,
  withNamedMeant,
  withCropsSaid,
  withoutSortsCounted,
  withoutLotBrackets,
  withTheirOwn,
];

const inOrder = (pieces: readonly Piece[], steps: readonly Step[]): readonly Piece[] =>
  steps.reduce((row, step) => step(row), pieces);

/** A note's utterance, and its pieces with containers and new names joined. */
export function piecesOf(note: Note): Pick<Reading, 'utterance' | 'pieces'> {
  const utterance = utteranceOf(note);
  const ofNumbers = (row: readonly Piece[]): readonly Piece[] => withNumberOf(row, utterance.tokens);
  const joined = inOrder(ofNumbers(utterance.pieces), BEFORE_NEW_NAMES);
  const named = inOrder(joinNewNames(joined, utterance.tokens, utterance.text), BEHIND_NEW_NAMES);
  const pieces = withoutLookOver(withNthPlants(eachNamed(ofNumbers(named), note.context)));
  return { utterance, pieces };
}

function readByRules(note: Note): Reading {
  const { utterance, pieces: said } = piecesOf(note);
  const pieces = withMarks(said);
  const line = lineOf(pieces, utterance);
  const seen = { utterance, pieces, sentences: [], proposals: [] };
  if (line === '') return { ...seen, outcome: { entries: [], asks: [] } };
  // "Scratch that, I was looking at the Marble Wren": which was meant instead.
  const tells = (part: readonly Piece[]): boolean =>
    part.some(
      (piece, at) =>
        (piece.is === 'count' && piece.quantity.value !== undefined) || (piece.is === 'plant' && at > 1),
    ) ||
    refined(proposeSentence(sentenceOf(part, utterance), utterance, note, []), note).entries.some(
      ({ entry }) => entry.kind !== 'remark',
    );
  const undone = undosInParts(pieces, utterance, tells) || undosIn(line);
  if (undone > 0) return { ...seen, outcome: { entries: Array(undone).fill(UNDO), asks: [] } };
  const answer = proposeReply(line, pieces, utterance, note);
  if (answer) return { ...seen, proposals: [answer], outcome: refined([answer], note) };
  const instruction = instruct(line, pieces, utterance, note) ?? instructionInTalk(pieces, utterance, note);
  if (instruction) return { ...seen, outcome: { entries: [], asks: [], instruction } };
  const reply = fullerReply(pieces, utterance, note);
  const marked = reply?.rest ?? pieces;
  const sentences = withDeeds(
    sentencesOf(undoApart(withFaultsJoined(withOpenings(marked), utterance), utterance), utterance),
    utterance,
  );
  const told: Proposal[] = [...(reply?.proposals ?? [])];
  // A sentence in which nothing was done, but a plant spoken of.
  let spokenOf: Sentence | undefined;
  for (const sentence of sentences) {
    const filled = sizedBy(told, sentence) ?? datedBy(told, sentence) ?? saidOfAll(told, sentence, utterance);
    if (filled) {
      told.splice(0, told.length, ...filled);
      continue;
    }
    const again = onceMore(told.at(-1), sentence);
    const mended =
      again || speaksOfSeveral(told, sentence) ? undefined : mendedBy(told.at(-1), sentence, note, utterance);
    if (again) told.push(again);
    else if (mended) told[told.length - 1] = mended;
    else {
      // "Cuttings of Tallow Bell, my white hydrangea. Took eight": a variety and its crop are one plant.
      const [mentioned, another] = spokenOf ? mergedPlants(spokenOf.pieces) : [];
      const aside: Proposal[] = mentioned && !another ? [{ ...ASIDE, carried: mentioned }] : [];
      const proposed = proposeSentence(sentence, utterance, note, told.length === 0 ? aside : told);
      const previous = sentences[sentences.indexOf(sentence) - 1];
      const heading = cropAlone(spokenOf?.pieces ?? []);
      const blaming = blamed(proposed, sentence, previous);
      // "Vine weevil, the wee beggars. Four Salt Harrier thrown out": no remark besides.
      const culprit = told.at(-1);
      if (
        blaming.some((each, n) => each !== proposed[n]) &&
        culprit?.kind === 'remark' &&
        !culprit.draft.plant
      )
        told.pop();
      told.push(...withoutWeather(blaming, sentence, previous).map((each) => underHeading(each, heading)));
      spokenOf = proposed.length === 0 ? sentence : undefined;
    }
  }
  const proposals = joinProposals(withoutAnother(underDay(told, sentences), sentences));
  const outcome = refined(proposals, note);
  return { utterance, pieces: reply ? pieces : marked, sentences, proposals, outcome };
}

const UNDO: ReadEntry = { entry: { kind: 'undo' }, sources: {} };
const ASIDE = { kind: 'remark', rule: 'spoken of', slots: {}, draft: {} } as const;

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
