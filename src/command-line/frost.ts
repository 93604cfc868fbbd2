/** `frost`: from daily minima to the days of a given frost risk, a JSON line in, a JSON line out. */
import { parseDay } from '../calendar/day.js';
import { frostOutlook } from '../horticulture/frost.js';
import type { DailyMinimum } from '../horticulture/frost-record.js';
import type { FrostHalf, FrostSeason } from '../horticulture/frost-season.js';
import type { Run } from './commands.js';
import { answerLines, BadLine } from './json-lines.js';

export const frost: Run = (_args, streams) => answerLines(streams, answer);

function answer(line: Record<string, unknown>): object {
  const season = seasonOf(line);
  const rule = { thresholdCelsius: thresholdOf(line), orBelow: flag(line, 'orBelow', true) };
  const outlook = frostOutlook(minimaOf(line), season, rule, risksOf(line));
  if ('refused' in outlook)
    throw new BadLine(
      `only ${outlook.frostYears} of these years had a frost in ${season.half}: give minima that cover two or more${noteOf(outlook.dropped, '; ')}`,
    );
  const note = noteOf(outlook.dropped);
  return {
    id: line['id'] ?? null,
    years: outlook.years,
    at: outlook.at.map(({ risk, day }) => ({ risk, date: day })),
    ...(note === '' ? {} : { note }),
  };
}

function noteOf(dropped: readonly number[], before = ''): string {
  if (dropped.length === 0) return '';
  return `${before}left out ${dropped.join(', ')}: days are missing when other years still had frost`;
}

function seasonOf(line: Record<string, unknown>): FrostSeason {
  const half = line['half'] ?? 'spring';
  const hemisphere = line['hemisphere'] ?? 'north';
  if (half !== 'spring' && half !== 'autumn') throw new BadLine('half is "spring" or "autumn"');
  if (hemisphere !== 'north' && hemisphere !== 'south') throw new BadLine('hemisphere is "north" or "south"');
  return { half: half satisfies FrostHalf, hemisphere };
}

function thresholdOf(line: Record<string, unknown>): number {
  const threshold = line['threshold'] ?? 0;
  if (typeof threshold !== 'number') throw new BadLine('threshold is a temperature in °C, such as 0 or 2');
  return threshold;
}

function flag(line: Record<string, unknown>, name: string, unless: boolean): boolean {
  const value = line[name] ?? unless;
  if (typeof value !== 'boolean') throw new BadLine(`${name} is true or false`);
  return value;
}

function risksOf(line: Record<string, unknown>): number[] {
  const risks = line['risk'] ?? [0.5, 0.1];
  const list: unknown[] = Array.isArray(risks) ? risks : [risks];
  for (const risk of list)
    if (typeof risk !== 'number' || !(risk > 0 && risk < 1))
      throw new BadLine('risk is a list of chances between 0 and 1, such as [0.5, 0.1]');
  return list as number[];
}

function minimaOf(line: Record<string, unknown>): DailyMinimum[] {
  const minima = line['minima'];
  if (!Array.isArray(minima)) throw new BadLine('minima is a list of {"date","min"}');
  return minima.flatMap((each: unknown, index) => {
    const { date, min } = (each ?? {}) as { date?: unknown; min?: unknown };
    const day = typeof date === 'string' ? parseDay(date) : null;
    if (day === null)
      throw new BadLine(`minima ${index + 1}: ${JSON.stringify(date)} is no day; write YYYY-MM-DD`);
    if (min === null || min === undefined) return [];
    if (typeof min !== 'number')
      throw new BadLine(`minima ${index + 1}: min is a temperature in °C, or null where none was taken`);
    return [{ date: day, celsius: min }];
  });
}
