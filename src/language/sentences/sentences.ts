/** Sentences of a note: their pieces, their words in one line, and the text behind them. */
import { CALLED } from '../grammar/called.js';
import { pastExcuse, withoutExcuse } from './late-telling.js';
import { withoutMarvel } from './marvels.js';
import type { Piece, PieceOf } from '../pieces/pieces.js';
import type { Utterance } from '../pieces/utterance.js';

/** Patterns over a whole line look at no more than this many characters of it. */
export const LINE_LIMIT = 300;

/** No grower tells two things in a sentence of more pieces than these; each joint to part it at costs two readings. */
export const LONGEST_TWOFOLD = 60;

export interface Sentence {
  /** Pieces [from, to) of the row. */
  readonly from: number;
  readonly to: number;
  readonly pieces: readonly Piece[];
  /** Its words as the trade spells them, lower case, one space between, marks left out. */
  readonly line: string;
  readonly asked: boolean;
}

/** The sentences of a row, without the marks between them. */
export function sentencesOf(pieces: readonly Piece[], utterance: Utterance): readonly Sentence[] {
  const sentences: Sentence[] = [];
  let from = 0;
  for (let at = 0; at <= pieces.length; at++) {
    const piece = pieces[at];
    if (piece && !(piece.is === 'break' && piece.hard)) continue;
    if (at > from) {
      const told = pieces.slice(from, at);
      const plain = withoutMarvel(told);
      const row = withoutTalk(plain);
      if (row.length > 0)
        sentences.push({
          from,
          to: at,
          pieces: row,
          line: lineOf(row, utterance),
          // "Gone green?? Not purple any more": astonishment, no question.
          asked: piece?.is === 'break' && piece.mark === '?' && !isAgain(pieces[at + 1]) && plain === told,
        });
    }
    from = at + 1;
  }
  return sentences;
}

const isAgain = (piece: Piece | undefined): boolean => piece?.is === 'break' && /^[?!]$/.test(piece.mark);

const BEFORE =
  /^(?:right|ok|okay|so|oh|ah|hey|hi|hello|hiya|yeah|anyway|anyways|listen|omg|arra|och|ach|nvm)$/;
const BEHIND = new RegExp(`^(?:lol|lmao|haha|ha|omg|xx?|thanks|ta|cheers|${CALLED})$`);
/** "Gave two to my pal", "they are dear": no call to somebody. */
const OWNS =
  /^(?:a|an|the|my|our|your|his|her|that|this|to|for|with|from|is|are|was|were|so|very|too|and|or|old|hot|another)$/;

/** A sentence without the talk that leads into it and rounds it off ("right so …", "… lol"). */
function withoutTalk(row: readonly Piece[]): readonly Piece[] {
  let from = 0;
  let to = row.length;
  const text = (at: number): string => {
    const piece = row[at];
    return piece?.is === 'word' ? piece.text : '';
  };
  while (
    from < to - 1 &&
    (BEFORE.test(text(from)) || (from > 0 && row[from]?.is === 'break')) &&
    !/^(?:far|long|much|many|side|now)$/.test(text(from + 1))
  )
    from++;
  from += pastExcuse(row.slice(from, to));
  while (
    to > from + 1 &&
    ((BEHIND.test(text(to - 1)) && !OWNS.test(text(to - 2))) ||
      (to < row.length && row[to - 1]?.is === 'break'))
  )
    to--;
  // "I meant lost two of them", "meant sold two": the deed told again.
  const behind = text(from) === 'meant' ? from + 1 : from + 2;
  const deed = behind + (/^(?:i|we)$/.test(text(behind)) ? 1 : 0);
  const again = row[deed];
  if (
    (text(from) === 'meant' || (text(from) === 'i' && /^(?:meant|mean)$/.test(text(from + 1)))) &&
    again?.is === 'word' &&
    again.verb?.form === 'past' &&
    !/^(?:was|were|be|is|are)$/.test(again.text)
  )
    from = deed;
  return withoutExcuse(pastBidding(row.slice(from, to)));
}

const BIDS_TO_NOTE =
  /^(?:(?:can|could|would|will) you |please |pls |just )*(?:put|note|log|record|jot|write|mark)(?: down| it down)?$/;
const MEANT_TO_SAY = /^(?:(?:i|we) )?(?:meant|wanted|was going) to (?:say|tell you|mention)$/;

/** "Can you put down that I misted everything", "meant to say I lost two" from what is to be noted. */
function pastBidding(row: readonly Piece[]): readonly Piece[] {
  const words = row.slice(0, 8).map((piece) => (piece.is === 'word' ? piece.text : '?'));
  const at = words.findIndex((word, n) => {
    const lead = words.slice(0, n).join(' ');
    return /^(?:that|i|we|i've|we've)$/.test(word) && (BIDS_TO_NOTE.test(lead) || MEANT_TO_SAY.test(lead));
  });
  if (at >= 0) return row.slice(words[at] === 'that' ? at + 1 : at);
  // "Can you log 3 Salt Harrier cuttings for me, inserted on Sunday".
  const told = words.findIndex((_, n) => BIDS_TO_LOG.test(words.slice(0, n).join(' ')) && namesLot(row, n));
  if (told < 0) return row;
  // Put down for somebody: ordered, it may be.
  return words[told - 1] === 'down' ? row.slice(told) : withoutForMe(row.slice(told));
}

const BIDS_TO_LOG =
  /^(?:please )?(?:can|could|would|will) (?:you|u) (?:please |pls |just |kindly )*(?:note|log|record|enter|register|(?:put|jot|write|mark|get|take)(?: that)? down)$/;

/** A number or a plant, past its article. */
function namesLot(row: readonly Piece[], at: number): boolean {
  const isArticle = row[at]?.is === 'word' && /^(?:the|my|our|a|another)$/.test(row[at].text);
  return /^(?:count|plant|cutting|pots)$/.test(row[isArticle ? at + 1 : at]?.is ?? '');
}

/** "Put down three Salt Harrier for me": for whom it is noted. */
function withoutForMe(row: readonly Piece[]): readonly Piece[] {
  const at = row.findIndex(
    (piece, n) =>
      piece.is === 'word' &&
      piece.text === 'for' &&
      row[n + 1]?.is === 'word' &&
      FOR_ME.test(wordOf(row[n + 1])),
  );
  return at < 0 ? row : [...row.slice(0, at), ...row.slice(at + 2)];
}

const FOR_ME = /^(?:me|us)$/;
const wordOf = (piece: Piece | undefined): string => (piece?.is === 'word' ? piece.text : '');

/** The runs between the marks of a row, hard or not; none is empty. */
export function partsAtMarks(pieces: readonly Piece[]): readonly (readonly Piece[])[] {
  const parts: Piece[][] = [[]];
  for (const piece of pieces) {
    if (piece.is === 'break') parts.push([]);
    else parts.at(-1)?.push(piece);
  }
  return parts.filter((part) => part.length > 0);
}

/** A run of pieces as a sentence of its own. */
export function sentenceOf(pieces: readonly Piece[], utterance: Utterance, asked = false): Sentence {
  return { from: 0, to: pieces.length, pieces, line: lineOf(pieces, utterance), asked };
}

/** What stands in a line for a plant: a name may hold any word ("Quiet Ferry", "Not Dave"), and patterns must not see it. */
const NAMELESS = 'plantname';

/** The words of a run of pieces, lower case, marks left out, plants nameless. */
export function lineOf(pieces: readonly Piece[], utterance: Utterance): string {
  const words: string[] = [];
  for (const piece of pieces) {
    if (piece.is === 'plant') words.push(NAMELESS);
    else
      for (let at = piece.from; at < piece.to; at++) {
        const token = utterance.tokens[at];
        if (token && token.is !== 'line' && (token.is !== 'mark' || token.text === '%'))
          words.push(token.text);
      }
  }
  return words.join(' ');
}

/** The text as written behind pieces [from, to), without those that `leaveOut` names, trimmed of marks at its ends. */
export function textOf(
  pieces: readonly Piece[],
  utterance: Utterance,
  leaveOut: (piece: Piece) => boolean = () => false,
): string {
  const parts: string[] = [];
  let start: number | undefined;
  let end = 0;
  for (const piece of pieces) {
    if (leaveOut(piece)) {
      if (start !== undefined) parts.push(utterance.text.slice(start, end));
      start = undefined;
      continue;
    }
    start ??= utterance.tokens[piece.from]?.start ?? 0;
    end = utterance.tokens[piece.to - 1]?.end ?? end;
  }
  if (start !== undefined) parts.push(utterance.text.slice(start, end));
  return trimmed(
    parts
      .map((part) => part.trim())
      .filter((part) => part !== '')
      .join(' ')
      // "Take a dozen (next Saturday), should the weather hold": no gap before the mark.
      .replace(/ (?=[,;])/g, ''),
  );
}

export function trimmed(text: string): string {
  return text.replace(/^[\s,.:;!?"'()-]+/u, '').replace(/(?<![\s,.:;!?"'()-])[\s,.:;!?"'()-]+$/u, '');
}

export function plantsIn(pieces: readonly Piece[]): readonly PieceOf<'plant'>[] {
  return pieces.filter((piece): piece is PieceOf<'plant'> => piece.is === 'plant');
}

export function firstOf<Is extends Piece['is']>(pieces: readonly Piece[], is: Is): PieceOf<Is> | undefined {
  return pieces.find((piece): piece is PieceOf<Is> => piece.is === is);
}
