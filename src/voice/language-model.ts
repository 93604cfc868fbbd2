/** A trigram model of sentences, written in the ARPA format that speech recognisers read. */

const start = '<s>';
const end = '</s>';

/** Counts of what follows a context of zero, one or two words; the context's words joined by spaces. */
type Counts = Map<string, Map<string, number>>;

/**
 * The least share of a context's probability that is kept for words not seen after it. Phrases come from a list that is never
 * whole, so it is larger than the counts alone would warrant; on notes set apart, 0.05 to 0.3 made no difference to phrasing of
 * the trade (perplexity 13–14) and lowered that of freer notes from 114 to 66.
 */
const leastUnseen = 0.25;
/** What was followed by something else nearly every time says little of what follows next. */
const mostUnseen = 0.9;

/** What was seen behind a word or two. */
interface Context {
  readonly following: ReadonlyMap<string, number>;
  readonly times: number;
  /** The share kept for other words: as many as there were different ones, of all that stood there. */
  readonly unseen: number;
}

function contextsOf(counts: Counts): Map<string, Context> {
  return new Map(
    [...counts].map(([words, following]) => {
      const times = sum(following.values());
      const unseen = Math.max(leastUnseen, Math.min(mostUnseen, following.size / times));
      return [words, { following, times, unseen }];
    }),
  );
}

/** How likely the word is behind a context, where `shorter` is how likely it is behind a shorter one. */
function mixed(context: Context | undefined, word: string, shorter: number): number {
  if (!context) return shorter;
  const { following, times, unseen } = context;
  return ((1 - unseen) * (following.get(word) ?? 0)) / times + unseen * shorter;
}

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
  const [afterOne, afterTwo] = [twos, threes].map(contextsOf) as [Map<string, Context>, Map<string, Context>];
  const bigramOf = (one: string, word: string): number => mixed(afterOne.get(one), word, unigramOf(word));
  const backOffOf = (context: Context | undefined): string =>
    context === undefined ? '' : ` ${log10(context.unseen)}`;

  const lines = { one: [] as string[], two: [] as string[], three: [] as string[] };
  lines.one.push(`-99 ${start}${backOffOf(afterOne.get(start))}`);
  for (const word of unigrams.keys())
    lines.one.push(`${log10(unigramOf(word))} ${word}${backOffOf(afterOne.get(word))}`);
  for (const [one, { following }] of afterOne) {
    for (const word of following.keys()) {
      const two = `${one} ${word}`;
      lines.two.push(`${log10(bigramOf(one, word))} ${two}${backOffOf(afterTwo.get(two))}`);
    }
  }
  for (const [two, context] of afterTwo) {
    const [, last = ''] = two.split(' ');
    for (const word of context.following.keys())
      lines.three.push(`${log10(mixed(context, word, bigramOf(last, word)))} ${two} ${word}`);
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
