/** What leans on the last note, or the one that it replies to: puts it right, adds to it, or says the same of another plant. */
import type { ReadEntry, ReadNote } from '../../language/note.js';
import type { LoggedEntry } from '../../ledger/entry.js';
import type { Ledger } from '../../ledger/ledger.js';
import { named } from '../../ledger/reach.js';
import { noOther } from '../../words/answers.js';
import { addsToLast } from './adding.js';
import type { Context } from '../answers/answering.js';
import { countsAnew, someWereOther } from '../correcting/counted-anew.js';
import { doubtsFirst } from '../correcting/doubts.js';
import { corrects, hasSecondThoughts } from '../correcting/few-words.js';
import { misreadLabel } from '../correcting/label-misread.js';
import { wasRightFirst } from '../correcting/right-first.js';
import { countsThereAnew } from '../correcting/same-place.js';
import { saysLotOfDay, saysOther, saysOtherOnly, swapsBatch, swapsToDay } from '../correcting/swapping.js';
import { turnsRound } from '../correcting/wrong-way-round.js';
import { takes } from '../correcting/entry-meant.js';
import { goesOn } from './going-on.js';
import { hadBySomebody, hadByThem } from './had-by-them.js';
import { onlyOfLastNote } from './last-note.js';
import { SAME_PLACE, saysLikewise } from './likewise.js';
import { placesLotsTold } from './lots-placed.js';
import { namesLast } from './naming.js';
import { takeNote } from '../noting.js';
import type { Sitting } from '../sitting.js';
import { tellsStands } from './stands-told.js';
import { restWentOut } from './went-out.js';

/** So long after a gift are "they" those who had it. */
const THEY_MS = 3_600_000;

/** Whether the words put right the last note or add to it, or the one that they reply to, and that is done or asked about. */
export function leansOnLast(sitting: Sitting, text: string, read: ReadNote, context: Context): boolean {
  if (someWereOther(sitting, text)) return true;
  const isBare = read.entries.every(({ entry }) => entry.kind === 'answer');
  const isSince = (sitting.journal.at(-1)?.postedAt ?? 0) >= (context.ask?.askedAt ?? 0);
  if (isBare && isSince && wasRightFirst(sitting, text)) return true;
  if (read.entries.length === 0 && misreadLabel(sitting, text)) return true;
  if (isSince && placesLotsTold(sitting, text)) return true;
  const ofLastNote = isOfLastNote(sitting, read, context, text);
  if (ofLastNote && hasSecondThoughts(text) && !saysOther(text) && corrects(sitting, text, context.lines))
    return true;
  if (tellsLotByPlace(sitting, read) && corrects(sitting, text, context.lines)) return true;
  const last = sitting.ledger.standing.at(-1)?.journal;
  const silent = read.entries.length === 0 || read.entries.every(({ entry }) => entry.kind === 'remark');
  const isAsked = context.ask !== null && last !== undefined && last.postedAt <= context.ask.askedAt;
  if (
    (silent || saysOtherOnly(text) || putsOther(text)) &&
    !isAsked &&
    swapsBatch(sitting, text, context.lines)
  )
    return true;
  if (silent && turnsRound(sitting, text)) return true;
  if (saysLotOfDay(text) && swapsToDay(sitting, text, context.lines)) return true;
  if (saysOtherOnly(text)) {
    sitting.reply.text.push(noOther);
    return true;
  }
  const had =
    hadByThem(sitting, onlyOfLastNote(sitting, THEY_MS)?.entry as LoggedEntry | undefined, text) ??
    (silent ? hadBySomebody(sitting, text) : null);
  if (had) {
    takeNote(sitting, had);
    return true;
  }
  if (silent && restWentOut(sitting, text)) return true;
  if (ofLastNote && countsThereAnew(sitting, text)) return true;
  if (!isAsked && (silent || ofLastNote) && countsAnew(sitting, text)) return true;
  if (silent && !isAsked && tellsStands(sitting, text)) return true;
  if (silent && goesOn(sitting, text)) return true;
  if (ofLastNote && (saysLikewise(sitting, text) || addsToLast(sitting, text))) return true;
  if ((silent || ofLastNote) && namesLast(sitting, text)) return true;
  return silent && corrects(sitting, text, context.lines);
}

/** "No, it was one of the bathroom lot" behind a loss, which has no place: of which lot it was. */
function tellsLotByPlace({ ledger }: Sitting, { entries }: ReadNote): boolean {
  const [only, another] = entries;
  const last = ledger.standing.at(-1);
  if (another || !last || only?.entry.kind !== 'amend' || named(only.entry)) return false;
  const { set = {} } = only.entry;
  return (
    'place' in set &&
    Object.keys(set).every((slot) => /^(?:place|count)$/.test(slot)) &&
    !takes(last.entry, set)
  );
}

/** "I looked on the label, that was the other ones". */
const WAS_OTHER = /\b(?:it|that|they|those) (?:was|were) (?:really |actually )?the other\b/i;

/** "It was the other lot that lost two", "got that wrong, the other one". */
function putsOther(text: string): boolean {
  return (
    saysOther(text) &&
    (WAS_OTHER.test(text) ||
      doubtsFirst.test(text.trim()) ||
      /^(?:(?:no|nope)[,.]? )?(?:it|that|they|those) (?:was|were)\b/i.test(text.trim()))
  );
}

/** "Sorry, just one", "and another two": said of the last note, not to a prompt that was given since or that it replies to. */
function isOfLastNote(
  { ledger }: Sitting,
  { entries }: ReadNote,
  { prompts, explicit, ask }: Context,
  text: string,
): boolean {
  const last = ledger.standing.at(-1)?.journal;
  const [prompt] = prompts;
  return (
    last !== undefined &&
    entries.every(
      (each) =>
        each.entry.kind === 'answer' ||
        each.entry.kind === 'remark' ||
        isSameAgain(each, ledger) ||
        isOfNewPlant(each, text, ledger),
    ) &&
    (prompt === undefined || (!explicit && last.postedAt > prompt.givenAt)) &&
    (!ask || last.postedAt > ask.askedAt)
  );
}

/** "They're in 9s in the cold frame" behind a potting on: told of the same, though it could be told of another. */
function isSameAgain({ entry, sources }: ReadEntry, { standing }: Ledger): boolean {
  const last = standing.at(-1)?.entry;
  return (
    entry.kind === 'potOn' &&
    last?.kind === 'potOn' &&
    sources.batch !== 'said' &&
    sources.variety !== 'said' &&
    !('count' in entry)
  );
}

const CAME_IN =
  /\b(?:plugs?|liners?|plants?|came|come|coming|in|arrived?|bought|got|had|delivered|delivery|order|received|gave|given|rooted)\b/i;

/** "Also 6 from the Ember Fox, I have put them on the sill" behind a strike: nobody moves a plant that was not there before. */
function isOfNewPlant({ entry, sources }: ReadEntry, text: string, { standing, varieties }: Ledger): boolean {
  if (standing.at(-1)?.entry.kind !== 'strike') return false;
  // "And another 5 Rust Bonnet, same place", "plus 6 of Rust Bonnet".
  if (entry.kind === 'strike') return SAME_PLACE.test(text);
  return (
    (entry.kind === 'move' || (entry.kind === 'receive' && !CAME_IN.test(text))) &&
    sources.variety === 'said' &&
    entry.variety !== undefined &&
    ![...varieties.keys()].some((name) => name.toLowerCase() === entry.variety?.toLowerCase()) &&
    /^(?:and|also|plus|then)\b/i.test(text)
  );
}
