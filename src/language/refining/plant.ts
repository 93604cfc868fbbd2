/** The plant of an entry, and its batch: as said, as carried over, or the only one that it can be. */
import type { EntryKind } from '../../ledger/entry.js';
import type { LeftOut } from '../acts/drafting/draft.js';
import type { KnownBatch, KnownVariety, NoteContext } from '../note.js';
import type { PlantWords } from '../pieces/pieces.js';
import type { Proposal } from '../proposal.js';
import { fittingBatches, isSameName, singledOut, without } from './fitting-batches.js';
import { isOtherLot } from '../lots/lots-fitting.js';
import { ask, type OpenEntry, say } from './open-entry.js';

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

/** Fills in the plant; the batch, where it is a single one. `lately` is that of the entry before. */
export function tellPlant(
  proposal: Proposal,
  context: NoteContext,
  entry: OpenEntry,
  lately: string | undefined,
): KnownBatch | undefined {
  const { kind, draft, carried } = proposal;
  if (kind === 'reading' || kind === 'undo' || kind === 'answer') return undefined;
  const words = draft.plant ?? carried;
  const isOpen = words?.variety === undefined || !BATCHLESS.has(kind);
  if (draft.leftOut && isOpen) return tellOthers(words, proposal, draft.leftOut, context, entry);
  if (!words) {
    if (!needsPlant(proposal)) return undefined;
    return BATCHLESS.has(kind)
      ? assumeVariety(kind, context, entry)
      : assumeBatch(proposal, context, entry, lately);
  }
  for (const [slot, value] of Object.entries(words))
    say(entry, slot, value, draft.plant ? 'said' : 'assumed');
  return BATCHLESS.has(kind)
    ? tellUnstruck(words, context, entry)
    : tellBatch(words, proposal, context, entry, lately);
}

/** A plant that is not yet in the ledger: its crop, or what its label stands for. */
function tellUnstruck(words: PlantWords, context: NoteContext, entry: OpenEntry): undefined {
  tellCrop(words, context, entry);
  if (words.batch === undefined) return;
  const known = fittingBatches(words, context)[0];
  say(entry, 'variety', known?.variety, 'assumed');
  say(entry, 'crop', known?.crop, 'assumed');
}

/** The batch that the words fit; of several that which the entry before was about, where the plant is carried over. */
function tellBatch(
  words: PlantWords,
  { kind, draft }: Proposal,
  context: NoteContext,
  entry: OpenEntry,
  lately: string | undefined,
): KnownBatch | undefined {
  const all = fittingBatches(words, context);
  // "7 of the older Salt Harrier …, four of the younger": another lot than that of the entry before.
  const { struckOn, age, month, size, pots } = draft.which ?? {};
  const tellsLot = (struckOn ?? age ?? month ?? size ?? pots) !== undefined;
  const open = tellsLot ? singledOut(all, draft, kind) : all;
  const told = draft.plant ? undefined : open.find(({ label }) => label === lately);
  const fits = told ? [told] : singledOut(all, draft, kind);
  const [only, another] = fits;
  // "Lost one of the Ember Fox from the 15th" where only those of the 22nd are known.
  if (only && !another && ASKS_BATCH.has(kind) && isOtherLot(only, draft.which ?? {})) {
    tellCrop(words, context, entry);
    askBatch(fits, entry);
    return undefined;
  }
  if (only && !another) {
    const isSaid = tellsLot && !draft.plant && all.length > 1;
    if (words.batch === undefined) say(entry, 'batch', only.label, isSaid ? 'said' : 'assumed');
    if (words.variety === undefined) say(entry, 'variety', only.variety, 'assumed');
    if (words.crop === undefined) say(entry, 'crop', only.crop, 'assumed');
    return only;
  }
  tellCrop(words, context, entry);
  if (another && ASKS_BATCH.has(kind)) askBatch(fits, entry);
  return undefined;
}

/** All but what was left out: the one batch of a plant that remains, else nobody has said which others were meant. */
function tellOthers(
  words: PlantWords | undefined,
  proposal: Proposal,
  leftOut: readonly LeftOut[],
  context: NoteContext,
  entry: OpenEntry,
): KnownBatch | undefined {
  const { kind, draft } = proposal;
  const all = words ? fittingBatches(words, context) : (context.batches ?? []);
  const rest = without(all, leftOut, context);
  for (const [slot, value] of Object.entries(words ?? {})) say(entry, slot, value);
  if (words && all.length > 0 && rest.length === all.length)
    return tellBatch(words, proposal, context, entry, undefined);
  const others = BATCHLESS.has(kind) ? [] : singledOut(rest, draft, kind);
  const [only, another] = others;
  if (only && !another) {
    say(entry, 'batch', only.label, 'assumed');
    return only;
  }
  if (only ?? words?.variety) askBatch(others, entry);
  else ask(entry, 'variety', varietiesWithout(leftOut, words?.crop, context));
  return undefined;
}

/** Varieties that the ledger has heard of, of that crop if one was said, but those that were left out. */
const varietiesWithout = (
  leftOut: readonly LeftOut[],
  of: string | undefined,
  context: NoteContext,
): readonly string[] =>
  knownVarieties(context)
    .filter(({ crop }) => of === undefined || isSameName(crop, of))
    .map(({ name }) => name)
    .filter((name) => !leftOut.some(({ plant }) => isSameName(plant?.variety, name)));

/** The crop of a variety that was told without it. */
function tellCrop({ variety, crop }: PlantWords, context: NoteContext, entry: OpenEntry): void {
  if (variety === undefined || crop !== undefined) return;
  const known =
    context.varieties?.find(({ name }) => isSameName(name, variety))?.crop ??
    context.batches?.find((batch) => isSameName(batch.variety, variety))?.crop;
  say(entry, 'crop', known, 'assumed');
}

const askBatch = (fits: readonly KnownBatch[], entry: OpenEntry): void =>
  ask(
    entry,
    'batch',
    fits.map(({ label }) => label),
  );

/** A place may be tended, and what stands in a place moved, whatever the plants are. */
function needsPlant({ kind, draft }: Proposal): boolean {
  if (kind === 'tend' && (draft.place ?? draft.fromPlace) !== undefined) return false;
  if (kind === 'move' && draft.fromPlace !== undefined) return false;
  return NEEDS_PLANT.has(kind);
}

/** No plant was said of what is new: a strike is of the only variety there is, else it is asked. */
function assumeVariety(kind: EntryKind, context: NoteContext, entry: OpenEntry): undefined {
  const known = knownVarieties(context);
  const [only, another] = known;
  if (only && !another && kind === 'strike') {
    say(entry, 'variety', only.name, 'assumed');
    say(entry, 'crop', only.crop, 'assumed');
  } else
    ask(
      entry,
      'variety',
      known.map(({ name }) => name),
    );
}

/** Every variety that the ledger has heard of, each once. */
function knownVarieties({ varieties = [], batches = [] }: NoteContext): readonly KnownVariety[] {
  const names = new Map(varieties.map((each) => [each.name.toLowerCase(), each]));
  for (const { variety, crop } of batches)
    if (variety !== undefined && !names.has(variety.toLowerCase()))
      names.set(variety.toLowerCase(), { name: variety, ...(crop === undefined ? {} : { crop }) });
  return [...names.values()];
}

/** Kinds beside which a place tells where their plants stand. */
const STANDS_THERE: ReadonlySet<EntryKind> = new Set(['check', 'loss', 'pinch', 'dispatch']);

/** No plant was said of what is alive: the prompt's batch, the only one there is, or a question. */
function assumeBatch(
  { kind, draft }: Proposal,
  { batches = [], pending }: NoteContext,
  entry: OpenEntry,
  lately: string | undefined,
): KnownBatch | undefined {
  const asked = draft.quantity?.both ? undefined : pending?.batch;
  // "The second lot", "tunnel house: five rooted" are of all that live, whichever was asked about.
  const isPlaced = STANDS_THERE.has(kind) && (draft.place ?? draft.fromPlace) !== undefined;
  const chosen = draft.which || isPlaced ? singledOut(batches, draft, kind) : [];
  const isChosen = chosen.length === 1 && batches.length > 1;
  const live = asked === undefined ? batches : batches.filter(({ label }) => label === asked);
  // "From the 5 March lot nine have rooted, and three rotted": of that lot too.
  const isSame = ASKS_BATCH.has(kind) && !draft.which && !isPlaced && !draft.quantity?.both;
  const same = isSame ? batches.filter(({ label }) => label === lately) : [];
  const fits = isChosen ? chosen : same.length > 0 ? same : singledOut(live, draft, kind);
  const [only, another] = fits;
  if (only && !another) {
    say(entry, 'batch', only.label, isChosen ? 'said' : 'assumed');
    say(entry, 'variety', only.variety, 'assumed');
    say(entry, 'crop', only.crop, 'assumed');
    return only;
  }
  if (!only) ask(entry, 'variety');
  else if (ASKS_BATCH.has(kind)) askBatch(fits, entry);
  return undefined;
}
