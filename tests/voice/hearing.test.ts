/** The way from a sound's bytes to words, with the engine that Debian packages. */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, it } from 'vitest';
import { openTranscriber } from '../../src/voice/engines.js';
import { debianStockFolder, modelFor, stockFiles } from '../../src/voice/model-folder.js';
import { loadProgram } from '../../src/voice/pocketsphinx-program.js';
import { startListening } from '../../src/voice/listening-child.js';
import type { Heard, Vocabulary } from '../../src/voice/transcriber.js';
import { describeWith } from './installed.js';

const clip = readFileSync('fixtures/voice/bicycle-thief.ogg');
const dataFolder = mkdtempSync(join(tmpdir(), 'slipnote-hearing-'));
const vocabulary: Vocabulary = {
  varieties: ['Bicycle Thief', 'Copper Lantern'],
  crops: ['dahlia'],
  places: [],
  labels: ['BT1'],
};
const slow = 180_000;

afterAll(() => rmSync(dataFolder, { recursive: true, force: true }));

const textOf = (heard: Heard): string => heard.words.map(({ word }) => word).join(' ');

describeWith(['pocketsphinx pocketsphinx-en-us'], 'hearing', () => {
  it(
    'hears act, number and name of a synthetic note that is in no phrase list, with a posterior for each word',
    async () => {
      const transcriber = openTranscriber({ kind: 'pocketsphinx' }, { dataFolder });
      const hearing = await transcriber.transcribe(clip, vocabulary);
      await transcriber.close();
      if (hearing.kind !== 'heard') throw new Error(JSON.stringify(hearing));
      expect(textOf(hearing)).toMatch(/bicycle thief into three inch pots$/);
      expect(hearing.engine).toBe('pocketsphinx');
      // opusinfo (opus-tools, Debian) gives the clip's playback length.
      expect(hearing.seconds).toBeCloseTo(2.94, 1);
      for (const { p } of hearing.words) expect(p >= 0 && p <= 1).toBe(true);
      // What else it may have been: other texts, none twice, plain words as the best are.
      expect(hearing.others.length).toBeGreaterThan(0);
      expect(hearing.others.length).toBeLessThanOrEqual(20);
      expect(new Set([textOf(hearing), ...hearing.others]).size).toBe(1 + hearing.others.length);
      for (const other of hearing.others) expect(other).toMatch(/^[a-z' .]+$/);
      // Each is behind by some nats: none absurdly far, and not all of them alike.
      expect(hearing.lags).toHaveLength(hearing.others.length);
      for (const lag of hearing.lags ?? []) expect(Math.abs(lag)).toBeLessThan(500);
      expect(new Set(hearing.lags).size).toBeGreaterThan(1);
    },
    slow,
  );

  it(
    'keeps a built model and builds another only for other names',
    async () => {
      const speech = join(dataFolder, 'speech');
      const first = await modelFor(vocabulary, speech, debianStockFolder);
      const built = statSync(first.domainLanguageModel).mtimeMs;
      const again = await modelFor(
        { ...vocabulary, varieties: ['Copper Lantern', 'Bicycle Thief'] },
        speech,
        debianStockFolder,
      );
      expect(again).toEqual(first);
      expect(statSync(again.domainLanguageModel).mtimeMs).toBe(built);
      const other = await modelFor({ ...vocabulary, varieties: ['Salt Harrier'] }, speech, debianStockFolder);
      expect(other.dictionary).not.toBe(first.dictionary);
      expect(readFileSync(other.dictionary, 'utf8')).toMatch(/^harrier /m);
      expect(readdirSync(speech)).toHaveLength(2);
    },
    slow,
  );

  it(
    'hears again after its process was killed, and stays below 200 MB',
    async () => {
      const files = await modelFor(vocabulary, join(dataFolder, 'speech'), debianStockFolder);
      const child = await startListening({ engine: 'pocketsphinx', files });
      const heard = await child.hear({ audio: clip, vocabulary }, 90);
      expect(heard.kind).toBe('heard');
      const peakKilobytes = Number(
        /VmHWM:\s+(\d+)/.exec(readFileSync(`/proc/${child.pid}/status`, 'utf8'))?.[1],
      );
      expect(peakKilobytes).toBeLessThan(200_000);
      const interrupted = child.hear({ audio: clip, vocabulary }, 90);
      process.kill(child.pid ?? 0, 'SIGKILL');
      expect(await interrupted).toMatchObject({ kind: 'engineFailed' });
      expect(child.isAlive).toBe(false);

      const transcriber = openTranscriber({ kind: 'pocketsphinx' }, { dataFolder });
      expect((await transcriber.transcribe(clip, vocabulary)).kind).toBe('heard');
      await transcriber.close();
    },
    slow,
  );

  it(
    'gives up when its time is over, and kills the process',
    async () => {
      const files = await modelFor(vocabulary, join(dataFolder, 'speech'), debianStockFolder);
      const child = await startListening({ engine: 'pocketsphinx', files });
      expect(await child.hear({ audio: clip, vocabulary }, 0.01)).toEqual({
        kind: 'timedOut',
        limitSeconds: 0.01,
      });
      expect(child.isAlive).toBe(false);
    },
    slow,
  );

  it(
    'falls back to the program with the domain model alone',
    async () => {
      const files = await modelFor(vocabulary, join(dataFolder, 'speech'), debianStockFolder);
      const child = await startListening({ engine: 'program', files });
      const hearing = await child.hear({ audio: clip, vocabulary }, 90);
      child.kill();
      if (hearing.kind !== 'heard') throw new Error(JSON.stringify(hearing));
      expect(hearing.engine).toBe('pocketsphinx-program');
      expect(textOf(hearing)).toContain('bicycle thief');
      expect(() => loadProgram(files)).not.toThrow();
    },
    slow,
  );

  it(
    'answers a line a file on the command line, failures included',
    () => {
      const run = (): string =>
        execFileSync(
          'node',
          ['dist/command-line/run.js', 'hear', 'fixtures/voice/bicycle-thief.ogg', 'package.json'],
          {
            encoding: 'utf8',
            env: { ...process.env, SLIPNOTE_DATA: dataFolder, SLIPNOTE_SPEECH: 'pocketsphinx' },
          },
        );
      const output = ((): string => {
        try {
          return run();
        } catch (error) {
          return (error as { stdout: string }).stdout;
        }
      })();
      const lines = output
        .trim()
        .split('\n')
        .map((line) => JSON.parse(line) as Record<string, unknown>);
      expect(lines).toHaveLength(2);
      expect(lines[0]).toMatchObject({ file: 'fixtures/voice/bicycle-thief.ogg', engine: 'pocketsphinx' });
      expect(lines[0]?.['text']).toMatch(/^[a-z' ]+$/);
      expect(lines[1]?.['error']).toMatch(/neither Ogg\/Opus nor WAV/);
    },
    slow,
  );

  it('finds every file of the stock models where Debian puts them', () => {
    for (const path of Object.values(stockFiles(debianStockFolder))) expect(statSync(path)).toBeTruthy();
  });
});
