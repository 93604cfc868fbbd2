/** The cases of mood in order: the first that fits a clause decides; where none does, it was done. */
import { aroundHead } from './around-head.js';
import type { MoodCase } from './case.js';
import { wordsAhead } from './words-ahead.js';

export const moodCases: readonly MoodCase[] = [...aroundHead, ...wordsAhead];
