/**
 * Notes of the corpus changed in one thing by rule, so that what they should be read as is known without anybody writing it:
 * two notes told in one breath, a name that the ledger does not know, small letters. They show which rules of the reader are
 * tied to a wording that they happened to meet.
 */
import type { CorpusNote, GoldEntry } from './corpus-note.js';

/** A note changed; undefined where the change would not leave it fair. `pick` draws one of a list. */
export type Change = (note: CorpusNote, pick: Pick, notes: readonly CorpusNote[]) => CorpusNote | undefined;
export type Pick = <Item>(items: readonly Item[]) => Item | undefined;

export const changes: Readonly<Record<string, Change>> = {
  'joined by a full stop': joined('. '),
  'joined by “and”': joined(' and '),
  'a name that nobody knows': withNameUnknown,
  'small letters': inSmallLetters,
};

/** Draws that come out the same every time (the minimal standard generator of Park and Miller, 1988). */
export function drawing(seed: number): Pick {
  let state = seed;
  return (items) => {
    state = (state * 48271) % 2147483647;
    return items[state % items.length];
  };
}

const DEEDS = new Set([
  'strike',
  'loss',
  'potOn',
  'pinch',
  'move',
  'dispatch',
  'check',
  'plantOut',
  'hardenOff',
]);
/** Of a day, or leaning on another note. */
const LEANS =
  /\?|\b(?:today|yesterday|this|last|monday|tuesday|wednesday|thursday|friday|saturday|sunday|night|morning|other|rest|both|sorry|no|not|undo)\b/i;
const LONGEST_JOINED = 120;
const TRIES = 200;

function joined(joint: string): Change {
  return (note, pick, notes) => {
    if (!standsAlone(note)) return undefined;
    for (let n = 0; n < TRIES; n++) {
      const other = pick(notes);
      if (other && other.zone === note.zone && standsAlone(other) && areApart(note, other))
        return told(note, joint, other);
    }
    return undefined;
  };
}

/** Each of its entries names its plant and is of the day of the note. */
function standsAlone({ text, gold, context }: CorpusNote): boolean {
  return (
    text.length < LONGEST_JOINED &&
    !LEANS.test(text) &&
    gold.entries.length > 0 &&
    gold.mustAsk.length === 0 &&
    !gold.alts &&
    !context?.pending &&
    gold.entries.every(
      ({ kind, variety, date }) =>
        DEEDS.has(kind) &&
        typeof variety === 'string' &&
        says(text, variety) &&
        (date === undefined || mayLack(date)),
    )
  );
}

const mayLack = (wanted: unknown): boolean =>
  typeof wanted === 'object' &&
  wanted !== null &&
  (wanted as { any?: unknown[] }).any?.includes(null) === true;

const nameIn = (name: string): RegExp =>
  new RegExp(`(?<![\\p{L}\\p{N}])${name.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')}(?![\\p{L}\\p{N}])`, 'giu');
const says = (text: string, name: string): boolean => nameIn(name).test(text);

const namesOf = ({ context }: CorpusNote): readonly string[] =>
  (context?.varieties ?? []).map(({ name }) => name);
const labelsOf = ({ context }: CorpusNote): readonly string[] =>
  (context?.batches ?? []).map(({ label }) => label);

/** No plant and no label is in both. */
const areApart = (one: CorpusNote, other: CorpusNote): boolean =>
  namesOf(one).length > 0 &&
  namesOf(other).length > 0 &&
  !namesOf(one).some((name) => namesOf(other).includes(name)) &&
  !labelsOf(one).some((label) => labelsOf(other).includes(label));

function told(note: CorpusNote, joint: string, other: CorpusNote): CorpusNote {
  const day = note.now.slice(0, 10);
  const second = other.text.charAt(0);
  const begin = joint.startsWith('.') ? second.toUpperCase() : second.toLowerCase();
  const dated = ({ gold }: CorpusNote): GoldEntry[] =>
    gold.entries.map((entry) => ({ ...entry, date: { any: [day, null] } }));
  return {
    ...note,
    text: note.text.trim().replace(/[.!]$/, '') + joint + begin + other.text.slice(1),
    context: {
      varieties: [...(note.context?.varieties ?? []), ...(other.context?.varieties ?? [])],
      batches: [
        ...(note.context?.batches ?? []),
        ...(other.context?.batches ?? []).map((batch) =>
          (batch.struck ?? '') > day ? { ...batch, struck: `${day.slice(0, 4)}-01-02` } : batch,
        ),
      ],
      places: [...new Set([...(note.context?.places ?? []), ...(other.context?.places ?? [])])],
    },
    gold: { entries: [...dated(note), ...dated(other)], mustAsk: [] },
  };
}

function withNameUnknown(note: CorpusNote): CorpusNote | undefined {
  const { context, gold, text } = note;
  const said = namesOf(note).filter((name) => says(text, name));
  const isFair =
    said.length > 0 &&
    !gold.alts &&
    gold.entries.length > 0 &&
    gold.entries.every(({ kind, variety }) => kind === 'strike' && typeof variety === 'string') &&
    said.every((name) => text.includes(name) && name.includes(' '));
  if (!context || !isFair) return undefined;
  return {
    ...note,
    context: {
      ...context,
      varieties: (context.varieties ?? []).filter(({ name }) => !said.includes(name)),
      batches: (context.batches ?? []).filter(({ variety }) => !said.includes(variety ?? '')),
    },
    // What the ledger knew of its crop is known no more.
    gold: {
      ...gold,
      entries: gold.entries.map(({ batch: _, ...entry }) =>
        mayLack(entry['crop']) || entry['crop'] === undefined
          ? entry
          : { ...entry, crop: { any: [entry['crop'], null] } },
      ) as GoldEntry[],
    },
  };
}

function inSmallLetters(note: CorpusNote): CorpusNote | undefined {
  const text = note.text.toLowerCase();
  return text === note.text ? undefined : { ...note, text };
}
