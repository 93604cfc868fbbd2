/** Sound-alikes: which words speech recognition confuses, and where the context decides for the other. */

const FAMILIES: readonly (readonly string[])[] = [
  ['to', 'too', 'two', '2'], ['for', 'four', 'fore', '4'], ['won', 'one', '1'], ['ate', 'eight', '8'], ['sex', 'six', 'sicks', '6'],
  ['tree', 'three', 'free', '3'], ['tin', 'ten', '10'], ['root', 'route'], ['rooted', 'routed'], ['roots', 'routes'], ['basal', 'basil'],
  ['wren', 'ren'], ['plum', 'plumb'], ['pale', 'pail'], ['not', 'knot'], ['no', 'know'], ['sail', 'sale'], ['rose', 'rows'], ['red', 'read'],
  ['blue', 'blew'], ['maid', 'made'], ['thyme', 'time'], ['night', 'knight'], ['son', 'sun'], ['bell', 'belle'], ['hare', 'hair'],
  ['moth', 'moths'], ['sole', 'soul'], ['peg', 'pegg'], ['fox', 'focks'], ['bored', 'board'], ['peak', 'peek', 'pique'], ['bean', 'been'],
  ['pear', 'pair', 'pare'], ['berry', 'bury'], ['flower', 'flour'], ['tail', 'tale'], ['dear', 'deer'], ['mist', 'missed'], ['judith', 'judeth'],
  ['pewter', 'pewtar', 'computer'], ['gaiters', 'gaters', 'gators', 'gaiter'], ['knell', 'nell'], ['mite', 'might'], ['bough', 'bow'], ['knave', 'nave'],
  ['key', 'quay'], ['cymbal', 'symbol'], ['mussel', 'muscle'], ['herring', 'hering'], ['grey', 'gray'], ['annie', 'any', 'anny'], ['quill', 'kwill'],
  ['pedlar', 'peddler', 'pedaler', 'pedaller'], ['harrier', 'harier'], ['hobnail', 'hob'], ['saffron', 'safran'], ['docker', 'doctor'], ['past', 'passed'],
]; // prettier-ignore

const familyOf = new Map<string, number>();
FAMILIES.forEach((family, n) => family.forEach((word) => familyOf.set(word, n)));

/** The words that are confused with this one, as a key; undefined for words of no such family. */
export function soundFamily(word: string): number | undefined {
  return familyOf.get(word);
}

/** Whether two different lower-case words are heard alike. */
export function soundsLike(heard: string, meant: string): boolean {
  const family = familyOf.get(heard);
  if (family !== undefined && family === familyOf.get(meant)) return true;
  if (heard.length < 4 || heard === meant || heard.charAt(0) !== meant.charAt(0)) return false;
  return (
    soundKey(heard) === soundKey(meant) ||
    // One of the two alone ends in its vowel: "hair" is no "Harrier".
    (heard.endsWith('a') !== meant.endsWith('a') && soundKey(openEnded(heard)) === soundKey(openEnded(meant)))
  );
}

/** "Cinda" for "Cinder": an "er" that many do not say at a word's end, left out. */
function openEnded(word: string): string {
  return word.replace(/(?<=...)(?:[aeo]r|re|ah?)$/, '');
}

/** Of the words that were asked for last: the same few come up in every note. */
const lately = new Map<string, string>();
const REMEMBERED = 5_000;

/** Consonants as they sound, vowels dropped after the first letter. */
export function soundKey(word: string): string {
  const before = lately.get(word);
  if (before !== undefined) return before;
  const key = consonantsOf(word);
  if (lately.size >= REMEMBERED) lately.clear();
  lately.set(word, key);
  return key;
}

function consonantsOf(word: string): string {
  return word
    .replace(/ph/g, 'f')
    .replace(/^rh/, 'r')
    .replace(/^kn/, 'n')
    .replace(/^wr/, 'r')
    .replace(/ck/g, 'k')
    .replace(/c(?=[eiy])/g, 's')
    .replace(/[cq]/g, 'k')
    .replace(/z/g, 's')
    .replace(/gh/g, '')
    .replace(/(.)\1/g, '$1')
    .replace(/(?!^)[aeiouyhw]/g, '');
}
