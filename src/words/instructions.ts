/** What is said when a setting changes, a batch is shared out, or something is put off. */
import type { Day } from '../calendar/day.js';
import { asDay } from '../calendar/day.js';
import { dateWords, dayWords, listWords, type Speech } from './speech.js';

export function snoozed(until: Day, speech: Speech): string {
  return `All right, I’ll bring it up ${dayWords(until, speech)}.`;
}

export function zoneSet(zone: string): string {
  return `Your clock is that of ${zone} from now on.`;
}

export function placeUnknown(place: string): string {
  return `I don’t know the clock of ${place}. Name a big city in the same country, or a zone such as Europe/London.`;
}

/** `last` and `first` as `MM-DD`. */
export function frostSet(last: string | undefined, first: string | undefined, speech: Speech): string {
  const words = (day: string) => dateWords(asDay(`${speech.today.slice(0, 4)}-${day}`), speech);
  return [
    ...(last === undefined ? [] : [`Usual last frost: ${words(last)}.`]),
    ...(first === undefined ? [] : [`Usual first frost: ${words(first)}.`]),
  ].join(' ');
}

export function digestSet(at: string): string {
  return at === 'off'
    ? 'I’ll say nothing unasked from now on. Ask “what’s due?” when you want to know.'
    : `I’ll say what is due at ${at}, on days with something to do.`;
}

export function quietSet(from: string, to: string): string {
  return `Quiet from ${from} to ${to}.`;
}

export const unitsSet = { metric: 'Metric it is.', us: 'US units it is.' } as const;
export const wordingSet = { GB: 'British words it is.', US: 'American words it is.' } as const;
export const orderSet = {
  DMY: 'Day first: 3/4 is 3 April.',
  MDY: 'Month first: 3/4 is March 4.',
} as const;

export const splitHow = 'How many go into a batch of their own?';
export const splitAll = (label: string, count: number): string =>
  `${label} has only ${count} in all: nothing would be left to split them from.`;
export const splitSum = (label: string, there: number, sum: number): string =>
  `There are ${there} in ${label}, and those parts make ${sum}. How many go into a batch of their own?`;
export const splitNothing = 'I know no live batch to split there. Say for example “split 4 off EF1”.';
export const mergeNothing = 'I need two live batches of one variety, for example “merge EF1 and EF2”.';

export function switched(name: string): string {
  return `We’re in the ledger “${name}” now.`;
}
export function noSuchLedger(name: string, names: readonly string[]): string {
  return `There is no ledger “${name}”. Yours: ${names.join(', ')}. Say “new ledger ${name}” to begin one.`;
}

export function whichLedger(
  current: { readonly id: number; readonly name: string },
  ledgers: readonly { readonly id: number; readonly name: string }[],
): string {
  const others = ledgers.filter(({ id }) => id !== current.id).map(({ name }) => `“${name}”`);
  const here = `This is the ledger “${current.name}”.`;
  return others.length === 0
    ? here
    : `${here} There is also ${listWords(others)}: say “switch to” and its name.`;
}

export const newLedgerAsked = 'A group keeps one ledger. Switch in your own chat with me.';
