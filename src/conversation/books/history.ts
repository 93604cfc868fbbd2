/** What can be taken back: the journal read from its end, what was already taken back left out. */
import { corrections } from '../../ledger/fold.js';
import { type Amendment, isAmendment, type JournalLine, type Line } from '../../ledger/posting.js';

/** One thing done: an entry, or a correction that may have touched several lines at once. */
export interface Deed {
  readonly what: 'entry' | 'correction';
  /** The lines that taking it back amends. */
  readonly lines: readonly Line[];
}

/** The last thing done that still stands, or null. */
export function lastDeed(journal: readonly JournalLine[]): Deed | null {
  const corrected = corrections(journal);
  const withdrawn = withdrawnOf(journal);
  for (let index = journal.length - 1; index >= 0; index--) {
    const each = journal[index];
    if (!each || withdrawn.has(each.line)) continue;
    if (!isAmendment(each.what)) {
      if (corrected.get(each.line)?.length === 0) continue;
      return { what: 'entry', lines: [each.line] };
    }
    // What was taken back, or put back, is no deed of its own; an edited message is one with what it logged at first.
    if (each.what.entries.length === 0 || isEdit(journal, each)) continue;
    return { what: 'correction', lines: together(journal, index, withdrawn) };
  }
  return null;
}

/** Whether the same message, edited, made the entry say otherwise. */
function isEdit(journal: readonly JournalLine[], { what, source }: JournalLine): boolean {
  const first = isAmendment(what) ? journal[what.amends - 1]?.source : undefined;
  return first != null && first.chat === source?.chat && first.message === source.message;
}

/** Amendments made in one turn are one correction. */
function together(journal: readonly JournalLine[], last: number, withdrawn: ReadonlySet<Line>): Line[] {
  const lines: Line[] = [];
  const end = journal[last];
  for (let index = last; index >= 0; index--) {
    const each = journal[index];
    const same =
      each &&
      end &&
      isAmendment(each.what) &&
      each.postedAt === end.postedAt &&
      each.source?.message === end.source?.message;
    if (!same) break;
    if (!withdrawn.has(each.line)) lines.push(each.line);
  }
  return lines;
}

/** Whether that line is no amendment that still counts. */
export function isWithdrawn(journal: readonly JournalLine[], line: Line): boolean {
  const at = journal[line - 1];
  return !at || !isAmendment(at.what) || withdrawnOf(journal).has(line);
}

/** Lines that an amendment of theirs was itself amended away. */
function withdrawnOf(journal: readonly JournalLine[]): Set<Line> {
  const withdrawn = new Set<Line>();
  for (let index = journal.length - 1; index >= 0; index--) {
    const each = journal[index];
    if (!each || !isAmendment(each.what) || withdrawn.has(each.line)) continue;
    const target = journal[each.what.amends - 1];
    if (target && isAmendment(target.what)) withdrawn.add(target.line);
  }
  return withdrawn;
}

export function takingBack(lines: readonly Line[]): Amendment[] {
  return lines.map((amends) => ({ amends, entries: [] }));
}
