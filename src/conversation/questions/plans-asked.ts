/** Plans that a question is about: of what was told as wanted, or of the number that the question itself names. */
import type { Plant } from '../../ledger/entry.js';
import { named } from '../../ledger/reach.js';
import { type Ahead, type Plan, planFor, plansOf } from '../../outlook/plan.js';
import { siteOf } from '../../outlook/site.js';
import { type Wanted, wantedBy } from '../../outlook/targets.js';
import { readIn } from '../reading/reading.js';
import type { Sitting } from '../sitting.js';

/** What stands before the wish that a question holds: "will I have enough", "am I on track for", "how many more". */
const BEFORE_WISH =
  /^.*?\b(?:enough|have|get to|reach|on (?:track|course|schedule) (?:for|to have)|how many|make|need|take)\b(?: (?:enough|more|another))*/i;

export function plansAsked(sitting: Sitting, plant: Plant): readonly Plan[] {
  const { ledger, today, keeper } = sitting;
  const ahead: Ahead = { ledger, today, keeper, site: siteOf(sitting.settings) };
  const wish = wishIn(sitting, ahead);
  if (wish) return [planFor(wish, ahead)];
  const { variety, crop } = plant;
  return plansOf(ahead).filter(
    (plan) =>
      !named(plant) ||
      (variety !== undefined && plan.variety?.toLowerCase() === variety.toLowerCase()) ||
      (crop !== undefined && plan.crop === crop),
  );
}

/** "Will I have enough Ember Fox for ten by June?": the question read as the wish that it holds. */
function wishIn(sitting: Sitting, { ledger, site, today }: Ahead): Wanted | null {
  const [asked = ''] = sitting.text.split('?');
  const wish = asked.replace(BEFORE_WISH, 'I want');
  const [only, another] = readIn(sitting, wish).entries;
  if (only?.entry.kind !== 'target' || another) return null;
  return wantedBy(only.entry, { ledger, site, toldOn: today, line: 0 });
}
