/** “Bathroom lot: 7 rooted”: the one batch that stands there, said by its place and by nothing else. */
import { type Batch, placeOf } from '../ledger/batch.js';
import { liveBatches } from '../ledger/ledger.js';
import type { Sitting } from './sitting.js';

const LOTS = ['one', 'ones', 'lot', 'batch'];

export function batchToldByPlace({ ledger, text }: Sitting): Batch | null {
  const words = ` ${text.toLowerCase().replace(/[^\p{L}\d'’-]+/gu, ' ')} `;
  const [only, another] = liveBatches(ledger).filter((batch) => {
    const place = placeOf(batch)?.toLowerCase();
    return place !== undefined && LOTS.some((lot) => words.includes(` ${place} ${lot} `));
  });
  return only && !another ? only : null;
}
