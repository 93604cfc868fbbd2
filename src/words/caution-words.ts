/** Cautions about a crop, in plain words; they defer to labels, local rules and people who know. */
import type { Caution } from '../horticulture/crops.js';

export const cautionWords: Readonly<Record<Caution, string>> = {
  skinIrritant: 'Its sap or leaves can irritate skin: wear gloves, wash your hands after.',
  poisonousIfEaten:
    'Poisonous if eaten: keep it from children and animals. If any is swallowed, ask a doctor or poisons line at once.',
  sapBurnsInSun: 'Its sap makes skin burn in sunlight: cover up, wash off splashes.',
  thorns: 'Thorny: wear stout gloves.',
  protectedVarieties:
    'Many named varieties are protected: check the label before you multiply one, and ask the breeder before you give or sell any; the law differs by country.',
  diseaseHygiene: 'Clean blades between plants: blight travels on them.',
  keepContained: 'It spreads: keep the roots in a pot.',
  noPinchBeforePotting: 'Do not pinch it before it is potted on: wounds in propagation let gall in.',
};
