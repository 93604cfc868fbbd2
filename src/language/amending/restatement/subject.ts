/** What a restatement is about ("the ones I took on Monday", "those"), and the words that set it equal to its value. */
import { wordAt } from '../../grammar/rule.js';
import type { Piece, PlantWords, When } from '../../pieces/pieces.js';
import { CUT, PRONOUN, TAKEN, WAS } from './words.js';

/** What a restatement is about, up to piece `to`. */
export interface Subject {
  readonly to: number;
  /** "I did that": what follows is its day. */
  readonly did?: true;
  readonly plant?: PlantWords;
  readonly when?: When;
}

/** The subject that begins at a piece; undefined where none does. */
export function subjectAt(pieces: readonly Piece[], from: number): Subject | undefined {
  if (PRONOUN.test(wordAt(pieces, from)) && wordAt(pieces, from + 1) !== 'one') return { to: from + 1 };
  // "I did that on Thursday"; of cuttings that were told before, "actually I took them on Sunday", "… those five on Sunday".
  const deed = pieces[from + 1];
  const then =
    /^(?:those|these|the)$/.test(wordAt(pieces, from + 2)) && pieces[from + 3]?.is === 'count'
      ? from + 4
      : from + 3;
  if (
    /^(?:i|we)$/.test(wordAt(pieces, from)) &&
    (wordAt(pieces, from + 1) === 'did' ||
      (from > 0 && deed?.is === 'word' && deed.verb?.form === 'past' && CUT.test(deed.verb.lemma))) &&
    (PRONOUN.test(wordAt(pieces, from + 2)) || wordAt(pieces, from + 2) === 'them' || then > from + 3) &&
    pieces[then]?.is === 'when'
  )
    return { to: then, did: true };
  const spoken = from > 0 ? spokenOfFirst(pieces, from) : undefined;
  if (spoken) return spoken;
  let at = /^(?:the|my|that|those)$/.test(wordAt(pieces, from)) ? from + 1 : from;
  if (/^(?:last|previous)$/.test(wordAt(pieces, at))) at++;
  if (/^(?:one|entry|count|number|total|date|day|place|note|strike)$/.test(wordAt(pieces, at)))
    return at > from ? { to: at + 1 } : undefined;
  const named = pieces[at];
  // "Monday's lot was seven".
  if (named?.is === 'when' && /^(?:ones|batch|lot|cuttings|strike)$/.test(wordAt(pieces, at + 1)))
    return { to: at + 2, when: named.when };
  const plant = named?.is === 'plant' ? named.plant : undefined;
  if (!plant && !/^(?:ones|batch|lot|cuttings)$/.test(wordAt(pieces, at))) return undefined;
  at++;
  if (
    plant &&
    /^(?:place|count|number|date|day|size|pots|total|entry|strike|note|cuttings|slips|lot|batch)$/.test(
      wordAt(pieces, at),
    )
  )
    at++;
  if (/^(?:that|which)$/.test(wordAt(pieces, at))) at++;
  // "The ones struck on 20 September".
  const done = pieces[at];
  if (done?.is === 'word' && done.verb?.form === 'past' && TAKEN.test(done.verb.lemma)) at++;
  // "… I took on 5 March", "… from Sunday": which entry is meant.
  let when: When | undefined;
  if (/^(?:i|we)$/.test(wordAt(pieces, at))) {
    const verb = pieces[at + 1];
    if (verb?.is !== 'word' || !verb.verb || !TAKEN.test(verb.verb.lemma)) return undefined;
    at += 2;
    if (/^(?:on|up|out|off)$/.test(wordAt(pieces, at)) && pieces[at + 1]?.is !== 'when') at++;
  }
  if (/^(?:from|of|on)$/.test(wordAt(pieces, at))) at++;
  const day = pieces[at];
  if (day?.is === 'when') {
    when = day.when;
    at++;
  }
  if (!plant && !when) return undefined;
  return { to: at, ...(plant ? { plant } : {}), ...(when ? { when } : {}) };
}

/** "Sorry, of the Salt Harrier it was eight": the plant first, then a word for it. */
function spokenOfFirst(pieces: readonly Piece[], from: number): Subject | undefined {
  let at = /^(?:of|for|from|with|by|in|on)$/.test(wordAt(pieces, from)) ? from + 1 : from;
  if (/^(?:the|my)$/.test(wordAt(pieces, at))) at++;
  const named = pieces[at];
  if (named?.is !== 'plant' || !/^(?:it|they|there|that|those|these)$/.test(wordAt(pieces, at + 1)))
    return undefined;
  return { to: at + 2, plant: named.plant };
}

/** Past the words that set subject and value equal; a present tense only after second thoughts. */
export function copulaAt(pieces: readonly Piece[], at: number, doubted: boolean): number | undefined {
  const word = wordAt(pieces, at);
  const next = wordAt(pieces, at + 1);
  if (WAS.test(word)) {
    const value = pastDeed(pieces, at + 1);
    // "The Salt Harrier were potted on yesterday": told for the first time; only the day they were taken is known already.
    const isTelling = value > at + 1 && !doubted && pieces[at - 1]?.is === 'plant' && !isCut(pieces[at + 1]);
    return isTelling ? undefined : value;
  }
  // "That should be it for today" puts nothing right.
  if (word === 'should' && wordAt(pieces, at + 2) === 'it') return undefined;
  if (/^(?:should|shd|ought)$/.test(word) && /^(?:be|read|say|to)$/.test(next)) return at + 2;
  if (word === 'should' && /^(?:have|of|'ve)$/.test(next)) return at + 3;
  if (word === "should've") return at + 2;
  if (doubted && /^(?:is|are|it's|its|that's|they're)$/.test(word)) return at + 1;
  return undefined;
}

const isCut = (piece: Piece | undefined): boolean =>
  piece?.is === 'word' && CUT.test(piece.verb?.lemma ?? '');

/** "Were taken on Sunday", "was potted on yesterday": past the deed to its day; where no day ends it, past no word. */
function pastDeed(pieces: readonly Piece[], at: number): number {
  const done = pieces[at];
  if (done?.is !== 'word' || done.verb?.form !== 'past' || !TAKEN.test(done.verb.lemma)) return at;
  let day = at + 1;
  while (/^(?:on|up|out|off|back)$/.test(wordAt(pieces, day)) || wordAt(pieces, day) === 'actually') day++;
  return pieces[day]?.is === 'when' ? day : at;
}
