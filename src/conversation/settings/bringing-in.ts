/** A ledger, or rows of entries, that came as a document: said what it would add, and taken in on a yes. */
import type { JournalLine } from '../../ledger/posting.js';
import {
  broughtInWords,
  bringingInWords,
  bringsAnything,
  type Found,
  type Intake,
} from '../../words/bringing-in-words.js';
import { speechOf } from '../batches/deeds.js';
import type { LedgerSettings } from './ledger-settings.js';
import type { Sitting } from '../sitting.js';
import type { Asked } from '../talk.js';

interface Lines extends Intake {
  readonly append: readonly Omit<JournalLine, 'line'>[];
}

/** What a document held; supplied by what can read files. */
export type LedgerBrought =
  | (Extract<Found, { holds: 'ledger' }> & {
      readonly plan: Lines;
      readonly settings: Readonly<Record<string, unknown>>;
    })
  | (Extract<Found, { holds: 'rows' }> & { readonly plan: Lines })
  | Extract<Found, { holds: 'otherStory' | 'badLedger' }>;

export function bringIn(sitting: Sitting, brought: LedgerBrought): void {
  sitting.reply.text.push(bringingInWords(brought, sitting.settings.zone, speechOf(sitting)));
  if (!bringsAnything(brought) || !('plan' in brought)) return;
  // A ledger that comes in whole brings its settings where this one holds nothing yet.
  const settings = brought.holds === 'ledger' && sitting.journal.length === 0 ? brought.settings : null;
  sitting.ask({ ask: 'bringIn', append: brought.plan.append, settings });
}

export function takeIn(sitting: Sitting, { append, settings }: Extract<Asked, { ask: 'bringIn' }>): void {
  sitting.append(append);
  if (settings) sitting.settings = { ...sitting.settings, ...(settings as Partial<LedgerSettings>) };
  sitting.reply.text.push(broughtInWords(append.length));
}
