/** Where the heads of rules stand in a row of pieces. */
import type { Piece } from '../pieces.js';
import { type Rule, wordAt } from './rule.js';

export interface Hit {
  readonly rule: Rule;
  /** First piece of the head and the one past its last, gaps included. */
  readonly from: number;
  readonly to: number;
  /** The pieces that the head's own words are, without the gaps. */
  readonly own: readonly number[];
}

type Element =
  | { readonly test: (piece: Piece) => boolean; readonly optional: boolean; readonly key: string }
  | { readonly gap: true };

const compiled = new Map<string, readonly Element[]>();

function elements(head: string): readonly Element[] {
  const known = compiled.get(head);
  if (known) return known;
  const list = head.split(' ').map((part): Element => {
    if (part === '..') return { gap: true };
    const optional = part.endsWith('?');
    const body = optional ? part.slice(0, -1) : part;
    const tests = body.split('|').map(alternative);
    return { optional, key: body, test: (piece) => tests.some((test) => test(piece)) };
  });
  compiled.set(head, list);
  return list;
}

function alternative(text: string): (piece: Piece) => boolean {
  if (text.startsWith('<')) {
    const is = text.slice(1, -1);
    return (piece) => piece.is === is;
  }
  const [lemma, form] = text.split('~');
  if (form !== undefined)
    return (piece) =>
      piece.is === 'word' && piece.verb?.lemma === lemma && (form === '' || piece.verb?.form === form);
  return (piece) => piece.is === 'word' && piece.text === text;
}

/** The elements that a match may begin with: the leading optional ones and the first that must stand. */
function openingsOf(list: readonly Element[]): readonly Exclude<Element, { readonly gap: true }>[] {
  const openings: Exclude<Element, { readonly gap: true }>[] = [];
  for (const element of list) {
    if ('gap' in element) break;
    openings.push(element);
    if (!element.optional) break;
  }
  return openings;
}

interface Indexed {
  readonly rule: Rule;
  readonly list: readonly Element[];
  readonly order: number;
}

const indexes = new WeakMap<readonly Rule[], ReadonlyMap<string, readonly Indexed[]>>();

/** Rules by what their heads may open with: a word, a verb's base form, a kind of piece. */
function openingIndex(rules: readonly Rule[]): ReadonlyMap<string, readonly Indexed[]> {
  const known = indexes.get(rules);
  if (known) return known;
  const index = new Map<string, Indexed[]>();
  for (const [order, rule] of rules.entries()) {
    const list = elements(rule.head);
    const keys = new Set(
      openingsOf(list).flatMap(({ key }) =>
        key.split('|').map((part) => (part.includes('~') ? `${part.split('~')[0]}~` : part)),
      ),
    );
    const indexed = { rule, list, order };
    for (const key of keys) index.set(key, [...(index.get(key) ?? []), indexed]);
  }
  indexes.set(rules, index);
  return index;
}

function candidatesFor(
  piece: Piece,
  index: ReadonlyMap<string, readonly Indexed[]>,
): Iterable<Indexed> | undefined {
  if (piece.is !== 'word') return index.get(`<${piece.is}>`);
  const byWord = index.get(piece.text);
  const byVerb = piece.verb && index.get(`${piece.verb.lemma}~`);
  return byWord && byVerb ? new Set([...byWord, ...byVerb]) : (byWord ?? byVerb);
}

const GAP_LIMIT = 8;

/** How or when it was done, said in the midst of the words that tell it: "went straight to", "were finally potted on". */
const ASIDE =
  /^(?:straight|straightaway|directly|finally|eventually|already|also|duly|promptly|nicely|safely|gently|carefully|happily|proudly|quickly|hastily|actually|properly|successfully|literally|basically|immediately)$/;

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
    if ('gap' in element) {
      // What follows a gap may stand at any of the next pieces up to a break; the nearest that lets the rest fit wins.
      for (let next = at; next <= at + GAP_LIMIT; next++) {
        const piece = pieces[next];
        if (!piece || piece.is === 'break') return undefined;
        const rest = matchAt(list, pieces, next, n + 1);
        if (rest) return { to: rest.to, own: [...own, ...rest.own] };
      }
      return undefined;
    }
    while (own.length > 0 && ASIDE.test(wordAt(pieces, at)) && !testsAt(element, pieces, at)) at++;
    const piece = pieces[at];
    if (piece && element.test(piece)) {
      own.push(at);
      at++;
    } else if (!element.optional) return undefined;
  }
  return { to: at, own };
}

function testsAt(
  { test }: Exclude<Element, { readonly gap: true }>,
  pieces: readonly Piece[],
  at: number,
): boolean {
  const piece = pieces[at];
  return piece !== undefined && test(piece);
}

/** Every place where a rule's head stands, the best at each place: more words first, then the order of the rules. */
export function findHits(rules: readonly Rule[], pieces: readonly Piece[]): readonly Hit[] {
  const hits: (Hit & { readonly order: number })[] = [];
  const index = openingIndex(rules);
  for (let at = 0; at < pieces.length; at++) {
    const piece = pieces[at];
    if (!piece) continue;
    for (const { rule, list, order } of candidatesFor(piece, index) ?? []) {
      const match = matchAt(list, pieces, at);
      if (!match || match.own[0] !== at) continue;
      if (rule.unless?.(pieces, at, match.to) === true) continue;
      if (rule.when && !rule.when(pieces, at, match.to)) continue;
      hits.push({ rule, from: at, to: match.to, own: match.own, order });
    }
  }
  if (hits.length === 0) return hits;
  hits.sort(
    (a, b) =>
      Number(a.rule.faint ?? false) - Number(b.rule.faint ?? false) ||
      b.own.length - a.own.length ||
      a.order - b.order ||
      a.from - b.from,
  );
  const taken = new Set<number>();
  const kept: Hit[] = [];
  for (const hit of hits) {
    if (hit.own.some((at) => taken.has(at))) continue;
    if (hit.rule.faint && kept.length > 0) continue;
    for (const at of hit.own) taken.add(at);
    kept.push(hit);
  }
  return kept.sort((a, b) => a.from - b.from);
}
