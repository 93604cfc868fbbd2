/** "There's a third gone the same way", "a sixth has rooted": one more of what the last note told of. */
import type { LoggedEntry } from '../../ledger/entry.js';
import { onlyOfLastNote } from './last-note.js';
import { takeNote } from '../noting.js';
import type { Sitting } from '../sitting.js';
import { withoutSlots } from '../reading/slots.js';

/** A loss goes on for days. */
const GOES_ON_MS = 3 * 24 * 3_600_000;
const ORDINALS = 'first second third fourth fifth sixth seventh eighth ninth tenth eleventh twelfth'.split(
  ' ',
);
const ONE = `(?:(?:oh|ah|and|now|sadly|well)[, ]+)*(?:(?:there(?:['’]s| is| was)|that(?:['’]s| is)|i(?:['’]ve| have)) )?(?:now )?(?:(?:a|the) (?<which>${ORDINALS.slice(1).join('|')})(?: one)?|another(?: one)?)`;
const GONE = new RegExp(
  `^${ONE}(?:(?: has| is|['’]s)?(?: now| just)? (?:gone|dead|died|lost|rotted|collapsed|keeled over)(?: off)?)(?: the same way| too| as well| since| now| over| like that| today)*[.!]?$`,
  'iu',
);
const ROOTED = new RegExp(
  `^${ONE}(?:(?: has| is|['’]s| with| had)?(?: now| just)? (?:rooted|roots|got roots))(?: too| as well| since| now| today)*[.!]?$`,
  'iu',
);

/** Whether the words say so of a loss or of roots told before, and it is noted. */
export function goesOn(sitting: Sitting, text: string): boolean {
  const last = onlyOfLastNote(sitting, GOES_ON_MS);
  if (!last) return false;
  const { entry } = last;
  if (entry.kind === 'loss' && GONE.test(text.trim())) {
    const more = { ...withoutSlots(entry, 'date', 'count'), count: 1 } as LoggedEntry;
    takeNote(sitting, { entries: [{ entry: more, sources: {} }], asks: [] });
    return true;
  }
  const { which } = ROOTED.exec(text.trim())?.groups ?? {};
  const now = ORDINALS.indexOf(which?.toLowerCase() ?? '') + 1;
  if (entry.kind !== 'check' || typeof entry.rooted !== 'number' || now !== entry.rooted + 1) return false;
  const look = { ...withoutSlots(entry, 'date', 'count'), rooted: now } as LoggedEntry;
  takeNote(sitting, { entries: [{ entry: look, sources: {} }], asks: [] });
  return true;
}
