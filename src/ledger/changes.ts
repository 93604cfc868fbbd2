/** What each kind of entry does to the one batch that it is about: its count resolved and checked, its numbers moved. */
import { firstDay } from '../calendar/span.js';
import { allReady, alive, type Batch, indoors } from './batch.js';
import { move, plantedAt, pottedAnew, rootedBound, without } from './counting.js';
import type { Count, Plant } from './entry.js';
import { plantOf } from './reach.js';
import type { Posting } from './posting.js';
import type { Refusal } from './refusal.js';

export type Of<K extends Posting['kind']> = Extract<Posting, { kind: K }>;
export type Changed = Batch | Refusal;

export function check(batch: Batch, entry: Of<'check'>): Changed {
  if (entry.rooted === 'some' || entry.rooted === undefined) {
    return { ...batch, rooted: Math.max(batch.rooted, Math.min(1, alive(batch))) };
  }
  const wanted = entry.rooted === 'all' ? allRooted(batch) : entry.rooted === 'none' ? 0 : entry.rooted;
  const atMost = rootedBound(batch);
  if (wanted > atMost) return { refused: 'tooManyRooted', batch: batch.label, atMost, wanted };
  // How many ever rooted can't fall: a plant that died after rooting is a loss.
  return { ...batch, rooted: Math.max(batch.rooted, wanted) };
}

export function lose(batch: Batch, entry: Of<'loss'>): Changed {
  return taken(batch, entry, alive(batch) - Math.min(batch.rooted, alive(batch)), (each, count) => ({
    ...without(each, count),
    lost: each.lost + count,
  }));
}

export function dispatch(batch: Batch, entry: Of<'dispatch'>): Changed {
  return taken(batch, entry, indoors(batch), (each, count) => ({
    ...without(each, count),
    dispatched: each.dispatched + count,
  }));
}

export function potOn(batch: Batch, entry: Of<'potOn'>): Changed {
  return done(batch, entry, allReady(batch), readyBut(batch, batch.pottedOn), (each, count) => {
    const pottedOn = pottedAnew(each, entry, count);
    return {
      ...each,
      pottedOn,
      rooted: Math.max(each.rooted, pottedOn),
      potSize: entry.potSize ?? each.potSize,
      medium: entry.medium ?? each.medium,
    };
  });
}

export function pinch(batch: Batch, entry: Of<'pinch'>): Changed {
  return done(batch, entry, alive(batch), alive(batch) - batch.pinched, (each, count) => ({
    ...each,
    pinched: Math.max(each.pinched, Math.min(each.pinched + count, alive(each))),
  }));
}

export function plantOut(batch: Batch, entry: Of<'plantOut'>): Changed {
  const waiting = readyBut(batch, batch.plantedOut);
  return done(batch, entry, waiting, waiting, (each, count) => {
    const plantedOut = each.plantedOut + count;
    const there = batch.count - batch.lost;
    if (count > indoors(each))
      return { refused: 'tooMany', batch: each.label, there: indoors(each), wanted: count };
    const pottedOn = Math.max(each.pottedOn, Math.min(plantedOut, there));
    return {
      ...each,
      plantedOut,
      pottedOn,
      rooted: Math.max(each.rooted, pottedOn),
      standing: entry.place === undefined ? each.standing : plantedAt(each, count, entry.place),
    };
  });
}

export function carry(batch: Batch, entry: Of<'move'>): Changed {
  const here =
    entry.fromPlace === undefined ? alive(batch) : (batch.standing[entry.fromPlace] ?? alive(batch));
  const settled = entry.count === 'rest' && entry.fromPlace === undefined ? lastCarried(batch, entry) : {};
  const there = Object.values(settled).reduce((sum, each) => sum + each, 0);
  return done(batch, entry, here, here - there, (each, count) => ({
    ...each,
    standing:
      entry.place === undefined
        ? each.standing
        : there > 0
          ? { ...settled, [entry.place]: count }
          : move(each, count, entry.place, entry.fromPlace),
  }));
}

/** "The rest" are those that the move before did not take: where that led, and how many stand there. */
function lastCarried(batch: Batch, entry: Of<'move'>): Readonly<Record<string, number>> {
  const last = batch.acts.at(-1)?.entry;
  const place = last?.kind === 'move' ? last.place : undefined;
  const there = place === undefined ? 0 : (batch.standing[place] ?? 0);
  return place === undefined || place === entry.place || there >= alive(batch) ? {} : { [place]: there };
}

export function harden(batch: Batch, entry: Of<'hardenOff'>): Changed {
  const on = firstDay(entry.date);
  const hardeningSince = batch.hardeningSince ?? on;
  return done(batch, entry, alive(batch), alive(batch), (each, count) => ({
    ...each,
    hardeningSince,
    standing: entry.place === undefined ? each.standing : move(each, count, entry.place),
  }));
}

/** Of those ready the ones that were not among the `done`; where none is left of those, of all that live. */
function readyBut(batch: Batch, done: number): number {
  const ready = allReady(batch) - done;
  return Math.max(0, ready > 0 ? ready : alive(batch) - done);
}

/** Plants that leave: the count must be said, and be there. */
function taken(
  batch: Batch,
  entry: Posting & Plant & { count?: Count },
  rest: number,
  change: (batch: Batch, count: number) => Changed,
): Changed {
  if (entry.count === undefined) return { refused: 'countMissing', plant: plantOf(entry) };
  return done(batch, entry, alive(batch), rest, change);
}

/** Resolves the count (left out means all), checks that so many live, and changes. */
function done(
  batch: Batch,
  entry: Posting & { count?: Count },
  all: number,
  rest: number,
  change: (batch: Batch, count: number) => Changed,
): Changed {
  const said = entry.count ?? 'all';
  const count = said === 'all' ? all : said === 'rest' ? Math.max(0, rest) : said;
  if (count < 0 || (typeof said === 'number' && count === 0))
    return { refused: 'countNotPositive', wanted: count };
  if (count === 0) return { refused: 'noneLeft', batch: batch.label };
  if (count > alive(batch))
    return { refused: 'tooMany', batch: batch.label, there: alive(batch), wanted: count };
  return change(batch, count);
}

/** All that live have rooted, and so had those sent out as far as roots were known. */
function allRooted(batch: Batch): number {
  return Math.max(batch.rooted, alive(batch) + Math.min(batch.dispatched, batch.rooted));
}
