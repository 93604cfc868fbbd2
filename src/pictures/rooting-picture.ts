/** How one batch roots: the forecast, the checks so far, the range in which roots are expected. */
import { addDays, type Day, daysBetween } from '../calendar/day.js';
import { pictureWords as words, shortDay } from '../words/picture-words.js';
import { chartSvg, type ChartSpec } from './chart.js';
import { mark, type MarkSpec, textMark, limitOf } from './chart-mark.js';
import { faintInk, ink, paper, rule, stageColour, todayColour } from './palette.js';
import { pngOf } from './raster.js';
import type { RootingRange } from './season-view.js';
import { time } from './season-spec.js';

export interface RootingView {
  readonly label: string;
  readonly name: string;
  readonly count: number;
  readonly struck: Day;
  readonly today: Day;
  /** Chance that the batch is ready (half of it rooted) by that day, 0–1, in order of days. */
  readonly ready: readonly { readonly day: Day; readonly p: number }[];
  readonly range: RootingRange | null;
  /** How many had rooted at each check. */
  readonly checks: readonly { readonly day: Day; readonly rooted: number }[];
}

const size = { width: 1080, height: 900 };
const plot = { left: 110, right: 1040, top: 240, bottom: 760 };

/** PNG bytes, 1080 × 900 px. */
export async function rootingPicture(view: RootingView): Promise<Uint8Array> {
  return pngOf(await chartSvg(rootingSpec(view)));
}

export function rootingSpec(view: RootingView): ChartSpec {
  const lastDay = [view.struck, ...view.ready.map(({ day }) => day)].reduce((a, b) => (a > b ? a : b));
  const to = addDays(lastDay, 1);
  const shares = view.checks.map(({ rooted }) => rooted);
  return {
    $schema: 'https://vega.github.io/schema/vega/v6.json',
    ...size,
    padding: 0,
    autosize: 'none',
    background: paper,
    data: [
      { name: 'ready', values: view.ready.map(({ day, p }) => ({ x: time(day), p })) },
      {
        name: 'checks',
        values: view.checks.map(({ day, rooted }, index) => ({
          x: time(day),
          share: rooted / view.count,
          // Looks that found nothing new would only write over each other.
          text: shares.indexOf(rooted) === index ? words.checked(rooted, view.count) : '',
        })),
      },
    ],
    scales: [
      { name: 'x', type: 'utc', domain: [time(view.struck), time(to)], range: [plot.left, plot.right] },
      { name: 'y', domain: [0, 1], range: [plot.bottom, plot.top] },
    ],
    marks: [
      textMark({
        x: 40,
        y: 58,
        text: `${view.label}  ${view.name}`,
        fontSize: 40,
        fontWeight: 'bold',
        limit: limitOf(1000),
      }),
      textMark({ x: 40, y: 108, text: words.struckOn(view.count, view.struck), fontSize: 28 }),
      ...keys(),
      ...shareLines(),
      ...weekLines(view.struck, to),
      ...rangeMarks(view.range),
      mark('line', { x: { scale: 'x', field: 'x' }, y: { scale: 'y', field: 'p' }, stroke: stageColour.hardening, strokeWidth: 6 }, 'ready'), // prettier-ignore
      mark('symbol', { x: { scale: 'x', field: 'x' }, y: { scale: 'y', field: 'share' }, size: 620, fill: stageColour.rooted, stroke: ink, strokeWidth: 3 }, 'checks'), // prettier-ignore
      // Cleared of the curve behind it.
      textMark({ ...checked, stroke: paper, strokeWidth: 10, strokeJoin: 'round' }, 'checks'),
      textMark(checked, 'checks'),
      ...(view.today <= to ? todayMarks(view.today) : []),
    ],
  };
}

const checked = {
  x: { scale: 'x', field: 'x', offset: 8 },
  y: { scale: 'y', field: 'share', offset: 38 },
  text: { field: 'text' },
  fontSize: 26,
  fontWeight: 'bold',
};

function todayMarks(today: Day): MarkSpec[] {
  return [
    mark('rule', { x: { scale: 'x', value: time(today) }, y: plot.top, y2: plot.bottom, stroke: todayColour, strokeWidth: 3, strokeDash: [10, 6] }), // prettier-ignore
    textMark({ x: { scale: 'x', value: time(today) }, y: plot.top - 20, align: 'center', text: words.today, fontSize: 26, fontWeight: 'bold', fill: todayColour }), // prettier-ignore
  ];
}

function keys(): MarkSpec[] {
  const y = 160;
  return [
    mark('rule', { x: 40, x2: 90, y, stroke: stageColour.hardening, strokeWidth: 6 }),
    textMark({ x: 104, y, text: words.chanceReady }),
    mark('symbol', { x: 560, y, size: 500, fill: stageColour.rooted, stroke: ink, strokeWidth: 3 }),
    textMark({ x: 584, y, text: words.shareRooted }),
  ];
}

function shareLines(): MarkSpec[] {
  return [0, 0.25, 0.5, 0.75, 1].flatMap((share) => [
    mark('rule', {
      x: plot.left,
      x2: plot.right,
      y: { scale: 'y', value: share },
      stroke: rule,
      strokeWidth: 2,
    }),
    textMark({ x: plot.left - 14, y: { scale: 'y', value: share }, align: 'right', text: `${share * 100} %`, fontSize: 26, fill: faintInk }), // prettier-ignore
  ]);
}

/** A line a week from the strike day, with the day's number and date. */
function weekLines(struck: Day, to: Day): MarkSpec[] {
  const days = daysBetween(struck, to);
  const step = Math.max(7, Math.ceil(days / 6 / 7) * 7);
  return Array.from({ length: Math.floor(days / step) + 1 }, (_, index) => index * step).flatMap((number) => {
    const day = addDays(struck, number);
    return [
      mark('rule', { x: { scale: 'x', value: time(day) }, y: plot.bottom, y2: plot.bottom + 12, stroke: faintInk, strokeWidth: 2 }), // prettier-ignore
      textMark({ x: { scale: 'x', value: time(day) }, y: plot.bottom + 34, align: 'center', text: shortDay(day), fontSize: 26 }), // prettier-ignore
      textMark({ x: { scale: 'x', value: time(day) }, y: plot.bottom + 68, align: 'center', text: words.dayNumber(number), fontSize: 24, fill: faintInk }), // prettier-ignore
    ];
  });
}

function rangeMarks(range: RootingRange | null): MarkSpec[] {
  if (range === null) return [];
  const band = {
    x: { scale: 'x', value: time(range.p10) },
    x2: { scale: 'x', value: time(addDays(range.p90, 1)) },
  };
  return [
    mark('rect', { ...band, y: plot.top, y2: plot.bottom, fill: stageColour.rooting, fillOpacity: 0.45 }),
  ];
}
