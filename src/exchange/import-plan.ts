/** What an import would do, worked out before anything is done. */
import { fold, postTo } from '../ledger/fold.js';
import { nextLabel } from '../ledger/label.js';
import type { Ledger } from '../ledger/ledger.js';
import { isAmendment, type JournalLine, type Posting } from '../ledger/posting.js';
import { isRefusal, type Refusal } from '../ledger/refusal.js';
import type { ReadCsv } from './ledger-csv.js';

/** Ready to be appended, in order; the line numbers are given when that is done. */
export interface ImportPlan {
  readonly append: readonly Omit<JournalLine, 'line'>[];
  /** Lines that the ledger has already. */
  readonly known: number;
  /** What can't follow and would be left out. */
  readonly refused: readonly { readonly row: number; readonly refusal: Refusal }[];
  /** Batches that would get another label, since the ledger has used theirs: from, to. */
  readonly relabelled: readonly (readonly [from: string, to: string])[];
}

/** Two journals that tell different stories are never mixed. */
export interface Diverged {
  readonly diverged: { readonly line: number };
}

/**
 * For a whole ledger: where the journal here is the beginning of the one that comes in, the rest is appended; where it
 * is the other way about, nothing; else they have diverged, and only an empty ledger can take the newcomer.
 */
export function planWhole(
  here: readonly JournalLine[],
  incoming: readonly JournalLine[],
): ImportPlan | Diverged {
  const shared = Math.min(here.length, incoming.length);
  for (let index = 0; index < shared; index++) {
    if (tellsOf(here[index]) !== tellsOf(incoming[index])) return { diverged: { line: index + 1 } };
  }
  const conflicts = fold([...incoming]).conflicts;
  return {
    append: incoming.slice(here.length),
    known: shared,
    refused: conflicts.map(({ line, refusal }) => ({ row: line, refusal })),
    relabelled: [],
  };
}

/** For rows of a spreadsheet: each must follow from what stands by then; new batches keep their labels where those are free. */
export function planRows(ledger: Ledger, { entries }: ReadCsv, now: number): ImportPlan {
  const append: Omit<JournalLine, 'line'>[] = [];
  const refused: ImportPlan['refused'][number][] = [];
  const relabelled = new Map<string, string>();
  let state = ledger;
  for (const { row, entry, by } of entries) {
    const what = labelled(state, entry, relabelled);
    const line = { at: now, postedAt: now, by, source: null, what };
    const after = postTo(state, { line: state.standing.length + 1, ...line });
    if (isRefusal(after)) refused.push({ row, refusal: after });
    else {
      state = after;
      append.push(line);
    }
  }
  return { append, known: 0, refused, relabelled: [...relabelled].filter(([from, to]) => from !== to) };
}

function labelled(ledger: Ledger, entry: Posting, labels: Map<string, string>): Posting {
  if (entry.kind !== 'strike' && entry.kind !== 'receive') {
    const batch = 'batch' in entry && entry.batch !== undefined ? labels.get(entry.batch) : undefined;
    return batch === undefined ? entry : ({ ...entry, batch } as Posting);
  }
  const wanted = entry.label;
  const free = wanted !== undefined && !ledger.labels.has(wanted);
  const label = free ? wanted : nextLabel(ledger, entry.variety ?? null, entry.crop ?? null);
  if (wanted !== undefined) labels.set(wanted, label);
  return { ...entry, label };
}

function tellsOf(line: JournalLine | undefined): string {
  if (!line) return '';
  return JSON.stringify([line.at, line.by, isAmendment(line.what) ? line.what : { ...line.what }]);
}
