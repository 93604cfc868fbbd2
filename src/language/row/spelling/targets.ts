/** The words of the trade that a misspelt word is repaired towards. */
import { crops, lists, verbSense } from '../lexicon.js';
import { wordsOf } from '../../phrases.js';

/** What plants die of, in words too long to be another's slip. */
const longCauses = Object.values(lists.causes)
  .flatMap((phrases) => phrases.flatMap((phrase) => phrase.split(/[ -]/)))
  .filter(({ length }) => length > 5);

/** Words of notes that slips befall, beside those of the word list. */
const OFTEN_MISSPELT = wordsOf`
  cuttings cutting compost perlite vermiculite
  yesterday tomorrow morning afternoon evening weekend fortnight
  monday tuesday wednesday thursday friday saturday sunday
  january february april august september october november december
  dollars pounds propagator windowsill temperature celsius botrytis hormone internodal semi hardwood softwood
  remember remind several couple dozen hundred twenty thirty forty fifty twelve eleven seven eight three
  because everything greenhouse kitchen geraniums another should
`;

/** By their first letters: long enough that one slip leaves them recognisable. */
export const targets: ReadonlyMap<string, readonly string[]> = (() => {
  const words = new Set<string>([
    ...[...crops.values()].flatMap((phrases) => phrases.flatMap(({ words }) => words)),
    ...Object.keys(lists.verbs).flatMap((lemma) => verbForms(lemma)),
    ...lists.placeNouns,
    ...longCauses,
    ...OFTEN_MISSPELT,
  ]);
  const index = new Map<string, string[]>();
  for (const word of words) {
    if (word.length < 5) continue;
    const key = word.charAt(0);
    index.set(key, [...(index.get(key) ?? []), word]);
  }
  return index;
})();

function verbForms(lemma: string): readonly string[] {
  return [
    lemma,
    `${lemma}ed`,
    `${lemma}d`,
    `${lemma}${lemma.at(-1)}ed`,
    `${lemma}ing`,
    ...(lists.verbs[lemma] ?? []),
  ].filter((word) => verbSense(word) !== undefined);
}
