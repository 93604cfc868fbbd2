/** What the reader is told of the ledger before it reads a note. */
import { read } from '../../language/read.js';
import type { KnownBatch, Note, NoteContext, Pending, ReadNote } from '../../language/note.js';
import { alive, type Batch, placeOf } from '../../ledger/batch.js';
import { type Ledger, liveBatches } from '../../ledger/ledger.js';
import type { HeardWord } from '../../language/note.js';
import type { Sitting } from '../sitting.js';
import type { Origin } from '../talk.js';

export function contextOf(ledger: Ledger, pending?: Pending): NoteContext {
  let context = contexts.get(ledger);
  if (!context) contexts.set(ledger, (context = contextFound(ledger)));
  return pending ? { ...context, pending } : context;
}

/** A ledger is a value, and the reader is told of it several times a turn. */
const contexts = new WeakMap<Ledger, NoteContext>();

const contextFound = (ledger: Ledger): NoteContext => ({
  varieties: [...ledger.varieties].map(([name, crop]) => ({ name, ...(crop === null ? {} : { crop }) })),
  batches: liveBatches(ledger).map(knownBatch),
  places: [...ledger.places],
});

/** Reads a text of the sitting's chat as of the moment at which it was sent. */
export function readIn(
  sitting: Sitting,
  text: string,
  { pending, heard, weighed = false, origin = sitting.origin }: ReadOptions = {},
): ReadNote {
  const note = noteOf(sitting, text, { pending, origin });
  return read({ ...note, byRules: !weighed, ...(heard ? { heard } : {}) });
}

/** The words of the varieties that the text tells, in small letters. */
export const wordsNamed = (sitting: Sitting, text: string): ReadonlySet<string> =>
  new Set(
    readIn(sitting, text).entries.flatMap(({ entry }) =>
      'variety' in entry ? (entry.variety?.toLowerCase().split(/[\s-]+/) ?? []) : [],
    ),
  );

/** The note as the reader takes it. */
export function noteOf(
  sitting: Sitting,
  text: string,
  { pending, origin = sitting.origin }: Pick<ReadOptions, 'pending' | 'origin'> = {},
): Note {
  return {
    text,
    now: origin.at,
    zone: sitting.settings.zone,
    dateOrder: sitting.settings.dateOrder,
    context: contextOf(sitting.ledger, pending),
  };
}

interface ReadOptions {
  readonly pending?: Pending | undefined;
  readonly heard?: readonly HeardWord[] | undefined;
  /** Whether what its words are unlike is doubted: for what a grower says as a whole. */
  readonly weighed?: boolean;
  readonly origin?: Origin;
}

/** Batches are values, and most are the same from turn to turn. */
const known = new WeakMap<Batch, KnownBatch>();

function knownBatch(batch: Batch): KnownBatch {
  const before = known.get(batch);
  if (before) return before;
  const place = placeOf(batch);
  const told: KnownBatch = {
    label: batch.label,
    ...(batch.variety === null ? {} : { variety: batch.variety }),
    ...(batch.crop === null ? {} : { crop: batch.crop }),
    ...(batch.struck === null ? {} : { struck: batch.struck }),
    count: alive(batch),
    ...(batch.pots === null ? {} : { pots: batch.pots }),
    ...(place === null ? {} : { place }),
    rooted: batch.rooted,
    pottedOn: batch.pottedOn,
  };
  known.set(batch, told);
  return told;
}
