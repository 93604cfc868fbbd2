/** “Una took ten of those”, said in a group by another: how many there were in what Una noted last. */
import { kindDone } from '../../language/grammar/entry-words.js';
import type { Line } from '../../ledger/posting.js';
import { setSlots } from './amending.js';
import { standingOn } from '../batches/deeds.js';
import { noteOfLine } from './entry-meant.js';
import type { Sitting } from '../sitting.js';
import { LONGEST, withoutDoubts } from './doubts.js';
import { numberIn } from './few-words.js';

/** So long after a note may another put it right so. */
const LATELY_MS = 24 * 3_600_000;
const TOLD =
  /^(?:and )?(\p{Lu}[\p{L}'’]+) (?:only |actually |really )*(\p{L}+) (?:only |just )?([\p{L}\d]+) (?:of )?(?:those|these|them)(?:[,.;!]|$)/u;

/** Whether the words put right the number of the last note of whom they name. */
export function tellsOfPartner(sitting: Sitting, text: string, quoted: readonly Line[]): boolean {
  const { ledger, origin, world } = sitting;
  if (!world.group || text.length > LONGEST) return false;
  const [, name, verb = '', number = ''] = TOLD.exec(withoutDoubts(text.trim())) ?? [];
  if (name === undefined) return false;
  const theirs =
    quoted.length > 0 ? standingOn(ledger, quoted).at(-1) : ledger.standing.findLast(({ by }) => by === name);
  if (!theirs || theirs.by !== name || theirs.by === origin.by) return false;
  if (origin.at - theirs.journal.at > LATELY_MS) return false;
  const [only, another] = noteOfLine(ledger, theirs);
  const count = numberIn(sitting, number);
  if (!only || another || count === null || kindDone(verb.toLowerCase()) !== only.entry.kind) return false;
  return setSlots(sitting, [only], { count });
}
