/** “They're all in the shade house”: where the lots stand that were told lately, each in its own message, and stand nowhere yet. */
import type { StandingEntry } from '../../ledger/ledger.js';
import { anyOf, opening } from '../../language/phrases.js';
import { setSlotsOfEach } from '../correcting/amending.js';
import { placeAlone } from '../reading/place-alone.js';
import { SPOKEN_OF_MS } from '../batches/pointing.js';
import type { Sitting } from '../sitting.js';

const LOTS = anyOf`
  all( of)? (them|these|those)|everything|the whole lot|(all|both)( of)?( the)? (lots|batches)|both of (them|these|those)|all|both
`;
const STAND = anyOf`
  are|is|live|lives|stand|stands|sit|sits|went|have gone|has gone|stood|standing|sitting|sat|living
`;
/** Of every lot, not of the last alone. */
const ALL_ARE = opening`
  ((and|oh|also|ok|right|so) )*${anyOf`
    (they|these|those)( are|'?re|'ve| have| went)?( now| just)? (all|both)( now| just)?( gone| ${STAND})*
    ((that's|thats|that is) )?${LOTS}( are|'s| is| have|'ve)?( now| just| all| both)*( gone| ${STAND})*
    (i |we |i've |we've |i have |we have )?(just )?(put|popped|stuck|got|stood|set|placed|have) ${anyOf`
      (them|these|those) (all|both)|all of (them|these|those)|both of (them|these|those)|everything|the whole lot
    `}
  `}( now| just| out| over| down| up| back)* (?=(in|into|on|onto|at|under|by|up|down|behind|beside|round) )
`;

/** Whether the words say so of several lots, and it is set on those that were told without a place. */
export function placesLotsTold(sitting: Sitting, text: string): boolean {
  const words = text.trim().toLowerCase().replaceAll('’', "'");
  const [lead = ''] = ALL_ARE.exec(words) ?? [];
  if (lead === '') return false;
  const lots = lotsToldLately(sitting);
  // One lot, or the lots of one message, are put right as its own note is.
  if (lots.length < 2) return false;
  const place = placeAlone(sitting, text.trim().slice(lead.length));
  return (
    place !== null &&
    setSlotsOfEach(
      sitting,
      lots.map((each) => [each, { place }] as const),
    )
  );
}

/** The lots that this grower told lately with nothing told in between, less those that stand somewhere. */
function lotsToldLately({ ledger, origin, world }: Sitting): readonly StandingEntry[] {
  const since = ledger.standing.findLastIndex(
    ({ entry, by, journal }) =>
      !/^(?:strike|receive)$/.test(entry.kind) ||
      by !== origin.by ||
      journal.source?.chat !== world.chat ||
      origin.at - journal.at > SPOKEN_OF_MS,
  );
  return ledger.standing.slice(since + 1).filter(({ entry }) => !('place' in entry));
}
