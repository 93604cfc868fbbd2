/** The one place that knows the decoder of Ogg/Opus. */
import type { OggOpusDecoder } from 'ogg-opus-decoder';

/** libopus decodes straight to these rates, so no resampling of our own is needed. */
type OpusRateHz = 8000 | 12_000 | 16_000 | 24_000 | 48_000;

interface Decoded {
  /** One channel, all channels averaged; −1 to 1. */
  readonly samples: Float32Array;
  readonly rateHz: number;
}

/** Nothing where the file is too broken to hold a sound; a damaged packet alone is passed over. */
export async function decodeOpus(bytes: Uint8Array, rateHz: OpusRateHz): Promise<Decoded | undefined> {
  // The package's types leave out the sample rate that its documentation offers.
  const settings = { sampleRate: rateHz } as ConstructorParameters<typeof OggOpusDecoder>[0];
  // Many files, which nobody needs who is never spoken to.
  const decoder = new (await import('ogg-opus-decoder')).OggOpusDecoder(settings);
  try {
    await decoder.ready;
    const { channelData } = await decoder.decodeFile(bytes);
    return { samples: averaged(channelData), rateHz };
  } catch {
    return undefined;
  } finally {
    decoder.free();
  }
}

function averaged(channels: readonly Float32Array[]): Float32Array {
  const [first = new Float32Array()] = channels;
  if (channels.length < 2) return first;
  return first.map(
    (_, at) => channels.reduce((sum, channel) => sum + (channel[at] ?? 0), 0) / channels.length,
  );
}
