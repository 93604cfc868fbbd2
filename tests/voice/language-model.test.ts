/** Phrases, sentences, the trigram model made of them, and how its words sound. */
import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { trigramModel } from '../../src/voice/language-model.js';
import { lettersToPhones } from '../../src/voice/letter-sounds.js';
import { phonesOf } from '../../src/voice/phonemes.js';
import { readPhrases, say, sayEach, seededChance, wordsOf } from '../../src/voice/phrase-grammar.js';
import { pronounce, readPronunciations } from '../../src/voice/pronunciation.js';
import { buildModel, plural } from '../../src/voice/recogniser-model.js';
import { describeWith } from './installed.js';
import { numberWords, spelledLabel, spokenWords } from '../../src/voice/spoken.js';
import { unitOf, waysOfUnit, wordsOfUnit } from '../../src/voice/unit.js';

const phrases = readFileSync('shared/speech/phrases.txt', 'utf8');
const told = readFileSync('shared/speech/told.txt', 'utf8');
const names = { variety: ['marble wren'], crop: [], crops: [], place: [], label: ['m w one'] };
// The phones of the CMU pronouncing dictionary, as its own list (cmudict.phones) gives them.
const cmuPhones = new Set(
  'AA AE AH AO AW AY B CH D DH EH ER EY F G HH IH IY JH K L M N NG OW OY P R S SH T TH UH UW V W Y Z ZH'.split(
    ' ',
  ),
);

describe('phrases', () => {
  it('can all be said, in lower-case words alone', () => {
    const grammar = readPhrases(phrases, names);
    for (const word of wordsOf(grammar)) expect(word).toMatch(/^[a-z]+(?:'[a-z]+)*$/);
    const chance = seededChance(7);
    for (let turn = 0; turn < 500; turn++) expect(say(grammar, 'note', chance).length).toBeGreaterThan(0);
  });

  it('are told as often as they weigh, with other names and numbers in them', () => {
    const grammar = readPhrases(`${phrases}\n${told}`, names);
    for (const word of wordsOf(grammar)) expect(word).toMatch(/^[a-z]+(?:'[a-z]+)*$/);
    const sentences = sayEach(grammar, 'told', seededChance(5));
    expect(sentences.length).toBeGreaterThan(3000);
    for (const sentence of sentences) expect(sentence.length).toBeGreaterThan(1);
    expect(sayEach(readPhrases('told:\n  2 lost <n>\n  took two\nn:\n  one', {}), 'told', () => 0)).toEqual([
      ['lost', 'one'],
      ['lost', 'one'],
      ['took', 'two'],
    ]);
  });

  it('are said the same for the same seed', () => {
    const grammar = readPhrases(phrases, names);
    const told = (): string[] => say(grammar, 'note', seededChance(3));
    expect(told()).toEqual(told());
  });

  it('name the rule that is missing', () => {
    expect(() => readPhrases('note:\n  took <nothing>', {})).toThrow('nothing');
    expect(() => readPhrases('note:\n  took [one', {})).toThrow('bracket');
  });
});

/** log10 probabilities and back-off weights by n-gram, read back from ARPA text. */
function readArpa(text: string): Map<string, { p: number; backOff: number }> {
  const read = new Map<string, { p: number; backOff: number }>();
  let order = 0;
  for (const line of text.split('\n')) {
    const section = /^\\(\d)-grams:/.exec(line);
    if (section) order = Number(section[1]);
    const fields = line.split(' ');
    if (order === 0 || !line.startsWith('-')) continue;
    read.set(fields.slice(1, 1 + order).join(' '), {
      p: 10 ** Number(fields[0]),
      backOff: 10 ** Number(fields[1 + order] ?? 0),
    });
  }
  return read;
}

describe('the trigram model', () => {
  it('gives each context probabilities that sum to one, back-off included', () => {
    const sentences = ['took two', 'took two more', 'lost two', 'two rooted'].map((each) => each.split(' '));
    const model = readArpa(trigramModel(sentences));
    const words = [...model.keys()].filter((key) => !key.includes(' ') && key !== '<s>');
    const conditional = (context: string[], word: string): number => {
      const seen = model.get([...context, word].join(' '));
      if (seen) return seen.p;
      if (context.length === 0) return 0;
      const backOff = model.get(context.join(' '))?.backOff ?? 1;
      return backOff * conditional(context.slice(1), word);
    };
    for (const context of [[], ['took'], ['two'], ['<s>', 'took'], ['took', 'two']])
      expect(words.reduce((sum, word) => sum + conditional(context, word), 0)).toBeCloseTo(1, 2);
  });
});

describe('spoken names', () => {
  it('spell numbers out and drop signs', () => {
    expect(spokenWords('Grandad’s Elbow')).toEqual(["grandad's", 'elbow']);
    expect(spokenWords('Mist bench 12')).toEqual(['mist', 'bench', 'twelve']);
    expect(spokenWords('Café “Noir” & Co.')).toEqual(['cafe', 'noir', 'and', 'co']);
    expect(spelledLabel('CL12')).toEqual(['c', 'l', 'twelve']);
  });

  it('spell every number in words that hold no digit', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 999_999 }), (value) => {
        expect(numberWords(value).join(' ')).toMatch(/^[a-z ]+$/);
      }),
    );
    expect(numberWords(121).join(' ')).toBe('one hundred and twenty one');
    expect(numberWords(2004).join(' ')).toBe('two thousand and four');
  });

  it('form plurals as growers do', () => {
    expect(['fuchsia', 'box', 'daisy', 'hypericums', 'sweet potato', 'tomato'].map(plural)).toEqual([
      'fuchsias',
      'boxes',
      'daisies',
      'hypericums',
      'sweet potatoes',
      'tomatoes',
    ]);
  });
});

describe('pronunciations', () => {
  it('by hand use the phones of the CMU dictionary alone', () => {
    const byHand = readPronunciations(readFileSync('shared/speech/pronunciations.txt', 'utf8'));
    expect(byHand.size).toBeGreaterThan(90);
    for (const way of [...byHand.values()].flat())
      for (const phone of way.split(' ')) expect(cmuPhones).toContain(phone);
  });

  // The mnemonics were printed by espeak-ng 1.51 (Debian), the phones are those of the CMU dictionary's entries.
  it.each([
    ["l'aant3n", 'american', 'L AE N T ER N'],
    ["l'aant3n", 'british', 'L AE N T AH N'],
    ["'ElboU", 'american', 'EH L B OW'],
    ["h'ari;3", 'american', 'HH AE R IY ER'],
    ["b'Vt@n", 'british', 'B AH T AH N'],
    ["p'A@ti", 'british', 'P AA T IY'],
    ["p'A@t#i", 'american', 'P AA R T IY'],
  ] as const)('come from espeak-ng: %s, %s, is %s', (mnemonics, accent, phones) => {
    expect(phonesOf(mnemonics, accent)).toBe(phones);
  });

  it('are guessed from the letters where nothing else knows', () => {
    expect(lettersToPhones('wren')).toBe('R EH N');
    expect(lettersToPhones('moth')).toBe('M AA TH');
    fc.assert(
      fc.property(fc.string({ minLength: 1 }), (word) => {
        for (const phone of lettersToPhones(word).split(' ')) expect(cmuPhones).toContain(phone);
      }),
    );
  });
});

describeWith(['espeak-ng'], 'names of the grower’s own', () => {
  it('are pronounced by espeak-ng in both accents', () => {
    const ways = pronounce(new Set(['coalhole', 'lantern']), new Set(['lantern']), new Map(), new Map());
    expect(ways.get('coalhole')).toEqual(['K OW L HH OW L']);
    expect(ways.get('lantern')).toEqual(['L AE N T AH N', 'L AA N T AH N', 'L AE N T ER N']);
  });
});

describe('a name of several words', () => {
  it('is one unit to the recogniser, and comes apart again', () => {
    expect(unitOf('mint humbug stripe')).toBe('mint_humbug_stripe');
    expect(wordsOfUnit('mint_humbug_stripe')).toEqual(['mint', 'humbug', 'stripe']);
    expect(wordsOfUnit("grandad's")).toEqual(["grandad's"]);
  });

  it('is said in every way that its words are', () => {
    const known = new Map([
      ['salt', ['S AO L T']],
      ['harrier', ['HH EH R IY ER', 'HH AE R IY AH']],
    ]);
    expect(waysOfUnit('salt_harrier', known)).toEqual(['S AO L T HH EH R IY ER', 'S AO L T HH AE R IY AH']);
  });

  it('stands whole in the model, and its words singly', { timeout: 120_000 }, () => {
    const { languageModel, dictionary } = buildModel(
      { varieties: ['Marble Wren'], crops: [], places: ['Top bench'], labels: [] },
      {
        phrases,
        told,
        byHand: 'marble M AA R B AH L\nwren R EH N',
        stockDictionary: '',
        stockWords: new Set(),
      },
    );
    expect(languageModel).toMatch(/ of the marble_wren$/m);
    expect(languageModel).toMatch(/ in the top_bench$/m);
    expect(dictionary).toMatch(/^marble_wren M AA R B AH L R EH N$/m);
    expect(dictionary).toMatch(/^wren R EH N$/m);
  });
});
