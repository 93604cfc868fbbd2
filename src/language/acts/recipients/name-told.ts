/** The name of whoever plants went to: where it ends, and its words as written. */
import { wordAt } from '../../grammar/rule.js';
import { FOLK, KIN } from '../../mood/somebody-else.js';
import type { Piece } from '../../pieces/pieces.js';
import type { Token } from '../../row/tokens.js';
import { NOBODY, SOMEBODY, STOP } from './words.js';
import { asMeant } from '../../row/spelling/without-slips.js';

/** "Number 42", and no price. */
const isHouse = (piece: Piece | undefined): boolean => piece?.is === 'money' && piece.numbers;

const HOMES = /^(?:good|new|loving|better|care|nursing|retirement|children's|people's)$/;

/** Past the words of the name that begins at `from`. */
export function nameEnd(
  pieces: readonly Piece[],
  from: number,
  to: number,
  tokens: readonly Token[],
): number {
  let at = from;
  for (; at < to; at++) {
    const piece = pieces[at];
    if (!piece || piece.is === 'break' || piece.is === 'when') break;
    if (piece.is === 'money') {
      // "The chap at number 42".
      if (isHouse(piece) && wordAt(pieces, at - 1) === 'at') continue;
      break;
    }
    const afterArticle = at === from + 1 && /^(?:the|a|an|my|our)$/.test(wordAt(pieces, from));
    // "The lads at the allotment".
    const isWhere = /^(?:the|our|my)$/.test(wordAt(pieces, at - 1)) && SOMEBODY.test(wordAt(pieces, at - 3));
    if (piece.is === 'place' && at > from && !afterArticle && !isWhere && !tokens[piece.from]?.capital) break;
    // "Number 12".
    if (piece.is === 'count' && wordAt(pieces, at - 1) === 'number' && at > from) continue;
    if (piece.is === 'count' || piece.is === 'size' || piece.is === 'pots') break;
    if (piece.is === 'plant' && !tokens[piece.from]?.capital) break;
    if (piece.is === 'word' && tokens[piece.from]?.raw === '&') continue;
    if (piece.is === 'word' && at > from && STOP.test(piece.text)) {
      if (piece.text === 'in' && /^laws?$/.test(wordAt(pieces, at + 1))) continue;
      // "To a good home", "to the care home".
      if (piece.text === 'home' && HOMES.test(wordAt(pieces, at - 1))) continue;
      // "People in my form", "the ladies at church" keep their tail.
      if (!(
        /^(?:in|at|from|of)$/.test(piece.text) &&
        (/^(?:my|the|our|his|her|church|work|number|next)$/.test(wordAt(pieces, at + 1)) ||
          isHouse(pieces[at + 1])) &&
        SOMEBODY.test(wordAt(pieces, at - 1))
      ))
        break;
    }
    if (piece.is === 'word' && piece.verb?.form === 'past' && at > from && !tokens[piece.from]?.capital)
      break;
  }
  return at;
}

/** The words [from, to) as a name, as written; undefined where they name nobody. */
export function wordsOf(
  pieces: readonly Piece[],
  from: number,
  to: number,
  tokens: readonly Token[],
  text: string,
): string | undefined {
  const first = pieces[from];
  const last = pieces[to - 1];
  if (!first || !last || to <= from) return undefined;
  if (/^(?:count|size|when|celsius|medium)$/.test(first.is)) return undefined;
  if (to - from === 1 && first.is === 'word' && NOBODY.test(first.text) && !tokens[first.from]?.capital)
    return undefined;
  // "Sold three, I was reading the wrong line".
  if (
    first.is === 'word' &&
    /^(?:i|i'm|i'd|i've|we|we'd|we've|they|they're|it|it's|there|there's)$/.test(first.text)
  )
    return undefined;
  if (
    first.is === 'word' &&
    /^(?:be|go|rot|mould|grow|make|try|keep|use|each|them|it|me|us|see)$/.test(first.text)
  )
    return undefined;
  if (first.is === 'plant' && first.known && !tokens[first.from]?.capital) return undefined;
  const name = asMeant(text, tokens.slice(first.from, last.to), (token) => isNoName(pieces, from, token))
    .replace(/^(?:the|my|our|a|an|poor) /i, '')
    .trim();
  return name === '' ? undefined : name;
}

/** Whether a word is of what somebody is ("my siser", "auntei jean") and no name ("breda" is no bread). */
const isNoName = (pieces: readonly Piece[], from: number, token: Token): boolean =>
  KIN.test(token.text) ||
  FOLK.test(token.text) ||
  [from - 1, from].some((at) => /^(?:the|my|our|his|her|their|a|an|ma|oor)$|'s$/.test(wordAt(pieces, at)));
