/** `npm run -s drills [-- NAME…] [--tenth]`: the fault drills, each on the built program and a fake Bot API. */
import type { CommandStreams } from './commands.js';
import { botApi } from './drills/bot-api.js';
import { clock } from './drills/clock.js';
import { disk } from './drills/disk.js';
import { type Drill, DrillFailed } from './drills/drill.js';
import { flood } from './drills/flood.js';
import { hostile } from './drills/hostile.js';
import { kills } from './drills/kills.js';
import { memory } from './drills/memory.js';
import { notices } from './drills/notices.js';
import { poison } from './drills/poison.js';
import { starts } from './drills/starts.js';

export const allDrills: readonly Drill[] = [
  kills,
  notices,
  botApi,
  flood,
  poison,
  hostile,
  memory,
  clock,
  disk,
  starts,
];

/** Exit 1 where a drill fails or is not known. */
export async function drills(args: readonly string[], { output, errors }: CommandStreams): Promise<number> {
  const scale = args.includes('--tenth') ? 0.1 : 1;
  const names = args.filter((arg) => arg !== '--tenth');
  const unknown = names.filter((name) => !allDrills.some((drill) => drill.name === name));
  if (unknown.length > 0) {
    errors.write(`There is no drill ${unknown.join(', ')}. Drills:\n`);
    for (const { name, does } of allDrills) errors.write(`  ${name.padEnd(10)} ${does}\n`);
    return 1;
  }
  let failed = 0;
  for (const drill of allDrills.filter(({ name }) => names.length === 0 || names.includes(name))) {
    const startedAt = performance.now();
    const { ok, told } = await runOne(drill, scale);
    if (!ok) failed++;
    const seconds = ((performance.now() - startedAt) / 1000).toFixed(0);
    output.write(`${ok ? 'held  ' : 'FAILED'} ${drill.name.padEnd(10)} ${told} (${seconds} s)\n`);
  }
  return failed === 0 ? 0 : 1;
}

async function runOne(drill: Drill, scale: number): Promise<{ ok: boolean; told: string }> {
  try {
    return { ok: true, told: await drill.run(scale) };
  } catch (fault) {
    return {
      ok: false,
      told: fault instanceof DrillFailed ? fault.message : String((fault as Error).stack ?? fault),
    };
  }
}
