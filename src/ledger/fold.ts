/** Folds a journal into the ledger's state, and says which entry cannot follow and why. */
import { type Draft, draftOf } from './draft.js';
import { evolve } from './evolve.js';
import { emptyLedger, type Ledger, type StandingEntry } from './ledger.js';
import { isAmendment, type JournalLine, type Line, type Posting } from './posting.js';
import { type Conflict, isRefusal, type Refusal } from './refusal.js';

export interface Folded {
  readonly ledger: Ledger;
  /** Lines that do not follow; their entries are left out of the state. */
  readonly conflicts: readonly Conflict[];
}

/** Folds a whole journal, amendments first applied to the lines that they amend. */
export function fold(journal: readonly JournalLine[]): Folded {
  const draft = draftOf(emptyLedger);
  const conflicts: Conflict[] = [];
  const corrected = corrections(journal);
  for (const line of journal) {
    rememberLabels(draft, line);
    if (isAmendment(line.what)) continue;
    for (const entry of corrected.get(line.line) ?? [line.what]) {
      const refusal = post(draft, line, entry);
      if (refusal) conflicts.push({ line: line.line, refusal });
    }
  }
  return { ledger: draft, conflicts };
}

/**
 * The ledger after one more line that is no amendment, or why it cannot follow. An amendment reaches back: append it and
 * `fold` the journal anew.
 */
export function postTo(ledger: Ledger, line: JournalLine & { readonly what: Posting }): Ledger | Refusal {
  const draft = draftOf(ledger);
  rememberLabels(draft, line);
  return post(draft, line, line.what) ?? draft;
}

/** The ledger after these lines; null where one amends or does not follow, so that the whole journal must be folded anew. */
export function advance(ledger: Ledger, lines: readonly JournalLine[]): Ledger | null {
  const draft = draftOf(ledger);
  for (const line of lines) {
    rememberLabels(draft, line);
    if (isAmendment(line.what) || post(draft, line, line.what)) return null;
  }
  return draft;
}

/** What each amended line reads as now; an amendment that was itself amended away no longer counts. */
export function corrections(journal: readonly JournalLine[]): Map<Line, readonly Posting[]> {
  const corrected = new Map<Line, readonly Posting[]>();
  const withdrawn = new Set<Line>();
  for (const { line, what } of [...journal].reverse()) {
    if (!isAmendment(what) || withdrawn.has(line)) continue;
    if (isAmendment(journal[what.amends - 1]?.what ?? ({} as Posting))) withdrawn.add(what.amends);
    else if (!corrected.has(what.amends)) corrected.set(what.amends, what.entries);
  }
  return corrected;
}

function post(draft: Draft, line: JournalLine, entry: Posting): Refusal | null {
  const touched = evolve(draft, line.line, entry);
  if (isRefusal(touched)) return touched;
  const standing: StandingEntry = { line: line.line, by: line.by, journal: line, entry, touched };
  draft.standing.push(standing);
  return null;
}

function rememberLabels(draft: Draft, { what }: JournalLine): void {
  for (const entry of isAmendment(what) ? what.entries : [what]) {
    if (entry.kind === 'strike' || entry.kind === 'receive') draft.labels.add(entry.label);
    if (entry.kind === 'split') for (const part of entry.parts) draft.labels.add(part.label);
  }
}
