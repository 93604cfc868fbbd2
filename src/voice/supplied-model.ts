/** The second engine: a model that the user supplies, run by sherpa-onnx. No such model is at hand here: see DEVELOPERS.md. */
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { recogniserRateHz } from './sound.js';
import { spokenWords } from './spoken.js';
import type { HeardWord, Vocabulary } from './transcriber.js';

/** What is used of the package: an offline recogniser, and streams that take hotwords. */
interface Sherpa {
  readonly OfflineRecognizer: new (config: object) => {
    createStream(hotwords?: string): {
      acceptWaveform(sound: { samples: Float32Array; sampleRate: number }): void;
    };
    decode(stream: object): void;
    getResult(stream: object): { readonly text?: string };
  };
}

/** Files of a model by their part; which parts there are tells the kind of model. */
export interface ModelPlan {
  readonly kind: 'transducer' | 'whisper' | 'moonshine' | 'ctc';
  /** `modelConfig` of sherpa-onnx. */
  readonly modelConfig: Readonly<Record<string, unknown>>;
  /** Only a transducer can be told the grower's own names. */
  readonly takesHotwords: boolean;
}

/** Tells from a folder's file names what kind of model it holds; an 8-bit file is preferred to its full-size twin. */
export function planModel(folder: string, fileNames: readonly string[]): ModelPlan | undefined {
  const find = (pattern: RegExp): string | undefined => {
    const fits = fileNames.filter((name) => pattern.test(name)).sort();
    const chosen = fits.find((name) => name.includes('int8')) ?? fits[0];
    return chosen && join(folder, chosen);
  };
  const part = (name: string): string | undefined =>
    find(new RegExp(`(?:^|[-_.])${name}(?:[-_.].*)?\\.(?:onnx|ort)$`));
  const tokens = find(/tokens\.txt$/);
  if (!tokens) return undefined;
  const vocabulary = find(/^bpe\.(?:vocab|model)$/);
  const common = { tokens, numThreads: 2, provider: 'cpu', debug: 0 };

  const [preprocessor, uncachedDecoder, cachedDecoder] = [
    'preprocess',
    'uncached_decode',
    'cached_decode',
  ].map(part);
  const moonshineEncoder = part('encode');
  if (preprocessor && moonshineEncoder && uncachedDecoder && cachedDecoder)
    return {
      kind: 'moonshine',
      modelConfig: {
        ...common,
        moonshine: { preprocessor, encoder: moonshineEncoder, uncachedDecoder, cachedDecoder },
      },
      takesHotwords: false,
    };
  const [encoder, decoder, joiner] = ['encoder', 'decoder', 'joiner'].map(part);
  if (encoder && decoder && joiner)
    return {
      kind: 'transducer',
      modelConfig: {
        ...common,
        transducer: { encoder, decoder, joiner },
        ...(vocabulary ? { modelingUnit: 'bpe', bpeVocab: vocabulary } : {}),
      },
      takesHotwords: vocabulary?.endsWith('.vocab') ?? false,
    };
  if (encoder && decoder)
    return {
      kind: 'whisper',
      modelConfig: { ...common, whisper: { encoder, decoder, language: 'en', task: 'transcribe' } },
      takesHotwords: false,
    };
  const model = part('model');
  if (model) return { kind: 'ctc', modelConfig: { ...common, nemoCtc: { model } }, takesHotwords: false };
  return undefined;
}

export interface SuppliedModel {
  readonly engine: string;
  hear(samples: Float32Array, vocabulary: Vocabulary): HeardWord[];
}

/** Throws, with what to do, where the folder, the package or the model will not do. */
export async function loadSuppliedModel(folder: string): Promise<SuppliedModel> {
  const plan = planModel(folder, readdirSync(folder));
  if (!plan)
    throw new Error(`${folder} holds no speech model: unpack one of sherpa-onnx there, with its tokens.txt`);
  // A name in a variable: the package is optional, and the build must not ask for it.
  const packageName = 'sherpa-onnx-node';
  const loaded = (await import(packageName)) as Partial<Sherpa> & { readonly default?: Sherpa };
  const sherpa = loaded.default ?? (loaded as Sherpa);
  const recogniser = new sherpa.OfflineRecognizer({
    featConfig: { sampleRate: recogniserRateHz, featureDim: 80 },
    modelConfig: plan.modelConfig,
    decodingMethod: plan.takesHotwords ? 'modified_beam_search' : 'greedy_search',
    maxActivePaths: 4,
    hotwordsScore: 2,
  });
  return {
    engine: `model-${plan.kind}`,
    hear(samples, vocabulary) {
      const stream = recogniser.createStream(plan.takesHotwords ? hotwords(vocabulary) : undefined);
      stream.acceptWaveform({ samples, sampleRate: recogniserRateHz });
      recogniser.decode(stream);
      // These models give no posterior of words: nothing they hear is sure, so every note waits for a yes.
      return spokenWords(recogniser.getResult(stream).text ?? '').map((word) => ({ word, p: 0 }));
    },
  };
}

/** The grower's names in the form that a stream takes: phrases of capitals, a slash between. */
export function hotwords(vocabulary: Vocabulary): string {
  const phrases = [...vocabulary.varieties, ...vocabulary.places].map((name) =>
    spokenWords(name).join(' ').toUpperCase(),
  );
  return [...new Set(phrases)].filter((phrase) => phrase !== '').join('/');
}
