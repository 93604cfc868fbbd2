/** What a file that is brought in would do, before it is done, and what it did. */
import type { Refusal } from '../ledger/refusal.js';
import type { RecordedFrost } from '../outlook/site.js';
import { siteOf } from '../outlook/site.js';
import { refusalWords } from './asks.js';
import { frostWords } from './frost-words.js';
import {
  type MinimaFault,
  minimaFaultWords,
  type MinimaRead,
  minimaReadWords,
  tooFewFrostYears,
} from './minima-words.js';
import { many, type Speech } from './speech.js';

/** What taking lines in would do. */
export interface Intake {
  readonly append: { readonly length: number };
  readonly known: number;
  readonly refused: readonly { readonly row: number; readonly refusal: Refusal }[];
  readonly relabelled: readonly (readonly [from: string, to: string])[];
}

export type LedgerFileFault =
  | { readonly fault: 'notJson' }
  | { readonly fault: 'notALedger' }
  | { readonly fault: 'newerVersion'; readonly version: number }
  | { readonly fault: 'line'; readonly line: number };

export interface RowFault {
  readonly row: number;
  readonly fault: 'kind' | 'date' | 'number';
  readonly value: string;
}

/** What a file was found to hold. */
export type Found =
  | { readonly holds: 'ledger'; readonly plan: Intake }
  | { readonly holds: 'rows'; readonly plan: Intake; readonly faults: readonly RowFault[] }
  | ({ readonly holds: 'minima'; readonly frost: RecordedFrost } & MinimaRead)
  | { readonly holds: 'otherStory'; readonly line: number }
  | { readonly holds: 'badLedger'; readonly fault: LedgerFileFault }
  | { readonly holds: 'nothing'; readonly refusal: MinimaFault };

const SHOWN = 5;
const noUsualDays = { lastFrost: null, firstFrost: null };

/** What taking it in would do; for a file that can't be used, what to do about it. */
export function bringingInWords(found: Found, zone: string, speech: Speech): string {
  switch (found.holds) {
    case 'ledger':
      return planWords('a whole ledger', found.plan, speech);
    case 'rows':
      return [
        planWords('entries in rows', found.plan, speech),
        ...found.faults
          .slice(0, SHOWN)
          .map(({ row, fault, value }) => `Row ${row} can’t be read: ${fault} “${value}”.`),
        ...(found.faults.length > SHOWN ? [`… and ${found.faults.length - SHOWN} more rows.`] : []),
      ].join('\n');
    case 'minima':
      return bringsAnything(found)
        ? `${minimaReadWords(found)}\n${frostWords(siteOf({ ...noUsualDays, zone, recordedFrost: found.frost }), speech)}`
        : `${minimaReadWords(found)} ${tooFewFrostYears}`;
    case 'otherStory':
      return `That ledger tells another story from line ${found.line} on, and two are never mixed. Bring it into a ledger of its own: say “new ledger NAME” first.`;
    case 'badLedger':
      return badLedgerWords(found.fault);
    case 'nothing':
      return minimaFaultWords(found.refusal);
  }
}

/** Whether there is anything to do once it is agreed to. */
export function bringsAnything(found: Found): boolean {
  if (found.holds === 'minima') return found.frost.spring !== null || found.frost.autumn !== null;
  return (found.holds === 'ledger' || found.holds === 'rows') && found.plan.append.length > 0;
}

export const bringInQuestion = 'Take it in?';
export const bringInButtons = ['Take it in', 'Leave it'] as const;
export const leftOut = 'All right, nothing was changed.';

export const minimaTakenIn = 'Noted: frost dates now come from that record.';

export function broughtInWords(added: number): string {
  return `Taken in: ${many(added, 'line')}.`;
}

function planWords(what: string, { append, known, refused, relabelled }: Intake, speech: Speech): string {
  return [
    `It holds ${what}: ${many(append.length, 'line')} to add${known > 0 ? `, ${known} here already` : ''}${refused.length > 0 ? `, ${refused.length} that don’t follow` : ''}.`,
    ...relabelled.slice(0, SHOWN).map(([from, to]) => `${from} is taken here: that batch becomes ${to}.`),
    ...refused
      .slice(0, SHOWN)
      .map(({ row, refusal }) => `Row ${row}: ${refusalWords(refusal, null, speech)}`),
    ...(refused.length > SHOWN ? [`… and ${refused.length - SHOWN} more that don’t follow.`] : []),
  ].join('\n');
}

function badLedgerWords(fault: LedgerFileFault): string {
  switch (fault.fault) {
    case 'notJson':
      return 'That file looks like JSON but is broken: export it again.';
    case 'notALedger':
      return 'That JSON is no ledger of mine: I take what “export json” gave.';
    case 'newerVersion':
      return `That ledger was exported by a newer slipnote (version ${fault.version}): update this one first.`;
    case 'line':
      return `Line ${fault.line} of that ledger lacks what a line needs, so nothing was taken in.`;
  }
}
