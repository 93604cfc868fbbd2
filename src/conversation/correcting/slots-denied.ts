/** Which slot of an entry holds what a text denies, and what is said instead. */
import type { Day } from '../../calendar/day.js';
import { contains, isSpan } from '../../calendar/span.js';
import type { Claims, Contrast } from '../../language/amending/contrast.js';
import type { Slots } from './entry-meant.js';

/** The slot of the entry that holds what is denied, with what is said instead. */
export function slotsDenied(entry: object, { said, denied }: Contrast): Slots | undefined {
  const own = entry as Readonly<Record<string, unknown>>;
  for (const slot of ['pots', 'potSize', 'medium', 'cutting', 'cause', 'place'] as const)
    if (said[slot] !== undefined && denied[slot] !== undefined && isSame(own[slot], denied[slot]))
      return { [slot]: said[slot] };
  const day = own['date'];
  if (said.date !== undefined && typeof day === 'string' && isDay(denied, day as Day))
    return { date: said.date };
  return numberDenied(own, said, denied) ?? wordsDenied(own, said, denied);
}

/** "The windowsill" is the kitchen windowsill. */
const isSame = (own: unknown, denied: string | number): boolean =>
  own === denied || (typeof own === 'string' && own.endsWith(` ${denied}`));

function isDay({ date }: Claims, day: Day): boolean {
  return date !== undefined && (isSpan(date) ? contains(date, day) : date === day);
}

/** "Not 4": of cuttings, pots, or the size of a pot, with or without its unit. */
function numberDenied(own: Slots, said: Claims, denied: Claims): Slots | undefined {
  if (denied.count === undefined) return undefined;
  const size = String(own['potSize'] ?? '');
  const isSize = Number.parseFloat(size) === denied.count;
  if (said.potSize !== undefined) return isSize ? { potSize: said.potSize } : undefined;
  if (said.pots !== undefined) return own['pots'] === denied.count ? { pots: said.pots } : undefined;
  if (said.count === undefined) return undefined;
  const hasUnit = [said.words, denied.words].some((words) => UNIT.test(words ?? ''));
  const slot = hasUnit
    ? undefined
    : (['rooted', 'count', 'pots'] as const).find((each) => own[each] === denied.count);
  if (slot !== undefined) return { [slot]: said.count };
  return isSize ? { potSize: size.replace(/^[\d.]+/, String(said.count)) } : undefined;
}
const UNIT = /^\d+ ?(?:in|inch|cm|l|ml|qt|gal)\b/i;

/** A person or a place by name. */
function wordsDenied(own: Slots, said: Claims, denied: Claims): Slots | undefined {
  if (said.words === undefined || denied.words === undefined || said.count !== undefined) return undefined;
  const same = (slot: string) => String(own[slot] ?? '').toLowerCase() === denied.words?.toLowerCase();
  const slot = ['to', 'place', 'fromPlace', 'medium'].find((each) => own[each] !== undefined && same(each));
  if (slot === undefined) return undefined;
  if (slot !== 'to' || /^\p{Lu}/u.test(said.words)) return { [slot]: said.words };
  // "ines not idris": whoever writes no capitals writes none for names.
  const isWrittenSmall = !/^\p{Lu}/u.test(denied.words);
  return isWrittenSmall ? { to: said.words.replace(/^\p{L}/u, (letter) => letter.toUpperCase()) } : undefined;
}
