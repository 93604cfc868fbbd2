/** Reading the fields of a JSON line: each either has the right shape or a message that says what would be. */
import { parseDay, type Day } from '../calendar/day.js';
import { BadLine } from './json-lines.js';

export type Fields = Readonly<Record<string, unknown>>;

/** `where` goes before a field's name in messages: "history 3: ". */
export function dayField(fields: Fields, name: string, where = ''): Day {
  const value = fields[name];
  const day = typeof value === 'string' ? parseDay(value) : null;
  if (day === null) throw new BadLine(`${where}${name}${shown(value)}: give a day as YYYY-MM-DD`);
  return day;
}

/** A whole number from `least` to `most`. */
export function countField(
  fields: Fields,
  name: string,
  { least = 0, most = 1_000_000, where = '' }: { least?: number; most?: number; where?: string } = {},
): number {
  const value = fields[name];
  if (typeof value !== 'number' || !Number.isInteger(value) || value < least)
    throw new BadLine(`${where}${name}${shown(value)}: give a whole number of ${least} or more`);
  if (value > most) throw new BadLine(`${where}${name} is ${value}: more than ${most} cannot be worked out`);
  return value;
}

/** A number strictly between 0 and 1; `unless` where the field is missing. */
export function chanceField(fields: Fields, name: string, unless: number): number {
  const value = fields[name] ?? unless;
  if (typeof value !== 'number' || !(value > 0 && value < 1))
    throw new BadLine(`${name}${shown(value)}: give a chance between 0 and 1, such as 0.9`);
  return value;
}

/** Two positive numbers; `ordered` ones must not fall. Undefined where the field is missing. */
export function pairField(
  fields: Fields,
  name: string,
  { ordered, such }: { ordered: boolean; such: string },
): readonly [number, number] | undefined {
  const value = fields[name];
  if (value === undefined || value === null) return undefined;
  const [first, second, ...more] = Array.isArray(value) ? (value as unknown[]) : [];
  if (
    typeof first !== 'number' ||
    typeof second !== 'number' ||
    more.length > 0 ||
    !(first > 0 && second > 0 && first < 1e5 && second < 1e5) ||
    (ordered && first > second)
  )
    throw new BadLine(
      `${name}${shown(value)}: give two positive numbers${ordered ? ', the smaller first' : ''}, such as ${such}`,
    );
  return [first, second];
}

/** A list of objects; empty where the field is missing and not `required`. */
export function listField(fields: Fields, name: string, shape: string, where = ''): readonly Fields[] {
  const value = fields[name] ?? [];
  if (!Array.isArray(value) || value.some((each) => typeof each !== 'object' || each === null))
    throw new BadLine(`${where}${name}: give a list of ${shape}`);
  return value as Fields[];
}

function shown(value: unknown): string {
  return value === undefined ? ' is missing' : ` is ${JSON.stringify(value)}`;
}
