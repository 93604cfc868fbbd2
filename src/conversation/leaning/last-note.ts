/** The note that "another six" and "into 9cm" lean on. */
import type { Strike } from '../../ledger/entry.js';
import type { StandingEntry } from '../../ledger/ledger.js';
import { lastNote } from '../correcting/entry-meant.js';
import type { Sitting } from '../sitting.js';
import { withoutSlots } from '../reading/slots.js';

/**
 * The only entry of the last note, where this grower, or anyone of the group, sent it to this chat no more than `within`
 * ms ago; else null.
 */
export function onlyOfLastNote(sitting: Sitting, within: number, byAnyone = false): StandingEntry | null {
  const [only, another] = ofLastNote(sitting, within, byAnyone);
  return only && !another ? only : null;
}

/** All entries of that note; none where it was another's or is older. */
export function ofLastNote(
  { ledger, origin, world }: Sitting,
  within: number,
  byAnyone = false,
): readonly StandingEntry[] {
  const journal = ledger.standing.at(-1)?.journal;
  if (!journal || (journal.by !== origin.by && !byAnyone) || journal.source?.chat !== world.chat) return [];
  return origin.at - journal.at > within ? [] : lastNote(ledger);
}

/** The last cuttings of a note of anyone's that tells of cuttings alone, with the place that all of them share; else null. */
export function struckInLastNote(sitting: Sitting, within: number): Strike | null {
  const told = ofLastNote(sitting, within, true).map(({ entry }) => entry);
  const last = told.at(-1);
  if (last?.kind !== 'strike') return null;
  const isAlike = told.every((each) => each.kind === 'strike' && each.place === last.place);
  if (isAlike) return last;
  return told.every(({ kind }) => kind === 'strike') ? withoutSlots(last, 'place') : null;
}
