/** A text from a grower: an answer, a button's words, an instruction, a question, a correction or a note. */
import { withoutCourtesy } from '../language/row/courtesies.js';
import { withoutSlips } from '../language/row/spelling/without-slips.js';
import type { HeardWord, ReadNote } from '../language/note.js';
import type { Entry } from '../ledger/entry.js';
import { answersByName } from './answers/answer-by-name.js';
import { answer } from './answers/answer-given.js';
import { amend } from './correcting/amending.js';
import { answerQuestion } from './questions/questions.js';
import { missedBefore, notANote, notUnderstood, nothingWaits, welcome } from '../words/answers.js';
import { askedEarlier } from './answers/asked-earlier.js';
import { type Context, isBare, pendingOf } from './answers/answering.js';
import { callsIt } from './answers/calling-it.js';
import { asTheySay } from './correcting/as-reported.js';
import { withPlantAtFault } from './correcting/at-fault.js';
import { excused } from './correcting/doubts.js';
import { carriesAway, explains } from './correcting/explaining.js';
import { putsRight } from './correcting/beside-a-note.js';
import { isOfMissed, notFollowed } from './correcting/behind-missed.js';
import { deniesAlone } from './correcting/denied-alone.js';
import { isOfAnother } from './correcting/of-another.js';
import { isOfJustTold } from './correcting/just-told.js';
import { hasSecondThoughts, kindTold } from './correcting/few-words.js';
import { isAbout } from './correcting/entry-meant.js';
import { follow } from './settings/instructing.js';
import { leansOnLast } from './leaning/leaning.js';
import { rightInPart } from './correcting/right-in-part.js';
import { namesLots, namesLotTold } from './leaning/lots-unnamed.js';
import { isLogged, takeNote } from './noting.js';
import { matchButton } from './answers/offering.js';
import { asksWhetherMeant } from './reading/meaning.js';
import { contextOf, readIn, wordsNamed } from './reading/reading.js';
import { oneMoreOf } from './answers/one-more.js';
import { ownLines, readSaid, unprompted } from './reading/reading-said.js';
import { replyToAsk } from './answers/replying.js';
import { greets, start } from './settings/starting.js';
import { withPlacesByOthers } from './reading/places-by-others.js';
import type { Ask } from './talk.js';
import type { Sitting } from './sitting.js';
import { putsOff } from './answers/not-now.js';
import { putsBack } from './correcting/putting-back.js';
import { snoozePrompts } from './prompts/snoozing.js';
import { tap } from './answers/tapping.js';
import { tellsAgain } from './correcting/telling-again.js';
import { thanks } from './reading/thanking.js';
import { undoesPlant, undoLast } from './correcting/undoing.js';
import { undoneToo } from './correcting/undone-too.js';
import { batchLabelled } from '../ledger/ledger.js';
import { named, plantOf } from '../ledger/reach.js';
import { whichLedger } from '../words/instructions.js';
import { asksAgain } from './leaning/repeating.js';
import { asksWhichLedger, switchAsked } from './settings/switching.js';

/** What Telegram sends when a chat is opened, bare or from the square code on a plant label. */
const OPENS = /^\/start(?:\s+b_(\S{1,20}))?(?:\s|$)/;

interface Said {
  /** The words as they were recognised, where the text was spoken. */
  readonly heard?: readonly HeardWord[] | undefined;
  /** Whether the grower has said that it is meant as the rules read it. */
  readonly meant?: boolean | undefined;
}

export function sayText(
  sitting: Sitting,
  text: string,
  context: Context,
  { heard, meant = false }: Said = {},
): void {
  sitting.text = excused(text);
  const opened = OPENS.exec(text);
  if (opened) {
    open(sitting, text, opened[1]);
    return;
  }
  const ledger = switchAsked(sitting.world.ledgers, text);
  if (ledger !== null && !sitting.world.group) {
    remember(sitting, text, false);
    sitting.errands.push({ kind: 'switchLedger', name: ledger, create: false });
    return;
  }
  if (asksWhichLedger(text)) {
    remember(sitting, text, false);
    sitting.reply.text.push(whichLedger(sitting.world.current, sitting.world.ledgers));
    return;
  }
  const known = contextOf(sitting.ledger);
  const spelt = heard ? text : withoutSlips(sitting.text, known, () => wordsNamed(sitting, sitting.text));
  const button = matchButton(sitting, spelt, context);
  if (button) {
    remember(sitting, text, false);
    tap(sitting, button.data, button.key);
    return;
  }
  if (putsBack(sitting, spelt)) {
    remember(sitting, text, false);
    return;
  }
  if (!context.ask && context.prompts.length > 0 && putsOff(spelt)) {
    remember(sitting, text, false);
    snoozePrompts(sitting, context.prompts);
    return;
  }
  // "Ok thanks" to a prompt about roots is no yes to it.
  if (!context.ask && thanks(spelt)) {
    remember(sitting, text, false);
    sitting.reply.text.push(welcome);
    return;
  }
  sitting.text = withPlacesByOthers(sitting, undoneToo(sitting, spelt));
  const said = withPlantAtFault(sitting, asTheySay(withoutCourtesy(sitting.text, known)));
  const pending = isOfJustTold(sitting, said, context)
    ? undefined
    : (oneMoreOf(sitting, said, context) ?? pendingOf(context));
  const how = { pending, heard, weighed: !meant };
  const first = readSaid(sitting, said, how);
  const isNamed = namesLots(sitting, first) || namesLotTold(sitting, said, first);
  const read = isNamed ? readSaid(sitting, said, how) : first;
  const isApart = context.ask !== null && isOfAnother(sitting, context.ask, said, read);
  const free = isApart ? { ...context, ask: null } : context;
  if (isOfMissed(sitting, said, read, context)) {
    remember(sitting, text, false);
    notFollowed(sitting, missedBefore);
    return;
  }
  if (deniesAlone(sitting, said, read, context)) {
    remember(sitting, text, false);
    return;
  }
  const right = read.instruction ? null : putsRight(sitting, said, read, free);
  if (right) {
    remember(sitting, text, right.rest !== '');
    if (right.rest !== '') act(sitting, right.rest, readIn(sitting, right.rest), free);
    return;
  }
  const ask = isApart ? null : (context.ask ?? askedEarlier(sitting, said, read, context));
  if (ask && !correctsSince(sitting, ask, read) && replyToAsk(sitting, ask, said, read)) {
    remember(sitting, text, false);
    return;
  }
  const counts = read.entries.some(({ entry }) => isLogged(entry));
  if (counts && asksAgain(sitting, text)) return;
  remember(sitting, text, counts);
  act(sitting, said, read, free);
}

/** "I meant 12", "actually it was 3" are of what was noted after the question was put; "it was 6" is the question's answer. */
function correctsSince({ ledger, world, text }: Sitting, { askedAt }: Ask, { entries }: ReadNote): boolean {
  const last = ledger.standing.at(-1)?.journal;
  return (
    entries.some(({ entry }) => entry.kind === 'amend') &&
    hasSecondThoughts(text) &&
    last !== undefined &&
    (last.postedAt > askedAt || (last.postedAt === askedAt && /\bmeant\b/i.test(text))) &&
    last.source?.chat === world.chat
  );
}

function open(sitting: Sitting, text: string, label: string | undefined): void {
  remember(sitting, text, false);
  const batch = label === undefined ? undefined : batchLabelled(sitting.ledger, label);
  if (batch) answerQuestion(sitting, { kind: 'question', topic: 'status', batch: batch.label });
  else if (!sitting.talk.welcomed) start(sitting);
  else answerQuestion(sitting, { kind: 'question', topic: 'help' });
}

/** Does what a note that is read says. */
export function act(sitting: Sitting, text: string, read: ReadNote, context: Context): void {
  if (read.instruction) {
    follow(sitting, read.instruction);
    return;
  }
  if (context.forgotten && isBare(read)) {
    sitting.reply.text.push(nothingWaits);
    return;
  }
  if (!context.forgotten && leansOnLast(sitting, text, read, context)) return;
  if (read.entries.length === 0 && !context.explicit && answersByName(sitting, text, context)) return;
  if (read.entries.length === 0) {
    if (!sitting.talk.welcomed && greets(text)) return void start(sitting);
    if (undoesPlant(sitting, text) || asksWhetherMeant(sitting, text, read, context)) return;
    const batch = batchLabelled(sitting.ledger, text.trim().replace(/[?!.]$/, ''));
    if (!batch && !context.forgotten && rightInPart(sitting, text, context, false, act)) return;
    if (batch) return void answerQuestion(sitting, { kind: 'question', topic: 'status', batch: batch.label });
    const nothing = context.forgotten ? nothingWaits : notANote;
    notFollowed(sitting, read.unknown && read.unknown.trim() !== '' ? notUnderstood(read.unknown) : nothing);
    return;
  }
  const [only, another] = read.entries;
  if (only && !another && carriesAway(sitting, text, only)) return void sitting.reply.text.push(notANote);
  const isRemark = read.entries.every(({ entry }) => entry.kind === 'remark');
  if (isRemark && !context.forgotten && rightInPart(sitting, text, context, true, act)) return;
  if (!context.explicit && tellsAgain(sitting, text, unprompted(sitting, text, read, context))) return;
  // "Undo. Lost 3 Moss Cardinal", "it was four I gave. Lost 2": what is taken back or put right stood before.
  let undone = 0;
  const actOnEach = (entries: ReadNote['entries']) => {
    for (const [at, { entry }] of entries.entries()) {
      // "Undo that. It was three": the same entry is meant by both.
      if (entry.kind === 'undo' && isOfTheSame(sitting, entries[at + 1]?.entry)) continue;
      if (entry.kind === 'undo') undoLast(sitting, undone++);
      else actOn(sitting, entry, text, context);
    }
  };
  const noted = read.entries.findIndex(({ entry }) => isLogged(entry));
  const since = sitting.journal.length;
  actOnEach(noted < 0 ? [] : read.entries.slice(0, noted).filter(({ entry }) => isOfBefore(entry)));
  const isExplained =
    read.entries.length === noted + 1 &&
    read.entries.slice(noted).some((each) => explains(sitting, since, each));
  if (isExplained) return;
  takeNote(sitting, read, sitting.origin, context.explicit ? undefined : pendingOf(context));
  actOnEach(read.entries.filter(({ entry }, at) => noted < 0 || at > noted || !isOfBefore(entry)));
}

/** A value alone, with nothing that tells of which entry; or of the plant that was told of last ("three Moss Cardinal, not Marble Wren"). */
function isOfTheSame({ ledger }: Sitting, entry: Entry | undefined): boolean {
  if (entry?.kind !== 'amend' || entry.date !== undefined) return false;
  const last = ledger.standing.at(-1);
  return !named(entry) || (last !== undefined && isAbout(ledger, last, plantOf(entry)));
}

const isOfBefore = ({ kind }: Entry): boolean => kind === 'undo' || kind === 'amend';

function actOn(sitting: Sitting, entry: Entry, text: string, context: Context): void {
  switch (entry.kind) {
    case 'amend':
      if (callsIt(sitting, text, entry, context))
        answer(sitting, { kind: 'answer', value: Number(entry.set?.count) }, text, context);
      else
        amend(
          sitting,
          entry,
          context.lines.length > 0 ? context.lines : ownLines(sitting, text),
          kindTold(sitting, text, entry),
        );
      return;
    case 'question':
      answerQuestion(sitting, entry);
      return;
    case 'answer':
      answer(sitting, entry, text, context);
  }
}

export function remember(sitting: Sitting, text: string, counted: boolean): void {
  const { message, from, at } = sitting.origin;
  sitting.change({ heard: [...sitting.talk.heard, { message, from, at, text, counted }].slice(-40) });
}
