/** Short replies to answers, small talk and what was not understood. */
import type { Batch } from '../ledger/batch.js';
import { batchWords } from './plants.js';
import { listWords } from './speech.js';

const notYetOf: Readonly<Record<string, string>> = {
  check: 'none rooted yet',
  potOn: 'not potted on yet',
  pinch: 'not pinched yet',
  hardenOff: 'not hardening off yet',
  plantOut: 'not planted out yet',
  strike: 'no cuttings taken',
  tend: 'not done yet',
};

export function closedNotYet({
  about,
  batch,
  variety,
}: {
  about: string;
  batch?: string;
  variety?: string;
}): string {
  const plant = batch ?? variety;
  return `All right, ${plant ? `${plant} ` : ''}${notYetOf[about] ?? 'not yet'}. Tell me when it is.`;
}

export const nothingOpen =
  'I have no open question that this would answer. Say what you did, for example “EF1: 3 rooted”.';

export function nothingOpenWith(batch: Batch, value: string): string {
  return `I’m not sure what “${value}” answers. If it is about ${batchWords(batch)}, say for example “${batch.label}: 3 rooted” or “lost 2 of ${batch.label}”.`;
}

export const nothingWaits =
  'That message waits for no answer. Say it with the plant’s name, for example “Ember Fox: 3 rooted”.';

/** To thanks. */
export const welcome = 'You’re welcome.';

export const notANote = 'Nothing in that to note. Say what you did or saw, or ask “what’s due?”.';

export function notUnderstood(words: string): string {
  return `I don’t follow “${words}”, so I’ve noted nothing. Say it with the plant and a number, for example “lost 2 of EF1”.`;
}

/** To "make that 3" behind what was not understood. */
export const missedBefore =
  'I didn’t follow the note before this one, so I’ve put nothing right. Say the whole of it with the plant, for example “lost 3 of EF1”.';

export const leftIt = 'All right, left out.';
export const settledAlready = 'That is settled already.';
export const noOther = 'I know of no other that it could be, so I’ve left it as it was.';
export const justOnce = 'All right, once only.';
export const buttonGone = 'That button is too old to work. Say it in words instead.';

export function whichPrompt(value: string, plants: readonly string[]): string {
  return `Is “${value === 'notYet' ? 'not yet' : value}” for ${listWords(plants, 'or')}?`;
}

export const forgotten = 'I’ve dropped an earlier question that went unanswered; say it again when you know.';

export function kindWords(what: 'photo' | 'sticker' | 'forwarded' | 'voice' | 'unknown'): string {
  switch (what) {
    case 'photo':
      return 'A fine sight, but I can’t read pictures. Tell me in words what you did or saw.';
    case 'sticker':
      return 'Thank you! I only read words, though.';
    case 'forwarded':
      return 'I only note your own words, so that nothing is logged that you didn’t do.';
    case 'voice':
      return 'I can’t make out voice notes here. Type it for me, please.';
    case 'unknown':
      return 'I can’t read that. Tell me in words what you did or saw.';
  }
}

/** A lot that had no name has been given one. */
export const lotCalled = (label: string, variety: string): string => `${label} is ${variety} from now on.`;
