/** The names that a note's context holds, and which of them may begin at a word. */
import { pluralsOf } from '../lexicon.js';
import type { NoteContext } from '../../note.js';
import { oncePerLedger } from '../once-per-ledger.js';
import { SMALL } from '../../pieces/number-names.js';
import { soundFamily, soundKey } from '../sounds.js';
import type { Token } from '../tokens.js';

export interface FoundName {
  readonly from: number;
  readonly to: number;
  readonly variety?: string;
  readonly label?: string;
  /** 0 exact, 1 inflected, 2 and more misspelt. */
  readonly slips: number;
}

export interface Name {
  readonly variety: string;
  /** Lower-case words without apostrophes or marks. */
  readonly words: readonly string[];
  readonly joined: string;
}

/** Most words are so already. */
const PLAIN = /^[a-z\d]*$/;

/** Letters and digits alone, in lower case. */
export function plain(text: string): string {
  const lower = text.toLowerCase();
  return PLAIN.test(lower) ? lower : lower.replace(/[^\p{L}\p{N}]/gu, '');
}

const words = (text: string): string[] =>
  text
    .toLowerCase()
    .replace(/['’]/g, '')
    .split(/[^\p{L}\p{N}]+/u)
    .filter((word) => word !== '');

/** Every name the context holds: listed varieties, then those that only a batch carries. */
function namesIn(context: NoteContext): readonly Name[] {
  const seen = new Map<string, Name>();
  const varieties = new Set((context.varieties ?? []).map(({ name }) => name));
  for (const { variety } of context.batches ?? []) if (variety !== undefined) varieties.add(variety);
  for (const variety of varieties) {
    const joined = plain(variety);
    if (joined !== '' && !seen.has(joined)) seen.set(joined, { variety, words: words(variety), joined });
  }
  return [...seen.values()];
}

/** Names by how their first word begins and how it sounds. */
export interface NameIndex {
  readonly byLetter: ReadonlyMap<string, readonly Name[]>;
  readonly bySound: ReadonlyMap<string, readonly Name[]>;
  readonly byFamily: ReadonlyMap<number | undefined, readonly Name[]>;
}

/** All names of a ledger, and the way to look them up. */
export const knownNames = oncePerLedger((context) => {
  const names = namesIn(context);
  return { names, index: indexOf(names), owners: ownersOf(names) };
});

/** Names, to be looked up by their first word. */
function indexOf(names: readonly Name[]): NameIndex {
  const grouped = <Key>(keyOf: (name: Name) => Key): ReadonlyMap<Key, readonly Name[]> => {
    const groups = new Map<Key, Name[]>();
    for (const name of names) {
      const key = keyOf(name);
      const group = groups.get(key);
      if (group) group.push(name);
      else groups.set(key, [name]);
    }
    return groups;
  };
  return {
    byLetter: grouped(({ words }) => (words[0] ?? '').charAt(0)),
    bySound: grouped(({ words }) => soundKey(words[0] ?? '')),
    byFamily: grouped(({ words }) => soundFamily(words[0] ?? '')),
  };
}

/** Of names of several words, which one a word belongs to, in the plural too; undefined where several share it. */
export type Owners = ReadonlyMap<string, Name | undefined>;

function ownersOf(names: readonly Name[]): Owners {
  const owners = new Map<string, Name | undefined>();
  for (const name of names)
    if (name.words.length > 1)
      for (const part of new Set(name.words))
        for (const form of pluralsOf(part)) owners.set(form, owners.has(form) ? undefined : name);
  return owners;
}

/** The names that may begin at a token: a slip leaves the first letter standing, or the sound of the first word. */
export function candidatesAt(token: Token, { byLetter, bySound, byFamily }: NameIndex): ReadonlySet<Name> {
  const written = plain(token.raw.replace(/'s$/i, ''));
  const numeral = NUMERALS.get(written);
  const family = soundFamily(written);
  return new Set([
    ...(byLetter.get(written.charAt(0)) ?? []),
    ...(numeral === undefined ? [] : (byLetter.get(numeral.charAt(0)) ?? [])),
    ...(bySound.get(soundKey(written)) ?? []),
    ...(family === undefined ? [] : (byFamily.get(family) ?? [])),
  ]);
}

/** Digits that a name spells. */
export const NUMERALS: ReadonlyMap<string, string> = new Map(
  SMALL.slice(1, 13).map((word, at) => [String(at + 1), word]),
);
