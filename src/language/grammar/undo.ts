/** The last entry taken back. */
import { WHY } from './undo/reasons.js';
import { MAY_UNDO, undoRules } from './undo/rules.js';

/** The noun by which a line that undoes calls the entry; null where it calls it by none, undefined where it undoes nothing. */
export function nounTakenBack(line: string): string | null | undefined {
  const undo = undoIn(BOTH.exec(line)?.[1] ?? line);
  return undo && (undo.slice(1).find((noun) => noun !== undefined) ?? null);
}

/** "Undo that and the one before". */
const BOTH = /^(.+?) and (?:also )?the one before(?: that| it)?$/;

/** "Forget both of those", "scrap those two"; "bin both" is done to plants. */
const BOTH_OF =
  /^((?:(?:oh|no|sorry|actually|please|wait|hang on|ok|can you|could you) )*(?:undo|forget|ignore|scrap|scratch|delete|cancel|disregard|revert)) (?:both(?: of (?:those|them|these))?|(?:those|these|them) (?:two|both)|them both|the two of (?:those|them))( .{1,60})?$/;

/** How many entries the line takes back: "undo the last two" two, most one, other lines none. */
export function undosIn(line: string): number {
  const both = BOTH.exec(line);
  if (both?.[1] !== undefined && isUndo(both[1])) return 2;
  const two = BOTH_OF.exec(line);
  if (two?.[1] !== undefined && isUndo(`${two[1]} that${two[2] ?? ''}`)) return 2;
  if (!isUndo(line)) return 0;
  const number = NUMBERED.exec(line)?.[2];
  return number === undefined ? 1 : (COUNTS[number] ?? Number(number));
}

const COUNTS: Readonly<Record<string, number>> = { couple: 2, two: 2, three: 3, four: 4, five: 5 };
/** "The last two entries". */
const NUMBERED =
  /\b(last|previous) (couple|two|three|four|five|[2-5])(?: (?:of )?(?:entries|notes|ones|things|messages|lines|bits))?\b/;

/** "Scratch that the last entry was wrong take it out": an undo, then reasons and undoes, with no mark between. */
function undoWithReason(line: string): RegExpExecArray | undefined {
  const words = line.split(' ');
  if (words.length > 24) return undefined;
  const failed = new Set<number>();
  const isRun = (from: number): boolean => {
    if (from === words.length) return true;
    if (failed.has(from)) return false;
    for (let to = words.length; to > from; to--) {
      const part = words.slice(from, to).join(' ');
      if ((WHY.test(part) || matched(part)) && isRun(to)) return true;
    }
    failed.add(from);
    return false;
  };
  if (!isRun(0)) return undefined;
  for (let from = 0; from < words.length; from++)
    for (let to = words.length; to > from; to--) {
      const undo = matched(words.slice(from, to).join(' '));
      if (undo) return undo;
    }
  return undefined;
}

function matched(line: string): RegExpExecArray | undefined {
  for (const { pattern } of undoRules) {
    const match = pattern.exec(line);
    if (match) return match;
  }
  return undefined;
}

/** The line that was looked at last: a note is asked whole, by its parts and by its sentences, which mostly are the same. */
let last: { readonly line: string; readonly undo: RegExpExecArray | undefined } | undefined;

/** Where an undo stands in the line, if one may. */
function undoIn(line: string): RegExpExecArray | undefined {
  if (!MAY_UNDO.test(line)) return undefined;
  if (last?.line !== line) last = { line, undo: undoFound(line.replace(NUMBERED, '$1 one')) };
  return last.undo;
}

/** "Take off" and "drop" alone are no undo. */
function undoFound(line: string): RegExpExecArray | undefined {
  if (/^(?:take off|take out|scrub out|take away|drop|skip|lose|kill|bin|strike|wipe|discard)$/.test(line))
    return undefined;
  // "Delete please the last one": wherever it is asked nicely.
  const plain = line.replace(/(?<= )please /g, '');
  return (
    matched(line) ??
    undoWithReason(line) ??
    (plain === line ? undefined : (matched(plain) ?? undoWithReason(plain)))
  );
}

/** Whether the line takes something back. */
export function isUndo(line: string): boolean {
  return undoIn(line) !== undefined;
}
