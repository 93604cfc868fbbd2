/** How one batch roots, as a picture. */
import { addDays, daysBetween, latest } from '../calendar/day.js';
import type { Viewpoint } from '../conversation/prompts/looking-ahead.js';
import { forecast } from '../horticulture/rooting-forecast.js';
import type { Batch } from '../ledger/batch.js';
import { learntFrom, rootingBasis, rootingClock, rootingTemperatures } from '../outlook/rooting-basis.js';
import { rootingOutlook } from '../outlook/rooting-outlook.js';
import { rootingStory } from '../outlook/rooting-story.js';
import { siteOf } from '../outlook/site.js';
import { rootingPicture } from '../pictures/rooting-picture.js';
import { rootingCaption } from '../words/paper-words.js';
import type { Paper } from './paper.js';

const FEWEST_DAYS = 21;
const MOST_DAYS = 90;
/** Beyond the last look, or the day by which nine in ten such batches are ready. */
const MARGIN_DAYS = 7;

/** Null for plants that came in rooted. */
export async function rootingPaper(
  { ledger, settings, keeper, today }: Viewpoint,
  batch: Batch,
): Promise<Paper | null> {
  const { hemisphere } = siteOf(settings);
  const story = rootingStory(batch);
  const outlook = rootingOutlook(ledger, batch, hemisphere, keeper);
  const { struck } = batch;
  if (story === null || outlook === null || struck === null) return null;
  const learnt = learntFrom(rootingBasis(ledger, batch, hemisphere), keeper);
  const clock = rootingClock(batch, rootingTemperatures(ledger, batch));
  // The forecast as it stood when it was struck: what was found since is drawn beside it.
  const first = forecast(learnt, { batch: { ...story, checks: [] }, today: 0, need: outlook.need, clock });
  const age = daysBetween(struck, today);
  const told = Math.max(first.ready?.p90 ?? 0, story.checks.at(-1)?.day ?? 0) + MARGIN_DAYS;
  const shown = Math.min(MOST_DAYS, Math.max(FEWEST_DAYS, told, outlook.state === 'rooting' ? age : 0));
  const ready = Array.from({ length: Math.ceil(shown) + 1 }, (_, day) => ({
    day: addDays(struck, day),
    p: day === 0 ? 0 : first.readyChanceBy(day),
  }));
  const checks = story.checks.map(({ day, rooted }) => ({ day: addDays(struck, day), rooted }));
  const view = {
    label: batch.label,
    name: batch.variety ?? batch.crop ?? '',
    count: batch.count,
    struck,
    today: latest(today, struck),
    ready,
    range: outlook.ready,
    checks,
  };
  return {
    name: `rooting-${batch.label}.png`,
    kind: 'picture',
    bytes: await rootingPicture(view),
    caption: rootingCaption(view),
  };
}
