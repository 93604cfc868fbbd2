/** An answer to a prompt becomes the entry that it settles; what is told unasked settles it too. */
import { addDays, type Day } from '../../calendar/day.js';
import type { Span } from '../../calendar/span.js';
import { alive, isOf } from '../../ledger/batch.js';
import type { AnswerValue, LoggedEntry, Plant } from '../../ledger/entry.js';
import type { Ledger, StandingEntry } from '../../ledger/ledger.js';
import type { Line } from '../../ledger/posting.js';
import { closedNotYet, nothingWaits } from '../../words/answers.js';
import { standingOn } from '../batches/deeds.js';
import { postEntry } from '../noting.js';
import { daysUntilAskedAgain } from '../../outlook/due.js';
import { close, isGone, putOff } from './given-prompts.js';
import type { Sitting } from '../sitting.js';
import type { Prompt } from '../talk.js';
import type { PromptAbout } from '../turn.js';

/** The entry that `value` settles; null where it means "not yet", so that nothing was done. */
export function settledEntry(about: PromptAbout, value: AnswerValue): LoggedEntry | null {
  const plant = plantAskedAbout(about);
  const none = value === 'no' || value === 'none' || value === 'notYet' || value === 0;
  switch (about.about) {
    case 'check':
      return { kind: 'check', ...plant, rooted: none ? 'none' : value === 'yes' ? 'some' : value };
    case 'potOn':
    case 'pinch':
    case 'hardenOff':
    case 'plantOut':
      if (none) return null;
      return { kind: about.about, ...plant, ...(typeof value === 'number' ? { count: value } : {}) };
    case 'strike':
      if (none) return null;
      return { kind: 'strike', ...strikeOf(about), ...(typeof value === 'number' ? { count: value } : {}) };
    case 'tend':
      return none
        ? null
        : {
            kind: 'tend',
            ...plant,
            ...(about.care ? { care: about.care } : {}),
            ...(about.place ? { place: about.place } : {}),
          };
  }
}

/** Posts what the answer settles; the prompt is closed either way. */
export function settle(sitting: Sitting, prompt: Prompt, value: AnswerValue, date?: Day | Span): void {
  close(sitting, prompt);
  if (isGone(sitting, prompt)) {
    sitting.reply.text.push(nothingWaits);
    return;
  }
  const settled = ofThoseAskedAbout(sitting, settledEntry(prompt.about, value));
  const entry = settled && date !== undefined ? ({ ...settled, date } as LoggedEntry) : settled;
  if (entry === null) {
    const days = daysUntilAskedAgain(prompt.about.about);
    putOff(sitting, [prompt.occasion], addDays(sitting.today, days));
    sitting.reply.text.push(closedNotYet(prompt.about));
    return;
  }
  const lines = postEntry(sitting, entry);
  const [line] = lines;
  if (line !== undefined && entry.kind === 'check' && entry.rooted === 'some' && entry.batch !== undefined)
    sitting.ask({ ask: 'howMany', line, batch: entry.batch });
}

/** Where some were potted on before, "done" is of those that the prompt counted. */
function ofThoseAskedAbout({ ledger }: Sitting, entry: LoggedEntry | null): LoggedEntry | null {
  if (entry?.kind !== 'potOn' || entry.count !== undefined || entry.batch === undefined) return entry;
  const batch = ledger.batches.get(entry.batch);
  const left = batch ? Math.min(batch.rooted, alive(batch)) - batch.pottedOn : 0;
  return batch && batch.pottedOn > 0 && left > 0 ? { ...entry, count: left } : entry;
}

/** The batch asked about, else its variety. */
function plantAskedAbout(about: PromptAbout): Plant {
  if (about.batch !== undefined) return { batch: about.batch };
  return about.variety === undefined ? {} : { variety: about.variety };
}

function strikeOf({ variety, crop }: PromptAbout): Pick<Plant, 'variety' | 'crop'> {
  return { ...(variety === undefined ? {} : { variety }), ...(crop === undefined ? {} : { crop }) };
}

/** What was told of a batch in so many words settles the open prompts about it; a later look asks anew. */
export function settleBy(sitting: Sitting, lines: readonly Line[]): void {
  const told = standingOn(sitting.ledger, lines);
  const settled = sitting.talk.prompts.filter(
    ({ open, about }) => open && told.some((each) => settles(each, about, sitting.ledger)),
  );
  for (const prompt of settled) close(sitting, prompt);
  const keys = new Set(settled.map(({ occasion }) => occasion));
  if (keys.size > 0) sitting.change({ mentioned: sitting.talk.mentioned.filter((key) => !keys.has(key)) });
}

function settles({ entry, touched }: StandingEntry, about: PromptAbout, ledger: Ledger): boolean {
  if (about.about === 'strike') return entry.kind === 'strike' && touched.some((label) => isAsked(label));
  const isOfKind = entry.kind === about.about || moots(entry.kind, about.about);
  return isOfKind && touched.includes(about.batch ?? '');

  /** Cuttings are asked for of a variety, or else of a crop. */
  function isAsked(label: string): boolean {
    const batch = ledger.batches.get(label);
    const { variety, ...crop } = strikeOf(about);
    return batch !== undefined && isOf(batch, variety === undefined ? crop : { variety });
  }
}

/** Potting on answers whether roots are there; planting out answers all. */
function moots(told: string, asked: string): boolean {
  const order = ['check', 'potOn', 'pinch', 'hardenOff', 'plantOut'];
  return order.includes(told) && order.indexOf(told) > order.indexOf(asked);
}
