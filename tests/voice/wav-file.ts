/** Writes a WAV file of 16-bit samples for tests. */
export function wavFile(samples: Float32Array, rateHz: number, channels = 1): Buffer {
  const file = Buffer.alloc(44 + samples.length * 2);
  file.write('RIFF', 0, 'latin1');
  file.writeUInt32LE(file.length - 8, 4);
  file.write('WAVEfmt ', 8, 'latin1');
  file.writeUInt32LE(16, 16);
  file.writeUInt16LE(1, 20);
  file.writeUInt16LE(channels, 22);
  file.writeUInt32LE(rateHz, 24);
  file.writeUInt32LE(rateHz * 2 * channels, 28);
  file.writeUInt16LE(2 * channels, 32);
  file.writeUInt16LE(16, 34);
  file.write('data', 36, 'latin1');
  file.writeUInt32LE(samples.length * 2, 40);
  samples.forEach((value, at) => file.writeInt16LE(Math.round(value * 32_767), 44 + at * 2));
  return file;
}
