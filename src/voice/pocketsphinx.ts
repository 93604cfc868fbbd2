/** A narrow view of the PocketSphinx library, called in place through koffi; used inside the child process only. */
import type { LibraryHandle } from 'koffi';
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

/** A loaded recogniser of one vocabulary. */
export interface Decoder {
  readonly engine: string;
  /** `samples`: 16 kHz, mono, 16-bit. */
  decode(samples: Int16Array): DecodedWord[];
}

const libraryName = 'libpocketsphinx.so.3';
const languageModelAuto = 0;
/**
 * The stock model's weight, the domain model's being 1. The library raises both models' probabilities to the language weight
 * (6.5) before it adds them, so that a word is worth about what the better model gives it, and shares like a half and a
 * half change nothing: this is a fifth against four fifths, raised likewise.
 */
const stockAgainstDomain = 1e-4;

type Native = (...args: unknown[]) => unknown;

/** Loads the models; throws where koffi or the library is missing, or a file cannot be read. */
export async function loadDecoder(files: DecoderFiles): Promise<Decoder> {
  const { default: koffi } = await import('koffi');
  const library: LibraryHandle = koffi.load(libraryName);
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

  return {
    engine: 'pocketsphinx',
    decode(samples) {
      if (start(decoder) !== 0) throw new Error('the recogniser could not begin');
      process(decoder, samples, samples.length, 0, 1);
      end(decoder);
      const heard: DecodedWord[] = [];
      for (let segment = firstSegment(decoder); segment; segment = nextSegment(segment)) {
        const word = String(segmentWord(segment));
        if (/^[<[+]/.test(word)) continue;
        const p = Number(expOf(logBase, segmentPosterior(segment, null, null, null)));
        for (const each of wordsOfUnit(word.replace(/\(\d+\)$/, '')))
          heard.push({ word: each, p: Math.min(1, p) });
      }
      return heard;
    },
  };
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
