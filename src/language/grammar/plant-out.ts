/** Planted in final quarters. */
import { inTheBed } from './plant-out/in-the-bed.js';
import { planted } from './plant-out/planted.js';
import type { Rule } from './rule.js';

export const plantOutRules: readonly Rule[] = [...planted, ...inTheBed];
