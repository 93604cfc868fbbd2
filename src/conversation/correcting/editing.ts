/** An edited message: what its first text logged is replaced by what it says now. */
import type { LoggedEntry, Plant } from '../../ledger/entry.js';
import { fold } from '../../ledger/fold.js';
import type { StandingEntry } from '../../ledger/ledger.js';
import type { Amendment, Line, Posting } from '../../ledger/posting.js';
import { named } from '../../ledger/reach.js';
import { notANote } from '../../words/answers.js';
import { editedAway } from '../../words/amend.js';
import { contextualAnswer, linesOfMessage, type RepliedTo } from '../answers/answering.js';
import { putRightBy } from './amending.js';
import { complete } from '../answers/completing.js';
import { standingOn } from '../batches/deeds.js';
import { takingBack } from '../books/history.js';
import { isLogged, takeNote } from '../noting.js';
import { withNumberEdited } from './number-edited.js';
import { readIn } from '../reading/reading.js';
import { remember, sayText } from '../saying.js';
import { settledEntry } from '../prompts/settling.js';
import type { Sitting } from '../sitting.js';
import type { PromptAbout } from '../turn.js';

/** Takes the new text of a message; `repliedTo` is what that message replies to, if anything. */
export function editNote(sitting: Sitting, text: string, repliedTo: RepliedTo): void {
  const { message } = sitting.origin;
  const before = sitting.talk.heard.findLast((each) => each.message === message);
  if (before?.text === text) return;
  const lines = linesOfMessage(sitting, message);
  // What the first text asked is asked no more.
  sitting.change({
    asks: sitting.talk.asks.filter(({ origin }) => origin.message !== message),
    heard: sitting.talk.heard.filter((each) => each.message !== message),
  });
  if (lines.length === 0) {
    sayText(sitting, text, contextualAnswer(sitting, repliedTo));
    return;
  }
  replace(sitting, lines, text, before?.text ?? '');
}

/** Reads the new text as if the old entries had never been, keeps their labels, and puts each line right. */
function replace(sitting: Sitting, lines: readonly Line[], text: string, before: string): void {
  const old = standingOn(sitting.ledger, lines);
  const without = fold([
    ...sitting.journal,
    ...takingBack(lines).map((what, index) => ({
      line: sitting.journal.length + 1 + index,
      at: sitting.origin.at,
      postedAt: sitting.now,
      by: null,
      source: null,
      what,
    })),
  ]).ledger;
  const whole = sitting.ledger;
  sitting.ledger = without;
  const read = readIn(sitting, text, { pending: pendingOf(old), weighed: true });
  sitting.ledger = whole;
  remember(sitting, text, true);
  const [first] = read.entries;
  if (first?.entry.kind === 'answer' && first.entry.value !== undefined && old[0]) {
    const settled = settledEntry(aboutOf(old[0]), first.entry.value);
    putRightBy(
      sitting,
      amendmentsFor(lines, settled ? [dated({ ...old[0].entry, ...settled } as LoggedEntry)] : []),
    );
    return;
  }
  const doubts = read.asks.length > 0;
  const entries = read.entries.flatMap(({ entry }) => (isLogged(entry) ? [entry] : []));
  if (entries.length === 0) {
    const renumbered = withNumberEdited(
      old.map(({ entry }) => entry),
      before,
      text,
    );
    if (renumbered) return void putRightBy(sitting, amendmentsFor(lines, renumbered));
    if (putRightBy(sitting, takingBack(lines))) sitting.reply.text.splice(0, Infinity, editedAway);
    else sitting.reply.text.push(notANote);
    return;
  }
  if (doubts) {
    // In doubt: the old entries go, and the new ones are asked about as any note's.
    if (sitting.amend(takingBack(lines)).length === 0) takeNote(sitting, read);
    return;
  }
  const labels = old.flatMap(({ entry }) =>
    entry.kind === 'strike' || entry.kind === 'receive' ? [entry.label] : [],
  );
  const postings: Posting[] = [];
  let ledger = without;
  for (const entry of entries) {
    const begins = entry.kind === 'strike' || entry.kind === 'receive';
    const label = begins ? labels.shift() : undefined;
    const about = begins ? entry : aboutOld(entry, old);
    const completed = complete(
      ledger,
      { ...about, ...(label === undefined ? {} : { label }) } as LoggedEntry,
      sitting.today,
    );
    if ('asks' in completed) {
      if (sitting.amend(takingBack(lines)).length === 0) takeNote(sitting, read);
      return;
    }
    postings.push(completed.posting);
    ledger = begins ? { ...ledger, labels: new Set([...ledger.labels, label ?? '']) } : ledger;
  }
  putRightBy(sitting, amendmentsFor(lines, postings));

  function dated(entry: LoggedEntry): Posting {
    return { ...entry, date: entry.date ?? sitting.today } as Posting;
  }
}

/** New entries stand where the old ones stood, one a line while they last, the rest on the last line. */
function amendmentsFor(lines: readonly Line[], postings: readonly Posting[]): Amendment[] {
  const places = [...new Set(lines)];
  return places.map((amends, index) => ({
    amends,
    entries: index === places.length - 1 ? postings.slice(index) : postings.slice(index, index + 1),
  }));
}

/** An edited text that no longer says which batch still means the one that it was about. */
function aboutOld(entry: LoggedEntry, old: readonly StandingEntry[]): LoggedEntry {
  const before = old.find((each) => each.entry.kind === entry.kind) ?? old[0];
  const batch = before?.touched.length === 1 ? before.touched[0] : undefined;
  return named(entry as Plant) || batch === undefined ? entry : ({ ...entry, batch } as LoggedEntry);
}

function pendingOf(old: readonly StandingEntry[]): { kind: string; batch?: string } | undefined {
  const [first] = old;
  const about = first ? aboutOf(first) : undefined;
  return about && { kind: about.about, ...(about.batch === undefined ? {} : { batch: about.batch }) };
}

/** The prompt that an entry would have settled. */
function aboutOf({ entry, touched }: StandingEntry): PromptAbout {
  const [batch] = touched;
  const kinds = ['check', 'potOn', 'pinch', 'hardenOff', 'plantOut', 'strike', 'tend'] as const;
  const about = kinds.find((kind) => kind === entry.kind) ?? 'check';
  return { about, ...(batch === undefined ? {} : { batch }) };
}
