/** A word that may have been misheard, as the records see it: itself, and its neighbours by how far off they stand. */
import { verbSense } from '../lexicon.js';
import type { Token } from '../tokens.js';

/** Says something of the token at a place in the row. */
export type Standing = (at: number) => boolean;

/** How far back an act may stand that a number belongs to, and a giving that a recipient does. */
const ACT_REACH = 14;
const GIVING_REACH = 8;

const ACT = /^(?:take|strike|stick|insert|cut|lose|pot|bin)$/;
const GIVING = /^(?:give|sell|send|swap|hand|pass|donate|flog|dispatch|post|deliver)$/;
const MOVING = /^(?:move|shift|carry|bring|take|cart|lug|haul|transfer|pop|put|go|relocate|shove|bung)$/;
const DAY =
  /^(?:(?:mon|tues|wednes|thurs|fri|satur|sun)day|yesterday|morning|afternoon|evening|night|arvo|\d|days|ago)$/;
const OPENER = /^(?:and|then|i|we|today|also|so|just|yesterday|morning)$/;

/** One word and its neighbours. Offsets count from the word: -1 is the one before it, 1 the one behind. */
export class HeardView {
  readonly #tokens: readonly Token[];
  readonly #at: number;
  readonly #isName: Standing;
  readonly #isPlant: Standing;
  readonly #isPlace: Standing;

  constructor(tokens: readonly Token[], at: number, isName: Standing, isPlant: Standing, isPlace: Standing) {
    this.#tokens = tokens;
    this.#at = at;
    this.#isName = isName;
    this.#isPlant = isPlant;
    this.#isPlace = isPlace;
  }

  get heard(): string {
    return this.word(0);
  }

  /** The text there; empty beyond the ends. */
  word(offset: number): string {
    return this.#tokens[this.#at + offset]?.text ?? '';
  }

  /** What kind of token stands there; undefined beyond the ends. */
  kind(offset: number): Token['is'] | undefined {
    return this.#tokens[this.#at + offset]?.is;
  }

  /** The base form of the verb there; empty where it is none. */
  verb(offset: number): string {
    return verbSense(this.word(offset))?.lemma ?? '';
  }

  /** Whether a word of a known name stands there. */
  isName(offset: number): boolean {
    return this.#isName(this.#at + offset);
  }

  /** Whether a plant's name or crop begins there. */
  isPlant(offset: number): boolean {
    return this.#isPlant(this.#at + offset);
  }

  /** Whether a place begins there. */
  isPlace(offset: number): boolean {
    return this.#isPlace(this.#at + offset);
  }

  /** Whether one of `words` stands from one offset up to another, which is left out. */
  within(from: number, to: number, words: RegExp): boolean {
    // A negative place would count from the end of the row.
    const [first, last] = [from, to].map((offset) => Math.max(0, this.#at + offset));
    return this.#tokens.slice(first, last).some(({ text }) => words.test(text));
  }

  get clauseStart(): boolean {
    return this.#isEdge(-1) || OPENER.test(this.word(-1)) || this.#isPastDay;
  }

  /** "On Sunday too of them rooted": straight behind the day that opens the row. */
  get #isPastDay(): boolean {
    let offset = -1;
    while (DAY.test(this.word(offset)) && !this.isName(offset)) offset--;
    return offset < -1 && this.#isEdge(/^(?:on|last)$/.test(this.word(offset)) ? offset - 1 : offset);
  }

  #isEdge(offset: number): boolean {
    const kind = this.kind(offset);
    return kind === undefined || kind === 'mark' || kind === 'line';
  }

  /** Whether cuttings were taken, potted or lost earlier in the sentence. */
  get actBefore(): boolean {
    return this.#verbBefore(ACT, ACT_REACH, ({ is, raw }) => is === 'mark' && /^[.!?;]$/.test(raw));
  }

  /** Whether a verb of giving stands earlier in the clause. */
  get gaveBefore(): boolean {
    return this.#verbBefore(GIVING, GIVING_REACH, ({ is }) => is === 'mark');
  }

  /** Whether a verb of carrying stands earlier in the clause. */
  get movedBefore(): boolean {
    return this.#verbBefore(MOVING, GIVING_REACH, ({ is }) => is === 'mark');
  }

  #verbBefore(verbs: RegExp, reach: number, isBarrier: (token: Token) => boolean): boolean {
    for (let offset = -1; offset >= -reach; offset--) {
      const token = this.#tokens[this.#at + offset];
      if (!token || isBarrier(token)) return false;
      if (verbs.test(this.verb(offset))) return true;
    }
    return false;
  }
}
