/** The words of the trade and of notes about it, indexed once from the project's shared word lists. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Cause, CuttingType } from '../../ledger/entry.js';

interface WordLists {
  readonly crops: readonly { readonly name: string; readonly also: readonly string[] }[];
  /** Genera and common names beyond the contract's list; singular, lower case. */
  readonly otherCrops: readonly string[];
  /** Base form → the forms that the regular endings do not give; the first is the past. */
  readonly verbs: Readonly<Record<string, readonly string[]>>;
  /** Abbreviation or habitual misspelling → the word or words meant. */
  readonly spellings: Readonly<Record<string, string>>;
  readonly placeNouns: readonly string[];
  readonly places: readonly string[];
  readonly causes: Readonly<Record<string, readonly string[]>>;
  readonly cuttings: Readonly<Record<string, readonly string[]>>;
  readonly media: readonly string[];
  /** Everyday words that spelling repair must leave alone. */
  readonly everyday: readonly string[];
}

export const lists: WordLists = JSON.parse(
  readFileSync(join(import.meta.dirname, '../../../shared/lexicon.json'), 'utf8'),
) as WordLists;

export type VerbForm = 'base' | 's' | 'past' | 'ing';
export interface VerbSense {
  readonly lemma: string;
  readonly form: VerbForm;
}

const VOWEL = /[aeiou]/;
/** "Pot", "quit": what ends in one vowel and one consonant doubles it ("potted"); "root" and "dust" never do. */
const DOUBLES = /^(?:qu|[^aeiou])*[aeiou][bdfgk-nprtvz]$/;
const OF_ONE_VOWEL = /^(?:qu|[^aeiouy])*[aeiouy]+[^aeiouy]*e?$/;

function regularForms(base: string): readonly (readonly [string, VerbForm])[] {
  const stem = base.endsWith('e') ? base.slice(0, -1) : base;
  const consonantY = base.endsWith('y') && !VOWEL.test(base.at(-2) ?? '');
  const past = base.endsWith('e') ? `${base}d` : consonantY ? `${base.slice(0, -1)}ied` : `${base}ed`;
  const s = /(?:[sxz]|sh|ch)$/.test(base) ? `${base}es` : consonantY ? `${base.slice(0, -1)}ies` : `${base}s`;
  return [
    [base, 'base'],
    [s, 's'],
    [past, 'past'],
    [`${stem}ing`, 'ing'],
  ];
}

function indexVerbs(): ReadonlyMap<string, VerbSense> {
  const index = new Map<string, VerbSense>();
  for (const [lemma, irregular] of Object.entries(lists.verbs)) {
    // "Roted" may be "rooted" as well: a slip, and no form of either.
    const isDoubled = DOUBLES.test(lemma);
    for (const [word, form] of regularForms(lemma))
      if (!index.has(word) && !(isDoubled && /(?:ed|ing)$/.test(word) && word !== lemma))
        index.set(word, { lemma, form });
    if (isDoubled || !OF_ONE_VOWEL.test(lemma)) {
      const doubled = `${lemma}${lemma.at(-1)}`;
      index.set(`${doubled}ing`, { lemma, form: 'ing' });
      index.set(`${doubled}ed`, { lemma, form: 'past' });
    }
    for (const word of irregular)
      index.set(word, {
        lemma,
        form: word.endsWith('ing') ? 'ing' : /(?:es|does|goes)$/.test(word) ? 's' : 'past',
      });
  }
  return index;
}

const verbs = indexVerbs();

/** The verb that a lower-case word is a form of. */
export function verbSense(word: string): VerbSense | undefined {
  return verbs.get(word);
}

/** Longest-first phrase tables keyed by their first word. */
export interface Phrase<Value> {
  readonly words: readonly string[];
  readonly value: Value;
}
export type PhraseTable<Value> = ReadonlyMap<string, readonly Phrase<Value>[]>;

function phraseTable<Value>(entries: readonly (readonly [string, Value])[]): PhraseTable<Value> {
  const table = new Map<string, Phrase<Value>[]>();
  for (const [text, value] of entries) {
    const words = text.toLowerCase().split(/[\s-]+/);
    const first = words[0] ?? '';
    table.set(first, [...(table.get(first) ?? []), { words, value }]);
  }
  for (const phrases of table.values()) phrases.sort((a, b) => b.words.length - a.words.length);
  return table;
}

/** The longest phrase of `table` that begins at word `at`. */
export function phraseAt<Value>(
  table: PhraseTable<Value>,
  words: readonly string[],
  at: number,
): Phrase<Value> | undefined {
  return table
    .get(words[at] ?? '')
    ?.find((phrase) => phrase.words.every((word, n) => words[at + n] === word));
}

/** Regular English plurals of a name, the name itself first. */
export function pluralsOf(name: string): readonly string[] {
  if (/(?:[sxz]|sh|ch)$/.test(name)) return [name, `${name}es`];
  if (/[^aeiou]y$/.test(name)) return [name, `${name.slice(0, -1)}ies`, `${name}s`];
  if (name.endsWith('um')) return [name, `${name}s`, `${name.slice(0, -2)}a`];
  if (/[^aeiou]o$/.test(name)) return [name, `${name}s`, `${name}es`];
  return [name, `${name}s`];
}

export const crops: PhraseTable<string> = phraseTable([
  ...lists.crops.flatMap(({ name, also }) =>
    [name, ...also].flatMap((each) => pluralsOf(each).map((form) => [form, name] as const)),
  ),
  ...lists.otherCrops.flatMap((name) => pluralsOf(name).map((form) => [form, name] as const)),
]);

const keyed = <Key extends string>(record: Readonly<Record<string, readonly string[]>>) =>
  phraseTable(
    Object.entries(record).flatMap(([key, phrases]) =>
      phrases.map((phrase) => [phrase, key as Key] as const),
    ),
  );

export const causes: PhraseTable<Cause> = keyed<Cause>(lists.causes);
export const cuttingTypes: PhraseTable<CuttingType> = keyed<CuttingType>(lists.cuttings);
export const media: PhraseTable<true> = phraseTable(lists.media.map((each) => [each, true] as const));
export const placeNouns: ReadonlySet<string> = new Set(lists.placeNouns.flatMap((each) => pluralsOf(each)));
export const placePhrases: PhraseTable<true> = phraseTable(
  lists.places.flatMap((each) => pluralsOf(each).map((form) => [form, true] as const)),
);

const known = new Set<string>([
  ...verbs.keys(),
  ...lists.everyday,
  ...lists.placeNouns.flatMap((each) => pluralsOf(each)),
  ...lists.places.flatMap((each) => each.split(' ')),
  ...lists.media.flatMap((each) => each.split(' ')),
  ...Object.values(lists.causes).flatMap((each) => each.flatMap((phrase) => phrase.split(/[ -]/))),
  ...Object.values(lists.cuttings).flatMap((each) => each.flatMap((phrase) => phrase.split(/[ -]/))),
  ...[...crops.values()].flatMap((phrases) => phrases.flatMap(({ words }) => words)),
]);

/** Whether a lower-case word is one of ours or an everyday one. */
export function isKnown(word: string): boolean {
  return known.has(word);
}

const spellings: ReadonlyMap<string, string> = new Map(Object.entries(lists.spellings));

export function spelling(word: string): string | undefined {
  return spellings.get(word);
}
