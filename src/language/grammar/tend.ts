/** Watered, fed, misted, vented, shaded, covered, uncovered. */
import type { Rule } from './rule.js';
import { covered } from './tend/covered.js';
import { fed } from './tend/fed.js';
import { misted } from './tend/misted.js';
import { shaded } from './tend/shaded.js';
import { uncovered } from './tend/uncovered.js';
import { vented } from './tend/vented.js';
import { watered } from './tend/watered.js';

export const tendRules: readonly Rule[] = [
  ...misted,
  ...watered,
  ...vented,
  ...fed,
  ...shaded,
  ...covered,
  ...uncovered,
];
