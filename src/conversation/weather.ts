/** A weather station's minima, read from a document, become the frost days that a ledger goes by. */
import { hemisphereOf } from '../calendar/hemisphere.js';
import type { DailyMinimum } from '../horticulture/frost-record.js';
import { recordedFrostDates } from '../horticulture/plant-out.js';
import { siteOf } from '../outlook/site.js';
import { frostWords } from '../words/frost-words.js';
import {
  type MinimaFault,
  minimaFaultWords,
  minimaReadWords,
  type MinimaRead,
  tooFewFrostYears,
} from '../words/minima-words.js';
import { speechOf } from './deeds.js';
import type { Sitting } from './sitting.js';

/** What a document held; supplied by what can read files. */
export type WeatherBrought =
  (Omit<MinimaRead, 'days'> & { readonly minima: readonly DailyMinimum[] }) | MinimaFault;

export function takeWeather(sitting: Sitting, brought: WeatherBrought): void {
  const { reply } = sitting;
  if ('refused' in brought) return void reply.text.push(minimaFaultWords(brought));
  const { minima } = brought;
  reply.text.push(minimaReadWords({ ...brought, days: minima.length }));
  const hemisphere = hemisphereOf(sitting.settings.zone);
  const dates = (half: 'spring' | 'autumn') => recordedFrostDates(minima, { half, hemisphere, tender: true });
  const recordedFrost = { spring: dates('spring'), autumn: dates('autumn') };
  if (recordedFrost.spring === null && recordedFrost.autumn === null)
    return void reply.text.push(tooFewFrostYears);
  sitting.settings = { ...sitting.settings, recordedFrost };
  reply.text.push(frostWords(siteOf(sitting.settings), speechOf(sitting)));
}
