/** A weather station's minima, read from a document, become the frost days that a ledger goes by. */
import type { DailyMinimum } from '../../horticulture/frost-record.js';
import { recordedFrost, siteOf } from '../../outlook/site.js';
import { frostWords } from '../../words/frost-words.js';
import {
  type MinimaFault,
  minimaFaultWords,
  minimaReadWords,
  type MinimaRead,
  tooFewFrostYears,
} from '../../words/minima-words.js';
import { speechOf } from '../batches/deeds.js';
import type { Sitting } from '../sitting.js';

/** What a document held; supplied by what can read files. */
export type WeatherBrought =
  (Omit<MinimaRead, 'days'> & { readonly minima: readonly DailyMinimum[] }) | MinimaFault;

export function takeWeather(sitting: Sitting, brought: WeatherBrought): void {
  const { reply } = sitting;
  if ('refused' in brought) return void reply.text.push(minimaFaultWords(brought));
  const { minima } = brought;
  reply.text.push(minimaReadWords({ ...brought, days: minima.length }));
  const frost = recordedFrost(minima, sitting.settings.zone);
  if (frost.spring === null && frost.autumn === null) return void reply.text.push(tooFewFrostYears);
  sitting.settings = { ...sitting.settings, recordedFrost: frost };
  reply.text.push(frostWords(siteOf(sitting.settings), speechOf(sitting)));
}
