/** The season as a picture, with what the outlook sees ahead. */
import { addDays, type Day, daysBetween, dayOf, year } from '../calendar/day.js';
import type { Viewpoint } from '../conversation/prompts/looking-ahead.js';
import { normalCdf, normalQuantile } from '../horticulture/normal.js';
import { type FrostDates, OFFERED_RISKS } from '../horticulture/plant-out.js';
import type { MonthDay } from '../horticulture/frost-season.js';
import { alive, isLive } from '../ledger/batch.js';
import { liveBatches } from '../ledger/ledger.js';
import { type Plan, plansOf } from '../outlook/plan.js';
import { rootingOutlook } from '../outlook/rooting-outlook.js';
import { siteOf } from '../outlook/site.js';
import { seasonPicture } from '../pictures/season-picture.js';
import { type FrostView, seasonViewOf, type TargetView } from '../pictures/season-view.js';
import { seasonCaption } from '../words/paper-words.js';
import type { Paper } from './paper.js';

/** Batches that were all gone before this many days ago belong to an earlier season. */
const SEASON_DAYS = 200;

export async function seasonPaper({ ledger, settings, keeper, today }: Viewpoint): Promise<Paper> {
  const site = siteOf(settings);
  const frost = site.spring === null ? null : frostView(site.spring, today);
  const targets = plansOf({ ledger, today, site, keeper }).map(targetOf);
  const view = seasonViewOf(ledger, today, addDays(today, -SEASON_DAYS), {
    rooting: (batch) =>
      isLive(batch) ? (rootingOutlook(ledger, batch, site.hemisphere, keeper)?.ready ?? null) : null,
    frost,
    targets,
  });
  const live = liveBatches(ledger);
  const bytes = await seasonPicture(view);
  return {
    name: `season-${today}.png`,
    kind: asPicture(bytes) ? 'picture' : 'document',
    bytes,
    caption: seasonCaption({
      batches: live.length,
      plants: live.reduce((sum, batch) => sum + alive(batch), 0),
      plantOutOn: frost?.plantOutOn ?? null,
      targets,
    }),
  };
}

/** Telegram takes as a photo what is at most 10,000 px in width and height together, and not twenty times as tall as wide. */
function asPicture(png: Uint8Array): boolean {
  const header = new DataView(png.buffer, png.byteOffset);
  const [width, height] = [header.getUint32(16), header.getUint32(20)];
  return width + height <= 10_000 && height <= 20 * width;
}

function targetOf({ plant, crop, want, by, chance }: Plan): TargetView {
  return {
    name: plant.variety ?? plant.crop ?? plant.batch ?? '',
    crop: crop ?? 'other',
    wanted: want,
    by,
    chance,
  };
}

/** The chance that a frost still comes, day by day: the normal through the days of the two risks. */
function frostView({ evenChance, oneInTen }: FrostDates, today: Day): FrostView | null {
  if (evenChance === null || oneInTen === null) return null;
  const even = nearest(evenChance, today);
  const tenth = nearest(oneInTen, today);
  const [, risk] = OFFERED_RISKS;
  const spread = daysBetween(even, tenth) / normalQuantile(1 - risk);
  if (!(spread > 0)) return null;
  const days = Array.from({ length: 241 }, (_, index) => addDays(even, index - 160));
  return {
    risk: days.map((day) => ({ day, p: 1 - normalCdf(daysBetween(even, day) / spread) })),
    plantOutOn: addDays(tenth, 1),
  };
}

/** That day of the year which is next, or not long past. */
function nearest(monthDay: MonthDay, today: Day): Day {
  const [month = 1, day = 1] = monthDay.split('-').map(Number);
  const inYear = (each: number) => dayOf(each, month, day) ?? addDays(today, 0);
  const longPast = addDays(today, -60);
  const thisYear = inYear(year(today));
  return thisYear >= longPast ? thisYear : inYear(year(today) + 1);
}
