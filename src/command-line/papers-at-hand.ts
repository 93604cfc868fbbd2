/** The viewpoint from which a command draws or exports: the ledger as it stands today, or a conversation played through. */
import { readFileSync } from 'node:fs';
import { machineClock } from '../calendar/clock.js';
import { localDay } from '../calendar/zone.js';
import { viewFrom, type Viewpoint } from '../conversation/prompts/looking-ahead.js';
import { defaultSettings, type LedgerSettings } from '../conversation/settings/ledger-settings.js';
import { replay } from '../conversation/replays/replay.js';
import { newTalk } from '../conversation/talk.js';
import { fold } from '../ledger/fold.js';
import { readJournal } from '../ledger/journal.js';
import { ledgerSettings } from '../ledger/ledgers.js';
import type { JournalLine } from '../ledger/posting.js';
import { memoryKeeper } from '../outlook/keeper.js';
import { BadLine } from './json-lines.js';
import { readingLedger } from './ledger-at-hand.js';
import { readConversation } from './replay.js';
import { CommandFault } from './usage.js';

export interface AtHand {
  readonly name: string;
  readonly journal: readonly JournalLine[];
  readonly view: Viewpoint;
}

/** The ledger that the settings name, read beside whoever writes it. Throws `LedgerFault`. */
export function ledgerView(): Promise<AtHand> {
  return readingLedger(({ database, record, settings: { zone } }) => {
    const journal = readJournal(database, record.id);
    const settings = { ...defaultSettings(zone), ...ledgerSettings<LedgerSettings>(database, record.id) };
    const today = localDay(machineClock.now(), settings.zone);
    const view = { ledger: fold(journal).ledger, settings, talk: newTalk, keeper: memoryKeeper(), today };
    return { name: record.name, journal, view };
  });
}

/** The world at the end of the first conversation in a file of such. Throws `CommandFault`. */
export function replayedView(path: string): AtHand {
  const [line = ''] = readFileSync(path, 'utf8').split('\n');
  try {
    const conversation = readConversation(JSON.parse(line) as Record<string, unknown>);
    const { world, journal } = replay(conversation);
    const end = conversation.until ?? conversation.turns.at(-1)?.at ?? conversation.start;
    return { name: world.current.name, journal, view: viewFrom(world, end) };
  } catch (fault) {
    if (fault instanceof BadLine || fault instanceof SyntaxError) {
      throw new CommandFault(`${path}: its first line is no conversation (${fault.message}).`);
    }
    throw fault;
  }
}
