/** Who may use the program, and the codes by which they are let in. */
import { createHash } from 'node:crypto';
import type { Instant } from '../calendar/clock.js';
import type { Database } from './database.js';

export function isGrower(database: Database, id: string): boolean {
  return database.get('SELECT 1 FROM growers WHERE id = ?', id) !== undefined;
}

export function admitGrower(
  database: Database,
  grower: { readonly id: string; readonly name: string },
  by: string | null,
  at: Instant,
): void {
  database.run(
    `INSERT INTO growers (id, name, admitted_at, admitted_by) VALUES (?, ?, ?, ?)
     ON CONFLICT DO UPDATE SET name = excluded.name WHERE name <> excluded.name`,
    grower.id,
    grower.name,
    at,
    by,
  );
}

/** Lets a grower write to a ledger that is not their own: that of a group they speak in. */
export function addMember(database: Database, ledger: number, grower: string, at: Instant): void {
  database.run(
    'INSERT INTO members (ledger, grower, since) VALUES (?, ?, ?) ON CONFLICT DO NOTHING',
    ledger,
    grower,
    at,
  );
}

/** A grower who left a group loses its ledger, and a chat of their own that was switched to it goes back to their own. */
export function removeMember(database: Database, ledger: number, grower: string): void {
  database.run('DELETE FROM members WHERE ledger = ? AND grower = ?', ledger, grower);
  database.run('DELETE FROM chats WHERE id = ? AND ledger = ?', grower, ledger);
}

/** Who has shared a group's ledger longest: its owner. Null where nobody does. */
export function founderOf(
  database: Database,
  ledger: number,
): { readonly id: string; readonly name: string } | null {
  return (
    database.get<{ id: string; name: string }>(
      `SELECT growers.id AS id, growers.name AS name FROM members JOIN growers ON growers.id = members.grower
       WHERE members.ledger = ? ORDER BY since, growers.id LIMIT 1`,
      ledger,
    ) ?? null
  );
}

/** Who made an invitation; null for the code that the start prints, whose user owns the first ledger. */
export interface Invitation {
  readonly madeBy: string | null;
  readonly expiresAt: Instant;
}

/** Keeps a code, as its hash alone; a code that the start printed replaces the one before. */
export function keepInvitation(database: Database, code: string, { madeBy, expiresAt }: Invitation): void {
  database.transaction(() => {
    if (madeBy === null) database.run('DELETE FROM invitations WHERE made_by IS NULL AND used_at IS NULL');
    database.run(
      'INSERT INTO invitations (code_hash, made_by, expires_at) VALUES (?, ?, ?)',
      hashOf(code),
      madeBy,
      expiresAt,
    );
  });
}

/** Uses a code up, for once and for one; null where there is no such code, or it was used, or its time is over. */
export function useInvitation(
  database: Database,
  code: string,
  by: string,
  now: Instant,
): { readonly madeBy: string | null } | null {
  const hash = hashOf(code);
  const { changes } = database.run(
    `UPDATE invitations SET used_by = ?, used_at = ? WHERE code_hash = ? AND used_at IS NULL AND expires_at > ?`,
    by,
    now,
    hash,
    now,
  );
  if (changes === 0) return null;
  const made = database.get<{ made_by: string | null }>(
    'SELECT made_by FROM invitations WHERE code_hash = ?',
    hash,
  );
  return { madeBy: made?.made_by ?? null };
}

function hashOf(code: string): string {
  return createHash('sha256').update(code).digest('hex');
}
