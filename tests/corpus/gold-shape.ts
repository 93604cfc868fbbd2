/** The shape of a gold entry: which slots a kind may carry and which values a slot may hold, after the note contract. */
import type { GoldEntry } from './corpus-note.js';
import { wantedValues } from './slot-comparison.js';

const plant = ['variety', 'crop', 'batch'];

const slotsOf: Record<string, readonly string[]> = {
  stock: [...plant, 'count', 'date', 'place', 'potSize'],
  receive: [...plant, 'count', 'date', 'place', 'potSize'],
  reading: ['celsius', 'place', 'date'],
  strike: [...plant, 'count', 'pots', 'date', 'cutting', 'medium', 'hormone', 'place', 'potSize'],
  tend: [...plant, 'care', 'place', 'date'],
  check: [...plant, 'rooted', 'count', 'date'],
  loss: [...plant, 'count', 'cause', 'date'],
  potOn: [...plant, 'count', 'potSize', 'medium', 'date'],
  pinch: [...plant, 'count', 'date'],
  move: [...plant, 'fromPlace', 'place', 'count', 'date'],
  hardenOff: [...plant, 'place', 'count', 'date'],
  plantOut: [...plant, 'count', 'place', 'date'],
  dispatch: [...plant, 'count', 'how', 'to', 'date'],
  remark: [...plant, 'text', 'date'],
  target: [...plant, 'count', 'date'],
  remind: [...plant, 'text', 'date', 'time'],
  question: [...plant, 'topic', 'place', 'from', 'to'],
  answer: [...plant, 'value', 'date'],
  undo: [],
  amend: [...plant, 'date', 'set'],
};

const oneOf = (words: string) => (value: unknown) => words.split(' ').includes(String(value));
const matching = (pattern: RegExp) => (value: unknown) => pattern.test(String(value));
const whole = (value: unknown): boolean => Number.isInteger(value) && Number(value) >= 0;
const said = (value: unknown): boolean => typeof value === 'string' && value.trim() === value && value !== '';

const valueOf: Record<string, (value: unknown, kind: string) => boolean> = {
  variety: said,
  crop: said,
  batch: said,
  place: said,
  fromPlace: said,
  medium: said,
  text: said,
  count: (value) => whole(value) || value === 'all' || value === 'rest',
  pots: (value) => whole(value) && value !== 0,
  rooted: (value) => whole(value) || oneOf('all none some')(value),
  value: (value) => whole(value) || oneOf('yes no notYet all none')(value),
  celsius: (value) => typeof value === 'number' && value > -40 && value < 60,
  date: (value) => isDay(value) || isSpan(value),
  from: isDay,
  to: (value, kind) => (kind === 'question' ? isDay(value) : said(value)),
  time: matching(/^(?:[01]\d|2[0-3]):[0-5]\d$/),
  potSize: matching(/^\d+(?:\.\d+)?(?:mm|cm|in|ml|l|qt|gal|cell)$/),
  cutting: oneOf('basal nodal internodal tip heel leaf leafBud root softwood semiRipe hardwood'),
  hormone: (value) => typeof value === 'boolean',
  cause: oneOf('rot dampingOff mould wilt drought frost pest broken other'),
  care: oneOf('mist water vent feed shade cover uncover'),
  how: oneOf('given sold swapped'),
  topic: oneOf('due count where status when history rate plan frost help'),
  set: (value) => typeof value === 'object' && value !== null && Object.entries(value).every(setSlotFits),
};

/** Faults of a gold entry, in words; none where it is well formed. */
export function shapeFaults(entry: GoldEntry): string[] {
  const slots = slotsOf[entry.kind];
  if (!slots) return [`${entry.kind} is no kind of entry`];
  return Object.keys(entry)
    .filter((slot) => slot !== 'kind')
    .flatMap((slot) => {
      if (!slots.includes(slot)) return [`a ${entry.kind} carries no ${slot}`];
      const bad = wantedValues(entry[slot]).filter(
        (value) => value !== null && !valueOf[slot]?.(value, entry.kind),
      );
      return bad.map((value) => `${entry.kind}.${slot} cannot be ${JSON.stringify(value)}`);
    });
}

function setSlotFits([slot, wanted]: [string, unknown]): boolean {
  return wantedValues(wanted).every((value) => value === null || (valueOf[slot]?.(value, 'amend') ?? false));
}

/** Whether it is a day that the calendar has. */
function isDay(value: unknown): boolean {
  if (typeof value !== 'string' || !/^\d{4}-\d{2}-\d{2}$/.test(value)) return false;
  const time = Date.parse(`${value}T00:00:00Z`);
  return !Number.isNaN(time) && new Date(time).toISOString().startsWith(value);
}

function isSpan(value: unknown): boolean {
  if (typeof value !== 'object' || value === null) return false;
  const { from, to } = value as { from?: unknown; to?: unknown };
  return isDay(from) && isDay(to) && String(from) <= String(to);
}
