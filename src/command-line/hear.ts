/** `npm run -s hear`: sound files to words, a JSON line each. */
import { readFile, stat } from 'node:fs/promises';
import { crops } from '../horticulture/crops.js';
import { settingsHere } from '../settings.js';
import { openTranscriber } from '../voice/engines.js';
import { soundLimits, type Transcriber, type Unheard, type Vocabulary } from '../voice/transcriber.js';
import { type NamesKnown, vocabularyOf } from '../voice/vocabulary.js';
import type { Run } from './commands.js';

const usage = 'hear [--context FILE] FILE…: FILE is Ogg/Opus or WAV; the context is JSON, as notes carry it';

/** Exit status 0 where every file was heard, 1 where one was not, 2 where the call makes no sense. */
export const hear: Run = async (args, { output, errors }) => {
  const files: string[] = [];
  let contextFile: string | undefined;
  for (let at = 0; at < args.length; at++) {
    const arg = args[at] ?? '';
    if (arg === '--context') contextFile = args[++at];
    else if (arg.startsWith('--context=')) contextFile = arg.slice('--context='.length);
    else if (arg !== '--') files.push(arg);
  }
  if (files.length === 0 || (args.includes('--context') && contextFile === undefined)) {
    errors.write(`${usage}\n`);
    return 2;
  }
  let vocabulary: Vocabulary;
  try {
    vocabulary = await readVocabulary(contextFile);
  } catch {
    errors.write(
      `the context "${contextFile}" cannot be read: it has to be a JSON object, as notes carry it\n`,
    );
    return 2;
  }
  const { speech, dataFolder } = settingsHere();
  const transcriber = openTranscriber(speech, { dataFolder });
  let status = 0;
  try {
    for (const file of files) {
      const line = await hearFile(file, transcriber, vocabulary);
      if ('error' in line) status = 1;
      output.write(`${JSON.stringify(line)}\n`);
    }
  } finally {
    await transcriber.close();
  }
  return status;
};

async function hearFile(file: string, transcriber: Transcriber, vocabulary: Vocabulary): Promise<object> {
  let bytes: Uint8Array;
  try {
    const { size } = await stat(file);
    if (size > soundLimits.bytes)
      return { file, error: reasonOf({ kind: 'tooLarge', bytes: size, limitBytes: soundLimits.bytes }) };
    bytes = await readFile(file);
  } catch (error) {
    return { file, error: `the file cannot be read (${(error as NodeJS.ErrnoException).code ?? 'unknown'})` };
  }
  const hearing = await transcriber.transcribe(bytes, vocabulary);
  if (hearing.kind !== 'heard') return { file, error: reasonOf(hearing) };
  const words = hearing.words.map(({ word, p }) => ({ word, p: Number(p.toFixed(4)) }));
  const text = words.map(({ word }) => word).join(' ');
  return { file, text, words, seconds: Number(hearing.seconds.toFixed(2)), engine: hearing.engine };
}

/** A failure in plain words, with what to do. */
function reasonOf(unheard: Unheard): string {
  switch (unheard.kind) {
    case 'tooLong':
      return `${Math.round(unheard.seconds)} s is too long: ${unheard.limitSeconds} s at most`;
    case 'tooLarge':
      return `${unheard.bytes} bytes are too many: ${unheard.limitBytes} at most`;
    case 'notAudio':
      return `not a sound that can be read, ${unheard.why}: send Ogg/Opus or WAV`;
    case 'engineMissing':
      return `no speech engine: ${unheard.why}`;
    case 'engineFailed':
      return `the speech engine failed: ${unheard.why}`;
    case 'timedOut':
      return `not heard within ${unheard.limitSeconds} s: say it shorter`;
  }
}

async function readVocabulary(contextFile: string | undefined): Promise<Vocabulary> {
  const cropNames = crops.map(({ name }) => name);
  if (contextFile === undefined) return vocabularyOf({}, cropNames);
  const read: unknown = JSON.parse(await readFile(contextFile, 'utf8'));
  if (typeof read !== 'object' || read === null || Array.isArray(read)) throw new Error('no object');
  // A whole line of the note contract will do as well as its context alone.
  const inner = (read as { context?: unknown }).context;
  return vocabularyOf((typeof inner === 'object' && inner !== null ? inner : read) as NamesKnown, cropNames);
}
