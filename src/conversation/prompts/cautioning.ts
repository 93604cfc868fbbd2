/** Cautions where they belong, each said once. */
import type { StandingEntry } from '../../ledger/ledger.js';
import { cropNamed } from '../../horticulture/crops.js';
import { cautionWords } from '../../words/cautions.js';
import type { Sitting } from '../sitting.js';

/** At most one a turn, so that a receipt stays short. */
export function cautionsFor(sitting: Sitting, standing: readonly StandingEntry[]): string[] {
  for (const { entry, touched } of standing) {
    if (entry.kind !== 'strike') continue;
    const crop = touched.map((label) => sitting.ledger.batches.get(label)?.crop).find((name) => name) ?? null;
    const known = crop === null ? [] : (cropNamed(crop)?.cautions ?? []).map((each) => each.is);
    for (const caution of ['blades', ...known] as const) {
      const name = caution === 'blades' ? caution : `${caution} ${crop}`;
      if (sitting.talk.cautions.includes(name)) continue;
      const words = cautionWords(caution, crop);
      if (words === null) continue;
      sitting.change({ cautions: [...sitting.talk.cautions, name] });
      return [words];
    }
  }
  return [];
}
