/** "He also took 2 Marble Wren", "and she got one of the dahlias": told of whoever had the plants before. */
import type { LoggedEntry, Plant } from '../ledger/entry.js';
import { matching } from '../ledger/ledger.js';
import { named, plantOf } from '../ledger/reach.js';
import type { ReadNote } from '../language/note.js';
import { readIn } from './reading.js';
import type { Sitting } from './sitting.js';
import { plantSaid } from './slots.js';

const THEY =
  /^(?:(?:and|oh|but|then|also|plus)[, ]+)*(?:he|she|they) (?:also |then |even |then also |both |each )?(?:took|had|got|bought|went off with|went home with|walked off with|left with|picked up)(?: away| home)? (?!cuttings|slips)(.{3,60})$/i;
/** Cut from the plants, and not given. */
const CUT = /\b(?:cuttings?|slips?|tips?|nodes?|heels?)\b/i;

/** What they had, as given in the way of the `last`; null where the words say no such thing. */
export function hadByThem(sitting: Sitting, last: LoggedEntry | undefined, text: string): ReadNote | null {
  if (last?.kind !== 'dispatch' || CUT.test(text)) return null;
  const what = THEY.exec(
    text
      .trim()
      .replace(/[.!]$/, '')
      .replace(/,? (?:too|as well|also)$/i, ''),
  )?.[1];
  if (what === undefined) return null;
  const { to, how = 'given' } = last;
  const { entries, asks } = readIn(sitting, `gave ${what}`);
  const isTold = entries.every(
    ({ entry, sources }) =>
      entry.kind === 'dispatch' &&
      named(plantSaid(entry as Plant, sources)) &&
      matching(sitting.ledger, plantOf(entry as Plant)).length > 0,
  );
  if (entries.length === 0 || !isTold) return null;
  return {
    entries: entries.map((each) => ({
      ...each,
      entry: { ...each.entry, how, ...(to === undefined ? {} : { to }) } as LoggedEntry,
    })),
    asks,
  };
}
