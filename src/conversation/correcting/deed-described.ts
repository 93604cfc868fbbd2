/** Whether what is said of a deed holds of an entry. */
import { dayAloneIn } from '../reading/day-in.js';
import type { StandingEntry } from '../../ledger/ledger.js';
import { fell, isAbout, type Slots } from './entry-meant.js';
import type { Sitting } from '../sitting.js';
import { numberIn } from './few-words.js';

const nameIn = (to: string): string => to.slice(Math.max(0, to.search(/\p{Lu}/u)));

/** "The Canon", of Canon Dacre: a person by one of their names. */
const namesOf = (told: unknown, slot: string): readonly string[] =>
  typeof told !== 'string'
    ? []
    : [
        told,
        nameIn(told),
        ...(slot === 'to' ? told.split(' ').filter((name) => /^\p{Lu}\p{L}{2,}/u.test(name)) : []),
      ];

/** Words of a description that tell nothing by themselves. */
const IDLE =
  /\b(?:he|she|they|him|her|them|it|those|to|for|with|of|in|into|on|at|from|the|ones?|batch|lot|cuttings|plants|away|out|off|up)\b/g;

/** Whether all that is said of the deed holds of the entry: its plant, its number, its day and who had them. */
export function isTold(sitting: Sitting, standing: StandingEntry, words: string): boolean {
  const { ledger, origin, settings } = sitting;
  const own = standing.entry as unknown as Slots;
  let rest = ` ${words} `.toLowerCase();
  const take = (name: string): boolean => {
    const at = rest.indexOf(` ${name.toLowerCase()} `);
    if (at >= 0) rest = `${rest.slice(0, at)} ${rest.slice(at + name.length + 1)}`;
    return at >= 0;
  };
  for (const variety of ledger.varieties.keys())
    if (take(variety) && !isAbout(ledger, standing, { variety })) return false;
  for (const label of ledger.batches.keys())
    if (take(label) && !standing.touched.includes(label)) return false;
  for (const slot of ['to', 'place', 'fromPlace'])
    for (const name of namesOf(own[slot], slot)) if (name !== '' && take(name)) break;
  const day = / on /.test(rest) ? 'on ' : '';
  rest = rest.replace(IDLE, ' ').trim();
  if (rest === '') return true;
  const number = numberIn(sitting, rest);
  if (number !== null) return number === own['count'] || number === own['rooted'];
  const date = dayAloneIn(`${day}${rest}`, origin.at, settings, 'past');
  return date !== null && fell(standing, date);
}
