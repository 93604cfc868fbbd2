/** Posts what a note says, entry by entry; what is in doubt waits for its question alone. */
import { alive, type Batch } from '../ledger/batch.js';
import { batchLabelled, knownPlace, liveBatches, matching } from '../ledger/ledger.js';
import { named, plantOf } from '../ledger/reach.js';
import { standingOn } from './batches/deeds.js';
import type { Count, LoggedEntry, Plant } from '../ledger/entry.js';
import type { Line } from '../ledger/posting.js';
import type { Refusal } from '../ledger/refusal.js';
import type { Pending, ReadEntry, ReadNote } from '../language/note.js';
import {
  allOfThem,
  complete,
  isDoneToPlants,
  isOnOneBatch,
  optionsFor,
  whichOf,
  withBatch,
} from './answers/completing.js';
import { allMeant, eachOfBoth } from './batches/all-of-them.js';
import { meansEverything } from './batches/means-everything.js';
import { askFor } from './answers/asked-instead.js';
import { isPlainlyAbout } from './prompts/given-prompts.js';
import { batchPointedAt, cameOrCut, movedAsSpoken, spokenOfSince } from './batches/pointing.js';
import { placeMeant, placeThere } from './reading/places-pointed-at.js';
import { ofSameSort } from './leaning/same-sort.js';
import { withoutSlots } from './reading/slots.js';
import type { Sitting } from './sitting.js';
import { batchToldByPlace } from './batches/told-by-place.js';
import type { Origin, SlotAsk } from './talk.js';

/** Whether an entry is of a kind that is logged. */
export function isLogged(entry: { readonly kind: string }): entry is LoggedEntry {
  return !['question', 'answer', 'undo', 'amend'].includes(entry.kind);
}

/** Posts or asks about every logged entry of the note; answers the lines posted. */
export function takeNote(
  sitting: Sitting,
  read: ReadNote,
  origin: Origin = sitting.origin,
  pending?: Pending,
): Line[] {
  return read.entries.flatMap((each, index) => {
    if (!isLogged(each.entry)) return [];
    const entry = unguessed(sitting, each, each.entry, pending);
    const told = eachOfBoth(sitting, ofTheSame(sitting, entry, read.entries.length));
    const own = inFull(sitting, movedAsSpoken(sitting, told));
    const [first, ...then] = read.asks
      .filter((ask) => ask.entry === index && !(ask.slot in own))
      .map(({ slot, options }) => ({ slot, options: options ?? [] }));
    const unknown = first || unknownLabel(sitting) ? asksWhichPlant(sitting, own) : null;
    if (unknown) {
      const later = (first ? [first, ...then] : then).filter(({ slot }) => slot !== 'batch');
      putOrRefuse(sitting, { ...unknown, then: later }, origin);
      return [];
    }
    if (first) {
      const offered = first.options.length > 0 ? first.options : optionsFor(sitting.ledger, own, first.slot);
      const labels = offered.filter((each) => typeof each === 'string');
      const options = first.slot === 'batch' ? whichOf(own, labels) : offered;
      const all = first.slot === 'batch' ? onEverything(sitting, own, options, origin) : null;
      if (all) return all;
      const meant = first.slot === 'batch' && then.length === 0 ? batchPointedAt(sitting, own, labels) : null;
      if (meant) return postPointedAt(sitting, own, meant, origin);
      sitting.ask({ ask: 'slot', entry: own, slot: first.slot, options, then }, origin);
      return [];
    }
    return postEntry(sitting, own, origin);
  });
}

/** A plant that nobody knows is asked about before anything else of it. */
function asksWhichPlant(sitting: Sitting, entry: LoggedEntry): SlotAsk | null {
  const { ledger } = sitting;
  const plant = plantOf(entry as Plant);
  const unknown = named(plant) ? plant : unknownLabel(sitting);
  if (!isDoneToPlants(entry.kind) || !unknown || matching(ledger, unknown).length > 0) return null;
  const options = liveBatches(ledger).map(({ label }) => label);
  return {
    ask: 'slot',
    entry,
    slot: 'batch',
    options,
    then: [],
    refusal: { refused: 'noBatch', plant: unknown },
  };
}

/** "EF7 6 rooted": a label that opens a note and that no batch has. */
function unknownLabel({ ledger, text }: Sitting): Plant | null {
  const label = /^\s*(\p{Lu}{2,4}\d{1,3})\b/u.exec(text)?.[1];
  return label === undefined || batchLabelled(ledger, label) ? null : { batch: label };
}

/** "The rest" as a number, less what the same note named before; places by the name that the ledger has for them. */
function inFull(sitting: Sitting, told: LoggedEntry): LoggedEntry {
  const entry = ofSameSort(sitting, theOnlyOne(sitting, told));
  const rested =
    'count' in entry && entry.count === 'rest' ? { ...entry, ...theRest(sitting, entry) } : entry;
  const place = 'place' in rested ? placeMeant(sitting, rested) : placeThere(sitting, rested);
  const from = 'fromPlace' in rested ? knownPlace(sitting.ledger, rested.fromPlace) : undefined;
  return { ...rested, ...(place ? { place } : {}), ...(from ? { fromPlace: from } : {}) };
}

const UNROOTED =
  /\b(?:unrooted|(?:that|which) (?:never|hadn['’]?t|haven['’]?t|didn['’]?t) root(?:ed)?|without (?:any )?roots)\b/i;

/** "EF1 has died", of which one is left: nobody need be asked how many. */
function theOnlyOne(sitting: Sitting, entry: LoggedEntry): LoggedEntry {
  const { ledger } = sitting;
  if ((entry.kind !== 'loss' && entry.kind !== 'dispatch') || 'count' in entry || !named(entry)) return entry;
  const [only, another] = matching(ledger, plantOf(entry));
  if (!only || another) return entry;
  const { rooted } = only;
  const unrooted = alive(only) - rooted;
  // "Binned the unrooted Ember Fox".
  if (entry.kind === 'loss' && rooted > 0 && unrooted > 0 && UNROOTED.test(sitting.text))
    return { ...entry, count: unrooted };
  return alive(only) === 1 ? { ...entry, count: 1 } : entry;
}

/** Silence in a note means the one batch that the note has named: "potted on the 10 Violet Ledger, lost the rest". */
function ofTheSame(sitting: Sitting, entry: LoggedEntry, entries: number): LoggedEntry {
  if (entries < 2 || named(entry as Plant) || !('count' in entry) || !isOnOneBatch(entry.kind)) return entry;
  const labels = new Set(standingOn(sitting.ledger, sitting.reply.lines).flatMap(({ touched }) => touched));
  const [only, another] = labels;
  return only === undefined || another !== undefined ? entry : ({ ...entry, batch: only } as LoggedEntry);
}

function theRest(sitting: Sitting, entry: LoggedEntry): { count?: Count } {
  const [batch, another] = matching(sitting.ledger, plantOf(entry as Plant));
  if (!batch || another) return {};
  const named = standingOn(sitting.ledger, sitting.reply.lines)
    .filter(
      ({ touched, entry: { kind } }) =>
        touched.includes(batch.label) && kind !== 'loss' && kind !== 'dispatch',
    )
    .map(({ line }) => batch.acts.find((act) => act.line === line)?.count ?? 0);
  const left = alive(batch) - Math.max(0, ...named);
  if (named.length > 0 && left > 0) return { count: left };
  const unrooted = alive(batch) - Math.min(batch.rooted, alive(batch));
  return entry.kind === 'loss' && unrooted === 0 ? { count: 'all' } : {};
}

/** A batch that nobody named, taken from a prompt that asks for something else or of many batches, is not what was said. */
function unguessed(
  sitting: Sitting,
  { sources }: ReadEntry,
  entry: LoggedEntry,
  pending: Pending | undefined,
): LoggedEntry {
  const { batch } = entry as Plant;
  const said = (['batch', 'variety', 'crop'] as const).some((slot) => sources[slot] === 'said');
  if (!said && batch !== undefined && unknownLabel(sitting))
    return withoutSlots(entry, 'batch', 'variety', 'crop');
  if (batch === undefined || batch !== pending?.batch) return entry;
  // "The third Ember Fox never rooted, so I threw it out": named in the same note.
  const { variety } = batchLabelled(sitting.ledger, batch) ?? {};
  if (said || (variety && sitting.text.toLowerCase().includes(variety.toLowerCase()))) return entry;
  // "Potted on ten of them", told right behind what another batch did.
  const live = liveBatches(sitting.ledger).map(({ label }) => label);
  const there = batchToldByPlace(sitting) ?? cameOrCut(sitting, live);
  if (there) return withBatch(entry, there);
  const counted = ofSoMany(sitting, entry, batch);
  if (counted) return withRootedBefore(withBatch(entry, counted), counted);
  // "Everything outside to harden off", while one batch is asked about; of roots it answers that.
  const isOfAnother =
    spokenOfSince(sitting, batch) !== null || (entry.kind !== 'check' && meansEverything(sitting.text, 0));
  if (!isOfAnother && entry.kind === pending.kind && isPlainlyAbout(sitting, entry.kind, batch)) return entry;
  return withoutSlots(entry, 'batch', 'variety', 'crop');
}

/** "2 of the 3 are rooted now": the only batch that has three, or three without roots, where the one asked about has not. */
function ofSoMany({ ledger, text }: Sitting, entry: LoggedEntry, asked: string): Batch | null {
  if (entry.kind !== 'check' || typeof entry.count !== 'number' || !/\bof the\b/i.test(text)) return null;
  const { count } = entry;
  const fitting = liveBatches(ledger).filter(
    (batch) => alive(batch) === count || alive(batch) - batch.rooted === count,
  );
  const [only, another] = fitting;
  return only && !another && only.label !== asked ? only : null;
}

/** Two of those that had none: beside those that had rooted before. */
function withRootedBefore(entry: LoggedEntry, batch: Batch): LoggedEntry {
  if (entry.kind !== 'check' || typeof entry.rooted !== 'number' || alive(batch) === entry.count)
    return entry;
  return { ...withoutSlots(entry, 'count'), rooted: batch.rooted + entry.rooted } as LoggedEntry;
}

/** Posts one entry, or asks what stands before it; answers its line, if any. */
export function postEntry(sitting: Sitting, entry: LoggedEntry, origin: Origin = sitting.origin): Line[] {
  const completed = complete(sitting.ledger, inFull(sitting, entry), sitting.dayOf(origin.at));
  if ('asks' in completed) {
    const { slot, refusal, options } = completed.asks;
    const labels = options.filter((each) => typeof each === 'string');
    const all = slot === 'batch' ? onEverything(sitting, entry, options, origin) : null;
    if (all) return all;
    const meant = slot === 'batch' && !refusal ? batchPointedAt(sitting, entry, labels) : null;
    if (meant) return postPointedAt(sitting, entry, meant, origin);
    putOrRefuse(sitting, completed.asks, origin);
    return [];
  }
  const line = sitting.post(completed.posting, origin);
  if (typeof line !== 'number') {
    refuse(sitting, entry, line, origin);
    return [];
  }
  sitting.reply.lines.push(line);
  if (completed.assumed) sitting.assumed.push(line);
  return [line];
}

/** "Planted out everything": an entry for each batch on offer, "them all" for each that was told of; null where the note says neither. */
function onEverything(
  sitting: Sitting,
  entry: LoggedEntry,
  options: readonly unknown[],
  origin: Origin,
): Line[] | null {
  if (!options.includes(allOfThem)) return null;
  const labels = options.flatMap((each) => (typeof each === 'string' && each !== allOfThem ? [each] : []));
  const all = allMeant(sitting, entry, labels);
  if (all.length === 0) return null;
  return all.flatMap((label) => {
    const batch = batchLabelled(sitting.ledger, label);
    return batch ? postEntry(sitting, withBatch(entry, batch), origin) : [];
  });
}

function postPointedAt(sitting: Sitting, entry: LoggedEntry, batch: Batch, origin: Origin): Line[] {
  const lines = postEntry(sitting, withBatch(entry, batch), origin);
  sitting.assumed.push(...lines);
  return lines;
}

/** Where nothing lives, it is no use to ask which was meant. */
function putOrRefuse(sitting: Sitting, ask: SlotAsk, origin: Origin): void {
  if (ask.refusal?.refused === 'noBatch' && ask.options.length === 0)
    sitting.refused.push({ entry: ask.entry, refusal: ask.refusal });
  else sitting.ask(ask, origin);
}

/** Asks what the refused entry should have said; where nothing would do, only says so. */
function refuse(sitting: Sitting, entry: LoggedEntry, refusal: Refusal, origin: Origin): void {
  const ask = askFor(entry, refusal);
  if (ask) sitting.ask(ask, origin);
  else sitting.refused.push({ entry, refusal });
}
