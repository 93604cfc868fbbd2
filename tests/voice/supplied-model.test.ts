/** The engine for a model that the user brings, as far as a machine without one allows. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { openTranscriber } from '../../src/voice/engines.js';
import { hotwords, planModel } from '../../src/voice/supplied-model.js';

const folder = mkdtempSync(join(tmpdir(), 'slipnote-model-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const vocabulary = { varieties: ["Grandad's Elbow"], crops: [], places: ['mist bench 1'], labels: [] };

describe('a supplied model', () => {
  // The lists are of the file names in the archives of these models, as the documentation of sherpa-onnx prints them.
  it.each([
    [
      'transducer',
      true,
      [
        'encoder-epoch-99-avg-1.int8.onnx',
        'encoder-epoch-99-avg-1.onnx',
        'decoder-epoch-99-avg-1.onnx',
        'joiner-epoch-99-avg-1.onnx',
        'bpe.vocab',
        'tokens.txt',
      ],
    ],
    ['transducer', false, ['encoder.int8.onnx', 'decoder.onnx', 'joiner.onnx', 'tokens.txt']],
    ['whisper', false, ['tiny.en-encoder.onnx', 'tiny.en-decoder.onnx', 'tiny.en-tokens.txt']],
    [
      'moonshine',
      false,
      [
        'preprocess.onnx',
        'encode.int8.onnx',
        'uncached_decode.int8.onnx',
        'cached_decode.int8.onnx',
        'tokens.txt',
      ],
    ],
    ['ctc', false, ['model.int8.onnx', 'tokens.txt']],
  ] as const)('is known as %s (own names: %s) by its files', (kind, takesHotwords, files) => {
    expect(planModel('/m', files)).toMatchObject({ kind, takesHotwords });
  });

  it('is none without its tokens or its parts', () => {
    expect(planModel('/m', ['encoder.onnx', 'decoder.onnx', 'joiner.onnx'])).toBeUndefined();
    expect(planModel('/m', ['tokens.txt', 'README.md'])).toBeUndefined();
  });

  it('is told the names of the ledger as phrases', () => {
    expect(hotwords(vocabulary)).toBe("GRANDAD'S ELBOW/MIST BENCH ONE");
  });

  it('that is broken is answered, and the program lives on', async () => {
    for (const name of ['encoder.onnx', 'decoder.onnx', 'joiner.onnx'])
      writeFileSync(join(folder, name), 'no model');
    writeFileSync(join(folder, 'tokens.txt'), '<blk> 0\na 1\n');
    const transcriber = openTranscriber({ kind: 'model', folder }, { dataFolder: folder });
    const hearing = await transcriber.transcribe(
      readFileSync('fixtures/voice/bicycle-thief.ogg'),
      vocabulary,
    );
    expect(hearing).toMatchObject({ kind: 'engineFailed' });
    await transcriber.close();
  }, 90_000);

  it('whose folder is missing is named', async () => {
    const transcriber = openTranscriber({ kind: 'model', folder: '/nonexistent' }, { dataFolder: folder });
    const hearing = await transcriber.transcribe(
      readFileSync('fixtures/voice/bicycle-thief.ogg'),
      vocabulary,
    );
    expect(hearing).toMatchObject({ kind: 'engineMissing' });
  });
});
