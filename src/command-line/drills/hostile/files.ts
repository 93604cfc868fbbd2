/** Documents and voice notes that lie about themselves, and bytes that are no ledger. */

const paths = [
  '../../etc/passwd',
  '/dev/zero',
  'C:\\con\\nul',
  'ledger.sqlite',
  'a'.repeat(300),
  '\u202Efdp.exe',
  '',
  '\u0000.csv',
] as const;

const kinds = [
  'audio/ogg',
  'application/x-msdownload',
  'text/csv; charset=../../x',
  '',
  'image/svg+xml',
] as const;
const sizes = [0, -1, 1, 9_999_999, 2 ** 31, 2 ** 53, 1e308] as const;

/** Bytes by the id of their file: none of them holds an entry that anyone said. */
export const hostileFiles: ReadonlyMap<string, Uint8Array> = new Map(
  Object.entries({
    empty: '',
    zeros: '\u0000'.repeat(50_000),
    json: '{"slipnote":1,"journal":[{"line":1,"at":"x","what":{"kind":"strike"}}]}',
    proto: '{"__proto__":{"journal":[]},"journal":{"length":1e9}}',
    deep: '['.repeat(100_000),
    sqlite: 'SQLite format 3\u0000' + '\u0001'.repeat(2_000),
    csv: 'kind,date,count\n=cmd|calc,2026-99-99,-1\n"unclosed',
    minima: 'date,minimum\n2026-02-30,1e400\n9999-12-31,NaN\n,,,,\n',
    markup: '<!DOCTYPE x [<!ENTITY a "aaaa">]><x>&a;&a;</x>',
    zip: 'PK\u0003\u0004' + '\u00FF'.repeat(3_000),
  }).map(([id, text]) => [id, Buffer.from(text, 'latin1')]),
);

/** The part of a message that carries such a file. */
export function hostileFile(chance: () => number): object {
  const pick = <T>(list: readonly T[]): T => list[Math.floor(chance() * list.length)] as T;
  const file = {
    file_id: pick([...hostileFiles.keys()]),
    file_unique_id: pick(paths),
    mime_type: pick(kinds),
    file_size: pick(sizes),
  };
  return chance() < 0.5
    ? { document: { ...file, file_name: pick(paths) } }
    : { voice: { ...file, duration: pick(sizes) } };
}
