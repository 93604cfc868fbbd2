/** A trigram model of sentences, written in the ARPA format that speech recognisers read. */

const start = '<s>';
const end = '</s>';

/** Counts of what follows a context of zero, one or two words; the context's words joined by spaces. */
type Counts = Map<string, Map<string, number>>;

/**
 * The share of each context's probability kept for words not seen after it. Phrases come from a list that is never whole,
 * so it is larger than the counts alone would warrant; on notes set apart, 0.05 to 0.3 made no difference to phrasing of the
 * trade (perplexity 13–14) and lowered that of freer notes from 114 to 66.
 */
const shareUnseen = 0.25;

/** The model as ARPA text (log10 probabilities, back-off weights), from sentences given as rows of words. */
export function trigramModel(sentences: Iterable<readonly string[]>): string {
  const counts: [Counts, Counts, Counts] = [new Map(), new Map(), new Map()];
  for (const sentence of sentences) {
    const words = [start, ...sentence, end];
    words.forEach((word, at) => {
      if (at === 0) return;
      count(counts[0], '', word);
      count(counts[1], words[at - 1] ?? '', word);
      if (at > 1) count(counts[2], `${words[at - 2] ?? ''} ${words[at - 1] ?? ''}`, word);
    });
  }
  return write(counts);
}

function count(counts: Counts, context: string, word: string): void {
  let following = counts.get(context);
  if (!following) counts.set(context, (following = new Map<string, number>()));
  following.set(word, (following.get(word) ?? 0) + 1);
}

function write([ones, twos, threes]: [Counts, Counts, Counts]): string {
  const unigrams = ones.get('') ?? new Map<string, number>();
  const total = sum(unigrams.values());
  const unigramOf = (word: string): number => (unigrams.get(word) ?? 0) / total;
  const bigramOf = (context: string, word: string): number => {
    const following = twos.get(context);
    const seen = following?.get(word);
    if (!following || seen === undefined) return (following ? shareUnseen : 1) * unigramOf(word);
    return ((1 - shareUnseen) * seen) / sum(following.values()) + shareUnseen * unigramOf(word);
  };

  const lines = { one: [] as string[], two: [] as string[], three: [] as string[] };
  const backOff = log10(shareUnseen);
  lines.one.push(`-99 ${start} ${backOff}`);
  for (const word of unigrams.keys()) {
    const weight = twos.has(word) ? ` ${backOff}` : '';
    lines.one.push(`${log10(unigramOf(word))} ${word}${weight}`);
  }
  for (const [context, following] of twos) {
    for (const word of following.keys()) {
      const weight = threes.has(`${context} ${word}`) ? ` ${backOff}` : '';
      lines.two.push(`${log10(bigramOf(context, word))} ${context} ${word}${weight}`);
    }
  }
  for (const [context, following] of threes) {
    const seen = sum(following.values());
    const [, last = ''] = context.split(' ');
    for (const [word, times] of following) {
      const p = ((1 - shareUnseen) * times) / seen + shareUnseen * bigramOf(last, word);
      lines.three.push(`${log10(p)} ${context} ${word}`);
    }
  }
  return [
    '\\data\\',
    `ngram 1=${lines.one.length}`,
    `ngram 2=${lines.two.length}`,
    `ngram 3=${lines.three.length}`,
    '\n\\1-grams:',
    ...lines.one,
    '\n\\2-grams:',
    ...lines.two,
    '\n\\3-grams:',
    ...lines.three,
    '\n\\end\\\n',
  ].join('\n');
}

function sum(values: Iterable<number>): number {
  let total = 0;
  for (const value of values) total += value;
  return total;
}

function log10(p: number): string {
  return Math.log10(p).toFixed(4);
}
