/** Looked for roots, by what the look was and what it found. */
import { tugTests } from './check/tug-tests.js';
import { rooted } from './check/rooted.js';
import { rootsSeen } from './check/roots-seen.js';
import { noRoots } from './check/no-roots.js';
import { inShort } from './check/in-short.js';
import { looked } from './check/looked.js';
import type { Rule } from './rule.js';

export const checkRules: readonly Rule[] = [
  ...tugTests,
  ...rooted,
  ...rootsSeen,
  ...noRoots,
  ...inShort,
  ...looked,
];
