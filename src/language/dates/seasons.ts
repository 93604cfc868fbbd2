/** Seasons by the meteorologist's months, in the hemisphere of the grower's zone. */
import { addDays, addMonths, asDay, type Day, year as yearOf } from '../../calendar/day.js';
import { hemisphereOf } from '../../calendar/hemisphere.js';
import type { Span } from '../../calendar/span.js';
import { fixed, nearestSpan, unsure, type When, when } from './meaning.js';
import type { Season } from './captures.js';
import { rule } from './pattern.js';

/** First month of each season north of the equator, three months each (Met Office, "When does spring start?"). */
const firstMonth: Record<Season, number> = { spring: 3, summer: 6, autumn: 9, winter: 12 };

/** The season that begins in `year`. */
export function seasonSpan(season: Season, year: number, zone: string): Span {
  const month = hemisphereOf(zone) === 'north' ? firstMonth[season] : ((firstMonth[season] + 5) % 12) + 1;
  const from = asDay(`${year}-${String(month).padStart(2, '0')}-01`);
  return { from, to: addDays(addMonths(from, 3), -1) };
}

/** The nearest: for things done the latest that has begun, for plans the first not yet over. */
function openSeason(season: Season): When {
  return when((leaning, now) => nearestSpan((year) => seasonSpan(season, year, now.zone)).mean(leaning, now));
}

/** Season that begins in a year, counted from the one that runs or has run latest. */
function lastSeason(season: Season): When {
  return fixed(({ today, zone }) =>
    lately(
      today,
      (year) => seasonSpan(season, year, zone),
      (span) => span.to < today,
    ),
  );
}

function lately(today: Day, ofYear: (year: number) => Span, wanted: (span: Span) => boolean): Span {
  const year = yearOf(today);
  return [year, year - 1, year - 2].map(ofYear).find(wanted) ?? ofYear(year - 2);
}

function nextSeason(season: Season): When {
  return fixed(({ today, zone }) => {
    const year = yearOf(today);
    return (
      [year, year + 1].map((each) => seasonSpan(season, each, zone)).find(({ from }) => from > today) ??
      seasonSpan(season, year + 1, zone)
    );
  });
}

/** "This spring": of this calendar year; a winter that runs is this one. */
function thisSeason(season: Season): When {
  return when((leaning, { today, zone }) => {
    const year = yearOf(today);
    const spans = [year - 1, year].map((each) => seasonSpan(season, each, zone));
    const running = spans.find(({ from, to }) => from <= today && today <= to);
    if (running) return running;
    const [before, own] = spans as [Span, Span];
    return leaning === 'past' && own.from > today && before.to.slice(0, 4) === today.slice(0, 4)
      ? before
      : own;
  });
}

const order: readonly Season[] = ['spring', 'summer', 'autumn', 'winter'];

/** The season so many seasons from the one that runs. */
function seasonAway(steps: number): When {
  return fixed(({ today, zone }) => {
    const running = [yearOf(today) - 1, yearOf(today)]
      .flatMap((year) => order.map((season) => seasonSpan(season, year, zone)))
      .find(({ from, to }) => from <= today && today <= to);
    const from = addMonths(running?.from ?? today, 3 * steps);
    return { from, to: addDays(addMonths(from, 3), -1) };
  });
}

export const seasons = [
  rule('span', 'spring', '<season>', ({ season }) => unsure(openSeason(season))),
  rule('span', 'in the spring', 'in|during|over|back|from the? <season>', ({ season }) => openSeason(season)),
  rule('span', 'back in the spring', 'back in the? <season>', ({ season }) => openSeason(season)),
  rule('span', 'the spring', 'the <season>', ({ season }) => unsure(openSeason(season))),
  rule('span', 'last spring', 'last|previous|past <season>', ({ season }) => lastSeason(season)),
  rule('span', 'spring gone', '<season> just? gone|past', ({ season }) => lastSeason(season)),
  rule('span', 'next spring', 'next|coming|following <season>', ({ season }) => nextSeason(season)),
  rule('span', 'the coming spring', 'the|this coming <season>', ({ season }) => nextSeason(season)),
  rule('span', 'this spring', 'this <season>', ({ season }) => thisSeason(season)),
  rule('span', 'spring 2026', 'in? the? <season> of|in? <year>', ({ season, year }) =>
    fixed(({ zone }) => seasonSpan(season, year, zone)),
  ),
  rule('span', 'last season', 'last|previous season', () => unsure(seasonAway(-1))),
  rule('span', 'this season', 'this|current season', () => unsure(seasonAway(0))),
  rule('span', 'next season', 'next season', () => unsure(seasonAway(1))),
  rule(
    'span',
    'spring last year',
    'in? the? <season> of|in? <which=last|this|next> year',
    ({ season, which }) =>
      fixed(({ today, zone }) =>
        seasonSpan(season, yearOf(today) + (which === 'last' ? -1 : which === 'next' ? 1 : 0), zone),
      ),
  ),
];
