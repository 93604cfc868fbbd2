/** Cuttings taken and inserted, by what is told of it. */
import { struck } from './strike/struck.js';
import { cut } from './strike/cut.js';
import { putIn } from './strike/put-in.js';
import { taken } from './strike/taken.js';
import { telegrams } from './strike/telegrams.js';
import { offAPlant } from './strike/off-a-plant.js';
import { anotherLot } from './strike/another-lot.js';
import type { Rule } from './rule.js';

export const strikeRules: readonly Rule[] = [
  ...struck,
  ...cut,
  ...putIn,
  ...taken,
  ...telegrams,
  ...anotherLot,
  ...offAPlant,
];
