/** A grammar's rules, found by the words that they begin with and cannot do without. */
import type { Reader } from './alternative.js';
import type { Kind } from './captures.js';
import type { Rule } from './pattern.js';
import type { Token } from './token.js';

export interface Grammar {
  readonly readers: Partial<Record<Kind, Reader>>;
  readonly rules: readonly Rule[];
}

const nowhere: readonly number[] = [];

/** What a phrase cannot do without: of each of these sets of words one, each of these kinds. */
export interface Needs {
  readonly wordSets: readonly number[];
  readonly kinds: readonly Kind[];
}

/** Those of all rules of a kind, by one of their sets of words, so that most of them need not be looked at. */
export interface NeedsOfKind {
  readonly wordless: readonly Needs[];
  readonly byWordSet: readonly (readonly [number, readonly Needs[]])[];
}

/** A grammar with its rules found by the word that a phrase begins with, and its sets of words numbered. */
export class IndexedGrammar {
  readonly readers: Partial<Record<Kind, Reader>>;
  private readonly rules = new Map<Kind, Rule[]>();
  private readonly beginnings = new Map<Kind, Map<string, readonly Rule[]>>();
  private readonly needs = new Map<Rule, Needs>();
  private readonly needsOfKinds = new Map<Kind, NeedsOfKind>();
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

  needsOfKind(kind: Kind): NeedsOfKind {
    let known = this.needsOfKinds.get(kind);
    if (known === undefined) {
      known = byWordSet(this.rulesOf(kind).map((each) => this.needsOf(each)));
      this.needsOfKinds.set(kind, known);
    }
    return known;
  }

  private rulesOf(kind: Kind): readonly Rule[] {
    return this.rules.get(kind) ?? [];
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
      known = this.rulesOf(kind).filter((each) => this.mayBegin(each, token, new Set([kind])));
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
    return this.rulesOf(kind).some((each) => this.mayBegin(each, token, deeper));
  }
}

function byWordSet(all: readonly Needs[]): NeedsOfKind {
  const groups = new Map<number, Needs[]>();
  for (const needs of all) {
    const [wordSet] = needs.wordSets;
    if (wordSet === undefined) continue;
    const group = groups.get(wordSet);
    if (group) group.push(needs);
    else groups.set(wordSet, [needs]);
  }
  return { wordless: all.filter(({ wordSets }) => wordSets.length === 0), byWordSet: [...groups] };
}
