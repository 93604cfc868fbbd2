/** What changes how the ledger is kept: settings, snoozes, ledgers, splits, merges, papers; the first rule that makes something of a note counts. */
import { prompting } from './instruction/prompting.js';
import { settings } from './instruction/settings.js';
import { ledgers } from './instruction/ledgers.js';
import { batches } from './instruction/batches.js';
import { daysToRoot } from './instruction/days-to-root.js';
import { papers } from './instruction/papers.js';
import { wholeLedger } from './instruction/whole-ledger.js';
import type { InstructionRule } from './instruction/rule.js';

export const instructionRules: readonly InstructionRule[] = [
  ...prompting,
  ...settings,
  ...ledgers,
  ...batches,
  ...daysToRoot,
  ...papers,
  ...wholeLedger,
];
