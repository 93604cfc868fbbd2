/** A transcriber that keeps limits, a queue and one child process, whichever engine the child runs. */
import { type ListeningChild, startListening } from './listening-child.js';
import type { ListenerTask } from './listener.js';
import { soundLength } from './sound.js';
import {
  type Hearing,
  type SoundLimits,
  soundLimits,
  type Transcriber,
  type Vocabulary,
} from './transcriber.js';

/** What differs from engine to engine. */
export interface ChildEngine {
  readonly engine: string;
  /** Why it cannot run on this machine, or nothing. Asked before each sound: it may be installed meanwhile. */
  readonly missing: () => string | undefined;
  /** What the child needs for a vocabulary; another task means another child. */
  readonly taskFor: (vocabulary: Vocabulary) => Promise<ListenerTask>;
}

export function childTranscriber(engine: ChildEngine, limits: SoundLimits = soundLimits): Transcriber {
  let child: ListeningChild | undefined;
  let childTask = '';
  let isClosed = false;
  let queue: Promise<unknown> = Promise.resolve();

  async function childFor(vocabulary: Vocabulary): Promise<ListeningChild> {
    const task = await engine.taskFor(vocabulary);
    const wanted = JSON.stringify(task);
    if (child?.isAlive && wanted === childTask) return child;
    child?.kill();
    child = await startListening(task);
    childTask = wanted;
    return child;
  }

  async function hear(audio: Uint8Array, vocabulary: Vocabulary): Promise<Hearing> {
    if (isClosed) return { kind: 'engineFailed', why: 'the program is stopping' };
    const why = engine.missing();
    if (why !== undefined) return { kind: 'engineMissing', why };
    try {
      const listening = await childFor(vocabulary);
      return await listening.hear({ audio, vocabulary }, limits.answerSeconds);
    } catch (error) {
      return { kind: 'engineFailed', why: error instanceof Error ? error.message : 'unknown' };
    }
  }

  return {
    engine: engine.engine,
    async transcribe(audio, vocabulary) {
      const refused = refusal(audio, limits);
      if (refused) return refused;
      const hearing = queue.then(() => hear(audio, vocabulary));
      queue = hearing;
      return hearing;
    },
    close() {
      isClosed = true;
      child?.kill();
      return Promise.resolve();
    },
  };
}

/** What is refused before the engine is troubled. */
function refusal(audio: Uint8Array, limits: SoundLimits): Hearing | undefined {
  if (audio.length > limits.bytes) return { kind: 'tooLarge', bytes: audio.length, limitBytes: limits.bytes };
  const length = soundLength(audio);
  if (length.kind === 'notAudio') return length;
  if (length.seconds > limits.seconds)
    return { kind: 'tooLong', seconds: length.seconds, limitSeconds: limits.seconds };
  return undefined;
}
