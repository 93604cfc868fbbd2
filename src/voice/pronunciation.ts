/** Finds how words are pronounced: by hand for the trade's, from the stock dictionary, from espeak-ng, or by the letters. */
import { spawnSync } from 'node:child_process';
import { asAmerican, asBritish, withOpenUp } from './accents.js';
import { lettersToPhones } from './letter-sounds.js';
import { phonesOf, type Accent } from './phonemes.js';

/** Words and the ways of saying each, in CMU phones. */
export type Pronunciations = Map<string, readonly string[]>;

/** Reads lines of the form of the CMU dictionary: the word, or `word(2)`, then its phones. `#` begins a comment. */
export function readPronunciations(text: string, wanted?: ReadonlySet<string>): Pronunciations {
  const found: Pronunciations = new Map();
  for (const line of text.split('\n')) {
    const space = line.indexOf(' ');
    if (space < 1 || line.startsWith('#')) continue;
    const word = line.slice(0, space).replace(/\(\d+\)$/, '');
    if (wanted && !wanted.has(word)) continue;
    found.set(word, [...(found.get(word) ?? []), line.slice(space + 1).trim()]);
  }
  return found;
}

/**
 * Every way of saying each word that the sources know; one guessed from the letters where none does. A name of the
 * grower's own is listened for in either accent, a word of the trade as the stock dictionary, a Briton and a relaxed
 * American say it.
 */
export function pronounce(
  words: ReadonlySet<string>,
  ownNames: ReadonlySet<string>,
  byHand: Pronunciations,
  stock: Pronunciations,
): Pronunciations {
  const hand = withPlurals(byHand, words);
  const unheard = [...words].filter((word) => !hand.has(word));
  const british = speak([...words], 'british');
  const american = speak(
    unheard.filter((word) => ownNames.has(word) || !stock.has(word)),
    'american',
  );
  const known: Pronunciations = new Map();
  for (const word of words) {
    const waysIn = (source: Pronunciations): readonly string[] => source.get(word) ?? [];
    const careful = [...waysIn(hand), ...waysIn(stock)];
    const ways = [...careful, ...waysIn(british), ...waysIn(american), ...careful.map(asAmerican)];
    known.set(word, ways.length > 0 ? [...new Set(ways)] : [lettersToPhones(word)]);
  }
  return known;
}

/** The plurals among the words whose singular is known: hebes from hebe. */
function withPlurals(known: Pronunciations, words: ReadonlySet<string>): Pronunciations {
  const all = new Map(known);
  for (const word of words) {
    const singular = known.get(word.replace(/s$/, ''));
    if (word.endsWith('s') && singular && !all.has(word)) all.set(word, singular.map(pluralPhones));
  }
  return all;
}

function pluralPhones(phones: string): string {
  if (/(?:S|Z|SH|ZH|CH|JH)$/.test(phones)) return `${phones} IH Z`;
  return /(?:[PTKF]|TH)$/.test(phones) ? `${phones} S` : `${phones} Z`;
}

const voiceOf: Record<Accent, string> = { british: 'en-gb', american: 'en-us' };

/** What espeak-ng makes of the words; nothing where it is not installed. */
function speak(words: readonly string[], accent: Accent): Pronunciations {
  const spoken: Pronunciations = new Map();
  if (words.length === 0) return spoken;
  const { status, stdout } = spawnSync('espeak-ng', ['-q', '-x', '-v', voiceOf[accent]], {
    input: `${words.join('\n')}\n`,
    encoding: 'utf8',
    timeout: 20_000,
  });
  const lines = (stdout ?? '').trimEnd().split('\n');
  if (status !== 0 || lines.length !== words.length) return spoken;
  words.forEach((word, at) => {
    const ways = waysHeard(lines[at] ?? '', accent);
    if (ways.length > 0) spoken.set(word, ways);
  });
  return spoken;
}

/** A Briton's word is listened for as it is written in phones and as an American ear has it. */
function waysHeard(mnemonics: string, accent: Accent): string[] {
  const plain = phonesOf(mnemonics, accent);
  if (plain === undefined) return [];
  const open = accent === 'british' ? phonesOf(withOpenUp(mnemonics), accent) : undefined;
  return open === undefined ? [plain] : [plain, asBritish(open)];
}
