/** Whether one slot of an entry holds what the gold wants, in the normal form of the note contract. */
import type { ContextBatch, CorpusNote, GoldEntry, Wanted } from './corpus-note.js';
import { dayOfNote } from './corpus-note.js';

/** Kinds whose date, left out, is the local day of the note. */
const doneKinds = new Set([
  'stock', 'receive', 'reading', 'strike', 'tend', 'check', 'loss', 'potOn', 'pinch', 'move', 'hardenOff', 'plantOut',
  'dispatch', 'remark', 'answer',
]); // prettier-ignore
/** Kinds whose count, left out, is all that live. */
const wholeKinds = new Set(['check', 'potOn', 'pinch', 'move', 'hardenOff', 'plantOut']);
const looseSlots = new Set(['text', 'medium', 'place', 'fromPlace', 'to']);
const plantSlots = new Set(['variety', 'crop', 'batch']);
const smallWords = new Set(
  'the a an my our some in on at to of and with under for by about from is are was were'.split(' '),
);

/** Values that are equally good; a slot the gold does not name may only be absent. */
export function wantedValues(wanted: Wanted): readonly unknown[] {
  if (wanted === undefined) return [null];
  if (typeof wanted === 'object' && wanted !== null && 'any' in wanted)
    return (wanted as { any: unknown[] }).any;
  return [wanted];
}

/** `got` undefined means that the slot is absent. */
export function slotFits(slot: string, got: unknown, gold: GoldEntry, note: CorpusNote): boolean {
  const wanted = wantedValues(gold[slot]);
  if (wanted.some((value) => valueFits(slot, got, value, gold, note))) return true;
  return gold[slot] === undefined && plantSlots.has(slot) && contextAdds(slot, got, gold, note);
}

function valueFits(slot: string, got: unknown, want: unknown, gold: GoldEntry, note: CorpusNote): boolean {
  if (want === null) return got === undefined || isDefault(slot, got, gold, note);
  if (got === undefined) return isDefault(slot, want, gold, note);
  if (slot === 'set') return setFits(got, want as GoldEntry, note);
  if (slot === 'celsius') return Math.abs(Number(got) - Number(want)) < 0.1;
  if (slot === 'rooted' && isZero(got) && isZero(want)) return true;
  if (looseSlots.has(slot) && !isDay(want)) return looselyAlike(String(got), String(want));
  return fold(got) === fold(want);
}

/** A value that may as well be left out. */
function isDefault(slot: string, value: unknown, gold: GoldEntry, note: CorpusNote): boolean {
  if (slot === 'date') return doneKinds.has(gold.kind) && value === dayOfNote(note);
  if (slot === 'count') return value === 'all' && wholeKinds.has(gold.kind);
  return false;
}

function setFits(got: unknown, want: GoldEntry, note: CorpusNote): boolean {
  if (typeof got !== 'object' || got === null) return false;
  const slots = new Set([...Object.keys(got), ...Object.keys(want)]);
  return [...slots].every((slot) => slotFits(slot, (got as Record<string, unknown>)[slot], want, note));
}

/** Crop, variety or batch that the context adds to a plant which the note named otherwise: welcome where only one fits. */
function contextAdds(slot: string, got: unknown, gold: GoldEntry, note: CorpusNote): boolean {
  const named = [...plantSlots].some((other) => other !== slot && typeof gold[other] === 'string');
  if (!named || got === undefined) return false;
  const fitting = (plant: { variety?: string; crop?: string; label?: string }): boolean =>
    (typeof gold['variety'] !== 'string' || fold(plant.variety) === fold(gold['variety'])) &&
    (typeof gold['crop'] !== 'string' || fold(plant.crop) === fold(gold['crop'])) &&
    (typeof gold['batch'] !== 'string' || plant.label === gold['batch']);
  const batches = (note.context?.batches ?? []).filter(fitting);
  if (slot === 'batch') return batches.length === 1 && batches[0]?.label === got;
  const key = slot as keyof ContextBatch;
  const varieties = (note.context?.varieties ?? []).map((v) => ({ variety: v.name, crop: v.crop }));
  const known = [...batches, ...varieties.filter((v) => fitting(v as ContextBatch))];
  const values = new Set(known.map((plant) => fold((plant as ContextBatch)[key])));
  return values.size === 1 && values.has(fold(got));
}

function isZero(value: unknown): boolean {
  return value === 0 || value === 'none';
}

function isDay(value: unknown): boolean {
  return typeof value === 'string' && /^\d{4}-\d{2}-\d{2}$/.test(value);
}

/** Names compare without case, and with one kind of apostrophe. */
function fold(value: unknown): string {
  if (typeof value === 'object' && value !== null) {
    const parts = Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1));
    return JSON.stringify(parts);
  }
  return String(value).normalize('NFKC').toLowerCase().replaceAll('’', "'");
}

/** One says no more than the other, small words aside; or they share most of their words. */
function looselyAlike(got: string, want: string): boolean {
  const a = words(got);
  const b = words(want);
  if (a.size === 0 || b.size === 0) return a.size === b.size && fold(got) === fold(want);
  const shared = [...a].filter((word) => b.has(word)).length;
  return shared === Math.min(a.size, b.size) || shared / Math.max(a.size, b.size) >= 0.6;
}

function words(text: string): Set<string> {
  const plain = fold(text)
    .replaceAll("'", '')
    .split(/[^\p{L}\p{N}.]+/u);
  return new Set(plain.map((word) => word.replace(/\.$/, '')).filter((w) => w !== '' && !smallWords.has(w)));
}
