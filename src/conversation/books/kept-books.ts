/** The books in a ledger file: what a session reads and writes, over the tables of `ledger`. */
import type { Instant } from '../../calendar/clock.js';
import { chatById, pointChat } from '../../ledger/chats.js';
import type { Database } from '../../ledger/database.js';
import { addMember, founderOf, isGrower } from '../../ledger/growers.js';
import { appendLine, readJournal } from '../../ledger/journal.js';
import {
  atTheMachine,
  createLedger,
  firstLedger,
  ledgerById,
  ledgerNamed,
  ledgerSettings,
  ledgersOfGrower,
  renameLedger,
  saveLedgerSettings,
} from '../../ledger/ledgers.js';
import { keepTalk, readTalk } from '../../ledger/talks.js';
import type { Bookkeeping, Speaker } from './bookkeeping.js';
import type { LedgerSettings } from '../settings/ledger-settings.js';
import type { Talk } from '../talk.js';
import type { Outgoing } from '../turn.js';
import type { LedgerName } from '../world.js';

export interface BooksPorts {
  readonly database: Database;
  /** Puts into the outbox, within the transaction. */
  readonly queue: (ledger: number, outgoing: Outgoing, now: Instant) => void;
  /** The ledger of a chat that has none yet and is no grower's of the list: the terminal's. */
  readonly terminalLedger?: string;
}

/** Name of a ledger that was made without being asked for. */
const OWN = 'own';
const GROUP = 'shared';
const TITLE_LENGTH = 60;

export function keptBooks({ database, queue, terminalLedger }: BooksPorts): Bookkeeping {
  /** Who sits at the machine writes as the file's owner. */
  const ownerFor = (grower: string, at: Instant): string =>
    grower === atTheMachine ? (firstLedger(database, at).owner ?? grower) : grower;
  const ledgerForNewChat = ({ from: { id: from }, group, title }: Speaker, at: Instant): number => {
    if (group) return createLedger(database, nameOfGroup(title), null, at);
    if (from === atTheMachine)
      return (terminalLedger && ledgerNamed(database, terminalLedger)?.id) || firstLedger(database, at).id;
    return (
      ledgersOfGrower(database, from).find(({ owner }) => owner === from)?.id ??
      createLedger(database, OWN, from, at)
    );
  };
  const nameOf = (id: number): LedgerName => {
    const ledger = ledgerById(database, id);
    return { id, name: ledger?.name ?? OWN, shared: ledger !== undefined && ledger.owner === undefined };
  };
  return {
    transaction: (work) => database.transaction(work),
    ledgerOf(speaker, at) {
      const { chat, from, group, title } = speaker;
      const known = chatById(database, chat);
      const ledger = known?.ledger ?? ledgerForNewChat(speaker, at);
      if (!known) pointChat(database, chat, ledger);
      if (group && isGrower(database, from.id)) addMember(database, ledger, from.id, at);
      if (group && title !== undefined) renameLedger(database, ledger, nameOfGroup(title));
      return nameOf(ledger);
    },
    founder: (ledger) => founderOf(database, ledger),
    ledgersOf: (grower) =>
      ledgersOfGrower(database, ownerFor(grower, 0)).map(({ id, name, owner }) => ({
        id,
        name,
        shared: owner === undefined,
      })),
    makeLedger: (name, grower, at) => nameOf(createLedger(database, name, ownerFor(grower, at), at)),
    pointChat: (chat, ledger) => pointChat(database, chat, ledger),
    linesAfter: (ledger, after) => readJournal(database, ledger, after),
    append: (ledger, line) => appendLine(database, ledger, line),
    settings: (ledger) => ledgerSettings<LedgerSettings>(database, ledger),
    saveSettings: (ledger, settings) => saveLedgerSettings(database, ledger, settings),
    talk: (ledger, chat) => readTalk<Talk>(database, ledger, chat),
    keepTalk: (ledger, chat, talk, at) => keepTalk(database, ledger, chat, talk, at),
    queue,
  };
}

function nameOfGroup(title: string | undefined): string {
  return title?.trim().slice(0, TITLE_LENGTH).trim() || GROUP;
}
