/** "Freezing in the tunnel last night. It was 9.": talk of the weather, and what follows it puts no number right. */
import { within } from '../phrases.js';
import type { Proposal } from '../proposal.js';
import type { Sentence } from '../sentences/sentences.js';

/** What tells the weather, and makes a number beside it one of degrees. */
export const WEATHER = within`
  freezing|frozen|frost|frosty|icy|cold|colder|chilly|nippy|parky|baltic|cool|mild|muggy|warm|warmer|hot|hotter
  boiling|scorching|roasting|baking|sweltering|heat|heatwave|weather|forecast
  thermometer|temperature|temps?
`;
const NUMBER_ALONE =
  /^(?:and )?(?:it|that)(?:'s| is| was)(?: only| still| about| down to| up to)? (?:\d+|[a-z]+)\b/;

/** What a sentence proposes, without the number that the one before it makes a temperature of. */
export function withoutWeather(
  proposals: readonly Proposal[],
  { line }: Sentence,
  before: Sentence | undefined,
): readonly Proposal[] {
  const isOfWeather = before !== undefined && WEATHER.test(before.line) && NUMBER_ALONE.test(line);
  return isOfWeather ? proposals.filter(({ kind }) => kind !== 'amend') : proposals;
}
