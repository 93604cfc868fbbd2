/** "Another one's rooted", "two more gone": of the batch that was told of last, however many questions about others still wait. */
import type { Pending } from '../../language/note.js';
import type { Context } from './answering.js';
import type { Sitting } from '../sitting.js';

const ONE_MORE =
  /^(?:(?:and|oh|ooh|yay|hooray|checked again|looked again|just (?:checked|looked)|today|this morning)[,:!]? )*(?:another(?: one| two| three)?|(?:one|two|three|four|five|\d+) more)(?: of (?:them|those)|(?:['’]?s| has| have| is| are)(?: now| got)?)*,? (?:(?<roots>rooted|roots?)|gone|dead|died|lost|rotted)\b/i;
/** Within so long it is one story. */
const ONE_MORE_MS = 3 * 24 * 3_600_000;

/** The batch as a question would name it; undefined where the text says no such thing, or another was asked about since. */
export function oneMoreOf(
  { ledger, origin, world }: Sitting,
  text: string,
  { ask, explicit, prompts }: Context,
): Pending | undefined {
  const more = ONE_MORE.exec(text.trim());
  const last = ledger.standing.at(-1);
  if (!more || !last || explicit || ask !== null) return undefined;
  const { journal, touched } = last;
  const kind = more.groups?.['roots'] === undefined ? 'loss' : 'check';
  const [batch, another] = touched;
  const isOfThat =
    last.entry.kind === kind &&
    journal.source?.chat === world.chat &&
    journal.by === origin.by &&
    origin.at - journal.postedAt <= ONE_MORE_MS &&
    prompts.every(({ givenAt }) => givenAt < journal.postedAt);
  return isOfThat && batch !== undefined && another === undefined ? { kind, batch } : undefined;
}
