/** Sentences that ask for a reminder, or tell an intention with its day. */
import { bareTomorrow } from './bare-chores.js';
import { wholeOf } from '../clauses/clauses.js';
import { draftsOf } from '../acts/drafting.js';
import { findRemind } from '../grammar/remind.js';
import { wordAt } from '../grammar/rule.js';
import type { Note } from '../note.js';
import type { Piece } from '../pieces/pieces.js';
import { droppedPlan } from './plans-dropped.js';
import type { Proposal } from '../proposal.js';
import { nextDoneClause, startOf } from './bounds.js';
import { dayAndTime, isToday } from './day-and-time.js';
import { matterOf } from './matter.js';
import { isNoReminder } from './no-reminder.js';
import { LINE_LIMIT, type Sentence } from '../sentences/sentences.js';
import type { Utterance } from '../pieces/utterance.js';

/** "Saturday job: …", "plan for Sunday: …". */
const HEADED = /^(?:jobs?|plans?|task|tasks|chores?|list|for)$/;

/** A reminder and the part of the sentence before it. */
export function proposeRemind(
  sentence: Sentence,
  utterance: Utterance,
  note: Note,
): { readonly proposals: readonly Proposal[]; readonly before: readonly Piece[] } | undefined {
  const { pieces } = sentence;
  const found = findRemind(pieces) ?? bareTomorrow(pieces);
  const line = sentence.line.slice(0, LINE_LIMIT);
  if (!found || isNoReminder(found, pieces, line)) return undefined;
  const { rule, from, to } = found;
  const isIntended = rule.beforeVerb === true;
  const dropped = isIntended ? droppedPlan(pieces, from, to) : undefined;
  if (dropped && !dropped.instead) return undefined;
  const start = startOf(found, pieces);
  const end = dropped?.at ?? nextDoneClause(pieces, to);
  const own = pieces.slice(start, end);
  const before = pieces.slice(0, start);
  const text = matterOf(pieces.slice(to, end), pieces.slice(start, Math.min(from, end)), utterance);
  // "Remind me at the weekend", of nothing in particular.
  const isBare = /^(?:me|us|please)?$/i.test(text);
  if (isBare && isIntended) return undefined;
  // "Sunday week, half seven, nudge me to …": a sentence that opens with its time.
  const isOpening = before.every(
    ({ is }, at) => is === 'when' || is === 'break' || HEADED.test(wordAt(pieces, at)),
  );
  const { when, time } = dayAndTime(isOpening ? pieces : own, dropped?.instead, line, note);
  // An intention without a day is talk, unless it was asked to be kept.
  if (isIntended && (!when || isToday(when, line, note))) return { proposals: [], before };
  const [plant, another] = draftsOf(own, wholeOf(own)).flatMap((draft) => draft.plant ?? []);
  return {
    proposals: [
      {
        kind: 'remind',
        rule: rule.name,
        slots: { ...(isBare ? {} : { text }), ...(time === undefined ? {} : { time }) },
        draft: { ...(when ? { when } : {}), ...(plant && !another ? { plant } : {}) },
        future: true,
        ...(isBare ? { ask: 'text' } : {}),
      },
    ],
    before,
  };
}
