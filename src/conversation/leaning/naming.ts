/** "It's called Aunt Fanny", "the label says Quiet Lane", "that coleus is called …": the name that a plant was told without. */
import { crops, phraseAt } from '../../language/row/lexicon.js';
import { onlyDescribes } from '../../language/joined/new-names/describing.js';
import { anyOf } from '../../language/phrases.js';
import { alive, type Batch } from '../../ledger/batch.js';
import type { StandingEntry } from '../../ledger/ledger.js';
import { setSlots } from '../correcting/amending.js';
import { onlyOfLastNote } from './last-note.js';
import type { Sitting } from '../sitting.js';

const DAY_MS = 24 * 3_600_000;
/** So long after the note its plant may still be named by "it". */
const OPEN_MS = 3 * DAY_MS;
/** So long is a lot named by its crop, if there is but one without a name. */
const LOT_MS = 120 * DAY_MS;
const KINDS: ReadonlySet<string> = new Set(['strike', 'receive', 'stock']);

const OPENS = `(?:${anyOf`
  oh|and|ps|sorry|so|right|btw|by the way|now|actually|apparently|turns out|i think|just remembered|remembered
  (i )?(forgot|meant) to (say|mention|add)|(i )?should have said|(just )?(found|looked at|checked|read|seen) the (label|tag)
`}[,:;]? (?:- )?(?:that |and )?)*`;
const IS = "(?:['’]?s|['’]?re| is| are| was| were)";
const ARE = "(?:['’]s|['’]re| is| are| was| were)";
const IT =
  '(?:it|they|she|that|those|these|this|(?:the|that|this|those|these) (?:one|ones|plant|plants|cuttings|lot))';
const CROP =
  "(?:the|that|this|those|these|my|our) (?<crop>\\p{L}+(?: \\p{L}+)?)(?: (?:cuttings?|plants?|plugs?|ones?))?(?: (?:i|we)(?:['’]ve)? (?:took|did|got|bought|struck))?";
const LABEL = '(?:label|tag|ticket|packet|sticker|pot)';
const SAYS = '(?:says|said|reckons|thinks|told me|tells me|swears)';
const NAME = '(?<name>.+)$';

/** Said to be a name, which may then be written in small letters. */
const CALLED: readonly RegExp[] = [
  `^${OPENS}${IT}${IS}? (?:called|named) ${NAME}`,
  `^${OPENS}${CROP}${ARE} (?:called|named) ${NAME}`,
  `^${OPENS}(?:the |its |their )?(?:variety|cultivar|name)(?:['’]?s| is| was|:)? ${NAME}`,
].map((source) => new RegExp(source, 'iu'));
/** "That's Aunt Fanny by the way", "the label says Aunt Fanny": a name if it is written as one. */
const SAID: readonly RegExp[] = [
  `^${OPENS}${IT}${IS} ${NAME}`,
  `^${OPENS}${CROP}${ARE} ${NAME}`,
  `^${OPENS}(?:the |its |their )?${LABEL}(?: on (?:it|them|${CROP}))? (?:says|said|reads)(?: (?:it|they)${IS})? ${NAME}`,
  `^${OPENS}\\S+(?: \\S+)? ${SAYS}(?: that)? ${IT}${IS}(?: called)? ${NAME}`,
  `^${OPENS}\\S+(?: \\S+)? (?:calls|called) (?:it|them) ${NAME}`,
].map((source) => new RegExp(source, 'iu'));
const AFTERWORDS = /,? (?:btw|by the way|i think|actually|on the label|apparently)$/i;
/** Two words or more, each with a capital. */
const WRITTEN = /^\p{Lu}[\p{L}'’-]*(?: (?:of|the|and|de|la|\p{Lu}[\p{L}'’-]*))+$/u;

/** Whether the words name a plant that was told without a name, and it is named. */
export function namesLast(sitting: Sitting, text: string): boolean {
  const told = text
    .trim()
    .replace(/(?<![.!])[.!]+$/, '')
    .replace(AFTERWORDS, '');
  const naming = namingIn(told);
  const meant = naming && meantBy(sitting, naming.crop);
  return meant ? setSlots(sitting, [meant], { variety: naming.name }) : false;
}

interface Naming {
  readonly name: string;
  /** The word by which the plant is told. */
  readonly crop: string | undefined;
}

function namingIn(told: string): Naming | null {
  const called = firstOf(CALLED, told);
  const { name: words = '', crop } = called ?? firstOf(SAID, told) ?? {};
  const name = words.replace(/^["'“‘]|["'”’]$/gu, '').trim();
  const isName = called ? /^\p{L}[\p{L}\d '’-]*$/u.test(name) : WRITTEN.test(name) && !tellsHow(name);
  if (!isName || name.split(' ').length > 4 || name.length > 40) return null;
  return { name: called ? inCapitals(name) : name, crop };
}

function firstOf(forms: readonly RegExp[], told: string): Readonly<Record<string, string>> | undefined {
  for (const form of forms) {
    const groups = form.exec(told)?.groups;
    if (groups) return groups;
  }
  return undefined;
}

/** "The dahlias are Doing Well". */
const tellsHow = (name: string): boolean => {
  const words = name.toLowerCase().split(' ');
  return /(?:ing|ed)$/.test(words[0] ?? '') || onlyDescribes(words);
};

/** What was noted last, or the only lot of that crop that has no name. */
function meantBy(sitting: Sitting, word: string | undefined): StandingEntry | null {
  const crop = word === undefined ? undefined : cropOf(word);
  // "The plumber is called Tin Bishop".
  if (word !== undefined && crop === undefined && !/(?:one|ones|plant|plants|lot)$/i.test(word)) return null;
  const last = onlyOfLastNote(sitting, OPEN_MS);
  if (last && isNameless(last) && (crop === undefined || isOf(last, crop))) return last;
  if (crop === undefined) return null;
  const { ledger, origin } = sitting;
  const [only, another] = ledger.standing.filter(
    (each) =>
      isNameless(each) &&
      isOf(each, crop) &&
      origin.at - each.journal.at < LOT_MS &&
      each.touched.some((label) => isLive(ledger.batches.get(label))),
  );
  return only && !another ? only : null;
}

const isLive = (batch: Batch | undefined): boolean => batch !== undefined && alive(batch) > 0;

const isNameless = ({ entry }: StandingEntry): boolean => KINDS.has(entry.kind) && !('variety' in entry);

const isOf = ({ entry }: StandingEntry, crop: string): boolean => 'crop' in entry && entry.crop === crop;

/** "Fuchsia cuttings" of their first word, "sweet peas" of both. */
function cropOf(told: string): string | undefined {
  const words = told.toLowerCase().split(' ');
  return phraseAt(crops, words, 0)?.value;
}

const inCapitals = (name: string): string =>
  name.replace(/(?<=^|\s)\p{Ll}/gu, (letter) => letter.toUpperCase());
