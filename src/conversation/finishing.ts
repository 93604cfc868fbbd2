/** Ends a turn: receipts, what comes next, the question that is open, in one message. */
import type { Line } from '../ledger/posting.js';
import { isAmendment } from '../ledger/posting.js';
import { assumedWords, moreLabel, stillOpen } from '../words/replies.js';
import { refusalWords } from '../words/asks.js';
import { forgotten, notANote } from '../words/answers.js';
import { receipt } from '../words/receipts.js';
import { changeLabel, undoLabel, undoManyLabel } from '../words/undo.js';
import { PATIENCE_MS } from './answers/answering.js';
import { questionOf } from './answers/asking.js';
import { cautionsFor } from './prompts/cautioning.js';
import { doneOf, speechOf, standingOn } from './batches/deeds.js';
import { moreData, pagesOf } from './questions/paging.js';
import { whatNext } from './prompts/next-step.js';
import { settleBy } from './prompts/settling.js';
import type { Sitting } from './sitting.js';
import type { Ask } from './talk.js';
import type { Button, Incoming } from './turn.js';

/** Says what the turn came to, and puts the next question. */
export function finish(sitting: Sitting, incoming: Pick<Incoming, 'message' | 'tap' | 'text'>): void {
  const { reply } = sitting;
  const expired = expire(sitting);
  const posted = reply.lines.filter((line) => isNew(sitting, line));
  settleBy(sitting, posted);
  const standing = standingOn(sitting.ledger, posted);
  const speech = speechOf(sitting);
  const receipts = standing.map((each) => receipt(doneOf(sitting.ledger, each), speech));
  const refusals = sitting.refused.map(({ entry, refusal }) => refusalWords(refusal, entry, speech));
  const text = [
    ...receipts,
    ...assumed(sitting),
    ...reply.text,
    ...refusals,
    ...whatNext(sitting, standing),
    ...cautionsFor(sitting, standing),
  ];
  const buttons: (readonly Button[])[] = [];
  const question = putNext(sitting, text.length > 0);
  if (question) {
    text.push(question.text);
    buttons.push(...question.buttons);
  }
  if (posted.length > 0) buttons.push(receiptButtons(posted));
  buttons.push(...reply.buttons);
  if (expired) text.push(forgotten);
  // What is fetched from outside speaks for itself when it comes.
  const fetched = sitting.errands.length > 0 && buttons.length === 0;
  if (text.length === 0 && (incoming.text === undefined || fetched)) return;
  if (text.length === 0) text.push(notANote);
  const [page = '', ...pages] = pagesOf(text.join('\n'));
  if (pages.length > 0) sitting.change({ pages });
  if (
    sitting.talk.pages.length > 0 &&
    (pages.length > 0 || incoming.tap === moreData || page === text.join('\n'))
  )
    if (pages.length > 0 || isPageTurn(incoming)) buttons.push([{ label: moreLabel, data: moreData }]);
  const key = sitting.say(
    { text: page, replyTo: incoming.message, ...(buttons.length > 0 ? { buttons } : {}) },
    { lines: reply.lines },
  );
  if (question) markPut(sitting, question.ask, key);
}

function isPageTurn({ tap }: Pick<Incoming, 'tap'>): boolean {
  return tap === moreData;
}

function isNew({ journal, world }: Sitting, line: Line): boolean {
  const at = journal[line - 1];
  return line > world.journal.length && at !== undefined && !isAmendment(at.what);
}

function receiptButtons(lines: readonly Line[]): Button[] {
  const range = `${Math.min(...lines)}-${Math.max(...lines)}`;
  const label = lines.length === 1 ? undoLabel : undoManyLabel(lines.length);
  return [
    { label, data: `undo:${range}` },
    { label: changeLabel, data: `change:${range}` },
  ];
}

function assumed(sitting: Sitting): string[] {
  const labels = standingOn(sitting.ledger, sitting.assumed).flatMap(({ touched }) => touched);
  return labels.length === 0 ? [] : [assumedWords([...new Set(labels)])];
}

interface Put {
  readonly ask: Ask;
  readonly text: string;
  readonly buttons: readonly (readonly Button[])[];
}

/** The first question that was not put yet; else one that other things came between, once more. */
function putNext(sitting: Sitting, spoke: boolean): Put | null {
  const waiting = sitting.talk.asks.find((each) => each.key === null);
  if (waiting) return { ask: waiting, ...questionOf(sitting, waiting) };
  const open = sitting.talk.asks.findLast((each) => each.asked.ask === 'slot' && !each.reminded);
  if (!open || !spoke) return null;
  const { text, buttons } = questionOf(sitting, open);
  return { ask: { ...open, reminded: true }, text: stillOpen(text), buttons };
}

function markPut(sitting: Sitting, ask: Ask, key: string): void {
  sitting.change({
    asks: [...sitting.talk.asks.filter(({ id }) => id !== ask.id), { ...ask, key, askedAt: sitting.now }],
  });
}

/** Drops questions that waited too long; answers whether there were any worth a word. */
function expire(sitting: Sitting): boolean {
  const old = sitting.talk.asks.filter((each) => sitting.now - each.askedAt > PATIENCE_MS);
  if (old.length === 0) return false;
  sitting.change({ asks: sitting.talk.asks.filter((each) => !old.includes(each)) });
  return old.some(({ asked }) => /^(?:slot|heard|meant)$/.test(asked.ask));
}
