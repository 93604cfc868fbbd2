/** What is refused without troubling an engine, and what is said where there is none. */
import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { openTranscriber, speechFault } from '../../src/voice/engines.js';
import { soundLength } from '../../src/voice/sound.js';
import { wavFile } from './wav-file.js';

const clip = readFileSync('fixtures/voice/bicycle-thief.ogg');
const nobody = { varieties: [], crops: [], places: [], labels: [] };
const nowhere = { dataFolder: '/nonexistent', stockFolder: '/nonexistent' };
const limits = { seconds: 2, bytes: 1_000_000, answerSeconds: 5 };
const transcriber = openTranscriber({ kind: 'pocketsphinx' }, nowhere, limits);

describe('refusals', () => {
  it('refuses a note that is too long by its pages, before decoding', async () => {
    const hearing = await transcriber.transcribe(clip, nobody);
    expect(hearing).toMatchObject({ kind: 'tooLong', limitSeconds: 2 });
  });

  it('refuses a file that is too large', async () => {
    const hearing = await transcriber.transcribe(new Uint8Array(1_000_001), nobody);
    expect(hearing).toEqual({ kind: 'tooLarge', bytes: 1_000_001, limitBytes: 1_000_000 });
  });

  it('tells broken and foreign files from sound, each by its own words', () => {
    const vorbis = Buffer.from(clip);
    vorbis.write('\x01vorbis!', 28, 'latin1');
    expect(soundLength(new Uint8Array())).toEqual({ kind: 'notAudio', why: 'the file is empty' });
    expect(soundLength(vorbis)).toEqual({ kind: 'notAudio', why: 'the Ogg file holds no Opus' });
    expect(soundLength(Buffer.from('ID3\x04 an MP3'))).toMatchObject({
      why: 'the file is neither Ogg/Opus nor WAV',
    });
    expect(soundLength(clip.subarray(0, 40))).toMatchObject({ kind: 'notAudio' });
    expect(soundLength(Buffer.from('RIFF....WAVEfmt '))).toMatchObject({
      why: 'the WAV file is broken or compressed',
    });
  });

  it('never throws, whatever the bytes', () => {
    const damaged = fc
      .tuple(
        fc.constantFrom(clip, wavFile(new Float32Array(50), 8000)),
        fc.nat(),
        fc.integer({ min: 0, max: 255 }),
        fc.nat(),
      )
      .map(([file, at, value, cut]) => {
        const bytes = Uint8Array.from(file.subarray(0, cut % (file.length + 1)));
        if (bytes.length > 0) bytes[at % bytes.length] = value;
        return bytes;
      });
    fc.assert(
      fc.property(fc.oneof(fc.uint8Array(), damaged), (bytes) => {
        expect(['length', 'notAudio']).toContain(soundLength(bytes).kind);
      }),
    );
  });

  it('says what to install where the engine is missing', async () => {
    const deaf = openTranscriber({ kind: 'best' }, nowhere);
    const hearing = await deaf.transcribe(clip, nobody);
    expect(hearing).toMatchObject({ kind: 'engineMissing' });
    expect(speechFault({ kind: 'best' }, '/nonexistent')).toContain(
      'apt-get install pocketsphinx pocketsphinx-en-us',
    );
  });

  it('says that speech is off where it was switched off', async () => {
    const off = openTranscriber({ kind: 'off' }, nowhere);
    expect(await off.transcribe(clip, nobody)).toEqual({
      kind: 'engineMissing',
      why: 'SLIPNOTE_SPEECH is off',
    });
  });

  it('answers what still waits when it is closed', async () => {
    const closing = openTranscriber({ kind: 'pocketsphinx' }, nowhere);
    await closing.close();
    expect(await closing.transcribe(clip, nobody)).toMatchObject({ kind: 'engineFailed' });
  });
});
