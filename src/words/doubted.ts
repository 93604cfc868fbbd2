/** What is said of a note that may be meant otherwise than it was read. */
import type { EntryKind } from '../ledger/entry.js';

const deeds: Readonly<Partial<Record<EntryKind, string>>> = {
  stock: 'stock plants',
  receive: 'plants that came in',
  reading: 'a temperature',
  strike: 'cuttings taken',
  tend: 'a job done',
  check: 'a look for roots',
  loss: 'plants lost',
  potOn: 'potting on',
  pinch: 'pinching out',
  move: 'a move',
  hardenOff: 'hardening off',
  plantOut: 'planting out',
  dispatch: 'plants given or sold',
  remark: 'a remark',
  target: 'plants wanted',
  remind: 'a reminder',
  amend: 'a change to an earlier note',
  undo: 'taking back the last note',
};

export function doubtedQuestion(kind: EntryKind): string {
  return `I’m not sure that I follow. Shall I take it as ${deeds[kind] ?? 'a note'}?`;
}

export const doubtedButtons = ['Yes, take it so', 'No'] as const;
export const notMeant = 'All right, noted nothing. Say it in other words, if there was something to note.';
