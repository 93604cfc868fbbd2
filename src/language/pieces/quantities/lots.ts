/** Plants told by the lot: "two batches of five" are ten; how many "two batches" are, the words do not tell. */
import { textAt, type Token } from '../../row/tokens.js';
import { numberAt } from '../numbers.js';
import { exactly } from './exact.js';
import type { FoundQuantity } from './quantity.js';

const LOTS = /^(?:batch|batches|lot|lots|round|rounds|bunch|bunches|set|sets|group|groups|bundle|bundles)$/;
/** What a set may be of that is no plant: "two sets of leaves". */
const NO_PLANTS = /^(?:leaves|leaf|stems|nodes|roots|pots|trays|labels)$/;

/** The lots at token `at` of so many each, or of a number that nobody has said. */
export function inLots(tokens: readonly Token[], at: number): FoundQuantity | undefined {
  const lots = numberAt(tokens, at);
  if (!lots || !Number.isInteger(lots.value) || textAt(tokens, lots.to + 1) !== 'of') return undefined;
  const noun = textAt(tokens, lots.to);
  if (!LOTS.test(noun) || NO_PLANTS.test(textAt(tokens, lots.to + 2))) return undefined;
  const each = exactly(tokens, lots.to + 2);
  if (each?.quantity.value !== undefined)
    return { quantity: { value: lots.value * each.quantity.value }, to: each.to };
  return { quantity: { vague: true }, to: each?.to ?? lots.to + 2 };
}
