/** The outlook of a world: what is due in it and will be. */
import type { Day } from '../../calendar/day.js';
import { localDay } from '../../calendar/zone.js';
import type { Due } from '../../outlook/due.js';
import { batchDues, dues } from '../../outlook/dues.js';
import { siteOf } from '../../outlook/site.js';
import type { Batch } from '../../ledger/batch.js';
import type { Ledger } from '../../ledger/ledger.js';
import type { LedgerSettings } from '../settings/ledger-settings.js';
import type { Talk } from '../talk.js';
import type { World } from '../world.js';

/** What of a world the outlook looks at; a sitting has it too. */
export interface Viewpoint {
  readonly ledger: Ledger;
  readonly settings: LedgerSettings;
  readonly talk: Talk;
  readonly keeper: World['keeper'];
  readonly today: Day;
}

export function viewFrom({ ledger, settings, talk, keeper }: World, now: number): Viewpoint {
  return { ledger, settings, talk, keeper, today: localDay(now, settings.zone) };
}

/** What comes next for one batch, earliest first. */
export function duesOf({ ledger, settings, keeper, today }: Viewpoint, batch: Batch): readonly Due[] {
  const next = batchDues({ ledger, today, keeper, site: siteOf(settings) }, batch);
  return [...next].sort((a, b) => (a.from < b.from ? -1 : 1));
}

/** What is due and what is coming, earliest first. */
export function allDues({ ledger, settings, talk, keeper, today }: Viewpoint): readonly Due[] {
  return dues({ ledger, today, keeper, site: siteOf(settings), snoozes: talk.snoozes });
}
