/** Weekdays, months, seasons, units and parts of the day, as single words. */
import type { DayPart, Kind, Season, SmallUnit, Unit } from './captures.js';
import type { Alternative, Primitive, Reader } from './alternative.js';
import type { Token } from './token.js';
import { monthWords, pluralWeekdayWords, weekdayWords } from './words.js';

const firstWord = (line: string) => line.split(' ')[0] ?? '';

const tables: { readonly [K in Kind]?: ReadonlyMap<string, unknown> } = {
  weekday: new Map(weekdayWords.map((line, index) => [firstWord(line), index + 1])),
  weekdays: new Map(pluralWeekdayWords.map((line, index) => [firstWord(line), index + 1])),
  month: new Map(monthWords.map((line, index) => [firstWord(line), index + 1])),
  unit: new Map<string, Unit>([
    ['day', 'day'],
    ['days', 'day'],
    ['week', 'week'],
    ['weeks', 'week'],
    ['fortnight', 'fortnight'],
    ['fortnights', 'fortnight'],
    ['month', 'month'],
    ['months', 'month'],
    ['year', 'year'],
    ['years', 'year'],
  ]),
  weekUnit: new Map<string, Unit>([
    ['week', 'week'],
    ['weeks', 'week'],
    ['fortnight', 'fortnight'],
    ['fortnights', 'fortnight'],
  ]),
  smallUnit: new Map<string, SmallUnit>([
    ['hour', 'hour'],
    ['minute', 'minute'],
  ]),
  season: new Map<string, Season>([
    ['spring', 'spring'],
    ['summer', 'summer'],
    ['autumn', 'autumn'],
    ['fall', 'autumn'],
    ['winter', 'winter'],
  ]),
  part: new Map<string, DayPart>([
    ['morning', 'morning'],
    ['lunchtime', 'noon'],
    ['afternoon', 'afternoon'],
    ['teatime', 'evening'],
    ['evening', 'evening'],
    ['eve', 'evening'],
    ['night', 'night'],
    ['dawn', 'morning'],
    ['breakfast', 'morning'],
  ]),
};

/** Names are often cut short with a stop ("Oct. 2", "Mon."). */
const stoppable: ReadonlySet<Kind> = new Set(['month', 'weekday']);

/** Of a name written in full a stop ends the sentence ("on Sunday. Another one today"). */
const isCutShort = (token: Token | undefined): boolean =>
  token !== undefined && token.end - token.start < token.word.length;

function nameReader(kind: Kind): Primitive {
  return (tokens, at): readonly Alternative[] => {
    const value = tables[kind]?.get(tokens[at]?.word ?? '');
    if (value === undefined) return [];
    const next = tokens[at + 1];
    const stopped =
      stoppable.has(kind) &&
      isCutShort(tokens[at]) &&
      next?.word === '.' &&
      next.glued &&
      tokens[at + 2]?.likeness !== undefined;
    const plain: Alternative = { end: at + 1, value, rule: '' };
    return stopped ? [{ ...plain, end: at + 2 }, plain] : [plain];
  };
}

/** Readers of the kinds that are single words. */
export const nameReaders: Partial<Record<Kind, Reader>> = Object.fromEntries(
  (Object.keys(tables) as Kind[]).map((kind) => [
    kind,
    { read: nameReader(kind), begins: (token: Token) => tables[kind]?.has(token.word) ?? false },
  ]),
);
