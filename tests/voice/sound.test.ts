/** From files to samples: lengths, levels and what must not fold into the speech band. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { resample } from '../../src/voice/resampling.js';
import { readSound, sixteenBit } from '../../src/voice/sound.js';
import { wavFile } from './wav-file.js';

const tone = (hertz: number, rateHz: number, seconds: number): Float32Array =>
  Float32Array.from(
    { length: rateHz * seconds },
    (_, at) => 0.5 * Math.sin((2 * Math.PI * hertz * at) / rateHz),
  );

/** Level of the middle of a sound in decibels against a tone of half scale. */
function decibels(samples: Float32Array): number {
  const middle = samples.subarray(samples.length / 4, (3 * samples.length) / 4);
  const power = middle.reduce((sum, value) => sum + value * value, 0) / middle.length;
  return 10 * Math.log10(power / 0.125);
}

describe('sound', () => {
  it('keeps the speech band when the rate is lowered, and drops what lies above it', () => {
    for (const rateHz of [44_100, 48_000]) {
      expect(Math.abs(decibels(resample(tone(1000, rateHz, 1), rateHz, 16_000)))).toBeLessThan(0.1);
      expect(decibels(resample(tone(9500, rateHz, 1), rateHz, 16_000))).toBeLessThan(-40);
    }
  });

  it('keeps a tone when the rate is raised', () => {
    expect(Math.abs(decibels(resample(tone(1000, 8000, 1), 8000, 16_000)))).toBeLessThan(0.1);
  });

  it('reads a WAV file of any rate and both channels', async () => {
    const sound = await readSound(wavFile(tone(440, 44_100, 1), 44_100));
    if (sound.kind !== 'sound') throw new Error(sound.why);
    expect(sound.seconds).toBeCloseTo(1, 2);
    const both = await readSound(wavFile(Float32Array.from([0.5, -0.5, 0.5, -0.5]), 16_000, 2));
    if (both.kind !== 'sound') throw new Error(both.why);
    expect(both.samples).toHaveLength(2);
    for (const value of both.samples) expect(Math.abs(value)).toBeLessThan(0.001);
  });

  it('decodes Ogg/Opus to the length that its pages tell', async () => {
    const sound = await readSound(readFileSync('fixtures/voice/bicycle-thief.ogg'));
    if (sound.kind !== 'sound') throw new Error(sound.why);
    expect(sound.seconds).toBeGreaterThan(2.8);
    expect(sound.seconds).toBeLessThan(3.1);
    expect(Math.max(...sound.samples)).toBeGreaterThan(0.1);
  });

  it('answers a truncated Ogg file with what is there, or that it is no sound', async () => {
    const clip = readFileSync('fixtures/voice/bicycle-thief.ogg');
    for (const bytes of [60, 200, 3000, clip.length - 10]) {
      const sound = await readSound(clip.subarray(0, bytes));
      expect(['sound', 'notAudio']).toContain(sound.kind);
    }
  });

  it('clips what is louder than full scale', () => {
    expect([...sixteenBit(Float32Array.from([2, -2, 0]))]).toEqual([32_767, -32_768, 0]);
  });
});
