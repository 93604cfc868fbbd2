/** An answer to a prompt becomes the entry that it settles. */
import { addDays } from '../calendar/day.js';
import type { AnswerValue, LoggedEntry } from '../ledger/entry.js';
import { closedNotYet } from '../words/answers.js';
import { postEntry } from './noting.js';
import { daysUntilAskedAgain } from '../outlook/due.js';
import { close, putOff } from './given-prompts.js';
import type { Sitting } from './sitting.js';
import type { Prompt } from './talk.js';
import type { PromptAbout } from './turn.js';

/** The entry that `value` settles; null where it means "not yet", so that nothing was done. */
export function settledEntry(about: PromptAbout, value: AnswerValue): LoggedEntry | null {
  const plant = plantOf(about);
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
export function settle(sitting: Sitting, prompt: Prompt, value: AnswerValue): void {
  close(sitting, prompt);
  const entry = settledEntry(prompt.about, value);
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

function plantOf(about: PromptAbout): { batch: string } | { variety: string } | object {
  if (about.batch !== undefined) return { batch: about.batch };
  return about.variety === undefined ? {} : { variety: about.variety };
}

function strikeOf({ variety, crop }: PromptAbout): object {
  return { ...(variety === undefined ? {} : { variety }), ...(crop === undefined ? {} : { crop }) };
}
