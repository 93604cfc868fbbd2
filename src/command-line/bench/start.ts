/** From the start to the first prompt in the terminal, and the memory of a bot at rest, beside a node that does nothing. */
import { execFileSync, spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { Program, startFlags } from '../drills/program.js';
import { startFakeBotApi } from '../fake-bot-api/fake-bot-api.js';
import { Grower } from '../fake-bot-api/grower.js';
import { type Measurement, median } from './measurement.js';

const RUNS = 5;

export async function start(): Promise<readonly Measurement[]> {
  const folder = mkdtempSync(join(tmpdir(), 'slipnote-bench-'));
  try {
    const ours: number[] = [];
    const bare: number[] = [];
    for (let run = 0; run < RUNS; run++) {
      ours.push(await toFirstPrompt(folder));
      bare.push(toBareOutput());
    }
    return [
      {
        name: 'start to first prompt, median',
        unit: 'ms',
        ours: median(ours),
        baseline: median(bare),
        against: 'node that prints one line',
        aim: 'under 1000 ms',
      },
      {
        name: 'memory of a bot at rest',
        unit: 'MB',
        ours: await restingMemory(join(folder, 'bot')),
        baseline: await bareMemory(),
        against: 'node that waits',
        aim: 'under 120 MB',
      },
    ];
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** `script` of util-linux gives it a terminal, in which the prompt shows. */
async function toFirstPrompt(folder: string): Promise<number> {
  const program = new URL('../../main.js', import.meta.url).pathname;
  const begunAt = performance.now();
  const child = spawn('script', ['-qec', [process.execPath, ...startFlags, program].join(' '), '/dev/null'], {
    env: { ...environment, SLIPNOTE_DATA: folder },
  });
  await new Promise<void>((resolve) => {
    let said = '';
    child.stdout.on('data', (part: Buffer) => {
      said += part.toString();
      if (said.includes('> ')) resolve();
    });
  });
  const took = performance.now() - begunAt;
  const ended = new Promise((resolve) => child.on('close', resolve));
  child.stdin.end('\u0004');
  await ended;
  return took;
}

function toBareOutput(): number {
  const begunAt = performance.now();
  execFileSync(process.execPath, ['-e', "process.stdout.write('> ')"]);
  return performance.now() - begunAt;
}

/** After a note was handled and a few seconds have passed. */
async function restingMemory(dataFolder: string): Promise<number> {
  const fake = await startFakeBotApi();
  const program = new Program({ dataFolder, fake });
  new Grower(fake, 7).says('took 3 tip cuttings of Ember Fox dahlia in one pot');
  while (fake.sent.length === 0) await sleep(50);
  await sleep(5_000);
  const megabytes = residentMegabytes(program.process.pid ?? 0);
  await program.kill('SIGTERM');
  await fake.close();
  return megabytes;
}

async function bareMemory(): Promise<number> {
  const child = spawn(process.execPath, ['-e', 'setInterval(() => {}, 1000)']);
  await sleep(1_500);
  const megabytes = residentMegabytes(child.pid ?? 0);
  child.kill();
  return megabytes;
}

function residentMegabytes(pid: number): number {
  const kilobytes = /VmRSS:\s*(\d+) kB/.exec(readFileSync(`/proc/${pid}/status`, 'utf8'))?.[1];
  return Number(kilobytes) / 1024;
}

const environment = {
  PATH: '/usr/bin:/bin',
  SLIPNOTE_SPEECH: 'off',
  SLIPNOTE_ZONE: 'Europe/London',
  TERM: 'xterm',
};
