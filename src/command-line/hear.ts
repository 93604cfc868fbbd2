/** `npm run -s hear`: sound files to words, a JSON line each. */
import { readFile, stat } from 'node:fs/promises';
import { machineClock } from '../calendar/clock.js';
import { crops } from '../horticulture/crops.js';
import type { NoteContext } from '../language/note.js';
import { plainestHearing } from '../language/hearing/plainest-hearing.js';
import { readingOf } from '../language/read.js';
import { settingsHere } from '../settings.js';
import { openTranscriber } from '../voice/engines.js';
import { type Heard, soundLimits, type Transcriber, type Unheard } from '../voice/transcriber.js';
import { vocabularyOf } from '../voice/vocabulary.js';
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
  let lineOf: (file: string, transcriber: Transcriber) => Promise<object>;
  const { speech, dataFolder, zone } = settingsHere();
  try {
    lineOf = hearingWith(await readContext(contextFile), zone);
  } catch {
    errors.write(
      `the context "${contextFile}" cannot be read: it has to be a JSON object, as notes carry it\n`,
    );
    return 2;
  }
  const transcriber = openTranscriber(speech, { dataFolder });
  let status = 0;
  try {
    for (const file of files) {
      const line = await lineOf(file, transcriber);
      if ('error' in line) status = 1;
      output.write(`${JSON.stringify(line)}\n`);
    }
  } finally {
    await transcriber.close();
  }
  return status;
};

/** Throws where the context is no such thing. */
function hearingWith(context: NoteContext, zone: string) {
  const cropNames = crops.map(({ name }) => name);
  const vocabulary = vocabularyOf(context, cropNames);
  const plainest = (heard: Heard) =>
    plainestHearing(heard, context, (text) => readingOf({ text, now: machineClock.now(), zone, context }));
  return async (file: string, transcriber: Transcriber): Promise<object> => {
    const bytes = await soundIn(file);
    if (!(bytes instanceof Uint8Array)) return { file, ...bytes };
    const hearing = await transcriber.transcribe(bytes, vocabulary);
    if (hearing.kind !== 'heard') return { file, error: reasonOf(hearing) };
    const words = (plainest(hearing) ?? hearing.words).map(({ word, p }) => ({
      word,
      p: Number(p.toFixed(4)),
    }));
    const text = words.map(({ word }) => word).join(' ');
    return { file, text, words, seconds: Number(hearing.seconds.toFixed(2)), engine: hearing.engine };
  };
}

async function soundIn(file: string): Promise<Uint8Array | { error: string }> {
  try {
    const { size } = await stat(file);
    if (size > soundLimits.bytes)
      return { error: reasonOf({ kind: 'tooLarge', bytes: size, limitBytes: soundLimits.bytes }) };
    return await readFile(file);
  } catch (error) {
    return { error: `the file cannot be read (${(error as NodeJS.ErrnoException).code ?? 'unknown'})` };
  }
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

/** What the ledger is said to know: nothing without a file. */
async function readContext(file: string | undefined): Promise<NoteContext> {
  if (file === undefined) return {};
  const read: unknown = JSON.parse(await readFile(file, 'utf8'));
  if (typeof read !== 'object' || read === null || Array.isArray(read)) throw new Error('no object');
  // A whole line of the note contract will do as well as its context alone.
  const inner = (read as { context?: unknown }).context;
  return typeof inner === 'object' && inner !== null ? inner : read;
}
