/** A turn in process, note in and reply committed, with 2,000 batches in the ledger; beside one bare insert. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { asDay } from '../../calendar/day.js';
import { instantAt } from '../../calendar/zone.js';
import { keptBooks } from '../../conversation/books/kept-books.js';
import { Session } from '../../conversation/books/session.js';
import { openLedgerFile } from '../../ledger/ledger-file.js';
import { median, timeEach, type Bench } from './measurement.js';

const BATCHES = 2_000;
const RUNS = 60;

export const turn: Bench = async () => {
  const folder = mkdtempSync(join(tmpdir(), 'slipnote-turn-'));
  const file = openLedgerFile(folder);
  try {
    const { database } = file;
    database.script('CREATE TABLE echo (id INTEGER PRIMARY KEY, text TEXT)');
    const say = (text: string) => database.run('INSERT INTO echo (text) VALUES (?)', text);
    const books = keptBooks({ database, queue: (_, { text }) => void say(text) });
    const speaker = { chat: 'bench:1', group: false, from: { id: 'bench:1', name: 'Ada' } };
    const at = instantAt(asDay('2026-03-20'), '12:00', 'Europe/London');
    const { id } = database.transaction(() => books.ledgerOf(speaker, at));
    database.transaction(() => {
      for (let line = 1; line <= BATCHES; line++)
        books.append(id, {
          line,
          at,
          postedAt: at,
          by: null,
          source: null,
          what: {
            kind: 'strike',
            variety: `Marl ${line % 200}`,
            crop: 'dahlia',
            count: 20,
            label: `M${line}`,
            date: asDay('2026-03-02'),
          },
        });
    });
    const session = new Session(books, 'Europe/London');
    const ours = timeEach(RUNS, (run) => {
      const message = `${run}-${performance.now()}`;
      session.turn(
        { ...speaker, message, at: at + run * 120_000, text: `lost 1 of M${run + 1}` },
        at + run * 120_000,
      );
    });
    const echo = timeEach(RUNS, () => database.transaction(() => say('lost 1')));
    return [
      {
        name: 'turn',
        unit: 'ms',
        ours: median(ours),
        baseline: median(echo),
        against: 'one bare insert, committed',
        aim: 'under 5 ms',
      },
    ];
  } finally {
    file.close();
    rmSync(folder, { recursive: true });
  }
};
