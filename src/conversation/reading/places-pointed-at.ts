/** "Same shelf", "planted three there too": a place told before. */
import type { LoggedEntry } from '../../ledger/entry.js';
import { knownPlace } from '../../ledger/ledger.js';
import { ofLastNote } from '../leaning/last-note.js';
import type { Sitting } from '../sitting.js';

/** "Same shelf": where the last note put its plants; a care's place by the name that the ledger has for it. */
export function placeMeant(
  { ledger }: Sitting,
  entry: LoggedEntry & { readonly place?: string },
): string | undefined {
  if (/^(?:the )?same\b/i.test(entry.place ?? '')) {
    const stood = ledger.standing.findLast(
      (each) => 'place' in each.entry && !/^(?:reading|tend)$/.test(each.entry.kind),
    );
    return (stood?.entry as { readonly place?: string } | undefined)?.place;
  }
  return entry.kind === 'tend' ? knownPlace(ledger, entry.place) : undefined;
}

/** So long is what was last told of "there". */
const THERE_MS = 48 * 3_600_000;
const THERE = /\b(?:in |out )?there(?: too| as well| also| with (?:them|those))?[.!]?$/i;
const GOES_THERE: ReadonlySet<LoggedEntry['kind']> = new Set(['strike', 'plantOut', 'move', 'hardenOff']);

/** "Planted out three Tallow Bell there too": where the last note put plants of its own. */
export function placeThere(sitting: Sitting, entry: LoggedEntry): string | undefined {
  if (!GOES_THERE.has(entry.kind) || !THERE.test(sitting.text.trim())) return undefined;
  const places = ofLastNote(sitting, THERE_MS).flatMap(({ entry: { kind, ...told } }) =>
    GOES_THERE.has(kind as LoggedEntry['kind']) && 'place' in told && told.place ? [told.place] : [],
  );
  const [only, another] = new Set(places);
  return another === undefined ? only : undefined;
}
