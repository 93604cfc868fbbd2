/** What reading a kind of phrase at a token yields. */
import type { Token } from './token.js';

/** One way to read a kind from a token on: where it ends (exclusive), what it means, by which rule. */
export interface Alternative {
  readonly end: number;
  readonly value: unknown;
  /** Empty for words read by code. */
  readonly rule: string;
  /** What it is made of. */
  readonly parts?: readonly Alternative[];
}

/** The names of the rules that read a phrase, outermost first; a rule with an empty name only passes on. */
export function rulesOf(read: Alternative): string[] {
  const inner = (read.parts ?? []).flatMap(rulesOf);
  return read.rule === '' ? inner : [read.rule, ...inner];
}

export type Primitive = (tokens: readonly Token[], at: number) => readonly Alternative[];

/** A kind that is read by code, and whether it may begin with a token. */
export interface Reader {
  readonly read: Primitive;
  readonly begins: (token: Token) => boolean;
}
