/** The recogniser as a program, for machines where its library cannot be called: the domain model alone, no mix. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { DecodedWord, Decoder, DecoderFiles } from './pocketsphinx.js';
import { recogniserRateHz } from './sound.js';
import { wordsOfUnit } from './unit.js';

const program = 'pocketsphinx_continuous';

/** Throws where the program is not installed. */
export function loadProgram(files: DecoderFiles): Decoder {
  if (spawnSync(program, ['-h'], { stdio: 'ignore' }).error) throw new Error(`${program} is not installed`);
  return {
    engine: 'pocketsphinx-program',
    decode(samples) {
      const folder = mkdtempSync(join(tmpdir(), 'slipnote-speech-'));
      try {
        const sound = join(folder, 'note.wav');
        writeFileSync(sound, wavOf(samples));
        const { status, stdout } = spawnSync(
          program,
          ['-infile', sound, '-hmm', files.acousticModel, '-lm', files.domainLanguageModel].concat([
            '-dict',
            files.dictionary,
            '-time',
            'yes',
            '-logfn',
            '/dev/null',
          ]),
          { encoding: 'utf8' },
        );
        if (status !== 0) throw new Error(`${program} failed`);
        return { words: wordsIn(stdout), others: [] };
      } finally {
        rmSync(folder, { recursive: true, force: true });
      }
    },
  };
}

/** Its lines "word start end posterior", fillers left out. */
export function wordsIn(output: string): DecodedWord[] {
  return output.split('\n').flatMap((line) => {
    const [, word = '', p = ''] =
      /^([a-z'._]+)(?:\(\d+\))? [\d.]+ [\d.]+ ([\d.e+-]+)$/.exec(line.trim()) ?? [];
    return word === '' ? [] : wordsOfUnit(word).map((each) => ({ word: each, p: Math.min(1, Number(p)) }));
  });
}

function wavOf(samples: Int16Array): Buffer {
  const header = Buffer.alloc(44);
  header.write('RIFF', 0, 'latin1');
  header.writeUInt32LE(36 + samples.byteLength, 4);
  header.write('WAVEfmt ', 8, 'latin1');
  header.writeUInt32LE(16, 16);
  header.writeUInt16LE(1, 20);
  header.writeUInt16LE(1, 22);
  header.writeUInt32LE(recogniserRateHz, 24);
  header.writeUInt32LE(2 * recogniserRateHz, 28);
  header.writeUInt16LE(2, 32);
  header.writeUInt16LE(16, 34);
  header.write('data', 36, 'latin1');
  header.writeUInt32LE(samples.byteLength, 40);
  return Buffer.concat([header, Buffer.from(samples.buffer, samples.byteOffset, samples.byteLength)]);
}
