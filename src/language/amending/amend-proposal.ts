/** Sentences that put an entry right. */
import { grownName, spelledAnew } from './amended.js';
import { contrasted, deniesDate, deniesDay, deniesTheLedger } from './denial.js';
import { fromCue } from './from-cue.js';
import { deniesValue, fromDenial } from './from-denial.js';
import { isOfSomethingElse, putsNothingRight } from './nothing-right.js';
import { isSettable } from './settable.js';
import { AMEND_CUE, amendRules } from '../grammar/amend.js';
import { wordAt } from '../grammar/rule.js';
import type { Note } from '../note.js';
import type { Piece } from '../pieces/pieces.js';
import type { Proposal } from '../proposal.js';
import { lotMeant } from '../lots/lot-meant.js';
import { proposePutInAs, proposeRename, RENAME } from './rename-proposal.js';
import { restatementIn } from './restatement.js';
import { withoutReasons } from './restatement/reasons.js';
import { LINE_LIMIT, lineOf, plantsIn, type Sentence, textOf } from '../sentences/sentences.js';
import { titleCase } from '../pieces/told-names/name-piece.js';
import type { Utterance } from '../pieces/utterance.js';
import { proposeWhereTo } from './where-they-went.js';

/** "No, 3", "it was 6 pots": a whole sentence that says one thing again. */
export function proposeRestatement(
  pieces: readonly Piece[],
  utterance: Utterance,
  note: Note,
): Proposal | undefined {
  const restated = restatementIn(pieces, note.context?.pending !== undefined);
  const not = pieces.findIndex((_, at) => wordAt(pieces, at) === 'not');
  if (!restated || isWish(pieces, lineOf(pieces, utterance))) return undefined;
  if (isOfSomethingElse(lineOf(withoutReasons(pieces), utterance), pieces, not)) return undefined;
  // "They're not all in the shade house": where some of them are not.
  if (
    /^(?:all|both)$/.test(textOf(pieces.slice(not + 1, not + 2), utterance)) &&
    not >= 0 &&
    restated.set['place'] !== undefined
  )
    return undefined;
  const { plant, when } = restated;
  let { set } = restated;
  const lot = lotMeant(pieces, note);
  if (lot) return { kind: 'amend', rule: 'it was <plant> from <day>', slots: { set: lot }, draft: {} };
  const [first, second] = plantsIn(pieces);
  if (plant?.variety !== undefined && set['variety'] === plant.variety && first && second) {
    // "Should be Brass Thymble, not Brass Thimble" tells the old name last.
    const denied = wordAt(pieces, pieces.indexOf(second) - 1) === 'not';
    const [old, fresh] = denied ? [second, first] : [first, second];
    // "It's Tin Herald Pink, not Tin Herald": the new name begins with the old one.
    const grown = first.to === second.from ? titleCase(textOf([first, second], utterance)) : undefined;
    const variety = grown ?? grownName(fresh, pieces, utterance) ?? spelledAnew(old, fresh, utterance);
    if (variety === undefined) return undefined;
    set = { variety };
  }
  // "Wrong name, it's Tallow Ball": what was taken for a slip of the pen.
  const respelt =
    first && !second && !plant && set['variety'] !== undefined && /\bname\b/.test(lineOf(pieces, utterance))
      ? spelledAnew(first, first, utterance, String(set['variety']))
      : undefined;
  if (respelt !== undefined)
    return {
      kind: 'amend',
      rule: 'it was <value>',
      slots: { set: { variety: respelt } },
      draft: { plant: { variety: String(set['variety']) } },
    };
  return {
    kind: 'amend',
    rule: 'it was <value>',
    slots: { set },
    draft: { ...(plant ? { plant } : {}), ...(when ? { when } : {}) },
  };
}

/** "Should be 5 not 4", "I meant Marble Wren", "rename X to Y". */
export function proposeAmend(
  sentence: Sentence,
  utterance: Utterance,
  hasAct: boolean,
  note: Note,
): Proposal | undefined {
  const line = sentence.line.slice(0, LINE_LIMIT);
  const pieces = withoutReasons(sentence.pieces);
  const not = pieces.findIndex(
    (_, at) =>
      (wordAt(pieces, at) === 'not' ||
        (wordAt(pieces, at) === 'instead' && wordAt(pieces, at + 1) === 'of')) &&
      (isSettable(pieces[/^(?:the|an?|my)$/.test(wordAt(pieces, at + 1)) ? at + 2 : at + 1]) ||
        !/^(?:did|do|is|are|was|have|has|does|should|could|would)$/.test(wordAt(pieces, at - 1))),
  );
  const gone =
    proposeWhereTo(line, textOf(pieces, utterance), plantsIn(pieces)[0]?.plant) ??
    proposePutInAs(sentence, utterance);
  if (gone) return gone;
  const fits = amendRules.filter((rule) => rule.pattern.test(line) && (!rule.needsNot || not >= 0));
  const copula = not > 0 && /\b(?:was|were|is|are|it's|that's)\b/.test(line) && contrasted(pieces, not);
  if (fits.length === 0 && !copula) return undefined;
  // "Rooted to the sofa, not moving", "not bad going, …": denies no value.
  if (
    fits.every(({ name }) => name === '<x> not <y>' || name === 'not <y>, <x>') &&
    !copula &&
    DENIES_NO_VALUE.test(line)
  )
    return undefined;
  const isRename = fits.some(({ name }) => name === RENAME);
  const renamed = isRename ? proposeRename(sentence, utterance) : undefined;
  // "Should be called Redband Rosie, rename it please" names both before the word.
  const rule = fits.find(({ name }) => name !== RENAME)?.name ?? 'were <x> not <y>';
  if (renamed ?? (isRename && fits.length === 1)) return renamed;
  const unreasoned = pieces === sentence.pieces ? line : lineOf(pieces, utterance).slice(0, LINE_LIMIT);
  if (putsNothingRight(unreasoned, pieces, not)) return undefined;
  const isOver = fits.some(({ overActs }) => overActs) || isPlain(pieces, line, not, note);
  if (hasAct && !isOver) return undefined;
  const amended = deniesValue(pieces, not)
    ? fromDenial(pieces, not, utterance)
    : fromCue(pieces, line, rule === 'I said <x> but it was <y>', utterance);
  if (!amended || Object.keys(amended.set).length === 0 || isWish(pieces, line)) return undefined;
  const { set, ...draft } = amended;
  return { kind: 'amend', rule, slots: { set }, draft };
}

/** Words by which a line puts right, whatever else it tells of. */
const ANNOUNCES =
  /^(?:should|make that|amend|change|update|edit|recount|miscounted|mistyped|it|that|they|not|was|call that|i said|i told you|i put|i mistyped|i miscounted|wrong)\b|\b(?:i meant|should have said|should (?:be|have been))\b/;
/** What "not" denies beside no value. */
const DENIES_NO_VALUE =
  /\bnot (?:(?!counting|including)\w+ing|bad|half|too|so|very|sure|much|many|loads|lots|a lot|masses|every|(?:one|a|a single) roots?)\b/;
/** The same beside a contrast. */
const BIDS =
  /^(?:oh |no |sorry |oops )*(?:hang on|hold on|wait)\b|\b(?:pls|please) (?:amend|correct|fix|change)(?: that| it)?$|\b(?:amend|correct|fix|change) (?:that|it|this)(?: please| pls)?$/;

/** Whether a line that names an act puts an entry right all the same. */
function isPlain(pieces: readonly Piece[], line: string, not: number, note: Note): boolean {
  if (AMEND_CUE.test(line) || ANNOUNCES.test(line)) return true;
  if (deniesDay(pieces, not) || deniesDate(pieces, not)) return true;
  return (
    not > 0 &&
    contrasted(pieces, not) &&
    (BIDS.test(line) || /\b(?:was|were|should)\b/.test(line) || deniesTheLedger(pieces, not, note))
  );
}

/** "The Marble Wren should be 8 by June": what there is to be. */
const isWish = (pieces: readonly Piece[], line: string): boolean =>
  /\bshould be\b/.test(line) &&
  pieces.some((piece) => piece.is === 'when' && /^(?:by|before)\b/i.test(piece.when.words));
