/** Reads which words a language model of SphinxBase's binary kind knows, and which of them are said most. */

const magic = 'Trie Language Model';
/** A table of 65,536 floats; there is one for the longest n-grams, two for each order between. */
const tableBytes = 65_536 * 4;
/** A probability, a back-off weight, and where its bigrams begin. */
const unigramBytes = 12;

/**
 * The `most` likeliest words (all where there are no more), from the file's layout: after the magic a byte for the order and a
 * 32-bit count an order; a 32-bit mark, the tables, the unigrams in the order of their words; the words at the file's end,
 * each closed by a nought (`ngram_model_trie.c`, `lm_trie.c` of SphinxBase). None where it is of another kind.
 */
export function wordsOfModel(bytes: Buffer, most = Infinity): Set<string> {
  if (bytes.toString('latin1', 0, magic.length) !== magic) return new Set();
  const order = bytes[magic.length] ?? 0;
  const count = bytes.readUInt32LE(magic.length + 1);
  const words: string[] = [];
  let end = bytes.length - 1;
  while (words.length < count && end > 0) {
    const start = bytes.lastIndexOf(0, end - 1) + 1;
    words.push(bytes.toString('latin1', start, end));
    end = start - 1;
  }
  words.reverse();
  if (words.length <= most) return new Set(words);
  const unigrams = magic.length + 1 + 4 * order + 4 + tableBytes * (2 * (order - 2) + 1);
  const weighed = words.map((word, at) => ({ word, p: bytes.readFloatLE(unigrams + unigramBytes * at) }));
  weighed.sort((a, b) => b.p - a.p);
  return new Set(weighed.slice(0, most).map(({ word }) => word));
}
