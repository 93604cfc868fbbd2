/** One child process that listens, seen from outside: started, asked one sound at a time, killed when it takes too long. */
import { fork, type ChildProcess } from 'node:child_process';
import type { ListenerSaid, ListenerTask, SoundSent } from './listener.js';
import { builtFile } from './built-file.js';
import type { Hearing } from './transcriber.js';

/** Loading takes half a second where the machine is idle; a minute means that it never will. */
const startSeconds = 60;

/** Keeps the JavaScript side small; the models lie outside this heap. */
const heapMegabytes = 48;

export interface ListeningChild {
  readonly pid: number | undefined;
  /** Whether it can still be asked. */
  readonly isAlive: boolean;
  /** One call at a time. Kills the child where it takes longer than the limit. */
  hear(sound: SoundSent, limitSeconds: number): Promise<Hearing>;
  kill(): void;
}

/** Resolves once the engine has loaded; throws, with why, where it does not. */
export async function startListening(task: ListenerTask): Promise<ListeningChild> {
  const child = fork(builtFile('listener.js'), [JSON.stringify(task)], {
    serialization: 'advanced',
    execArgv: [`--max-old-space-size=${heapMegabytes}`, '--max-semi-space-size=1'],
    stdio: ['ignore', 'ignore', 'ignore', 'ipc'],
    // A group of its own, so that a recogniser that the child started goes with it.
    detached: true,
  });
  let isAlive = true;
  child.once('exit', () => (isAlive = false));
  const kill = (): void => {
    isAlive = false;
    killGroup(child);
  };
  const said = await answerOf(child, startSeconds).catch(() => undefined);
  if (said?.kind !== 'ready') {
    kill();
    throw new Error(said?.kind === 'broken' ? said.why : 'the speech process did not start');
  }
  return {
    pid: child.pid,
    get isAlive() {
      return isAlive;
    },
    async hear(sound, limitSeconds) {
      const answer = answerOf(child, limitSeconds);
      child.send(sound, () => undefined);
      try {
        const reply = await answer;
        return reply.kind === 'hearing'
          ? reply.hearing
          : { kind: 'engineFailed', why: 'the speech process broke' };
      } catch (error) {
        kill();
        if (error instanceof TooSlow) return { kind: 'timedOut', limitSeconds };
        return { kind: 'engineFailed', why: 'the speech process stopped while it listened' };
      }
    },
    kill,
  };
}

class TooSlow extends Error {}

/** The child's next message; rejects where it ends or the time is up. */
function answerOf(child: ChildProcess, limitSeconds: number): Promise<ListenerSaid> {
  return new Promise((resolve, reject) => {
    const settle = (act: () => void): void => {
      clearTimeout(timer);
      child.off('message', onMessage).off('exit', onEnd).off('error', onEnd);
      act();
    };
    const onMessage = (message: unknown): void => settle(() => resolve(message as ListenerSaid));
    const onEnd = (): void => settle(() => reject(new Error('ended')));
    const timer = setTimeout(() => settle(() => reject(new TooSlow())), limitSeconds * 1000);
    child.on('message', onMessage).on('exit', onEnd).on('error', onEnd);
  });
}

function killGroup(child: ChildProcess): void {
  if (child.pid === undefined || child.exitCode !== null) return;
  try {
    process.kill(-child.pid, 'SIGKILL');
  } catch {
    child.kill('SIGKILL');
  }
}
