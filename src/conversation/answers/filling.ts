/** Whether a reply answers the question that waits for a slot, and the entry with it filled. */
import type { LoggedEntry, Plant } from '../../ledger/entry.js';
import type { Day } from '../../calendar/day.js';
import { contains, isSpan, type Span } from '../../calendar/span.js';
import { began } from '../../ledger/batch.js';
import { batchLabelled, type Ledger, liveBatches } from '../../ledger/ledger.js';
import type { Entry } from '../../ledger/entry.js';
import type { ReadNote } from '../../language/note.js';
import { countsOthers, isOwnNote, NAMES_LOT, tellsNewPlant } from './beside-question.js';
import { chooseBatch } from './choosing.js';
import { allOfThem, withBatch } from './completing.js';
import { isLogged } from '../noting.js';
import { named } from '../../ledger/reach.js';
import { namesOther } from './plants-named.js';
import type { SlotAsk } from '../talk.js';

/** "Doreen came for hers, took both": a deed of its own, and no answer. */
const OWN_DEED = /\b(?:took|came|went|gave|collected|bought|picked up)\b/i;

/** What names a batch is short; a longer text may name it in passing. */
const MOST_WORDS = 10;
/** "…, the three I mean". */
const I_MEAN = /,? (?:the [\p{L}\d]+ )?i mean[.!]?$/iu;
/** In UTF-16 units. */
const LONGEST_NAME = 60;
/** Words that no name of a plant begins or ends with: a new note, not the answer. */
const NOTE =
  /^(?:ok|okay|now|and|then|so|but|also|right|just|i|we|it|they|did|lost|took|gave|in|on|at|into|with|from|to|this)\b|\b(?:too|as well|now|today|yesterday|(?:in)?to (?:the|my) (?:\S+ )?\S+|(?:potted|planted|pricked|pinched|moved) (?:on|up|out))$/i;
/** "Didn't get round to the Bobbin Lace": what was left undone, and no choice of a batch. */
const NOT_DONE = /\b(?:did|do|have|has|was|were)(?:n['’]?t| not)\b|\b(?:forgot|never got)\b/i;
/** "Jayden dropped one. It's snapped": told, and no name. */
const SENTENCES = /[.!?] +\S|\b(?:it|they)['’](?:s|re)\b/i;
/** Figures, and what can't be written on a label: controls, halves of characters, characters that nobody has given a meaning. */
const NO_NAME = /[\d\p{Cc}\p{Cs}\p{Co}\p{Cn}]/u;

/** Words of a reply taken for what the question asks for; null where they are none. */
export interface Understanding {
  readonly day: (text: string) => Day | Span | null;
  readonly plant: (text: string) => Plant | null;
}

/** The entry completed by the reply, or null where the reply is no answer to the question. */
export function fill(
  ask: SlotAsk,
  text: string,
  read: ReadNote,
  ledger: Ledger,
  { day, plant }: Understanding,
): LoggedEntry | null {
  const said = read.entries.map(({ entry }) => entry);
  const merged = sameTold(ask, read);
  if (merged) return merged;
  const reminder = ask.slot === 'text' && ask.entry.kind === 'remind' ? toBeDone(text, read) : null;
  if (reminder !== null) return withValue(ask, reminder, ledger);
  // Another deed told in full is a note of its own, whatever words it shares with the question.
  if (said.some(isLogged) && !said.every((entry) => entry.kind === 'remark')) return null;
  if (said.some((entry) => entry.kind === 'question' || entry.kind === 'undo')) return null;
  if (ask.slot === 'variety') {
    const name = ASKS.test(text.trim()) ? null : nameIn(text, said[0]?.kind === 'answer');
    const meant = name === null ? null : plant(name);
    return name === null ? null : ({ ...ask.entry, ...(meant ?? { variety: name }) } as LoggedEntry);
  }
  if (isOwnNote(ask, text, ledger, said[0]) || countsOthers(ask, text, ledger, day)) return null;
  const value = ask.slot === 'date' ? day(text) : valueFor(ask, text, said[0], ledger, day);
  if (value === null) return null;
  // "Two on Friday"; "eleven of the first" tells no day.
  // The day that tells a lot is that on which it began.
  const isOfLot =
    /\bthe (?:first|second|third)\b/i.test(text) || (ask.slot === 'batch' && NAMES_LOT.test(text));
  const told = said[0]?.kind === 'answer' && ask.slot !== 'date' && !isOfLot ? said[0].date : undefined;
  const batch = ask.slot === 'batch' && typeof value === 'string' ? batchLabelled(ledger, value) : undefined;
  const tellsLot = batch !== undefined && told !== undefined && holds(told, began(batch));
  const on = tellsLot ? undefined : told;
  return { ...withValue(ask, value, ledger), ...(on === undefined ? {} : { date: on }) } as LoggedEntry;
}

const holds = (told: Day | Span, day: Day): boolean => (isSpan(told) ? contains(told, day) : told === day);

/** "Do I change the water", for want of a question mark: no name. */
const ASKS =
  /^(?:do|does|did|is|are|can|could|should|shall|will|would|what|when|how|where|why|which|who) (?:i|we|you|it|they|that|this|the|my|there|to|many|much|long|is|are|do|does)\b/i;

const DONE =
  /^(?:(?:i|we|i['’]ve|just|have|also) )*(?:\w+ed|took|lost|gave|sold|put|made|got|found|had|did|went|saw|cut)\b/i;

/** "To pot on the Ember Fox": what is to be done, which the reader may take for a deed; null where it has been done. */
function toBeDone(text: string, read: ReadNote): string | null {
  const told = text
    .trim()
    .replace(/^(?:please |that i (?:should|need to|have to) |about |of |to )+/i, '')
    .replace(/[.!]$/, '');
  const kinds = read.entries.map(({ entry }) => entry.kind);
  const other = kinds.some((kind) => kind === 'question' || kind === 'undo' || kind === 'amend');
  if (told === '' || other || read.instruction || DONE.test(told)) return null;
  // A plant and a number tell a deed: "5 tip cuttings of Ember Fox".
  return /^\d/.test(told) && kinds.length > 0 ? null : told;
}

/** The same deed told again with the slot in it. */
export const sameTold = (ask: SlotAsk, read: ReadNote): LoggedEntry | null =>
  merge(ask, read.entries[0]?.entry, read.entries.length, read);

/** Puts a tapped or understood value into the slot. */
export function withValue(ask: SlotAsk, value: unknown, ledger: Ledger): LoggedEntry {
  if (ask.slot === 'batch' && typeof value === 'string') {
    const batch = batchLabelled(ledger, value);
    if (batch) return withBatch(ask.entry, batch);
  }
  return { ...ask.entry, [ask.slot]: value } as LoggedEntry;
}

/** The reply says the same deed again with the slot in it: "lost two" to "How many were lost?". */
function merge(ask: SlotAsk, entry: Entry | undefined, entries: number, read: ReadNote): LoggedEntry | null {
  if (!entry || entries !== 1 || entry.kind !== ask.entry.kind || !(ask.slot in entry)) return null;
  const stillAsked = read.asks
    .map(({ slot }) => slot)
    .filter((slot) => slot !== 'batch' && slot !== 'variety');
  if (stillAsked.length > 0) return null;
  const said = entry as unknown as Readonly<Record<string, unknown>>;
  // With another number or another plant it is another deed.
  const other = Object.entries(ask.entry).some(
    ([slot, value]) => slot !== ask.slot && slot in said && !isSame(value, said[slot]),
  );
  if (other) return null;
  return { ...ask.entry, ...entry, ...plantSlots(ask.entry as Plant) } as LoggedEntry;
}

function isSame(a: unknown, b: unknown): boolean {
  const plain = (value: unknown): string => String(JSON.stringify(value)).toLowerCase();
  return plain(a) === plain(b);
}

function plantSlots({ variety, crop, batch }: Plant): Plant {
  return {
    ...(variety === undefined ? {} : { variety }),
    ...(crop === undefined ? {} : { crop }),
    ...(batch === undefined ? {} : { batch }),
  };
}

function valueFor(
  ask: SlotAsk,
  text: string,
  entry: Entry | undefined,
  ledger: Ledger,
  day: Understanding['day'],
): unknown {
  const answered = entry?.kind === 'answer' ? entry.value : undefined;
  switch (ask.slot) {
    case 'count':
    case 'rooted':
    case 'pots':
    case 'celsius':
      if (typeof answered === 'number') return answered;
      // "No sorry, make that five".
      if (entry?.kind === 'amend' && ask.slot in (entry.set ?? {})) return entry.set?.[ask.slot as never];
      // "Call it five" of those that have rooted.
      if (ask.slot === 'rooted' && entry?.kind === 'amend' && !named(entry) && entry.set?.count !== undefined)
        return entry.set.count;
      if (answered === 'all' && ask.slot !== 'pots') return 'all';
      if (ask.slot === 'rooted' && (answered === 'none' || answered === 'notYet' || answered === 'no'))
        return 'none';
      return namesOther(ledger, ask.entry as Plant, text) || tellsNewPlant(text, ledger)
        ? null
        : numberIn(text);
    case 'batch': {
      // "It was two of the Salt Harrier, not three", beside a plant that nobody knows: of what was noted.
      if (ask.refusal?.refused === 'noBatch' && entry?.kind === 'amend' && 'count' in (entry.set ?? {}))
        return null;
      if (
        (text.replace(I_MEAN, '').match(/[\p{L}\p{N}'’]+/gu) ?? []).length > MOST_WORDS ||
        NOT_DONE.test(text)
      )
        return null;
      const all = answered === 'all' || (/\b(?:both|all|every)\b/i.test(text) && !OWN_DEED.test(text));
      if (ask.options.includes(allOfThem) && all) return allOfThem;
      const labels = ask.options.filter((option) => typeof option === 'string');
      const live = labels.length > 0 ? labels : liveBatches(ledger).map(({ label }) => label);
      return chooseBatch(text, live, ledger, day(text))?.label ?? null;
    }
    default:
      return answered === undefined && text.length <= 60 ? text.trim().toLowerCase() : null;
  }
}

/** What else is counted: "so 2 coffees", "back in 5 minutes". */
const OTHER_THINGS =
  /^ ?(?:[ap]m|mins?|minutes?|hours?|days?|weeks?|months?|years?|times|miles|degrees|c|f|quid|pounds|euros?|dollars|people|visitors|slugs|snails|aphids|bees|coffees?|teas?|cups?|bags?|sacks?|leaves|buds|flowers)\b/i;

/** "5", "it was 5", "about 5 I think": the one number in a short reply, standing by itself: not a label's, nor one below nothing. */
function numberIn(text: string): number | null {
  const numbers = text.match(/\d+/g) ?? [];
  const words = text.trim().split(/\s+/).length;
  const alone = /(?<![^\s("'~])\d{1,6}(?![^\s)"'.,!?;:])/.exec(text);
  if (numbers.length !== 1 || !alone || words > 5) return null;
  // "Back in 10", "not till 5": of the clock.
  if (/\b(?:in|at|till|until|by|after) $/i.test(text.slice(0, alone.index))) return null;
  return OTHER_THINGS.test(text.slice(alone.index + alone[0].length)) ? null : Number(alone[0]);
}

function nameIn(text: string, isAnswer: boolean): string | null {
  const name = text
    .trim()
    .replace(/^(?:it was|it's|it’s|they were|they['’]re|that['’]s|that was)\s+/i, '')
    .replace(/^(?:the|of|some|my|cuttings of)\s+/i, '')
    // "Salt Harrier is a fuchsia".
    .replace(/(?<!\s)\s(?:is|are|it['’]s|that['’]s) an? (?=\p{L}+[.!]?$)/iu, ' ')
    .replace(/[.!?"“”]+/g, '');
  if (
    isAnswer ||
    name === '' ||
    name.length > LONGEST_NAME ||
    name.split(/\s+/).length > 5 ||
    NO_NAME.test(name) ||
    SENTENCES.test(text.trim()) ||
    NOTE.test(name)
  )
    return null;
  return name.replace(/(?:^|\s)\p{L}/gu, (letter) => letter.toUpperCase());
}
