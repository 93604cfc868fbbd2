/** Spoken notes: a sound and the names that its chat's ledger knows, to words. */
import { readFileSync, statSync } from 'node:fs';
import type { Hear } from './channels/telegram-channel.js';
import type { Terminal } from './channels/terminal.js';
import { contextOf } from './conversation/reading/reading.js';
import { crops } from './horticulture/crops.js';
import type { Log } from './log.js';
import type { Program } from './program.js';
import { soundLimits, type Transcriber } from './voice/transcriber.js';
import { vocabularyOf } from './voice/vocabulary.js';

/** Hears a voice note with the names that the chat's ledger knows. */
export function hearingWith(transcriber: Transcriber, program: Program, log: Log): Hear {
  const cropNames = crops.map(({ name }) => name);
  return async (incoming, audio) => {
    const known = contextOf(program.worldOf(incoming).ledger);
    const hearing = await transcriber.transcribe(audio, vocabularyOf(known, cropNames));
    if (hearing.kind === 'heard') {
      const { words, seconds, others, lags } = hearing;
      return { heard: { words, seconds, others, lags } };
    }
    log.warn('voice note not heard', { why: hearing.kind });
    return { other: 'voice', unheard: hearing.kind };
  };
}

const soundFile = /\.(?:og[ag]|opus|wav)$/i;

/** In the terminal a path to a sound file, quoted or not, is a voice note. */
export function hearingFiles(hear: Hear): ConstructorParameters<typeof Terminal>[0]['hear'] {
  return async (line, incoming) => {
    const path = line.trim().replace(/^(["'])(.*)\1$/, '$2');
    if (!soundFile.test(path)) return null;
    try {
      if (statSync(path).size > soundLimits.bytes) return { other: 'voice', unheard: 'tooLarge' };
      return await hear(incoming, readFileSync(path));
    } catch {
      return null;
    }
  };
}
