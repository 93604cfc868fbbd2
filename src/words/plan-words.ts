/** What is wanted, whether it will be had, and what that still takes. */
import { cropNamed } from '../horticulture/crops.js';
import { materialsFor } from '../horticulture/materials.js';
import type { Plan } from '../outlook/plan.js';
import { plantWords, potWords } from './plants.js';
import { percent } from './rooting-reason.js';
import { dateWords, many, type Speech } from './speech.js';

export function planWords(plans: readonly Plan[], speech: Speech): string {
  if (plans.length === 0)
    return 'You haven’t said what you want. For example: “I want 20 Copper Lantern by the end of May”.';
  return plans.map((plan) => [wanted(plan, speech), ...next(plan, speech)].join('\n')).join('\n\n');
}

/** "20 Ember Fox wanted by 21 May, rooted by 18 Apr: 16 alive, enough with a chance of 64%." */
function wanted({ plant, want, by, rootedBy, living, chance }: Plan, speech: Speech): string {
  const when = by === null ? '' : ` by ${dateWords(by, speech)}`;
  const rooted =
    rootedBy === null || rootedBy < speech.today ? '' : `, rooted by ${dateWords(rootedBy, speech)}`;
  const enough = living < want ? 'too few' : `enough with a chance of ${percent(chance)}`;
  const track = living === 0 ? 'none alive yet' : `${living} alive, ${enough}`;
  return `${want} ${plantWords(plant)} wanted${when}${rooted}: ${track}.`;
}

function next({ take, strikeBy, from, crop, want }: Plan, speech: Speech): string[] {
  if (take === 0) return [];
  if (take === null) return ['More cuttings would come too late to make it likely.'];
  const start = from > speech.today ? ` from ${dateWords(from, speech)}` : ' now';
  const latest = strikeBy === null ? '' : `, ${dateWords(strikeBy, speech)} at the latest`;
  return [
    `Take ${many(take, 'more cutting')}${start}${latest}: nine times in ten that is enough.`,
    ...materials(crop, take, want, speech),
  ];
}

/** Of liquid, as mix is sold: 0.946 353 l by NIST Handbook 44, appendix C. */
const LITRES_IN_US_QUART = 0.946353;

/** "9cm" as the inch size that such pots are sold by in America, to the half: "3.5in". */
function inInches(size: string): string {
  const cm = /^([\d.]+)cm$/.exec(size)?.[1];
  return cm === undefined ? size : `${Math.round((Number(cm) / 2.54) * 2) / 2}in`;
}

function materials(name: string | null, cuttings: number, plants: number, { units }: Speech): string[] {
  const crop = name === null ? null : cropNamed(name);
  if (crop === null) return [];
  const { potOnSize, cuttingsPer9cmPot } = crop;
  const needed = materialsFor({
    cuttings,
    strikeIn: { size: '9cm', perPot: cuttingsPer9cmPot },
    plants,
    potOnIn: potOnSize,
  });
  const litres =
    needed.striking === null || needed.pottingOn === null ? null : needed.striking + needed.pottingOn;
  const compost =
    litres === null
      ? ''
      : units === 'us'
        ? `, some ${many(Math.ceil(litres / LITRES_IN_US_QUART), 'quart')} of potting mix in all`
        : `, some ${many(litres, 'litre')} of compost in all`;
  const pots = (size: string) => potWords(units === 'us' ? inInches(size) : size);
  return [
    `To strike in: ${needed.strikePots} × ${pots('9cm')}. To pot on: ${needed.potOnPots} × ${pots(potOnSize)}${compost}.`,
  ];
}
