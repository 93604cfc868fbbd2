/** A deed that was told before, and what it should have said: "the ones I took on 5 March were 14", "the sale to Nora was on Sunday". */
import { deedNouns, deedVerbs, isCalled, kindDone } from '../../language/grammar/entry-words.js';
import { alive } from '../../ledger/batch.js';
import type { Ledger, StandingEntry } from '../../ledger/ledger.js';
import { setSlots } from '../amending.js';
import type { Context } from '../answering.js';
import { isAnswering } from './is-answering.js';
import { hasSecondThoughts, numberIn, slotIn } from './few-words.js';
import { dayAloneIn } from '../day-in.js';
import { standingOn } from '../deeds.js';
import { doubtsLast, LONGEST, withoutDoubts } from './doubts.js';
import { fell, isAbout, lastNote, type Slots, takes } from '../entry-meant.js';
import { isLogged } from '../noting.js';
import { readIn } from '../reading.js';
import type { Sitting } from '../sitting.js';

const WAS =
  "(?: (?:is|was|were) (?:supposed|meant) to be| was| were| should(?: be| have been|['’]ve been| say| read)| ought to be) (?:actually |really |only |all |just |on |to |in fact )*";
const DID = `(?:that |who |which )?(?:(?:i|we|you|(?<whose>he|she|they)) )?(?<verb>${deedVerbs})(?: (?<how>.{1,40}?))?`;

/** Ways of saying it; `which` and `how` describe the deed, its `verb` or `noun` tells the kind, `value` is what it should have said. */
const FORMS: readonly RegExp[] = [
  // "The three Moss Cardinal I lost were four", "the ten potted on were nine".
  `(?:the|those|my) (?<which>.{1,40}?) ?${DID}${WAS}(?<value>.{1,30})`,
  // "It was four I gave Idris".
  `(?:it|that)(?:['’]s (?:only |just )?|${WAS})(?<value>.{1,30}?) ${DID}`,
  // "It was four that went to Idris".
  `(?:it|that)(?:['’]s |${WAS})(?<value>.{1,40}?) (?:that |which |who )?(?<gone>went) (?<how>(?:to|in|into) .{1,40})`,
  // "That should be three to Peg".
  `(?:(?:it|that)(?:['’]s |${WAS}))?(?<value>\\d+|\\p{L}+)(?: of them)? (?<had>to \\p{L}.{1,30})`,
  // "The ones on the windowsill were four".
  `(?:the|those) (?<stood>ones?|batch|lot|cuttings) (?<which>(?:in|on|under|at|by) .{2,30}?)${WAS}(?<value>.{1,20}?)`,
  // "The Moss Cardinal loss was three", "the gift to Idris was four".
  `(?:the|that|my|(?<day>\\p{L}+(?: \\p{L}+)?)['’]s) (?:last )?(?<which>.{0,30}? ?)(?<noun>${deedNouns})(?: (?<how>(?:to|of|on|for|with|from) .{1,40}?))?${WAS}(?<value>.{1,40})`,
  // "Change the Moss Cardinal loss to three".
  `(?:change|correct|alter|amend|put) (?:the|that|my) (?:last )?(?<which>.{0,30}? ?)(?<noun>${deedNouns})(?: (?<how>of .{1,40}?))? to (?<value>.{1,40})`,
  // "I've just counted the Moss Cardinal again and it's eight".
  `(?:i|we)(?:['’]ve)? (?:just )?(?<counted>counted|recounted) (?:the )?(?<which>.{1,40}?)(?: again)?,? and (?:it['’]s|it is|it was|there['’]s|there are|there were|they['’]re|i make it|i get|i got) (?:only )?(?<value>.{1,20}?)(?: of them)?`,
  // "I've one too many down for the Moss Cardinal, it's 11".
  `(?:i|we)(?:['’]ve| have|['’]m)? (?:got )?.{1,12} (?<counted>too many|too few|short|out)(?: down)? (?:for|of|on|with) (?:the )?(?<which>.{1,40}?),? (?:and )?(?:it['’]s|it is|it was|it should be|should be|make it|there['’]s|there are|there were) (?:only )?(?<value>.{1,20}?)(?: of them)?`,
  // "The one before last should be three".
  `(?:the |my )?(?<back>(?:one|entry|note|message) before(?: the)?(?: last(?: one)?| that(?: one)?| it)?|last but one|second last|second to last)(?: one)?${WAS}(?<value>.{1,30})`,
  // "Ines had three actually".
  `(?:\\p{L}{1,5}(?: \\p{L}{1,5})?, )?(?<who>\\p{L}[\\p{L}'’]*) (?:only |actually |really )*(?:had|got|took|bought) (?:only )?(?<value>.{1,20}?)(?: of them)?`,
].map((form) => new RegExp(`^${form}$`, 'iu'));

/** What stood before the last note. */
function beforeLast(ledger: Ledger): readonly StandingEntry[] {
  const last = new Set(lastNote(ledger));
  return ledger.standing.filter((each) => !last.has(each));
}

/** "She only took two in the end". */
const FEWER = /\bonly\b|\bin the end\b/i;

/** Whether the text says what a deed told before should have said, and that is done; `context` says what it replies to. */
export function recallsDeed(sitting: Sitting, text: string, context: Context): boolean {
  if (text.length > LONGEST || isAnswering(sitting, context)) return false;
  // "Going through the labels: the ones I took on 21 February were 16".
  const words = withoutDoubts(
    withoutAsides(sitting, text.replace(doubtsLast, '').replace(/^[^:]{3,60}: (?=the |it |that )/i, '')),
  );
  const quoted = standingOn(sitting.ledger, context.lines);
  for (const form of FORMS) {
    const {
      which = '',
      how = '',
      verb,
      noun = '',
      value = '',
      counted,
      gone,
      day = '',
      who,
      whose,
      stood,
      back,
      had,
    } = form.exec(words)?.groups ?? {};
    // What she got was given to her.
    const hadBy = who !== undefined || (whose !== undefined && /^(?:got|bought)$/i.test(verb ?? ''));
    if (who !== undefined && !hasSecondThoughts(text) && !FEWER.test(text)) continue;
    // "3 to Peg" alone is a gift more.
    if (had !== undefined && !hasSecondThoughts(text)) continue;
    const isGiven = hadBy || had !== undefined;
    const kind = isGiven ? 'dispatch' : stood ? 'strike' : verb === undefined ? undefined : kindDone(verb);
    if (
      kind === undefined &&
      noun === '' &&
      counted === undefined &&
      gone === undefined &&
      back === undefined
    )
      continue;
    const about = [...sitting.ledger.varieties.keys()].find((name) => endsWith(value, name)) ?? '';
    const said =
      value
        .trim()
        .replace(noun === 'check' ? / rooted$/i : / of them$/i, '')
        .slice(0, about === '' ? undefined : -about.length)
        .replace(/^(?:the|my|a) *$/i, '')
        .trim() || about;
    const set =
      slotIn(sitting, said) ?? (kind === 'dispatch' && /^\p{Lu}\p{L}+$/u.test(said) ? { to: said } : null);
    // "Actually Peg took three more": told besides.
    if (
      !set ||
      /\b(?:more|another|extra)\b/i.test(value) ||
      (counted !== undefined && !('count' in set && namesPlant(sitting, which)))
    )
      continue;
    const isOfKind = (each: StandingEntry): boolean => {
      if (back !== undefined) return true;
      if (counted !== undefined) return isCountedAnew(sitting, each);
      if (gone !== undefined) return GOES.has(each.entry.kind);
      return kind === undefined ? isCalled(noun, each.entry) : each.entry.kind === kind;
    };
    const told = back === undefined ? sitting.ledger.standing : beforeLast(sitting.ledger);
    const last = (quoted.length > 0 ? quoted : told).findLast(
      (each) =>
        isOfKind(each) &&
        takes(each.entry, set) &&
        isTold(
          sitting,
          each,
          `${which} ${how} ${day} ${who ?? ''} ${had ?? ''} ${said === about ? '' : about}`,
        ),
    );
    if (!last) continue;
    setSlots(sitting, [last], set);
    return true;
  }
  return false;
}

/** What takes plants to somebody or somewhere. */
const GOES: ReadonlySet<string> = new Set(['dispatch', 'move', 'plantOut', 'hardenOff']);

const namesPlant = ({ ledger }: Sitting, words: string) =>
  [...ledger.varieties.keys(), ...ledger.batches.keys()].some(
    (name) => name.toLowerCase() === words.trim().toLowerCase(),
  );

const endsWith = (text: string, name: string) => text.trim().toLowerCase().endsWith(name.toLowerCase());

/** "Col, that was …", "no Col, it was …", "Col's wrong there, it was …" without whom it is said to or of. */
export function withoutVocative(text: string): string {
  return text
    .trim()
    .replace(
      /^(?:(?:[Nn]o|[Nn]ah|[Nn]ope|[Ss]orry|[Oo]i|[Hh]ey),? )?\p{Lu}\p{L}+(?:(?:['’]s| is| was| got it| had it) wrong(?: there)?)?, (?=(?:that|it|the|those|they)\b)/u,
      '',
    );
}

/** Before this many letters nothing is said yet of which the rest could be the reason. */
const SHORTEST = 14;

/** "…, Ines. I counted the pots", "… a dozen in the end, she came back for two more": without whom it is said to and why. */
function withoutAsides(sitting: Sitting, text: string): string {
  const said = withoutVocative(text).replace(/, \p{Lu}\p{L}+(?=[.!]|$)/u, '');
  const aside = /[.!,] (?:i|we|she|he|they|one|two|turns out|just)\b[^.!?]{0,60}[.!]?$/i.exec(said);
  // "It was four I gave Idris. I lost 2 Moss Cardinal today": a deed is no aside.
  const isAside =
    aside &&
    aside.index >= SHORTEST &&
    readIn(sitting, aside[0].replace(/^[.!, ]+/, '')).entries.every(({ entry }) => !isLogged(entry));
  return (isAside ? said.slice(0, aside.index) : said)
    .replace(/,? (?:in the end|after all|altogether|in total|by the way|btw)$/i, '')
    .replace(/[.!]$/, '');
}

/** So long after cuttings were taken is what is counted again what was taken. */
const COUNTED_MS = 24 * 3_600_000;

/** Whether the entry began a batch a short while ago, of which nothing is gone. */
function isCountedAnew({ ledger, origin }: Sitting, { entry, touched, journal }: StandingEntry): boolean {
  const [batch] = touched.flatMap((label) => ledger.batches.get(label) ?? []);
  return (
    (entry.kind === 'strike' || entry.kind === 'receive') &&
    origin.at - journal.at <= COUNTED_MS &&
    batch !== undefined &&
    alive(batch) === batch.count
  );
}

/** Words of a description that tell nothing by themselves. */
const IDLE =
  /\b(?:he|she|they|him|her|them|it|those|to|for|with|of|in|into|on|at|from|the|ones?|batch|lot|cuttings|plants|away|out|off|up)\b/g;

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
  for (const label of ledger.batches.keys())
    if (take(label) && !standing.touched.includes(label)) return false;
  for (const slot of ['to', 'place', 'fromPlace'])
    if (typeof own[slot] === 'string' && own[slot] !== '') take(own[slot]);
  const day = / on /.test(rest) ? 'on ' : '';
  rest = rest.replace(IDLE, ' ').trim();
  if (rest === '') return true;
  const number = numberIn(sitting, rest);
  if (number !== null) return number === own['count'] || number === own['rooted'];
  const date = dayAloneIn(`${day}${rest}`, origin.at, settings, 'past');
  return date !== null && fell(standing, date);
}
