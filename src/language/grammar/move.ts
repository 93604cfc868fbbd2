/** Carried to another place. */
import { carried } from './move/carried.js';
import { movedInShort } from './move/in-short.js';
import { takenOn } from './move/taken-on.js';
import { putBy } from './move/put-by.js';
import { stoodElsewhere } from './move/stood-elsewhere.js';
import type { Rule } from './rule.js';

export const moveRules: readonly Rule[] = [
  ...carried,
  ...putBy,
  ...movedInShort,
  ...takenOn,
  ...stoodElsewhere,
];
