/** Where the heads of rules stand in a row of pieces. */
import { wordsOf } from '../phrases.js';
import type { Piece } from '../pieces/pieces.js';
import { type Rule, wordAt } from './rule.js';

export interface Hit {
  readonly rule: Rule;
  /** First piece of the head and the one past its last, gaps included. */
  readonly from: number;
  readonly to: number;
  /** The pieces that the head's own words are, without the gaps. */
  readonly own: readonly number[];
}

/** What may stand in one place of a head: one of these words, of these verbs (`pot~`, `pot~past`) or kinds of piece (`<count>`). */
interface Standing {
  readonly words: ReadonlySet<string>;
  /** By the verb's base form, the forms of it that fit; empty where any does. */
  readonly verbs: ReadonlyMap<string, readonly string[]>;
  readonly kinds: ReadonlySet<string>;
  readonly optional: boolean;
}

type Element = Standing | 'gap';

const compiled = new Map<string, readonly Element[]>();

function elements(head: string): readonly Element[] {
  const known = compiled.get(head);
  if (known) return known;
  const list = head.split(' ').map((part): Element => {
    if (part === '..') return 'gap';
    const optional = part.endsWith('?');
    const alternatives = (optional ? part.slice(0, -1) : part).split('|');
    const kinds = alternatives.filter((each) => each.startsWith('<'));
    const verbs = alternatives.filter((each) => each.includes('~'));
    const words = alternatives.filter((each) => !kinds.includes(each) && !verbs.includes(each));
    return {
      words: new Set(words),
      verbs: formsByVerb(verbs),
      kinds: new Set(kinds.map((kind) => kind.slice(1, -1))),
      optional,
    };
  });
  compiled.set(head, list);
  return list;
}

function formsByVerb(verbs: readonly string[]): ReadonlyMap<string, readonly string[]> {
  const forms = new Map<string, readonly string[]>();
  for (const verb of verbs) {
    const [lemma = '', form = ''] = verb.split('~');
    const before = forms.get(lemma);
    const isAny = form === '' || before?.length === 0;
    forms.set(lemma, isAny ? [] : [...(before ?? []), form]);
  }
  return forms;
}

function fits({ words, verbs, kinds }: Standing, piece: Piece | undefined): boolean {
  if (piece?.is !== 'word') return piece !== undefined && kinds.has(piece.is);
  if (words.has(piece.text)) return true;
  if (verbs.size === 0 || piece.verb === undefined) return false;
  const forms = verbs.get(piece.verb.lemma);
  return forms !== undefined && (forms.length === 0 || forms.includes(piece.verb.form));
}

/** The elements that a match may begin with: the leading optional ones and the first that must stand. */
function openingsOf(list: readonly Element[]): readonly Standing[] {
  const openings: Standing[] = [];
  for (const element of list) {
    if (element === 'gap') break;
    openings.push(element);
    if (!element.optional) break;
  }
  return openings;
}

interface Indexed {
  readonly rule: Rule;
  readonly list: readonly Element[];
  readonly order: number;
  /** What must stand straight behind the first; most heads fail there. */
  readonly second: Standing | undefined;
}

/** Rules by what their heads may open with: a word, a verb's base form, a kind of piece. */
type Index = Readonly<Record<'words' | 'verbs' | 'kinds', ReadonlyMap<string, readonly Indexed[]>>>;

/** The faint rules apart from the others. */
interface Indexes {
  readonly firm: Index;
  readonly faint: Index;
}

const indexes = new WeakMap<readonly Rule[], Indexes>();

function indexesOf(rules: readonly Rule[]): Indexes {
  let known = indexes.get(rules);
  if (!known) {
    known = { firm: indexOf(rules, false), faint: indexOf(rules, true) };
    indexes.set(rules, known);
  }
  return known;
}

function indexOf(rules: readonly Rule[], faint: boolean): Index {
  const index = { words: new Map(), verbs: new Map(), kinds: new Map() } satisfies Record<
    string,
    Map<string, Indexed[]>
  >;
  for (const [order, rule] of rules.entries()) {
    if ((rule.faint ?? false) !== faint) continue;
    const list = elements(rule.head);
    const openings = openingsOf(list);
    const [, next] = list;
    const second = openings.length === 1 && next !== 'gap' && next?.optional === false ? next : undefined;
    for (const by of ['words', 'verbs', 'kinds'] as const)
      for (const key of new Set(openings.flatMap((opening) => [...opening[by].keys()]))) {
        const others: Map<string, Indexed[]> = index[by];
        others.set(key, [...(others.get(key) ?? []), { rule, list, order, second }]);
      }
  }
  return index;
}

const none: readonly Indexed[] = [];

/** The rules whose heads may open with a piece; one that opens with its word and its verb stands there twice. */
function candidatesFor(piece: Piece, index: Index): readonly Indexed[] {
  if (piece.is !== 'word') return index.kinds.get(piece.is) ?? none;
  const byWord = index.words.get(piece.text) ?? none;
  const byVerb = (piece.verb && index.verbs.get(piece.verb.lemma)) ?? none;
  return byWord.length === 0 ? byVerb : byVerb.length === 0 ? byWord : [...byWord, ...byVerb];
}

const GAP_LIMIT = 8;

/** How or when it was done, said in the midst of the words that tell it: "went straight to", "were finally potted on". */
const ASIDES: ReadonlySet<string> = new Set(wordsOf`
  straight straightaway directly immediately promptly duly finally eventually already also quickly hastily actually
  nicely safely gently carefully happily proudly properly successfully literally basically
`);

/** Or the day of it: "are since yesterday in the bed". */
const isAside = (pieces: readonly Piece[], at: number): boolean =>
  ASIDES.has(wordAt(pieces, at)) || pieces[at]?.is === 'when';

function matchAt(
  list: readonly Element[],
  pieces: readonly Piece[],
  start: number,
  from = 0,
): { to: number; own: number[] } | undefined {
  const own: number[] = [];
  let at = start;
  for (let n = from; n < list.length; n++) {
    const element = list[n];
    if (!element) break;
    if (element === 'gap') {
      // What follows a gap may stand at any of the next pieces up to a break; the nearest that lets the rest fit wins.
      for (let next = at; next <= at + GAP_LIMIT; next++) {
        const piece = pieces[next];
        if (!piece || piece.is === 'break') return undefined;
        const rest = matchAt(list, pieces, next, n + 1);
        if (rest) return { to: rest.to, own: [...own, ...rest.own] };
      }
      return undefined;
    }
    while (own.length > 0 && !fits(element, pieces[at]) && isAside(pieces, at)) at++;
    if (fits(element, pieces[at])) {
      own.push(at);
      at++;
    } else if (!element.optional) return undefined;
  }
  return { to: at, own };
}

type Found = Hit & { readonly order: number };

/** Every place where the head of one of these rules stands and nothing holds it back. */
function found(index: Index, pieces: readonly Piece[]): Found[] {
  const hits: Found[] = [];
  for (const [at, piece] of pieces.entries())
    for (const { rule, list, order, second } of candidatesFor(piece, index)) {
      if (second && !fits(second, pieces[at + 1]) && !isAside(pieces, at + 1)) continue;
      const match = matchAt(list, pieces, at);
      if (!match || match.own[0] !== at) continue;
      if (rule.when && !rule.when(pieces, at, match.to)) continue;
      if (rule.unless?.(pieces, at, match.to) === true) continue;
      hits.push({ rule, from: at, to: match.to, own: match.own, order });
    }
  return hits.sort((a, b) => b.own.length - a.own.length || a.order - b.order || a.from - b.from);
}

/**
 * Every place where a rule's head stands, the best at each place: more words first, then the order of the rules; where
 * there is none, the best of the faint.
 */
export function findHits(rules: readonly Rule[], pieces: readonly Piece[]): readonly Hit[] {
  const { firm, faint } = indexesOf(rules);
  const taken = new Set<number>();
  const kept: Hit[] = [];
  for (const hit of found(firm, pieces)) {
    if (hit.own.some((at) => taken.has(at))) continue;
    for (const at of hit.own) taken.add(at);
    kept.push(hit);
  }
  return kept.length > 0 ? kept.sort((a, b) => a.from - b.from) : found(faint, pieces).slice(0, 1);
}
