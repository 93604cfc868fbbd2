/** Replies to a prompt that say more than a bare answer: "yes, into 9cm", "yesterday", "five, and the rest are dead". */
import type { EntryKind } from '../../ledger/entry.js';
import { proposeAnswer } from './answer-proposal.js';
import { wholeOf } from '../clauses/clauses.js';
import type { Draft } from '../acts/drafting/draft.js';
import { draftsOf } from '../acts/drafting.js';
import { plantsWithNumber } from '../acts/elided.js';
import { findHits } from '../grammar/hits.js';
import { rules } from '../grammar/rules.js';
import type { Note } from '../note.js';
import { whole } from '../phrases.js';
import type { Piece } from '../pieces/pieces.js';
import type { Proposal } from '../proposal.js';
import { putOff } from './put-off.js';
import { lineOf, plantsIn } from '../sentences/sentences.js';
import { slotsOf } from '../slots.js';
import type { Utterance } from '../pieces/utterance.js';

export interface FullerReply {
  readonly proposals: readonly Proposal[];
  /** What is left to be read as any note is. */
  readonly rest: readonly Piece[];
}

/** Undefined where the words are no such reply; only what puts a deed off needs no prompt. */
export function fullerReply(
  pieces: readonly Piece[],
  utterance: Utterance,
  note: Note,
): FullerReply | undefined {
  const off = putOff(pieces, utterance, note);
  if (off) return { proposals: off, rest: [] };
  const kind = note.context?.pending?.kind as EntryKind | undefined;
  if (kind === undefined) return undefined;
  const named = ofPlants(kind, pieces, note);
  if (named.length > 0) return { proposals: named, rest: [] };
  const whole = withSlots(kind, pieces) ?? onDay(kind, pieces);
  return whole ? { proposals: [whole], rest: [] } : beforeAnAct(kind, pieces, utterance, note);
}

/** "Ember Fox 5", "Copper Lantern: 4, Marble Wren: 3": plants with their numbers, of what was asked about. */
function ofPlants(kind: EntryKind, pieces: readonly Piece[], note: Note): readonly Proposal[] {
  if (kind !== 'check' && !DONE.test(kind)) return [];
  const row = pieces.filter((piece, at) => piece.is !== 'break' || pieces[at - 1]?.is !== 'plant');
  return plantsWithNumber(row, 0, row.length).map((draft) => ({
    kind: kind === 'potOn' && haveRooted(draft, pieces, note) ? 'check' : kind,
    draft,
    slots: {},
    rule: '<plant> <count>, to a prompt',
  }));
}

/** "All four Tallow Bell now", of which two had rooted: as many have roots, and nobody has potted them. */
function haveRooted({ plant, quantity }: Draft, pieces: readonly Piece[], { context }: Note): boolean {
  const now = pieces.some((piece) => piece.is === 'word' && piece.text === 'now');
  const of = context?.batches?.filter(({ label, variety }) =>
    plant?.batch === undefined ? variety === plant?.variety : label === plant.batch,
  );
  return now && of?.every(({ rooted = 0 }) => rooted < (quantity?.value ?? 0)) === true;
}

const DONE = /^(?:potOn|pinch|hardenOff|plantOut|tend)$/;
const AROUND = whole`
  yes|yeah|yep|yup|aye|ok|okay|done|did|went|put|started|begun|planted|finally|now|i|we|they|they're|are|was|were
  it|them|that|this|all|some|each|own|of|in|into|on|to|up|out|outside|by|along|with|and|the|a
`;

/** "Yes, into 9cm pots", "three of them in the long border": the act asked about, with what it was done with or where. */
function withSlots(kind: EntryKind, pieces: readonly Piece[]): Proposal | undefined {
  const told = { potOn: /^(?:size|medium|pots)$/, plantOut: /^place$/, hardenOff: /^place$/ }[kind as string];
  if (!told?.test(pieces.find(({ is }) => told.test(is))?.is ?? '') || plantsIn(pieces).length > 0)
    return undefined;
  // Put in a bed is planted out, whatever was asked; the act itself is read as any is.
  const isBed = pieces.some(
    (piece) =>
      piece.is === 'place' &&
      /\b(?:bed|border|ground|baskets?|window ?box(?:es)?|urns?|planters?|tubs?|troughs?)$/.test(piece.place),
  );
  const isNamed = pieces.some((piece) => piece.is === 'word' && piece.text === 'planted');
  if (kind !== 'plantOut' && isNamed) return undefined;
  const meant = isBed ? 'plantOut' : kind;
  // "Greenhouse 12" is as warm as that.
  if (pieces.some((piece) => piece.is === 'place' && piece.prep === undefined)) return undefined;
  const isAll = pieces.every(
    (piece) =>
      /^(?:count|size|medium|pots|place|when|break)$/.test(piece.is) ||
      (piece.is === 'word' && AROUND.test(piece.text)),
  );
  const [draft, another] = isAll ? draftsOf(pieces, wholeOf(pieces)) : [];
  if (!draft || another || draft.quantity?.vague) return undefined;
  return { kind: meant, rule: 'yes, into <size>', slots: slotsOf({ kind: meant } as never, draft), draft };
}

const GONE_BY = /^(?:yesterday.*|today|this morning|last .+|.+ ago|earlier.*|just now|the other day)$/i;

const DID =
  /^(?:did|done|started|begun|began|outside|out|it|them|they|they're|that|yes|yeah|yep|on|put|are|were|now|all|i|we|went)$/;

/** "Yesterday", "started on Sunday", "they're outside now": done, and then. */
function onDay(kind: EntryKind, pieces: readonly Piece[]): Proposal | undefined {
  if (!DONE.test(kind)) return undefined;
  const when = pieces.find((piece) => piece.is === 'when')?.when;
  const words = pieces.flatMap((piece) => (piece.is === 'word' ? [piece.text] : []));
  const told =
    pieces.every(({ is }) => is === 'word' || is === 'when' || is === 'break') &&
    words.every((word) => DID.test(word));
  const did = words.some(
    (word) =>
      /^(?:did|done|started|begun|began)$/.test(word) ||
      (kind === 'hardenOff' && /^(?:outside|out)$/.test(word)),
  );
  if (!told || !(did || (when && words.length === 0 && GONE_BY.test(when.words)))) return undefined;
  return { kind: 'answer', rule: 'yesterday', slots: { value: 'yes' }, draft: when ? { when } : {} };
}

const INTERJECTION = /^(?:no|nope|nah|naw|right|ok|okay|yes|yeah|yep|yup|aye|well|so|oh|ah)$/;

const OPENS = /^(?:right|right then|ok|okay|well|so|now|oh|ah)$/;

/** "No, that was Madder Jack": the talk is of another plant than the one asked about. */
function namesAnother(pieces: readonly Piece[], { context }: Note): boolean {
  const asked = context?.batches?.find(({ label }) => label === context.pending?.batch);
  const [first] = plantsIn(pieces);
  // Several wait: what is named is told of, and the word before it answers none.
  if (!first || !asked) return first !== undefined && context?.pending !== undefined;
  const { variety, crop, batch } = first.plant;
  if (batch !== undefined) return batch !== asked.label;
  return variety !== undefined ? variety !== asked.variety : crop !== undefined && crop !== asked.crop;
}

/** "Four and I binned the rest", "did five, lost one": what was asked, then an act in its own words. */
function beforeAnAct(
  kind: EntryKind,
  pieces: readonly Piece[],
  utterance: Utterance,
  note: Note,
): FullerReply | undefined {
  const cut = pieces.findIndex(
    (piece) => piece.is === 'break' || (piece.is === 'word' && /^(?:and|but|then)$/.test(piece.text)),
  );
  const [first, rest] = [pieces.slice(0, cut), pieces.slice(cut + 1)];
  const [act] = findHits(rules, rest);
  if (cut <= 0 || !act || act.rule.kind === kind || act.rule.kind === 'remark') return undefined;
  const line = lineOf(first, utterance);
  // "Right. Moved them to the frame": said before anything.
  if (OPENS.test(line) || (INTERJECTION.test(line) && namesAnother(rest, note))) return undefined;
  const withPlace = withSlots(kind, first);
  if (withPlace) return { proposals: [withPlace], rest };
  const value = proposeAnswer(line, first, note)?.slots['value'];
  if (value === undefined || (kind !== 'check' && !DONE.test(kind))) return undefined;
  const denied = value === 'no' || value === 'none' || value === 'notYet';
  if (denied && kind !== 'check') return undefined;
  const quantity =
    typeof value === 'number' ? { value } : value === 'all' ? { whole: 'all' as const } : undefined;
  if (kind === 'check' && value === 'yes') return undefined;
  const asked: Proposal = {
    kind,
    rule: '<count>, and …',
    slots: denied ? { rooted: 'none' } : {},
    draft: quantity ? { quantity } : {},
  };
  return { proposals: [asked], rest };
}
