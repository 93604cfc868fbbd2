/** The child process: loads one engine, then turns each sound it is sent into words. Started by listening-child.ts alone. */
import { type Decoded, loadDecoder, type DecoderFiles } from './pocketsphinx.js';
import { loadProgram } from './pocketsphinx-program.js';
import { readSound, sixteenBit, withFloor } from './sound.js';
import { loadSuppliedModel } from './supplied-model.js';
import type { Hearing, Vocabulary } from './transcriber.js';

/** What the child is told on its command line, as JSON. */
export type ListenerTask =
  | { readonly engine: 'pocketsphinx'; readonly files: DecoderFiles }
  | { readonly engine: 'program'; readonly files: DecoderFiles }
  | { readonly engine: 'model'; readonly folder: string };

/** What the child is sent: one sound. */
export interface SoundSent {
  readonly audio: Uint8Array;
  readonly vocabulary: Vocabulary;
}

/** What the child sends: once whether it is ready, then a hearing for each sound. */
export type ListenerSaid =
  | { readonly kind: 'ready' }
  | { readonly kind: 'broken'; readonly why: string }
  | { readonly kind: 'hearing'; readonly hearing: Hearing };

interface Engine {
  readonly engine: string;
  hear(samples: Float32Array, vocabulary: Vocabulary): Decoded;
}

async function load(task: ListenerTask): Promise<Engine> {
  if (task.engine === 'model') {
    const model = await loadSuppliedModel(task.folder);
    return { engine: model.engine, hear: (...sound) => ({ words: model.hear(...sound), others: [] }) };
  }
  const decoder =
    task.engine === 'program'
      ? loadProgram(task.files)
      : await loadDecoder(task.files).catch(() => loadProgram(task.files));
  return { engine: decoder.engine, hear: (samples) => decoder.decode(sixteenBit(withFloor(samples))) };
}

async function hear(engine: Engine, { audio, vocabulary }: SoundSent): Promise<Hearing> {
  const sound = await readSound(audio);
  if (sound.kind === 'notAudio') return sound;
  const decoded = engine.hear(sound.samples, vocabulary);
  return { kind: 'heard', ...decoded, seconds: sound.seconds, engine: engine.engine };
}

function say(said: ListenerSaid): void {
  process.send?.(said);
}

function whyOf(error: unknown): string {
  return error instanceof Error ? error.message : 'unknown';
}

process.on('disconnect', () => process.exit());
try {
  const engine = await load(JSON.parse(process.argv[2] ?? '') as ListenerTask);
  process.on('message', (sent: SoundSent) => {
    hear(engine, sent).then(
      (hearing) => say({ kind: 'hearing', hearing }),
      (error: unknown) => say({ kind: 'hearing', hearing: { kind: 'engineFailed', why: whyOf(error) } }),
    );
  });
  say({ kind: 'ready' });
} catch (error) {
  say({ kind: 'broken', why: whyOf(error) });
}
