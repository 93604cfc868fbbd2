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
import { choresApart, nextDoneClause, startOf } from './bounds.js';
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
  const before = pieces.slice(0, start);
  // "Sunday week, half seven, nudge me to …": a sentence that opens with its time.
  const isOpening = before.every(
    ({ is }, at) => is === 'when' || is === 'break' || HEADED.test(wordAt(pieces, at)),
  );
  const [first = end, ...later] = dropped ? [] : choresApart(pieces, isOpening ? 0 : start, to, end);
  const own = pieces.slice(start, first);
  const text = matterOf(pieces.slice(to, first), pieces.slice(start, Math.min(from, first)), utterance);
  // "Remind me at the weekend", of nothing in particular.
  const isBare = /^(?:me|us|please)?$/i.test(text);
  if (isBare && isIntended) return undefined;
  const { when, time } = dayAndTime(isOpening ? pieces.slice(0, first) : own, dropped?.instead, line, note);
  // An intention without a day is talk, unless it was asked to be kept.
  if (isIntended && (!when || isToday(when, line, note))) return { proposals: [], before };
  const others = [first, ...later].filter((at) => at < end);
  return {
    proposals: [
      {
        kind: 'remind',
        rule: rule.name,
        slots: { ...(isBare ? {} : { text }), ...(time === undefined ? {} : { time }) },
        draft: { ...(when ? { when } : {}), ...plantAlone(own) },
        future: true,
        ...(isBare ? { ask: 'text' } : {}),
      },
      ...others.map((at, n) =>
        choreApart(pieces.slice(at, others[n + 1] ?? end), rule.name, utterance, note),
      ),
    ],
    before,
  };
}

/** The one plant that the pieces name. */
function plantAlone(pieces: readonly Piece[]): Pick<Proposal['draft'], 'plant'> {
  const [plant, another] = draftsOf(pieces, wholeOf(pieces)).flatMap((draft) => draft.plant ?? []);
  return plant && !another ? { plant } : {};
}

/** "…, and feed the Tallow Bell on Sunday": a chore with a day of its own is a reminder of its own. */
function choreApart(pieces: readonly Piece[], rule: string, utterance: Utterance, note: Note): Proposal {
  const { when } = dayAndTime(pieces, undefined, '', note);
  return {
    kind: 'remind',
    rule,
    slots: { text: matterOf(pieces, [], utterance) },
    draft: { ...(when ? { when } : {}), ...plantAlone(pieces) },
    future: true,
  };
}
