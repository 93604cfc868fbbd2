/** Sentences that put an entry right. */
import { cueEnd } from './amending/cue.js';
import { contrasted, deniesDate, deniesDay, deniesTheLedger } from './amending/denial.js';
import { countsSomethingElse, isOfSomethingElse, putsNothingRight } from './amending/nothing-right.js';
import { partOf, upToReason } from './amending/reason.js';
import { isSettable } from './amending/settable.js';
import type { Draft } from './drafting/draft.js';
import { AMEND_CUE, amendRules } from './grammar/amend.js';
import { wordAt } from './grammar/rule.js';
import type { Note } from './note.js';
import type { Piece, When } from './pieces.js';
import type { Proposal } from './proposal.js';
import { lotMeant } from './lot-meant.js';
import { proposeRename, RENAME } from './rename-proposal.js';
import { restatementIn } from './restatement.js';
import { withoutReasons } from './restatement/reasons.js';
import { LINE_LIMIT, lineOf, plantsIn, type Sentence, textOf } from './sentences.js';
import { titleCase } from './told-names.js';
import type { Utterance } from './utterance.js';
import { valueSaid } from './value-said.js';
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
    const variety = grown ?? spelledAnew(old, fresh, utterance);
    if (variety === undefined) return undefined;
    set = { variety };
  }
  return {
    kind: 'amend',
    rule: 'it was <value>',
    slots: { set },
    draft: { ...(plant ? { plant } : {}), ...(when ? { when } : {}) },
  };
}

/**
 * "Grandads Elbow should be Grandad's Elbow": what was taken for a slip of the pen is the new name; nothing where both
 * are written alike.
 */
function spelledAnew(old: Piece, fresh: Piece, utterance: Utterance): string | undefined {
  const written = textOf([fresh], utterance);
  return written === textOf([old], utterance) ? undefined : titleCase(written);
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
      (isSettable(pieces[at + 1]) ||
        !/^(?:did|do|is|are|was|have|has|does|should|could|would)$/.test(wordAt(pieces, at - 1))),
  );
  const gone = proposeWhereTo(line, textOf(pieces, utterance));
  if (gone) return gone;
  const fits = amendRules.filter((rule) => rule.pattern.test(line) && (!rule.needsNot || not >= 0));
  const copula = not > 0 && /\b(?:was|were|is|are|it's|that's)\b/.test(line) && contrasted(pieces, not);
  if (fits.length === 0 && !copula) return undefined;
  const isRename = fits.some(({ name }) => name === RENAME);
  const renamed = isRename ? proposeRename(sentence, utterance) : undefined;
  // "Should be called Redband Rosie, rename it please" names both before the word.
  const rule = fits.find(({ name }) => name !== RENAME)?.name ?? 'were <x> not <y>';
  if (renamed ?? (isRename && fits.length === 1)) return renamed;
  const unreasoned = pieces === sentence.pieces ? line : lineOf(pieces, utterance).slice(0, LINE_LIMIT);
  if (putsNothingRight(unreasoned, pieces, not)) return undefined;
  const strong =
    fits.some(({ overActs }) => overActs) ||
    AMEND_CUE.test(line) ||
    (not > 0 &&
      contrasted(pieces, not) &&
      /^(?:oh |no |sorry |oops )*(?:hang on|hold on|wait)\b|\b(?:pls|please) (?:amend|correct|fix|change)(?: that| it)?$|\b(?:amend|correct|fix|change) (?:that|it|this)(?: please| pls)?$/.test(
        line,
      )) ||
    /^(?:should|make that|amend|change|update|edit|recount|miscounted|mistyped|it|that|they|not|was|call that|i said|i told you|i put|i mistyped|i miscounted|wrong)\b/.test(
      line,
    ) ||
    /\b(?:i meant|should have said|should (?:be|have been))\b/.test(line);
  const contrast = not > 0 && contrasted(pieces, not);
  if (
    hasAct &&
    !strong &&
    !deniesDay(pieces, not) &&
    !deniesDate(pieces, not) &&
    !(contrast && (/\b(?:was|were|should)\b/.test(line) || deniesTheLedger(pieces, not, note)))
  )
    return undefined;
  const set: Record<string, unknown> = {};
  const put = (piece: Piece | undefined): void => {
    if (piece)
      for (const [slot, value] of Object.entries(valueOf(piece, partOf(piece, pieces, utterance))))
        set[slot] ??= value;
  };
  let plant: Draft['plant'];
  let when: When | undefined;
  if (deniesDay(pieces, not)) {
    put(pieces[not - 1]);
    plant = plantsIn(pieces)[0]?.plant;
  } else if (not >= 0 && pieces.slice(not + 1).some(isSettable)) {
    const denied = pieces.slice(not + 1).find(isSettable);
    // "Make that 7 pots not 6": six of what was told before it.
    const before = pieces.slice(0, not);
    const pots = before.findLast(({ is }) => is === 'pots');
    const same = before.findLast((piece) => piece.is === denied?.is);
    const wanted =
      denied?.is === 'count' &&
      pots?.is === 'pots' &&
      pots.pots !== undefined &&
      (same === undefined || pots === before.at(-1))
        ? pots
        : same;
    const after = wanted
      ? undefined
      : pieces
          .slice(pieces.indexOf(denied ?? (pieces[not] as Piece)) + 1)
          .find((piece) => piece.is === denied?.is);
    const right = wanted ?? after;
    put(right);
    if (denied?.is === 'plant') {
      plant = denied.plant;
      if (right?.is === 'plant' && plant.variety !== undefined && set['variety'] === plant.variety) {
        const variety = spelledAnew(denied, right, utterance);
        if (variety === undefined || variety === plant.variety) return undefined;
        set['variety'] = variety;
      }
    }
    for (const piece of pieces) {
      if (piece === wanted || piece === denied) continue;
      if (piece.is === 'plant' && denied?.is !== 'plant') plant ??= piece.plant;
      if (piece.is === 'when' && denied?.is !== 'when') when ??= piece.when;
    }
  } else {
    const turn =
      rule === 'I said <x> but it was <y>'
        ? pieces.findIndex((_, at) => /^(?:but|and)$/.test(wordAt(pieces, at)))
        : -1;
    const cue = turn >= 0 ? turn + 1 : cueEnd(pieces);
    // "I told you 10 but there are only 7 left now": both were true.
    if (cue < 0 || (turn >= 0 && /\b(?:now|left)\b/.test(line))) return undefined;
    const behind = upToReason(pieces.slice(cue), utterance);
    const told = behind.filter((piece, at) => isSettable(piece) && !countsSomethingElse(behind, at));
    const onlyPlant = told.every(({ is }) => is === 'plant');
    for (const piece of told) {
      if (piece.is === 'plant' && !onlyPlant) plant ??= piece.plant;
      else if (
        turn >= 0 &&
        piece.is === 'count' &&
        pieces.slice(0, turn).some(({ is }) => is === 'pots') &&
        piece.quantity.value !== undefined
      )
        set['pots'] = piece.quantity.value;
      else put(piece);
    }
    // "Rusty Colinder should be Rusty Colander": both were taken for the one plant that is known.
    const old = plantsIn(pieces.slice(0, cue)).at(-1);
    const fresh = onlyPlant ? told[0] : undefined;
    if (old && fresh && old.plant.variety !== undefined && set['variety'] === old.plant.variety) {
      const variety = spelledAnew(old, fresh, utterance);
      if (variety === undefined) return undefined;
      set['variety'] = variety;
    }
    for (const piece of pieces.slice(0, cue)) {
      if (piece.is === 'plant') plant ??= piece.plant;
      if (piece.is === 'when') when ??= piece.when;
    }
  }
  if (Object.keys(set).length === 0 || isWish(pieces, line)) return undefined;
  return {
    kind: 'amend',
    rule,
    slots: { set },
    draft: { ...(plant ? { plant } : {}), ...(when ? { when } : {}) },
  };
}

/** The slots that a piece sets, in a line that may tell of roots. */
function valueOf(piece: Piece, line: string): Readonly<Record<string, unknown>> {
  // A bare "it was minus 6 on Friday" tells the weather: only where an amendment is announced does a temperature mend one.
  if (piece.is === 'celsius') return { celsius: piece.celsius };
  const { count, ...value } = (valueSaid(piece) ?? {}) as { readonly count?: number };
  if (count === undefined) return value;
  const ofRoots = /\b(?:rooted|roots)\b/.test(line) && !/\b(?:cuttings|struck|took)\b/.test(line);
  return ofRoots ? { rooted: count } : { count };
}

/** "The Marble Wren should be 8 by June": what there is to be. */
const isWish = (pieces: readonly Piece[], line: string): boolean =>
  /\bshould be\b/.test(line) &&
  pieces.some((piece) => piece.is === 'when' && /^(?:by|before)\b/i.test(piece.when.words));
