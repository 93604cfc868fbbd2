/** Cuttings or plants that died or were thrown out, by what became of them. */
import { isOfPartsOnly } from './loss/counted.js';
import { left } from './loss/left.js';
import { lost } from './loss/lost.js';
import { rotted } from './loss/rotted.js';
import { takenWithIt } from './loss/taken-with-it.js';
import { died } from './loss/died.js';
import { failedToTake } from './loss/failed-to-take.js';
import { eaten } from './loss/eaten.js';
import { ate } from './loss/ate.js';
import { weather } from './loss/weather.js';
import { thrownAway } from './loss/thrown-away.js';
import { pulledOut } from './loss/pulled-out.js';
import { fedTo } from './loss/fed-to.js';
import { broken } from './loss/broken.js';
import type { Rule } from './rule.js';

/** "Leaves all scorched down the one side": what befell a part of them is no loss of a plant. */
const ofWholePlants = (rule: Rule): Rule =>
  rule.shape === 'subject'
    ? { ...rule, unless: (p, f, t) => isOfPartsOnly(p, f) || rule.unless?.(p, f, t) === true }
    : rule;

export const lossRules: readonly Rule[] = [
  ...lost,
  ...rotted,
  ...takenWithIt,
  ...died,
  ...failedToTake,
  ...eaten,
  ...ate,
  ...weather,
  ...thrownAway,
  ...pulledOut,
  ...fedTo,
  ...broken,
  ...left,
].map(ofWholePlants);
