/** The built program as a process, started on a data folder and, where a fake Bot API is given, as its bot. */
import { type ChildProcess, spawn } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { setTimeout as sleep } from 'node:timers/promises';
import { type FakeBotApi, fakeToken } from '../fake-bot-api/fake-bot-api.js';

const mainFile = fileURLToPath(new URL('../../main.js', import.meta.url)).replace(
  '/src/main.js',
  '/dist/main.js',
);

/** What `npm start` tells node before the file, so that what is measured is what runs. */
export const startFlags: readonly string[] =
  /^node (?<flags>.*)dist\/main\.js$/
    .exec(startScript())
    ?.groups?.['flags']?.split(' ')
    .filter((flag) => flag !== '') ?? [];

function startScript(): string {
  const text = readFileSync(new URL('../../../package.json', import.meta.url), 'utf8');
  return (JSON.parse(text) as { readonly scripts: { readonly start: string } }).scripts.start;
}

export interface ProgramStart {
  readonly dataFolder: string;
  readonly fake?: FakeBotApi;
  readonly environment?: Readonly<Record<string, string>>;
  /** Arguments of node itself, before the file. */
  readonly nodeArguments?: readonly string[];
}

export class Program {
  readonly process: ChildProcess;
  stdout = '';
  stderr = '';
  /** Resolves to the exit status, or the name of the signal that ended it. */
  readonly ended: Promise<number | string>;

  constructor({ dataFolder, fake, environment = {}, nodeArguments = [] }: ProgramStart) {
    this.process = spawn(process.execPath, [...startFlags, ...nodeArguments, mainFile], {
      env: {
        PATH: '/usr/bin:/bin',
        SLIPNOTE_DATA: dataFolder,
        SLIPNOTE_SPEECH: 'off',
        SLIPNOTE_ZONE: 'Europe/London',
        ...(fake ? { BOT_TOKEN: fakeToken, BOT_API_ROOT: fake.root, SLIPNOTE_GROWERS: 'anyone' } : {}),
        ...environment,
      },
    });
    this.process.stdout?.on('data', (part: Buffer) => (this.stdout += part.toString()));
    this.process.stderr?.on('data', (part: Buffer) => (this.stderr += part.toString()));
    this.ended = new Promise((resolve) =>
      this.process.on('close', (code, signal) => resolve(code ?? signal ?? 'unknown')),
    );
  }

  /** Writes to its standard input, and closes that. */
  feed(text: string): void {
    this.process.stdin?.end(text);
  }

  kill(signal: 'SIGKILL' | 'SIGTERM' | 'SIGINT' = 'SIGKILL'): Promise<number | string> {
    this.process.kill(signal);
    return this.ended;
  }
}

/** Resolves when it holds; throws what `told` says where that takes longer than `withinMs`. */
export async function until(
  holds: () => boolean,
  withinMs: number,
  told: () => string = () => 'it did not come about in time',
): Promise<void> {
  const end = performance.now() + withinMs;
  while (!holds()) {
    if (performance.now() > end) throw new Error(told());
    await sleep(20);
  }
}
