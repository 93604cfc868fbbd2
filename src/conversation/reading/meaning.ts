/** A note in which the rules read what its words are unlike: whether it is meant so is asked before anything is noted. */
import type { ReadNote } from '../../language/note.js';
import type { Context } from '../answers/answering.js';
import type { Sitting } from '../sitting.js';

/** Asks about what was doubted, if anything; a remark that may be none is not worth a question. */
export function asksWhetherMeant(
  sitting: Sitting,
  text: string,
  { doubted = [] }: ReadNote,
  { explicit, key }: Context,
): boolean {
  const kind = doubted.map(({ entry }) => entry.kind).find((kind) => kind !== 'remark');
  if (kind === undefined) return false;
  sitting.change({ asks: sitting.talk.asks.filter(({ asked }) => asked.ask !== 'meant') });
  sitting.ask({ ask: 'meant', text, kind, ...(explicit && key !== undefined ? { answers: key } : {}) });
  return true;
}
