/** A run of words that may be one name: capitals, words nobody knows, and what names hold between them. */
import { wordAt } from '../../grammar/rule.js';
import { causes, isKnown, phraseAt } from '../../row/lexicon.js';
import type { Piece } from '../../pieces/pieces.js';
import type { Token } from '../../row/tokens.js';
import { NEVER } from './no-names.js';
import { inPlantPosition, isCrop } from './position.js';
import { isDayInName, isDayOpeningName, isMonthOfLot, jointInName } from './words-in-names.js';

/** Where a name may begin. */
export interface NameSeen {
  readonly pieces: readonly Piece[];
  readonly tokens: readonly Token[];
  readonly at: number;
  /** The pieces before it, with the names that they hold. */
  readonly before: readonly Piece[];
  /** Whether the note has no capitals inside it, or nothing else. */
  readonly isLower: boolean;
  readonly isShouted: boolean;
}

export interface Run {
  readonly length: number;
  /** How many of its words nobody knows, and how many are written with a capital. */
  readonly unknown: number;
  readonly capital: number;
}

/** The run, and the piece behind it. */
export interface RunSeen extends NameSeen, Run {
  readonly end: number;
  /** Each of its words has a capital. */
  readonly isCapital: boolean;
}

/** Words that open many a name, yet describe as often: part of a name only before a word nobody knows. */
const OPENERS = /^(?:old|red|white|blue|black|golden|dark|silver|purple|pink|yellow|little|big|lady|mister)$/;

/** Feeds and powders, which have capitals and are no plants. */
const PRODUCT =
  /^(?:tomorite|phostrogen|maxicrop|seasol|clonex|seradix|rootgrow|coolglass|varishade|miracle-gro)$/;

const SMALL =
  /^(?:the|a|an|of|from|off|to|in|into|on|at|with|for|by|and|or|my|our|your|his|her|we|he|she|they|it|that|this|there)$/;

const PLAIN = /^(?:white|red|blue|yellow|purple|orange|pink|black|gold|golden|dark|pale|bright)$/;

function isUnknownAt(pieces: readonly Piece[], tokens: readonly Token[], at: number): boolean {
  const piece = pieces[at];
  if (piece?.is !== 'word') return false;
  const token = tokens[piece.from];
  return token !== undefined && !NEVER.has(token.text) && !isKnown(token.text);
}

/** "The old Brass Kettle": a word in small letters before capitals is no part of the name. */
function isCapitalAt(pieces: readonly Piece[], tokens: readonly Token[], at: number): boolean {
  const piece = pieces[at];
  return piece?.is === 'word' && tokens[piece.from]?.capital === true;
}

/** The words from there on that may be one name: none that no name holds, at most five. */
export function runAt({ pieces, tokens, at, before, isShouted }: NameSeen): Run {
  let length = 0;
  let unknown = 0;
  let capital = 0;
  while (length < 5) {
    const piece = pieces[at + length];
    if (
      length === 0
        ? opensWithDay(pieces, tokens, at, before)
        : capital === length &&
          isDayInName(pieces, tokens, at + length, length === 1 && before.at(-1)?.is === 'count')
    ) {
      capital++;
      length++;
      continue;
    }
    if (piece?.is !== 'word') break;
    const joint = isShouted || capital !== length ? 0 : jointInName(pieces, tokens, at + length);
    if (joint > 0) {
      capital += joint;
      length += joint;
      continue;
    }
    const token = tokens[piece.from];
    if (!token || /^(?:i|i'm|i've|i'll|i'd|rip)$/.test(token.text) || PRODUCT.test(token.text)) break;
    // "Took: From Salt Harrier": a capital because something begins.
    if (length === 0 && SMALL.test(token.text) && tokens[piece.from - 1]?.raw === ':') break;
    if (isMonthOfLot(pieces, at + length)) break;
    // "Five of the coleus mister bobbin same spot".
    if (length > 0 && token.text === 'same' && !token.capital) break;
    // "Lost two grey mould again".
    if (length === 0 && !token.capital && isCause(tokens, piece.from)) break;
    const isCapital = !isShouted && token.capital && piece.from > 0 && !isSentenceStart(tokens, piece.from);
    // "Four parson bright fuchsias": a colour between a word nobody knows and the crop.
    const inside =
      length > 0 &&
      unknown > 0 &&
      (PLAIN.test(token.text)
        ? isCrop(pieces[at + length + 1])
        : SOMEBODY.test(token.text) && endsName(pieces, at + length + 1));
    const opens =
      opensSentence(pieces, tokens, at + length) ||
      isTimeInName(pieces, at + length, before) ||
      (OPENERS.test(token.text) &&
        !isCapitalAt(pieces, tokens, at + length + 1) &&
        isUnknownAt(pieces, tokens, at + length + 1));
    if (!isCapital && !inside && !opens && NEVER.has(token.text)) break;
    // "Took Clay Marigold coleus".
    const isBeforeName = !isShouted && tokens[piece.to]?.capital === true && tokens[piece.to]?.text !== 'i';
    if (!isCapital && piece.verb?.form === 'past' && (length > 0 || isBeforeName || isOfCounted(before)))
      break;
    if (!isCapital && capital > 0 && isKnown(token.text)) break;
    if (isCapital) capital++;
    else if (!isKnown(token.text)) unknown++;
    length++;
  }
  return { length, unknown, capital };
}

/** "Four cuttings of loon lake lady the fuchsia": no lady next door. */
const SOMEBODY = /^(?:lady|lord|lass|girl|boy|man|maid|queen|king|nan|nana|granny)$/;
const endsName = (pieces: readonly Piece[], at: number): boolean =>
  pieces[at]?.is !== 'word' ||
  /^(?:the|in|on|into|under|from|cuttings?|today|thats|that's|its|it's|which)$/.test(wordAt(pieces, at));

/** "Old Tuppence chrysanth: ten cuttings": with a capital before another, as the first words of a note. */
const opensSentence = (pieces: readonly Piece[], tokens: readonly Token[], at: number): boolean => {
  const piece = pieces[at];
  return (
    piece?.is === 'word' &&
    OPENERS.test(piece.text) &&
    (piece.from === 0 || isSentenceStart(tokens, piece.from)) &&
    isCapitalAt(pieces, tokens, at) &&
    isCapitalAt(pieces, tokens, at + 1) &&
    (isCrop(pieces[at + 2]) || (isCapitalAt(pieces, tokens, at + 2) && isCrop(pieces[at + 3])))
  );
};

/** "Took 20 night ferry salvia": a word of the day between what is counted and a word nobody knows, before the crop. */
const isTimeInName = (pieces: readonly Piece[], at: number, before: readonly Piece[]): boolean =>
  /^(?:night|evening|morning|moss|sun|water|house|home)$/.test(wordAt(pieces, at)) &&
  (before.at(-1)?.is === 'count' || wordAt(before, before.length - 1) === 'of') &&
  pieces[at + 1]?.is === 'word' &&
  !NEVER.has(wordAt(pieces, at + 1)) &&
  isCrop(pieces[at + 2]);

/** A cause told in two words or more. */
const isCause = (tokens: readonly Token[], at: number): boolean => {
  const words = tokens.slice(at, at + 4).map(({ text }) => text);
  return (phraseAt(causes, words, 0)?.words.length ?? 0) > 1;
};

const opensWithDay = (
  pieces: readonly Piece[],
  tokens: readonly Token[],
  at: number,
  before: readonly Piece[],
): boolean =>
  (before.at(-1)?.is === 'count' ||
    isCrop(before.at(-1)) ||
    (wordAt(before, before.length - 1) === 'of' && inPlantPosition(before))) &&
  isDayOpeningName(pieces, tokens, at);

const isOfCounted = (before: readonly Piece[]): boolean =>
  before.at(-1)?.is === 'count' || /^(?:those|these|them|of)$/.test(wordAt(before, before.length - 1));

export function isSentenceStart(tokens: readonly Token[], at: number): boolean {
  const before = tokens[at - 1];
  return !before || before.is === 'line' || /^[.!?]$/.test(before.raw);
}

/** The word before a run. */
export const lastWord = ({ before }: RunSeen): string => wordAt(before, before.length - 1);

/** The run ends what is said. */
export const isAtEnd = ({ pieces, end }: RunSeen): boolean =>
  pieces[end] === undefined || pieces[end].is === 'break';
