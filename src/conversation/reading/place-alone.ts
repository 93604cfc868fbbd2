/** Words that tell a place and nothing else: "in the shade house for now". */
import type { ReadEntry } from '../../language/note.js';
import { readIn } from './reading.js';
import type { Sitting } from '../sitting.js';

const TAILS = [
  'for now',
  'now',
  'today',
  'at the moment',
  'for the moment',
  'at present',
  'these days',
  'nowadays',
  'currently',
  'by the way',
  'together',
  'too',
];
const TO_PLACE = /^(?:in|into|on|onto|at|under|by|up|down|behind|beside|round) (?:(?:the|my|our) )?/i;
/** A name that only this grower gives a place: "in the snug", "down Doris's". */
const OWN_NAME =
  /^(?:(?:in|into|under|behind|up|down|round) (?:the|my|our) [\p{L}'’-]+(?: [\p{L}'’-]+)?|(?:up|down|round) \p{Lu}\p{L}*['’]s)$/u;
/** "On the windowsill in the back bedroom". */
const FURTHER = /^ (?:in|at|of|by) (?:the|my|our) [\p{L}' -]{2,30}$/u;

/** No bench holds so many, so that a number in what is said shows itself. */
const NUMBER = 7_000;

/** That place; null where the words tell more ("in a mess in the shed") or none. */
export function placeAlone(sitting: Sitting, words: string): string | null {
  const told = withoutTail(words);
  const place = placeOfAct(sitting, 'bought', `dahlia plugs, ${told}`) ?? ownName(sitting, told);
  const where = told.replace(TO_PLACE, '').toLowerCase();
  if (place === null || where === told.toLowerCase() || !where.startsWith(place.toLowerCase())) return null;
  const behind = where.slice(place.length);
  return behind === '' || FURTHER.test(behind) ? place : null;
}

const ownName = (sitting: Sitting, told: string): string | null =>
  OWN_NAME.test(told) ? placeOfAct(sitting, 'took', `dahlia, ${told}`) : null;

/** The place of so many that came (only one that growers know) or that were cut (one by any name). */
function placeOfAct(sitting: Sitting, act: 'bought' | 'took', behind: string): string | null {
  const [said, more] = readIn(sitting, `${act} ${NUMBER} ${behind}`).entries as readonly Partial<ReadEntry>[];
  const entry = said?.entry;
  if (more || (entry?.kind !== 'strike' && entry?.kind !== 'receive') || entry.count !== NUMBER) return null;
  return entry.place ?? null;
}

function withoutTail(words: string): string {
  let told = words.trim().replace(/[.!,]$/, '');
  for (let tail = tailOf(told); tail !== undefined; tail = tailOf(told))
    told = told
      .slice(0, -tail.length - 1)
      .trimEnd()
      .replace(/,$/, '');
  return told;
}

const tailOf = (told: string): string | undefined =>
  TAILS.find((tail) => told.toLowerCase().endsWith(` ${tail}`));
