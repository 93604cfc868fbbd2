/** What a rooting batch asks for: a look, potting on, or clearing out. */
import { addDays, type Day, daysBetween, latest } from '../calendar/day.js';
import { alive, type Batch } from '../ledger/batch.js';
import type { Due } from './due.js';
import { aboutBatch } from './about-batch.js';
import type { RootingOutlook } from './rooting-outlook.js';
import { lastLook } from './rooting-story.js';
import { afterRest, type Growing } from './season.js';
import type { Site } from './site.js';

const CHECK_WITHIN_DAYS = 3;
/** After a season without a word nobody waits for roots any more. Judgement. */
const CHECK_WORTH_DAYS = 90;
const POT_ON_WITHIN_DAYS = 7;
/** A batch of which some have rooted and little more is hoped for is not waited on for ever. Judgement. */
const CLEAR_OUT_WITHIN_DAYS = 7;

/** Nothing for batches that harden, are out, or have no cutting left to root or pot. */
export function rootingDues(
  batch: Batch,
  rooting: RootingOutlook,
  growing: Growing | null,
  site: Site,
): readonly Due[] {
  if (batch.hardeningSince !== null || batch.plantedOut > 0 || batch.pottedOn >= alive(batch)) return [];
  if (rooting.state === 'rooting') return lookFor(batch, rooting, growing, site);
  const toPot = Math.min(batch.rooted, alive(batch)) - batch.pottedOn;
  if (toPot > 0) return [potOn(batch, toPot, growing, site)];
  return rooting.state === 'giveUp' ? [clearOut(batch, rooting)] : [];
}

function lookFor(batch: Batch, rooting: RootingOutlook, growing: Growing | null, site: Site): readonly Due[] {
  if (rooting.nextCheck === null || batch.struck === null) return [];
  const from = afterRest(rooting.nextCheck, growing, site);
  const looks = batch.acts.filter(({ kind }) => kind === 'check').length;
  return [
    {
      ...aboutBatch(batch, 'check', looks),
      count: alive(batch) - batch.pottedOn,
      from,
      bestBy: addDays(from, CHECK_WITHIN_DAYS),
      tooLateAfter: addDays(from, CHECK_WORTH_DAYS),
      asks: true,
      why: {
        because: 'rootsExpected',
        day: daysBetween(batch.struck, from),
        rooting,
        rested: from !== rooting.nextCheck,
      },
    },
  ];
}

function potOn(batch: Batch, count: number, growing: Growing | null, site: Site): Due {
  // Not on the day of the look itself: its receipt says so already.
  const from = afterRest(addDays(lastLook(batch), 1), growing, site);
  return {
    ...aboutBatch(batch, 'potOn', batch.pottedOn),
    count,
    from,
    bestBy: addDays(from, POT_ON_WITHIN_DAYS),
    asks: true,
    why: { because: 'rooted', rooted: batch.rooted, of: batch.count, sign: growing?.crop.potOnSign ?? null },
  };
}

function clearOut(batch: Batch, rooting: RootingOutlook): Due {
  const struck = batch.struck as Day;
  const from = latest(addDays(lastLook(batch), 1), struck);
  return {
    ...aboutBatch(batch, 'clearOut', 0),
    count: alive(batch) - batch.pottedOn,
    from,
    bestBy: addDays(from, CLEAR_OUT_WITHIN_DAYS),
    tooLateAfter: addDays(from, CLEAR_OUT_WITHIN_DAYS),
    asks: false,
    why: { because: 'nothingMore', day: daysBetween(struck, lastLook(batch)), rooting },
  };
}
