/** Reads WAV files of uncompressed samples (RIFF WAVE, PCM 8–32 bit or 32-bit float), as recorders write them. */

export interface Wav {
  /** One channel, all channels averaged; −1 to 1. */
  readonly samples: Float32Array;
  readonly rateHz: number;
}

interface Layout {
  readonly isFloat: boolean;
  readonly channels: number;
  readonly rateHz: number;
  readonly bits: number;
  readonly dataAt: number;
  readonly dataBytes: number;
}

const pcm = 1;
const float = 3;
const extensible = 0xfffe;

export function isWav(bytes: Uint8Array): boolean {
  return bytes.length >= 12 && tag(bytes, 0) === 'RIFF' && tag(bytes, 8) === 'WAVE';
}

/** Length by the header, without reading the samples; nothing where it is no WAV that can be read. */
export function wavSeconds(bytes: Uint8Array): number | undefined {
  const layout = layoutOf(bytes);
  return layout && layout.dataBytes / ((layout.bits / 8) * layout.channels * layout.rateHz);
}

export function readWav(bytes: Uint8Array): Wav | undefined {
  const layout = layoutOf(bytes);
  if (!layout) return undefined;
  const { channels, bits, dataAt, dataBytes, isFloat, rateHz } = layout;
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const width = bits / 8;
  const samples = new Float32Array(Math.floor(dataBytes / (width * channels)));
  for (let frame = 0; frame < samples.length; frame++) {
    let sum = 0;
    for (let channel = 0; channel < channels; channel++)
      sum += sampleAt(view, dataAt + (frame * channels + channel) * width, bits, isFloat);
    samples[frame] = Number.isFinite(sum) ? sum / channels : 0;
  }
  return { samples, rateHz };
}

function layoutOf(bytes: Uint8Array): Layout | undefined {
  if (!isWav(bytes)) return undefined;
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  let format: Omit<Layout, 'dataAt' | 'dataBytes'> | undefined;
  for (let at = 12; at + 8 <= bytes.length;) {
    const size = view.getUint32(at + 4, true);
    const bodyAt = at + 8;
    if (tag(bytes, at) === 'fmt ' && bodyAt + 16 <= bytes.length) format = formatOf(view, bodyAt, size);
    if (tag(bytes, at) === 'data') {
      // A recorder that was cut off leaves a size of nought or too much: what is there counts.
      const dataBytes = Math.min(size === 0 ? Infinity : size, bytes.length - bodyAt);
      return format && { ...format, dataAt: bodyAt, dataBytes };
    }
    at = bodyAt + size + (size % 2);
  }
  return undefined;
}

function formatOf(
  view: DataView,
  at: number,
  size: number,
): Omit<Layout, 'dataAt' | 'dataBytes'> | undefined {
  const named = view.getUint16(at, true);
  const isLong = named === extensible && size >= 26 && at + 26 <= view.byteLength;
  const coding = isLong ? view.getUint16(at + 24, true) : named;
  const [channels, rateHz, bits] = [
    view.getUint16(at + 2, true),
    view.getUint32(at + 4, true),
    view.getUint16(at + 14, true),
  ];
  const isKnown = coding === pcm ? [8, 16, 24, 32].includes(bits) : coding === float && bits === 32;
  if (!isKnown || channels < 1 || channels > 8 || rateHz < 4000 || rateHz > 192_000) return undefined;
  return { isFloat: coding === float, channels, rateHz, bits };
}

function sampleAt(view: DataView, at: number, bits: number, isFloat: boolean): number {
  if (isFloat) return view.getFloat32(at, true);
  if (bits === 8) return (view.getUint8(at) - 128) / 128;
  if (bits === 16) return view.getInt16(at, true) / 32_768;
  if (bits === 24) return ((view.getInt8(at + 2) << 16) | view.getUint16(at, true)) / 8_388_608;
  return view.getInt32(at, true) / 2_147_483_648;
}

function tag(bytes: Uint8Array, at: number): string {
  return String.fromCharCode(...bytes.subarray(at, at + 4));
}
