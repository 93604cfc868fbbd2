/** A narrow view of the PocketSphinx library; used inside the child process only. */
import { openLibrary } from './native-library.js';
import { wordsOfUnit } from './unit.js';

/** Where a decoder finds what it needs; all are paths. */
export interface DecoderFiles {
  /** Folder of the acoustic model. */
  readonly acousticModel: string;
  readonly stockLanguageModel: string;
  readonly domainLanguageModel: string;
  readonly dictionary: string;
}

/** A word of the best path, fillers left out; `p` is its posterior probability in the word lattice (0–1). */
export interface DecodedWord {
  readonly word: string;
  readonly p: number;
}

/** What was made of a sound. */
export interface Decoded {
  readonly words: readonly DecodedWord[];
  /** Other ways in which the same sound may be heard, the likeliest first; none where an engine tells of none. */
  readonly others: readonly string[];
  /** How far each of the others is behind the best, in nats; negative: ahead by the lattice alone. */
  readonly lags?: readonly number[] | undefined;
}

/** A loaded recogniser of one vocabulary. */
export interface Decoder {
  readonly engine: string;
  /** `samples`: 16 kHz, mono, 16-bit. */
  decode(samples: Int16Array): Decoded;
}

const languageModelAuto = 0;
/**
 * The stock model's weight, the domain model's being 1. The library raises both models' probabilities to the language weight
 * (6.5) before it adds them, so that a word is worth about what the better model gives it, and shares like a half and a
 * half change nothing: this is a fifth against four fifths, raised likewise.
 */
const stockAgainstDomain = 1e-4;

/** So many other hearings are told; of forty, the last twenty brought next to nothing. */
const mostOthers = 20;
/** Many paths of the lattice differ in pauses and in how a word is said alone: so many are looked at. */
const mostPaths = 400;
/** The library counts scores in logarithms to this base, and a path's in steps of 1,024 of them. */
const natsAStep = 1024 * Math.log(1.0001);

type Native = (...args: unknown[]) => unknown;

/** Loads the models; throws where koffi or the library is missing, or a file cannot be read. */
export async function loadDecoder(files: DecoderFiles): Promise<Decoder> {
  const library = await openLibrary();
  const native = (signature: string): Native => library.func(signature) as Native;

  const quiet = native('void err_set_logfp(void *file)');
  quiet(null);
  const argumentTable = native('void *ps_args(void)')();
  const words = ['slipnote', ...Object.entries(settings(files)).flat()];
  const config = native(
    'void *cmd_ln_parse_r(void *inout, void *defs, int argc, const char **argv, int strict)',
  )(null, argumentTable, words.length, words, 0);
  if (!config) throw new Error('the recogniser refused its settings');
  const decoder = native('void *ps_init(void *config)')(config);
  if (!decoder) throw new Error('the recogniser did not start: a model file is missing or broken');
  const logBase = native('void *ps_get_logmath(void *ps)')(decoder);

  const readModel = native('void *ngram_model_read(void *config, const char *path, int type, void *logmath)');
  const models = [files.domainLanguageModel, files.stockLanguageModel].map((path) => {
    const model = readModel(config, path, languageModelAuto, logBase);
    if (!model) throw new Error(`the language model ${path} could not be read`);
    return model;
  });
  const mix = native(
    'void *ngram_model_set_init(void *config, void **models, const char **names, const float *weights, int count)',
  )(config, models, ['domain', 'stock'], [1, stockAgainstDomain], 2);
  if (!mix) throw new Error('the language models could not be mixed');
  if (native('int ps_set_lm(void *ps, const char *name, void *model)')(decoder, 'mix', mix) !== 0)
    throw new Error('the mixed language model was refused');
  if (native('int ps_set_search(void *ps, const char *name)')(decoder, 'mix') !== 0)
    throw new Error('the mixed language model could not be chosen');

  const start = native('int ps_start_utt(void *ps)');
  const process = native(
    'int ps_process_raw(void *ps, const int16_t *data, size_t count, int noSearch, int whole)',
  );
  const end = native('int ps_end_utt(void *ps)');
  const firstSegment = native('void *ps_seg_iter(void *ps)');
  const nextSegment = native('void *ps_seg_next(void *segment)');
  const segmentWord = native('const char *ps_seg_word(void *segment)');
  const segmentPosterior = native('int ps_seg_prob(void *segment, void *a, void *l, void *b)');
  const expOf = native('double logmath_exp(void *logmath, int p)');
  const firstPath = native('void *ps_nbest(void *ps)');
  const nextPath = native('void *ps_nbest_next(void *path)');
  const pathWords = native('const char *ps_nbest_hyp(void *path, _Out_ int32_t *score)');
  const endOfPaths = native('void ps_nbest_free(void *path)');

  /** Texts other than the best, in the order of the lattice's paths. */
  const othersThan = (best: string): Pick<Decoded, 'others' | 'lags'> => {
    const scores = new Map<string, number>();
    const isEnough = (): boolean => scores.size - (scores.has(best) ? 1 : 0) === mostOthers;
    // The iterator frees itself at its end, and stands before its first path when it is made.
    let path = firstPath(decoder);
    for (let at = 0; path && at < mostPaths && !isEnough(); at++) {
      const score: [number] = [0];
      const words = pathWords(path, score);
      const text = typeof words === 'string' ? plainWords(words.split(' ')).join(' ') : best;
      if (!scores.has(text)) scores.set(text, natsAStep * score[0]);
      path = nextPath(path);
    }
    if (path) endOfPaths(path);
    // The best is found by a search of its own and may be none of these paths: then it counts as good as the first of them.
    const first = scores.get(best) ?? Math.max(...scores.values());
    scores.delete(best);
    return { others: [...scores.keys()], lags: [...scores.values()].map((score) => first - score) };
  };

  return {
    engine: 'pocketsphinx',
    decode(samples) {
      if (start(decoder) !== 0) throw new Error('the recogniser could not begin');
      process(decoder, samples, samples.length, 0, 1);
      end(decoder);
      const heard: DecodedWord[] = [];
      for (let segment = firstSegment(decoder); segment; segment = nextSegment(segment)) {
        const p = Number(expOf(logBase, segmentPosterior(segment, null, null, null)));
        for (const word of plainWords([String(segmentWord(segment))]))
          heard.push({ word, p: Math.min(1, p) });
      }
      return { words: heard, ...othersThan(heard.map(({ word }) => word).join(' ')) };
    },
  };
}

/** Words as they are written: without fillers, the number of a way of saying, and the joints of units. */
function plainWords(decoded: readonly string[]): string[] {
  return decoded
    .filter((word) => word !== '' && !/^[<[+]/.test(word))
    .flatMap((word) => wordsOfUnit(word.replace(/\(\d+\)$/, '')));
}

function settings(files: DecoderFiles): Record<string, string> {
  // Its own removal of noise and of silence cost more words than it saved (DEVELOPERS.md, "Voice").
  return {
    '-hmm': files.acousticModel,
    '-dict': files.dictionary,
    '-remove_noise': 'no',
    '-remove_silence': 'no',
  };
}
