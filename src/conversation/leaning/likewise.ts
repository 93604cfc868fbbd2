/** "And the Marble Wren too", "another six", "and 9 Soft Anchor, same place": the last note again, of another plant or number. */
import type { Count, LoggedEntry, Plant } from '../../ledger/entry.js';
import { named } from '../../ledger/reach.js';
import { ofLastNote, onlyOfLastNote, struckInLastNote } from './last-note.js';
import type { ReadEntry, ReadNote } from '../../language/note.js';
import { isLogged, takeNote } from '../noting.js';
import { readIn } from '../reading/reading.js';
import type { Sitting } from '../sitting.js';
import { isOfOtherAlone } from '../correcting/swapping.js';
import { plantSaid, withoutSlots } from '../reading/slots.js';

/** So long after a note may another lean on it. */
const LEANS_MS = 24 * 3_600_000;
const LONGEST_LIKEWISE = 100;
/** "Another 2": of a loss, which goes on for days. */
const GOES_ON_MS = 3 * LEANS_MS;

const ofPlants = new Set(['tend', 'check', 'potOn', 'pinch', 'move', 'hardenOff', 'plantOut']);
const ofNumbers = new Set(['strike', 'loss', 'potOn', 'pinch', 'move', 'plantOut', 'dispatch']);

const LEAD =
  /^(?:(?:oh|ah|oops|sorry)[, ]+)?(?:(?:(?:and |then )?(?:(?:i|we) )?did (?:exactly |just )?the same (?:for|with|to)|and|also|plus|then|ditto|likewise|(?:the )?same(?: again)?(?: for| with| goes for| to| on)?)\b[, ]*(?:(?:(?:i|we|i['’]ve|we['’]ve) )?(?:just |also )?(?:did|done|forgot)\b[,: ]*)?|(?:i |we )?forgot\b[,: ]*)/i;
const TAIL = /(?<![, ])[, ]*\b(?:too|as well|also|likewise)$/i;
/** "Six Parish Gossip, also a geranium, done this evening". */
const CROP_BESIDE =
  /^[^,]{3,40}, ?(?:(?:and )?also|another|an?) (?:an? )?\p{L}+(?: too| as well)?(?:$|[,.])/iu;
/** "And 24 Parish Gossip from me": as of another of the group. */
const FROM_ME = /(?<![, ])[, ]*\b(?:from|by) (?:me|us)\b(?: (?:too|as well|also))?/i;
/** "Take back the other one as well": nothing is done once more. */
const UNDOES =
  /^(?:(?:and|also|then|now|please|can you|could you) )*(?:undo|delete|remove|cancel|revert|scrap|scratch|ignore|forget|take back|take (?:the|that|it) .{0,20}\bback)\b/i;
const DONE = /,? (?:all )?(?:done|did)\b/i;
const ANOTHER = /\b(?:other|another|more(?! like| than| or less)|rest|remaining|last)\b/i;

/** Whether the text leans on the last note, and what it says is logged or asked about. */
export function saysLikewise(sitting: Sitting, text: string): boolean {
  const words = text.trim().replace(/(?<![.!])[.!]+$/, '');
  if (UNDOES.test(words) || isOfOtherAlone(words)) return false;
  const bare = (CROP_BESIDE.test(words) ? words.replace(DONE, ' ') : words)
    .replace(LEAD, '')
    .replace(TAIL, '')
    .replace(FROM_ME, '');
  const leans = bare !== words || SAME_PLACE.test(words) || CROP_BESIDE.test(words);
  const own = leans || ANOTHER.test(words) ? lastEntry(sitting, words) : null;
  const last = own ?? (I_DID.test(words) ? doneByAnother(sitting) : null);
  if (bare === '' || bare.length > LONGEST_LIKEWISE) return false;
  const struck = leans && !last ? struckInLastNote(sitting, ANSWERS_MS) : null;
  const others = struck ? struckToo(toldBy(sitting, bare), words, struck) : undefined;
  if (others) {
    takeNote(sitting, { entries: others, asks: [] });
    return true;
  }
  if (!last) return false;
  const told = toldBy(sitting, last.kind === 'dispatch' ? toWhom(bare) : bare);
  const more =
    leans && ofNumbers.has(last.kind)
      ? (moreIn(told, words, last) ??
        elsewhereIn(told, FREE.test(bare) ? ({ ...last, how: 'given' } as LoggedEntry) : last))
      : undefined;
  if (more) {
    takeNote(sitting, { entries: more, asks: [] });
    return true;
  }
  if (leans && last.kind === 'strike' && !more && asksHowMany(sitting, told('took'), words, last))
    return true;
  const again =
    SAME_AGAIN.test(words) && last.kind === 'strike' ? plantIn(told('took'), 'strike') : undefined;
  if (again) {
    const entry = { ...withoutSlots(last, 'date', 'variety', 'crop'), ...again } as LoggedEntry;
    takeNote(sitting, { entries: [{ entry, sources: {} }], asks: [] });
    return true;
  }
  const count = ANOTHER.test(words) && ofNumbers.has(last.kind) ? countIn(told('lost')) : undefined;
  const plant = leans && ofPlants.has(last.kind) ? plantIn(told('misted'), 'tend') : undefined;
  const like = withoutSlots(last, 'date', 'count', 'pots');
  // "And the rest" of the cuttings: how many those were is asked.
  const entry =
    count !== undefined
      ? { ...like, ...(last.kind === 'strike' && typeof count !== 'number' ? {} : { count }) }
      : plant && { ...withoutSlots(like, 'variety', 'crop', 'batch', 'rooted'), ...roots(last), ...plant };
  if (!entry) return false;
  takeNote(sitting, { entries: [{ entry: entry as LoggedEntry, sources: {} }], asks: [] });
  return true;
}

/** The words as an act told by a verb; with each verb they are read once. */
type Told = (verb: string) => ReadNote;

function toldBy(sitting: Sitting, words: string): Told {
  const readings = new Map<string, ReadNote>();
  return (verb) => {
    const reading = readings.get(verb) ?? readIn(sitting, `${verb} ${words}`);
    readings.set(verb, reading);
    return reading;
  };
}

/** Cuttings of other plants. They share nothing with those before but the place, where that is said. */
function struckToo(told: Told, words: string, last: LoggedEntry): readonly ReadEntry[] | undefined {
  if (NOT_DONE.test(words)) return undefined;
  const { entries, asks } = told('took');
  const place = SAME_PLACE.test(words) && 'place' in last ? { place: last.place } : {};
  const struck = entries.flatMap((each) =>
    each.entry.kind === 'strike' && 'count' in each.entry && named(plantSaid(each.entry, each.sources))
      ? [{ ...each, entry: { ...place, ...each.entry } as LoggedEntry }]
      : [],
  );
  return struck.length > 0 && struck.length === entries.length && asks.length === 0 ? struck : undefined;
}

/** "Didn't do the 6 Parish Gossip as well", "and 6 Parish Gossip still to do": with a verb before them such words are lost. */
const NOT_DONE =
  /n['’]t\b|\b(?:not|never|still|yet|to do|to go|wants?|wanted|needs?|needed|should|could|would|will|might|must|if|going to|plan|planned|hope|hoping|instead|came|come|arrived)\b/i;

/** So many of another plant. */
function moreIn(told: Told, words: string, last: LoggedEntry): readonly ReadEntry[] | undefined {
  if (last.kind === 'strike') return struckToo(told, words, last);
  const { entries, asks } = told('lost');
  const [only, another] = entries;
  if (only?.entry.kind !== 'loss' || another || asks.length > 0 || !('count' in only.entry)) return undefined;
  const plant = plantSaid(only.entry, only.sources);
  if (!named(plant)) return undefined;
  const own = withoutSlots(last, 'date', 'pots', 'cause', 'variety', 'crop', 'batch');
  return [{ entry: { ...own, ...plant, count: only.entry.count } as LoggedEntry, sources: {} }];
}

/** "And some of the Marble Wren, same day": how many is asked. */
function asksHowMany(
  sitting: Sitting,
  { entries, asks }: ReadNote,
  words: string,
  last: LoggedEntry,
): boolean {
  const [only, another] = entries;
  if (!only || another || only.entry.kind !== 'strike' || !VAGUE.test(words)) return false;
  const { variety, crop } = only.entry;
  const isPlant =
    crop !== undefined &&
    variety !== undefined &&
    only.sources.variety === 'said' &&
    only.sources.crop !== undefined;
  if (!isPlant || asks.some(({ slot }) => slot !== 'count') || asks.length === 0) return false;
  const place = SAME_PLACE.test(words) && 'place' in last ? { place: last.place } : {};
  const date = /\bsame (?:day|time)\b/i.test(words) && last.date !== undefined ? { date: last.date } : {};
  takeNote(sitting, {
    entries: [{ ...only, entry: { ...only.entry, ...place, ...date } as LoggedEntry }],
    asks,
  });
  return true;
}

const VAGUE = /\b(?:some|a few|several|loads|lots|a handful)\b/i;

const VERBS: Readonly<Partial<Record<LoggedEntry['kind'], string>>> = {
  plantOut: 'planted',
  move: 'moved',
  dispatch: 'gave',
};

/** "And 4 in the tub by the door", "and two to Nell": so many of the same, elsewhere. */
function elsewhereIn(told: Told, last: LoggedEntry): readonly ReadEntry[] | undefined {
  const verb = VERBS[last.kind];
  if (verb === undefined) return undefined;
  const [only, another] = told(verb).entries;
  const entry = only?.entry;
  if (another || entry?.kind !== last.kind || named(plantSaid(entry as Plant, only?.sources ?? {})))
    return undefined;
  if (entry.kind !== 'plantOut' && entry.kind !== 'move' && entry.kind !== 'dispatch') return undefined;
  const where = entry.kind === 'dispatch' ? { to: entry.to } : { place: entry.place };
  if (typeof entry.count !== 'number' || Object.values(where)[0] === undefined) return undefined;
  const own = withoutSlots(last, 'date', 'count', 'place', 'fromPlace', 'to');
  return [{ entry: { ...own, ...where, count: entry.count } as LoggedEntry, sources: {} }];
}

/** "One for next door, gratis": given to them. */
const FREE = /,? (?:gratis|free(?: of charge)?|for nothing|for free|as a present|on the house)$/i;
const toWhom = (words: string): string => words.replace(FREE, '').replace(/^(\S+) for /i, '$1 to ');

const SAME_AGAIN = /^(?:the )?same again\b/i;
/** Told of where the last note's plants stand. */
export const SAME_PLACE =
  /\bsame (?:place|spot|bench|shelf|mat|tray|propagator|frame|cold frame|greenhouse|tunnel|window ?sill|sill|table|rack|room|house)\b/i;

/** The last note's only entry, or its last where all were of one kind and one is said to have been forgotten, ready to be said again. */
function lastEntry(sitting: Sitting, words: string): LoggedEntry | null {
  if (/\bforgot\b/i.test(words)) {
    const told = ofLastNote(sitting, LEANS_MS).map(({ entry }) => entry);
    const last = told.at(-1);
    const alike = last !== undefined && told.every(({ kind }) => kind === last.kind);
    if (alike && isLogged(last)) return withoutSlots(last, 'label');
  }
  const goesOn = /\banother\b/i.test(words) ? onlyOfLastNote(sitting, GOES_ON_MS) : null;
  const last = goesOn?.entry.kind === 'loss' ? goesOn : onlyOfLastNote(sitting, LEANS_MS);
  return last && isLogged(last.entry) ? withoutSlots(last.entry, 'label') : null;
}

/** "And I did four Nettle Rose", behind what another of the group told. */
const I_DID = /^(?:and|then|also),? (?:i|we|i['’]ve|we['’]ve) (?:just |also )?(?:did|done)\b/i;
const ANSWERS_MS = 3_600_000;

function doneByAnother(sitting: Sitting): LoggedEntry | null {
  const last = onlyOfLastNote(sitting, ANSWERS_MS, true)?.entry;
  return last && isLogged(last) ? withoutSlots(last, 'label') : null;
}

/** All of one sort says the same of another; a number does not. */
function roots(last: LoggedEntry): object {
  return last.kind === 'check' && typeof last.rooted === 'string' ? { rooted: last.rooted } : {};
}

function countIn({ entries: [only, another] }: ReadNote): Count | undefined {
  if (!only || another || only.entry.kind !== 'loss' || named(plantSaid(only.entry, only.sources)))
    return undefined;
  return only.entry.count;
}

/** The plant of the one act that was read, where it is of that kind. Of a plant that nobody knows, cuttings alone can be told. */
function plantIn({ entries: [only, another] }: ReadNote, kind: 'strike' | 'tend'): Plant | undefined {
  if (!only || another || only.entry.kind !== kind) return undefined;
  const plant = plantSaid(only.entry as Plant, only.sources);
  return named(plant) ? plant : undefined;
}
