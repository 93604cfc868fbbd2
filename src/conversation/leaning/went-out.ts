/** "The rest of the Salt Harrier went out today": of plants of which some were planted out before. */
import { alive, isLive, isOf } from '../../ledger/batch.js';
import type { LoggedEntry } from '../../ledger/entry.js';
import { dayAloneIn } from '../reading/day-in.js';
import { takeNote } from '../noting.js';
import type { Sitting } from '../sitting.js';

const REST =
  /^(?:(?:and|then|so) )?(?:the |my )?(?:rest|remainder|remaining ones|others|other (?:\d+|\p{L}+))(?: of (?:the |my |those |them\b ?)?(?<which>.{0,40}?))? (?:went|have gone|['’]ve gone|are|have been put|were put|got put)(?: in| all)? (?:out|in the ground)(?: (?:too|as well|also))?(?<when> .{2,20})?[.!]?$/iu;

/** Whether that is said, and what is left of the batch is planted out as well. */
export function restWentOut(sitting: Sitting, text: string): boolean {
  const said = REST.exec(text.trim())?.groups;
  if (!said) return false;
  const { ledger, origin, settings } = sitting;
  const { which = '', when = '' } = said;
  const isNamed = which.trim() !== '';
  const last = ledger.standing.findLast(({ entry, touched }) => {
    const batch = ledger.batches.get(touched[0] ?? '');
    const isMeant =
      batch !== undefined && isLive(batch) && (!isNamed || isOf(batch, { variety: which.trim() }));
    return isMeant && /^(?:plantOut|move|hardenOff)$/.test(entry.kind);
  });
  const batch = ledger.batches.get(last?.touched[0] ?? '');
  if (last?.entry.kind !== 'plantOut' || !batch) return false;
  const date = when.trim() === '' ? null : dayAloneIn(when.trim(), origin.at, settings, 'past');
  if (alive(batch) <= batch.plantedOut || (when.trim() !== '' && date === null)) return false;
  const { place } = last.entry as { readonly place?: string };
  const entry = {
    kind: 'plantOut',
    batch: batch.label,
    count: 'rest',
    ...(place === undefined ? {} : { place }),
    ...(date === null ? {} : { date }),
  } as LoggedEntry;
  takeNote(sitting, { entries: [{ entry, sources: { batch: 'said' } }], asks: [] });
  return true;
}
