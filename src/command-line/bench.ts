/** `npm run -s bench [-- NAME…] [--json]`: speed and memory as ratios against baselines measured in the same run. */
import type { Bench, Measurement } from './bench/measurement.js';
import type { CommandStreams } from './commands.js';

interface BenchRow {
  readonly name: string;
  readonly load: () => Promise<Bench>;
}

export const benches: readonly BenchRow[] = [
  { name: 'start', load: async () => (await import('./bench/start.js')).start },
  { name: 'notes', load: async () => (await import('./bench/notes-in-hand.js')).notesInHand },
  { name: 'turn', load: async () => (await import('./bench/turn.js')).turn },
  { name: 'due-notices', load: async () => (await import('./bench/due-notices.js')).dueNotices },
  { name: 'due-list', load: async () => (await import('./bench/due-list.js')).dueList },
  { name: 'reading', load: async () => (await import('./bench/reading.js')).reading },
  { name: 'dates', load: async () => (await import('./bench/dates.js')).dates },
  { name: 'forecast', load: async () => (await import('./bench/forecast.js')).forecast },
  { name: 'pictures', load: async () => (await import('./bench/pictures.js')).pictures },
  { name: 'hearing', load: async () => (await import('./bench/hearing.js')).hearing },
];

/** One bench that cannot run here does not keep the others from running; the exit status is 1 then. */
export async function bench(args: readonly string[], { output, errors }: CommandStreams): Promise<number> {
  const names = args.filter((arg) => arg !== '--json');
  const unknown = names.filter((name) => !benches.some((each) => each.name === name));
  if (unknown.length > 0) {
    errors.write(
      `There is no bench ${unknown.join(', ')}. Benches: ${benches.map(({ name }) => name).join(', ')}.\n`,
    );
    return 1;
  }
  const json = args.includes('--json');
  if (!json) output.write(`${row('measured', 'unit', 'ours', 'baseline', 'ratio', 'against', 'aim')}\n`);
  let status = 0;
  for (const { name, load } of benches.filter((each) => names.length === 0 || names.includes(each.name))) {
    try {
      for (const measured of await (
        await load()
      )())
        output.write(`${json ? asJson(measured) : asRow(measured)}\n`);
    } catch (fault) {
      status = 1;
      errors.write(`${name} could not be measured: ${(fault as Error).message}\n`);
    }
  }
  return status;
}

function asJson(measured: Measurement): string {
  return JSON.stringify({ ...measured, ratio: measured.ours / measured.baseline });
}

function asRow({ name, unit, ours, baseline, against, aim }: Measurement): string {
  return row(name, unit, figure(ours), figure(baseline), figure(ours / baseline), against, aim ?? '');
}

function row(
  name: string,
  unit: string,
  ours: string,
  baseline: string,
  ratio: string,
  against: string,
  aim: string,
): string {
  return `${name.padEnd(46)} ${unit.padEnd(10)} ${ours.padStart(9)} ${baseline.padStart(9)} ${ratio.padStart(7)}  ${against}${aim && `  [${aim}]`}`;
}

function figure(value: number): string {
  if (!Number.isFinite(value)) return '–';
  return value >= 100 ? value.toFixed(0) : value.toPrecision(3);
}
