/** “The new batch”, “the seven”, behind a split: the parts by their labels, which is all that sets them apart. */
import { SMALL } from '../../language/pieces/number-names.js';
import { alive, type Batch } from '../../ledger/batch.js';
import { liveBatches } from '../../ledger/ledger.js';
import type { Sitting } from '../sitting.js';

/** So long are the parts called so. */
const LATELY_MS = 60 * 24 * 3_600_000;
const LOT = '(?:batch|lot|ones?|half|part|bunch)';
const PARTED = new RegExp(
  `\\bthe (?:(?:new|newer|second|smaller|split[- ]off|separate|other new) ${LOT}|[\\p{L}\\d]+ (?:that |which )?(?:i|\\p{L}{2,}) (?:have |has |['’]ve )?(?:(?:split|hived|parted|divided|broke|separated) off|set apart|separated|split)|(?:ones?|batch|lot) split off)\\b`,
  'giu',
);
const LEFT = new RegExp(
  `\\bthe (?:(?:old|older|first|original|bigger|larger|main) ${LOT}|(?:ones?|rest) (?:that )?(?:stayed|were left|i left|we left)(?: (?:behind|put|where they (?:are|were)))?)\\b`,
  'giu',
);
const BY_SIZE = /\b(?:small|bigg|larg)er\b/i;
/** "The seven", "the batch of 7", "the lot of seven". */
const NUMBERED = new RegExp(`(\\bof )?\\bthe (?:batch of |lot of )?(\\d{1,3}|${SMALL.slice(2).join('|')})\\b(?! ?(?:${LOT}s?|in|on|at|by|that|which|who|of|more|left|days?|weeks?|others?|th|st|nd|rd)\\b)(?=[^\\p{L}\\d]|$)(?! ?(?:of )?(?:january|february|march|april|may|june|july|august|september|october|november|december|jan|feb|mar|apr|jun|jul|aug|sept?|oct|nov|dec)\\b)`, 'giu'); // prettier-ignore

/** The text with labels for the parts of the last split; as it is where it names a plant or a label itself. */
export function withPartsNamed({ ledger, origin }: Sitting, text: string): string {
  const at = ledger.standing.findLastIndex(({ entry }) => entry.kind === 'split');
  const last = ledger.standing[at];
  if (last?.entry.kind !== 'split' || origin.at - last.journal.at > LATELY_MS) return text;
  const live = liveBatches(ledger);
  const parts = last.touched.flatMap((label) => live.find((batch) => batch.label === label) ?? []);
  if (live.some((batch) => names(text, batch))) return withCountedPart(text, parts, live);
  const [left, parted, more] = parts;
  const isNewest = !ledger.standing
    .slice(at + 1)
    .some(({ entry }) => entry.kind === 'strike' || entry.kind === 'receive');
  let named = text;
  if (left && parted && !more && isNewest) {
    const bySize = alive(parted) < alive(left);
    named = named
      .replace(PARTED, (words) => (BY_SIZE.test(words) && !bySize ? words : parted.label))
      .replace(LEFT, (words) => (BY_SIZE.test(words) && !bySize ? words : left.label));
  }
  return named.replace(NUMBERED, (words, of: string | undefined, number: string, from: number) => {
    const many =
      SMALL.indexOf(number.toLowerCase()) < 0 ? Number(number) : SMALL.indexOf(number.toLowerCase());
    // Straight behind the split, its parts alone are spoken of.
    const isLast =
      at === ledger.standing.length - 1 && parts.filter((part) => alive(part) === many).length === 1;
    const [only, another] = (isLast ? parts : live).filter(
      (batch) => alive(batch) === many || (!isLast && batch.rooted === many),
    );
    if (!only || another || !parts.includes(only) || alive(only) !== many) return words;
    // "Potted on the seven rooted" may be any seven.
    if (!of && /^ rooted\b/i.test(text.slice(from + words.length))) return words;
    const isHeading = /^\s*[:,–—-]/.test(text.slice(from + words.length));
    return of ? `of ${only.label}` : isHeading ? only.label : `the ${many} ${only.label}`;
  });
}

/** "The five Salt Harrier are on the sill": the part that holds so many, where no other lot of it does. */
function withCountedPart(text: string, parts: readonly Batch[], live: readonly Batch[]): string {
  const variety = parts[0]?.variety;
  if (variety == null) return text;
  const at = text.toLowerCase().indexOf(` ${variety.toLowerCase()}`);
  const [counted, number = ''] = /\bthe (\p{L}+|\d{1,3})$/iu.exec(text.slice(0, Math.max(0, at))) ?? [];
  if (counted === undefined) return text;
  const small = SMALL.indexOf(number.toLowerCase());
  const many = small < 0 ? Number(number) : small;
  const [only, another] = live.filter((batch) => batch.variety === variety && alive(batch) === many);
  if (!only || another || !parts.includes(only)) return text;
  return `${text.slice(0, at)} ${only.label}${text.slice(at + 1 + variety.length)}`;
}

function names(text: string, { label, variety }: Batch): boolean {
  const lower = text.toLowerCase();
  return (
    (variety !== null && lower.includes(variety.toLowerCase())) ||
    lower.split(/[^\p{L}\d]+/u).includes(label.toLowerCase())
  );
}
