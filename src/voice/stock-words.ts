/** Reads which words a language model of SphinxBase's binary kind knows. */

const magic = 'Trie Language Model';

/**
 * The words stand at the file's end, each closed by a nought, as many as the first count of the head says (a byte for the
 * order after the magic, then a 32-bit count an order; `ngram_model_trie.c` of SphinxBase). None where it is of another kind.
 */
export function wordsOfModel(bytes: Buffer): Set<string> {
  const words = new Set<string>();
  if (bytes.toString('latin1', 0, magic.length) !== magic) return words;
  const count = bytes.readUInt32LE(magic.length + 1);
  let end = bytes.length - 1;
  while (words.size < count && end > 0) {
    const start = bytes.lastIndexOf(0, end - 1) + 1;
    words.add(bytes.toString('latin1', start, end));
    end = start - 1;
  }
  return words;
}
