/** What a grower asks for that lies outside the ledger: an invitation, the ledger as a file. */
import { type Admission, spacedCode } from './conversation/admission.js';
import type { Errand, World } from './conversation/world.js';
import type { Incoming, Outgoing } from './conversation/turn.js';
import { ledgerCsv } from './exchange/ledger-csv.js';
import { ledgerJson } from './exchange/ledger-json.js';
import { doorWords } from './words/door-words.js';
import { errandWords } from './words/errand-words.js';

export interface ErrandPorts {
  readonly admission: Admission;
  readonly worldOf: (incoming: Incoming) => World;
  /** Milliseconds since 1970. */
  readonly now: () => number;
}

type Brought = Omit<Outgoing, 'chat' | 'key'>;

/** Runs an errand after its turn was committed, and answers what is said to it. */
export async function runErrand(errand: Errand, incoming: Incoming, ports: ErrandPorts): Promise<Brought> {
  switch (errand.kind) {
    case 'invite':
      return {
        text: doorWords.invitation(spacedCode(ports.admission.invite(incoming.from.id, ports.now()))),
      };
    case 'export':
      return exported(errand.format, ports.worldOf(incoming), ports.now());
    default:
      return { text: errandWords.fromCommandLine };
  }
}

function exported(format: 'csv' | 'ics' | 'json', world: World, now: number): Brought {
  if (format === 'ics') return { text: errandWords.fromCommandLine };
  const text =
    format === 'csv'
      ? ledgerCsv(world.ledger)
      : ledgerJson(
          { name: world.current.name, settings: { ...world.settings }, journal: world.journal },
          now,
        );
  return {
    text: errandWords.exported(world.journal.length),
    file: { name: `ledger.${format}`, kind: 'document', bytes: Buffer.from(text) },
  };
}
