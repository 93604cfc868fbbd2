/** "Five. Oh, and two had died": a number that answers, and another deed behind it. */
import type { LoggedEntry, Plant } from '../../ledger/entry.js';
import { slotsTold } from '../leaning/adding.js';
import type { ReadEntry, ReadNote } from '../../language/note.js';
import { named } from '../../ledger/reach.js';
import { isOnOneBatch } from './completing.js';
import { fill, type Understanding } from './filling.js';
import { hadByThem } from '../leaning/had-by-them.js';
import { isLogged } from '../noting.js';
import { namesOther } from './plants-named.js';
import { readIn } from '../reading/reading.js';
import { retold } from './retelling.js';
import type { Sitting } from '../sitting.js';
import { plantSaid, withoutSlots } from '../reading/slots.js';
import type { SlotAsk } from '../talk.js';

const MARK = /[.!;,] | [–—-] | (?=(?:and|but|plus) )/gu;
const LEADS = /^(?:(?:oh|and|also|plus|but|then)[, ]+)+/i;
/** In UTF-16 units; an answer is short. */
const LONGEST_ANSWER = 60;

export interface AnswerAndMore {
  readonly entry: LoggedEntry;
  readonly told: ReadNote;
}

/** What the words before a mark answer, and what those behind it tell; null where they do not do both. */
export function answerAndMore(
  sitting: Sitting,
  asked: SlotAsk,
  text: string,
  understanding: Understanding,
): AnswerAndMore | null {
  if (asked.slot !== 'count' && asked.slot !== 'rooted') return null;
  if (tellsBoth(sitting, asked, text)) return null;
  for (const mark of text.matchAll(MARK)) {
    const answer = text.slice(0, mark.index);
    if (answer.length > LONGEST_ANSWER) return null;
    const entry = answered(sitting, asked, answer, understanding);
    if (!entry) continue;
    const behind = text.slice(mark.index + mark[0].length).replace(LEADS, '');
    const slots = slotsBehind(sitting, entry, behind);
    if (slots) return { entry: slots, told: { entries: [], asks: [] } };
    const told = hadByThem(sitting, entry, behind) ?? readIn(sitting, behind);
    const entries = told.entries.map((each) => ofTheSame(each, entry));
    const isMeant = (at: number) => entries[at] !== told.entries[at];
    const asks = told.asks.filter(({ entry: at, slot }) => slot !== 'batch' || !isMeant(at));
    if (!told.instruction && entries.length > 0 && entries.every((each) => isAnother(each, entry)))
      return { entry, told: { ...told, entries, asks } };
  }
  return null;
}

/** "9 Salt Harrier and 4 Tallow Bell are potted on": one deed of both, of another kind than was asked about. */
function tellsBoth(sitting: Sitting, { entry }: SlotAsk, text: string): boolean {
  const { entries, asks } = readIn(sitting, text);
  const [first, second] = entries;
  return (
    asks.length === 0 &&
    second !== undefined &&
    first?.entry.kind === second.entry.kind &&
    first.entry.kind !== entry.kind &&
    entries.every(
      (each) =>
        isLogged(each.entry) && 'count' in each.entry && named(plantSaid(each.entry as Plant, each.sources)),
    )
  );
}

/** "Six. Six of them, in one pot on the sill": how the cuttings stand, behind how many there are. */
function slotsBehind(sitting: Sitting, entry: LoggedEntry, behind: string): LoggedEntry | null {
  if (entry.kind !== 'strike' || typeof entry.count !== 'number') return null;
  const words = behind.replace(/^(?:all )?(?:\w+ of (?:them|those)|they['’]?re|all)(?: are)?,? /i, '');
  const slots = slotsTold(sitting, { entry }, words, entry.count);
  return slots && Object.keys(slots).length > 0 ? ({ ...entry, ...slots } as LoggedEntry) : null;
}

function answered(
  sitting: Sitting,
  asked: SlotAsk,
  text: string,
  understanding: Understanding,
): LoggedEntry | null {
  if (namesOther(sitting.ledger, asked.entry as Plant, text)) return null;
  const read = readIn(sitting, text);
  return (
    fill(asked, text, read, sitting.ledger, understanding) ??
    (read.entries.length === 0 ? retold(sitting, asked, text) : null)
  );
}

/** Whether it is a deed, and none that the answer told. */
function isAnother({ entry, sources }: ReadEntry, { kind }: LoggedEntry): boolean {
  if (!isLogged(entry) || entry.kind === 'remark') return false;
  return entry.kind !== kind || named(plantSaid(entry as Plant, sources));
}

/** Silence behind the answer means the plant that was asked about. */
function ofTheSame(each: ReadEntry, answered: LoggedEntry): ReadEntry {
  const { batch, variety } = answered as Plant;
  const { entry, sources } = each;
  if (!isLogged(entry) || !isOnOneBatch(entry.kind) || named(plantSaid(entry as Plant, sources))) return each;
  if (batch === undefined && variety === undefined) return each;
  const rest = withoutSlots(entry, 'variety', 'crop', 'batch');
  return { ...each, entry: { ...rest, ...(batch === undefined ? { variety } : { batch }) } as LoggedEntry };
}
