/**
 * Notes as frames: an act as somebody would say it, with places for what varies ("{n} of the {P} have keeled over"), and the
 * entries that it gives. A frame is filled with several plants, numbers, places and days, so that it shows how an act is said
 * and not how a name is known.
 */
import { readFileSync } from 'node:fs';
import type { CorpusNote, Gold, GoldEntry } from './corpus-note.js';
import type { Pick } from './changed-notes.js';

export interface Frame {
  readonly id: string;
  /**
   * `{P}` and `{Q}` are plants, `{n}` and `{m}` numbers from 2 on with n the smaller, `{place}` and `{place2}` places, `{day}`
   * a day gone, `{fday}` a day to come, `{to}` who gets plants, `{size}` a pot's size.
   */
  readonly text: string;
  /** Entries in which `plant` is "P" or "Q", a number may be worked out ("n*m"), and a place, day, taker or size goes by its name. */
  readonly gold: readonly GoldEntry[];
  readonly ask?: readonly string[];
  /** The kind of a prompt for the plant P that waits for an answer. */
  readonly pending?: string;
}

/** `dev` was read while the grammar grew; of `unseen` nobody looks at more than the figures. */
export const bringInFrames = (half: 'dev' | 'unseen'): Frame[] =>
  readFileSync(`fixtures/frames/${half}.jsonl`, 'utf8')
    .trim()
    .split('\n')
    .map((line) => JSON.parse(line) as Frame);

const PLANTS = [
  ['Copper Lantern', 'dahlia'],
  ['Velvet Sergeant', 'salvia'],
  ['Tin Whistle', 'fuchsia'],
  ['Ebony Fern', 'coleus'],
  ['Pewter Nan', 'pelargonium'],
  ['Marsh Candle', 'penstemon'],
] as const;
const PLACES = ['cold frame', 'greenhouse', 'kitchen windowsill', 'propagator', 'back porch', 'polytunnel'];
const TAKERS = ['Maureen', 'the church fete', 'my neighbour', 'Graham', 'the school'];
const SIZES = ['9cm', '7cm', '1l'];
/** A Wednesday. */
const NOW = '2026-04-22T18:20:00+01:00';
const DAYS_GONE = [
  ['yesterday', '2026-04-21'],
  ['on Sunday', '2026-04-19'],
  ['on Monday', '2026-04-20'],
  ['last Thursday', '2026-04-16'],
  ['on the 12th', '2026-04-12'],
] as const;
const DAYS_TO_COME = [
  ['tomorrow', '2026-04-23'],
  ['on Friday', '2026-04-24'],
  ['on Saturday', '2026-04-25'],
  ['at the weekend', { from: '2026-04-25', to: '2026-04-26' }],
] as const;
const NUMBERS = [2, 3, 4];
const WORDS = ['two', 'three', 'four', 'five', 'six'];
const ALIVE = { P: 15, Q: 18 };

type Plant = (typeof PLANTS)[number];

/** What one filling puts into a frame. */
interface Filling {
  readonly plants: { readonly P: Plant; readonly Q: Plant };
  readonly numbers: { readonly n: number; readonly m: number };
  /** By its name in a frame, as said and as it is logged. */
  readonly values: Readonly<Record<string, readonly [said: string, logged: unknown]>>;
}

/** The frame filled once more, its numbers in figures or in words by turns; draws the rest. */
export function filled(frame: Frame, turn: number, pick: Pick): CorpusNote {
  const filling = fillingBy(pick);
  const { P, Q } = filling.plants;
  const isSmall = !/[A-Z]/.test(frame.text.replace(/\{[PQ]\}/g, ''));
  const said = (name: string): string => {
    if (name === 'P' || name === 'Q') return filling.plants[name][0];
    if (name === 'n' || name === 'm') {
      const number = filling.numbers[name];
      return turn % 2 === 1 ? (WORDS[number - 2] ?? String(number)) : String(number);
    }
    return filling.values[name]?.[0] ?? `{${name}}`;
  };
  const text = frame.text.replace(/\{(\w+)\}/g, (_, name: string) => said(name));
  const batch = ([variety, crop]: Plant, struck: string, count: number) => ({
    label: labelOf(variety),
    variety,
    crop,
    struck,
    count,
    pots: 3,
    place: String(filling.values['place2']?.[0]),
  });
  return {
    id: `${frame.id}.${turn}`,
    family: 'frames',
    voice: 'frames',
    text: isSmall ? text.toLowerCase() : text.charAt(0).toUpperCase() + text.slice(1),
    now: NOW,
    zone: 'Europe/London',
    context: {
      varieties: PLANTS.map(([name, crop]) => ({ name, crop })),
      batches: [batch(P, '2026-03-08', ALIVE.P), batch(Q, '2026-03-15', ALIVE.Q)],
      places: PLACES,
      ...(frame.pending ? { pending: { kind: frame.pending, batch: labelOf(P[0]) } } : {}),
    },
    gold: goldOf(frame, filling),
  };
}

const labelOf = (variety: string): string => `${variety.replace(/\B\w+ ?/g, '').replace(/ /g, '')}1`;

function fillingBy(pick: Pick): Filling {
  const of = <Item>(items: readonly Item[]): Item => pick(items) ?? (items[0] as Item);
  const P = of(PLANTS);
  const place = of(PLACES);
  const n = of(NUMBERS);
  const size = of(SIZES);
  const taker = of(TAKERS);
  const other = of(PLACES.filter((each) => each !== place));
  return {
    plants: { P, Q: of(PLANTS.filter((each) => each !== P)) },
    numbers: { n, m: n + of([1, 2]) },
    values: {
      place: [place, place],
      place2: [other, other],
      day: of(DAYS_GONE),
      fday: of(DAYS_TO_COME),
      to: [taker, { any: [taker, taker.replace(/^(?:the|my) /, '')] }],
      size: [size, size],
    },
  };
}

/** Slots whose value may be one of a filling's, by its name. */
const NAMED = new Set(['date', 'place', 'fromPlace', 'to', 'potSize']);
const NUMBERED = new Set(['count', 'rooted', 'pots', 'value']);

function goldOf({ gold, ask = [] }: Frame, filling: Filling): Gold {
  const { P, Q } = filling.plants;
  const entries = gold.map(({ plant, ...entry }) => {
    const slots = slotsOf(entry, filling) as GoldEntry;
    if (plant === 'P' || plant === 'Q') {
      const of = filling.plants[plant];
      const all = slots['count'] === 'all' ? { count: { any: ['all', ALIVE[plant]] } } : {};
      const roots = slots['rooted'] === 'all' ? { rooted: { any: ['all', ALIVE[plant]] } } : {};
      return { ...slots, ...all, ...roots, variety: of[0], crop: { any: [of[1], null] } };
    }
    // A plant that the frame does not name may be either of the two that live.
    const either = (slot: 0 | 1) => ({ any: [null, P[slot], Q[slot]] });
    const batch = { any: [null, labelOf(P[0]), labelOf(Q[0])] };
    return { variety: either(0), crop: either(1), batch, ...slots };
  });
  return { entries, mustAsk: ask };
}

function slotsOf(entry: GoldEntry | Readonly<Record<string, unknown>>, filling: Filling): object {
  const { plants, values } = filling;
  return Object.fromEntries(
    Object.entries(entry).map(([slot, value]): [string, unknown] => {
      if (slot === 'set') return [slot, slotsOf(value as Readonly<Record<string, unknown>>, filling)];
      if (typeof value !== 'string') return [slot, value];
      if (slot === 'variety' && (value === 'P' || value === 'Q')) return [slot, plants[value][0]];
      if (NUMBERED.has(slot)) return [slot, worked(value, filling.numbers)];
      return [slot, NAMED.has(slot) ? (values[value]?.[1] ?? value) : value];
    }),
  );
}

/** "n", "m-n", "n*m" worked out; any other value as it stands. */
function worked(value: string, numbers: Filling['numbers']): unknown {
  const [, first, sign, second] = /^([nm])(?:([+*-])([nm]))?$/.exec(value) ?? [];
  if (first !== 'n' && first !== 'm') return value;
  const left = numbers[first];
  if (second !== 'n' && second !== 'm') return left;
  const right = numbers[second];
  return sign === '+' ? left + right : sign === '-' ? left - right : left * right;
}
