/** The way in: a note to entries and asks, or to an instruction; never throws. */
import type { Plant } from '../ledger/entry.js';
import { proposeReply } from './answer-proposal.js';
import { withoutAsides } from './asides.js';
import { withoutWeather } from './amending/weather.js';
import { blamed } from './blame.js';
import { joinContainers } from './containers.js';
import { cropAlone, underHeading } from './crop-alone.js';
import { fullerReply } from './fuller-replies.js';
import { undosIn } from './grammar/undo.js';
import { instruct } from './instructing.js';
import { instructionInTalk } from './instruction-in-talk.js';
import { joinProposals } from './joining.js';
import { heeded } from './likeness/heeding.js';
import { withMarks } from './marks-meant.js';
import { mendedBy } from './mending.js';
import { joinNewNames } from './new-names.js';
import { withNamesBesideCrop } from './new-names/behind-cuttings.js';
import { withCropsSaid } from './new-names/crop-said.js';
import { withoutCallings, withoutIntroductions } from './new-names/introduced.js';
import { withNamedMeant, withNamesToldOf } from './new-names/told-of.js';
import type { Ask, Note, ReadEntry, ReadNote } from './note.js';
import { withNthPlants } from './nth-plant.js';
import { onceMore } from './once-more.js';
import { datedBy } from './day-behind.js';
import { withoutLotBrackets } from './lot-in-brackets.js';
import { eachNamed } from './of-each.js';
import { withRootsSummed } from './roots-summed.js';
import { withTheirOwn } from './respectively.js';
import { withOpenings } from './openings.js';
import type { Piece } from './pieces.js';
import { withoutAnother } from './another-today.js';
import { withTowards } from './down-the.js';
import { withDeeds } from './planned-then-done.js';
import type { Proposal } from './proposal.js';
import { refine } from './refining.js';
import { proposeSentence } from './sentence-proposal.js';
import { lineOf, plantsIn, type Sentence, sentencesOf } from './sentences.js';
import { saidOfAll, speaksOfSeveral } from './said-of-all.js';
import { sizedBy } from './sizes-told.js';
import { undoApart, undosInParts } from './undo-in-parts.js';
import { withSums } from './sums-told.js';
import { withoutTotals } from './totals-told.js';
import { type Utterance, utteranceOf } from './utterance.js';

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
  const reading = readByRules(note);
  if (note.byRules) return reading;
  const readUnder = (heading: string): ReadNote =>
    readByRules({ ...note, text: `${heading}: ${note.text}` }).outcome;
  return { ...reading, outcome: heeded(reading.outcome, reading.pieces, readUnder) };
}

/** A note's utterance, and its pieces with containers and new names joined. */
export function piecesOf(note: Note): Pick<Reading, 'utterance' | 'pieces'> {
  const utterance = utteranceOf(note);
  const joined = joinContainers(
    withTowards(withoutCallings(withSums(withRootsSummed(withoutTotals(withoutAsides(utterance.pieces)))))),
  );
  const named = withCropsSaid(
    withNamedMeant(
      withNamesToldOf(
        withoutIntroductions(joinNewNames(withNamesBesideCrop(joined), utterance.tokens, utterance.text)),
      ),
    ),
  );
  const pieces = withNthPlants(eachNamed(withTheirOwn(withoutLotBrackets(named)), note.context));
  return { utterance, pieces };
}

function readByRules(note: Note): Reading {
  const { utterance, pieces } = piecesOf(note);
  const line = lineOf(pieces, utterance);
  const seen = { utterance, pieces, sentences: [], proposals: [] };
  if (line === '') return { ...seen, outcome: { entries: [], asks: [] } };
  const undone = undosInParts(pieces, utterance) || undosIn(line);
  if (undone > 0) return { ...seen, outcome: { entries: Array(undone).fill(UNDO), asks: [] } };
  const answer = proposeReply(line, pieces, utterance, note);
  if (answer) return { ...seen, proposals: [answer], outcome: refined([answer], note) };
  const instruction = instruct(line, pieces, utterance, note) ?? instructionInTalk(pieces, utterance, note);
  if (instruction) return { ...seen, outcome: { entries: [], asks: [], instruction } };
  const reply = fullerReply(pieces, utterance, note);
  const marked = withMarks(reply?.rest ?? pieces);
  const sentences = withDeeds(sentencesOf(undoApart(withOpenings(marked), utterance), utterance), utterance);
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
      const [mentioned, another] = plantsIn(spokenOf?.pieces ?? []);
      const aside: Proposal[] = mentioned && !another ? [{ ...ASIDE, carried: mentioned.plant }] : [];
      const proposed = proposeSentence(sentence, utterance, note, told.length === 0 ? aside : told);
      const previous = sentences[sentences.indexOf(sentence) - 1];
      const heading = cropAlone(spokenOf?.pieces ?? []);
      told.push(
        ...withoutWeather(blamed(proposed, sentence, previous), sentence, previous).map((each) =>
          underHeading(each, heading),
        ),
      );
      spokenOf = proposed.length === 0 ? sentence : undefined;
    }
  }
  const proposals = joinProposals(withoutAnother(told, sentences));
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
