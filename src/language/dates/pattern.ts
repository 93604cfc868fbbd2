/** Rules written as the phrases that they accept. */
import type { Captures, Kind } from './captures.js';
import { canonicalWord } from './words.js';

type Words<S extends string> = S extends `${infer A}|${infer B}` ? A | Words<B> : S;
type Field<S extends string> = S extends `${infer Name}=${infer Alternatives}`
  ? Record<Name, Words<Alternatives>>
  : S extends `${infer Name}:${infer K extends Kind}`
    ? Record<Name, Captures[K]>
    : S extends Kind
      ? Record<S, Captures[S]>
      : never;

/** The fields that a pattern captures, by name; those marked `?` may be absent. */
export type Captured<P extends string> = P extends `${string}<${infer F}>${infer Rest}`
  ? (Rest extends `?${string}` ? Partial<Field<F>> : Field<F>) & Captured<Rest>
  : unknown;

export type Element =
  | { readonly words: ReadonlySet<string>; readonly optional: boolean; readonly name?: string }
  | { readonly kind: Kind; readonly optional: boolean; readonly name: string };

export interface Rule {
  /** A phrase that it accepts. */
  readonly name: string;
  readonly makes: Kind;
  readonly elements: readonly Element[];
  readonly mean: (captured: never) => unknown;
}

/** How many tokens a phrase of time may have; keeps every reading's work bounded. */
export const LONGEST = 24;

/**
 * A rule: `name` is a phrase that it accepts, `pattern` its words in order. `last|past` is either word, `<count>` reads
 * a kind and captures it, `<from:day>` captures it as `from`, `<which=last|next>` captures the word, a trailing `?`
 * makes an element optional. `mean` answers what the phrase means, or null where it means nothing.
 */
export function rule<K extends Kind, P extends string>(
  makes: K,
  name: string,
  pattern: P,
  mean: (captured: Captured<P>) => Captures[K] | null,
): Rule {
  return { name, makes, elements: pattern.split(/ +/).map(element), mean };
}

function element(written: string): Element {
  const optional = written.endsWith('?') && written.length > 1;
  const body = optional ? written.slice(0, -1) : written;
  if (!body.startsWith('<')) return { words: wordSet(body), optional };
  const inner = body.slice(1, -1);
  const [name = '', alternatives] = inner.split('=');
  if (alternatives !== undefined) return { words: wordSet(alternatives), optional, name };
  const [as = '', kind = as] = inner.split(':');
  return { kind: kind as Kind, optional, name: as };
}

function wordSet(alternatives: string): ReadonlySet<string> {
  const words = alternatives.split('|');
  for (const word of words)
    if (canonicalWord(word) !== word) throw new Error(`a pattern writes "${word}" otherwise than words.ts`);
  return new Set(words);
}
