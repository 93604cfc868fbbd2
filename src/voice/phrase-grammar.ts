/** Reads a file of phrases (see the head of shared/speech/phrases.txt) and says as many sentences from it as are asked for. */

/** One way of saying a rule: what stands in it, in order. */
type Part =
  | { readonly kind: 'word'; readonly word: string }
  | { readonly kind: 'rule'; readonly name: string }
  | { readonly kind: 'choice'; readonly ways: readonly Way[]; readonly mayBeLeftOut: boolean };
interface Way {
  readonly weight: number;
  readonly parts: readonly Part[];
}

/** Rules by name. */
export type PhraseGrammar = ReadonlyMap<string, readonly Way[]>;

/** Chance, 0 up to 1; seeded where the outcome must be the same every time. */
export type Chance = () => number;

/** Throws where a rule is named that does not exist, or a bracket is not closed: the file is part of the program. */
export function readPhrases(text: string, names: Readonly<Record<string, readonly string[]>>): PhraseGrammar {
  const rules = new Map<string, Way[]>();
  let ways: Way[] = [];
  for (const line of text.split('\n')) {
    if (line.trim() === '' || line.startsWith('#')) continue;
    if (line.startsWith(' ')) ways.push(readWay(line));
    else rules.set(line.trim().replace(/:$/, ''), (ways = []));
  }
  for (const [name, values] of Object.entries(names)) {
    const known = rules.get(name) ?? [];
    rules.set(name, [...known, ...values.map((value) => readWay(value))]);
  }
  for (const each of rules.values()) each.forEach((way) => assertKnown(way, rules));
  return rules;
}

/** The words of one sentence, chosen by chance. */
export function say(grammar: PhraseGrammar, rule: string, chance: Chance): string[] {
  return sayWay(grammar, pick(grammar.get(rule) ?? [], chance), chance);
}

/** Every way of saying the rule, as often as its weight says; what stands in it is chosen by chance. */
export function sayEach(grammar: PhraseGrammar, rule: string, chance: Chance): string[][] {
  return (grammar.get(rule) ?? []).flatMap((way) =>
    Array.from({ length: way.weight }, () => sayWay(grammar, way, chance)),
  );
}

function sayWay(grammar: PhraseGrammar, way: Way | undefined, chance: Chance): string[] {
  const words: string[] = [];
  const add = (next: Way | undefined): void => {
    for (const part of next?.parts ?? []) {
      if (part.kind === 'word') words.push(part.word);
      else if (part.kind === 'rule') add(pick(grammar.get(part.name) ?? [], chance));
      else if (!part.mayBeLeftOut || chance() < 0.5) add(pick(part.ways, chance));
    }
  };
  add(way);
  return words;
}

/** Every word that a sentence may hold. */
export function wordsOf(grammar: PhraseGrammar): Set<string> {
  const found = new Set<string>();
  const visit = (way: Way): void => {
    for (const part of way.parts) {
      if (part.kind === 'word') found.add(part.word);
      if (part.kind === 'choice') part.ways.forEach(visit);
    }
  };
  for (const ways of grammar.values()) ways.forEach(visit);
  return found;
}

/** A generator of chance that always yields the same row (mulberry32, a public-domain 32-bit mixer). */
export function seededChance(seed: number): Chance {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

function pick(ways: readonly Way[], chance: Chance): Way | undefined {
  const total = ways.reduce((sum, way) => sum + way.weight, 0);
  let left = chance() * total;
  return ways.find((way) => (left -= way.weight) < 0) ?? ways.at(-1);
}

function readWay(line: string): Way {
  const trimmed = line.trim();
  const weight = /^\d+(?= )/.exec(trimmed)?.[0] ?? '';
  const phrase = trimmed.slice(weight.length).trim();
  const tokens = phrase.match(/<[^<>]+>|[[\]()|]|[^\s[\]()|<>]+/g) ?? [];
  const cursor = { at: 0 };
  const parts = readParts(tokens, cursor);
  if (cursor.at < tokens.length) throw new Error(`a bracket too many in the phrase "${phrase}"`);
  return { weight: Number(weight || 1), parts };
}

function readParts(tokens: readonly string[], cursor: { at: number }): Part[] {
  const parts: Part[] = [];
  for (; cursor.at < tokens.length; cursor.at++) {
    const token = tokens[cursor.at] ?? '';
    if (token === ']' || token === ')' || token === '|') break;
    if (token === '[' || token === '(') parts.push(readChoice(tokens, cursor, token === '['));
    else if (token.startsWith('<')) parts.push({ kind: 'rule', name: token.slice(1, -1) });
    else parts.push({ kind: 'word', word: token });
  }
  return parts;
}

function readChoice(tokens: readonly string[], cursor: { at: number }, mayBeLeftOut: boolean): Part {
  const ways: Way[] = [];
  do {
    cursor.at++;
    ways.push({ weight: 1, parts: readParts(tokens, cursor) });
  } while (tokens[cursor.at] === '|');
  if (tokens[cursor.at] !== (mayBeLeftOut ? ']' : ')'))
    throw new Error(`a bracket is open: ${tokens.join(' ')}`);
  return { kind: 'choice', ways, mayBeLeftOut };
}

function assertKnown(way: Way, rules: ReadonlyMap<string, unknown>): void {
  for (const part of way.parts) {
    if (part.kind === 'rule' && !rules.has(part.name))
      throw new Error(`no rule of phrases is named "${part.name}"`);
    if (part.kind === 'choice') part.ways.forEach((each) => assertKnown(each, rules));
  }
}
