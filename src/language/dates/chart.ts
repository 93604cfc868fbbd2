/** Reads tokens by rules: each kind of phrase at each token once, longest first. */
import type { Kind } from './captures.js';
import { LONGEST, type Rule } from './pattern.js';
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

export interface Grammar {
  readonly readers: Partial<Record<Kind, Reader>>;
  readonly rules: readonly Rule[];
}

const nothing: readonly Alternative[] = [];
const nowhere: readonly number[] = [];

/** What a rule has captured so far, latest first. */
interface Link {
  readonly name: string;
  readonly value: unknown;
  readonly part?: Alternative;
  readonly before: Link | null;
}

/** What was read of a kind, by token. */
interface ReadOf {
  readonly reader: Reader | undefined;
  readonly at: (readonly Alternative[] | undefined)[];
}

/** Reads tokens by a grammar; each kind at each token is read once. */
export class Chart {
  private readonly memo = new Map<Kind, ReadOf>();
  /** 1 for each set of words of which one stands in the text, by its number. */
  private readonly present: Uint8Array;
  private readonly usable = new Map<readonly Rule[], readonly Rule[]>();
  private readonly presentKinds = new Map<Kind, boolean>();

  constructor(
    private readonly grammar: IndexedGrammar,
    private readonly tokens: readonly Token[],
  ) {
    this.present = grammar.presentIn(tokens);
  }

  /** The ways to read `kind` at token `at`, longest first, one for each end. */
  read(kind: Kind, at: number): readonly Alternative[] {
    const token = this.tokens[at];
    if (token === undefined) return nothing;
    let of = this.memo.get(kind);
    if (of === undefined) {
      of = { reader: this.grammar.readers[kind], at: new Array(this.tokens.length).fill(undefined) };
      this.memo.set(kind, of);
    }
    if (of.reader === undefined && token.likeness === '') return nothing;
    const known = of.at[at];
    if (known !== undefined) return known;
    of.at[at] = nothing; // a rule that begins with its own kind reads nothing
    return (of.at[at] = of.reader ? of.reader.read(this.tokens, at) : this.byRules(kind, token, at));
  }

  private byRules(kind: Kind, token: Token, at: number): readonly Alternative[] {
    const rules = this.usableOf(this.grammar.rulesThatMayBegin(kind, token));
    if (rules.length === 0) return nothing;
    const byEnd = new Map<number, Alternative>();
    for (const each of rules) this.apply(each, 0, at, at, null, byEnd);
    if (byEnd.size < 2) return [...byEnd.values()];
    return [...byEnd.values()].sort((a, b) => b.end - a.end);
  }

  /** Of some rules those whose every indispensable word stands somewhere in the text; saves the work of the rest. */
  private usableOf(rules: readonly Rule[]): readonly Rule[] {
    let known = this.usable.get(rules);
    if (known === undefined) {
      known = rules.filter((each) => this.hasAll(this.grammar.needsOf(each)));
      this.usable.set(rules, known);
    }
    return known;
  }

  private hasAll({ wordSets, kinds }: Needs): boolean {
    for (let at = 0; at < wordSets.length; at++) if (this.present[wordSets[at] as number] === 0) return false;
    for (let at = 0; at < kinds.length; at++) if (!this.hasKind(kinds[at] as Kind)) return false;
    return true;
  }

  private hasKind(kind: Kind): boolean {
    let known = this.presentKinds.get(kind);
    if (known === undefined) {
      const reader = this.grammar.readers[kind];
      known = reader === undefined || this.tokens.some(reader.begins);
      this.presentKinds.set(kind, known);
    }
    return known;
  }

  private apply(
    by: Rule,
    next: number,
    at: number,
    start: number,
    link: Link | null,
    found: Map<number, Alternative>,
  ): void {
    const wanted = by.elements[next];
    if (wanted === undefined) {
      if (at > start && !found.has(at)) finish(by, at, link, found);
      return;
    }
    const token = at - start < LONGEST ? this.tokens[at] : undefined;
    if (token !== undefined) {
      if ('words' in wanted) {
        if (wanted.words.has(token.word)) {
          const more =
            wanted.name === undefined ? link : { name: wanted.name, value: token.word, before: link };
          this.apply(by, next + 1, at + 1, start, more, found);
        }
      } else {
        for (const each of this.read(wanted.kind, at)) {
          const more = { name: wanted.name, value: each.value, part: each, before: link };
          this.apply(by, next + 1, each.end, start, more, found);
        }
      }
    }
    if (wanted.optional) this.apply(by, next + 1, at, start, link, found);
  }
}

function finish(by: Rule, end: number, last: Link | null, found: Map<number, Alternative>): void {
  const captured: Record<string, unknown> = {};
  const parts: Alternative[] = [];
  for (let link = last; link !== null; link = link.before) {
    captured[link.name] = link.value;
    if (link.part) parts.unshift(link.part);
  }
  const value = by.mean(captured as never);
  if (value !== null) found.set(end, { end, value, rule: by.name, parts });
}

/** What a phrase cannot do without: of each of these sets of words one, each of these kinds. */
interface Needs {
  readonly wordSets: readonly number[];
  readonly kinds: readonly Kind[];
}

/** A grammar with its rules found by the word that a phrase begins with, and its sets of words numbered. */
export class IndexedGrammar {
  readonly readers: Partial<Record<Kind, Reader>>;
  private readonly rules = new Map<Kind, Rule[]>();
  private readonly beginnings = new Map<Kind, Map<string, readonly Rule[]>>();
  private readonly needs = new Map<Rule, Needs>();
  private readonly numbers = new Map<string, number>();
  private readonly numbersByWord = new Map<string, number[]>();

  constructor(grammar: Grammar) {
    this.readers = grammar.readers;
    for (const each of grammar.rules) {
      const list = this.rules.get(each.makes);
      if (list) list.push(each);
      else this.rules.set(each.makes, [each]);
      const wanted = each.elements.filter(({ optional }) => !optional);
      this.needs.set(each, {
        wordSets: wanted.flatMap((one) => ('words' in one ? [this.numberOf(one.words)] : [])),
        kinds: wanted.flatMap((one) => ('words' in one ? [] : [one.kind])),
      });
    }
  }

  needsOf(by: Rule): Needs {
    return this.needs.get(by) as Needs;
  }

  presentIn(tokens: readonly Token[]): Uint8Array {
    const present = new Uint8Array(this.numbers.size);
    for (const { word } of tokens)
      for (const number of this.numbersByWord.get(word) ?? nowhere) present[number] = 1;
    return present;
  }

  /** The number of a set of words, the same for the same words. */
  private numberOf(words: ReadonlySet<string>): number {
    const key = [...words].join('|');
    const known = this.numbers.get(key);
    if (known !== undefined) return known;
    const number = this.numbers.size;
    this.numbers.set(key, number);
    for (const word of words) {
      const others = this.numbersByWord.get(word);
      if (others) others.push(number);
      else this.numbersByWord.set(word, [number]);
    }
    return number;
  }

  /** The rules of `kind` whose first word may be `token`. */
  rulesThatMayBegin(kind: Kind, token: Token): readonly Rule[] {
    const like = token.likeness;
    if (like === '') return [];
    let ofKind = this.beginnings.get(kind);
    if (ofKind === undefined) this.beginnings.set(kind, (ofKind = new Map()));
    let known = ofKind.get(like);
    if (known === undefined) {
      known = (this.rules.get(kind) ?? []).filter((each) => this.mayBegin(each, token, new Set([kind])));
      ofKind.set(like, known);
    }
    return known;
  }

  private mayBegin(by: Rule, token: Token, visited: ReadonlySet<Kind>): boolean {
    for (const each of by.elements) {
      if ('words' in each ? each.words.has(token.word) : this.kindMayBegin(each.kind, token, visited))
        return true;
      if (!each.optional) return false;
    }
    return false;
  }

  private kindMayBegin(kind: Kind, token: Token, visited: ReadonlySet<Kind>): boolean {
    const reader = this.readers[kind];
    if (reader) return reader.begins(token);
    if (visited.has(kind)) return false;
    const deeper = new Set([...visited, kind]);
    return (this.rules.get(kind) ?? []).some((each) => this.mayBegin(each, token, deeper));
  }
}
