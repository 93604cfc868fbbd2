/** "It was Ines I gave them to, not Idris": what is denied stands in the ledger, and tells which entry and which slot is meant. */
import { type Contrast, contrastIn } from '../../language/amending/contrast.js';
import { tellsOf } from '../../language/grammar/entry-words.js';
import type { ReadNote } from '../../language/note.js';
import type { Plant } from '../../ledger/entry.js';
import type { StandingEntry } from '../../ledger/ledger.js';
import type { Line } from '../../ledger/posting.js';
import { named } from '../../ledger/reach.js';
import { amend, setSlots } from './amending.js';
import type { Context } from '../answers/answering.js';
import { withoutVocative } from './vocatives.js';
import { FOUND_OUT } from './deed-forms.js';
import { LONGEST, withoutDoubts } from './doubts.js';
import { WHY } from './few-words.js';
import { isAnswering } from './is-answering.js';
import { standingOn } from '../batches/deeds.js';
import { fell, isAbout, lastNote, type Slots } from './entry-meant.js';
import { isLogged } from '../noting.js';
import { noteOf, readIn } from '../reading/reading.js';
import type { Sitting } from '../sitting.js';
import { plantSaid } from '../reading/slots.js';
import { slotsDenied } from './slots-denied.js';
import { saysOther } from './swapping.js';

/** So long after a note are the same words about it, and no new note. */
const LATELY_MS = 24 * 3_600_000;
/** Done once more, and nothing put right. */
const AGAIN = /\b(?:more|another|also|again|this time|too|as well)\b/i;
/** "The three that I lost": told before. */
const RECALLED = /\b(?:the|those|that)\b[^.?!]{1,50}\b(?:i|we)(?: had|['’]d)? (?!only|just)\p{L}+/iu;

/** "It was Monday that the plugs came". */
const DELIVERED =
  /\b(?:plugs|liners|delivery|parcel|consignment|order) (?:that )?(?:came|arrived|turned up|was|were)\b/i;

/** "I should have given them to Ines": regret, and nothing to put right. */
const REGRET =
  /\b(?:i|we) (?:should(?:n['’]t)?(?:['’]ve| have)?|wish|could have|would have) (?!said|put|written|been|read|have (?:said|put|written|been|read))/i;

/** Whether the text contradicts what stands in the ledger, and that is put right. */
export function contradicts(sitting: Sitting, text: string, read: ReadNote, context: Context): boolean {
  if (text.length > LONGEST || isAnswering(sitting, context)) return false;
  // "That was 3, and there were 11 taken, not 12": two things.
  if (read.entries.length > 1 && read.entries.every(({ entry }) => entry.kind === 'amend')) return false;
  const told = withoutDoubts(withoutVocative(text));
  const words = alone(sitting, told);
  const contrast = contrastIn(noteOf(sitting, words.replace(WHY, '')));
  if (!contrast || AGAIN.test(text) || REGRET.test(text) || saysOther(text)) return false;
  const { ledger } = sitting;
  const denied = contrast.denied.variety;
  if (denied !== undefined) return namesOther(sitting, denied, contrast, read, context.lines);
  const quoted = standingOn(ledger, context.lines);
  const found = (quoted.length > 0 ? quoted : ledger.standing)
    .filter((each) => isMeant(sitting, each, contrast, words === told ? read : readIn(sitting, words)))
    .flatMap((standing) => {
      const set = isLogged(standing.entry) ? slotsDenied(standing.entry, contrast) : undefined;
      return set && saysNothingElse(standing, contrast, set) ? [{ standing, set }] : [];
    });
  const last = found.at(-1);
  if (!last || (found.length > 1 && !isPlain(sitting, last.standing, contrast))) return false;
  setSlots(sitting, [last.standing], last.set);
  return true;
}

/** "Saved one, so …": how it came to the number behind. */
const LEADS_TO = /^([^.!?]{3,60}?),? so (?=(?:that|it)(?:['’]s| is| was) )/i;
/** "…, not five", behind which another sentence only backs it: "I counted them myself". */
const DENIES = /\bnot (?:\d+|\p{L}+)$/iu;

/** The contrast alone, without who or what told it, how it came about and what backs it; no deed is left out. */
function alone(sitting: Sitting, text: string): string {
  const tellsDeed = (said: string): boolean =>
    readIn(sitting, said).entries.some(({ entry }) => isLogged(entry) && entry.kind !== 'remark');
  const words = text
    .replace(FOUND_OUT, '')
    .replace(LEADS_TO, (lead, said: string) => (tellsDeed(said) ? lead : ''));
  const end = words.search(/[.!] /);
  const isBacked = end >= 0 && DENIES.test(words.slice(0, end)) && !tellsDeed(words.slice(end + 2));
  return isBacked ? words.slice(0, end) : words;
}

/** "That was the Short Order you cut, not the Tall Order". What the reader took for an amendment stays one. */
function namesOther(
  sitting: Sitting,
  denied: string,
  { said, left }: Contrast,
  { entries }: ReadNote,
  lines: readonly Line[],
): boolean {
  if (entries.some(({ entry }) => entry.kind !== 'remark')) return false;
  const own = wordsOf(said.words);
  if (left.some((word) => !own.has(word) && !tellsOf(undefined, word))) return false;
  const isNamed = /^\p{Lu}/u.test(said.words ?? '');
  // "It's Wick Burley, not Wick Barley": taken for a slip of the pen, and another spelling.
  const isSpelt = isNamed && said.variety === denied;
  const variety = isSpelt ? said.words : (said.variety ?? (isNamed ? said.words : undefined));
  if (variety === undefined) return false;
  amend(sitting, { kind: 'amend', variety: denied, set: { variety } }, lines);
  return true;
}

/** Whether the entry is of the plant and day that the text names, and of the deed that was read in it. */
function isMeant(
  { ledger, origin, text }: Sitting,
  standing: StandingEntry,
  contrast: Contrast,
  { entries }: ReadNote,
): boolean {
  const { plant, date } = contrast;
  if (plant && !isAbout(ledger, standing, plant)) return false;
  if (date !== undefined && !fell(standing, date)) return false;
  if (/\broot(?:s|ed)?\b/i.test(text.replace(WHY, '')) && standing.entry.kind !== 'check') return false;
  if (DELIVERED.test(text) && standing.entry.kind !== 'receive') return false;
  const isLate = origin.at - standing.journal.at > LATELY_MS && !RECALLED.test(text) && !plant;
  return entries.every(({ entry, sources }) => {
    if (!isLogged(entry) || entry.kind === 'remark') return true;
    if (entry.kind !== 'dispatch' && namesRecipient(standing.entry, text)) return true;
    const told = plantSaid(entry as Plant, sources);
    if (entry.kind !== standing.entry.kind || (isLate && date === undefined && !named(told))) return false;
    return (!named(told) || isAbout(ledger, standing, told)) && agrees(standing.entry, entry, contrast);
  });
}

/** Who had them; what a plant was renamed to is nobody. */
function recipientOf(entry: object): string {
  const { to } = entry as { readonly to?: unknown };
  return typeof to === 'string' ? to : '';
}

/** Whether the words name one person: "Orla" is "my sister Orla". */
export function isSamePerson(one: string, other: string): boolean {
  const [own, told] = [[...wordsOf(one)], [...wordsOf(other)]];
  const isWithin = (some: readonly string[], all: readonly string[]) =>
    some.length > 0 && some.every((word) => all.includes(word));
  return isWithin(own, told) || isWithin(told, own);
}

const wordsOf = (phrase = '') => new Set(phrase.toLowerCase().split(/[^\p{L}'’-]+/u));

/** Whether all words but the two that are set against each other tell of that very deed: "Ines wants 20, not 12" does not. */
function saysNothingElse(
  { entry }: StandingEntry,
  { said, denied, left, elsewhere }: Contrast,
  set: Slots,
): boolean {
  // "Four moved to the shed, not three": where they went is what was told.
  const place = (entry as { readonly place?: unknown }).place;
  if (!('place' in set) && elsewhere.some((where) => where !== place)) return false;
  const to = recipientOf(entry);
  const isNamed = Object.values(set).some((each) => String(each).toLowerCase() === said.words?.toLowerCase());
  const own = new Set([...wordsOf(isNamed ? said.words : ''), ...wordsOf(denied.words), ...wordsOf(to)]);
  return left.every(
    (word) => own.has(word) || own.has(word.replace(/['’]s$/, '')) || tellsOf(entry.kind, word),
  );
}

/** "Fennick's only took 28, not 30": whoever had them took them from nobody. */
function namesRecipient(entry: object, text: string): boolean {
  const to = recipientOf(entry);
  const bare = (word: string) => word.replace(/['’]s$/, '');
  const [name = ''] = [...wordsOf(to)].map(bare);
  return name.length > 2 && [...wordsOf(text)].some((word) => bare(word) === name);
}

/** Whether nothing that was read besides the contrast tells of another deed. */
function agrees(standing: object, read: object, { said, denied }: Contrast): boolean {
  const [own, told] = [standing, read] as [Slots, Slots];
  const contrasted = new Set<unknown>([...Object.values(said), ...Object.values(denied)]);
  return ['count', 'rooted', 'pots', 'how', 'to', 'cause', 'cutting'].every(
    (slot) =>
      told[slot] === undefined ||
      own[slot] === undefined ||
      told[slot] === own[slot] ||
      (slot === 'to' && isSamePerson(recipientOf(standing), recipientOf(read))) ||
      contrasted.has(told[slot]),
  );
}

/** Several entries say what is denied: the latest is meant where it is the last note's or the plant or day was named. */
function isPlain({ ledger }: Sitting, standing: StandingEntry, { plant, date }: Contrast): boolean {
  return plant !== undefined || date !== undefined || lastNote(ledger).includes(standing);
}
