/** Which of several batches a note points at without naming it: the older one, or the one that was just spoken of. */
import { type Batch, began } from '../ledger/batch.js';
import type { LoggedEntry, Plant } from '../ledger/entry.js';
import { batchLabelled } from '../ledger/ledger.js';
import { named } from '../ledger/reach.js';
import type { Sitting } from './sitting.js';

/** "Planted out everything": of all that live. */
export function meansEverything(text: string): boolean {
  return /\b(?:everything|every one of them|the whole lot)\b/i.test(text);
}

/** So long "them" may mean what was last told of. */
const SPOKEN_OF_MS = 3_600_000;

const OLDER = /\b(?:older|oldest|earlier|earliest)\b/i;
const NEWER = /\b(?:newer|newest|younger|youngest|latest)\b/i;
const THEM = /\b(?:them|these|those|they)\b/i;

export interface PointedAt {
  readonly batch: Batch;
  /** The words alone did not say it. */
  readonly guessed: boolean;
}

/** Null where it points at none, or several fit. */
export function batchPointedAt(
  sitting: Sitting,
  entry: LoggedEntry,
  labels: readonly string[],
): PointedAt | null {
  const batches = labels
    .flatMap((label) => batchLabelled(sitting.ledger, label) ?? [])
    .sort((a, b) => (began(a) < began(b) ? -1 : began(a) > began(b) ? 1 : 0));
  const byAge = [
    OLDER.test(sitting.text) ? batches[0] : null,
    NEWER.test(sitting.text) ? batches.at(-1) : null,
  ];
  const [aged, another] = byAge.filter((each) => each != null);
  if (aged && !another) return { batch: aged, guessed: false };
  if (named(entry as Plant) || !THEM.test(sitting.text)) return null;
  const spoken = lastSpokenOf(sitting);
  const batch = batches.find(({ label }) => label === spoken);
  return batch ? { batch, guessed: true } : null;
}

/** The only batch of the chat's last note, where the same grower said that lately. */
function lastSpokenOf({ ledger, origin, world }: Sitting): string | null {
  const last = ledger.standing.at(-1);
  const source = last?.journal.source;
  if (!last || source?.chat !== world.chat || last.by !== origin.by) return null;
  if (origin.at - last.journal.at > SPOKEN_OF_MS) return null;
  const touched = new Set(
    ledger.standing
      .filter(
        ({ journal }) => journal.source?.message === source.message && journal.source.chat === source.chat,
      )
      .flatMap((each) => each.touched),
  );
  const [only, another] = touched;
  return only === undefined || another !== undefined ? null : only;
}
