/** Corrections that only the talk before makes plain: "it was Sunday", "to Nora, I mean". */
import { entryNouns, kindCalled, kindDone } from '../../language/grammar/entry-words.js';
import { claimsIn } from '../../language/amending/contrast.js';
import { anyOf } from '../../language/phrases.js';
import { withWholeNames } from '../../language/row/whole-names.js';
import type { Amend } from '../../ledger/entry.js';
import { type Ledger, liveBatches } from '../../ledger/ledger.js';
import type { Line, Posting } from '../../ledger/posting.js';
import { amend } from './amending.js';
import { kindBehind } from './deed-told.js';
import { dayAloneIn } from '../reading/day-in.js';
import { standingOn } from '../batches/deeds.js';
import { doubtsFirst, doubtsLast, LONGEST, withoutDoubts } from './doubts.js';
import { candidatesFor, lastNote } from './entry-meant.js';
import { ownLast, withoutListener } from './group.js';
import { lotSaid } from './lots.js';
import { noteOf, readIn } from '../reading/reading.js';
import type { Sitting } from '../sitting.js';

/** "No, three", "well, seven", "no, Wednesday": a number or a day alone that is denied and told again. */
const noValue = new RegExp(
  `^(?:no|nope|nah|naw|well)[,.!: ]+${anyOf`
    \d+|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|a dozen
    (on )?(mon|tues?|weds?|wednes|thu(rs?)?|fri|sat|satur|sun)(day)?
    yesterday|last night|the \d+(st|nd|rd|th)|the day before( yesterday)?
  `}(?: (?:in all|all up|all told|altogether|in total|of them))?[.!]?$`,
  'i',
);

/** "4 actually, there was another under the leaves": how it came out. */
export const WHY =
  /, (?:there (?:was|were)|(?:the|my) (?:others?|rest|remaining)(?! .{0,30}\b(?:died|rotted|rooted|dead))|(?:one|two|three|another|\d+) (?:was|were|is|are|had|(?:had|has|have|was|were)n['’]t|got|fell|came|went|broke|snapped|dropped|died|rotted|turned)|found|i (?:had )?(?:missed|found|forgot|miscounted|misread|counted|was there|saw (?:it|them)))\b[^,;.]{0,60}$/i;

/** "Only 22 once I'd counted them properly", "22 now I've counted": what it came to. */
const CAME_TO =
  /^(?<value>(?:only |just |in fact )?(?:\d+|[\p{L}-]+)),? (?:once|when|after|now(?: that)?)(?: (?:i|we)(?:['’](?:d|ve))?)? (?:re)?counted\b[^,;.]{0,30}[.!]?$/iu;
/** "Five with the one I forgot about". */
const WITH_IT =
  /^(?<value>(?:only |just )?(?:\d+|[\p{L}-]+)),? (?:with|counting|including) (?:the|that) (?:(?:other )?one|other) (?:that )?(?:i|we)(?:['’]d| had)? (?:forgot|forgotten|missed|overlooked|left out|dropped)\b[^,;.]{0,30}[.!]?$/iu;

/** Whether the text takes back what was just said, by its first words or its last. */
export function hasSecondThoughts(text: string): boolean {
  const words = text.trim().slice(0, LONGEST);
  return [CAME_TO, WITH_IT, doubtsFirst, doubtsLast, onlyDid, noValue].some((pattern) =>
    pattern.test(words.replace(WHY, '')),
  );
}
/** "They were nodal", "the cause was rot". */
const itWas =
  /^(?:mine|it|that(?: (?:tray|pot|lot|batch|one|row|shelf))?|this|they|them|those|these|(?:the )?(?:cause|place|date|day|count|number|size))(?: \d+)?(?:['’]?s| is| was| were| came| arrived| happened| went in| were taken| were struck) (?:actually |really |only |all )?(?:(?:meant|supposed) to (?:be|say|have been) )?(.{1,60}?)(?:,? (?:that )?(?:i['’]m|i am|i was|we['’]re) (?:looking at|holding|on about|talking about))?$/i;
/** "Sorry, three". */
const afterThought =
  /^(?:well |just |only |make that |in |i(?: now)? (?:make it|see|count|counted|get|find)(?: only| just)? )?(.{1,40})$/i;
const onlyDid =
  /^(?:no[, ]+|sorry[, ]+|well[, ]+|actually[, ]+)?(?:(?:i|we)(?:['’]ve| have)? )?(?:only|just) (?:did|done|managed|got (?:round to|to|through|as far as)|got(?=.* (?:done|in|out|up|through)$)) (.{1,40}?)(?: done| in| out| up| through)?$/i;
/** "Did those yesterday". */
const didThat = /^(?:i |we )?did (?:that|those|them|it)(?: all| both)? (.{1,30})$/i;
/** "There were 14 actually". */
const thereWere =
  /^(?:but )?there(?:['’]s| is| are| was| were) (?:actually |really |only |just )*(.{1,20})$/i;
/** "Nope, the Gravy Boat it was": the plant told first. */
const wasThat = /^(?:no|nope|nah|naw|ah no|oh no)[,.! ]+(?:the |my )?(.{2,40}?),? (?:it|that) was$/i;
/** "No, 3 was right after all". */
const wasRight =
  /^(?:the )?(.{1,20}) (?:was|is) (?:right|correct)(?: (?:after all|the first time|all along|before|really))?$/i;
/** "I was looking at the Moss Cardinal". */
const lookedAt =
  /^(?:i|we) (?:was|were|had been|must have been)(?: only| just)? (?:looking at|thinking of|talking about|holding|reading|counting) (?:the |my )?(.{2,40}?)(?:['’]s)?(?: (?:label|tag|pot|tray))?$/i;
/** "They went to Ines". */
const wentTo = /^(?:it|that|they|those) (?:went|were given|were sold|was) (to .{1,40})$/i;
const ownDeed =
  /\b(?:i|we|were|was|that|which) (?:only |just |actually )?(took|taken|struck|lost|sold|gave|pinched|moved|potted(?: on| up)?|planted(?: out)?)\b|\b(died)\b/i;

/** "The planting out was on Friday": the deed by its noun. */
const ownNoun = new RegExp(`\\bthe (?:last )?(${entryNouns}) (?:was|were|should)\\b`, 'i');

/** "The dead count should be 4", "number rooted was 6": the deed by what was counted. */
const COUNTED: readonly (readonly [string, Posting['kind']])[] = [
  ['dead|deaths?|loss|losses|lost', 'loss'],
  ['rooted|roots?|rooting', 'check'],
  ['potted(?: on| up)?', 'potOn'],
  ['planted(?: out)?', 'plantOut'],
  ['sold|sales?|given', 'dispatch'],
  ['struck|strike|cuttings?', 'strike'],
];
const ownCount = COUNTED.map(
  ([words, kind]) =>
    [
      new RegExp(
        `\\b(?:(?:${words}) (?:count|number|figure|total|tally)|(?:count|number|figure|total|tally) (?:of )?(?:the )?(?:${words}))\\b`,
        'i',
      ),
      kind,
    ] as const,
);

/**
 * The kind of deed that a correction names, by its noun, whether or not there is such an entry, or by its verb ("I took 13,
 * not 10"), where entries of that kind fit it.
 */
export function kindTold({ ledger }: Sitting, text: string, said: Amend): Posting['kind'] | undefined {
  const noun = ownNoun.exec(text)?.[1];
  if (noun !== undefined) return kindCalled(noun);
  const counted = ownCount.find(([words]) => words.test(text));
  if (counted) return counted[1];
  const [, told = '', died] = ownDeed.exec(text) ?? [];
  const done = kindDone(told.replace(/^taken$/i, 'took')) ?? kindBehind(text);
  const kind = died === undefined ? done : 'loss';
  const isOther = kind !== undefined && kind !== 'strike' && kind !== 'check';
  // "It was the Marble Wren I lost two of": never of how many were taken.
  return kind && (isOther || candidatesFor(ledger, said, said.set ?? {}, [], kind).length > 0)
    ? kind
    : undefined;
}

/** Without doubts before it, and the one of the group to whom it is said. */
const said = (words: string, ledger: Ledger): string => withoutListener(ledger, withoutDoubts(words));

/** Whether the text puts something right, and that is done or asked about; `meant` are the lines of a message replied to. */
export function corrects(sitting: Sitting, text: string, meant: readonly Line[]): boolean {
  if (text.length > LONGEST || sitting.ledger.standing.length === 0) return false;
  const words = said(
    withWholeNames(noteOf(sitting, text))
      .trim()
      .replace(/[.!]$/, '')
      .replace(CAME_TO, '$<value>')
      .replace(WITH_IT, '$<value>')
      .replace(WHY, '')
      .replace(doubtsLast, '')
      .replace(/ (?:that|it) was$/i, ''),
    sitting.ledger,
  );
  const lines = meant.length === 0 && /^mine\b/i.test(words) ? ownLast(sitting) : meant;
  const was =
    itWas.exec(words) ??
    onlyDid.exec(words) ??
    didThat.exec(words) ??
    wentTo.exec(words) ??
    rightAfterAll(sitting, words) ??
    (hasSecondThoughts(text) ? (thereWere.exec(words) ?? afterThought.exec(words)) : null);
  const other =
    wasThat.exec(withWholeNames(noteOf(sitting, text)).trim().replace(/[.!]$/, ''))?.[1] ??
    (hasSecondThoughts(text) ? lookedAt.exec(words)?.[1] : undefined);
  const plant = other === undefined ? null : slotIn(sitting, other);
  if (plant && ('variety' in plant || 'batch' in plant)) {
    amend(sitting, { kind: 'amend', set: plant }, lines);
    return true;
  }
  const value = withoutOwnPlant(sitting, (was?.[1] ?? '').trim());
  const set = was && (slotIn(sitting, value) ?? otherLot(sitting, value, lines) ?? ofTheRest(sitting, value));
  if (!set) return false;
  amend(sitting, { kind: 'amend', set }, lines);
  return true;
}

/** "Only managed nine of the Salt Harrier", "six in the window box", where the last note tells of those: nine. */
function withoutOwnPlant({ ledger }: Sitting, words: string): string {
  const [, many = '', there = ''] =
    /^(\S+) (?:in|into|on|to|at|by|under) (?:the |my )?(.{2,30})$/i.exec(words) ?? [];
  const isThere = lastNote(ledger).some(
    ({ entry }) => 'place' in entry && entry.place?.toLowerCase() === there.toLowerCase(),
  );
  if (isThere) return many;
  const [, value = '', plant = ''] = /^(\S+)(?: of)?(?: the| my| those)? (\p{L}.{1,40})$/iu.exec(words) ?? [];
  const own = lastNote(ledger).flatMap(({ touched }) => touched.map((label) => ledger.batches.get(label)));
  const isOwn = own.some((batch) => batch?.variety?.toLowerCase() === plant.toLowerCase());
  return isOwn && value !== '' ? value : words;
}

/** "No, 3 was right": a number, and no plant or label. */
function rightAfterAll(sitting: Sitting, words: string): RegExpExecArray | null {
  const right = wasRight.exec(words);
  return right && numberIn(sitting, right[1] ?? '') !== null ? right : null;
}

/** "They were the younger ones", "that was out of the March lot". */
function otherLot(sitting: Sitting, words: string, meant: readonly Line[]): Amend['set'] | null {
  const { ledger } = sitting;
  const [only, another] = meant.length > 0 ? standingOn(ledger, meant) : lastNote(ledger);
  return only && !another ? lotSaid(sitting, words, only) : null;
}

/** "No, only three of the rest": so many more than had rooted at the look before. */
function ofTheRest(sitting: Sitting, words: string): Amend['set'] | null {
  const [, said = ''] =
    /^(\S+)(?: more)? of (?:the )?(?:rest|others?|remaining(?: ones)?)$/i.exec(words) ?? [];
  const more = said === '' ? null : numberIn(sitting, said);
  const { ledger } = sitting;
  const [last, another] = lastNote(ledger);
  if (more === null || last?.entry.kind !== 'check' || another) return null;
  const before = ledger.standing.findLast(
    ({ entry, touched, line }) =>
      entry.kind === 'check' && line < last.line && touched[0] === last.touched[0],
  );
  const { rooted } = (before?.entry ?? {}) as { readonly rooted?: unknown };
  return typeof rooted === 'number' ? { rooted: rooted + more } : null;
}

/** The one slot that a few words can mean: a day, a number, a batch, a variety or a place of this ledger. */
export function slotIn(sitting: Sitting, words: string): NonNullable<Amend['set']> | null {
  const { ledger } = sitting;
  const bare = words.replace(/^(?:on|in|at|the|of) (?:the )?/i, '');
  const same = (name: string) => name.toLowerCase() === bare.toLowerCase();
  const batch = liveBatches(ledger).find(({ label }) => same(label));
  if (batch) return { batch: batch.label };
  const variety = [...ledger.varieties.keys()].find(same);
  if (variety !== undefined) return { variety };
  const place = [...ledger.places].find(same);
  if (place !== undefined) return { place };
  const count = numberIn(sitting, words);
  if (count !== null) return { count };
  const recipient = /^(?:to|with) (\p{Lu}[\p{L}'’ ]{0,40})$/u.exec(words)?.[1];
  if (recipient !== undefined) return { to: recipient };
  const date = dayAloneIn(words, sitting.origin.at, sitting.settings, 'past');
  if (date !== null) return { date };
  return manner(sitting, words) ?? personIn(sitting, words);
}

/** "7cm", "tips", "rot", "perlite". */
function manner(sitting: Sitting, words: string): NonNullable<Amend['set']> | null {
  if (words.split(' ').length > 3) return null;
  const claims = claimsIn(noteOf(sitting, words));
  const slot = (['potSize', 'cutting', 'medium', 'cause'] as const).find(
    (each) => claims[each] !== undefined,
  );
  return slot === undefined ? null : ({ [slot]: claims[slot] } as NonNullable<Amend['set']>);
}

/** "It was Ines", of plants that were given to somebody. */
function personIn({ ledger }: Sitting, words: string): NonNullable<Amend['set']> | null {
  const gave = lastNote(ledger).some(({ entry }) => entry.kind === 'dispatch' && entry.to !== undefined);
  return gave && /^\p{Lu}[\p{L}'’]*(?: \p{Lu}[\p{L}'’]*){0,2}$/u.test(words) ? { to: words } : null;
}

export function numberIn(sitting: Sitting, said: string): number | null {
  const words = said.replace(/ (?:in all|all up|all told|in total|altogether)$/i, '');
  // "20 people at the club" is a number of something else.
  if (
    words.replace(/ (?:of (?:them|those|these|\d+)|cuttings|plants|plugs|tubers|pots)$/i, '').split(' ')
      .length > 2
  )
    return null;
  const [only, another] = readIn(sitting, words).entries;
  const entry = only?.entry;
  // "It was 11 today" tells the weather.
  const isNumber = !another && entry?.kind === 'answer' && entry.date === undefined;
  return isNumber && typeof entry.value === 'number' ? entry.value : null;
}
