/** Builds what the recogniser listens with: the trade's phrases filled with a grower's own names, and how all of it sounds. */
import { trigramModel } from './language-model.js';
import { readPhrases, say, sayEach, seededChance, wordsOf } from './phrase-grammar.js';
import { pronounce, readPronunciations } from './pronunciation.js';
import { spelledLabel, spokenWords } from './spoken.js';
import { unitOf, waysOfUnit, wordsOfUnit } from './unit.js';
import type { Vocabulary } from './transcriber.js';

/** The texts a model is built from. */
export interface ModelSources {
  /** The phrases of the trade, in the form of shared/speech/phrases.txt. */
  readonly phrases: string;
  /** Sentences as growers write them, with names, numbers and days left open: shared/speech/told.txt. */
  readonly told: string;
  /** Pronunciations by hand, in the form of the CMU dictionary. */
  readonly byHand: string;
  /** The stock dictionary that the engine brings; may be empty. */
  readonly stockDictionary: string;
  /** Words that the stock language model knows: no others of the stock dictionary can be heard. */
  readonly stockWords: ReadonlySet<string>;
}

export interface RecogniserModel {
  /** A trigram model in ARPA form. */
  readonly languageModel: string;
  /** The stock dictionary with our words and ways of saying them. */
  readonly dictionary: string;
}

const sentenceCount = 60_000;
/** So often is each sentence told, each time with other names and numbers: five to twenty times did alike. */
const timesTold = 10;
const seed = 1;
const ownPlaceWeight = 6;
const wholeNameWeight = 9;

export function buildModel(vocabulary: Vocabulary, sources: ModelSources): RecogniserModel {
  const names = spokenNames(vocabulary);
  const grammar = readPhrases(`${sources.phrases}\n${sources.told}`, names);
  const chance = seededChance(seed);
  const sentences = Array.from({ length: sentenceCount }, () => say(grammar, 'note', chance));
  for (let time = 0; time < timesTold; time++)
    for (const sentence of sayEach(grammar, 'told', chance)) sentences.push(sentence);

  const stock = new Map(
    [...readPronunciations(sources.stockDictionary)].filter(([word]) => sources.stockWords.has(word)),
  );
  const units = wordsOf(grammar);
  const words = new Set([...units].flatMap(wordsOfUnit));
  const ownNames = new Set(vocabulary.varieties.flatMap(spokenWords));
  const singly = pronounce(words, ownNames, readPronunciations(sources.byHand), stock);
  const ours = new Map([...singly, ...[...units].map((unit) => [unit, waysOfUnit(unit, singly)] as const)]);
  const lines: string[] = [];
  for (const [word, ways] of new Map([...stock, ...ours]))
    ways.forEach((phones, at) => lines.push(`${at === 0 ? word : `${word}(${at + 1})`} ${phones}`));
  return { languageModel: trigramModel(sentences), dictionary: `${lines.join('\n')}\n` };
}

/** The names as rules of phrases; each is said as its words, a label spelt out. */
function spokenNames(vocabulary: Vocabulary): Record<string, string[]> {
  const spoken = (names: readonly string[]): string[] => [
    ...new Set(names.map((name) => spokenWords(name).join(' ')).filter((name) => name !== '')),
  ];
  const crops = spoken(vocabulary.crops);
  // Where the ledger knows no name of its own yet, a crop stands in its place.
  const orCrop = (names: string[]): string[] => (names.length > 0 ? names : ['<crops>']);
  return {
    variety: orCrop(spoken(vocabulary.varieties).flatMap(asUnit)),
    crop: crops,
    crops: crops.map(plural),
    // A place of the grower's own is said far oftener than one from the list.
    place: spoken(vocabulary.places).map((place) => `${ownPlaceWeight} ${unitOf(place)}`),
    label: orCrop(vocabulary.labels.map((label) => spelledLabel(label).join(' '))),
  };
}

/** A name is nearly always said whole; its words also stand singly, for who says half of it. */
function asUnit(name: string): string[] {
  return name.includes(' ') ? [`${wholeNameWeight} ${unitOf(name)}`, name] : [`${wholeNameWeight} ${name}`];
}

/** As English forms it: fuchsia → fuchsias, box → boxes, daisy → daisies, potato → potatoes; a name that ends in s stays. */
export function plural(name: string): string {
  if (/(?:ch|sh|x|z)$/.test(name)) return `${name}es`;
  if (/(?:tomat|potat)o$/.test(name)) return `${name}es`;
  if (/[^aeiou]y$/.test(name)) return `${name.slice(0, -1)}ies`;
  return name.endsWith('s') ? name : `${name}s`;
}
