/** "That was the other one": the last entry about a batch was about its only fellow. */
import { type Batch, isLive, isOf } from '../../ledger/batch.js';
import type { Plant } from '../../ledger/entry.js';
import { type Ledger, liveBatches } from '../../ledger/ledger.js';
import type { Line } from '../../ledger/posting.js';
import { setSlots } from './amending.js';
import { chooseBatch } from '../answers/choosing.js';
import { dayIn } from '../reading/day-in.js';
import { standingOn } from '../batches/deeds.js';
import type { Sitting } from '../sitting.js';

const theOther = /\b(?:the )?other (?:ones?|batch|lots?|pots?|trays?)\b/i;

/** What says before it that something was told wrongly: "that loss was", "no", "I meant". */
const PUTS_RIGHT =
  /\b(?:(?:it|that|this|they|those|these)(?: [\w’']+){0,3} (?:was|were|is|are|should|went|came)|(?:it|that)['’]s|i (?:mean|meant)|meant|wrong|mistake|mixed|muddled|confused|should (?:be|have)|not (?:that|this|the))\b|^(?:no|nope|oops|sorry|wait|hang on|actually|correction|ah|er|oh no)\b/i;

/** "The other one", "and the other lot, HM1": with nothing told of it. */
const ALONE = /^(?:(?:and|but|the|of|from|for|on) )*$/i;
const NOTHING_TOLD = /^(?:$|[\s.!]+$|\s*[,:;(–—-]|\s+(?:not|from|of|by|in|i mean|sorry)\b)/i;

/** How the other one is, and nothing of what was told: "no, the other one is fine". */
const FARES =
  /^(?:['’]?s|['’]?re| is| are| looks?| seems?)(?: (?:still|all|quite|doing|looking|just))* (?!the\b|what\b|dead\b|gone\b|lost\b|rott|rooted\b)\p{L}+/iu;
/** "The other ones' roots were too small", "the other one wasn't ready". */
const FELL_SHORT =
  /^['’]?s?['’]?(?: roots?| leaves)? (?:(?:was|were) (?:too|not|still|only|just|very|so)|(?:was|were|had|did)n['’]?t)\b/iu;
/** "No losses in the other one". */
const HAS_NONE = /^(?:no|none) (?:\p{L}+ )?(?:in|on|of|from|among|with) (?:the )?$/iu;

/** Whether the other one is only told of beside what was noted: "no losses in the other one", "no, the other one is fine". */
export function isOfOtherAlone(text: string): boolean {
  const found = theOther.exec(text.trim());
  return (
    found !== null &&
    ([FARES, FELL_SHORT].some((form) => form.test(text.trim().slice(found.index + found[0].length))) ||
      HAS_NONE.test(text.trim().slice(0, found.index)))
  );
}

/** "No, the other lot", "that was the other one"; not "the other one can wait", where something is told of it. */
export function saysOther(text: string): boolean {
  const found = theOther.exec(text.trim());
  if (!found) return false;
  const before = text.trim().slice(0, found.index);
  const behind = text.trim().slice(found.index + found[0].length);
  if (isOfOtherAlone(text)) return false;
  return PUTS_RIGHT.test(before) || (ALONE.test(before) && NOTHING_TOLD.test(behind));
}

const nothingElse =
  /^(?:(?:no|oops|sorry|wait|hang on|actually)[,.]? )*(?:that|it|those|they) (?:was|were|is|are) the other (?:ones?|batch|lots?|pots?|trays?)[.!]?$/i;

/** Whether the text says that and nothing else: then its "one" is no number. */
export function saysOtherOnly(text: string): boolean {
  return nothingElse.test(text.trim());
}

const theDated = /\bthe (?:ones|lot|batch) (?=(?:from|of|taken|struck) )/i;

/** "That was the lot from the fourteenth": what was told of belongs to another lot, told by its day. */
export function saysLotOfDay(text: string): boolean {
  const found = theDated.exec(text.trim());
  return found !== null && PUTS_RIGHT.test(text.trim().slice(0, found.index));
}

/** Whether the text says so of the last entry, another lot of its plant is of that day, and it is put there. */
export function swapsToDay(sitting: Sitting, text: string, meant: readonly Line[]): boolean {
  if (!saysLotOfDay(text)) return false;
  const { ledger, origin, settings } = sitting;
  const candidates = meant.length > 0 ? standingOn(ledger, meant) : ledger.standing;
  const last = candidates.findLast(
    ({ entry }) => (entry as Plant).batch !== undefined && entry.kind !== 'split',
  );
  const batch = ledger.batches.get(last?.touched[0] ?? '');
  if (!last || batch?.variety == null) return false;
  const behind = text.split(theDated)[1]?.replace(/[.!]$/, '') ?? '';
  const day = dayIn(behind, origin.at, settings, 'past');
  const labels = fellowsOf(batch, ledger).map(({ label }) => label);
  const lot = day === null ? null : chooseBatch(behind, labels, ledger, day);
  return (
    lot !== null && isOf(lot, { variety: batch.variety }) && setSlots(sitting, [last], { batch: lot.label })
  );
}

/** The only other batch that can be meant by it, or the one named behind it. */
export function otherThan(sitting: Sitting, text: string, batch: Batch): Batch | null {
  if (!saysOther(text)) return null;
  const [only, another] = fellowsOf(batch, sitting.ledger);
  return otherNamed(sitting, text, batch) ?? (another ? null : (only ?? null));
}

/** Whether the text says so, and is done or asked about; `meant` are the lines of the message replied to. */
export function swapsBatch(sitting: Sitting, text: string, meant: readonly Line[]): boolean {
  if (!saysOther(text)) return false;
  const { ledger } = sitting;
  const candidates = meant.length > 0 ? standingOn(ledger, meant) : ledger.standing;
  const last = candidates.findLast(
    ({ entry }) => (entry as Plant).batch !== undefined && entry.kind !== 'split',
  );
  const batch = ledger.batches.get(last?.touched[0] ?? '');
  if (!last || !batch) return false;
  const told = otherNamed(sitting, text, batch);
  const others = told ? [told] : fellowsOf(batch, ledger);
  const [only, another] = others;
  if (!only) return false;
  if (another) sitting.ask({ ask: 'otherBatch', line: last.line, labels: others.map(({ label }) => label) });
  else setSlots(sitting, [last], { batch: only.label });
  return true;
}

/** "The other lot, the ones from the 15th", "the other one, Ember Fox": which, said behind it. */
function otherNamed({ ledger, origin, settings }: Sitting, text: string, batch: Batch): Batch | null {
  const behind = text.split(theOther)[1]?.replace(/^[\s,:;.–—-]+|[.!]$/gu, '') ?? '';
  // "The other one, not the Ember Fox" names the one that it is not.
  if (behind === '' || /\bnot\b/i.test(behind)) return null;
  const labels = liveBatches(ledger).flatMap(({ label }) => (label === batch.label ? [] : [label]));
  return chooseBatch(behind, labels, ledger, dayIn(behind, origin.at, settings, 'past'));
}

/** The live batches of the same plant, else those begun in the same note (a pot of two sorts), else the only other one. */
function fellowsOf(batch: Batch, ledger: Ledger): readonly Batch[] {
  const plant =
    batch.variety === null ? (batch.crop === null ? {} : { crop: batch.crop }) : { variety: batch.variety };
  const others = [...ledger.batches.values()].filter((other) => other.label !== batch.label && isLive(other));
  const alike = others.filter((other) => isOf(other, plant));
  if (alike.length > 0) return alike;
  const noteOf = ({ label }: Batch): string | undefined =>
    ledger.standing.find(({ entry }) => (entry as { label?: string }).label === label)?.journal.source
      ?.message;
  const together = others.filter((other) => noteOf(other) === noteOf(batch));
  return together.length > 0 ? together : others.length === 1 ? others : [];
}
