/** Public and bank holidays of a zone's country; the only file that knows date-holidays, which is loaded when first asked. */
import { createRequire } from 'node:module';
import { countryOf } from './country.js';
import { type Day, parseDay } from './day.js';

export interface PublicHoliday {
  readonly day: Day;
  /** In English, as the library's data has it ("Summer bank holiday"). */
  readonly name: string;
}

/** What we see of the library: it costs some 350 ms to load, so no ordinary note pays for it. */
interface Library {
  new (
    country: string,
    part?: string,
    options?: { languages: readonly string[] },
  ): {
    getHolidays(year: number): { date: string; name: string; type: string }[] | undefined;
  };
}

const require = createRequire(import.meta.url);
const known = new Map<string, readonly PublicHoliday[]>();
let library: Library | undefined;

function load(): Library {
  if (library === undefined) {
    const module = require('date-holidays') as Library & { readonly default?: Library };
    library = module.default ?? module;
  }
  return library;
}

/** The public and bank holidays of one year, in order; none where the zone is of no known country. */
export function publicHolidays(zone: string, year: number): readonly PublicHoliday[] {
  const country = countryOf(zone);
  if (!country) return [];
  const key = `${country.code} ${country.part ?? ''} ${year}`;
  let holidays = known.get(key);
  if (holidays === undefined) {
    const Holidays = load();
    const options = { languages: ['en'] };
    const of = country.part
      ? new Holidays(country.code, country.part, options)
      : new Holidays(country.code, undefined, options);
    holidays = (of.getHolidays(year) ?? []).flatMap(({ date, name, type }) => {
      const day = parseDay(date.slice(0, 10));
      return day !== null && (type === 'public' || type === 'bank') ? [{ day, name }] : [];
    });
    known.set(key, holidays);
  }
  return holidays;
}
