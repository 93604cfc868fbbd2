/** The contract of speech: a sound goes in, words with their posteriors or a plain failure come out. */

/** The names a grower is likely to say, as written. */
export interface Vocabulary {
  readonly varieties: readonly string[];
  /** Crops in the singular. */
  readonly crops: readonly string[];
  readonly places: readonly string[];
  /** Labels of batches; they are spelt aloud. */
  readonly labels: readonly string[];
}

/** `p`: the engine's posterior probability of the word, 0–1; 0 where an engine gives none. */
export interface HeardWord {
  readonly word: string;
  readonly p: number;
}

export interface Heard {
  readonly kind: 'heard';
  /** Lower-case words, numbers spelt out, no punctuation; none where nothing was said. */
  readonly words: readonly HeardWord[];
  /** Other ways in which the same sound may be heard, the likeliest first; none where an engine tells of none. */
  readonly others: readonly string[];
  /** How far each of the others is behind the words, in nats; negative: ahead by sound alone. Absent where an engine does not tell. */
  readonly lags?: readonly number[] | undefined;
  /** Length of the sound. */
  readonly seconds: number;
  readonly engine: string;
}

/** Why a sound could not be heard. */
export type Unheard =
  | { readonly kind: 'tooLong'; readonly seconds: number; readonly limitSeconds: number }
  | { readonly kind: 'tooLarge'; readonly bytes: number; readonly limitBytes: number }
  | { readonly kind: 'notAudio'; readonly why: string }
  | { readonly kind: 'engineMissing'; readonly why: string }
  | { readonly kind: 'engineFailed'; readonly why: string }
  | { readonly kind: 'timedOut'; readonly limitSeconds: number };

export type Hearing = Heard | Unheard;

export interface Transcriber {
  /** The engine's name as `Heard` gives it. */
  readonly engine: string;
  /** Never throws. Calls wait for one another, the caller's other work does not wait for them. */
  transcribe(audio: Uint8Array, vocabulary: Vocabulary): Promise<Hearing>;
  /** Ends the child process, if one runs; what waits is answered `engineFailed`. */
  close(): Promise<void>;
}

/** What is refused before the engine is troubled, and how long it may take. */
export interface SoundLimits {
  readonly seconds: number;
  readonly bytes: number;
  /** From the moment that the engine gets the sound; time in the queue does not count. */
  readonly answerSeconds: number;
}

/** Two minutes of Opus at the rate of voice notes are half a megabyte; a WAV of that length is twenty. */
export const soundLimits: SoundLimits = { seconds: 120, bytes: 25_000_000, answerSeconds: 90 };
