/** What the demo season yields beside the talk; each is made from the ledger at its end. */
import type { World } from '../conversation/world.js';
import { ledgerCsv } from '../exchange/ledger-csv.js';
import { ledgerJson } from '../exchange/ledger-json.js';

export interface Paper {
  /** File name. */
  readonly name: string;
  readonly make: (world: World) => Promise<string | Uint8Array>;
}

export const demoPapers: readonly Paper[] = [
  { name: 'ledger.csv', make: async ({ ledger }) => ledgerCsv(ledger) },
  {
    name: 'ledger.json',
    make: async ({ current, settings, journal }) =>
      ledgerJson({ name: current.name, settings: { ...settings }, journal }, journal.at(-1)?.postedAt ?? 0),
  },
];
