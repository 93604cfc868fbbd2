/** Another name for a variety that the ledger has. */
import type { Ledger } from '../../ledger/ledger.js';
import type { Posting } from '../../ledger/posting.js';
import type { Sitting } from '../sitting.js';

/** "That was", "no, those were": of the last note. */
const POINTS = /^(?:no,? |sorry,? |oops,? |actually,? )?(?:that|those|these|they) (?:was|were|is|are)\b/i;

/** What is told of plants that have a name already. */
export const BEFALLS: ReadonlySet<Posting['kind']> = new Set([
  'check',
  'loss',
  'potOn',
  'pinch',
  'plantOut',
  'dispatch',
  'move',
]);

/** A new name for a variety that is in the ledger: asks whether one batch or all are meant where there are several. */
export function renames(sitting: Sitting, from: string, to: string): boolean {
  const known = [...sitting.ledger.varieties.keys()].some((name) => name.toLowerCase() === to.toLowerCase());
  if (known) return false;
  const batches = [...sitting.ledger.batches.values()].filter(
    (batch) => batch.variety?.toLowerCase() === from.toLowerCase(),
  );
  const heldElsewhere = [...sitting.ledger.varieties.keys()].some(
    (name) => name.toLowerCase() === from.toLowerCase(),
  );
  if (batches.length === 0 && !heldElsewhere) return false;
  const last = sitting.ledger.standing.at(-1);
  const isNaming = /\b(?:renamed?|called|names?|spelt|spelled|label|misread|misheard)\b/i.test(sitting.text);
  // "That was Tin Parson, not Zinc Parson" of two that died: which plant it befell, and no other name for all of them.
  if (last && !isNaming && POINTS.test(sitting.text.trim()) && BEFALLS.has(last.entry.kind)) return false;
  if (
    batches.length > 1 &&
    !isNaming &&
    last?.entry.kind === 'strike' &&
    last.entry.variety?.toLowerCase() === from.toLowerCase()
  ) {
    sitting.ask({ ask: 'rename', line: last.line, from, to });
    return true;
  }
  rename(sitting, from, to);
  return true;
}

export function rename(sitting: Sitting, from: string, to: string): void {
  const line = sitting.post({ kind: 'rename', variety: from, to: { variety: to }, date: sitting.today });
  if (typeof line === 'number') sitting.reply.lines.push(line);
}

/** "Tin Parson, I mean" behind a renaming: the new name; of a plant that is known, the one that has it. */
export function renamedAnew(ledger: Ledger, entry: Posting & { kind: 'rename' }, variety: unknown): Posting {
  if (typeof variety !== 'string') return entry;
  const { to } = entry;
  const known = [...ledger.varieties.keys()].find((name) => name.toLowerCase() === variety.toLowerCase());
  return known === undefined || known.toLowerCase() === to.variety?.toLowerCase()
    ? { ...entry, to: { ...to, variety } }
    : { ...entry, variety: known };
}
