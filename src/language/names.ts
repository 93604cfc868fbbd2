/** Known variety names and batch labels, found first so that the numbers, months and verbs inside them stay names. */
import { isEnglish } from './english.js';
import { isKnown, pluralsOf } from './lexicon.js';
import type { NoteContext } from './note.js';
import { soundFamily, soundKey, soundsLike } from './sounds.js';
import { distance } from './spelling.js';
import type { Token } from './tokens.js';

export interface FoundName {
  readonly from: number;
  readonly to: number;
  readonly variety?: string;
  readonly label?: string;
  /** 0 exact, 1 inflected, 2 and more misspelt. */
  readonly slips: number;
}

interface Name {
  readonly variety: string;
  /** Lower-case words without apostrophes or marks. */
  readonly words: readonly string[];
  readonly joined: string;
}

const plain = (text: string): string => text.toLowerCase().replace(/[^\p{L}\p{N}]/gu, '');
const words = (text: string): string[] =>
  text
    .toLowerCase()
    .replace(/['’]/g, '')
    .split(/[^\p{L}\p{N}]+/u)
    .filter((word) => word !== '');

/** Every name the context holds: listed varieties, then those that only a batch carries. */
function namesOf(context: NoteContext): readonly Name[] {
  const seen = new Map<string, Name>();
  for (const variety of [
    ...(context.varieties ?? []).map(({ name }) => name),
    ...(context.batches ?? []).flatMap(({ variety }) => (variety === undefined ? [] : [variety])),
  ]) {
    const joined = plain(variety);
    if (joined !== '' && !seen.has(joined)) seen.set(joined, { variety, words: words(variety), joined });
  }
  return [...seen.values()];
}

/** Names by how their first word begins and how it sounds. */
interface NameIndex {
  readonly byLetter: ReadonlyMap<string, readonly Name[]>;
  readonly bySound: ReadonlyMap<string, readonly Name[]>;
  readonly byFamily: ReadonlyMap<number | undefined, readonly Name[]>;
}

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

/** The names that may begin at a token: a slip leaves the first letter standing, or the sound of the first word. */
function candidatesAt(token: Token, { byLetter, bySound, byFamily }: NameIndex): ReadonlySet<Name> {
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

/** Names and labels in the order of the text, none overlapping; longer and more exact finds win. */
export function findNames(tokens: readonly Token[], context: NoteContext): readonly FoundName[] {
  const finds: FoundName[] = [...findLabels(tokens, context)];
  const names = namesOf(context);
  finds.push(...findInitials(tokens, names));
  const index = indexOf(names);
  for (const [at, token] of tokens.entries()) {
    if (token.is === 'mark' || token.is === 'line') continue;
    for (const name of candidatesAt(token, index)) {
      const find = nameAt(tokens, at, name);
      if (find) finds.push(find);
    }
  }
  finds.push(...findPhrases(tokens, names), ...findParts(tokens, names));
  finds.sort((a, b) => a.slips - b.slips || b.to - b.from - (a.to - a.from) || a.from - b.from);
  const taken = new Set<number>();
  const kept: FoundName[] = [];
  for (const find of finds) {
    let free = true;
    for (let at = find.from; at < find.to; at++) if (taken.has(at)) free = false;
    if (!free || isOrdinaryUse(tokens, find)) continue;
    for (let at = find.from; at < find.to; at++) taken.add(at);
    kept.push(find);
  }
  return kept.sort((a, b) => a.from - b.from);
}

function findLabels(tokens: readonly Token[], context: NoteContext): FoundName[] {
  const finds: FoundName[] = [];
  const labels = new Map((context.batches ?? []).map(({ label }) => [plain(label), label]));
  if (labels.size === 0) return finds;
  for (let at = 0; at < tokens.length; at++) {
    let joined = '';
    for (let to = at + 1; to <= Math.min(at + 4, tokens.length); to++) {
      const token = tokens[to - 1];
      if (!token || (token.is === 'mark' && !(token.raw === '-' && token.glued))) break;
      if (plain(token.raw) === '') break;
      if (token.raw !== tokens[to - 2]?.raw || token.start !== tokens[to - 2]?.start)
        joined += plain(token.raw);
      const label = labels.get(joined);
      // A label of letters alone must stand in capitals, or any word could be one.
      if (label !== undefined && (/\d/.test(joined) || token.raw === token.raw.toUpperCase()))
        finds.push({ from: at, to, label, slips: 0 });
    }
  }
  return finds;
}

/** "CL" for the one variety with those initials, in capitals. */
function findInitials(tokens: readonly Token[], names: readonly Name[]): FoundName[] {
  return tokens.flatMap((token, at) => {
    // "hc 4/12 rooted": in small letters where no word is so written and the note opens with them.
    const small =
      at === 0 &&
      tokens[1]?.is === 'number' &&
      /^\p{Ll}{2,4}$/u.test(token.raw) &&
      !isKnown(token.raw) &&
      !isEnglish(token.raw);
    if (!small && !/^\p{Lu}{2,4}$/u.test(token.raw)) return [];
    const meant = names.filter(
      ({ words }) =>
        words.length > 1 && words.map((word) => word.charAt(0)).join('') === token.raw.toLowerCase(),
    );
    const [only] = meant;
    return meant.length === 1 && only ? [{ from: at, to: at + 1, variety: only.variety, slips: 4 }] : [];
  });
}

/** Words of time say when, whoever has them in a name. */
const OF_TIME =
  /^(?:jan|feb|mar|apr|jun|jul|aug|sept?|oct|nov|dec|january|february|march|april|may|june|july|august|september|october|november|december|(?:mon|tues|wednes|thurs|fri|satur|sun)days?|spring|summer|autumn|winter|easter|christmas|today|morning|evening|afternoon|midnight|noon|dozens?|hundreds?)$/;

/** "Brass Kettle" for the one variety that is "Old Brass Kettle": two words or more that stand together in no other name. */
function findPhrases(tokens: readonly Token[], names: readonly Name[]): FoundName[] {
  const long = names.filter(({ words }) => words.length > 2);
  if (long.length === 0) return [];
  return tokens.flatMap((_, at) => {
    const meant = names.flatMap(({ variety, words }) => {
      const length = sharedWords(tokens, at, words);
      const telling = tokens.slice(at, at + length).some(({ raw }) => !isKnown(plain(raw)));
      return telling && length >= 2 && length < words.length
        ? [{ from: at, to: at + length, variety, slips: 3 }]
        : [];
    });
    const [only] = meant;
    return meant.length === 1 &&
      only &&
      names.every(({ words }) => words.length > 2 || sharedWords(tokens, at, words) < 2)
      ? [only]
      : [];
  });
}

/** How many of a name's words, in their order and all but one at either end, the tokens from `at` are. */
function sharedWords(tokens: readonly Token[], at: number, words: readonly string[]): number {
  const start = words.indexOf(plain(tokens[at]?.raw ?? ''));
  if (start < 0) return 0;
  let length = 0;
  while (start + length < words.length && plain(tokens[at + length]?.raw ?? '') === words[start + length])
    length++;
  return length;
}

/** "The Bridies", "kraken": one word that belongs to a single name, and to no everyday talk. */
function findParts(tokens: readonly Token[], names: readonly Name[]): FoundName[] {
  const owners = new Map<string, Name | undefined>();
  for (const name of names)
    if (name.words.length > 1)
      for (const part of new Set(name.words))
        for (const form of pluralsOf(part)) owners.set(form, owners.has(form) ? undefined : name);
  if (owners.size === 0) return [];
  const isUnknownWord = (at: number): boolean => {
    const token = tokens[at];
    return token?.is === 'word' && token.start !== tokens[at + 1]?.start && !isKnown(token.text);
  };
  return tokens.flatMap((token, at) => {
    const part = plain(token.raw.replace(/'s$/i, ''));
    const name = part.length < 4 ? undefined : owners.get(part);
    if (!name || token.is !== 'word' || OF_TIME.test(part)) return [];
    const capital = token.capital && at > 0 && !/^[.!?]$/.test(tokens[at - 1]?.raw ?? '.');
    const beside = [tokens[at - 1], tokens[at + 1]];
    // Beside another word nobody knows, or another capital, it is part of a name of its own.
    if (capital ? beside.some((each, n) => each?.capital === true && (n === 1 || at > 1)) : isKnown(part))
      return [];
    if (!capital && (isUnknownWord(at - 1) || isUnknownWord(at + 1))) return [];
    // "Stopped at the gate": a thing, though a name holds it.
    const placed =
      /^(?:the|my|our)$/.test(tokens[at - 1]?.text ?? '') &&
      /^(?:at|by|near|behind|beside|through|over|past|outside)$/.test(tokens[at - 2]?.text ?? '');
    if (!capital && placed) return [];
    return [{ from: at, to: at + 1, variety: name.variety, slips: 5 }];
  });
}

const NUMERALS: ReadonlyMap<string, string> = new Map(
  'one two three four five six seven eight nine ten eleven twelve'
    .split(' ')
    .map((word, n) => [String(n + 1), word]),
);

function nameAt(tokens: readonly Token[], at: number, name: Name): FoundName | undefined {
  return inWords(tokens, at, name) ?? runTogether(tokens, at, name);
}

/** Word by word, a hyphen or apostrophe between them allowed. */
function inWords(tokens: readonly Token[], at: number, name: Name): FoundName | undefined {
  let to = at;
  let slips = 0;
  let exact = 0;
  let sounded = 0;
  for (const [n, word] of name.words.entries()) {
    while (n > 0 && /^[-'.,]$/.test(tokens[to]?.raw ?? '') && to > at) to++;
    const token = tokens[to];
    if (!token || token.is === 'mark') return undefined;
    const written = plain(token.raw.replace(/'s$/i, ''));
    const whole = plain(token.raw);
    const lastWord = n === name.words.length - 1;
    if (whole === word || written === word || NUMERALS.get(whole) === word) exact++;
    // "T Whistler": the first word by its letter.
    else if (
      n === 0 &&
      name.words.length > 1 &&
      whole.length === 1 &&
      word.startsWith(whole) &&
      token.capital
    )
      slips += 1;
    else if (lastWord && pluralsOf(word).includes(whole)) {
      exact++;
      slips += 1;
    } else if (whole === `${word}s`) {
      exact++;
      slips += 1;
    } else if (soundsLike(written, word)) {
      slips += 2;
      sounded++;
    } else {
      const allowed = word.length < 4 ? 0 : word.length < 7 ? 1 : 2;
      if (
        isKnown(written) ||
        written.charAt(0) !== word.charAt(0) ||
        distance(written, word, allowed) > allowed
      ) {
        const plural = `${word}s`;
        if (!lastWord || isKnown(written) || distance(written, plural, allowed) > allowed) return undefined;
      }
      slips += 2;
    }
    to++;
  }
  // Two everyday words that happen to sound alike are no name.
  const everyday = tokens.slice(at, to).some((token) => isKnown(plain(token.raw)));
  if (everyday && slips >= 2 && exact === 0 && name.words.length > 1 && sounded === name.words.length)
    return undefined;
  if (slips >= 2 && name.words.length === 1 && name.joined.length < 5) return undefined;
  return { from: at, to, variety: name.variety, slips };
}

/** "copperlantern", "marble ren": the letters alone, over as many words or one fewer or more. */
function runTogether(tokens: readonly Token[], at: number, name: Name): FoundName | undefined {
  if (name.joined.length < 7) return undefined;
  if (tokens[at]?.raw.charAt(0).toLowerCase() !== name.joined.charAt(0)) return undefined;
  let joined = '';
  for (let to = at + 1; to <= Math.min(at + name.words.length + 1, tokens.length); to++) {
    const token = tokens[to - 1];
    if (!token || token.is === 'mark' || token.is === 'line') return undefined;
    joined += plain(token.raw);
    if (joined.length > name.joined.length + 3) return undefined;
    if (to - at === name.words.length) continue;
    if (
      Math.abs(joined.length - name.joined.length) <= 3 &&
      name.joined.length >= 9 &&
      soundKey(joined) === soundKey(name.joined)
    )
      return { from: at, to, variety: name.variety, slips: 3 };
    if (joined === name.joined || joined === `${name.joined}s`)
      return { from: at, to, variety: name.variety, slips: 1 };
  }
  return undefined;
}

const FOLLOWS_VERB = new Set([
  'cutting',
  'cuttings',
  'basal',
  'nodal',
  'more',
  'of',
  'tip',
  'heel',
  'softwood',
  'semi',
]);

/**
 * A name made of everyday words, written without capitals, that is plainly used as those words: "take two cuttings of …"
 * where *Take Two* is a variety.
 */
function isOrdinaryUse(tokens: readonly Token[], find: FoundName): boolean {
  if (find.variety === undefined) return false;
  for (let at = find.from; at < find.to; at++) {
    const token = tokens[at];
    if (token && token.capital && at > find.from) return false;
    if (token && !isKnown(token.text) && token.is !== 'number') return false;
  }
  const next = tokens[find.to]?.text ?? '';
  if (find.slips >= 2 && /^(?:the|a|an|my|some|is|are|it|them)$/.test(next)) return true;
  const last = tokens[find.to - 1];
  const numeral =
    last !== undefined && /^(?:one|two|three|four|five|six|seven|eight|nine|ten|to|too|for)$/.test(last.text);
  return numeral && FOLLOWS_VERB.has(next);
}
