/** Turns the bytes of a sound file into the samples that recognisers take: 16 kHz, mono. */
import { isOgg, isOpus, opusSeconds } from './ogg-pages.js';
import { decodeOpus } from './opus.js';
import { resample } from './resampling.js';
import type { Unheard } from './transcriber.js';
import { isWav, readWav, wavSeconds } from './wav.js';

export const recogniserRateHz = 16_000;

export interface Sound {
  readonly kind: 'sound';
  /** −1 to 1, at `recogniserRateHz`. */
  readonly samples: Float32Array;
  readonly seconds: number;
}

type NotAudio = Extract<Unheard, { kind: 'notAudio' }>;

/** What the file says of its own length, cheaply; `notAudio` where it is none of the kinds that can be read. */
export function soundLength(
  bytes: Uint8Array,
): { readonly kind: 'length'; readonly seconds: number } | NotAudio {
  if (bytes.length === 0) return notAudio('the file is empty');
  if (isWav(bytes)) {
    const seconds = wavSeconds(bytes);
    return seconds === undefined
      ? notAudio('the WAV file is broken or compressed')
      : { kind: 'length', seconds };
  }
  if (!isOgg(bytes)) return notAudio('the file is neither Ogg/Opus nor WAV');
  if (!isOpus(bytes)) return notAudio('the Ogg file holds no Opus');
  const seconds = opusSeconds(bytes);
  return seconds === undefined ? notAudio('the Ogg file is broken') : { kind: 'length', seconds };
}

/** Decodes; never throws on what a file holds. */
export async function readSound(bytes: Uint8Array): Promise<Sound | NotAudio> {
  const length = soundLength(bytes);
  if (length.kind === 'notAudio') return length;
  const decoded = isWav(bytes) ? readWav(bytes) : await decodeOpus(bytes, recogniserRateHz);
  if (!decoded || decoded.samples.length === 0) return notAudio('the file holds no sound');
  const samples = resample(decoded.samples, decoded.rateHz, recogniserRateHz);
  return { kind: 'sound', samples, seconds: samples.length / recogniserRateHz };
}

/** How far below the sound the added floor lies; -40 dB cannot be heard beside speech. */
const floorDecibels = -40;

/**
 * Adds a faint noise floor. Codecs and voices leave stretches of digital silence, whose logarithm without bound spoils the
 * mean that recognisers subtract; with the floor fewer words were misheard (DEVELOPERS.md, "Voice").
 */
export function withFloor(samples: Float32Array): Float32Array {
  const power = samples.reduce((sum, value) => sum + value * value, 0) / Math.max(1, samples.length);
  const amplitude = Math.sqrt(3 * power) * 10 ** (floorDecibels / 20);
  let state = 1;
  return samples.map((value) => {
    // A linear congruential generator (Numerical Recipes): the same sound is always heard the same.
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return value + amplitude * (state / 2 ** 31 - 1);
  });
}

/** As 16-bit numbers, clipped. */
export function sixteenBit(samples: Float32Array): Int16Array {
  return Int16Array.from(samples, (value) => Math.max(-32_768, Math.min(32_767, Math.round(value * 32_767))));
}

function notAudio(why: string): NotAudio {
  return { kind: 'notAudio', why };
}
