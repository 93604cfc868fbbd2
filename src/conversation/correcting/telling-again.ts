/** "No, all seven rooted", "wrong way round, sorry: 3 of these and all of those": the last note told again, and right this time. */
import type { LoggedEntry, Plant } from '../../ledger/entry.js';
import type { StandingEntry } from '../../ledger/ledger.js';
import type { ReadEntry, ReadNote } from '../../language/note.js';
import { named } from '../../ledger/reach.js';
import { putRightBy, setSlots } from './amending.js';
import { standingOn } from '../batches/deeds.js';
import { isSamePerson } from './contradicting.js';
import { doubtsFirst, doubtsLast, LONGEST, withoutDoubts, withoutNoise } from './doubts.js';
import { fell, noteOfLine, type Slots } from './entry-meant.js';
import { standsSo } from './number-denied.js';
import { isLogged, takeNote } from '../noting.js';
import type { Sitting } from '../sitting.js';
import { plantSaid, withoutSlots } from '../reading/slots.js';
import { sameAlready } from '../../words/amend.js';

/** A note told longer ago is not told again, but followed by another; one that is plainly taken back may be older. */
const WITHIN_MS = 15 * 60_000;
const PLAINLY_WITHIN_MS = 48 * 3_600_000;
const TAKEN_BACK =
  /^(?:no[, ]+(?!(?:roots?|sign|luck|joy|change|movement)\b)|nope[, ]|wrong way round|other way (?:round|about))/i;
/** What a new mishap begins with as often as a correction. */
const MISHAP = /^(?:oops|whoops|sorry|wait|hang on|hold on)\b/i;
/** "It was 14 Salt Harrier in the bin": what was told is told again. */
const CLEFT =
  /^(?:(?:it|that|there) (?:was|were)|(?:it|that)['’]s) (?:only |just |actually |really )?(?:\d+|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve)\b(?! (?:more|other))/i;
/** "Only lost the one": fewer than was told. */
const FEWER =
  /^(?:(?:i|we) \p{L}+(?: \p{L}+){0,3}, )?(?:i |we )?(?:only |just (?=\d|the\b|one\b|two\b|three\b))/iu;
const THOSE = /\b(?:them|those|these|they|it|em)\b/i;
/** "That's the Salt Harrier that have seven rooted", "the four dead ones are Salt Harrier": the same deed and number, of another plant. */
const OF_ANOTHER =
  /\bthe (?:\d+|\p{L}+) (?:\p{L}+ (?:ones|plants|cuttings)|\p{L}+ed ?|lost|dead|sold|given|(?:that|which|who|i|we) [^,.!?]{2,30}?) (?:is|are|was|were) (?:of |from )?(?:the |my )?\p{L}|\b(?:it|that|they|those)(?:['’]s| is| was| were| are) (?:the |my )?[^,.!?]{2,40}? (?:(?:of )?(?:that|which|whom)|who|what|i|we)(?:['’](?:s|ve)| has| have| had| is| are| got)?\b/iu;
/** "Whoops, miscounted, 8 Salt Harrier into 9cm", the day after. */
const MISCOUNTED =
  /^[^.!?]{0,20}\b(?:miscounted|counted wrong|wrong count|counted (?:them )?again|recounted|mistyped|typo)\b/i;
/** "Enid's Salt Harrier count is off, 17 have rooted". */
const COUNT_OFF =
  /^[^.!?]{0,50}\b(?:count|number|figure|total)(?: of [^.,!?]{2,40})? (?:is|was|looks?) (?:off|out|wrong|not right)\b/i;
/** "Only two died, the third one is grand": what was not among them, whoever told of all three. */
const REST_LIVES =
  /\bthe (?:others?|rest|last|second|third|fourth|fifth|sixth)(?: ones?)?(?:['’]s|['’]re| is| are| was| were)\b/i;
/** Told besides, or at last. */
const BESIDES = /\b(?:more|another|also|too|as well|forgot|plus|again)\b/i;

/** Whether the note tells the last one again, of the same plants and acts; what it says then stands in its place. */
export function tellsAgain(sitting: Sitting, text: string, { entries: read, asks: all }: ReadNote): boolean {
  const words = withoutNoise(text);
  // "Undo that, gave three": of no plant, and so of those of the note that is taken back.
  const [first, second] = read;
  const isUndone =
    first?.entry.kind === 'undo' &&
    second !== undefined &&
    isLogged(second.entry) &&
    !named(plantSaid(second.entry as Plant, second.sources));
  const isOff = COUNT_OFF.test(words) && all.length === 0;
  const told = isOff ? read.filter(({ entry }) => entry.kind !== 'remark') : read;
  const entries = isUndone ? read.slice(1) : told;
  const asks = all.map((each) => (isUndone ? { ...each, entry: each.entry - 1 } : each));
  const [only, another] = entries;
  const bare = withoutDoubts(words);
  if (!only || words.length > LONGEST || BESIDES.test(bare.replace(FEWER, ''))) return false;
  const isFew = FEWER.test(bare);
  // "Sorry, I potted them on on Sunday", "only lost the one": those of the note before.
  // "Sorry, I took 8": nobody excuses what was taken.
  const isStrike = only.entry.kind === 'strike' && doubtsFirst.test(words);
  const isOfThem = THOSE.test(words) || isFew || isUndone || TAKEN_BACK.test(words) || isStrike;
  const isPlantAsked = asks.every(({ slot }) => slot === 'batch' || (isStrike && slot === 'variety'));
  const ofThose = !another && isOfThem && (isPlantAsked || isDayAlone(only));
  if (asks.length > 0 && !ofThose) return false;
  if (!another && standsSo(sitting, only.entry)) {
    sitting.reply.text.push(sameAlready);
    return true;
  }
  const isCleft = CLEFT.test(bare) && !another;
  const isCountOff = COUNT_OFF.test(words) && !another;
  const isTakenBack =
    isUndone ||
    isCleft ||
    isCountOff ||
    TAKEN_BACK.test(words) ||
    doubtsFirst.test(words) ||
    doubtsLast.test(words);
  if (asks.length === 0 && OF_ANOTHER.test(words) && wasOfOther(sitting, entries, isTakenBack)) return true;
  // "No, is not correct, I have sold 2 Marble Wren": of another plant than was told a moment ago.
  const isDenied = TAKEN_BACK.test(words) && another === undefined;
  if (isDenied && asks.length === 0 && named(only.entry as Plant) && wasOfOther(sitting, entries))
    return true;
  if (!isTakenBack && !isFew && !(ofThose && isDayAlone(only))) return false;
  const isPlain = ofThose && isFew && (isTakenBack || /\bof (?:them|those|these)\b/i.test(words));
  const isLate =
    isPlain ||
    isCleft ||
    (MISCOUNTED.test(words) && !another) ||
    (another === undefined && isToTheSame(sitting, only));
  const before = isCountOff
    ? lastOfThat(sitting, only.entry)
    : lately(
        sitting,
        isLate ? PLAINLY_WITHIN_MS : WITHIN_MS,
        isCleft || TAKEN_BACK.test(words) || (isFew && REST_LIVES.test(words)),
      );
  const amended = entries.map(({ entry, sources }) => {
    const told = plantSaid(entry as Plant, sources);
    const fits = before.filter(
      (each) =>
        isLogged(entry) &&
        isSameDeed(each, entry, named(told) || !ofThose ? (entry as Plant) : undefined) &&
        (!isFew || (isFewer(each, entry) && !isElsewhere(each, only))) &&
        !(MISHAP.test(words) && hasOtherCause(each, entry)),
    );
    const again = named(told) ? entry : withoutSlots(entry, 'variety', 'crop', 'batch');
    return fits.length === 1 && fits[0] ? { told: fits[0], entry: again as LoggedEntry } : undefined;
  });
  const whole = amended.filter((each) => each !== undefined);
  if (whole.length < entries.length || new Set(whole.map(({ told }) => told)).size < whole.length)
    return false;
  // A line may hold other entries, which stand as they are.
  const lines = [...new Set(whole.map(({ told }) => told.line))];
  putRightBy(
    sitting,
    lines.map((line) => ({
      amends: line,
      entries: standingOn(sitting.ledger, [line]).map((each) => {
        const again = whole.find(({ told }) => told.entry === each.entry);
        return { ...each.entry, ...again?.entry } as StandingEntry['entry'];
      }),
    })),
  );
  return true;
}

/** Whether the first entry is the last note's, of another plant; then that is put right, and what else is said is noted. */
function wasOfOther(sitting: Sitting, [first, ...more]: readonly ReadEntry[], isTakenBack = false): boolean {
  const before = lately(sitting, isTakenBack ? PLAINLY_WITHIN_MS : WITHIN_MS, true);
  const said = first && isLogged(first.entry) ? first.entry : undefined;
  const { batch, variety, crop } = (said ?? {}) as Plant;
  const numbers = (each: object) => {
    const { count, rooted } = each as { readonly count?: unknown; readonly rooted?: unknown };
    return count ?? rooted;
  };
  const [told, another] = before.filter(
    ({ entry, touched }) =>
      said !== undefined &&
      'batch' in entry &&
      isSameDeed({ entry, touched } as StandingEntry, said, undefined) &&
      numbers(said) !== undefined &&
      numbers(entry) === numbers(said) &&
      !(batch !== undefined && touched.includes(batch)),
  );
  if (!told || another || (batch === undefined && variety === undefined)) return false;
  const isRight = setSlots(sitting, [told], batch === undefined ? { variety, crop } : { batch });
  if (isRight && more.length > 0) takeNote(sitting, { entries: more, asks: [] });
  return isRight;
}

/** "Actually three went to Ged", the day after: to whom the last note gave two. */
function isToTheSame({ ledger }: Sitting, { entry, sources }: ReadEntry): boolean {
  const last = ledger.standing.at(-1)?.entry;
  const isTold = sources['count'] === 'said' && sources['date'] !== 'said';
  return (
    isTold &&
    entry.kind === 'dispatch' &&
    last?.kind === 'dispatch' &&
    isSamePerson(entry.to ?? '', last.to ?? '')
  );
}

/** What stands of the last note, where this grower sent it to this chat lately, or another of the group, whom a plain denial puts right. */
function lately(
  { ledger, origin, world }: Sitting,
  within: number,
  isDenied: boolean,
): readonly StandingEntry[] {
  // In a group each grower's own last note, unless that of another is denied.
  const last = ledger.standing.findLast(({ journal }) => isDenied || journal.by === origin.by);
  const isHere = last?.journal.source?.chat === world.chat;
  return last && isHere && origin.at - last.journal.at <= within ? noteOfLine(ledger, last) : [];
}

/** "Enid's Salt Harrier count is off", a day and other notes later: the last time that those were counted. */
function lastOfThat({ ledger, origin, world }: Sitting, said: ReadEntry['entry']): readonly StandingEntry[] {
  return ledger.standing
    .filter(
      (each) =>
        isLogged(said) &&
        isSameDeed(each, said, said as Plant) &&
        each.journal.source?.chat === world.chat &&
        origin.at - each.journal.at <= PLAINLY_WITHIN_MS,
    )
    .slice(-1);
}

/** Whether it is the same kind of deed, and of that plant where one is given. */
function isSameDeed({ entry, touched }: StandingEntry, said: LoggedEntry, plant: Plant | undefined): boolean {
  if (entry.kind !== said.kind) return false;
  if (plant === undefined) return true;
  const { batch, variety } = plant;
  if (batch !== undefined) return touched.includes(batch);
  return variety !== undefined && variety === (entry as Plant).variety;
}

/** Whether a number is said that is smaller than the one that stands. */
function isFewer({ entry }: StandingEntry, said: LoggedEntry): boolean {
  const number = (each: object) => {
    const { count, rooted } = each as { readonly count?: unknown; readonly rooted?: unknown };
    return typeof count === 'number' ? count : typeof rooted === 'number' ? rooted : undefined;
  };
  const now = number(said);
  return now !== undefined && now < (number(entry) ?? Infinity);
}

/** "Only gave 1 of them to Ines today", behind three that went to Idris: another day, another recipient or another place. */
function isElsewhere(standing: StandingEntry, { entry, sources }: ReadEntry): boolean {
  const { date, ...said } = entry as unknown as Slots & Pick<LoggedEntry, 'date'>;
  const own = standing.entry as unknown as Slots;
  return (
    (sources['date'] === 'said' && date !== undefined && !fell(standing, date)) ||
    ['to', 'how', 'place', 'cause'].some(
      (slot) => sources[slot] === 'said' && own[slot] !== undefined && said[slot] !== own[slot],
    )
  );
}

/** Whether nothing but the day of a deed is said. */
function isDayAlone({ sources }: ReadEntry): boolean {
  const said = Object.keys(sources).filter((slot) => sources[slot] === 'said');
  return said.length === 1 && said[0] === 'date';
}

/** "Oops, dropped the tray, lost two" behind two that rotted: lost once more. */
function hasOtherCause({ entry }: StandingEntry, said: LoggedEntry): boolean {
  const cause = (each: object) => (each as { readonly cause?: string }).cause;
  return cause(said) !== undefined && cause(said) !== cause(entry);
}
