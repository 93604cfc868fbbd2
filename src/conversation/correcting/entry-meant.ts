/** Which entries an amendment may be about. */
import { contains, isSpan } from '../../calendar/span.js';
import { alive } from '../../ledger/batch.js';
import type { Amend, Plant } from '../../ledger/entry.js';
import type { Ledger, StandingEntry } from '../../ledger/ledger.js';
import type { Line, Posting } from '../../ledger/posting.js';
import { plantOf } from '../../ledger/reach.js';
import { standingOn } from '../batches/deeds.js';
import { isLogged } from '../noting.js';
import type { Sitting } from '../sitting.js';
import { BEFALLS } from './renaming.js';

/** What an amendment sets, slot by slot. */
export type Slots = Readonly<Record<string, unknown>>;

/**
 * Entries that the amendment can be about, of that kind where one is given: of the quoted message, else of the plant and
 * day named, else the last note's.
 */
export function candidatesFor(
  ledger: Ledger,
  { date, ...entry }: Amend,
  set: Slots,
  meant: readonly Line[],
  kind?: Posting['kind'],
): readonly StandingEntry[] {
  const fits = (each: StandingEntry) =>
    isLogged(each.entry) &&
    takes(each.entry, set) &&
    (kind === undefined || each.entry.kind === kind) &&
    !countsNothing(each, set);
  const quoted = standingOn(ledger, meant).filter(fits);
  if (quoted.length > 0) return quoted;
  const plant = plantOf(entry);
  const isNamed = Object.keys(plant).length > 0;
  if (!isNamed && date === undefined) {
    const last = lastNote(ledger).filter(fits);
    return toldOfMore(ledger, last, set) ?? last;
  }
  const fitting = ledger.standing.filter(
    (each) =>
      fits(each) && (!isNamed || isAbout(ledger, each, plant)) && (date === undefined || fell(each, date)),
  );
  // Named by its day alone, or several of one plant: the latest is meant unless a day was said.
  if (date !== undefined) return preferBeginnings(fitting);
  return fitting.slice(-1);
}

/** So long after a deed is a plant of which that many were told the one it was done to. */
const JUST_MS = 15 * 60_000;
/** "No, the other one", "wrong tray": it was of another plant. */
const OF_OTHER =
  /\b(?:the )?other (?:ones?|batch|lots?|pots?|trays?)\b|\bwrong (?:ones?|plants?|batch|lot|pot|tray|label|tag)\b/i;

/** "It was two Salt Harrier", and not "the Salt Harrier were two", which tells how many there are. */
const DENIES =
  /^(?:no|nope|nah|sorry|oops|wait|actually|correction)\b|\b(?:it|that) was\b|\bnot\b|\bmeant?\b/i;

/** "No, the other one. It was two Salt Harrier", behind two Marble Wren that were lost: that loss; else null. */
export function deedOfOther(
  { ledger, origin, text, world }: Sitting,
  plant: Plant,
  { count, ...more }: Slots,
): StandingEntry | null {
  const [last, another] = lastNote(ledger);
  if (!last || another || count === undefined || Object.keys(more).length > 0) return null;
  const { source, at } = last.journal;
  if (source?.chat !== world.chat || origin.at - at > JUST_MS || !BEFALLS.has(last.entry.kind)) return null;
  const isMeant = OF_OTHER.test(text) || (numberOf(last.entry) === count && DENIES.test(text.trim()));
  return isMeant && !isAbout(ledger, last, plant) ? last : null;
}

/** How many an entry tells of. */
export function numberOf(entry: object): unknown {
  const { count, rooted } = entry as { readonly count?: unknown; readonly rooted?: unknown };
  return count ?? rooted;
}

/** "The Ember Fox were seven" says nothing of a look at which none had rooted. */
const countsNothing = ({ entry }: StandingEntry, set: Slots): boolean =>
  'count' in set && entry.kind === 'check' && entry.rooted === 'none';

/** "That's wrong, it was 7" behind a move of all six: more than there are was told of where they were last counted. */
function toldOfMore(
  ledger: Ledger,
  last: readonly StandingEntry[],
  { count }: Slots,
): readonly StandingEntry[] | undefined {
  const [only, another] = last;
  const counts = (each: StandingEntry) => 'count' in each.entry && typeof each.entry.count === 'number';
  if (!only || another || typeof count !== 'number' || counts(only)) return undefined;
  const [batch, more] = only.touched.flatMap((label) => ledger.batches.get(label) ?? []);
  if (!batch || more || count <= alive(batch)) return undefined;
  return ledger.standing
    .filter((each) => counts(each) && each.touched.some((label) => only.touched.includes(label)))
    .slice(-1);
}

/** Those that began a batch, where there are any. */
export function preferBeginnings(entries: readonly StandingEntry[]): readonly StandingEntry[] {
  const begun = entries.filter(({ entry }) => entry.kind === 'strike' || entry.kind === 'receive');
  return begun.length > 0 ? begun : entries;
}

/** All entries of the last note. */
export function lastNote(ledger: Ledger): readonly StandingEntry[] {
  const last = ledger.standing.at(-1);
  return last ? noteOfLine(ledger, last) : [];
}

/** All entries of the note that the entry was told in. */
export function noteOfLine(ledger: Ledger, last: StandingEntry): readonly StandingEntry[] {
  const source = last.journal.source;
  return ledger.standing.filter((each) =>
    source === null
      ? each.line === last.line
      : each.journal.source?.message === source.message && each.journal.source.chat === source.chat,
  );
}

/** Told in one message. */
export function sameNote(entries: readonly StandingEntry[]): boolean {
  const messages = entries.map(({ journal }) => `${journal.source?.chat} ${journal.source?.message}`);
  return entries.every(({ journal }) => journal.source !== null) && new Set(messages).size === 1;
}

/** Whether the entry touched a batch of that plant, or named the plant. */
export function isAbout(ledger: Ledger, { touched, entry }: StandingEntry, plant: Plant): boolean {
  const batches = touched.flatMap((label) => ledger.batches.get(label) ?? []);
  const own = entry as Plant;
  return (
    batches.some(
      (batch) =>
        (plant.batch === undefined || plant.batch.toLowerCase() === batch.label.toLowerCase()) &&
        (plant.variety === undefined || plant.variety.toLowerCase() === batch.variety?.toLowerCase()) &&
        (plant.crop === undefined || plant.crop === batch.crop),
    ) ||
    (batches.length === 0 &&
      plant.variety !== undefined &&
      own.variety?.toLowerCase() === plant.variety.toLowerCase())
  );
}

/** Whether the entry's day is that one, or within it. */
export function fell({ entry }: StandingEntry, date: NonNullable<Amend['date']>): boolean {
  const day = entry.date;
  if (!isSpan(day)) return isSpan(date) ? contains(date, day) : day === date;
  return isSpan(date) ? day.from <= date.to && date.from <= day.to : contains(day, date);
}

const counted = new Set<Posting['kind']>([
  'strike', 'receive', 'stock', 'loss', 'potOn', 'pinch', 'move', 'hardenOff', 'plantOut', 'dispatch', 'target', 'check',
]); // prettier-ignore

const slotsOf: Readonly<Record<string, readonly Posting['kind'][]>> = {
  pots: ['strike'],
  cutting: ['strike'],
  hormone: ['strike'],
  medium: ['strike', 'potOn'],
  rooted: ['check'],
  cause: ['loss'],
  how: ['dispatch'],
  to: ['dispatch'],
  celsius: ['reading'],
  care: ['tend'],
  time: ['remind'],
  text: ['remark', 'remind'],
  potSize: ['strike', 'receive', 'stock', 'potOn'],
  place: ['strike', 'receive', 'stock', 'tend', 'move', 'hardenOff', 'plantOut', 'reading'],
};

/** Whether an entry of that kind has all the slots that are set. */
export function takes({ kind }: Posting, set: Slots): boolean {
  return Object.keys(set).every((slot) =>
    slot === 'count' ? counted.has(kind) : (slotsOf[slot]?.includes(kind) ?? true),
  );
}
