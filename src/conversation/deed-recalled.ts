/** A deed that was told before, and what it should have said: "the ones I took on 5 March were 14", "it was Moss Cardinal I gave him". */
import { deedVerbs, kindDone } from '../language/grammar/entry-words.js';
import type { StandingEntry } from '../ledger/ledger.js';
import type { Line } from '../ledger/posting.js';
import { setSlots } from './amending.js';
import { numberIn, slotIn } from './correcting.js';
import { lead } from './doubts.js';
import { dayAloneIn } from './day-in.js';
import { standingOn } from './deeds.js';
import { fell, isAbout, type Slots, takes } from './entry-meant.js';
import type { Sitting } from './sitting.js';

const WAS =
  "(?: was| were|['’]s| should be| should have been| should['’]ve been) (?:actually |really |only |all |just )*";
const DID = `(?:that |who )?(?:i|we) (${deedVerbs})(?: (.{1,40}?))?`;
/** "The three Moss Cardinal I lost were four". */
const THE_ONES = new RegExp(`${lead}(?:the|those|my) (.{1,40}?) ?${DID}${WAS}(.{1,30})$`, 'i');
/** "It was four I gave Idris". */
const IT_WAS = new RegExp(`${lead}(?:it|that)${WAS}(.{1,30}?) ${DID}$`, 'i');

/** Whether the text says what a deed told before should have said, and that is done; `meant` are the lines replied to. */
export function recallsDeed(sitting: Sitting, text: string, meant: readonly Line[]): boolean {
  const words = text.trim().replace(/[.!]$/, '');
  if (words.length > 140) return false;
  const ones = THE_ONES.exec(words);
  const told = ones ?? IT_WAS.exec(words);
  if (!told) return false;
  const [which, verb, how, value] = ones ? told.slice(1) : ['', told[2], told[3], told[1]];
  const kind = kindDone(verb ?? '');
  const said = (value ?? '').trim();
  const set =
    slotIn(sitting, said) ?? (kind === 'dispatch' && /^\p{Lu}\p{L}+$/u.test(said) ? { to: said } : null);
  if (!set || kind === undefined) return false;
  const quoted = standingOn(sitting.ledger, meant);
  const found = (quoted.length > 0 ? quoted : sitting.ledger.standing).filter(
    (each) =>
      each.entry.kind === kind &&
      takes(each.entry, set) &&
      isTold(sitting, each, `${which ?? ''} ${how ?? ''}`),
  );
  const last = found.at(-1);
  if (last) setSlots(sitting, [last], set);
  return last !== undefined;
}

/** Whether all that is said of the deed holds of the entry: its plant, its number, its day and who had them. */
function isTold(sitting: Sitting, standing: StandingEntry, words: string): boolean {
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
  for (const slot of ['to', 'place', 'fromPlace'])
    if (typeof own[slot] === 'string' && own[slot] !== '') take(own[slot]);
  rest = rest
    .replace(
      /\b(?:him|her|them|it|those|to|for|with|in|into|on|at|from|the|ones?|batch|lot|cuttings|plants|away|out|off|up)\b/g,
      ' ',
    )
    .trim();
  if (rest === '') return true;
  const number = numberIn(sitting, rest);
  if (number !== null) return number === own['count'] || number === own['rooted'];
  const day = dayAloneIn(`${/ on /.test(` ${words} `) ? 'on ' : ''}${rest}`, origin.at, settings, 'past');
  return day !== null && fell(standing, day);
}
