/** A bare reply to a prompt, where the note is nothing else. */
import type { AnswerValue } from '../../ledger/entry.js';
import { rules } from '../grammar/rules.js';
import { findHits } from '../grammar/hits.js';
import { wordAt } from '../grammar/rule.js';
import { bareQuantity } from '../grammar/answer.js';
import { answerRules } from '../grammar/answer/rules.js';
import type { KnownBatch, Note } from '../note.js';
import type { Piece, When } from '../pieces/pieces.js';
import type { Proposal } from '../proposal.js';
import { firstOf, lineOf, plantsIn } from '../sentences/sentences.js';
import { shareOf } from '../pieces/quantities/shares.js';
import type { Utterance } from '../pieces/utterance.js';

/** A bare reply, with talk behind it at most ("not yet, give them a chance"); the talk names nothing. */
export function proposeReply(
  line: string,
  pieces: readonly Piece[],
  utterance: Utterance,
  note: Note,
): Proposal | undefined {
  // "Three, sorry" with nothing asked puts the last note right.
  if (note.context?.pending === undefined && /^\S+ (?:sorry|oops|whoops)$/.test(line)) return undefined;
  const told = withoutWhichOnes(pieces, utterance, note);
  const whole = proposeAnswer(told === pieces ? line : lineOf(told, utterance), told, note);
  // "Not yet too small".
  const put = /^(?:(?:no|nope|sorry) )?(?:not|none|nothing) yet\b/.exec(line)?.[0];
  const onlyTalk = pieces.every(({ is }) => is === 'word' || is === 'break') && pieces.length <= 12;
  if (!whole && put && onlyTalk && findHits(rules, pieces).length === 0)
    return proposeAnswer('not yet', [], note);
  const cut = pieces.findIndex(({ is }) => is === 'break');
  if (whole || cut <= 0) return whole;
  const rest = pieces.slice(cut);
  // "No, the other way round": put right, not answered.
  const turns = rest.some((_, at) =>
    /^(?:other way|vice versa|wrong way)$/.test(`${wordAt(rest, at)} ${wordAt(rest, at + 1)}`),
  );
  // "2 of 3, only tipped one pot out": what was looked at.
  const onlyLooked =
    wordAt(rest, 1) === 'only' && /^(?:looked|tipped|checked|tried|tested|turned|did)$/.test(wordAt(rest, 2));
  if (onlyLooked && rest.length <= 12 && note.context?.pending?.kind === 'check')
    return proposeAnswer(lineOf(pieces.slice(0, cut), utterance), pieces.slice(0, cut), note);
  const isTalk =
    !turns &&
    rest.every((piece) => piece.is === 'word' || piece.is === 'break') &&
    findHits(rules, rest).length === 0;
  if (!isTalk || rest.length > 12 || rest.some((piece) => piece.is === 'break' && piece.mark === '?'))
    return undefined;
  const first = pieces.slice(0, cut);
  const opening = lineOf(first, utterance);
  const answer = proposeAnswer(opening, first, note);
  // "No, would you give them a chance, not yet".
  const last = pieces.slice(pieces.findLastIndex(({ is }) => is === 'break') + 1);
  const closing = proposeAnswer(lineOf(last, utterance), last, note);
  const opened = String(answer?.slots['value'] ?? 'no');
  if (note.context?.pending && closing?.slots['value'] === 'notYet' && /^(?:no|none)$/.test(opened))
    return closing;
  // "Right, kettle on" opens a talk and answers nothing.
  if (answer?.slots['value'] === 'yes' && OPENERS.test(opening)) return undefined;
  // With nothing asked, only "not yet" can be nothing but an answer.
  return note.context?.pending || answer?.slots['value'] === 'notYet' ? answer : undefined;
}

const OPENERS = /^(?:right|ok|okay|sure|of course|indeed|correct|sorted|absolutely|definitely|y|so|well)$/;

/** Which ones they are that have not, or have: "all bar the two at the back", "everything except two stragglers". */
const WHICH_ONES =
  /^(?:(?:wee|little|small|titchy|scrawny|weak|weedy|limp|sad|slow|poor|daft|sorry|late) )?(?:(?:stragglers?|weaklings?|runts?|duds?|sulkers?|ones?|laggards?|slowcoach(?:es)?)\b ?)?(?:(?:at|in|by|on|near|round|along) (?:the )?(?:far )?(?:back|front|corner|middle|end|ends|side|sides|edge|edges|left|right|bottom|top|outside)(?: of .{1,20})?)?$/;

/** An answer about those asked of, without the words for the ones that were left out. */
function withoutWhichOnes(pieces: readonly Piece[], utterance: Utterance, note: Note): readonly Piece[] {
  const at = pieces.findLastIndex((piece) => piece.is === 'count');
  const piece = pieces[at];
  const isLeftOut = piece?.is === 'count' && piece.quantity.allBut !== undefined;
  if (!isLeftOut || note.context?.pending === undefined || at === pieces.length - 1) return pieces;
  return WHICH_ONES.test(lineOf(pieces.slice(at + 1), utterance)) ? pieces.slice(0, at + 1) : pieces;
}

/** A bare reply, where the note is nothing else. */
export function proposeAnswer(line: string, pieces: readonly Piece[], note: Note): Proposal | undefined {
  if (
    line === '' ||
    line.length > 80 ||
    plantsIn(pieces).length > 0 ||
    pieces.some(({ is }) => is === 'place' || is === 'size' || is === 'celsius')
  )
    return undefined;
  const when = firstOf(pieces, 'when')?.when;
  const rest = when === undefined ? line : lineWithoutTimes(line, when);
  const batch = pendingBatch(note);
  const propose = (value: AnswerValue | undefined, rule: string): Proposal => ({
    kind: 'answer',
    rule,
    slots: { ...(value === undefined ? {} : { value }) },
    draft: { ...(when ? { when } : {}) },
    ...(value === undefined ? { ask: 'value' } : {}),
  });
  const rule = answerRules.find(({ pattern }) => pattern.test(rest) || pattern.test(line));
  if (rule) return propose(rule.value, rule.name);
  const quantity = bareQuantity(pieces, note.context?.pending !== undefined);
  if (!quantity) return undefined;
  if (quantity.whole === 'all') return propose('all', 'all');
  if (quantity.allBut !== undefined || quantity.share) {
    const alive = note.context?.pending?.kind === 'potOn' ? toPotOn(batch) : batch?.count;
    const value = quantity.share
      ? shareOf(alive, quantity.share)
      : alive === undefined
        ? undefined
        : alive - (quantity.allBut ?? 0);
    return propose(
      value !== undefined && value >= 0 ? value : undefined,
      quantity.share ? 'half of them' : 'all but <number>',
    );
  }
  if (
    quantity.more &&
    batch?.rooted !== undefined &&
    quantity.value !== undefined &&
    note.context?.pending?.kind === 'check'
  )
    return propose(batch.rooted + quantity.value, '<number> more');
  if (quantity.value !== undefined && !quantity.negative && !quantity.vague)
    return propose(quantity.value === 0 ? 'none' : quantity.value, '<number>');
  return note.context?.pending || quantity.vague ? propose(undefined, 'a vague number') : undefined;
}

/** Of those that wait to be potted on, where that is known. */
function toPotOn(batch: KnownBatch | undefined): number | undefined {
  const { count, rooted = 0, pottedOn = 0 } = batch ?? {};
  return rooted > pottedOn ? rooted - pottedOn : count;
}

function lineWithoutTimes(line: string, when: When): string {
  return line.replace(when.words.toLowerCase().replace(/\s+/g, ' '), ' ').replace(/\s+/g, ' ').trim();
}

function pendingBatch(note: Note): KnownBatch | undefined {
  const { batches = [], pending } = note.context ?? {};
  if (pending?.batch !== undefined) return batches.find(({ label }) => label === pending.batch);
  return pending && batches.length === 1 ? batches[0] : undefined;
}
