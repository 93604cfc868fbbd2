/** "That was three I lost, and I've moved the rest": what puts a deed right, and something new told behind it. */
import type { ReadNote } from '../../language/note.js';
import { amend } from './amending.js';
import type { Context } from '../answers/answering.js';
import type { Plant } from '../../ledger/entry.js';
import { isAmendment } from '../../ledger/posting.js';
import { named } from '../../ledger/reach.js';
import { isLogged } from '../noting.js';
import { readIn } from '../reading/reading.js';
import type { Sitting } from '../sitting.js';
import { plantSaid } from '../reading/slots.js';
import { comesBack, givesBack } from './come-back.js';
import { toldByReport } from './as-reported.js';
import { contradicts } from './contradicting.js';
import { recallsDeed } from './deed-recalled.js';
import { withoutVocative } from './vocatives.js';
import { LONGEST } from './doubts.js';
import { carriesAway, explains } from './explaining.js';
import { kindTold } from './few-words.js';
import { findsMore } from './found-more.js';
import { isAnswering } from './is-answering.js';
import { namesAlike } from './named-alike.js';
import { tellsNumbers } from './numbers-told.js';
import { tellsOfPartner } from './partner-told.js';

const JOINT =
  /^(.{8,90}?)(?:,? (?:and|but|plus|also)(?: also)?|[,;.]| -+) (?=(?:also |then |today )?(?:i|we|i['’]ve|we['’]ve|another|gave|sold|lost|took|moved|potted|planted|pinched|watered|put|have|dropped|broke|snapped|binned|chucked|knocked|squashed|killed)\b)(.{8,})$/i;

/** "I have planted": a deed without what it was done to. */
const BARE_DEED =
  /^(?:i|we)(?: have|['’]ve| had)? (?:\p{L}+ed|sold|lost|gave|given|took|taken|put|cut|struck|stuck)(?: (?:on|out|up|off|away|in|back))?[.!]?$/iu;

const ONE_BROKEN =
  /^(?:i )?(?:dropped|broke|snapped|binned|chucked|knocked over|squashed|killed|lost) (?:one|two|three|four|five|six|\d+)(?=$|[,.;!]| and\b)/i;

/** "Hang about, four of those are alive. It's only two lost." */
const BEHIND_TALK = /^([^.!?]{6,90}[.!]) ([^.!?]{6,90}[.!]?)$/;

/** Whether a text puts something right, alone or before a new note; the rest of it, where there is any, is still to be acted on. */
export function putsRight(
  sitting: Sitting,
  text: string,
  read: ReadNote,
  context: Context,
): { readonly rest: string } | null {
  if (rights(sitting, text, read, context)) return { rest: '' };
  const [, first = '', behind = ''] = JOINT.exec(withoutVocative(text).slice(0, LONGEST + 1)) ?? [];
  const rest = withPlantOf(sitting, first, behind);
  if (text.length > LONGEST) return null;
  const [, lead = '', last = ''] = BEHIND_TALK.exec(text.trim()) ?? [];
  const isTalk =
    lead !== '' &&
    readIn(sitting, lead).entries.length === 0 &&
    read.entries.every(({ entry }) => entry.kind === 'amend');
  if (isTalk && rights(sitting, last, readIn(sitting, last), context)) return { rest: '' };
  if (first === '') return null;
  // "Ten, not nine, I have planted": what it was that was ten.
  if (BARE_DEED.test(rest.trim()) && rights(sitting, first, readIn(sitting, first), context))
    return { rest: '' };
  const isNote = readIn(sitting, rest).entries.some(
    ({ entry }) => isLogged(entry) && entry.kind !== 'remark',
  );
  if (!isNote) return null;
  const told = readIn(sitting, first);
  const before = sitting.journal.length;
  return rights(sitting, first, told, context) || amendsAlone(sitting, first, told, read, context)
    ? { rest: isPutRightIn(sitting, before, rest) ? '' : rest }
    : null;
}

/** "Dropped one" behind "oops, 4 Salt Harrier": of those. */
function withPlantOf({ ledger }: Sitting, first: string, rest: string): string {
  const told = first.toLowerCase();
  const name = [...ledger.varieties.keys()].find((each) => told.endsWith(` ${each.toLowerCase()}`));
  return name === undefined ? rest : rest.replace(ONE_BROKEN, (words) => `${words} ${name}`);
}

/** "Those were four, not three, I threw them away myself": the deed that was put right, and no other. */
function isPutRightIn(sitting: Sitting, before: number, rest: string): boolean {
  const amended = sitting.journal.slice(before).map(({ what }) => what);
  const [only, another] = readIn(sitting, rest).entries;
  if (only && !another && (explains(sitting, before, only) || carriesAway(sitting, rest, only))) return true;
  if (!only || another || !/\b(?:them|those|these|it)\b/i.test(rest)) return false;
  const { entry, sources } = only;
  return (
    !('count' in entry) &&
    !named(plantSaid(entry as Plant, sources)) &&
    amended.some((what) => isAmendment(what) && what.entries.some(({ kind }) => kind === entry.kind))
  );
}

/** "It was cold, and I watered the rest": of the day, and of no loss. */
const WEATHER = /\b(?:cold|chilly|freezing|frosty|cool|warm|hot|boiling|dry|wet|damp|humid)[,.]?$/i;

/**
 * "It was three, and I watered the rest", "make that four, and I lost a Marble Wren": of the two the whole text is read
 * as the note alone, or as one correction of the plant that the note names.
 */
function amendsAlone(
  sitting: Sitting,
  first: string,
  { entries }: ReadNote,
  whole: ReadNote,
  context: Context,
): boolean {
  const [only, another] = entries;
  if (!only || another || only.entry.kind !== 'amend' || isAnswering(sitting, context)) return false;
  if (WEATHER.test(first)) return false;
  const isRead = whole.entries.some(({ entry }) => entry.kind === 'amend');
  // "It was Sunday and I took three Marble Wren" tells of the three.
  if (isRead && (whole.entries.length > 1 || named(only.entry) || 'date' in (only.entry.set ?? {})))
    return false;
  amend(sitting, only.entry, context.lines, kindTold(sitting, first, only.entry));
  return true;
}

const rights = (sitting: Sitting, text: string, read: ReadNote, context: Context): boolean =>
  tellsNumbers(sitting, text, context) ||
  contradicts(sitting, text, read, context) ||
  recallsDeed(sitting, text, context) ||
  tellsOfPartner(sitting, text, context.lines) ||
  (!isAnswering(sitting, context) && read.entries.length === 0 && namesAlike(sitting, text)) ||
  (!isAnswering(sitting, context) &&
    read.entries.every(({ entry }) => !isLogged(entry) || entry.kind === 'remark') &&
    findsMore(sitting, text)) ||
  comesBack(sitting, text) ||
  toldByReport(sitting, text) ||
  givesBack(sitting, text);
