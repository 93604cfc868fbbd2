/** Whether a run of words is a plant's name, by how it is written and by what stands around it. */
import { besideCrop } from './name-cases/beside-crop.js';
import type { NameCase } from './name-cases/case.js';
import { inPosition } from './name-cases/in-position.js';
import { told } from './name-cases/told.js';
import { whose } from './name-cases/whose.js';
import type { NameSeen, Run } from './run.js';

/** The first that fits decides; where none does, it is no name. */
const cases: readonly NameCase[] = [...told, ...whose, ...besideCrop, ...inPosition];

export function isName(seen: NameSeen, run: Run): boolean {
  const whole = { ...seen, ...run, end: seen.at + run.length, isCapital: run.capital === run.length };
  return cases.find(({ when }) => when(whole))?.isName ?? false;
}
