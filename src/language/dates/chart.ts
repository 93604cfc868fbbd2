/** Reads tokens by rules: each kind of phrase at each token once, longest first. */
import type { Kind } from './captures.js';
import { type Element, LONGEST, type Rule } from './pattern.js';
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

/** What a rule has captured so far, latest first. */
interface Link {
  readonly name: string;
  readonly value: unknown;
  readonly part?: Alternative;
  readonly before: Link | null;
}

/** Reads tokens by a grammar; each kind at each token is read once. */
export class Chart {
  private readonly memo = new Map<Kind, (readonly Alternative[] | undefined)[]>();
  private readonly present: ReadonlySet<string>;
  private readonly usable = new Map<readonly Rule[], readonly Rule[]>();
  private readonly presentKinds = new Map<Kind, boolean>();

  constructor(
    private readonly grammar: IndexedGrammar,
    private readonly tokens: readonly Token[],
  ) {
    this.present = new Set(tokens.map((token) => token.word));
  }

  /** The ways to read `kind` at token `at`, longest first, one for each end. */
  read(kind: Kind, at: number): readonly Alternative[] {
    let row = this.memo.get(kind);
    if (row === undefined) this.memo.set(kind, (row = []));
    const known = row[at];
    if (known !== undefined) return known;
    row[at] = nothing; // a rule that begins with its own kind reads nothing
    const reader = this.grammar.readers[kind];
    return (row[at] = reader ? reader.read(this.tokens, at) : this.byRules(kind, at));
  }

  private byRules(kind: Kind, at: number): readonly Alternative[] {
    const token = this.tokens[at];
    if (token === undefined) return nothing;
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
      known = rules.filter((each) =>
        each.elements.every((wanted) => wanted.optional || this.isPresent(wanted)),
      );
      this.usable.set(rules, known);
    }
    return known;
  }

  private isPresent(wanted: Element): boolean {
    if ('words' in wanted) {
      for (const word of wanted.words) if (this.present.has(word)) return true;
      return false;
    }
    const reader = this.grammar.readers[wanted.kind];
    if (!reader) return true;
    let known = this.presentKinds.get(wanted.kind);
    if (known === undefined) {
      known = this.tokens.some(reader.begins);
      this.presentKinds.set(wanted.kind, known);
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

/** A grammar with its rules found by the word that a phrase begins with. */
export class IndexedGrammar {
  readonly readers: Partial<Record<Kind, Reader>>;
  private readonly rules = new Map<Kind, Rule[]>();
  private readonly beginnings = new Map<string, readonly Rule[]>();

  constructor(grammar: Grammar) {
    this.readers = grammar.readers;
    for (const each of grammar.rules) {
      const list = this.rules.get(each.makes);
      if (list) list.push(each);
      else this.rules.set(each.makes, [each]);
    }
  }

  /** The rules of `kind` whose first word may be `token`. */
  rulesThatMayBegin(kind: Kind, token: Token): readonly Rule[] {
    const like = token.likeness;
    if (like === '') return [];
    const key = `${kind} ${like}`;
    let known = this.beginnings.get(key);
    if (known === undefined) {
      known = (this.rules.get(kind) ?? []).filter((each) => this.mayBegin(each, token, new Set([kind])));
      this.beginnings.set(key, known);
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
