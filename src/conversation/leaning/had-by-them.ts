/** "He also took 2 Marble Wren", "and she got one of the dahlias": told of whoever had the plants before. */
import type { LoggedEntry, Plant } from '../../ledger/entry.js';
import { matching } from '../../ledger/ledger.js';
import { named, plantOf } from '../../ledger/reach.js';
import type { ReadNote } from '../../language/note.js';
import { withoutNames } from '../answers/plants-named.js';
import { readIn } from '../reading/reading.js';
import type { Sitting } from '../sitting.js';
import { plantSaid } from '../reading/slots.js';

const THEY =
  /^(?:(?:and|oh|but|then|also|plus)[, ]+)*(?:he|she|they) (?:also |then |even |then also |both |each )?(?:took|had|got|bought|went off with|went home with|walked off with|left with|picked up)(?: away| home)? (?!cuttings|slips)(.{3,60})$/i;
/** Cut from the plants, and not given. */
const CUT = /\b(?:cuttings?|slips?|tips?|nodes?|heels?)\b/i;

/** What they had, as given in the way of the `last`; null where the words say no such thing. */
export function hadByThem(sitting: Sitting, last: LoggedEntry | undefined, text: string): ReadNote | null {
  if (last?.kind !== 'dispatch' || CUT.test(text)) return null;
  const what = THEY.exec(
    text
      .trim()
      .replace(/[.!]$/, '')
      .replace(/,? (?:too|as well|also)$/i, ''),
  )?.[1];
  if (what === undefined) return null;
  const { to, how = 'given' } = last;
  const { entries, asks } = readIn(sitting, `gave ${what}`);
  const isTold = entries.every(
    ({ entry, sources }) =>
      entry.kind === 'dispatch' &&
      named(plantSaid(entry as Plant, sources)) &&
      matching(sitting.ledger, plantOf(entry as Plant)).length > 0,
  );
  if (entries.length === 0 || !isTold) return null;
  return {
    entries: entries.map((each) => ({
      ...each,
      entry: { ...each.entry, how, ...(to === undefined ? {} : { to }) } as LoggedEntry,
    })),
    asks,
  };
}

const NUMBER = String.raw`\d+|an?|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|a dozen|half a dozen|a couple`;
const NUMBERED = new RegExp(`^(?:${NUMBER})$`, 'i');
const SO_MANY = `(?:(?:the|my|those) )?(?:other |last |remaining )?(?:${NUMBER}|(?:her|his|their)(?: (?:${NUMBER}))?)(?: of (?:the|my|those|them))?(?: (?:rooted|potted(?:[ -](?:on|up))?|spare|other))? plantnames?`;
const KIN =
  '(?:(?:[Mm]y|[Oo]ur|[Tt]he|[Mm]e) )?(?:(?:big|little|old|next[- ]door) )?(?:mum|mam|mom|mother|ma|dad|father|da|nan|nana|gran|granny|grandma|grandad|sister|brother|aunt|auntie|uncle|cousin|niece|nephew|daughter|son|husband|wife|neighbours?|neighbors?|friend|colleague|coworker|boss|teacher|postman|vicar|school|church|library|club|pub)';
const SOMEBODY = new RegExp(
  `^(?:(?:and|oh|then|also|plus)[, ]+)*(?<who>${KIN}|${KIN} \\p{Lu}[\\p{L}'’-]+|(?!(?:I|We|You|They|He|She|It|This|That|These|Those|There|Nobody|None|Each|Only|Still|Just|Have|Wish|Who)\\b)\\p{Lu}[\\p{L}'’.-]*(?: \\p{Lu}[\\p{L}'’.-]*){0,2})(?:(?: has|['’]s)? (?:had|got)|(?<has> has(?: got)?)) (?<what>.{3,120})$`,
  'u',
);
const PLANTS_ALONE = new RegExp(
  `^${SO_MANY}(?:(?:,| and|, and| plus) ${SO_MANY})?(?<day> (?:today|now|this morning|last night|(?:on )?\\p{L}{3,6}day))?[.!]?$`,
  'iu',
);

/** "Ron had three Salt Harrier and two Tallow Bell": so many known plants and nothing about them, which were given; else null. */
export function hadBySomebody(sitting: Sitting, text: string): ReadNote | null {
  const { who, what = '', has } = SOMEBODY.exec(text.trim())?.groups ?? {};
  const told = PLANTS_ALONE.exec(withoutNames(sitting.ledger, what))?.groups;
  const day = told?.['day'] ?? '';
  // "My mother has two Salt Harrier now"; without that "now" they are their own.
  if (who === undefined || !told || (has !== undefined && day !== ' now')) return null;
  const bare = what.replace(/[.!]$/, '');
  const plants = bare
    .slice(0, bare.length - day.length)
    .replace(/^(?:her|his|their) (?=(\S+))/i, (_, next: string) => (NUMBERED.test(next) ? '' : 'a '));
  const { entries, asks } = readIn(sitting, `gave ${plants} to ${who}${day === ' now' ? '' : day}`);
  const isGiven = entries.every(({ entry }) => entry.kind === 'dispatch' && typeof entry.count === 'number');
  return entries.length > 0 && isGiven ? { entries, asks } : null;
}
