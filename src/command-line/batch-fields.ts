/** Reading a batch of a JSON line: struck, cuttings and checks that can have happened. */
import { daysBetween, type Day } from '../calendar/day.js';
import type { RootCheck, RootingRecord } from '../horticulture/rooting-record.js';
import { BadLine } from './json-lines.js';
import { countField, dayField, listField, type Fields } from './line-fields.js';

const MOST_CUTTINGS = 5000;

export interface DatedRecord extends RootingRecord {
  readonly struckOn: Day;
}

/** Days of the checks count from striking. Refuses what cannot be: a count that falls, more rooted than struck, a look before striking or after `today`. */
export function batchFields(fields: Fields, today: Day, where = ''): DatedRecord {
  const struckOn = dayField(fields, 'struck', where);
  const struck = countField(fields, 'cuttings', { least: 1, most: MOST_CUTTINGS, where });
  const lost = fields['lost'] === undefined ? 0 : countField(fields, 'lost', { most: struck, where });
  const final = fields['final'] ?? false;
  if (typeof final !== 'boolean') throw new BadLine(`${where}final is true or false`);
  const checks = checkFields(fields, { struckOn, struck, today, where });
  if (final && checks.length === 0)
    throw new BadLine(`${where}final says that the last check cleared the batch out, but there is no check`);
  return { struckOn, struck, checks, lost, final };
}

function checkFields(
  fields: Fields,
  batch: { struckOn: Day; struck: number; today: Day; where: string },
): RootCheck[] {
  const { struckOn, struck, today, where } = batch;
  const checks = listField(fields, 'checks', '{"date","rooted"}', where).map((check, i) => {
    const here = `${where}check ${i + 1}: `;
    const date = dayField(check, 'date', here);
    const rooted = countField(check, 'rooted', { where: here });
    const day = daysBetween(struckOn, date);
    if (rooted > struck)
      throw new BadLine(`${here}${rooted} rooted of ${struck} struck: the count cannot be more`);
    if (day < 0) throw new BadLine(`${here}${date} is before ${struckOn}, when they were struck`);
    if (day === 0 && rooted > 0)
      throw new BadLine(`${here}${rooted} rooted on the day of striking: give a later day`);
    if (date > today) throw new BadLine(`${here}${date} is after today, ${today}`);
    return { day, rooted };
  });
  checks.sort((a, b) => a.day - b.day || a.rooted - b.rooted);
  for (const [i, { day, rooted }] of checks.entries())
    if (rooted < (checks[i - 1]?.rooted ?? 0))
      throw new BadLine(
        `${where}rooted falls to ${rooted} on day ${day}: it counts all that ever rooted; give deaths as lost`,
      );
  return checks.filter(({ day }, i) => day > 0 && day !== checks[i + 1]?.day);
}
