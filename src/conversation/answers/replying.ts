/** A reply to a question of ours: what it settles, or that it is none. */
import type { ReadNote } from '../../language/note.js';
import { dayIn } from '../reading/day-in.js';
import { withPartsNamed } from '../reading/parts-named.js';
import { plainlyTold } from './cleft-told.js';
import { fill, sameTold, type Understanding } from './filling.js';
import { nameLot } from '../leaning/lots-unnamed.js';
import { isLogged, postEntry, takeNote } from '../noting.js';
import { noteOf, readIn } from '../reading/reading.js';
import type { Sitting } from '../sitting.js';
import type { Ask } from '../talk.js';
import { setSlots } from '../correcting/amending.js';
import { settleAsk } from './asked.js';
import { retold } from './retelling.js';
import { skipSetup } from '../settings/starting.js';
import { leftIt } from '../../words/answers.js';
import { allOfThem, optionsFor } from './completing.js';
import { dayOfNoted } from '../correcting/day-of-noted.js';
import { moreThanKnown } from './more-than-known.js';
import { ofOtherPlant } from './other-plant.js';
import { sharedOut } from './shared-out.js';
import { answerAndMore } from './answer-and-more.js';
import { isCalled } from '../../language/grammar/entry-words.js';
import { undosMeant } from '../../language/amending/undo-meant.js';
import { plantSaid, withoutSlots } from '../reading/slots.js';
import type { LoggedEntry, Plant } from '../../ledger/entry.js';
import { batchLabelled } from '../../ledger/ledger.js';
import { named } from '../../ledger/reach.js';
import type { Origin, SlotAsk } from '../talk.js';

/** Whether the reply answered the question; then what it settles is done. */
export function replyToAsk(sitting: Sitting, ask: Ask, text: string, read: ReadNote): boolean {
  const { asked } = ask;
  if (isDropped(text)) {
    if (asked.ask === 'setup') {
      skipSetup(sitting, ask);
      return true;
    }
    drop(sitting, ask);
    if (asked.ask !== 'howMany') sitting.reply.text.push(leftIt);
    return true;
  }
  if (asked.ask !== 'slot') return settleAsk(sitting, ask, text, read);
  if (isCode(sitting.text)) return false;
  if (undoesAsked(sitting, ask, asked, read)) {
    drop(sitting, ask);
    // What the same note has logged already is taken back as well.
    if (isPosted(sitting, ask)) return false;
    sitting.reply.text.push(leftIt);
    return true;
  }
  const behind = behindUndo(sitting, ask, asked, read);
  if (behind) {
    drop(sitting, ask);
    takeNote(sitting, behind);
    return true;
  }
  const leaning = asked.entry.kind === 'target' || asked.entry.kind === 'remind' ? 'future' : 'past';
  const understanding: Understanding = {
    day: (words) => dayIn(words, sitting.origin.at, sitting.settings, leaning),
    plant: (words) => plantIn(sitting, words),
  };
  const shared = sharedOut(sitting, asked, text);
  if (shared) {
    drop(sitting, ask);
    for (const each of shared) postEntry(sitting, each, ask.origin);
    return true;
  }
  const more = moreThanKnown(sitting, asked, text);
  if (more) {
    drop(sitting, ask);
    postEntry(sitting, more, ask.origin);
    return true;
  }
  const other = ofOtherPlant(sitting, asked, text, read);
  if (other) {
    drop(sitting, ask);
    postEntry(sitting, other, ask.origin);
    return true;
  }
  const plain = plainlyTold(text);
  const which = asked.slot === 'batch' ? withPartsNamed(sitting, text) : text;
  // "They came from the six": which, and nothing that came in.
  const isWhich = asked.slot === 'batch' && CAME_FROM.test(text.trim());
  const entry =
    fill(asked, which, isWhich ? { entries: [], asks: [] } : read, sitting.ledger, understanding) ??
    (plain === null ? null : sameTold(asked, readIn(sitting, plain))) ??
    (read.entries.length === 0 ? retold(sitting, asked, text) : null);
  if (entry) {
    drop(sitting, ask);
    goOn(sitting, asked, entry, ask.origin);
    return true;
  }
  const both = answerAndMore(sitting, asked, text, understanding);
  if (both) {
    drop(sitting, ask);
    goOn(sitting, asked, both.entry, ask.origin);
    takeNote(sitting, both.told);
    return true;
  }
  const corrected = withCorrection(asked, read);
  if (corrected) {
    const day = dayOfNoted(sitting, ask, asked, read);
    if (day) setSlots(sitting, day.noted, { date: corrected.date });
    if (day?.both === false) return true;
    drop(sitting, ask);
    sitting.ask({ ...asked, entry: corrected }, ask.origin);
    return true;
  }
  // "Two" to "Which was sold?": what would have been asked next is known already.
  const early = asked.then.map(({ slot, options }) => {
    const other = { ...asked, slot, options };
    return { slot, entry: slot === 'text' ? null : fill(other, text, read, sitting.ledger, understanding) };
  });
  const known = early.find((each) => each.entry !== null);
  if (!known?.entry) return false;
  drop(sitting, ask);
  sitting.ask(
    { ...asked, entry: known.entry, then: asked.then.filter(({ slot }) => slot !== known.slot) },
    ask.origin,
  );
  return true;
}

/** Marks of a program, which no "two at $5; the rest later" has: what stands among them answers nothing. */
const isCode = (text: string): boolean =>
  /[{}\\]|<[/%a-z]/i.test(text) || (text.includes(';') && text.includes('--'));

const CAME_FROM =
  /^(?:they|those|these|it|that|he|she)(?:['’]re| (?:came|come|were|was|are|is|went))? (?:all )?(?:from|out of|off)\b/i;

/** "Undo that", "scrap that sale", said of the entry that still waits: nothing else has been told since it was asked about. */
function undoesAsked(sitting: Sitting, { askedAt }: Ask, { entry }: SlotAsk, read: ReadNote): boolean {
  const [only, another] = read.entries;
  if (only?.entry.kind !== 'undo' || another) return false;
  const last = sitting.ledger.standing.at(-1)?.journal;
  if (last !== undefined && last.postedAt > askedAt) return false;
  const { noun, plant } = undosMeant(noteOf(sitting, sitting.text))[0] ?? {};
  return plant === undefined && (noun === undefined || isCalled(noun, entry));
}

/** "Forget it, took four": what is told behind the taking back of an entry that waits; of no plant, of the one that waited. */
function behindUndo(sitting: Sitting, ask: Ask, asked: SlotAsk, read: ReadNote): ReadNote | null {
  const [undo, ...entries] = read.entries;
  const isOfAsked = undo && undoesAsked(sitting, ask, asked, { entries: [undo], asks: [] });
  if (!isOfAsked || entries.length === 0 || entries.some(({ entry }) => !isLogged(entry))) return null;
  const told = entries.map((each) => {
    const isSame =
      each.entry.kind === asked.entry.kind && !named(plantSaid(each.entry as Plant, each.sources));
    if (!isSame) return each;
    const said = withoutSlots(each.entry as LoggedEntry, 'variety', 'crop', 'batch');
    return { ...each, entry: { ...asked.entry, ...said } as LoggedEntry };
  });
  const asks = read.asks
    .map((each) => ({ ...each, entry: each.entry - 1 }))
    .filter(({ entry, slot }) => !(slot in (told[entry]?.entry ?? {})) && told[entry] === entries[entry]);
  return { entries: told, asks };
}

const isPosted = ({ ledger }: Sitting, { askedAt }: Ask): boolean =>
  ledger.standing.at(-1)?.journal.postedAt === askedAt;

/** "No, that was 10", of the entry that still waits: what it says otherwise, where it has such a slot. */
function withCorrection({ entry, slot }: SlotAsk, { entries }: ReadNote): LoggedEntry | null {
  const [only, another] = entries;
  if (!only || another || only.entry.kind !== 'amend') return null;
  const { set = {}, ...about } = only.entry;
  const known = Object.keys(set);
  if (known.length === 0 || named(about) || about.date !== undefined) return null;
  // Every entry has a day, said or not.
  return known.every((each) => each !== slot && (each in entry || each === 'date'))
    ? ({ ...entry, ...set } as LoggedEntry)
    : null;
}

/** A plant's name as the reader would take it in a note: the variety apart from its crop ("Salt Harrier, the hebe"). */
function plantIn(sitting: Sitting, words: string): Plant | null {
  const [, name, crop] =
    /^(.{2,40}?),? (?:the|an?|it['’]s an?|that['’]s an?|which is an?) ([\p{L} ]{3,20})$/iu.exec(words) ?? [];
  const beside = name === undefined ? null : plantToldIn(sitting, `${name} ${crop ?? ''}`);
  return beside?.crop !== undefined && beside.variety !== undefined ? beside : plantToldIn(sitting, words);
}

function plantToldIn(sitting: Sitting, words: string): Plant | null {
  const [only, another] = readIn(sitting, `took 2 cuttings of ${words}`).entries;
  if (!only || another || only.entry.kind !== 'strike') return null;
  const { variety, crop } = only.entry;
  const plant = { ...(variety === undefined ? {} : { variety }), ...(crop === undefined ? {} : { crop }) };
  return Object.keys(plant).length === 0 ? null : plant;
}

/** The entry with one slot more: asks the next, or posts it. */
export function goOn(sitting: Sitting, asked: SlotAsk, entry: LoggedEntry, origin: Origin): void {
  const { batch } = entry as Plant;
  if (batch === allOfThem) {
    for (const label of asked.options)
      if (typeof label === 'string' && label !== allOfThem)
        goOn(
          sitting,
          asked,
          { ...withoutSlots(asked.entry, 'variety', 'crop'), batch: label } as LoggedEntry,
          origin,
        );
    return;
  }
  const meant = batch === undefined ? undefined : batchLabelled(sitting.ledger, batch);
  // "Which is Neon Gravy?", and a lot without a name is chosen.
  if (meant && asked.refusal?.refused === 'noBatch' && asked.refusal.plant.variety !== undefined)
    nameLot(sitting, meant, asked.refusal.plant.variety);
  const [next, ...then] = asked.then.filter(({ slot }) => !(slot in entry));
  if (next) {
    const options = next.options.length > 0 ? next.options : optionsFor(sitting.ledger, entry, next.slot);
    sitting.ask({ ask: 'slot', entry, slot: next.slot, options, then }, origin);
  } else postEntry(sitting, entry, origin);
}

export function drop(sitting: Sitting, ask: Ask): void {
  sitting.change({ asks: sitting.talk.asks.filter(({ id }) => id !== ask.id) });
}

function isDropped(text: string): boolean {
  return /^(?:(?:oh|ah|ok|okay|no|nah|actually|just|well|sorry|right)[, ]+)*(?:leave (?:it|that)|never ?mind|forget (?:it|that|i (?:said|mentioned)(?: it| anything)?|i spoke)|ignore (?:that|me)|skip(?: it)?|(?:i )?don['’]?t know|dunno|no idea|no clue|not sure|cancel)[.!]?$/i.test(
    text.trim(),
  );
}
