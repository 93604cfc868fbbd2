/** Names nobody knows yet: words in a plant's position that are no words of the trade. */
import { wordAt } from './grammar/rule.js';
import { isKnown } from './lexicon.js';
import type { Piece } from './pieces.js';
import type { Token } from './tokens.js';
import { NEVER } from './new-names/no-names.js';
import { isGiverOrTaker } from './new-names/giver-or-taker.js';
import { endsName, inPlantPosition, isComeBy, isCrop } from './new-names/position.js';
import {
  isDayInName,
  isDayOpeningName,
  isMonthOfLot,
  jointInName,
  nameHoldingCrop,
} from './new-names/words-in-names.js';
import { isOnLabel } from './on-label.js';
import { titleCase } from './told-names.js';

/** Turns runs of unknown words behind a count, "cuttings of" or beside a crop into plants. */
export function joinNewNames(
  pieces: readonly Piece[],
  tokens: readonly Token[],
  text: string,
): readonly Piece[] {
  const capitals = tokens.filter(
    ({ capital, start, text: word }) => capital && start > 0 && !/^i(?:'|$)/.test(word),
  ).length;
  const shouted = isShouted(tokens);
  const result: Piece[] = [];
  for (let at = 0; at < pieces.length; at++) {
    const piece = pieces[at];
    if (!piece) continue;
    const holding = nameHoldingCrop(pieces, tokens, at, inPlantPosition(result));
    const length =
      holding > 0 ? holding : nameLength(pieces, tokens, at, result, { lower: capitals === 0, shouted });
    if (length === 0) {
      result.push(piece);
      continue;
    }
    const from = piece.from;
    const last = pieces[at + length - 1];
    const to = last?.to ?? piece.to;
    const start = tokens[from]?.start ?? 0;
    const end = tokens[to - 1]?.end ?? start;
    const name = text.slice(start, end).replace(/'s$/, '').replace(/"/g, '');
    const beside = isCrop(result.at(-1)) || isCrop(pieces[at + length]);
    const single = length === 1 && tokens[from]?.capital === false;
    result.push({
      is: 'plant',
      known: false,
      from,
      to,
      plant:
        single && !beside && looksLikeCrop(name) ? { crop: singular(name) } : { variety: titleCase(name) },
    });
    at += length - 1;
  }
  return result;
}

/** Words that open many a name, yet describe as often: part of a name only before a word nobody knows. */
const OPENERS = /^(?:old|red|white|blue|black|golden|dark|silver|purple|pink|yellow|little|big|lady|mister)$/;

/** Feeds and powders, which have capitals and are no plants. */
const PRODUCT =
  /^(?:tomorite|phostrogen|maxicrop|seasol|clonex|seradix|rootgrow|coolglass|varishade|miracle-gro)$/;

const PLAIN = /^(?:white|red|blue|yellow|purple|orange|pink|black|gold|golden|dark|pale|bright)$/;

function namedAfter(pieces: readonly Piece[], tokens: readonly Token[], at: number): boolean {
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

function nameLength(
  pieces: readonly Piece[],
  tokens: readonly Token[],
  at: number,
  before: readonly Piece[],
  { lower, shouted }: { readonly lower: boolean; readonly shouted: boolean },
): number {
  let length = 0;
  let unknown = 0;
  let capital = 0;
  while (length < 5) {
    const piece = pieces[at + length];
    const isDay =
      length === 0
        ? (before.at(-1)?.is === 'count' ||
            (wordAt(before, before.length - 1) === 'of' && inPlantPosition(before))) &&
          isDayOpeningName(pieces, tokens, at)
        : capital === length && isDayInName(pieces, tokens, at + length);
    if (isDay) {
      capital++;
      length++;
      continue;
    }
    if (piece?.is !== 'word') break;
    const joint = shouted || capital !== length ? 0 : jointInName(pieces, tokens, at + length);
    if (joint > 0) {
      capital += joint;
      length += joint;
      continue;
    }
    const token = tokens[piece.from];
    if (!token || /^(?:i|i'm|i've|i'll|rip)$/.test(token.text) || PRODUCT.test(token.text)) break;
    if (isMonthOfLot(pieces, at + length)) break;
    const isCapital = !shouted && token.capital && piece.from > 0 && !isSentenceStart(tokens, piece.from);
    // "Four parson bright fuchsias": a colour between a word nobody knows and the crop.
    const inside = length > 0 && unknown > 0 && PLAIN.test(token.text) && isCrop(pieces[at + length + 1]);
    if (
      !isCapital &&
      !inside &&
      NEVER.has(token.text) &&
      !(
        OPENERS.test(token.text) &&
        !isCapitalAt(pieces, tokens, at + length + 1) &&
        namedAfter(pieces, tokens, at + length + 1)
      )
    )
      break;
    if (
      !isCapital &&
      piece.verb?.form === 'past' &&
      (length > 0 ||
        // "took Clay Marigold coleus".
        (!shouted && tokens[piece.to]?.capital === true && tokens[piece.to]?.text !== 'i') ||
        before.at(-1)?.is === 'count' ||
        /^(?:those|these|them|of)$/.test(wordAt(before, before.length - 1)))
    )
      break;
    if (!isCapital && capital > 0 && isKnown(token.text)) break;
    if (isCapital) capital++;
    else if (!isKnown(token.text)) unknown++;
    length++;
  }
  if (length === 0) return 0;
  if (isGiverOrTaker(before, pieces.slice(at + length), length, capital === length)) return 0;
  // "Brought home a Salt Harrier from the fair".
  if (capital === length && length > 1 && isComeBy(before) && endsName(pieces, at + length)) return length;
  // "Three rooted Blue Note".
  const rooted =
    capital === length && wordAt(before, before.length - 1) === 'rooted' && before.at(-2)?.is === 'count';
  const position = rooted || inPlantPosition(before);
  // "Quarry Annie dahlia", "Quarry Annie (dahlia)".
  const bracketed = markOf(pieces[at + length]) === '(';
  const besideCrop = isCrop(pieces[at + length + (bracketed ? 1 : 0)]);
  // "Stuck 24 coleus cuttings this morning, Marble Finch", "8 coleus cuttings of Marble Finch".
  const lead = before.at(-1)?.is === 'break' && before.at(-2)?.is === 'when' ? -3 : -2;
  const ofCrop =
    isCrop(before.at(lead)) ||
    (/^(?:cuttings|plugs|plants|tips|slips|shoots)$/.test(wordAt(before, before.length + lead)) &&
      isCrop(before.at(lead - 1)));
  // "Took some mums too, Brindle Toffee".
  const ofCropToo = /^(?:too|also|today)$/.test(wordAt(before, before.length - 2)) && isCrop(before.at(-3));
  const apart =
    capital === length &&
    length > 1 &&
    (ofCrop || ofCropToo) &&
    (wordAt(before, before.length - 1) === 'of' ||
      (before.at(-1)?.is === 'break' &&
        (pieces[at + length] === undefined || pieces[at + length]?.is === 'break')));
  if (apart) return length;
  // "…, Rusty Verger on the label", "…, label says Rusty Verger".
  if (
    capital === length &&
    before.some(isCrop) &&
    isOnLabel([...before, ...pieces.slice(at)], before.length, before.length + length)
  )
    return length;
  // "Oops, that was Marble Wren", "it was Marble Wren, not Ember Fox".
  const behind = pieces[at + length];
  const correcting =
    /^(?:was|were|be|meant|mean|it's|that's|not)$/.test(wordAt(before, before.length - 1)) &&
    capital === length &&
    length > 1 &&
    (behind === undefined || behind.is === 'break' || wordAt(pieces, at + length) === 'not');
  if (correcting) return length;
  // "His old Sexton's Cope mother plant".
  if (
    capital === length &&
    length > 1 &&
    /^(?:tubers?|crowns?|stools|plugs?|liners?)$/.test(wordAt(pieces, at + length))
  )
    return length;
  const stock =
    /^(?:mother|stock|parent)$/.test(wordAt(pieces, at + length)) &&
    !/'s$/.test(wordAt(pieces, at + length - 1));
  if (stock && capital === length && wordAt(pieces, at + length + 1) === 'plant') return length;
  const behindCrop = isCrop(before.at(-1));
  // "Auntie Joan's pelargonium": whose, not which.
  if (besideCrop && /'s$/.test(wordAt(pieces, at + length - 1))) return 0;
  if (besideCrop && (capital > 0 || (unknown > 0 && position))) return length;
  if (behindCrop && capital === length) return length;
  if (behindCrop && unknown > 0 && length >= 2 && inPlantPosition(before.slice(0, -1))) return length;
  // "Ember Fox 10 of 12 have rooted": two capitals that open a sentence, and a number.
  const opens = pieces[at]?.from === 0 || isSentenceStart(tokens, pieces[at]?.from ?? 0);
  const first = tokens[pieces[at]?.from ?? 0];
  if (
    opens &&
    verbOf(pieces[at]) === undefined &&
    !shouted &&
    length > 1 &&
    first?.capital &&
    capital === length - 1 &&
    pieces[at + length]?.is === 'count'
  )
    return length;
  if (!position) return 0;
  if (pieces[at + length]?.is === 'plant' && !besideCrop) return 0;
  if (capital > 0 && capital + unknown === length) return length;
  if (capital > 0) return length;
  if (unknown === length) return length > 1 || looksLikeCrop(wordAt(pieces, at)) ? length : 0;
  if (lower && (unknown > 0 || length >= 2)) return length;
  return 0;
}

/** Written in capitals throughout, so that a capital says nothing. */
function isShouted(tokens: readonly Token[]): boolean {
  return tokens.length > 3 && tokens.every(({ is, raw }) => is !== 'word' || raw === raw.toUpperCase());
}

const markOf = (piece: Piece | undefined) => (piece?.is === 'break' ? piece.mark : undefined);

const verbOf = (piece: Piece | undefined) => (piece?.is === 'word' ? piece.verb : undefined);

function isSentenceStart(tokens: readonly Token[], at: number): boolean {
  const before = tokens[at - 1];
  return !before || before.is === 'line' || /^[.!?]$/.test(before.raw);
}

function looksLikeCrop(name: string): boolean {
  return /(?:ia|um|us|is|a|ea|on|ums|ias|as|ons|wort|berry|bush|ss|grass|mint|bane|flower|daisy|ella)s?$/.test(
    name,
  );
}

function singular(name: string): string {
  const lower = name.toLowerCase();
  return /[^su]s$/.test(lower) ? lower.slice(0, -1) : lower;
}
