/** What is due among a million promised notices, beside the same question put to SQLite bare. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { openDatabase, sqliteLibrary } from '../../ledger/database.js';
import { migrate } from '../../ledger/migrations.js';
import { Outbox } from '../../post/outbox.js';
import { type Measurement, median, timeEach } from './measurement.js';

const NOTICES = 1_000_000;
const RUNS = 400;
const DUE = 5_000;

export async function dueNotices(): Promise<readonly Measurement[]> {
  const folder = mkdtempSync(join(tmpdir(), 'slipnote-bench-'));
  try {
    const path = join(folder, 'ledger.sqlite');
    const database = openDatabase(path);
    migrate(database, path);
    database.script(
      `WITH RECURSIVE n (i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i < ${NOTICES})
       INSERT INTO outbox (key, chat, kind, body, queued_at, due_at)
       SELECT 'k' || i, 'telegram:' || (i % 200000), 'notice', '{"text":"look for roots"}', 0,
              CASE WHEN i % ${NOTICES / DUE} = 0 THEN i ELSE 1000000000 + (i * 7919) % 1000000 END FROM n`,
    );
    const outbox = new Outbox(database);
    const busy = ['telegram:1', 'telegram:2', 'telegram:3'];
    const ours = median(timeEach(RUNS, () => void outbox.due('telegram', 'notice', NOTICES, busy, 100)));
    database.close();
    const bare = new (sqliteLibrary())(path, { readonly: true });
    const query = bare.prepare(
      "SELECT seq, key, chat, body FROM outbox WHERE settled_at IS NULL AND kind = 'notice' AND due_at <= ? ORDER BY due_at, seq LIMIT 100",
    );
    const baseline = median(timeEach(RUNS, () => void query.all(NOTICES)));
    bare.close();
    return [
      {
        name: 'the due among 1,000,000 notices, median',
        unit: 'ms',
        ours,
        baseline,
        against: 'the bare query in SQLite',
        aim: 'under 1 ms',
      },
    ];
  } finally {
    rmSync(folder, { recursive: true });
  }
}
