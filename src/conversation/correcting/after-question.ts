/** “Should be 13 of them” right behind “how many Salt Harrier are there?”: of the plant that was asked about. */
import { alive } from '../../ledger/batch.js';
import { isOf, isLive } from '../../ledger/batch.js';
import { plantOf, named } from '../../ledger/reach.js';
import { sayWhatBefell } from '../../words/amend.js';
import { isAbout, type Slots } from './entry-meant.js';
import { readIn } from '../reading/reading.js';
import type { Sitting } from '../sitting.js';

/** So long after a question is its answer put right. */
const LATELY_MS = 15 * 60_000;
const SHOULD_BE = /\b(?:(?:should|ought to|must) (?:be|have been)|there(?:['’]s| is| are| was| were))\b/i;

/**
 * The entry that a number said of our answer puts right: how the batch began, where nothing has left it since. Where
 * something has, it is asked what befell the plants. Undefined where the words are no such thing.
 */
export function ofAnswerGiven(sitting: Sitting, set: Slots) {
  const { talk, origin, ledger, text } = sitting;
  if (Object.keys(set).join() !== 'count' || !SHOULD_BE.test(text)) return undefined;
  const before = talk.heard.findLast(({ message }) => message !== origin.message);
  const last = ledger.standing.at(-1)?.journal;
  if (!before || origin.at - before.at > LATELY_MS || (last && last.postedAt > before.at)) return undefined;
  const [only, another] = readIn(sitting, before.text).entries;
  if (!only || another || only.entry.kind !== 'question' || only.entry.topic !== 'count') return undefined;
  const plant = plantOf(only.entry);
  if (!named(plant)) return undefined;
  const [batch, more] = [...ledger.batches.values()].filter((each) => isLive(each) && isOf(each, plant));
  const begun = ledger.standing.find(
    (each) =>
      /^(?:strike|receive)$/.test(each.entry.kind) &&
      batch !== undefined &&
      isAbout(ledger, each, { batch: batch.label }),
  );
  if (batch && !more && begun && alive(batch) === batch.count) return begun;
  sitting.reply.text.push(sayWhatBefell);
  return null;
}
