/** “Bathroom lot: 7 rooted”: the one batch that stands there, said by its place and by nothing else. */
import { type Batch, placeOf } from '../../ledger/batch.js';
import { liveBatches } from '../../ledger/ledger.js';
import type { Sitting } from '../sitting.js';

const LOTS = ['one', 'ones', 'lot', 'batch'];
/** “The four on the sill”. */
const THOSE_THERE =
  /\b(?:the|those) (?:ones?|lot|batch|\d+|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve) (?:in|on|under|by|at) the $/u;

export function batchToldByPlace({ ledger, text }: Sitting): Batch | null {
  const words = ` ${text.toLowerCase().replace(/[^\p{L}\d'’-]+/gu, ' ')} `;
  const [only, another] = liveBatches(ledger).filter((batch) => {
    const place = placeOf(batch)?.toLowerCase();
    return (
      place !== undefined &&
      (LOTS.some((lot) => words.includes(` ${place} ${lot} `)) || isThere(words, place))
    );
  });
  return only && !another ? only : null;
}

function isThere(words: string, place: string): boolean {
  const at = words.indexOf(` ${place} `);
  return at >= 0 && THOSE_THERE.test(words.slice(0, at + 1));
}
