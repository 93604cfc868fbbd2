/** Where a reminder begins and ends in its sentence. */
import type { FoundRemind } from '../grammar/remind.js';
import { wordAt } from '../grammar/rule.js';
import type { Piece } from '../pieces/pieces.js';

/** Where the clause of the words that ask for it begins. */
export function startOf({ rule, from, to }: FoundRemind, pieces: readonly Piece[]): number {
  // "Sow the sweet peas on Saturday - remind me": of what stands before.
  if (!rule.beforeVerb && pieces.slice(to).every(({ is }) => is === 'break')) return 0;
  let start = from;
  while (
    start > 0 &&
    pieces[start - 1]?.is !== 'break' &&
    !/^(?:and|but|then|so|or)$/.test(wordAt(pieces, start - 1))
  )
    start--;
  // "Salt Harrier wants feeding": the plant before it is meant.
  if (/^(?:needs?|wants?)$/.test(rule.name)) return start;
  let cue = from;
  while (/^(?:i|we|i'm|am|and|so)$/.test(wordAt(pieces, cue - 1))) cue--;
  return endsDeed(pieces, start, cue) ? cue : start;
}

/** What a row may open with before its deed. */
const BEFORE_DEED = /^(?:i|we|i've|we've|just|also|then|today|right|so|ok|have)$/;
const DEEDS =
  /^(?:pot|repot|take|strike|stick|move|shift|water|mist|feed|sell|give|pinch|plant|lose|bin|check|vent|shade|cover|look)$/;

/** "Potted on the Salt Harrier will do the Tallow Bell tomorrow", "six have rooted going to pot them on": no joint between deed and plan. */
function endsDeed(pieces: readonly Piece[], from: number, to: number): boolean {
  const lead = pieces.slice(from, to);
  let at = 0;
  while (lead[at]?.is === 'when' || BEFORE_DEED.test(wordAt(lead, at))) at++;
  const verb = lead[at];
  const isDone =
    verb?.is === 'word' &&
    verb.verb?.form === 'past' &&
    DEEDS.test(verb.verb.lemma) &&
    wordAt(lead, at + 1) !== 'to';
  const hasRooted = lead[0]?.is === 'count' && wordAt(lead, lead.length - 1) === 'rooted';
  return lead.some(({ is }) => is === 'plant') && (isDone || hasRooted);
}

/** Where a clause of things done begins behind the reminder. */
export function nextDoneClause(pieces: readonly Piece[], from: number): number {
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

/** A day to come, told by itself: "at five" may be an hour of the day before it. */
const isDayToCome = (piece: Piece): boolean =>
  piece.is === 'when' && piece.when.future !== undefined && piece.when.time === undefined;

/** Where chores begin that have a day of their own, behind one that has another: "pot them on Saturday, and feed the rest Sunday". */
export function choresApart(
  pieces: readonly Piece[],
  start: number,
  from: number,
  end: number,
): readonly number[] {
  const found: number[] = [];
  let since = start;
  for (let at = from; at < end; at++) {
    if (pieces[at]?.is !== 'break' && !/^(?:and|then)$/.test(wordAt(pieces, at))) continue;
    let verb = at + 1;
    while (pieces[verb]?.is === 'when' || /^(?:and|then|to|on|also)$/.test(wordAt(pieces, verb))) verb++;
    const chore = pieces[verb];
    const isChore = verb < end && chore?.is === 'word' && chore.verb?.form === 'base';
    if (!isChore || !pieces.slice(since, at).some(isDayToCome) || !pieces.slice(at, end).some(isDayToCome))
      continue;
    found.push(at);
    since = at;
    at = verb;
  }
  return found;
}
