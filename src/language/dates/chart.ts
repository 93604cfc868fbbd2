/** Reads tokens by rules: each kind of phrase at each token once, longest first. */
import type { Alternative, Reader } from './alternative.js';
import type { Kind } from './captures.js';
import type { IndexedGrammar, Needs, NeedsOfKind } from './indexed-grammar.js';
import { LONGEST, type Rule } from './pattern.js';
import type { Token } from './token.js';

const nothing: readonly Alternative[] = [];

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

  /** Whether a phrase of the kind may stand somewhere in the text, by the words that it cannot do without. */
  private hasKind(kind: Kind): boolean {
    let known = this.presentKinds.get(kind);
    if (known === undefined) {
      const reader = this.grammar.readers[kind];
      this.presentKinds.set(kind, true); // where a kind needs itself, which keeps a rule too many and never drops one
      known = reader ? this.tokens.some(reader.begins) : this.hasOneOf(this.grammar.needsOfKind(kind));
      this.presentKinds.set(kind, known);
    }
    return known;
  }

  private hasOneOf({ wordless, byWordSet }: NeedsOfKind): boolean {
    for (const needs of wordless) if (this.hasAll(needs)) return true;
    for (const [wordSet, list] of byWordSet)
      if (this.present[wordSet] === 1) for (const needs of list) if (this.hasAll(needs)) return true;
    return false;
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
