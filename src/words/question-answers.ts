/** Answers in numbers: how many, where, a batch's story, what was done, how well cuttings struck, what is wanted. */
import { daysBetween } from '../calendar/day.js';
import type { Span } from '../calendar/span.js';
import { alive, type Act, type Batch, began } from '../ledger/batch.js';
import type { CuttingType, Plant } from '../ledger/entry.js';
import type { Better } from '../outlook/which-better.js';
import { percent } from './rooting-reason.js';
import { batchWords, cuttingWords, mannerWords, placeWords, plantWords, potWords } from './plants.js';
import { capital, dateWords, dayWords, listWords, many, spanWords, type Speech } from './speech.js';
import type { Due } from '../outlook/due.js';
import { comingWords } from './due-list.js';
import { dueReason } from './due-reason.js';

export function noneOf(plant: Plant, place?: string): string {
  return `Nothing live${Object.keys(plant).length > 0 ? ` of ${plantWords(plant)}` : ''}${place ? ` ${placeWords(place, 'in')}` : ''}.`;
}

/** "17 live in 2 batches: EF1 12 (2 rooted), EF2 5." */
export function countWords(batches: readonly Batch[], plant: Plant, place?: string): string {
  const total = batches.reduce((sum, batch) => sum + standingIn(batch, place), 0);
  const parts = batches.map((batch) => {
    const facts = [
      ...(batch.rooted > 0 ? [`${Math.min(batch.rooted, alive(batch))} rooted`] : []),
      ...(batch.plantedOut > 0 ? [`${batch.plantedOut} planted out`] : []),
    ];
    return `${batchWords(batch)} ${standingIn(batch, place)}${facts.length > 0 ? ` (${facts.join(', ')})` : ''}`;
  });
  const of = Object.keys(plant).length > 0 ? ` ${plantWords(plant)}` : '';
  return batches.length === 1
    ? `${total}${of}: ${parts[0] ?? ''}.`
    : `${total}${of} in ${many(batches.length, 'batch', 'batches')}:\n${parts.join('\n')}`;
}

/** So many of a batch, to which something was done. */
export interface Dealt {
  readonly batch: Batch;
  readonly count: number;
}

/** "5 lost in 2 batches: EF1 Ember Fox 3, EF2 Ember Fox 2", "None sold, 1–31 Mar"; `deed` as in "lost", "potted on". */
export function doneCountWords(
  dealt: readonly Dealt[],
  deed: string,
  span: Span | null,
  speech: Speech,
): string {
  const dated = span === null ? '' : `, ${spanWords(span, speech)}`;
  if (dealt.length === 0) return `None ${deed}${dated}.`;
  const total = dealt.reduce((sum, { count }) => sum + count, 0);
  const parts = dealt.map(({ batch, count }) => `${batchWords(batch)} ${count}`);
  return parts.length === 1
    ? `${total} ${deed}${dated}: ${parts[0] ?? ''}.`
    : `${total} ${deed} in ${many(parts.length, 'batch', 'batches')}${dated}:\n${parts.join('\n')}`;
}

function standingIn(batch: Batch, place: string | undefined): number {
  if (place === undefined) return alive(batch);
  const [, count] =
    Object.entries(batch.standing).find(([name]) => name.toLowerCase() === place.toLowerCase()) ?? [];
  return count ?? 0;
}

export function whereWords(batches: readonly Batch[]): string {
  return batches
    .map((batch) => {
      const places = Object.entries(batch.standing);
      const known = places.reduce((sum, [, count]) => sum + count, 0);
      const unknown = alive(batch) - known;
      const parts = [
        ...places.map(([place, count]) =>
          places.length === 1 && unknown === 0 ? place : `${count} ${place}`,
        ),
        ...(unknown > 0 ? [places.length === 0 ? 'place not noted' : `${unknown} place not noted`] : []),
      ];
      return `${batchWords(batch)}: ${listWords(parts)}.`;
    })
    .join('\n');
}

/** A batch's story in at most five lines. */
export function storyWords(batch: Batch, next: Due | null, speech: Speech): string {
  const start = `${batchWords(batch)}${batch.variety && batch.crop ? ` (${batch.crop})` : ''}: ${
    batch.struck ? `${many(batch.count, cuttingWords(batch.cutting))} struck` : `${batch.count} came in`
  } ${dayWords(began(batch), speech)}${batch.potSize ? `, now in ${potWords(batch.potSize)}` : ''}.`;
  const gone = [
    ...(batch.lost > 0 ? [`${batch.lost} lost`] : []),
    ...(batch.dispatched > 0 ? [`${batch.dispatched} ${mannerWords(undefined)}`] : []),
  ];
  const age = daysBetween(began(batch), speech.today);
  const alives = `${alive(batch)} alive${gone.length > 0 ? ` (${gone.join(', ')})` : ''}, day ${age}.`;
  const stage = stageWords(batch, speech);
  const where = whereWords([batch]).replace(/^[^:]*: /, '');
  const last = lastAct(batch);
  return [
    start,
    alives,
    ...(stage === '' ? [] : [stage]),
    `${where.charAt(0).toUpperCase()}${where.slice(1)}${last ? ` Last: ${lastWords[last.kind] ?? 'noted'} ${dayWords(last.on, speech)}.` : ''}`,
    ...(next ? [nextLine(next, speech)] : []),
  ].join('\n');
}

const lastWords: Readonly<Partial<Record<string, string>>> = {
  check: 'looked at',
  move: 'moved',
  tend: 'tended',
  potOn: 'potted on',
  pinch: 'pinched',
  hardenOff: 'put to harden off',
  plantOut: 'planted out',
};

/** "Next: look for roots from Thu 12 Mar; likely ready 10–19 Mar (10–14 days is usual, a starting guess)." */
function nextLine(next: Due, speech: Speech): string {
  const reason = dueReason(next, speech);
  return `Next: ${comingWords(next, speech).replace(/^[^:]*: /, '')}${reason === '' ? '' : `; ${reason}`}.`;
}

function stageWords(batch: Batch, speech: Speech): string {
  const parts = [
    ...(batch.rooted > 0 && batch.struck ? [`${batch.rooted} rooted`] : []),
    ...(batch.pottedOn > 0 ? [`${batch.pottedOn} potted on`] : []),
    ...(batch.pinched > 0 ? [`${batch.pinched} pinched`] : []),
    ...(batch.hardeningSince ? [`hardening off since ${dateWords(batch.hardeningSince, speech)}`] : []),
    ...(batch.plantedOut > 0 ? [`${batch.plantedOut} planted out`] : []),
  ];
  const words = parts.join(', ');
  return words === '' ? '' : `${words.charAt(0).toUpperCase()}${words.slice(1)}.`;
}

function lastAct(batch: Batch): Act | null {
  const later = batch.acts.filter(({ kind }) => kind !== 'strike' && kind !== 'receive');
  return later.at(-1) ?? null;
}

export function historyWords(receipts: readonly string[]): string {
  return receipts.length === 0 ? 'Nothing is noted for that.' : receipts.join('\n');
}

export interface RateRow {
  readonly of: string;
  readonly struck: number;
  readonly rooted: number;
  readonly batches: number;
}

export function rateWords(rows: readonly RateRow[], better: readonly Better[], plant: Plant): string {
  if (rows.length === 0)
    return `No batch${Object.keys(plant).length > 0 ? ` of ${plantWords(plant)}` : ''} has been looked at yet, so there is no rate to tell.`;
  return [
    ...rows.map(
      ({ of, struck, rooted, batches }) =>
        `${of}: ${rooted} of ${struck} rooted, ${Math.round((100 * rooted) / struck)} % (${many(batches, 'batch', 'batches')})`,
    ),
    ...better.map(betterWords),
  ].join('\n');
}

/** "dahlia does better in the propagator than on the windowsill: some 80% strike there, 55% here". */
function betterWords({ crop, by, better, than, rates: [more, less], sure }: Better): string {
  const name = (way: string) => (by === 'place' ? way : `${cuttingWords(way as CuttingType)}s`);
  return `${capital(crop)} does better: ${name(better)} (some ${percent(more)} strike) than ${name(than)} (${percent(less)}); ${percent(sure)} sure.`;
}
