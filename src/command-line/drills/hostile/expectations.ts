/** What each message of the hostile drill may leave in the ledger, held against what it did leave. */
import type { Database } from '../../../ledger/database.js';
import type { Entry, Strike } from '../../../ledger/entry.js';
import type { Batch } from '../../../ledger/batch.js';
import { fold } from '../../../ledger/fold.js';
import { readJournal } from '../../../ledger/journal.js';
import { allLedgers } from '../../../ledger/ledgers.js';
import { type Amendment, isAmendment, type JournalLine } from '../../../ledger/posting.js';
import { integrityFault } from '../../../ledger/backups.js';
import { mustHold } from '../drill.js';
import { letters } from './texts.js';

type Allows = (entry: Entry) => boolean;

export class Expectations {
  private readonly allowed = new Map<string, Allows>();
  /** Good notes by their key, and when each was said. */
  private readonly honest = new Map<string, { readonly at: number; readonly isIt: Allows }>();
  private readonly told = new Map<string, { readonly texts: string[]; readonly counts: Set<number> }>();

  /** `shown` finds a message, so that what failed can be seen. */
  constructor(private readonly shown: (key: string) => string) {}

  /** Nothing may come of a message for which nothing is allowed. */
  allow(chat: number, message: number, allows: Allows): void {
    const key = `telegram:${chat} ${message}`;
    const before = this.allowed.get(key);
    // Malformed messages may share a number.
    this.allowed.set(key, before ? (entry) => before(entry) || allows(entry) : allows);
  }

  /** What a chat told at a moment, and the number in it: either may answer what an earlier note left open. */
  tells(chat: number, at: number, text: string, count?: number): void {
    const key = `telegram:${chat} ${at}`;
    const told = this.told.get(key) ?? { texts: [], counts: new Set() };
    this.told.set(key, told);
    told.texts.push(letters(text));
    if (count !== undefined) told.counts.add(count);
  }

  /** A good note: one entry, and that one. */
  expect(chat: number, message: number, at: number, isIt: Allows): void {
    this.allow(chat, message, isIt);
    this.honest.set(`telegram:${chat} ${message}`, { at, isIt });
  }

  /** Throws `DrillFailed` at the first entry that nobody said, or that somebody said and is not there; else how many came of what. */
  hold(database: Database): { readonly honest: number; readonly other: number } {
    const fault = integrityFault(database);
    mustHold(fault === null, () => `the ledger is damaged: ${fault}`);
    const seen = new Map<string, number>();
    const answers: JournalLine[] = [];
    for (const { id } of allLedgers(database)) {
      const journal = readJournal(database, id);
      const { conflicts, ledger } = fold(journal);
      mustHold(conflicts.length === 0, () => `lines that do not follow: ${JSON.stringify(conflicts)}`);
      for (const line of journal) {
        const { what, source } = line;
        const key = `${source?.chat} ${source?.message}`;
        seen.set(key, (seen.get(key) ?? 0) + 1);
        if (!this.honest.has(key)) answers.push(line);
        const allows = this.allowed.get(key);
        mustHold(
          allows !== undefined &&
            (isAmendment(what)
              ? isEdit(line, what, journal) && what.entries.every((entry) => allows(entry as Entry))
              : allows(what as Entry) || this.wasAnswered(line, ledger.batches, allows)),
          () =>
            `an entry that nobody said, of message ${key}: ${JSON.stringify(what)}, said was ${this.shown(key)}, told meanwhile ${this.meanwhile(line)}`,
        );
      }
    }
    // A good note may be the answer to what an earlier one left open: then it stands under that one's message.
    const missing = [...this.honest].filter(([key, { at, isIt }]) => {
      const answering = answers.filter(
        ({ what, source, postedAt }) =>
          postedAt === at && key.startsWith(`${source?.chat} `) && isIt(what as Entry),
      );
      return (seen.get(key) ?? 0) + answering.length !== 1;
    });
    mustHold(
      missing.length === 0,
      () =>
        `good notes not logged once: ${missing
          .slice(0, 3)
          .map(([key]) => this.shown(key))
          .join(', ')}`,
    );
    return { honest: this.honest.size, other: answers.length };
  }

  private meanwhile({ source, postedAt }: JournalLine): string {
    const texts = this.told.get(`${source?.chat} ${postedAt}`)?.texts ?? [];
    return JSON.stringify(texts.map((text) => text.slice(0, 80)));
  }

  /**
   * Whether the chat told the number or the name when the entry was made, or what its ledger holds under the entry's
   * label, and all else is as it was noted.
   */
  private wasAnswered(
    { postedAt, source, what }: JournalLine,
    own: ReadonlyMap<string, Batch>,
    allows: Allows,
  ): boolean {
    const told = this.told.get(`${source?.chat} ${postedAt}`);
    const tells = (words?: string | null): boolean =>
      typeof words === 'string' && told?.texts.some((text) => text.includes(letters(words))) === true;
    const { count, variety, batch, crop, ...rest } = what as Strike;
    const counted = typeof count === 'number' && told?.counts.has(count) === true;
    const meant = own.get(batch ?? '');
    const named = tells(variety) || tells(meant?.variety) || tells(meant?.label);
    const left = {
      ...rest,
      ...(counted ? {} : { count }),
      ...(named ? {} : { variety }),
      ...(meant !== undefined && named ? {} : { batch, crop }),
    };
    return (counted || named) && allows(left as Entry);
  }
}

/** Whether an edit of the message put right what that message logged; malformed messages that share a number edit each other. */
function isEdit(
  { source }: JournalLine,
  { amends, entries }: Amendment,
  journal: readonly JournalLine[],
): boolean {
  const before = journal[amends - 1]?.source;
  return entries.length > 0 && before?.chat === source?.chat && before?.message === source?.message;
}
