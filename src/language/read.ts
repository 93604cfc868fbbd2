/** The way in: a note to entries and asks, or to an instruction; never throws. */
import { type Clause, clausesOf } from './clauses.js';
import { joinContainers } from './containers.js';
import { settleCorrections } from './corrections.js';
import { type Draft, draftsOf } from './drafting.js';
import { loosePlace } from './loose-places.js';
import { recipientOf } from './recipients.js';
import { rules } from './grammar/rules.js';
import { isUndo } from './grammar/undo.js';
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
  if (isUndo(line)) return { entries: [{ entry: { kind: 'undo' }, sources: {} }], asks: [] };
  const instruction = instruct(line, pieces, utterance, note);
  if (instruction) return { entries: [], asks: [], instruction };
  const proposals: Proposal[] = [];
  for (const sentence of sentencesOf(pieces, utterance))
    proposals.push(...proposeSentence(sentence, utterance, note, proposals));
  return refined(joinProposals(proposals), note);
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
  if (isQuestion(sentence) || sentence.pieces.length < 12) {
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
    { ...sentence, pieces: settleCorrections(sentence.pieces) },
    0,
    Number.POSITIVE_INFINITY,
    utterance,
    sentence.asked,
  );
  const acts = proposeActs(corrected.pieces, earlier, utterance);
  const amend = proposeAmend(sentence, utterance, acts.hits > 0);
  if (amend) return [amend];
  const remind = proposeRemind(corrected, utterance, note);
  if (remind) {
    const before = proposeActs(remind.before, earlier, utterance);
    return [...before.proposals, ...remind.proposals];
  }
  const target = proposeTarget(corrected, utterance, acts.proposals.length > 0);
  if (target) return target;
  const readings = acts.proposals.length === 0 ? proposeReading(corrected, note) : undefined;
  if (readings) return readings;
  if (acts.hits > 0) return acts.proposals;
  return proposeRemark(corrected, utterance) ?? [];
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

function proposeActs(pieces: readonly Piece[], earlier: readonly Proposal[], utterance: Utterance): Acts {
  const proposals: Proposal[] = [];
  let hits = 0;
  let plantNamed: PlantWords | undefined;
  for (const clause of clausesOf(pieces, rules)) {
    if (!clause.hit) continue;
    hits++;
    const mood = moodOf(pieces, clause);
    const { rule } = clause.hit;
    if (rule.kind === 'aside') {
      plantNamed = draftsOf(pieces, clause)[0]?.plant ?? plantNamed;
      continue;
    }
    const { kind } = rule;
    const carriedHere = (): PlantWords | undefined => plantNamed ?? carriedFrom([...earlier, ...proposals]);
    if (mood === 'denied' && kind === 'check' && rule.head !== 'check~') {
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
    for (const found of draftsOf(pieces, clause)) {
      const draft = withWhereTo(found, kind, pieces, clause, utterance);
      const carried = draft.plant === undefined ? carriedHere() : undefined;
      proposals.push({
        kind,
        draft,
        slots: slotsOf(rule, draft),
        rule: rule.name,
        ...(carried ? { carried } : {}),
      });
      if (draft.plant) plantNamed = draft.plant;
    }
  }
  return { proposals, hits };
}

const STANDS: ReadonlySet<string> = new Set(['move', 'plantOut', 'hardenOff', 'strike', 'receive', 'stock']);

/** Adds the recipient of what left, and a place that only a preposition tells. */
function withWhereTo(
  draft: Draft,
  kind: string,
  pieces: readonly Piece[],
  clause: Clause,
  { tokens, text }: Utterance,
): Draft {
  if (kind === 'dispatch') {
    const to = draft.to ?? recipientOf(pieces, clause, tokens, text);
    return to === undefined ? draft : { ...draft, to };
  }
  if (!STANDS.has(kind) || draft.place !== undefined) return draft;
  const place = loosePlace(pieces, clause, tokens, text);
  return place === undefined || place === draft.fromPlace ? draft : { ...draft, place };
}
