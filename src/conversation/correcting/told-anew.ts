/** “It was Sunday I potted them, and only seven”, right behind an undo: what was taken back, told anew. */
import { isAmendment, type Posting } from '../../ledger/posting.js';
import type { Sitting } from '../sitting.js';

/** So long after an undo is it told anew. */
const LATELY_MS = 3_600_000;

/** What was taken back last in this chat, where that was lately and is of the kind told; else null. */
export function takenBackLast(
  { journal, origin, world }: Sitting,
  kind: Posting['kind'] | undefined,
): Posting | null {
  const last = journal.at(-1);
  if (kind === undefined || !last || !isAmendment(last.what) || last.what.entries.length > 0) return null;
  if (origin.at - last.at > LATELY_MS || last.source?.chat !== world.chat) return null;
  const first = journal[last.what.amends - 1]?.what;
  return first && !isAmendment(first) && first.kind === kind ? first : null;
}
