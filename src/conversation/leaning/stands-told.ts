/** “The Ember Fox are in the porch these days”, “swapped them round: the Fox on the sill, the Bell in the frame”: lots by name, each with where it stands. */
import { placeOf } from '../../ledger/batch.js';
import type { Strike } from '../../ledger/entry.js';
import { matching } from '../../ledger/ledger.js';
import { sameAlready } from '../../words/amend.js';
import { setSlots } from '../correcting/amending.js';
import { postEntry } from '../noting.js';
import { placeAlone } from '../reading/place-alone.js';
import type { Sitting } from '../sitting.js';

const SWAPPED =
  /^(?:(?:i|we|i['’]ve|we['’]ve|just) ){0,2}(?:swapped|switched|changed) (?:(?:them|those|these|both|all|everything) ){0,2}(?:round|around|over|about)\b[:;,.–— -]*/i;
const ARE =
  /^s?(?: cuttings| plants| ones| lot)?(?: (?:are|is|live|lives|stand|stands|now|all|both|sat|sitting|standing|stood|back|out|over|up|down))* (?=(?:in|on|under|at|by) )/i;
const BETWEEN = /^(?:and |but |while )?(?:the |my |our )?/i;
/** What goes there is planted out, which nobody said. */
const GROUND = /\b(?:beds?|borders?|ground|allotment|hedge|drive|path|pond|bin|heap)$/i;

/** "Swapped the Fox and the Bell round": each to where the other stood. */
const EACH_OTHER =
  /^(?:(?:i|we|i['’]ve|we['’]ve|just) ){0,2}(?:swapped|switched|changed) (?:the |my )?(?<one>.{3,40}?) (?:and|with) (?:the |my )?(?<other>.{3,40}?) (?:round|around|over|about|places)(?: with each other)?[.!]?$/i;

interface Stand {
  readonly label: string;
  readonly place: string;
}

/** Whether that is all that the words tell, of lots that are each the only one of their plant, and it is noted. */
export function tellsStands(sitting: Sitting, text: string): boolean {
  const { ledger } = sitting;
  const swapped = eachOther(sitting, text.trim());
  const stands = swapped.length > 0 ? swapped : standsIn(sitting, text.trim().replace(SWAPPED, ''));
  if (stands.length === 0) return false;
  const said = sitting.reply.text.length;
  for (const { label, place } of stands) {
    const batch = ledger.batches.get(label);
    const stood = batch ? placeOf(batch) : null;
    const came = ledger.standing.find(
      ({ entry, touched }) => /^(?:strike|receive)$/.test(entry.kind) && touched.includes(label),
    );
    if (stood?.toLowerCase() === place.toLowerCase()) continue;
    // Where it stands was never told: no carrying was seen.
    if (stood === null && came && !('place' in (came.entry as Strike))) setSlots(sitting, [came], { place });
    else postEntry(sitting, { kind: 'move', batch: label, place });
  }
  if (sitting.reply.text.length === said && sitting.reply.lines.length === 0)
    sitting.reply.text.push(sameAlready);
  return true;
}

/** Each lot with its place; none where anything else is said. */
function standsIn(sitting: Sitting, text: string): readonly Stand[] {
  const { ledger } = sitting;
  const names = [...ledger.varieties.keys()].sort((one, other) => other.length - one.length);
  const stands: Stand[] = [];
  let left = text.replace(BETWEEN, '');
  while (left !== '' && stands.length < MOST) {
    const own = names.find((name) => left.toLowerCase().startsWith(name.toLowerCase()));
    const lead = own === undefined ? null : ARE.exec(left.slice(own.length));
    if (own === undefined || !lead) return [];
    const told = left.slice(own.length + lead[0].length);
    const next = nextName(told, names);
    const place = placeAlone(sitting, withoutJoint(told.slice(0, next)));
    const [only, another] = matching(ledger, { variety: own });
    if (place === null || GROUND.test(place) || !only || another) return [];
    stands.push({ label: only.label, place });
    left = told.slice(next);
  }
  return stands;
}

function eachOther({ ledger }: Sitting, text: string): readonly Stand[] {
  const { one = '', other = '' } = EACH_OTHER.exec(text)?.groups ?? {};
  const lotOf = (said: string) => {
    const own = [...ledger.varieties.keys()].find((name) => name.toLowerCase() === said.toLowerCase());
    const [only, another] = own === undefined ? [] : matching(ledger, { variety: own });
    const place = only && !another ? placeOf(only) : null;
    return only && place !== null ? { label: only.label, place } : null;
  };
  const [first, second] = [lotOf(one), lotOf(other)];
  if (!first || !second || first.label === second.label) return [];
  return [
    { label: first.label, place: second.place },
    { label: second.label, place: first.place },
  ];
}

/** "On the heat mat and the", before the next plant's name. */
function withoutJoint(words: string): string {
  const shorter = words
    .trimEnd()
    .replace(/[,;.]$/, '')
    .replace(/ (?:and|but|while|the|my|our)$/i, '');
  return shorter === words ? words : withoutJoint(shorter);
}

/** More are a list of another sort. */
const MOST = 12;

/** Where the next plant is named, else the end. */
function nextName(text: string, names: readonly string[]): number {
  const found = names
    .map((name) => text.toLowerCase().indexOf(` ${name.toLowerCase()}`))
    .filter((at) => at >= 0);
  return found.length === 0 ? text.length : Math.min(...found) + 1;
}
