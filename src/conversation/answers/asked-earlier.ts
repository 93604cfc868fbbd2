/** “Sorry, I sold 3 Moss Cardinal, not 10”: of a deed that could not stand and is asked about still, though a prompt came since. */
import { kindDone } from '../../language/grammar/entry-words.js';
import type { ReadNote } from '../../language/note.js';
import type { Plant } from '../../ledger/entry.js';
import { matching } from '../../ledger/ledger.js';
import { named, plantOf } from '../../ledger/reach.js';
import { type Context, openAsks } from './answering.js';
import { isAbout } from '../correcting/entry-meant.js';
import type { Sitting } from '../sitting.js';
import type { Ask } from '../talk.js';

const DEED = /\b(?:i|we|it|was|were|got) (?:only |just |actually )?(\p{L}+(?: (?:on|up|out|away))?)\b/giu;

/** The question that waits for the number of the deed that the text puts right by its name; null where none does. */
export function askedEarlier(
  sitting: Sitting,
  text: string,
  { entries }: ReadNote,
  { ask, explicit }: Context,
): Ask | null {
  const { ledger } = sitting;
  const [only, another] = entries;
  if (ask || explicit || another || only?.entry.kind !== 'amend' || !named(only.entry)) return null;
  const plant = plantOf(only.entry);
  const slots = Object.keys(only.entry.set ?? {}).join();
  const kinds = [...text.matchAll(DEED)].flatMap(([, verb = '']) => [
    kindDone(verb),
    kindDone(verb.split(' ')[0] ?? ''),
  ]);
  return (
    openAsks(sitting).findLast(({ asked, askedAt }) => {
      if (asked.ask !== 'slot' || asked.refusal === undefined || !kinds.includes(asked.entry.kind))
        return false;
      const [batch, other] = matching(ledger, plantOf(asked.entry as Plant));
      const isOf = batch !== undefined && !other && matching(ledger, plant).includes(batch);
      const stands = ledger.standing.some(
        (each) =>
          each.entry.kind === asked.entry.kind &&
          each.journal.postedAt > askedAt &&
          isAbout(ledger, each, plant),
      );
      return isOf && !stands && slots === asked.slot;
    }) ?? null
  );
}
