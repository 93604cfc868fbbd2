/** A deed that was told before, and what it should have said: "the ones I took on 5 March were 14", "the sale to Nora was on Sunday". */
import { isCalled, kindDone } from '../../language/grammar/entry-words.js';
import { alive } from '../../ledger/batch.js';
import type { Ledger, StandingEntry } from '../../ledger/ledger.js';
import { withWholeNames } from '../../language/row/whole-names.js';
import { setSlots } from './amending.js';
import type { Context } from '../answers/answering.js';
import { isAnswering } from './is-answering.js';
import { hasSecondThoughts, numberIn, slotIn } from './few-words.js';
import { standingOn } from '../batches/deeds.js';
import { isTold } from './deed-described.js';
import { ASIDE, FORMS, FOUND_OUT, IN_POTS } from './deed-forms.js';
import { withoutVocative } from './vocatives.js';
import { doubtsLast, LONGEST, withoutDoubts, withoutNoise } from './doubts.js';
import { lotSaid, ORDINAL } from './lots.js';
import { lastNote, noteOfLine, type Slots, takes } from './entry-meant.js';
import { ofLastNote } from '../leaning/last-note.js';
import { isLogged } from '../noting.js';
import { noteOf, readIn } from '../reading/reading.js';
import type { Sitting } from '../sitting.js';

function beforeLast(ledger: Ledger): readonly StandingEntry[] {
  const last = new Set(lastNote(ledger));
  return ledger.standing.filter((each) => !last.has(each));
}

const FEWER = /\bonly\b|\bin the end\b|\bas it turns? out\b/i;

/** Whether the text says what a deed told before should have said, and that is done; `context` says what it replies to. */
export function recallsDeed(sitting: Sitting, said: string, context: Context): boolean {
  if (said.length > LONGEST) return false;
  // Names are made whole only where some form could be meant: that looks through all that there are.
  const bare = wordsOf(sitting, said);
  if (!FORMS.some((form) => form.test(bare))) return false;
  const text = withWholeNames(noteOf(sitting, said));
  const isAnswer = isAnswering(sitting, context);
  const words = wordsOf(sitting, text);
  const quoted = standingOn(sitting.ledger, context.lines);
  for (const form of FORMS) {
    const told = form.exec(words)?.groups;
    const recalled = told && recalledIn(sitting, told as Groups, text);
    // What is asked about is answered, and another deed put right beside it.
    if (!recalled || (isAnswer && told['came'] === undefined && !(recalled.isTheirs && asksOther(context))))
      continue;
    const before =
      told['what'] !== undefined
        ? lastNote(sitting.ledger)
        : told['back'] === undefined
          ? sitting.ledger.standing
          : beforeLast(sitting.ledger);
    for (const each of (quoted.length > 0 ? quoted : before).toReversed()) {
      const set = recalled.isOfKind(each) ? recalled.setOf(each) : null;
      if (!set || !takes(each.entry, set) || !isTold(sitting, each, recalled.about)) continue;
      setSlots(sitting, [each], set);
      return true;
    }
  }
  return false;
}

/** "Going through the labels: the ones I took on 21 February were 16", without what leads to it and doubts it. */
const wordsOf = (sitting: Sitting, text: string): string =>
  withoutDoubts(
    withoutAsides(
      sitting,
      withoutNoise(text)
        .replace(doubtsLast, '')
        .replace(FOUND_OUT, '')
        .replace(/^[^:]{3,60}: (?=the |it |that )/i, ''),
    ).replace(doubtsLast, ''),
  );

type Groups = Readonly<Record<string, string | undefined>>;

interface Recalled {
  readonly isOfKind: (standing: StandingEntry) => boolean;
  /** What the entry should have said; null where it has no place for that. */
  readonly setOf: (standing: StandingEntry) => Slots | null;
  /** All that is said of the deed. */
  readonly about: string;
  /** Somebody and a plant that they had are named. */
  readonly isTheirs: boolean;
}

/** "Wickett only took 20 Salt Harrier" tells no number that is asked for where it is asked which of others were potted on. */
const asksOther = ({ ask, explicit }: Context): boolean =>
  !explicit &&
  ask?.asked.ask === 'slot' &&
  (ask.asked.slot !== 'count' || ask.asked.entry.kind !== 'dispatch');

/** Which deed is recalled, and its value; null where the words are no such thing. */
function recalledIn(sitting: Sitting, said: Groups, text: string): Recalled | null {
  const { how = '', verb, noun = '', counted, gone, day = '', who } = said;
  const { which = '', whose } = withName(sitting, said);
  // "… were 120, five trays of 24".
  const [, value = said['value'] ?? '', inPots = ''] = IN_POTS.exec(said['value'] ?? '') ?? [];
  const { stood, back, had, came, gave, late, by, theirs, owner } = said;
  // "It was two I had".
  if (theirs !== undefined && /^(?:i|we|you)$/i.test(theirs)) return null;
  // What she got was given to her.
  const hadBy =
    (who ?? theirs ?? owner) !== undefined ||
    (whose !== undefined && /^(?:got|bought|had)$/i.test(verb ?? ''));
  if (who !== undefined && !hasSecondThoughts(text) && !FEWER.test(text) && !hadJustNow(sitting, who, text))
    return null;
  // "3 to Peg" alone is a gift more; "actually Peg took three more" is told besides.
  if ((had ?? late) !== undefined && !hasSecondThoughts(text) && !FOUND_OUT.test(text)) return null;
  if (/\b(?:more|another|extra)\b/i.test(value)) return null;
  const isGiven = hadBy || [had, gave, said['sale']].some((each) => each !== undefined);
  const kind = isGiven
    ? 'dispatch'
    : came !== undefined
      ? 'receive'
      : stood
        ? 'strike'
        : verb === undefined
          ? undefined
          : kindDone(verb);
  const isTold = [counted, gone, back].some((each) => each !== undefined);
  if (kind === undefined && noun === '' && !isTold) return null;
  const about = [...sitting.ledger.varieties.keys()].find((name) => endsWith(value, name)) ?? '';
  const bare =
    value
      .trim()
      .replace(noun === 'check' ? / rooted$/i : / of them$/i, '')
      .slice(0, about === '' ? undefined : -about.length)
      .replace(/^(?:the|my|a) *$/i, '')
      .replace(/(?<=\S) of(?: the| my| those)? *$/i, '')
      .trim() || about;
  const alone =
    slotIn(sitting, bare) ?? (kind === 'dispatch' && /^\p{Lu}\p{L}+$/u.test(bare) ? { to: bare } : null);
  const pots = inPots === '' || kind !== 'strike' ? null : numberIn(sitting, inPots);
  const set = alone && pots !== null ? { ...alone, pots } : alone;
  if (counted !== undefined && !(set && 'count' in set && namesPlant(sitting, which))) return null;
  return {
    isOfKind: (each) => {
      if (back !== undefined) return true;
      if (counted !== undefined) return isCountedAnew(sitting, each);
      if (gone !== undefined) return GOES.has(each.entry.kind);
      return kind === undefined
        ? isCalled(noun, each.entry)
        : each.entry.kind === kind && wentSo(sitting, each, verb);
    },
    setOf: (each) => {
      if (by !== undefined) return outBy(each, set, by);
      // "They were the second": of two lots, and no day.
      const lot = set === null || ORDINAL.test(bare) ? lotSaid(sitting, bare, each) : null;
      return lot ?? set;
    },
    isTheirs: (who ?? theirs) !== undefined && about !== '',
    about: `${which} ${how} ${day} ${who ?? theirs ?? owner ?? nameOf(whose)} ${had ?? gave ?? ''} ${bare === about ? '' : about}`,
  };
}

/** "The Canon had three", behind two that were given to Canon Dacre. */
const hadJustNow = (sitting: Sitting, who: string, text: string): boolean =>
  !/\b(?:wanted|needed|kept)\b/i.test(text) &&
  ofLastNote(sitting, JUST_MS).some(
    ({ entry }) =>
      entry.kind === 'dispatch' && (entry.to ?? '').toLowerCase().split(' ').includes(who.toLowerCase()),
  );

/** "The Salt Harrier struck on 11 March": the last word before the verb is of the name, and nobody's. */
function withName({ ledger }: Sitting, { which = '', whose }: Groups): Groups {
  const whole = `${which} ${whose}`.toLowerCase();
  const isName = whose !== undefined && [...ledger.varieties.keys()].some((name) => endsWith(whole, name));
  return isName ? { which: whole } : { which, whose };
}

const nameOf = (whose = ''): string => (/^(?:he|she|they)$/i.test(whose) ? '' : whose);

/** "Eight short": what came is so many fewer than was told. */
function outBy({ entry }: StandingEntry, set: Slots | null, by: string): Slots | null {
  const { count } = entry as { readonly count?: unknown };
  const out = set?.['count'];
  if (typeof count !== 'number' || typeof out !== 'number') return null;
  return { count: /short|few|light/i.test(by) ? count - out : count + out };
}

/** "It was 55 we sold": of a sale, and no gift told beside it. */
function wentSo({ ledger }: Sitting, standing: StandingEntry, verb = ''): boolean {
  const how = verb.toLowerCase();
  const isSo = ({ entry }: StandingEntry) => entry.kind === 'dispatch' && entry.how === how;
  if (standing.entry.kind !== 'dispatch' || !/^(?:sold|swapped)$/.test(how) || isSo(standing)) return true;
  return standing.entry.how === undefined && !noteOfLine(ledger, standing).some(isSo);
}

const GOES: ReadonlySet<string> = new Set(['dispatch', 'move', 'plantOut', 'hardenOff']);

const namesPlant = ({ ledger }: Sitting, words: string) =>
  [...ledger.varieties.keys(), ...ledger.batches.keys()].some(
    (name) => name.toLowerCase() === words.trim().toLowerCase(),
  );

const endsWith = (text: string, name: string) => text.trim().toLowerCase().endsWith(name.toLowerCase());

/** Before this many letters nothing is said yet of which the rest could be the reason. */
const SHORTEST = 14;

/** "…, Ines. I counted the pots", "… a dozen in the end, she came back for two more": without whom it is said to and why. */
function withoutAsides(sitting: Sitting, text: string): string {
  const said = withoutVocative(
    text
      .replace(/(?<![\p{L}'’])['’]?twas\b/iu, 'it was')
      // "They weren't the first lot, they were the second".
      .replace(/\b(?:was|were)n['’]?t [^,.]{2,30}?,? (?:but )?(?:they|it|that) (?=(?:was|were) )/i, ''),
  ).replace(/, \p{Lu}\p{L}+(?=[.!]|$)/u, '');
  const aside = ASIDE.exec(said);
  // "It was four I gave Idris. I lost 2 Moss Cardinal today": a deed is no aside.
  const isAside =
    aside &&
    aside.index >= SHORTEST &&
    readIn(sitting, aside[0].replace(/^[.!, ]+/, '')).entries.every(({ entry }) => !isLogged(entry));
  return (
    (isAside ? said.slice(0, aside.index) : said)
      .replace(/[.!]$/, '')
      // "…, now I think of it, not Tuesday".
      .replace(/, not (?:on |the )?[^,.!?]{1,20}$/i, '')
      .replace(/,? now (?:that )?i (?:think|come to think) (?:of|about) it$/i, '')
      .replace(
        /,? (?:in the end|after all|altogether|in total|by the way|btw|as it turns out|as it turned out|it turns out)$/i,
        '',
      )
  );
}

/** So long after a gift is what they had told of it. */
const JUST_MS = 15 * 60_000;
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
