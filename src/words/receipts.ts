/** Receipts: one line that says what was understood, by the ledger after it. */
import { firstDay } from '../calendar/span.js';
import { alive, type Batch } from '../ledger/batch.js';
import type { Plant } from '../ledger/entry.js';
import type { Posting, Split } from '../ledger/posting.js';
import {
  batchWords, careWords, causeWords, cuttingWords, mannerWords, placeWords, plantWords, potWords,
  temperatureWords,
} from './plants.js'; // prettier-ignore
import { capital, dateWords, dayWords, listWords, many, type Speech, whenWords } from './speech.js';

/** What an entry did: the batches it touched as they are now, and to how many it was done. */
export interface Done {
  readonly entry: Posting;
  readonly touched: readonly Batch[];
  /** Null where it has no number, or not one. */
  readonly count: number | null;
}

/** "EF1: 12 basal cuttings of Ember Fox (dahlia), 2 pots, propagator." */
export function receipt(done: Done, speech: Speech): string {
  const when = firstDay(done.entry.date) === speech.today ? '' : `, ${dated(done.entry, speech)}`;
  return `${sentence(done, speech)}${when}.`;
}

/** A receipt in a list of what was done, however long ago: with its day, and without how many are left by now. */
export function pastReceipt({ entry, touched, count }: Done, speech: Speech): string {
  return `${sentence({ entry, touched, count }, speech).replace(LEFT_NOW, '')}, ${dated(entry, speech)}.`;
}

const LEFT_NOW = /; (?:\d+|none) left$/;

/** The entry in the fewest words, for lists and for what is taken back: "EF1, 12 cuttings of Ember Fox (2 Mar)". */
export function briefly({ entry, touched, count }: Done, speech: Speech): string {
  const on = dateWords(firstDay(entry.date), speech);
  if (entry.kind === 'strike')
    return `${entry.label}, ${many(Number(entry.count), cuttingWords(entry.cutting))} of ${plantWords(entry)} (${on})`;
  return `${sentence({ entry, touched, count }, speech).replace(LEFT_NOW, '')} (${on})`;
}

function dated(entry: Posting, speech: Speech): string {
  if (entry.kind === 'target') return `by ${dayWords(firstDay(entry.date), speech)}`;
  return whenWords(entry.date, speech);
}

function sentence({ entry, touched, count }: Done, speech: Speech): string {
  const [batch] = touched;
  const about = batch && touched.length === 1 ? batchWords(batch) : aboutWords(entry as Plant, touched);
  switch (entry.kind) {
    case 'strike': {
      // By the name that it goes by now.
      const of = entry.variety === undefined ? entry.crop : (batch?.variety ?? entry.variety);
      const crop = entry.variety !== undefined && batch?.crop ? ` (${batch.crop})` : '';
      return [
        `${entry.label}: ${many(Number(entry.count), cuttingWords(entry.cutting))}${of ? ` of ${of}` : ''}${crop}`,
        ...(entry.pots === undefined ? [] : [potsWords(entry.pots, entry.potSize)]),
        ...(entry.medium === undefined ? [] : [`in ${entry.medium}`]),
        ...(entry.hormone === undefined ? [] : [entry.hormone ? 'with rooting hormone' : 'no hormone']),
        ...(entry.place === undefined ? [] : [entry.place]),
      ].join(', ');
    }
    case 'receive':
      return `${entry.label}: ${entry.count} ${plantWords(entry)} came in${at(entry.place)}`;
    case 'check':
      return `${about}: ${rootedWords(entry.rooted, batch)}${seenBefore(entry.rooted, count)}`;
    case 'loss':
      return `${about}: ${count ?? ''} lost${entry.cause ? ` to ${causeWords(entry.cause, speech)}` : ''}${left(batch)}`;
    case 'potOn':
      return `${about}: ${count ?? 'all'} potted on${entry.potSize ? ` into ${potWords(entry.potSize)}` : ''}`;
    case 'pinch':
      return `${about}: ${count ?? 'all'} pinched`;
    case 'move':
      return `${about}: ${count === null ? '' : `${count} `}moved${entry.place ? ` ${placeWords(entry.place, 'to')}` : ''}`;
    case 'hardenOff':
      return `${about}: hardening off${at(entry.place)}`;
    case 'plantOut':
      return `${about}: ${count ?? 'all'} planted out${at(entry.place)}`;
    case 'dispatch':
      return `${about}: ${count ?? ''} ${mannerWords(entry.how)}${entry.to ? ` ${entry.how === 'swapped' ? 'with' : 'to'} ${entry.to}` : ''}${left(batch)}`;
    case 'tend':
      return `${capital(careWords(entry.care))}: ${entry.place ?? about}`;
    case 'remark':
      return `Remark${touched.length > 0 ? ` on ${about}` : ''}: “${entry.text ?? ''}”`;
    case 'reading':
      return `${capital(entry.place ?? 'outside')}: ${temperatureWords(entry.celsius ?? 0, speech)}`;
    case 'stock':
      return `Stock: ${typeof entry.count === 'number' ? `${entry.count} ` : ''}${plantWords(entry)}${at(entry.place)}`;
    case 'target':
      return `Wanted: ${entry.count} ${plantWords(entry)}`;
    case 'remind':
      return `I’ll remind you: ${entry.text ?? ''}${entry.time ? ` at ${entry.time}` : ''}`;
    case 'split':
      return `${entry.batch} split: ${listWords(touched.map((each) => `${alive(each)} in ${each.label}${partedTo(entry, each)}`))}`;
    case 'merge':
      return `${listWords(entry.batches)} are one batch now: ${touched.map((each) => `${each.label}, ${alive(each)}`).find((each) => each.startsWith(entry.into)) ?? entry.into}`;
    case 'rename':
      return entry.to.variety
        ? `${entry.variety} is called ${entry.to.variety} from now on`
        : `${entry.variety} is a ${entry.to.crop}`;
    case 'teach':
      return `${capital(entry.crop)}: ${entry.daysToRoot[0]}–${entry.daysToRoot[1]} days to root, by your word`;
  }
}

/** Where a part of a split went, if it went anywhere. */
function partedTo({ batch, parts, place }: Split, { label }: Batch): string {
  return at(label === batch ? place : parts.find((part) => part.label === label)?.place);
}

function aboutWords(entry: Plant, touched: readonly Batch[]): string {
  if (touched.length === 0) return plantWords(entry);
  if (touched.length > 3) return `${touched.length} batches`;
  return listWords(touched.map((batch) => batch.label));
}

function rootedWords(rooted: number | string | undefined, batch: Batch | undefined): string {
  if (rooted === 'some' || rooted === undefined) return 'some rooted';
  if (rooted === 'none' || rooted === 0) return 'none rooted yet';
  if (batch === undefined) return `${rooted} rooted`;
  if (rooted === 'all') return `all ${batch.rooted} rooted`;
  // Of those lost since, some may have been among the rooted.
  return `${rooted} of ${Math.max(Number(rooted), batch.count - batch.lost)} rooted`;
}

function at(place: string | undefined): string {
  return place === undefined ? '' : `, ${place}`;
}

function left(batch: Batch | undefined): string {
  if (batch === undefined) return '';
  return alive(batch) === 0 ? '; none left' : `; ${alive(batch)} left`;
}

/** Fewer than an earlier look found: how many ever rooted does not fall. */
function seenBefore(rooted: unknown, ever: number | null): string {
  const seen = rooted === 'none' ? 0 : rooted;
  return typeof seen === 'number' && ever !== null && ever > seen ? ` (${ever} had at an earlier look)` : '';
}

/** "1 pot", "3 pots of 9 cm", "2 24-cell trays": a size by its own number would run into that of the pots. */
function potsWords(count: number, size: string | undefined): string {
  if (size === undefined) return many(count, 'pot');
  const [, number, unit] = /^([\d.]+)([a-z]+)$/.exec(size) ?? [];
  if (unit === 'cell') return `${count} × ${number}-cell tray${count === 1 ? '' : 's'}`;
  return `${many(count, 'pot')} of ${number && unit ? `${number} ${unit}` : size}`;
}
