/** Takes back what was done: the last thing, or what a button belongs to; with what depended on it only after a yes. */
import { isCalled } from '../../language/grammar/entry-words.js';
import { undosMeant } from '../../language/amending/undo-meant.js';
import { type Amendment, isAmendment, type Line } from '../../ledger/posting.js';
import { briefly } from '../../words/receipts.js';
import { welcome } from '../../words/answers.js';
import {
  alreadyTakenBack, asBefore, noneToUndo, nothingToUndo, putBack, putBackLabel, takenBack,
} from '../../words/undo.js'; // prettier-ignore
import { doneOf, speechOf, standingOn } from '../batches/deeds.js';
import { isAbout } from './entry-meant.js';
import { isWithdrawn, lastDeed, takingBack } from '../books/history.js';
import { noteOf } from '../reading/reading.js';
import type { Sitting } from '../sitting.js';

/**
 * Takes back the last thing done, or the last that the words name ("undo that loss", "the Ember Fox one"); `which` of the
 * undoes in the text it is, from 0.
 */
export function undoLast(sitting: Sitting, which = 0): void {
  const { ledger } = sitting;
  const { noun, plant, to } = undosMeant(noteOf(sitting, sitting.text))[which] ?? {};
  if (noun !== undefined || plant !== undefined) {
    const named = ledger.standing.findLast(
      (each) =>
        (noun === undefined || isCalled(noun, each.entry)) &&
        (plant === undefined || isAbout(ledger, each, plant)) &&
        (to === undefined || hadBy(each.entry, to)),
    );
    if (named) takeBack(sitting, [named.line]);
    else sitting.reply.text.push(noneToUndo(noun ?? 'note', plant?.variety ?? plant?.batch ?? ''));
    return;
  }
  if (saysWhyUndone(sitting)) {
    sitting.reply.text.push(welcome);
    return;
  }
  const deed = lastDeed(sitting.journal);
  if (!deed) {
    sitting.reply.text.push(nothingToUndo);
    return;
  }
  if (deed.what === 'entry') takeBack(sitting, deed.lines);
  else revert(sitting, deed.lines);
}

/** So long after an undo are words that take nothing back by themselves its reason. */
const JUST_MS = 15 * 60_000;
const WHY_UNDONE =
  /^(?:(?:thanks|thank you|cheers|ta|ok|sorry|it was|that was|i had|i did|had)(?: the)?[,.! ]+)*(?:the )?wrong \p{L}+[.!]?$/iu;

/** "Thanks, wrong tray", right behind an undo: why it was, and not the note before it as well. */
function saysWhyUndone({ journal, origin, text, world }: Sitting): boolean {
  const last = journal.at(-1);
  return (
    WHY_UNDONE.test(text.trim()) &&
    last !== undefined &&
    isAmendment(last.what) &&
    last.what.entries.length === 0 &&
    last.source?.chat === world.chat &&
    origin.at - last.at <= JUST_MS
  );
}

const UNDO_PLANT =
  /^(?:(?:no|oh|sorry|actually|wait|please|can you|could you)[, ]+)*(?:(?<undo>undo|revert|unlog|retract|cancel|scratch)|delete|remove|erase|scrap) (?:the |that |my |those )?(?<name>[^,.;:–—-]{2,60}?)(?: (?:cuttings|ones|lot|batch|strike|please))*(?:[,.;:] .{0,80})?[.!]?$/iu;
/** So long after it was begun is a batch deleted, and not thrown away. */
const BEGUN_MS = 48 * 3_600_000;

/** "Delete the Clay Piper, they were my sister's": whether a plant is named alone, and its last note, or how it began, is taken back. */
export function undoesPlant(sitting: Sitting, text: string): boolean {
  const { ledger, origin } = sitting;
  const { undo, name = '' } = UNDO_PLANT.exec(text.trim())?.groups ?? {};
  const same = (each: string) => each.toLowerCase() === name.toLowerCase();
  const variety = [...ledger.varieties.keys()].find(same);
  const last =
    variety === undefined
      ? undefined
      : ledger.standing.findLast((each) => each.touched.length < 2 && isAbout(ledger, each, { variety }));
  if (!last) return false;
  const isBeginning = /^(?:strike|receive|stock)$/.test(last.entry.kind);
  if (isBeginning ? origin.at - last.journal.at > BEGUN_MS : undo === undefined) return false;
  takeBack(sitting, [last.line]);
  return true;
}

const hadBy = (entry: object, name: string): boolean =>
  String((entry as { readonly to?: string }).to ?? '')
    .toLowerCase()
    .split(' ')
    .includes(name);

/** Takes the entries of these lines back; asks first where others would no longer hold. */
export function takeBack(sitting: Sitting, lines: readonly Line[]): void {
  const standing = standingOn(sitting.ledger, lines);
  if (standing.length === 0) {
    sitting.reply.text.push(alreadyTakenBack);
    return;
  }
  const before = sitting.ledger;
  const speech = speechOf(sitting);
  const amendments = takingBack([...new Set(standing.map(({ line }) => line))]);
  const conflicts = sitting.amend(amendments);
  if (conflicts.length > 0) {
    const dependants = dependantsOf(sitting, amendments);
    sitting.ask({ ask: 'dependants', lines, dependants });
    return;
  }
  sitting.reply.text.push(takenBack(standing.map((each) => briefly(doneOf(before, each), speech))));
  offerPutBack(sitting, amendments.length);
}

/** All lines that fall with these, and those that fall with them. */
export function dependantsOf(sitting: Sitting, amendments: readonly Amendment[]): Line[] {
  const fallen = new Set<Line>();
  for (;;) {
    const conflicts = sitting.conflictsOf([...amendments, ...takingBack([...fallen])]);
    if (conflicts.length === 0) return [...fallen].sort((a, b) => a - b);
    const before = fallen.size;
    for (const { line } of conflicts) fallen.add(line);
    if (fallen.size === before) return [...fallen];
  }
}

/** Takes a correction back, so that its lines read as before; `lines` are those of the amendments. */
export function revert(sitting: Sitting, lines: readonly Line[]): void {
  if (lines.some((line) => isWithdrawn(sitting.journal, line))) {
    sitting.reply.text.push(alreadyTakenBack);
    return;
  }
  const amended = lines.flatMap((line) => {
    const what = sitting.journal[line - 1]?.what;
    return what && isAmendment(what) ? [what.amends] : [];
  });
  const conflicts = sitting.amend(takingBack(lines));
  if (conflicts.length > 0) {
    sitting.ask({ ask: 'dependants', lines, dependants: dependantsOf(sitting, takingBack(lines)) });
    return;
  }
  const speech = speechOf(sitting);
  const now = standingOn(sitting.ledger, amended).map((each) =>
    briefly(doneOf(sitting.ledger, each), speech),
  );
  sitting.reply.text.push(asBefore(now));
  sitting.reply.lines.push(...amended);
}

/** Undoes an undo: the last `count` lines of the journal are the amendments that took back. */
function offerPutBack(sitting: Sitting, count: number): void {
  const last = sitting.journal.length;
  sitting.reply.buttons.push([{ label: putBackLabel, data: `putBack:${last - count + 1}-${last}` }]);
}

/** Lets what these amendments took back stand again. */
export function restore(sitting: Sitting, lines: readonly Line[]): void {
  const amended = lines.flatMap((line) => {
    const what = sitting.journal[line - 1]?.what;
    return what && isAmendment(what) && what.entries.length === 0 ? [what.amends] : [];
  });
  if (amended.length === 0 || standingOn(sitting.ledger, amended).length > 0) return;
  if (sitting.amend(takingBack(lines)).length > 0) return;
  const speech = speechOf(sitting);
  const back = standingOn(sitting.ledger, amended).map((each) =>
    briefly(doneOf(sitting.ledger, each), speech),
  );
  sitting.reply.text.push(putBack(back));
  sitting.reply.lines.push(...amended);
}
