/** The answer to "when is it safe to plant out?": days at two risks, and what they rest on. */
import { TENDER_SCREEN_CELSIUS } from '../horticulture/plant-out.js';
import type { FrostDates } from '../horticulture/plant-out.js';
import type { Site } from '../outlook/site.js';
import { frostRiskWords } from './due-reason.js';
import { temperatureWords } from './plants.js';
import { capital, many, type Speech } from './speech.js';

export const frostUnknown =
  'I don’t know your usual last frost yet. Tell me, for example “our last frost is 20 May”, or send a weather station’s daily minima as a CSV file.';

export function frostWords({ spring, autumn }: Site, speech: Speech): string {
  const known = [spring, autumn].filter((dates) => dates !== null);
  const [first] = known;
  if (!first) return frostUnknown;
  return [
    ...known.map((dates) => `${capital(dates.half)}: ${frostRiskWords(dates, speech)}.`),
    groundWords(first, speech),
    'For tender plants keep to the one in ten, and watch the forecast all the same.',
  ].join('\n');
}

function groundWords({ from }: FrostDates, speech: Speech): string {
  if (from === 'stated')
    return 'That is the usual day you gave, taken as the middle, with 12 days of spread from year to year.';
  const screen = temperatureWords(from.thresholdCelsius, speech);
  const why =
    from.thresholdCelsius === TENDER_SCREEN_CELSIUS ? ', as the ground freezes before the air does' : '';
  return `That is from ${many(from.years, 'year')} of daily minima, counting ${screen} or below${why}.`;
}
