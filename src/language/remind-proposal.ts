/** Sentences that ask for a reminder, or tell an intention with its day. */
import { addDays } from '../calendar/day.js';
import { localDay, localTime } from '../calendar/zone.js';
import { bareTomorrow } from './bare-chores.js';
import { wholeOf } from './clauses.js';
import { draftsOf } from './drafting.js';
import type { Draft } from './drafting/draft.js';
import { findRemind } from './grammar/remind.js';
import { wordAt } from './grammar/rule.js';
import type { Note } from './note.js';
import type { Piece, PieceOf } from './pieces.js';
import { droppedPlan } from './plans-dropped.js';
import type { Proposal } from './proposal.js';
import { LINE_LIMIT, type Sentence, textOf } from './sentences.js';
import type { Utterance } from './utterance.js';

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
  if (!found) return undefined;
  const line = sentence.line.slice(0, LINE_LIMIT);
  if (
    /\b(?:one|you|people|they|he|she) (?:should|ought to|must|has to|have to)\b/.test(line) &&
    found.rule.beforeVerb
  )
    return undefined;
  const lead = pieces.slice(0, found.from);
  const told = lead.map((_, at) => wordAt(lead, at));
  // "Not today, but I will": what is denied stands before the "but".
  const leadWords = told.slice(told.lastIndexOf('but') + 1);
  if (
    leadWords.some((word) =>
      /^(?:if|says|said|reckons|told|asked|thinks|would|wish|suggested|suggests|apparently|didn't|don't|not|never|might|could|forgot|haven't|wouldn't|forgotten|who|meant|supposed|used|advised|advises|recommends)$/.test(
        word,
      ),
    ) &&
    found.rule.beforeVerb
  )
    return undefined;
  // "I should have potted them on": it was not done, and is not planned. "One should cut": advice.
  if (
    /^(?:should|ought to|would)$/.test(found.rule.words.join(' ')) &&
    (/^(?:have|of|'ve)$/.test(wordAt(pieces, found.to)) ||
      /^(?:one|you|he|she|people|they)$/.test(wordAt(pieces, found.from - 1)))
  )
    return undefined;
  const dropped = found.rule.beforeVerb ? droppedPlan(pieces, found.from, found.to) : undefined;
  if (dropped && !dropped.instead) return undefined;
  // "Don't nag me about these": no reminder is asked for.
  if (!found.rule.beforeVerb && /^(?:don't|not|never|stop|quit)$/.test(wordAt(pieces, found.from - 1)))
    return undefined;
  const bounds = clauseBounds(pieces, found.from);
  // "Sow the sweet peas on Saturday - remind me": of what stands before.
  const trails = !found.rule.beforeVerb && pieces.slice(found.to).every(({ is }) => is === 'break');
  const start = trails ? 0 : found.rule.beforeVerb ? bounds.from : Math.min(bounds.from, found.from);
  const end = dropped?.at ?? nextDoneClause(pieces, found.to);
  const own = pieces.slice(start, end);
  // "Sunday week, half seven, nudge me to …": a sentence that opens with its time.
  const opening = pieces
    .slice(0, start)
    .every(({ is }, at) => is === 'when' || is === 'break' || HEADED.test(wordAt(pieces, at)))
    ? pieces
    : own;
  const times = opening
    .filter((piece): piece is PieceOf<'when'> => piece.is === 'when')
    .map(({ when }) => when);
  const whenDay = dropped?.instead ?? times.find(({ future }) => future !== undefined);
  const named = times.find((each) => each.time !== undefined)?.time;
  // "Tonight at seven" is no morning.
  const evening =
    /\b(?:tonight|this evening|in the evening|after tea|after dinner|this afternoon|pm)\b/.test(line) &&
    !/\b(?:am|morning)\b/.test(line);
  const time =
    named !== undefined && evening && named < '12:00'
      ? `${String(Number(named.slice(0, 2)) + 12).padStart(2, '0')}${named.slice(2)}`
      : named;
  const matter = pieces.slice(found.to, end);
  let text = textOf(stripLead(matter), utterance, (piece) => piece.is === 'when');
  const askedFor = !found.rule.beforeVerb;
  if (text === '')
    text = textOf(
      own.filter((_, n) => n + start < found.from),
      utterance,
      (piece) => piece.is === 'when',
    );
  // "Bring the pellies in on the tenth": the "in" belongs to the bringing.
  const inwards = /^(?:to )?(?:bring|take|get|fetch|move|carry|come)\b.* in$/i.test(text);
  const onwards = /\b(?:pot|potted|potting|repotted|moved|bring|brought) on$/i.test(text);
  text = text
    .replace(
      /^(?:to|about|that|for|i need to|i have to|i must|of|and|on|at|by|i should|me to|please|would you|will you|:)\s+/iu,
      '',
    )
    .replace(
      /[ ,](?:please|pls|would you|will you|thanks|ok|okay|could you|can you|on|at|by|in|for|from|to|before|around|about|until|till|and|or so|if i can)$/iu,
      (tail) => ((inwards && / in$/i.test(tail)) || (onwards && / on$/i.test(tail)) ? tail : ''),
    );
  // "Remind me at the weekend", of nothing in particular.
  const isBare = /^(?:me|us|please)?$/i.test(text);
  if (isBare && !askedFor) return undefined;
  const today = localDay(note.now, note.zone);
  let when = whenDay;
  if (when === undefined && time !== undefined) {
    const passed = time <= localTime(note.now, note.zone);
    const day = passed ? addDays(today, 1) : today;
    when = { past: day, future: day, words: '' };
  }
  // An intention without a day is talk, unless it was asked to be kept.
  if (!askedFor && when === undefined) return { proposals: [], before: pieces.slice(0, start) };
  if (
    !askedFor &&
    when !== undefined &&
    when.future === today &&
    when.past === today &&
    !/\b(?:later|tonight|this (?:evening|afternoon|arvo)|today|after (?:lunch|tea|work|dinner))\b/.test(line)
  )
    return { proposals: [], before: pieces.slice(0, start) };
  const plants = draftsOf(own, wholeOf(own)).flatMap(({ plant }) => (plant ? [plant] : []));
  const draft: Draft = {
    ...(when ? { when } : {}),
    ...(plants.length === 1 && plants[0] ? { plant: plants[0] } : {}),
  };
  return {
    proposals: [
      {
        kind: 'remind',
        rule: found.rule.name,
        slots: { ...(isBare ? {} : { text }), ...(time === undefined ? {} : { time }) },
        draft,
        future: true,
        ...(isBare ? { ask: 'text' } : {}),
      },
    ],
    before: pieces.slice(0, start),
  };
}

function stripLead(pieces: readonly Piece[]): readonly Piece[] {
  let at = 0;
  while (
    at < pieces.length &&
    (pieces[at]?.is === 'when' ||
      pieces[at]?.is === 'break' ||
      /^(?:to|about|that|for|please|and|then|,|also|just|on|at|by)$/.test(wordAt(pieces, at)))
  )
    at++;
  return pieces.slice(at);
}

function clauseBounds(pieces: readonly Piece[], at: number): { from: number } {
  let from = at;
  while (from > 0) {
    const piece = pieces[from - 1];
    if (piece?.is === 'break' || (piece?.is === 'word' && /^(?:and|but|then|so|or)$/.test(piece.text))) break;
    from--;
  }
  return { from };
}

/** Where a clause of things done begins behind the reminder. */
function nextDoneClause(pieces: readonly Piece[], from: number): number {
  for (let at = from; at < pieces.length; at++) {
    const piece = pieces[at];
    const boundary =
      piece?.is === 'break' || (piece?.is === 'word' && /^(?:and|but|then|so|because|as)$/.test(piece.text));
    if (!boundary) continue;
    for (let next = at + 1; next < Math.min(at + 5, pieces.length); next++) {
      const word = pieces[next];
      if (word?.is === 'break') break;
      if (
        word?.is === 'word' &&
        word.verb?.form === 'past' &&
        !/^(?:was|were|had|been|are|is|set|put|cut|has|have|rooted|potted|given|left)$/.test(word.text) &&
        !/^(?:be|get|have)$/.test(wordAt(pieces, next - 1))
      )
        return at;
      if (word?.is === 'word' && /^(?:be|been|get|getting|will|to)$/.test(word.text)) break;
    }
  }
  return pieces.length;
}
