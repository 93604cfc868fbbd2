/** Questions that an entry waits for, and why the ledger would not take it. */
import { alive, type Batch, began } from '../ledger/batch.js';
import type { Care, LoggedEntry, Manner, Plant } from '../ledger/entry.js';
import type { Refusal } from '../ledger/refusal.js';
import { batchWords, careWords, plantWords } from './plants.js';
import { dayWords, listWords, many, type Speech } from './speech.js';

/** What is known of the batches when a question is put. */
export interface Known {
  readonly batch?: Batch | undefined;
  readonly live: readonly Batch[];
  /** No live batch is of the plant that was named. */
  readonly unknown?: boolean;
}

/** "How many of EF1 Ember Fox were lost?" */
export function slotQuestion(entry: LoggedEntry, slot: string, known: Known): string {
  const plant = known.batch ? batchWords(known.batch) : plantWords(entry as Plant);
  const unnamed = plant === 'cuttings';
  switch (slot) {
    case 'count':
      return countQuestion(entry, unnamed ? null : plant, known);
    case 'batch':
      if (known.unknown) return 'Which did you mean?';
      if (unnamed && entry.kind === 'loss') return 'Lost from which batch?';
      return unnamed ? `Which batch was ${deed(entry)}?` : `Which ${plant} was ${deed(entry)}?`;
    case 'variety':
    case 'crop':
      return entry.kind === 'strike' ? 'Cuttings of what?' : `What was ${deed(entry)}?`;
    case 'rooted':
      return `How many of ${unnamed ? 'them' : plant} have rooted?`;
    case 'date':
      return entry.kind === 'target' || entry.kind === 'remind'
        ? 'For which day?'
        : `On which day was ${unnamed ? 'that' : plant} ${deed(entry)}?`;
    case 'place':
      return entry.kind === 'move'
        ? `Where ${unnamed ? 'did it go' : `did ${plant} go`}?`
        : 'In which place?';
    case 'pots':
      return 'In how many pots?';
    case 'care':
      return 'What was done: misted, watered, vented, fed, shaded?';
    case 'text':
      return entry.kind === 'remind' ? 'What shall I remind you of?' : 'What did you see?';
    case 'celsius':
      return 'How many degrees?';
    case 'time':
      return 'At what time?';
    case 'to':
      return 'Who got them?';
    default:
      return `One thing is missing there (${slot}): which?`;
  }
}

function countQuestion(entry: LoggedEntry, plant: string | null, { batch }: Known): string {
  const of = batch ? ` of the ${alive(batch)} in ${batchWords(batch)}` : plant ? ` ${plant}` : '';
  switch (entry.kind) {
    case 'strike':
      return `How many cuttings${plant ? ` of ${plant}` : ''} did you take?`;
    case 'target':
      return `How many${plant ? ` ${plant}` : ''} do you want?`;
    case 'receive':
    case 'stock':
      return `How many${plant ? ` ${plant}` : ''} was it?`;
    default:
      return `How many${of} were ${deed(entry)}?`;
  }
}

/** "lost", "potted on": the deed as it is asked about. */
export function deed(
  entry: Pick<LoggedEntry, 'kind'> & { readonly how?: Manner; readonly care?: Care },
): string {
  switch (entry.kind) {
    case 'strike':
      return 'struck';
    case 'receive':
    case 'stock':
      return 'got';
    case 'check':
      return 'looked at';
    case 'loss':
      return 'lost';
    case 'potOn':
      return 'potted on';
    case 'pinch':
      return 'pinched';
    case 'move':
      return 'moved';
    case 'hardenOff':
      return 'put out to harden off';
    case 'plantOut':
      return 'planted out';
    case 'dispatch':
      return entry.how === 'sold' ? 'sold' : entry.how === 'swapped' ? 'swapped' : 'given away';
    case 'tend':
      return careWords(entry.care);
    case 'remark':
      return 'seen';
    case 'reading':
      return 'read';
    case 'target':
      return 'wanted';
    case 'remind':
      return 'to be done';
  }
}

/** Why it cannot be, with what is there: "EF1 has 5 alive, so 8 can’t be lost." */
export function refusalWords(refusal: Refusal, entry: LoggedEntry | null, speech: Speech): string {
  switch (refusal.refused) {
    case 'tooMany':
      return `${refusal.batch} has ${refusal.there === 0 ? 'none' : `only ${refusal.there}`} to go by, so ${refusal.wanted} can’t be${entry ? ` ${deed(entry)}` : ''}.`;
    case 'tooManyRooted':
      return `${refusal.batch} has only ${refusal.atMost} that can have rooted, not ${refusal.wanted}.`;
    case 'noneLeft':
      return `Nothing of ${refusal.batch} is left for that, so I’ve noted nothing.`;
    case 'noBatch':
      return `I know of no live ${plantWords(refusal.plant)}.`;
    case 'severalBatches':
      return `There are several ${plantWords(refusal.plant)}: ${listWords(refusal.labels)}.`;
    case 'beforeItBegan':
      return `${refusal.batch} began on ${dayWords(refusal.began, speech)}, after ${dayWords(refusal.date, speech)}.`;
    case 'countMissing':
      return `I need a number for ${plantWords(refusal.plant)}.`;
    case 'countNotPositive':
      return `${refusal.wanted} is no number I can note.`;
    case 'labelTaken':
      return `${refusal.label} is the label of another batch.`;
    case 'unlikeBatches':
      return `${listWords(refusal.labels)} are not the same variety, so they stay apart.`;
    case 'noSuchLine':
      return 'That note is no longer there.';
  }
}

/** A batch among others of its kind: "EF1 Ember Fox, 12, 2 Mar". */
export function batchOption(batch: Batch, speech: Speech): string {
  return `${batchWords(batch)}, ${alive(batch)}, ${dayWords(began(batch), speech)}`;
}

export const everyOne = 'All of them';
export const leaveIt = 'Leave it';
export const repeatAgain = 'Yes, again';
export const repeatOnce = 'No, just once';

export function repeatQuestion(secondsAgo: number): string {
  return `You said the same ${secondsAgo < 5 ? 'just now' : `${many(Math.round(secondsAgo), 'second')} ago`}. Is that a second time, or the same one?`;
}
