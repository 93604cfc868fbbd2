/** One posting upon the state: what it changes, or why it cannot be. */
import { firstDay } from '../calendar/span.js';
import type { Batch } from './batch.js';
import { carry, check, dispatch, harden, lose, type Of, pinch, plantOut, potOn } from './changes.js';
import { merge, split } from './division.js';
import type { Draft } from './draft.js';
import type { Plant } from './entry.js';
import type { Line, Posting } from './posting.js';
import { actOf, named, onEach, onOne, plantOf } from './reach.js';
import { isRefusal, type Refusal } from './refusal.js';

/** Applies `entry` to the draft; answers the labels of the batches that it touched, or why it cannot follow. */
export function evolve(draft: Draft, line: Line, entry: Posting): readonly string[] | Refusal {
  const named = asKnown(draft, entry);
  const touched = apply(draft, line, named);
  if (!isRefusal(touched)) remember(draft, named);
  return touched;
}

function apply(draft: Draft, line: Line, entry: Posting): readonly string[] | Refusal {
  switch (entry.kind) {
    case 'strike':
    case 'receive':
      return begin(draft, line, entry);
    case 'check':
      return onOne(draft, line, entry, (batch) => check(batch, entry));
    case 'loss':
      return onOne(draft, line, entry, (batch) => lose(batch, entry));
    case 'dispatch':
      return onOne(draft, line, entry, (batch) => dispatch(batch, entry));
    case 'potOn':
      return onOne(draft, line, entry, (batch) => potOn(batch, entry));
    case 'pinch':
      return onOne(draft, line, entry, (batch) => pinch(batch, entry));
    case 'plantOut':
      return onOne(draft, line, entry, (batch) => plantOut(batch, entry));
    case 'move':
      return onEach(draft, line, entry, entry.fromPlace, (batch) => carry(batch, entry));
    case 'hardenOff':
      return onEach(draft, line, entry, undefined, (batch) => harden(batch, entry));
    case 'tend':
      return onEach(draft, line, entry, named(entry) ? undefined : entry.place, (batch) => batch, true);
    case 'remark':
      return named(entry) ? onEach(draft, line, entry, undefined, (batch) => batch, true) : [];
    case 'split':
      return split(draft, line, entry);
    case 'merge':
      return merge(draft, line, entry);
    case 'rename':
      return rename(draft, entry);
    case 'teach':
      draft.taught.set(entry.crop.toLowerCase(), entry.daysToRoot);
      return [];
    case 'stock':
    case 'reading':
    case 'target':
    case 'remind':
      return [];
  }
}

function begin(draft: Draft, line: Line, entry: Of<'strike' | 'receive'>): readonly string[] | Refusal {
  if (typeof entry.count !== 'number') return { refused: 'countMissing', plant: plantOf(entry) };
  if (entry.count <= 0) return { refused: 'countNotPositive', wanted: entry.count };
  if (draft.batches.has(entry.label)) return { refused: 'labelTaken', label: entry.label };
  const struck = entry.kind === 'strike';
  const on = firstDay(entry.date);
  const batch: Batch = {
    label: entry.label,
    variety: entry.variety ?? null,
    crop: entry.crop ?? cropOf(draft, entry.variety),
    struck: struck ? on : null,
    received: struck ? null : on,
    count: entry.count,
    pots: struck ? (entry.pots ?? null) : null,
    cutting: struck ? (entry.cutting ?? null) : null,
    medium: struck ? (entry.medium ?? null) : null,
    hormone: struck ? (entry.hormone ?? null) : null,
    potSize: entry.potSize ?? null,
    standing: entry.place === undefined ? {} : { [entry.place]: entry.count },
    rooted: struck ? 0 : entry.count,
    pottedOn: 0,
    pinched: 0,
    plantedOut: 0,
    lost: 0,
    dispatched: 0,
    hardeningSince: null,
    mergedInto: null,
    acts: [actOf(line, entry, entry.count)],
  };
  draft.batches.set(batch.label, batch);
  return [batch.label];
}

function rename(draft: Draft, { variety, to }: Of<'rename'>): readonly string[] {
  const touched: string[] = [];
  for (const batch of draft.batches.values()) {
    if (batch.variety?.toLowerCase() !== variety.toLowerCase()) continue;
    draft.batches.set(batch.label, {
      ...batch,
      variety: to.variety ?? batch.variety,
      crop: to.crop ?? batch.crop,
    });
    touched.push(batch.label);
  }
  const known =
    [...draft.varieties.keys()].find((name) => name.toLowerCase() === variety.toLowerCase()) ?? variety;
  const crop = to.crop ?? draft.varieties.get(known) ?? null;
  if (to.variety !== undefined) draft.varieties.delete(known);
  draft.varieties.set(to.variety ?? known, crop);
  renameElsewhere(draft, variety, to);
  return touched;
}

/** What is wanted, held as stock or to be reminded of has the name in its own entry, since no batch tells it. */
function renameElsewhere(draft: Draft, variety: string, to: Of<'rename'>['to']): void {
  for (const [at, each] of draft.standing.entries()) {
    const { variety: name, batch } = each.entry as Plant;
    if (batch !== undefined || each.touched.length > 0 || each.entry.kind === 'rename') continue;
    if (name?.toLowerCase() !== variety.toLowerCase()) continue;
    draft.standing[at] = { ...each, entry: { ...each.entry, ...to } as Posting };
  }
}

/** Places and labels are written as they are already known, however the note cased them. */
function asKnown(draft: Draft, entry: Posting): Posting {
  const known = (name: string) =>
    [...draft.places].find((each) => each.toLowerCase() === name.toLowerCase()) ?? name;
  return {
    ...entry,
    ...('place' in entry && entry.place !== undefined ? { place: known(entry.place) } : {}),
    ...('fromPlace' in entry && entry.fromPlace !== undefined ? { fromPlace: known(entry.fromPlace) } : {}),
  };
}

function remember(draft: Draft, entry: Posting): void {
  if ('place' in entry && entry.place !== undefined) draft.places.add(entry.place);
  if (entry.kind === 'rename') return;
  if ('variety' in entry && entry.variety !== undefined) {
    const name = entry.variety;
    const known =
      [...draft.varieties.keys()].find((each) => each.toLowerCase() === name.toLowerCase()) ?? name;
    draft.varieties.set(known, entry.crop ?? draft.varieties.get(known) ?? null);
  }
}

function cropOf(draft: Draft, variety: string | undefined): string | null {
  if (variety === undefined) return null;
  const lower = variety.toLowerCase();
  for (const [name, crop] of draft.varieties) if (name.toLowerCase() === lower) return crop;
  return null;
}
