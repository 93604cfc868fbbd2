/** The sixth stage: drafts against what the ledger knows. One candidate is taken, several are asked about or covered. */
import { type Day, daysBetween } from '../calendar/day.js';
import { firstDay, type Span } from '../calendar/span.js';
import type { Entry, EntryKind } from '../ledger/entry.js';
import type { Draft } from './drafting/draft.js';
import type { Ask, KnownBatch, NoteContext, ReadEntry, Source } from './note.js';
import type { PlantWords } from './pieces.js';
import { shareOf } from './quantities.js';
import { narrowed } from './which-batch.js';

/** A draft with its kind, on the way to an entry. */
export interface Proposal {
  readonly kind: EntryKind;
  readonly draft: Draft;
  /** Further slots that the rule itself sets. */
  readonly slots: Readonly<Record<string, unknown>>;
  /** The plant carried from earlier in the note, where the draft names none. */
  readonly carried?: PlantWords;
  /** The rule's name, for the tree. */
  readonly rule: string;
  readonly future?: boolean;
  /** Told as what something else was done for ("to harden off"). */
  readonly purpose?: boolean;
  /** A slot that the words leave open. */
  readonly ask?: string;
}

export interface Refined {
  readonly read: ReadEntry;
  readonly asks: readonly Omit<Ask, 'entry'>[];
}

/** Several live batches fit: these kinds ask which, the others cover them all. */
const ASKS_BATCH: ReadonlySet<EntryKind> = new Set([
  'check',
  'loss',
  'potOn',
  'plantOut',
  'dispatch',
  'pinch',
]);
/** These are about plants that are not yet in the ledger: no live batch answers for them. */
const BATCHLESS: ReadonlySet<EntryKind> = new Set([
  'strike',
  'stock',
  'receive',
  'target',
  'amend',
  'undo',
  'reading',
  'answer',
]);
const NEEDS_PLANT: ReadonlySet<EntryKind> = new Set([
  'stock',
  'receive',
  'strike',
  'check',
  'loss',
  'potOn',
  'pinch',
  'move',
  'hardenOff',
  'plantOut',
  'dispatch',
  'target',
  'tend',
]);
const NEEDS_COUNT: ReadonlySet<EntryKind> = new Set(['receive', 'strike', 'loss', 'dispatch', 'target']);
const MOST = 100_000;

const same = (a: string | undefined, b: string | undefined): boolean =>
  a !== undefined && b !== undefined && a.toLowerCase() === b.toLowerCase();

/** Live batches that the words fit. */
export function fitting(plant: PlantWords, context: NoteContext): readonly KnownBatch[] {
  const batches = context.batches ?? [];
  if (plant.batch !== undefined) return batches.filter(({ label }) => same(label, plant.batch));
  return batches.filter(
    (batch) =>
      (plant.variety === undefined || same(batch.variety, plant.variety)) &&
      (plant.crop === undefined ||
        same(batch.crop, plant.crop) ||
        (batch.crop === undefined && plant.variety !== undefined)),
  );
}

function cropOf(variety: string, context: NoteContext): string | undefined {
  return (
    context.varieties?.find(({ name }) => same(name, variety))?.crop ??
    context.batches?.find((batch) => same(batch.variety, variety))?.crop
  );
}

/**
 * Turns a proposal into an entry with the origin of each slot, and what must be asked first. Null: nothing to log.
 * `lately` is the batch of the entry before it, which a plant carried over means again.
 */
export function refine(proposal: Proposal, context: NoteContext, lately?: string): Refined | null {
  const { kind } = proposal;
  const slots: Record<string, unknown> = {};
  const sources: Record<string, Source> = {};
  const asks: Omit<Ask, 'entry'>[] = [];
  const say = (slot: string, value: unknown, source: Source = 'said'): void => {
    if (value === undefined) return;
    slots[slot] = value;
    sources[slot] = source;
  };
  const batch = placePlant(proposal, context, say, asks, lately);
  for (const [slot, value] of Object.entries(proposal.slots)) say(slot, value);
  if (!countSlots(proposal, batch, say, asks)) return null;
  dateSlot(proposal, say, asks);
  if (kind === 'move' && slots['place'] === undefined) asks.push({ slot: 'place' });
  if (proposal.ask !== undefined) asks.push({ slot: proposal.ask });
  if (
    kind === 'tend' &&
    slots['place'] !== undefined &&
    slots['variety'] === undefined &&
    slots['crop'] === undefined
  ) {
    // A place alone is what was tended.
  }
  return { read: { entry: { kind, ...slots } as Entry, sources }, asks };
}

type Say = (slot: string, value: unknown, source?: Source) => void;

function placePlant(
  proposal: Proposal,
  context: NoteContext,
  say: Say,
  asks: Omit<Ask, 'entry'>[],
  lately: string | undefined,
): KnownBatch | undefined {
  const { kind, draft } = proposal;
  if (kind === 'reading' || kind === 'undo' || kind === 'answer') return undefined;
  const words = draft.plant ?? proposal.carried;
  const source: Source = draft.plant ? 'said' : 'assumed';
  if (words) {
    for (const [slot, value] of Object.entries(words)) say(slot, value, source);
    if (BATCHLESS.has(kind)) {
      if (words.variety !== undefined && words.crop === undefined)
        say('crop', cropOf(words.variety, context), 'assumed');
      if (words.batch !== undefined) {
        const known = fitting(words, context)[0];
        say('variety', known?.variety, 'assumed');
        say('crop', known?.crop, 'assumed');
      }
      return undefined;
    }
    const all = fitting(words, context);
    const told = draft.plant ? undefined : all.find(({ label }) => label === lately);
    const fits = told ? [told] : narrow(all, draft, kind);
    if (fits.length === 1) {
      const [only] = fits;
      if (only) {
        if (words.batch === undefined) say('batch', only.label, 'assumed');
        if (words.variety === undefined) say('variety', only.variety, 'assumed');
        if (words.crop === undefined) say('crop', only.crop, 'assumed');
      }
      return only;
    }
    if (words.variety !== undefined && words.crop === undefined)
      say('crop', cropOf(words.variety, context), 'assumed');
    if (fits.length > 1 && ASKS_BATCH.has(kind))
      asks.push({ slot: 'batch', options: fits.map(({ label }) => label) });
    return undefined;
  }
  return silent(proposal, context, say, asks);
}

/** No plant was said: the prompt's batch, the only one there is, or a question. */
function silent(
  proposal: Proposal,
  context: NoteContext,
  say: Say,
  asks: Omit<Ask, 'entry'>[],
): KnownBatch | undefined {
  const { kind, draft } = proposal;
  if (!NEEDS_PLANT.has(kind)) return undefined;
  const placed = draft.place !== undefined || draft.fromPlace !== undefined;
  if (kind === 'tend' && placed) return undefined;
  if (kind === 'move' && draft.fromPlace !== undefined) return undefined;
  const batches = context.batches ?? [];
  if (BATCHLESS.has(kind)) {
    const names = new Map(
      (context.varieties ?? []).map(({ name, crop }) => [name.toLowerCase(), { name, crop }]),
    );
    for (const { variety, crop } of batches)
      if (variety !== undefined && !names.has(variety.toLowerCase()))
        names.set(variety.toLowerCase(), { name: variety, crop });
    const only = names.size === 1 ? [...names.values()][0] : undefined;
    if (only && kind === 'strike') {
      say('variety', only.name, 'assumed');
      say('crop', only.crop, 'assumed');
    } else asks.push({ slot: 'variety', options: [...names.values()].map(({ name }) => name) });
    return undefined;
  }
  const pending = draft.quantity?.both ? undefined : context.pending?.batch;
  const fits = narrow(
    pending === undefined ? batches : batches.filter(({ label }) => label === pending),
    draft,
    kind,
  );
  const only = fits.length === 1 ? fits[0] : undefined;
  if (only) {
    say('batch', only.label, 'assumed');
    say('variety', only.variety, 'assumed');
    say('crop', only.crop, 'assumed');
    return only;
  }
  if (fits.length === 0) asks.push({ slot: 'variety' });
  else if (ASKS_BATCH.has(kind)) asks.push({ slot: 'batch', options: fits.map(({ label }) => label) });
  return undefined;
}

/** A place that the note says the plants stand in, or came from, singles out. */
function narrow(fits: readonly KnownBatch[], draft: Draft, kind: EntryKind): readonly KnownBatch[] {
  if (fits.length < 2) return fits;
  const meant = narrowed(fits, draft.which ?? {});
  if (meant.length < fits.length) return meant;
  const where =
    draft.fromPlace ??
    (kind === 'move' || kind === 'plantOut' || kind === 'hardenOff' || kind === 'potOn'
      ? undefined
      : draft.place);
  if (where === undefined) return fits;
  const there = fits.filter(({ place }) => same(place, where));
  return there.length > 0 ? there : fits;
}

function countSlots(
  proposal: Proposal,
  batch: KnownBatch | undefined,
  say: Say,
  asks: Omit<Ask, 'entry'>[],
): boolean {
  const { kind, draft } = proposal;
  const { quantity } = draft;
  const alive = batch?.count;
  const slot = kind === 'check' ? 'rooted' : 'count';
  if (kind === 'check' && proposal.slots['rooted'] !== undefined) return true;
  if (['tend', 'remark', 'remind', 'question', 'reading', 'undo', 'answer', 'amend'].includes(kind))
    return true;
  if (quantity === undefined) {
    if (kind === 'check') asks.push({ slot: 'rooted', options: ['all', 'some', 'none'] });
    else if (NEEDS_COUNT.has(kind)) asks.push({ slot: 'count' });
    return true;
  }
  // "Pinched both": each of two lots, whatever their numbers.
  if (quantity.both && !draft.plant && !proposal.carried && !batch && kind !== 'check') return true;
  const ask = (): true => {
    asks.push({ slot });
    return true;
  };
  if (quantity.some && kind === 'check') {
    say('rooted', 'some');
    return true;
  }
  if (quantity.vague) return kind === 'check' && !proposal.future ? ask() : ask();
  if (quantity.allBut !== undefined) {
    if (alive === undefined || alive < quantity.allBut) return ask();
    say(slot, alive - quantity.allBut, 'said');
    return true;
  }
  if (quantity.share) {
    const value = shareOf(alive, quantity.share);
    if (value === undefined) return ask();
    say(slot, value, 'said');
    return true;
  }
  if (quantity.whole !== undefined) {
    if (kind === 'strike' || kind === 'receive' || kind === 'target') return ask();
    if (kind === 'check') say('rooted', 'all');
    else say('count', quantity.whole);
    return true;
  }
  const { value } = quantity;
  if (value === undefined || quantity.negative || value > MOST || !Number.isInteger(value)) return ask();
  if (kind === 'check') {
    if (quantity.more) {
      if (batch?.rooted === undefined) return ask();
      say('rooted', batch.rooted + value);
    } else say('rooted', value === 0 ? 'none' : value);
    if (quantity.outOf !== undefined && quantity.outOf !== alive) say('count', quantity.outOf);
    return true;
  }
  if (value === 0) return false;
  say('count', value);
  return true;
}

function dateSlot(proposal: Proposal, say: Say, asks: Omit<Ask, 'entry'>[]): void {
  const { when } = proposal.draft;
  if (!when) {
    if (proposal.kind === 'remind') asks.push({ slot: 'date' });
    return;
  }
  // A remark on how things are this year is dated to the day.
  if (
    proposal.kind === 'remark' &&
    when.past !== undefined &&
    when.past !== 'ask' &&
    typeof when.past !== 'string' &&
    daysBetween(when.past.from, when.past.to) > 45
  )
    return;
  // "Since March" tells how long and "by June" when it is wanted, not when it was done.
  if (
    !proposal.future &&
    /^(?:since|for|after|by)\b/i.test(when.words) &&
    !(proposal.kind === 'hardenOff' && /^since/i.test(when.words))
  )
    return;
  const date: Day | Span | 'ask' | undefined = proposal.future ? when.future : when.past;
  if (date === 'ask') asks.push({ slot: 'date' });
  // Hardening off since Monday began on Monday.
  else if (proposal.kind === 'hardenOff' && date !== undefined && /^since/i.test(when.words))
    say('date', firstDay(date));
  else say('date', date);
}
