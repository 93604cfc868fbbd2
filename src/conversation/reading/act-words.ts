/** How a grower begins to tell of an act: what is put behind is read as told of it. */
import type { LoggedEntry } from '../../ledger/entry.js';

export const actWords: Partial<Record<LoggedEntry['kind'], string>> = {
  strike: 'took',
  loss: 'lost',
  potOn: 'potted on',
  pinch: 'pinched',
  plantOut: 'planted out',
  dispatch: 'gave away',
  receive: 'received',
};
