/** What a sentence sets against what it denies: "it was frost, not slugs", "it was Ines I gave them to, not Idris". */
import type { Day } from '../../calendar/day.js';
import type { Span } from '../../calendar/span.js';
import { wordAt } from '../grammar/rule.js';
import { joinContainers } from '../joined/containers.js';
import { causes, cuttingTypes, phraseAt, type PhraseTable } from '../row/lexicon.js';
import type { Note } from '../note.js';
import type { Piece, PlantWords } from '../pieces/pieces.js';
import { firstOf, sentencesOf, textOf } from '../sentences/sentences.js';
import { type Utterance, utteranceOf } from '../pieces/utterance.js';
import { valueSaid } from '../pieces/value-said.js';

/** A phrase in every way that it can be meant; `count` also where it may be the number of a size. */
export interface Claims {
  readonly count?: number;
  readonly pots?: number;
  readonly potSize?: string;
  readonly date?: Day | Span;
  readonly place?: string;
  readonly medium?: string;
  readonly cutting?: string;
  readonly cause?: string;
  readonly variety?: string;
  /** As written, without "the" and "to". */
  readonly words?: string;
}

export interface Contrast {
  readonly said: Claims;
  readonly denied: Claims;
  /** What else the sentence names, which tells the entry that is meant. */
  readonly plant?: PlantWords;
  readonly date?: Day | Span;
  /** The words, in small letters, that are no part of either side and mean something of their own. */
  readonly left: readonly string[];
  /** The places and temperatures that it tells of besides. */
  readonly elsewhere: readonly (string | number)[];
}

/** More than this is no correction. */
const LONGEST = 24;
const LEAD =
  /^(?:no|nope|oops|whoops|sorry|wait|actually|hang|hold|on|oh|ah|and|but|well|damn|argh|typo|my|mistake|bad)$/;
const FRAME =
  /^(?:it|it's|that|that's|they|they're|was|were|wasn't|weren't|is|are|isn't|the|a|an|to|in|on|at|for|with|from|of|by|into|but|actually|really|should|have|been|be|i|meant|mean|said|says|reads|called|named|spelt|spelled|went|gone|only|just)$/;
/** Words besides that mean nothing of their own in a correction. */
const IDLE =
  /^(?:who|whom|which|them|those|these|this|there|did|do|got|get|had|has|you|he|him|she|her|we|us|i've|i'd|our|my|ones?|number|count|date|day|place|size|label|lot|batch|cuttings|pots?|end|please|though|mate|all|then|when|where|what|so)$/;

/** "Change slugs to rot". */
const CHANGE =
  /^(?:please |can you |pls )?(?:change|correct|alter|amend) (?:the |that )?(?!it\b)(\S.{0,30}?) (?:to|into) (?:the )?(\S.{0,30}?)(?: please)?[.!]?$/i;

/** "I told you 15 got potted on yesterday but there were only 14". */
const SAID =
  /^(?!.*\b(?:now|left|still)\b)(?:sorry,? |no,? |(?:(?:i|we)(?:['’]ve)? )?just (?:noticed|seen|spotted|realised|realized) (?:that )?)?(?:i|we) (?:said|told you|put|wrote|logged|noted|typed) (.{1,60}?)(?:,? but|,) (?:really |actually )?(?:(?:it|there|they|that) (?:was|were|is|are|should be|should have been)|(?:it|they) (?:actually |really )?(?:went|live|stand) (?:in|into|on|onto|to|under)|it['’]s|they['’]re|they['’]d|they had|there['’]s|that['’]s) (?:only |really |actually |just )*([^,;.!?]{1,20}?)(?: (?:in|on) (?:the|it|there)\b[^,;.!?]{0,20})?[.!]?$/i;

/** "Did I say 12? I think I took 11". */
const ASKED =
  /^(?:oh,? |sorry,? |hang on,? |wait,? )?did (?:i|we) (?:really )?(?:say|put|write|log|tell you) (.{1,30}?)[?,.]? ?(?:no,? |sorry,? )?(?:(?:i|we) (?:think|reckon|believe) )?(?:(?:i|we) (?:only )?(?:meant|took|struck|lost|sold|gave|potted on|potted|planted)|(?:it|there|they|that) (?:was|were|is|are|should be|should have been)|(?:it|that)['’]s|should be|make (?:it|that)) (?:only |really |actually |just )*([^,;.!?]{1,20}?)(?: of (?:them|those))?[.!]?$/i;

/** The one contrast of a note that says nothing else; undefined where it makes none. */
export function contrastIn(note: Note): Contrast | undefined {
  const text = note.text.trim();
  const changed = CHANGE.exec(text) ?? SAID.exec(text) ?? ASKED.exec(text);
  if (changed) {
    const [before, behind] = [1, 2].map((n) => partsOf({ ...note, text: changed[n] ?? '' }));
    return (
      before &&
      behind && {
        said: behind.claims,
        denied: before.claims,
        left: [...before.left, ...behind.left],
        elsewhere: behind.claims.place === undefined ? whereIn(before.pieces) : [],
      }
    );
  }
  if (!/\b(?:not|never|instead of|rather than)\b|n['’]t\b/i.test(note.text)) return undefined;
  const utterance = utteranceOf(note);
  const [sentence, another] = sentencesOf(joinContainers(utterance.pieces), utterance);
  if (!sentence || another || sentence.asked || sentence.pieces.length > LONGEST) return undefined;
  const { pieces } = sentence;
  const not = pieces.findLastIndex((_, at) => deniesAt(pieces, at) > 0);
  if (not < 0) return undefined;
  const from = not + deniesAt(pieces, not);
  const behind = endOf(pieces, from);
  const whole = pieces.slice(from, behind);
  const isDeed = DID_NOT.test(wordAt(pieces, not)) || /^(?:did|have)$/.test(wordAt(pieces, not - 1));
  const deed = isDeed ? whole.length : deedAt(whole);
  const denied = whole.slice(0, deed);
  const told = pieces.slice(behind).filter(({ is }) => is !== 'break');
  const rest = told.every((_, at) => LEAD.test(wordAt(told, at))) ? [] : told;
  const ahead = pieces.slice(0, not);
  const said = saidBeside(rest.length > 0 ? rest : ahead, rest.length > 0, utterance);
  if (denied.length === 0 || !said) return undefined;
  const { variety, ...others }: Claims = claimsOf(withoutFrame(denied), utterance);
  // "I didn't take the Tallow Bell on Sunday, it was Saturday": the plant tells which entry.
  const tellsWhich = variety !== undefined && said.variety === undefined && isContrast(said, others);
  const claims: Claims = tellsWhich || variety === undefined ? others : { ...others, variety };
  const before = [...ahead, ...(tellsWhich ? denied : []), ...whole.slice(deed)];
  const [plant, otherPlant] = claims.variety === undefined ? before.filter(({ is }) => is === 'plant') : [];
  const when = claims.date === undefined ? firstOf(before, 'when') : undefined;
  if (otherPlant) return undefined;
  const besides = [...before, ...(isDeed && !tellsWhich ? denied : []), ...rest];
  return {
    said,
    denied: claims,
    left: wordsLeft(besides),
    elsewhere: claims.place === undefined ? whereIn(besides) : [],
    ...(plant?.is === 'plant' ? { plant: plant.plant } : {}),
    ...(when && when.when.past !== undefined && when.when.past !== 'ask' ? { date: when.when.past } : {}),
  };
}

const whereIn = (pieces: readonly Piece[]): readonly (string | number)[] =>
  pieces.flatMap<string | number>((piece) =>
    piece.is === 'place' ? piece.place : piece.is === 'celsius' ? piece.celsius : [],
  );

/** What a few words can be meant as. */
export function claimsIn(note: Note): Claims {
  return partsOf(note).claims;
}

function partsOf(note: Note): {
  readonly pieces: readonly Piece[];
  readonly claims: Claims;
  readonly left: readonly string[];
} {
  const utterance = utteranceOf(note);
  const pieces = joinContainers(utterance.pieces);
  return { pieces, claims: claimsOf(withoutFrame(pieces), utterance), left: wordsLeft(pieces) };
}

/** The words of a row that are no frame, doubt, cause or cutting type. */
function wordsLeft(pieces: readonly Piece[]): readonly string[] {
  const words = pieces.map((_, at) => wordAt(pieces, at));
  const told = new Set(
    words.flatMap((_, at) =>
      [phraseAt(causes, words, at), phraseAt(cuttingTypes, words, at)].flatMap((found) => found?.words ?? []),
    ),
  );
  return words.filter(
    (word) => word !== '' && !FRAME.test(word) && !LEAD.test(word) && !IDLE.test(word) && !told.has(word),
  );
}

const DID_NOT = /^(?:didn't|haven't|never)$/;

/** Whether both sides tell of the same: a number, a day, a place. */
const isContrast = (said: Claims, denied: Claims): boolean =>
  (['count', 'pots', 'potSize', 'date', 'place', 'medium', 'cutting', 'cause'] as const).some(
    (slot) => said[slot] !== undefined && denied[slot] !== undefined,
  );

/** How many pieces say "not" there; 0 where none do. */
function deniesAt(pieces: readonly Piece[], at: number): number {
  const word = wordAt(pieces, at);
  if (/^(?:not|wasn't|weren't|isn't)$/.test(word)) return 1;
  // "I didn't lose two"; "didn't get to them" denies no deed that was told.
  if (DID_NOT.test(word) && !/^(?:get|go|see|manage|have|say|know|think|want)$/.test(wordAt(pieces, at + 1)))
    return 1;
  const two = `${word} ${wordAt(pieces, at + 1)}`;
  return two === 'instead of' || two === 'rather than' ? 2 : 0;
}

/** Where the denied phrase ends: before a comma, "but" or "it was". */
function endOf(pieces: readonly Piece[], from: number): number {
  const end = pieces.findIndex(
    (piece, at) =>
      at > from && (piece.is === 'break' || /^(?:but|it|it's|that|they)$/.test(wordAt(pieces, at))),
  );
  return end < 0 ? pieces.length : end;
}

/** Who did it, or "that": where the deed begins behind what a cleft sentence puts first. */
const SUBJECT = /^(?:i|we|you|he|she|that|who|which|they)(?:'(?:s|ve|d|re))?$/;

/** "Sunday | I took the Tallow Bell", "Sunday | the Tallow Bell were taken": where the deed begins that tells which entry is meant. */
function deedAt(denied: readonly Piece[]): number {
  const isNamed = denied[0]?.is === 'plant' || denied[1]?.is === 'plant';
  const at = denied.findIndex(
    (piece, n) => n > 0 && (SUBJECT.test(wordAt(denied, n)) || (!isNamed && piece.is === 'plant')),
  );
  return at < 0 ? denied.length : at;
}

/** The phrase that is said: of what follows the denied one all, else the end of what stands before it, or behind "it was". */
function saidBeside(row: readonly Piece[], isBehind: boolean, utterance: Utterance): Claims | undefined {
  const pieces = row.filter(({ is }, at) => is !== 'break' && !(at < 5 && LEAD.test(wordAt(row, at))));
  const cleft = pieces.findIndex((_, at) => at > 0 && SUBJECT.test(wordAt(pieces, at)));
  const opens = /^(?:it|it's|that|that's|they|was)$/.test(wordAt(pieces, 0));
  const phrase = withoutFrame(opens && cleft > 1 && !isBehind ? pieces.slice(0, cleft) : pieces);
  const last = phrase.findLastIndex((_, at) => FRAME.test(wordAt(phrase, at)));
  const words = phrase.slice(last + 1);
  if (phrase.length === 0) return undefined;
  const { words: written, ...own } = claimsOf(words, utterance);
  const known = claimsOf(phrase, utterance);
  return { ...known, ...own, ...(words.length > 0 && words.length < 4 && written ? { words: written } : {}) };
}

function withoutFrame(pieces: readonly Piece[]): readonly Piece[] {
  const from = pieces.findIndex((_, at) => !FRAME.test(wordAt(pieces, at)));
  return from < 0 ? [] : pieces.slice(from);
}

function claimsOf(pieces: readonly Piece[], utterance: Utterance): Claims {
  const claims: Record<string, unknown> = {};
  for (const piece of pieces) {
    if (piece.is !== 'plant') Object.assign(claims, valueSaid(piece));
    else if (piece.plant.variety !== undefined) claims['variety'] = piece.plant.variety;
  }
  const tokens = pieces.flatMap(({ from, to }) => utterance.tokens.slice(from, to).map(({ text }) => text));
  const found = <Value>(table: PhraseTable<Value>) =>
    tokens.flatMap((_, at) => phraseAt(table, tokens, at) ?? []).at(-1)?.value;
  const cause = found(causes);
  const cutting = found(cuttingTypes);
  const words = textOf(pieces, utterance);
  return {
    ...claims,
    ...(cause === undefined ? {} : { cause }),
    ...(cutting === undefined ? {} : { cutting }),
    ...(words === '' ? {} : { words }),
  };
}
