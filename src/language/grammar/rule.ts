/** What a rule of the grammar is: a record named like the phrase that it accepts, with the words that carry the act; and what it may ask of a row. */
import type { Care, Cause, EntryKind, Manner } from '../../ledger/entry.js';
import { wordsOf } from '../phrases.js';
import type { Piece } from '../pieces/pieces.js';

/**
 * Where the plant and its number stand: behind the head ("took 5 …"), before it ("5 … rooted"), or whole in the head's
 * own words.
 */
export type Shape = 'object' | 'subject';

/**
 * What the rest of the sentence must know of an act beyond its kind: that it was a `look`, or a look at a `sample`; where
 * the recipient stands; that a `delivery` may name one behind a comma; whence and where to a move goes; that its number is of what is `left`.
 */
export type Sense =
  | 'look'
  | 'sample'
  | 'recipient first'
  | 'recipient within'
  | 'delivery'
  | 'plain move'
  | 'indoors'
  | 'emptying'
  | 'left'
  | 'kept';

export interface Rule {
  readonly name: string;
  /** `aside`: words of doing that log nothing themselves ("kept three"), but name the plant for what follows. */
  readonly kind: EntryKind | 'aside';
  /**
   * The head: words divided by spaces. `pot~` any form of the verb, `pot~past` one form, `on|up` either, `on?` may be
   * absent, `..` up to eight pieces that are no break, `<count>` a piece of that kind, a bare word itself.
   */
  readonly head: string;
  readonly shape: Shape;
  /** Telegraphic: counts only where no other rule speaks in its clause. */
  readonly faint?: true;
  readonly cause?: Cause;
  readonly care?: Care;
  readonly how?: Manner;
  readonly sense?: Sense;
  /** Of a check: what it says without a number. */
  readonly rooted?: 'none' | 'all' | 'some';
  /** What it says of how many, whatever number stands in it ("none survived" tells of all). */
  readonly count?: 'all';
  /** Holds the rule back where its words mean something else; sees the whole row and the head's place in it. */
  readonly unless?: (pieces: readonly Piece[], from: number, to: number) => boolean;
  readonly when?: (pieces: readonly Piece[], from: number, to: number) => boolean;
  /** Phrases that the rule alone must read as `kind`; tests run them. */
  readonly phrasings?: readonly string[];
  /** Phrases that hold its words and must not be read as `kind`. */
  readonly mustNot?: readonly string[];
}

/** Verbs of a head, each in its past form: "moved", "carried". */
export function pastOf(verbs: TemplateStringsArray): string {
  return wordsOf(verbs)
    .map((verb) => `${verb}~past`)
    .join('|');
}

/** The text of a word piece at `at`, else the empty word. */
export function wordAt(pieces: readonly Piece[], at: number): string {
  const piece = pieces[at];
  return piece?.is === 'word' ? piece.text : '';
}

/** Whether one of `kinds` stands among the pieces from `from` up to the next break. */
export function follows(pieces: readonly Piece[], from: number, ...kinds: readonly Piece['is'][]): boolean {
  for (let at = from; at < pieces.length; at++) {
    const piece = pieces[at];
    if (!piece || piece.is === 'break') return false;
    if (kinds.includes(piece.is)) return true;
  }
  return false;
}

/** Where the next piece that names a plant stands; -1 where there is none. */
export function nextPlant(pieces: readonly Piece[], from: number): number {
  for (let at = from; at < pieces.length; at++) if (pieces[at]?.is === 'plant') return at;
  return -1;
}

/** Whether the word, or one of `words`, stands between `from` and the next break. */
export function followsWord(pieces: readonly Piece[], from: number, words: RegExp | string): boolean {
  for (let at = from; at < pieces.length; at++) {
    const piece = pieces[at];
    if (!piece || piece.is === 'break') return false;
    if (piece.is !== 'word') continue;
    if (typeof words === 'string' ? piece.text === words : words.test(piece.text)) return true;
  }
  return false;
}

/** The same before the next deed too, where none of the marks of writing divides them ("… and watered the porch"). */
export const followsInAct = (pieces: readonly Piece[], from: number, words: RegExp): boolean =>
  followsWord(untilNextDeed(pieces, from), from, words);

/** The row up to the next deed behind `from`, marked off by a joint or by who did it. */
export function untilNextDeed(pieces: readonly Piece[], from: number): readonly Piece[] {
  const next = pieces.findIndex(
    (piece, at) =>
      at > from &&
      piece.is === 'word' &&
      piece.verb?.form === 'past' &&
      /^(?:and|then|but|so|i|we|himself|herself)$/.test(wordAt(pieces, at - 1)),
  );
  return next < 0 ? pieces : pieces.slice(0, next);
}

/** Whether a count or plant stands among the `reach` pieces before `from`, back to a break. */
export function precedes(
  pieces: readonly Piece[],
  from: number,
  reach: number,
  ...kinds: readonly Piece['is'][]
): boolean {
  for (let at = from - 1; at >= Math.max(0, from - reach); at--) {
    const piece = pieces[at];
    if (!piece) return false;
    if (piece.is === 'break') {
      // "Sevenoaks Nine: three rooted", "FU36, 24 out": a plant before a single break still counts.
      if (!kinds.includes('plant') || pieces[at - 1]?.is !== 'plant') return false;
      continue;
    }
    if (kinds.includes(piece.is)) return true;
  }
  return false;
}

/** Whether one of `kinds` stands close behind `from`, before a break, a conjunction or another verb. */
export function closeBehind(
  pieces: readonly Piece[],
  from: number,
  ...kinds: readonly Piece['is'][]
): boolean {
  for (let at = from; at < Math.min(pieces.length, from + 7); at++) {
    const piece = pieces[at];
    if (!piece || piece.is === 'break') return false;
    if (kinds.includes(piece.is)) return true;
    if (
      piece.is === 'word' &&
      (/^(?:and|then|but)$/.test(piece.text) || (piece.verb?.form === 'past' && piece.text !== 'rooted'))
    )
      return false;
  }
  return false;
}

/** Whether the head stands at the end of what is said: a break, the end or a time follows. */
export function endsAt(pieces: readonly Piece[], to: number): boolean {
  const piece = pieces[to];
  return (
    !piece ||
    piece.is === 'break' ||
    piece.is === 'when' ||
    (piece.is === 'word' &&
      /^(?:and|but|then|too|now|already|again|altogether|completely|overnight|so|unfortunately|sadly|alas|because|as|on|from|i|which|that)$/.test(
        piece.text,
      ))
  );
}
