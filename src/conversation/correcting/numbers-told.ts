/** "No, I did 14 of those", "I said six but only five rooted", "10 and 8, not 12 and 6": other numbers of what the last note told. */
import { kindDone } from '../../language/grammar/entry-words.js';
import type { StandingEntry } from '../../ledger/ledger.js';
import type { Posting } from '../../ledger/posting.js';
import { putRightBy, withSlots } from './amending.js';
import type { Context } from '../answers/answering.js';
import { standingOn } from '../batches/deeds.js';
import { ofLastNote } from '../leaning/last-note.js';
import type { Sitting } from '../sitting.js';
import { LONGEST, withoutDoubts, withoutNoise } from './doubts.js';
import { numberIn } from './few-words.js';
import { isAnswering } from './is-answering.js';

/** So long is a number alone of the note before it. */
const WITHIN_MS = 12 * 3_600_000;

const NUMBER = String.raw`\d+|\p{L}+`;
const DEED =
  'did|potted(?: on| up)?|planted(?: out)?|pinched|lost|binned|chucked|dumped|gave|sold|moved|took|struck';

/** "I did 14 of those", "potted 4", "only binned one". */
const DID = new RegExp(
  `^(?:i|we)?(?:['’]ve| have)? ?(?:only |just )?(?<deed>${DEED}) (?:only |just )?(?<number>${NUMBER})(?: of (?:them|those|these))?[.!]?$`,
  'iu',
);
/** "I said six but only five took". */
const SAID = new RegExp(
  `^(?:i|we)(?:['’]d| had)? (?:said|put|wrote|typed|told you) (?<told>${NUMBER}),? (?:but )?(?:it was |there were |it['’]s )?(?:only|just) (?:got |did |took )?(?<number>${NUMBER})(?: of (?:them|those|these))?(?: (?:have |has |had |are |were |was )?(?<fate>took|taken|rooted|roots|made it|survived|potted(?: on)?|died|lost|sold|gone|went|in|done))?[.!]?$`,
  'iu',
);
/** "10 and 8, not 12 and 6", "sorry, 10 and 8". */
const BOTH = new RegExp(
  `^(?:(?:it|that|they|those)(?:['’]s| was| were| is| should be| should have been) |make that |should be )?(?<one>${NUMBER}) and (?<two>${NUMBER})(?:,? not (?<first>${NUMBER}) and (?<second>${NUMBER}))?[.!]?$`,
  'iu',
);

/** By what was seen of them an entry's number is told. */
const FATES: Readonly<Record<string, readonly Posting['kind'][]>> = {
  took: ['check'], taken: ['check'], rooted: ['check'], roots: ['check'], made: ['check'], survived: ['check'],
  potted: ['potOn'], died: ['loss'], lost: ['loss'], sold: ['dispatch'], gone: ['dispatch'], went: ['dispatch'],
}; // prettier-ignore

/** Whether the text tells other numbers of the last note's entries, and they are put right. */
export function tellsNumbers(sitting: Sitting, text: string, context: Context): boolean {
  if (text.length > LONGEST || isAnswering(sitting, context) || context.lines.length > 0) return false;
  const whole = withoutNoise(text);
  const words = withoutDoubts(whole.replace(/^(?:no|nope|nah|sorry|oops|wait|hang on)(?= )/i, '$&,'));
  const entries = ofLastNote(sitting, WITHIN_MS);
  if (entries.length === 0) return false;
  return (
    tellsBoth(sitting, words, entries, words !== whole || /^should be\b/i.test(words)) ||
    tellsSaid(sitting, words, entries) ||
    (words !== whole && tellsDone(sitting, words, entries))
  );
}

function tellsBoth(
  sitting: Sitting,
  words: string,
  entries: readonly StandingEntry[],
  isTakenBack: boolean,
): boolean {
  const told = BOTH.exec(words)?.groups;
  const [first, second, another] = entries;
  if (!told || !first || !second || another) return false;
  const number = (name: string) => numberIn(sitting, told[name] ?? '');
  const [one, two] = [number('one'), number('two')];
  if (one === null || two === null) return false;
  const isDenied = numberOf(first) === number('first') && numberOf(second) === number('second');
  const isPair = first.entry.kind === second.entry.kind && told['first'] === undefined;
  if (!isDenied && !(isPair && isTakenBack && bothCounted(first, second))) return false;
  return setNumbers(sitting, [
    [first, one],
    [second, two],
  ]);
}

const bothCounted = (...entries: readonly StandingEntry[]): boolean =>
  entries.every((each) => typeof numberOf(each) === 'number');

function tellsSaid(sitting: Sitting, words: string, entries: readonly StandingEntry[]): boolean {
  const told = SAID.exec(words)?.groups;
  if (!told) return false;
  const [before, number] = [numberIn(sitting, told['told'] ?? ''), numberIn(sitting, told['number'] ?? '')];
  const kinds = FATES[told['fate']?.toLowerCase().split(' ')[0] ?? ''];
  const [only, another] = entries.filter(
    (each) => numberOf(each) === before && (kinds === undefined || kinds.includes(each.entry.kind)),
  );
  return number !== null && only !== undefined && !another && setNumbers(sitting, [[only, number]]);
}

function tellsDone(sitting: Sitting, words: string, entries: readonly StandingEntry[]): boolean {
  const { deed = '', number = '' } = DID.exec(words)?.groups ?? {};
  const count = number === '' ? null : numberIn(sitting, number);
  if (count === null || count === 0) return false;
  const verb = deed.toLowerCase().split(' ')[0] ?? '';
  const kind = /^(?:binned|chucked|dumped)$/.test(verb) ? 'loss' : (kindDone(deed) ?? kindDone(verb));
  const [only, another] = entries.filter(({ entry }) => verb === 'did' || entry.kind === kind);
  const isOther = only !== undefined && !another && typeof numberOf(only) === 'number';
  return isOther && numberOf(only) !== count && setNumbers(sitting, [[only, count]]);
}

function numberOf({ entry }: StandingEntry): unknown {
  const { count, rooted } = entry as { readonly count?: unknown; readonly rooted?: unknown };
  return entry.kind === 'check' ? rooted : count;
}

/** Puts each right by its own number; several may stand on one line of the journal. */
function setNumbers(sitting: Sitting, told: readonly (readonly [StandingEntry, number])[]): boolean {
  const anew = new Map(
    told.map(([{ entry }, count]) => [entry, withSlots(sitting.ledger, entry, { count })] as const),
  );
  const lines = [...new Set(told.map(([{ line }]) => line))];
  return putRightBy(
    sitting,
    lines.map((line) => ({
      amends: line,
      entries: standingOn(sitting.ledger, [line]).map(({ entry }) => anew.get(entry) ?? entry),
    })),
  );
}
