/** Words written by their consonants: "opnd", "grnhouse", "frnt". */
import { lists, verbSense } from '../lexicon.js';
import { targets } from './targets.js';

/** "Swpd" is "swapped": what is written twice is left out as well. */
const consonantsOf = (word: string): string => word.replace(/(?!^)[aeiou]/g, '').replace(/([a-z])\1/g, '$1');

/** Words by their consonants; none where several share them. */
function byConsonants(words: Iterable<string>): ReadonlyMap<string, string | null> {
  const index = new Map<string, string | null>();
  for (const word of words) {
    const key = consonantsOf(word);
    const other = index.get(key);
    if (other && isSameForm(other, word)) continue;
    index.set(key, other === undefined ? word : null);
  }
  return index;
}

/** "Watered" and "waterred". */
function isSameForm(one: string, other: string): boolean {
  const [a, b] = [verbSense(one), verbSense(other)];
  return one === other || (a !== undefined && a.lemma === b?.lemma && a.form === b.form);
}

const ofTheTrade = byConsonants([...targets.values()].flat());

/** All words of talk: they have to be told apart from each other and from the trade's. */
const ofTalk = byConsonants([...lists.everyday, ...[...targets.values()].flat()]);

/** The one word of the trade that these letters are of, with vowels left out; of talk, where all of them were. */
export function vowelled(word: string): string | undefined {
  const consonants = consonantsOf(word);
  const target = ofTheTrade.get(consonants) ?? (consonants === word ? ofTalk.get(word) : undefined);
  return target != null && word.length > 3 && isThinned(word, target) ? target : undefined;
}

/** Whether a word is another with vowels left out, and nothing else. */
export function isThinned(word: string, whole: string): boolean {
  return word.length < whole.length && consonantsOf(word) === consonantsOf(whole) && lettersOf(word, whole);
}

/** Whether a word is another with letters left out. */
function lettersOf(word: string, whole: string): boolean {
  let at = 0;
  for (const letter of whole) if (letter === word[at]) at++;
  return at === word.length;
}
