/** Every rule of acts, in the order in which they win where equally many words are theirs. */
import { checkRules } from './check.js';
import { lossRules } from './loss.js';
import { moveRules } from './move.js';
import { dispatchRules } from './dispatch.js';
import { heldBackRules } from './held-back.js';
import { hardenOffRules } from './harden-off.js';
import { plantOutRules } from './plant-out.js';
import { potOnRules } from './pot-on.js';
import { pinchRules } from './pinch.js';
import type { Rule } from './rule.js';
import { stockRules } from './stock.js';
import { strikeRules } from './strike.js';
import { tendRules } from './tend.js';

export const rules: readonly Rule[] = [
  ...stockRules,
  ...lossRules,
  ...checkRules,
  ...plantOutRules,
  ...potOnRules,
  ...pinchRules,
  ...strikeRules,
  ...dispatchRules,
  ...moveRules,
  ...hardenOffRules,
  ...tendRules,
  ...heldBackRules,
];
