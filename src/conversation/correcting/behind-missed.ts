/** "Make that 3" straight behind a note that was not understood: of that note, and of nothing older. */
import type { ReadNote } from '../../language/note.js';
import { numberAt } from '../../language/pieces/numbers.js';
import { tokenise } from '../../language/row/tokens.js';
import { named } from '../../ledger/reach.js';
import type { Context } from '../answers/answering.js';
import type { Sitting } from '../sitting.js';
import type { Heard } from '../talk.js';
import { LONGEST } from './doubts.js';
import { hasSecondThoughts } from './few-words.js';
import { deniedNumber } from './number-denied.js';

/** Talk without a number so soon behind a note leaves that note the one that is put right. */
const FRESH_MS = 30 * 60_000;

/** Whether the words put right a note that said nothing to us, so that no entry may be changed by them. */
export function isOfMissed(sitting: Sitting, text: string, read: ReadNote, context: Context): boolean {
  if (context.ask || context.explicit || context.lines.length > 0 || read.instruction) return false;
  if (!isBareCorrection(text, read)) return false;
  const { talk, origin, ledger } = sitting;
  const own = talk.heard.filter(({ from }) => from === origin.from);
  const missed = own.slice(own.findLastIndex((each) => !each.missed) + 1);
  const noted = ledger.standing.at(-1)?.journal.postedAt ?? -Infinity;
  return missed.some((each) => each.at >= noted && tellsSomething(each, noted));
}

/** What was heard last said nothing to us: what puts something right straight behind it may mean that. */
export function notFollowed(sitting: Sitting, reply: string): void {
  const { heard } = sitting.talk;
  const last = heard.at(-1);
  if (last) sitting.change({ heard: [...heard.slice(0, -1), { ...last, missed: true }] });
  sitting.reply.text.push(reply);
}

/** A value, and nothing that tells whose: neither a plant nor a day, nor what it was before. */
function isBareCorrection(text: string, { entries }: ReadNote): boolean {
  if (entries.length === 0 || deniedNumber(text) !== undefined) return false;
  return entries.every(
    ({ entry }) =>
      (entry.kind === 'amend' && !named(entry) && entry.date === undefined) ||
      (entry.kind === 'answer' && hasSecondThoughts(text)),
  );
}

/** A note of something, not a correction put in words that we did not follow, nor a word about the weather behind a note. */
function tellsSomething({ text, at }: Heard, noted: number): boolean {
  if (hasSecondThoughts(text)) return false;
  const tokens = tokenise(text.slice(0, LONGEST).toLowerCase());
  const counts = tokens.some((token, n) => token.text !== 'one' && numberAt(tokens, n) !== undefined);
  return counts || at - noted > FRESH_MS;
}
