/** Puts an entry right where it stands: sets the slots of the one that was meant, and lets what followed be checked again. */
import type { Amend, Plant } from '../../ledger/entry.js';
import { batchLabelled, type Ledger, matching, type StandingEntry } from '../../ledger/ledger.js';
import { type Amendment, isAmendment, type Line, type Posting } from '../../ledger/posting.js';
import { plantOf } from '../../ledger/reach.js';
import type { Conflict } from '../../ledger/refusal.js';
import { nothingToAmend, putRight, sameAlready, wouldNotFollow } from '../../words/amend.js';
import { refusalWords } from '../../words/asks.js';
import { undoLabel } from '../../words/undo.js';
import { briefly, receipt } from '../../words/receipts.js';
import { ofAnswerGiven } from './after-question.js';
import { ofDeedTold } from './deed-told.js';
import { saidTo } from './group.js';
import { deniedNumber, deniesAll, deniesOther, FRESH_MS } from './number-denied.js';
import { lotsMeant } from './lots.js';
import { splitAnew } from './split-anew.js';
import { takenBackLast, takesAsNote, toldAnew } from './told-anew.js';
import { dayIn } from '../reading/day-in.js';
import { doneOf, speechOf, standingOn } from '../batches/deeds.js';
import {
  candidatesFor, deedOfOther, isAbout, numberOf, preferBeginnings, sameNote, type Slots, takes,
} from './entry-meant.js'; // prettier-ignore
import { lastDeed } from '../books/history.js';
import { renamedAnew, renames } from './renaming.js';
import { withoutSlots } from '../reading/slots.js';
import type { Sitting } from '../sitting.js';

/** Does what an `amend` says. `meant` are the lines of the message that it replies to, empty where it replies to none; `kind` the kind of entry meant. */
export function amend(sitting: Sitting, said: Amend, meant: readonly Line[], kind?: Posting['kind']): void {
  const { entry, set } = withPlantSet(said);
  const to = set['variety'];
  if (
    typeof to === 'string' &&
    entry.variety !== undefined &&
    !meant.length &&
    renames(sitting, entry.variety, to)
  )
    return;
  const again = kind === undefined && meant.length === 0 ? splitAnew(sitting, set) : null;
  if (again) return void putRightBy(sitting, [again]);
  const named = Object.keys(plantOf(entry)).length > 0 || entry.date !== undefined;
  const lines = meant.length > 0 || named ? meant : (saidTo(sitting) ?? justPutRight(sitting));
  const open = lines.length === 0 && !named;
  const told = open && kind === undefined ? ofAnswerGiven(sitting, set) : undefined;
  if (told === null) return;
  if (told) return void setSlots(sitting, [told], set);
  const undone =
    named && ('count' in set || 'rooted' in set) ? toldAnew(sitting, kind, plantOf(entry), set) : null;
  if (undone) return postAnew(sitting, withSlots(sitting.ledger, undone.posting, undone.set));
  const other =
    named && kind === undefined && meant.length === 0 ? deedOfOther(sitting, plantOf(entry), set) : null;
  if (other) return void setSlots(sitting, [other], { ...plantOf(entry), ...set });
  const likely = candidatesFor(sitting.ledger, entry, set, lines, kind).filter(
    (each) => !deniesOther(sitting, each) || !(open || deniesAll(sitting, plantOf(entry), set)),
  );
  const candidates = whereSaid(ofDeedTold(sitting.text, open ? saidSo(sitting, likely, set) : likely), set);
  const [only, another] = candidates;
  const anew = only || kind === undefined ? null : takenBackLast(sitting, kind);
  // "It was the Ember Fox I moved": what was taken back, of the plant that is named now.
  if (anew) postAnew(sitting, withSlots(sitting.ledger, anew, { ...plantOf(entry), ...set }));
  else if (!only && !takesAsNote(sitting, kind)) sitting.reply.text.push(nothingToAmend);
  else if (!only) return;
  else if (another && !sameNote(candidates)) ask(sitting, set, candidates);
  else if (another && 'date' in set) setSlots(sitting, candidates, set);
  else if (another) ask(sitting, set, candidates);
  else
    setSlots(
      sitting,
      [kind === undefined ? fittingOf(sitting, only, entry, set) : only],
      inTime(sitting, only, set),
    );
}

function postAnew(sitting: Sitting, posting: Posting): void {
  const line = sitting.post(posting);
  if (typeof line === 'number') sitting.reply.lines.push(line);
  else sitting.reply.text.push(refusalWords(line, null, speechOf(sitting)));
}

/** "Make that seven on the sill", of six there and six elsewhere: the one that is there. */
function whereSaid(likely: readonly StandingEntry[], { place }: Slots): readonly StandingEntry[] {
  const there = likely.filter(
    ({ entry }) =>
      typeof place === 'string' &&
      (entry as { readonly place?: string }).place?.toLowerCase() === place.toLowerCase(),
  );
  return there.length === 1 ? there : likely;
}

/** "Eight, not nine", where the last note tells of twelve and one before it of nine: that one. */
function saidSo(sitting: Sitting, likely: readonly StandingEntry[], set: Slots): readonly StandingEntry[] {
  const { ledger, origin, text } = sitting;
  const number = deniedNumber(text);
  if (number === undefined || !('count' in set) || likely.some(({ entry }) => numberOf(entry) === number))
    return likely;
  const [only, another] = ledger.standing.filter(
    ({ entry, journal }) =>
      numberOf(entry) === number && takes(entry, set) && origin.at - journal.at <= FRESH_MS,
  );
  return only && !another ? [only] : likely;
}

/** A day as the entry needs it: "make it Saturday" of a reminder is the coming one. */
function inTime(sitting: Sitting, { entry }: StandingEntry, set: Slots): Slots {
  if (!('date' in set) || (entry.kind !== 'remind' && entry.kind !== 'target')) return set;
  const { origin, settings, text } = sitting;
  return { ...set, date: dayIn(text, origin.at, settings, 'future') ?? set['date'] };
}

/** "Make it six" behind a correction puts the same entry right once more: its lines; none where something was noted since. */
function justPutRight({ journal }: Sitting): readonly Line[] {
  const deed = lastDeed(journal);
  if (deed?.what !== 'correction') return [];
  return deed.lines.flatMap((line) => {
    const what = journal[line - 1]?.what;
    return what && isAmendment(what) ? [what.amends] : [];
  });
}

/** "The Ember Fox were 12", after two were lost of ten: where the last entry cannot read so, the plant's first is meant. */
function fittingOf(sitting: Sitting, last: StandingEntry, about: Amend, set: Slots): StandingEntry {
  const fits = (each: StandingEntry) =>
    sitting.conflictsOf(amendmentsOf(sitting.ledger, [each], set)).length === 0;
  const plant = plantOf(about);
  if (Object.keys(plant).length === 0 || !('count' in set)) return last;
  const [begun, another] = preferBeginnings(
    sitting.ledger.standing.filter((each) => takes(each.entry, set) && isAbout(sitting.ledger, each, plant)),
  );
  if (!begun || another || !fits(begun)) return last;
  // "The dahlia was 11", where 12 were taken and 4 given away since: what it is nearer to.
  const far = ({ entry }: StandingEntry) => Math.abs(Number(set['count']) - Number(numberOf(entry)));
  return !fits(last) || far(begun) < far(last) ? begun : last;
}

/** "They were Copper Lantern": where nothing else is to read otherwise, the plant is. */
function withPlantSet(said: Amend): { readonly entry: Amend; readonly set: Slots } {
  const set = said.set ?? {};
  const plant = plantOf(said);
  if (Object.keys(set).length > 0 || Object.keys(plant).length === 0) return { entry: said, set };
  return { entry: withoutSlots(said, 'variety', 'crop', 'batch') as Amend, set: { ...plant } };
}

function ask(sitting: Sitting, set: Slots, candidates: readonly StandingEntry[]): void {
  sitting.ask({ ask: 'whichLine', set: { ...set }, lines: candidates.map(({ line }) => line) });
}

/** Sets slots of standing entries, or says what would no longer follow; answers whether they are right now. */
export function setSlots(sitting: Sitting, standing: readonly StandingEntry[], set: Slots): boolean {
  const lots = lotsMeant(sitting, standing, set);
  const [lot, another] = lots;
  const [only] = standing;
  if (only && lot && another) {
    sitting.ask({ ask: 'otherBatch', line: only.line, labels: lots.map(({ label }) => label) });
    return true;
  }
  const whole = lot ? { ...withoutSlots(set, 'variety', 'crop'), batch: lot.label } : set;
  return putRightBy(sitting, amendmentsOf(sitting.ledger, standing, whole));
}

/** The same, each entry with slots of its own; no two of them stand on one line of the journal. */
export function setSlotsOfEach(
  sitting: Sitting,
  each: readonly (readonly [StandingEntry, Slots])[],
): boolean {
  return putRightBy(
    sitting,
    each.flatMap(([standing, set]) => amendmentsOf(sitting.ledger, [standing], set)),
  );
}

/** What sets the slots on each of these entries; none where all say so already. */
export function amendmentsOf(ledger: Ledger, standing: readonly StandingEntry[], set: Slots): Amendment[] {
  const amendments: Amendment[] = [];
  for (const { line } of standing) {
    const onLine = standingOn(ledger, [line]).map(({ entry }) => entry);
    const changed = onLine.map((entry) =>
      standing.some((each) => each.entry === entry) ? withSlots(ledger, entry, set) : entry,
    );
    if (JSON.stringify(changed) !== JSON.stringify(onLine))
      amendments.push({ amends: line, entries: changed });
  }
  return amendments;
}

/** Makes amendments and says so; where others would no longer follow, changes nothing and says which. */
export function putRightBy(sitting: Sitting, amendments: readonly Amendment[]): boolean {
  if (amendments.length === 0) {
    sitting.reply.text.push(sameAlready);
    return true;
  }
  const conflicts = sitting.amend(amendments);
  if (conflicts.length > 0) {
    sitting.reply.text.push(wouldNotFollow(reasons(sitting, conflicts, amendments)));
    return false;
  }
  const lines = amendments.map(({ amends }) => amends);
  const speech = speechOf(sitting);
  const now = standingOn(sitting.ledger, lines).map((each) => receipt(doneOf(sitting.ledger, each), speech));
  sitting.reply.text.push(putRight(now));
  const last = sitting.journal.length;
  sitting.reply.buttons.push([{ label: undoLabel, data: `revert:${last - amendments.length + 1}-${last}` }]);
  sitting.reply.lines.push(...lines);
  return true;
}

function reasons(
  sitting: Sitting,
  conflicts: readonly Conflict[],
  amendments: readonly Amendment[],
): string[] {
  const speech = speechOf(sitting);
  return conflicts.map(({ line, refusal }) => {
    const own = amendments.some(({ amends }) => amends === line);
    const [standing] = standingOn(sitting.ledger, [line]);
    if (own || !standing) return refusalWords(refusal, null, speech).replace(/\.$/, '');
    return `${briefly(doneOf(sitting.ledger, standing), speech)}: ${refusalWords(refusal, null, speech).replace(/\.$/, '')}`;
  });
}

/** The entry with these slots set. Another plant takes the place of the whole plant: its batch is found anew. */
export function withSlots(ledger: Ledger, entry: Posting, set: Slots): Posting {
  const { variety, crop, batch, count, ...rest } = set;
  if (entry.kind === 'rename') return renamedAnew(ledger, entry, variety);
  const changed: Record<string, unknown> = { ...entry, ...rest };
  if (count !== undefined) changed[entry.kind === 'check' ? 'rooted' : 'count'] = count;
  const plant = plantOf({ variety, crop, batch } as Plant);
  if (Object.keys(plant).length === 0) return changed as unknown as Posting;
  if (entry.kind === 'strike' || entry.kind === 'receive')
    return {
      ...changed,
      ...(variety === undefined ? {} : { variety }),
      ...(crop === undefined ? {} : { crop }),
    } as Posting;
  const [only, another] =
    plant.batch === undefined
      ? matching(ledger, plant)
      : [batchLabelled(ledger, plant.batch)].flatMap((b) => b ?? []);
  delete changed['variety'];
  delete changed['crop'];
  delete changed['batch'];
  if (only && !another) return { ...changed, batch: only.label } as unknown as Posting;
  return { ...changed, ...plant } as unknown as Posting;
}
