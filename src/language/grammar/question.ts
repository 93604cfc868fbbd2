/** Things asked, in the order in which they are tried; a file in `question/` for each thing that is asked about. */
import { countQuestions, leftQuestions } from './question/counts.js';
import { dueQuestions } from './question/due.js';
import { frostQuestions } from './question/frost.js';
import { growingQuestions } from './question/growing.js';
import { helpQuestions } from './question/help.js';
import { historyQuestions } from './question/history.js';
import type { QuestionRule } from './question/rule.js';
import { statusQuestions } from './question/status.js';
import { placeQuestions, whenQuestions, whereQuestions } from './question/when-and-where.js';

export const questionRules: readonly QuestionRule[] = [
  ...helpQuestions,
  ...frostQuestions,
  ...growingQuestions,
  ...dueQuestions,
  ...whenQuestions,
  ...whereQuestions,
  ...leftQuestions,
  ...placeQuestions,
  ...countQuestions,
  ...historyQuestions,
  ...statusQuestions,
];
