/** "No, all seven rooted", "wrong way round, sorry: 3 of these and all of those": the last note told again, and right this time. */
import type { LoggedEntry, Plant } from '../ledger/entry.js';
import type { StandingEntry } from '../ledger/ledger.js';
import type { ReadNote } from '../language/note.js';
import { named } from '../ledger/reach.js';
import { putRightBy } from './amending.js';
import { standingOn } from './deeds.js';
import { lastNote } from './entry-meant.js';
import { isLogged } from './noting.js';
import type { Sitting } from './sitting.js';

/** A note told longer ago is not told again, but followed by another. */
const WITHIN_MS = 15 * 60_000;
const TAKEN_BACK =
  /^(?:no[, ]+(?!(?:roots?|sign|luck|joy|change|movement)\b)|nope[, ]|oops|whoops|sorry[, ]|wait[, ]|actually[, ]|correction|hang on|hold on|wrong way round|other way (?:round|about)|i (?:meant|mean)|got that wrong|muddled)/i;
/** What a new mishap begins with as often as a correction. */
const MISHAP = /^(?:oops|whoops|sorry|wait|hang on|hold on)\b/i;
/** Told besides, or at last. */
const BESIDES = /\b(?:more|another|also|too|as well|forgot|plus|again)\b/i;

/** Whether the note tells the last one again, of the same plants and acts; what it says then stands in its place. */
export function tellsAgain(sitting: Sitting, text: string, { entries, asks }: ReadNote): boolean {
  const words = text.trim();
  if (!TAKEN_BACK.test(words) || BESIDES.test(words) || asks.length > 0 || entries.length === 0) return false;
  const before = lately(sitting);
  const amended = entries.map(({ entry }) => {
    const fits = before.filter(
      (each) =>
        isLogged(entry) && isSameDeed(each, entry) && !(MISHAP.test(words) && hasOtherCause(each, entry)),
    );
    return fits.length === 1 && fits[0] ? { told: fits[0], entry: entry as LoggedEntry } : undefined;
  });
  const whole = amended.filter((each) => each !== undefined);
  if (whole.length < entries.length || new Set(whole.map(({ told }) => told)).size < whole.length)
    return false;
  // A line may hold other entries, which stand as they are.
  const lines = [...new Set(whole.map(({ told }) => told.line))];
  putRightBy(
    sitting,
    lines.map((line) => ({
      amends: line,
      entries: standingOn(sitting.ledger, [line]).map((each) => {
        const again = whole.find(({ told }) => told.entry === each.entry);
        return { ...each.entry, ...again?.entry } as StandingEntry['entry'];
      }),
    })),
  );
  return true;
}

/** What stands of the last note, where this grower sent it to this chat lately. */
function lately({ ledger, origin, world }: Sitting): readonly StandingEntry[] {
  const last = ledger.standing.at(-1)?.journal;
  const own = last?.by === origin.by && last?.source?.chat === world.chat;
  return own && last && origin.at - last.at <= WITHIN_MS ? lastNote(ledger) : [];
}

function isSameDeed({ entry, touched }: StandingEntry, said: LoggedEntry): boolean {
  const { batch, variety } = said as Plant;
  const own = entry as Plant;
  if (entry.kind !== said.kind || !named(said as Plant)) return false;
  return batch === undefined ? variety !== undefined && variety === own.variety : touched.includes(batch);
}

/** "Oops, dropped the tray, lost two" behind two that rotted: lost once more. */
function hasOtherCause({ entry }: StandingEntry, said: LoggedEntry): boolean {
  const cause = (each: object) => (each as { readonly cause?: string }).cause;
  return cause(said) !== undefined && cause(said) !== cause(entry);
}
