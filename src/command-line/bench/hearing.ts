/** How well and how fast spoken notes are heard, beside the same engine with nothing but its stock language model. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { crops } from '../../horticulture/crops.js';
import { startListening } from '../../voice/listening-child.js';
import { debianStockFolder, modelFor, stockFiles } from '../../voice/model-folder.js';
import { wordsIn } from '../../voice/pocketsphinx-program.js';
import type { Vocabulary } from '../../voice/transcriber.js';
import { type NamesKnown, vocabularyOf } from '../../voice/vocabulary.js';
import { type Measurement, median } from './measurement.js';
import { speakNote, voices } from './spoken-notes.js';
import { wordErrors } from './word-errors.js';

/** fixtures/voice/unseen.json. */
interface SpokenNotes {
  readonly context: NamesKnown;
  readonly trade: readonly string[];
  readonly freer: readonly string[];
  readonly offSubject: readonly string[];
  readonly ownNames: readonly string[];
}

/** Every how-manieth note of a set is spoken, so that the bench ends in minutes. */
const stride = 4;
const answerSeconds = 120;

export async function hearing(): Promise<readonly Measurement[]> {
  const notes = JSON.parse(
    readFileSync(new URL('../../../fixtures/voice/unseen.json', import.meta.url), 'utf8'),
  ) as SpokenNotes;
  const folder = mkdtempSync(join(tmpdir(), 'slipnote-bench-'));
  try {
    return await measure(notes, folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

async function measure(notes: SpokenNotes, folder: string): Promise<Measurement[]> {
  const names = notes.ownNames.map((name) => ({ name }));
  const known = { ...notes.context, varieties: [...(notes.context.varieties ?? []), ...names] };
  const vocabulary = vocabularyOf(
    known,
    crops.map(({ name }) => name),
  );
  const files = await modelFor(vocabulary, folder, debianStockFolder);
  const child = await startListening({ engine: 'pocketsphinx', files });
  const hear = (audio: Uint8Array): Promise<Heard> => ours(child, audio, vocabulary);
  const against = 'the program with its stock model alone';
  const rows: Measurement[] = [];
  for (const [name, set, aim] of [
    ['words misheard, phrasing of the trade', notes.trade, 'under 10 %'],
    ['words misheard, freer phrasing', notes.freer, 'under 35 %'],
    ['words misheard, off the subject', notes.offSubject, undefined],
  ] as const) {
    const said = set.filter((_, at) => at % stride === 0);
    const { ours, stock } = await misheard(said, hear, folder);
    rows.push({ name, unit: '%', ours, baseline: stock, against, ...(aim ? { aim } : {}) });
  }
  rows.push(await namesHeard(notes.ownNames, hear, folder, against));
  rows.push(await speed(notes, hear, folder, against));
  const peak = Number(/VmHWM:\s+(\d+)/.exec(readFileSync(`/proc/${child.pid}/status`, 'utf8'))?.[1]) / 1000;
  child.kill();
  const bare = spawnSync(process.execPath, ['-p', 'process.memoryUsage.rss()'], { encoding: 'utf8' });
  rows.push({
    name: 'memory of the speech process at its highest',
    unit: 'MB',
    ours: peak,
    baseline: Number(bare.stdout) / 1e6,
    against: 'a Node process that does nothing',
    aim: 'under 200 MB',
  });
  return rows;
}

interface Heard {
  readonly words: readonly string[];
  readonly seconds: number;
  readonly tookMs: number;
}

async function ours(
  child: Awaited<ReturnType<typeof startListening>>,
  audio: Uint8Array,
  vocabulary: Vocabulary,
): Promise<Heard> {
  const start = performance.now();
  const hearing = await child.hear({ audio, vocabulary }, answerSeconds);
  const tookMs = performance.now() - start;
  if (hearing.kind !== 'heard') throw new Error(`a note was not heard: ${JSON.stringify(hearing)}`);
  return { words: hearing.words.map(({ word }) => word), seconds: hearing.seconds, tookMs };
}

/** What the program hears with the models as they are packaged. */
function stock(audio: Uint8Array, folder: string): Heard {
  const [ogg, wav] = [join(folder, 'note.ogg'), join(folder, 'note.wav')];
  writeFileSync(ogg, audio);
  spawnSync('opusdec', ['--quiet', '--rate', '16000', ogg, wav]);
  const { acousticModel, languageModel, dictionary } = stockFiles(debianStockFolder);
  const start = performance.now();
  const { stdout } = spawnSync(
    'pocketsphinx_continuous',
    ['-infile', wav, '-hmm', acousticModel, '-lm', languageModel, '-dict', dictionary].concat([
      '-time',
      'yes',
      '-logfn',
      '/dev/null',
    ]),
    { encoding: 'utf8' },
  );
  return { words: wordsIn(stdout).map(({ word }) => word), seconds: 0, tookMs: performance.now() - start };
}

/** Percent of words misheard over all voices, ours and the stock model's. */
async function misheard(
  texts: readonly string[],
  hear: (audio: Uint8Array) => Promise<Heard>,
  folder: string,
): Promise<{ ours: number; stock: number }> {
  let [said, oursWrong, stockWrong] = [0, 0, 0];
  for (const text of texts) {
    for (const voice of voices) {
      const audio = speakNote(voice, text);
      const words = text.split(' ');
      said += words.length;
      oursWrong += wordErrors(words, (await hear(audio)).words);
      stockWrong += wordErrors(words, stock(audio, folder).words);
    }
  }
  return { ours: (100 * oursWrong) / said, stock: (100 * stockWrong) / said };
}

/** Percent of clips in which a name of the grower's own is heard whole; each name in one voice, the voices in turn. */
async function namesHeard(
  names: readonly string[],
  hear: (audio: Uint8Array) => Promise<Heard>,
  folder: string,
  against: string,
): Promise<Measurement> {
  let [oursWhole, stockWhole] = [0, 0];
  for (const [at, name] of names.entries()) {
    const said = name.toLowerCase();
    const audio = speakNote(
      voices[at % voices.length] as (typeof voices)[number],
      `three of the ${said} have roots`,
    );
    const isWhole = ({ words }: Heard): boolean => ` ${words.join(' ')} `.includes(` ${said} `);
    if (isWhole(await hear(audio))) oursWhole++;
    if (isWhole(stock(audio, folder))) stockWhole++;
  }
  return {
    name: "names of the grower's own heard whole",
    unit: '%',
    ours: (100 * oursWhole) / names.length,
    baseline: (100 * stockWhole) / names.length,
    against,
    aim: 'at least 90 %',
  };
}

/** Milliseconds for ten seconds of speech, the middle of several voices. */
async function speed(
  notes: SpokenNotes,
  hear: (audio: Uint8Array) => Promise<Heard>,
  folder: string,
  against: string,
): Promise<Measurement> {
  const text = notes.trade.slice(0, 3).join(' ');
  const [took, stockTook]: [number[], number[]] = [[], []];
  for (const voice of voices) {
    const audio = speakNote(voice, text);
    const heard = await hear(audio);
    took.push((10 * heard.tookMs) / heard.seconds);
    stockTook.push((10 * stock(audio, folder).tookMs) / heard.seconds);
  }
  return {
    name: 'ten seconds of speech',
    unit: 'ms',
    ours: median(took),
    baseline: median(stockTook),
    against,
    aim: 'under 3,000 ms on two cores',
  };
}
