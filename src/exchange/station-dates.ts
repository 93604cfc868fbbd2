/** Dates as weather files write them. */
import { type Day, dayOf } from '../calendar/day.js';

export type DateOrder = 'DMY' | 'MDY';

const YEAR_FIRST = /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})(?:[T ].*)?$/;
const RUN_TOGETHER = /^(\d{4})(\d{2})(\d{2})$/;
const YEAR_LAST = /^(\d{1,2})[-/.](\d{1,2})[-/.](\d{4})$/;

/**
 * A reader for one file's dates: year first (`2020-04-03`, `20200403`), or day and month before the year in the order that
 * the file itself gives away (a 13th month), else in `order`. The reader answers null for what is no day.
 */
export function dateReader(dates: readonly string[], order: DateOrder = 'DMY'): (text: string) => Day | null {
  const given = dates.map((text) => YEAR_LAST.exec(text)).filter((match) => match !== null);
  const monthFirst = given.some((match) => Number(match[2]) > 12);
  const dayFirst = given.some((match) => Number(match[1]) > 12);
  const read = monthFirst === dayFirst ? order : monthFirst ? 'MDY' : 'DMY';
  return (text) => {
    const first = YEAR_FIRST.exec(text) ?? RUN_TOGETHER.exec(text);
    if (first) return dayOf(Number(first[1]), Number(first[2]), Number(first[3]));
    const last = YEAR_LAST.exec(text);
    if (!last) return null;
    const [day, month] = read === 'DMY' ? [last[1], last[2]] : [last[2], last[1]];
    return dayOf(Number(last[3]), Number(month), Number(day));
  };
}
