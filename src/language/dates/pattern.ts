/** Rules written as the phrases they accept, and the reading of tokens by them. */
import type { Day } from '../../calendar/day.js';
import type { Count } from './numbers.js';
import type { When } from './meaning.js';
import type { Token } from './token.js';
import type { TimeOfDay } from '../../calendar/zone.js';
import { canonicalWord } from './words.js';

export type Unit = 'day' | 'week' | 'fortnight' | 'month' | 'year';
export type SmallUnit = 'hour' | 'minute';
export type DayPart = 'morning' | 'noon' | 'afternoon' | 'evening' | 'night' | 'first';

/** What each `<kind>` of a pattern captures. */
export interface Captures {
  /** Monday 1 to Sunday 7. */
  weekday: number;
  /** "Sundays": counted ones. */
  weekdays: number;
  /** 1–12. */
  month: number;
  unit: Unit;
  /** Weeks and fortnights, which weekdays are counted in. */
  weekUnit: Unit;
  smallUnit: SmallUnit;
  count: Count;
  /** One or two digits, no ordinal. */
  int: number;
  ord: number;
  /** Day of a month, as digits or as an ordinal. */
  dom: number;
  /** The same, only as an ordinal ("3rd", "third"). */
  ordDom: number;
  /** The same in digits: "3rd". */
  digitOrd: number;
  /** Four digits, or in words. */
  year: number;
  /** Just two digits: a year's last, or minutes. */
  shortYear: number;
  /** Four digits that a clock may show. */
  fourDigits: number;
  season: Season;
  holiday: (year: number, zone: string) => Day | null;
  part: DayPart;
  clock: TimeOfDay;
  /** A day of the calendar with its month: "3 May", "3/4/26". */
  calendar: When;
  /** Any single day. */
  day: When;
  /** Any run of days. */
  span: When;
  /** A day or a span. */
  when: When;
  /** What a find in running text is. */
  phrase: When;
  /** What a text that is nothing but one phrase of time may be as well. */
  whole: When;
}

export type Season = 'spring' | 'summer' | 'autumn' | 'winter';
export type Kind = keyof Captures;

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

type Element =
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
const LONGEST = 24;

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
