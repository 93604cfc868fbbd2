/** Reminders asked for, and intentions told. */
import type { Piece } from '../pieces/pieces.js';
import { whole } from '../phrases.js';
import { CHORE } from './remind/chores.js';
import { type RemindRule, remindRules } from './remind/cues.js';
import { wordAt } from './rule.js';

/** Where a reminder's words end and its matter begins, with the rule that found it. */
export interface FoundRemind {
  readonly rule: RemindRule;
  /** First piece of the cue, and the one past it. */
  readonly from: number;
  readonly to: number;
}

/** The rules by their first word. */
const rulesByWord: ReadonlyMap<string, readonly RemindRule[]> = new Map(
  [...new Set(remindRules.map(({ words }) => words[0] ?? ''))].map((first) => [
    first,
    remindRules.filter(({ words }) => words[0] === first),
  ]),
);

export function findRemind(pieces: readonly Piece[]): FoundRemind | undefined {
  let best: FoundRemind | undefined;
  for (let at = 0; at < pieces.length; at++) {
    for (const rule of rulesByWord.get(wordAt(pieces, at)) ?? []) {
      if (!rule.words.every((word, n) => wordAt(pieces, at + n) === word)) continue;
      const to = at + rule.words.length;
      // "Remind me" is more than "remind".
      if (best?.from === at && best.to >= to) continue;
      if (rule.beforeVerb && !choreFollows(pieces, to)) continue;
      // "The Salt Harrier wants feeding": seen, unless it has its day.
      if (/^(?:needs|need|wants|want)$/.test(rule.words.join(' ')) && !isDatedChore(pieces, at, to)) continue;
      if (rule.words[0] === 'due' && tellsWhy(pieces[at - 1])) continue;
      // "Lets go, binned two": a cheer.
      if (rule.words[0] === "let's" && wordAt(pieces, to) === 'go' && wordAt(pieces, to + 1) !== 'and')
        continue;
      if (
        rule.words[0] === 'to' &&
        !isArrangedFor(pieces, at) &&
        (!(pieces[at - 1]?.is === 'when') || isPurpose(pieces, at))
      )
        continue;
      if (rule.words[0] === 'remind' && rule.words.length === 1 && at > 1) continue;
      if (
        /^(?:reminder|todo|better|make|tell|diary)$/.test(rule.words[0] ?? '') &&
        at > (rule.words[0] === 'diary' ? 0 : 2)
      )
        continue;
      if (rule.words[0] === 'on' && at > 0) continue;
      // "Diary of a gardener".
      if (rule.words[0] === 'diary' && !/^(?:break|when)$/.test(pieces[to]?.is ?? '')) continue;
      // "No need to water today".
      if (rule.words[0] === 'need' && wordAt(pieces, at - 1) === 'no') continue;
      if (!best || rule.words.length > best.to - best.from || !best.rule.beforeVerb) {
        if (best && best.from < at && !(rule.words.length > best.to - best.from && at - best.from < 2))
          continue;
        best = { rule, from: at, to };
      }
    }
    if (best && at > best.from + 2) break;
  }
  return best;
}

/** "Died due to heat", "five dead due to feeding": why, and nothing planned. */
const tellsWhy = (before: Piece | undefined): boolean =>
  before?.is === 'word' &&
  (before.text === 'dead' || (before.verb?.form === 'past' && !/^(?:be|have)$/.test(before.verb.lemma)));

/** "SH1 to go out to the porch w/c 25 May": plants that open a sentence, and their day to come. */
function isArrangedFor(pieces: readonly Piece[], at: number): boolean {
  return (
    at < 5 &&
    pieces[at - 1]?.is === 'plant' &&
    // "Thirty to order for the council": wanted.
    !(wordAt(pieces, at + 1) === 'order' && wordAt(pieces, at + 2) === 'for') &&
    pieces
      .slice(0, at - 1)
      .every((piece) => piece.is === 'count' || (piece.is === 'word' && piece.verb === undefined)) &&
    pieces
      .slice(at)
      .some(
        (piece) =>
          piece.is === 'when' &&
          piece.when.future !== undefined &&
          JSON.stringify(piece.when.past) !== JSON.stringify(piece.when.future),
      )
  );
}

/** "Salt Harrier wants feeding on Friday": of a plant, with its day behind. */
function isDatedChore(pieces: readonly Piece[], from: number, to: number): boolean {
  const chore = pieces[to];
  return (
    (pieces[from - 1]?.is === 'plant' || pieces[from - 1]?.is === 'place') &&
    chore?.is === 'word' &&
    /ing$/.test(chore.text) &&
    pieces.slice(to).some(({ is }) => is === 'when')
  );
}

/** "Took eleven on Sunday to get out of the house": what a deed was done for. */
function isPurpose(pieces: readonly Piece[], at: number): boolean {
  // "Six over to the cold frame on Sunday to make room".
  if (
    /^(?:make (?:room|space|way)|free (?:up|the|some)|save (?:room|space))$/.test(
      `${wordAt(pieces, at + 1)} ${wordAt(pieces, at + 2)}`,
    )
  )
    return true;
  const start =
    pieces
      .slice(0, at)
      .findLastIndex((_, n) => pieces[n]?.is === 'break' || /^(?:and|but|then|so)$/.test(wordAt(pieces, n))) +
    1;
  return pieces
    .slice(start, at)
    .some(
      (piece) =>
        piece.is === 'word' &&
        piece.verb?.form === 'past' &&
        !/^(?:be|have|need|want|root|plan|mean|decide)$/.test(piece.verb.lemma),
    );
}

/** What may stand between an intention and its verb: "I'll probably have to …". */
const BEFORE_CHORE = whole`
  just|also|then|and|all|either|only|finally|definitely|probably|really|not
  to|be|have|try|go|come|get|round|start
`;

function choreFollows(pieces: readonly Piece[], from: number): boolean {
  let at = from;
  while (BEFORE_CHORE.test(wordAt(pieces, at)) || pieces[at]?.is === 'when') {
    if (
      /^(?:get|go|come|have|start|try)$/.test(wordAt(pieces, at)) &&
      !/^(?:to|round|and)$/.test(wordAt(pieces, at + 1))
    )
      break;
    if (wordAt(pieces, at) === 'not') return false;
    at++;
  }
  const piece = pieces[at];
  if (piece?.is !== 'word') return false;
  const lemma = piece.verb?.lemma ?? piece.text.replace(/ing$/, '');
  return CHORE.test(lemma) || CHORE.test(piece.text) || CHORE.test(`${lemma}e`);
}

const EVENT =
  /^(?:sale|sales|fair|fayre|swap|stall|show|market|auction|festival|society|club|nursery|centre|center)$/;

/** "At Saturday's plant sale": named after the plants that it is about, and no planting. */
export const isPlantSale = (pieces: readonly Piece[], at: number): boolean =>
  wordAt(pieces, at) === 'plant' && EVENT.test(wordAt(pieces, at + 1));
