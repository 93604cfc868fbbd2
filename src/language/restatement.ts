/** A whole sentence that says one thing again as it should have been: "no, 3", "it was 6 pots", "the ones I took on Monday were 14". */
import type { Cause } from '../ledger/entry.js';
import { wordAt } from './grammar/rule.js';
import { causes, phraseAt } from './lexicon.js';
import type { Piece, PlantWords, When } from './pieces.js';
import { withoutReasons } from './reasons.js';
import { valueSaid } from './value-said.js';

/** What was restated, and of which entry. */
export interface Restatement {
  readonly set: Readonly<Record<string, unknown>>;
  readonly plant?: PlantWords;
  readonly when?: When;
}

/** Words of second thoughts; each is one way to begin, and several may follow each other. */
const SECOND_THOUGHTS: readonly (readonly string[])[] = [
  ['no', 'wait'], ['no', 'sorry'], ['no'], ['nope'], ['oops'], ['whoops'], ['sorry'], ['wait'], ['actually'], ['correction'],
  ['hang', 'on'], ['hold', 'on'], ['i', 'mean'], ['i', 'meant'], ['my', 'mistake'], ['my', 'bad'], ['mistake'], ['typo'],
  ['i', 'made', 'a', 'mistake'], ['i', 'got', 'that', 'wrong'], ['got', 'that', 'wrong'], ['that', 'was', 'wrong'], ["that's", 'wrong'],
  ['counted', 'again'], ['recounted'], ['just', 'counted'], ['muddled'], ['sorry', 'muddled'], ['on', 'second', 'thoughts'],
  ['tell', 'a', 'lie'], ['or', 'rather'], ['silly', 'me'],
]; // prettier-ignore
const FILLER = /^(?:oh|ah|ok|okay|right|so|and|but|well|damn|argh|please|hmm|hey|then|the)$/;
const POLITE =
  /^(?:start|begin|with|originally|first|please|sorry|thanks|then|in|total|altogether|instead|actually|mate|ok|my|mistake)$/;
const ACTUALLY = /^(?:actually|after all)$/;
const PRONOUN = /^(?:it|that|they|this|those|these)$/;
const WAS = /^(?:was|were)$/;
const BETWEEN =
  /^(?:actually|really|only|just|all|in|fact|on|at|of|the|a|about|meant|to|be|with|into|it|was)$/;
const NOUN = /^(?:cuttings|cutting|plants|them|of|struck|taken|pots|altogether)$/;
const TAKEN = /^(?:take|strike|stick|pot|lose|sell|pinch|plant|move|give|get|do|root|cut)$/;

/**
 * What a whole sentence restates, undefined where it is anything else. `answering`: a prompt waits, so that a bare
 * number is its answer.
 */
export function restatementIn(row: readonly Piece[], answering: boolean): Restatement | undefined {
  const said = withoutReasons(row);
  const pieces = inOrder(said.filter((piece) => !(piece.is === 'break' && !piece.hard)));
  let at = 0;
  // "It's only 58 actually, just counted": a present tense put right on a second look.
  let doubted =
    said.length < row.length ||
    ACTUALLY.test(wordAt(pieces, pieces.length - 1)) ||
    // "They're 11cm pots, not 9", "9cm, not 7".
    pieces.some((_, n) => n > 0 && wordAt(pieces, n) === 'not');
  // "8, I mean" puts right what was told, whatever else waits for a number.
  let meant = false;
  for (;;) {
    const thought = SECOND_THOUGHTS.find((words) =>
      words.every((word, n) => wordAt(pieces, at + n) === word),
    );
    if (thought) {
      at += thought.length;
      doubted = true;
    } else if (wordAt(pieces, at) === 'wrong' && wordAt(pieces, at + 1) !== '') {
      at += 2;
      doubted = true;
    } else if (FILLER.test(wordAt(pieces, at)) && pieces[at + 1]?.is !== 'plant') at++;
    else break;
  }
  // "Three, sorry".
  const behind = secondThoughtBehind(pieces);
  if (behind > 0 && at < pieces.length - behind) {
    pieces.splice(-behind);
    doubted = true;
    meant ||= behind > 1;
  }
  const subject = subjectAt(pieces, at);
  let verb = subject?.to ?? at;
  while (subject && /^(?:actually|really|only|just)$/.test(wordAt(pieces, verb))) verb++;
  const copula = subject?.did ? verb : copulaAt(pieces, verb, doubted);
  if (copula === undefined && (subject !== undefined || !doubted)) return undefined;
  if (copula !== undefined && subject === undefined && !doubted) return undefined;
  const cause = copula === undefined ? undefined : causeAt(pieces, copula);
  if (cause !== undefined && !subject?.plant) return { set: { cause } };
  const value = valueAt(pieces, copula ?? at);
  if (!value) return undefined;
  const kinds = value.kinds;
  const bare = subject === undefined && copula === undefined;
  if (bare && answering && !meant && kinds.every((kind) => kind === 'count' || kind === 'plant'))
    return undefined;
  if (!doubted && kinds.includes('place') && !value.denied) return undefined;
  // "It was eight cuttings of Toucan Tart, not nine": the plant tells which entry.
  if (
    kinds.length > 1 &&
    kinds.includes('plant') &&
    value.denied?.is !== 'plant' &&
    subject?.plant === undefined
  ) {
    const { variety, crop, batch, ...set } = value.set as PlantWords & Record<string, unknown>;
    const plant = {
      ...(variety === undefined ? {} : { variety }),
      ...(crop === undefined ? {} : { crop }),
      ...(batch === undefined ? {} : { batch }),
    };
    return { set, plant };
  }
  return {
    set: value.set,
    ...(subject?.plant ? { plant: subject.plant } : {}),
    ...(value.denied?.is === 'plant' ? { plant: value.denied.plant } : {}),
    ...(subject?.when ? { when: subject.when } : {}),
  };
}

/** How many pieces at the end take back what was said: "three, sorry", "8 I mean". */
function secondThoughtBehind(pieces: readonly Piece[]): number {
  const last = wordAt(pieces, pieces.length - 1);
  if (/^(?:sorry|oops|whoops|rather)$/.test(last)) return 1;
  return /^(?:mean|meant)$/.test(last) && wordAt(pieces, pieces.length - 2) === 'i' ? 2 : 0;
}

/** "Semi-ripe they were" with its subject first. */
function inOrder(pieces: readonly Piece[]): Piece[] {
  const [value, subject, copula, ...rest] = pieces;
  const turned =
    value &&
    subject &&
    copula &&
    value.is !== 'word' &&
    PRONOUN.test(wordAt(pieces, 1)) &&
    WAS.test(wordAt(pieces, 2));
  return turned ? [subject, copula, value, ...rest] : [...pieces];
}

interface Subject {
  readonly to: number;
  /** "I did that": what follows is its day. */
  readonly did?: true;
  readonly plant?: PlantWords;
  readonly when?: When;
}

function subjectAt(pieces: readonly Piece[], from: number): Subject | undefined {
  if (PRONOUN.test(wordAt(pieces, from)) && wordAt(pieces, from + 1) !== 'one') return { to: from + 1 };
  // "I did that on Thursday".
  if (
    /^(?:i|we)$/.test(wordAt(pieces, from)) &&
    wordAt(pieces, from + 1) === 'did' &&
    PRONOUN.test(wordAt(pieces, from + 2)) &&
    pieces[from + 3]?.is === 'when'
  )
    return { to: from + 3, did: true };
  let at = /^(?:the|my|that|those)$/.test(wordAt(pieces, from)) ? from + 1 : from;
  if (/^(?:last|previous)$/.test(wordAt(pieces, at))) at++;
  if (/^(?:one|entry|count|number|total|date|day|place|note|strike)$/.test(wordAt(pieces, at)))
    return at > from ? { to: at + 1 } : undefined;
  const named = pieces[at];
  const plant = named?.is === 'plant' ? named.plant : undefined;
  if (!plant && !/^(?:ones|batch|lot|cuttings)$/.test(wordAt(pieces, at))) return undefined;
  at++;
  if (plant && /^(?:place|count|number|date|day|size|pots|total|entry|strike|note)$/.test(wordAt(pieces, at)))
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

/** Past the words that set subject and value equal; a present tense only after second thoughts. */
function copulaAt(pieces: readonly Piece[], at: number, doubted: boolean): number | undefined {
  const word = wordAt(pieces, at);
  const next = wordAt(pieces, at + 1);
  if (WAS.test(word)) return pastDeed(pieces, at + 1);
  if (/^(?:should|shd|ought)$/.test(word) && /^(?:be|read|say|to)$/.test(next)) return at + 2;
  if (word === 'should' && next === 'have') return at + 3;
  if (doubted && /^(?:is|are|it's|that's|they're)$/.test(word)) return at + 1;
  return undefined;
}

/** "Were taken on Sunday", "was potted on yesterday": past the deed to its day; where no day ends it, past no word. */
function pastDeed(pieces: readonly Piece[], at: number): number {
  const done = pieces[at];
  if (done?.is !== 'word' || done.verb?.form !== 'past' || !TAKEN.test(done.verb.lemma)) return at;
  let day = at + 1;
  while (/^(?:on|up|out|off|back)$/.test(wordAt(pieces, day)) || wordAt(pieces, day) === 'actually') day++;
  return pieces[day]?.is === 'when' ? day : at;
}

/** "It was rot", "that was the slugs", "it was mould, not rot": what did it, and no more. */
function causeAt(pieces: readonly Piece[], from: number): Cause | undefined {
  const start = /^(?:the|just|only)$/.test(wordAt(pieces, from)) ? from + 1 : from;
  const words = pieces.map((_, at) => wordAt(pieces, at));
  const found = phraseAt(causes, words, start);
  if (!found) return undefined;
  let end = start + found.words.length;
  if (pieces[end]?.is === 'break') end++;
  const denied = words[end] === 'not' ? phraseAt(causes, words, end + 1) : undefined;
  if (denied) end += 1 + denied.words.length;
  return end >= pieces.length ? found.value : undefined;
}

interface Value {
  readonly set: Readonly<Record<string, unknown>>;
  readonly kinds: readonly Piece['is'][];
  readonly denied?: Piece;
}

/** The value to the end of the sentence, and the one denied beside it. */
function valueAt(pieces: readonly Piece[], from: number): Value | undefined {
  const set: Record<string, unknown> = {};
  const kinds: Piece['is'][] = [];
  let denied: Piece | undefined;
  for (let at = from; at < pieces.length; at++) {
    const piece = pieces[at];
    if (!piece) break;
    if (piece.is === 'word') {
      const { text } = piece;
      if (/^(?:not|instead)$/.test(text)) {
        at++;
        if (/^(?:of|in|on|the|at)$/.test(wordAt(pieces, at))) at++;
        if (wordAt(pieces, at) === 'the') at++;
        denied = pieces[at];
        if (denied?.is === 'word' && /^(?:tips?|heels?|nodal|basal)$/.test(denied.text)) continue;
        if (!denied || denied.is === 'word') return undefined;
        continue;
      }
      if (
        kinds.length === 0
          ? BETWEEN.test(text)
          : NOUN.test(text) || POLITE.test(text) || /^(?:in|on|at|the|to)$/.test(text)
      )
        continue;
      return undefined;
    }
    const slots = valueSaid(piece);
    if (!slots || Object.keys(slots).some((slot) => slot in set)) return undefined;
    Object.assign(set, slots);
    kinds.push(piece.is);
  }
  if (kinds.length === 0) return undefined;
  // "9 trays not 10", "mist bench 2 not 1": a bare number denies what has a number.
  if (
    denied &&
    denied.is !== 'word' &&
    !kinds.includes(denied.is) &&
    !(denied.is === 'count' && kinds.some((kind) => /^(?:pots|place|size|when)$/.test(kind)))
  )
    return undefined;
  return { set, kinds, ...(denied ? { denied } : {}) };
}
