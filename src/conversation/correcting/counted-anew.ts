/** The last note put right by a plant of it: "7 Hob Lantern", "4 Anchorite it was", "3 of those were the Salt Harrier", "not the Mr Tansy". */
import type { LoggedEntry } from '../../ledger/entry.js';
import { alive } from '../../ledger/batch.js';
import type { StandingEntry } from '../../ledger/ledger.js';
import { amend, putRightBy, setSlots } from './amending.js';
import { isAbout, noteOfLine } from './entry-meant.js';
import { ofLastNote } from '../leaning/last-note.js';
import type { Sitting } from '../sitting.js';
import { withoutSlots } from '../reading/slots.js';
import { takenBackLast } from './told-anew.js';
import { takeBack } from './undoing.js';
import { LONGEST, withoutDoubts } from './doubts.js';
import { numberIn } from './few-words.js';

/** So long is a plant alone said of the note before it. */
const JUST_MS = 15 * 60_000;
const LATELY_MS = 24 * 3_600_000;
const SO_MANY =
  /^(?:only |just )?(?<number>\d+|\p{L}+) (?:of )?(?:the |my )?(?<name>\p{L}[^,.;:!?]{1,60}?)(?<was> (?:it|that|there) was| there were| (?:got|were|was|are) done)?[.!]?$/iu;
/** "Short delivery. Salt Harrier 96": behind what says that it was wrong. */
const NAME_FIRST = /^(?:the |my )?(?<name>\p{L}[^,.;:!?\d]{1,60}?)[,:]? (?<number>\d+)[.!]?$/iu;
const ONLY_THERE =
  /^there(?:['’]s| is| are| was| were) only (?<number>\d+|\p{L}+) (?:of )?(?:the |my )?(?<name>\p{L}[^,.;:!?]{1,60})[.!]?$/iu;
/** "Only 7 of the Salt Harrier got done, ran out of compost". */
const RAN_OUT = /,? (?:i |we )?(?:ran out|had run out|run out|was out|were out) of [^,.;]{2,30}[.!]?$/i;
/** "One of my trays was only 20, so that's 116 Salt Harrier", "that makes 116 Salt Harrier". */
const SO_MAKES =
  /^(?:[^.?!]{3,80}?,? so (?:that['’]s |it['’]s |that makes |makes )?|(?:so )?(?:that|which) makes )(?:only |just )?(?<number>\d+|\p{L}+) (?:of )?(?:the |my )?(?<name>\p{L}[^,.;:!?]{1,60}?)(?: in all| altogether| all told| in total| then| now)?[.!]?$/iu;
const OF_THOSE =
  /^(?<number>\d+|\p{L}+) of (?:those|them|these) (?:was|were) (?:actually |really )?(?:the |my )?(?<name>[^,.;:!?]{2,60}?)(?:(?:, | and |, and )(?:only |just |the other )*(?<rest>\d+|\p{L}+) (?:was|were) (?:the |my )?[^,.;:!?]{2,60})?[.!]?$/iu;
const NOT_THAT =
  /^(?:but |though )?not (?:the |my )?(?<name>[^,.;:!?–—-]{2,60}?)(?: though| actually)?(?:[,.;:] .{0,80})?[.!]?$/iu;

/** Whether the words tell another number of a plant of the last note, another plant of some of it, or that one of its plants is not of it. */
export function countsAnew(sitting: Sitting, text: string): boolean {
  if (text.length > LONGEST) return false;
  const words = withoutDoubts(text.trim().replace(RAN_OUT, ''));
  const isDoubted = words !== text.trim();
  return tellsNumber(sitting, words, isDoubted) || tellsStrike(sitting, text) || leavesOut(sitting, words);
}

const varietyIn = ({ ledger }: Sitting, name = ''): string | undefined =>
  [...ledger.varieties.keys()].find((each) =>
    [name, name.replace(/s$/, '')].some((said) => said.toLowerCase() === each.toLowerCase()),
  );

const countOf = ({ entry }: StandingEntry): number | undefined => {
  const { count } = entry as { readonly count?: unknown };
  return typeof count === 'number' ? count : undefined;
};

function setCount(
  sitting: Sitting,
  entries: readonly StandingEntry[],
  variety: string,
  number: string,
  isFew = false,
): boolean {
  const [only, another] = entries.filter((each) => isAbout(sitting.ledger, each, { variety }));
  const count = numberIn(sitting, number);
  const isOther = only !== undefined && (countOf(only) ?? (isFew ? Infinity : count)) !== count;
  return isOther && !another && count !== null && count > 0 && setSlots(sitting, [only], { count });
}

function tellsNumber(sitting: Sitting, words: string, isDoubted: boolean): boolean {
  const found = (isDoubted ? NAME_FIRST.exec(words) : null) ?? SO_MANY.exec(words);
  const { number = '', name, was } = found?.groups ?? {};
  const variety = varietyIn(sitting, name);
  const told = ofLastNote(sitting, was === undefined ? JUST_MS : LATELY_MS);
  const count = was === undefined ? null : numberIn(sitting, number);
  // "Six Salt Harrier it was", behind an undo.
  if (variety !== undefined && count !== null && takenBackLast(sitting, undefined, { variety })) {
    amend(sitting, { kind: 'amend', variety, set: { count } }, []);
    return true;
  }
  // "Only 7 of the Salt Harrier got done", where all were potted on.
  const isFew = was !== undefined && /^(?:only|just)\b/i.test(words);
  return variety !== undefined && setCount(sitting, told, variety, number, isFew);
}

/** "Walt counted wrong, there's only 11 Salt Harrier": of cuttings taken lately, by anyone of the group. */
function tellsStrike(sitting: Sitting, text: string): boolean {
  const { number = '', name } =
    SO_MAKES.exec(withoutDoubts(text.trim()))?.groups ??
    text
      .split(/[,.;:] +/)
      .map((part) => ONLY_THERE.exec(withoutDoubts(part.trim()))?.groups)
      .find((each) => each !== undefined) ??
    {};
  const variety = varietyIn(sitting, name);
  const { ledger, origin } = sitting;
  const begun = ledger.standing.filter(({ entry, journal, touched }) => {
    const batch = ledger.batches.get(touched[0] ?? '');
    const isWhole = batch !== undefined && alive(batch) === batch.count;
    return /^(?:strike|receive)$/.test(entry.kind) && origin.at - journal.at <= 2 * LATELY_MS && isWhole;
  });
  return variety !== undefined && setCount(sitting, begun, variety, number);
}

/** "3 of those were the Salt Harrier, only 1 was Tallow Bell": what the last note told of one plant, shared among two. */
export function someWereOther(sitting: Sitting, text: string): boolean {
  const words = text.length > LONGEST ? '' : withoutDoubts(text.trim());
  const { number = '', name, rest } = OF_THOSE.exec(words)?.groups ?? {};
  const variety = varietyIn(sitting, name);
  const [last, another] = ofLastNote(sitting, LATELY_MS, true);
  if (
    variety === undefined ||
    !last ||
    another ||
    !/^(?:loss|dispatch|plantOut|potOn)$/.test(last.entry.kind)
  )
    return false;
  if (isAbout(sitting.ledger, last, { variety })) return false;
  const [all, some] = [countOf(last), numberIn(sitting, number)];
  if (all === undefined || some === null || some < 1 || some >= all) return false;
  if (rest !== undefined && numberIn(sitting, rest) !== all - some) return false;
  const own = { ...last.entry, count: all - some } as StandingEntry['entry'];
  const { date } = last.entry as { readonly date?: unknown };
  const batches = [...sitting.ledger.batches.values()].filter(
    (each) => each.variety === variety && alive(each) > 0,
  );
  const [only, second] = batches;
  if (!only || second) return false;
  const other = {
    ...withoutSlots(last.entry as unknown as LoggedEntry, 'variety', 'crop', 'batch', 'count'),
    batch: only.label,
    count: some,
    ...(date === undefined ? {} : { date }),
  } as unknown as StandingEntry['entry'];
  return putRightBy(sitting, [{ amends: last.line, entries: [own, other] }]);
}

/** "Not the Mr Tansy, they're still in the greenhouse": what the last note told of that plant beside another. */
function leavesOut(sitting: Sitting, words: string): boolean {
  const variety = varietyIn(sitting, NOT_THAT.exec(words)?.groups?.['name']);
  const [first, ...more] = ofLastNote(sitting, LATELY_MS);
  if (variety === undefined || !first || more.length === 0) return false;
  const of = [first, ...more].filter((each) => isAbout(sitting.ledger, each, { variety }));
  const [only, another] = of;
  const isAlone =
    only && noteOfLine(sitting.ledger, only).filter(({ line }) => line === only.line).length === 1;
  if (!only || another || !isAlone || only.touched.length > 1) return false;
  takeBack(sitting, [only.line]);
  return true;
}
