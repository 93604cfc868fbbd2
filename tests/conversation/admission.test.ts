/** The door: who is let in, by which policy, and what strangers hear. */
import { describe, expect, it } from 'vitest';
import { Admission, type AdmissionPolicy, spacedCode } from '../../src/conversation/settings/admission.js';
import type { Incoming } from '../../src/conversation/turn.js';
import { openDatabase } from '../../src/ledger/database.js';
import { firstLedger } from '../../src/ledger/ledgers.js';
import { migrate } from '../../src/ledger/migrations.js';

const day = 86_400_000;

function door(policy: AdmissionPolicy) {
  const database = openDatabase(':memory:');
  migrate(database, ':memory:');
  firstLedger(database, 0);
  let next = 0;
  return { database, admission: new Admission(database, policy, (below) => next++ % below) };
}

function says(text: string, who: number, group = false): Incoming {
  return {
    chat: group ? 'telegram:-1' : `telegram:${who}`,
    group,
    from: { id: `telegram:${who}`, name: `Grower ${who}` },
    message: '1',
    at: 0,
    text,
  };
}

describe('with a one-time code', () => {
  it('the first to send it owns the bot, and nobody after', () => {
    const { database, admission } = door({ kind: 'invited' });
    const code = spacedCode(admission.ownerCode(0) ?? '');
    expect(code).toMatch(/^[A-Z2-9]{4}-[A-Z2-9]{4}$/);
    expect(admission.admit(says('hello', 1), 0)).toMatchObject({ in: false });
    expect(admission.admit(says(` ${code.toLowerCase()} `, 1), 0)).toMatchObject({
      say: expect.stringMatching(/yours/),
    });
    expect(admission.admit(says('took 3', 1), 0)).toEqual({ in: true });
    expect(firstLedger(database, 0).owner).toBe('telegram:1');
    expect(admission.admit(says(code, 2), 0)).toMatchObject({ say: expect.stringMatching(/not valid/) });
    expect(admission.ownerCode(0)).toBeNull();
  });

  it('a code of an earlier start is worth nothing', () => {
    const { admission } = door({ kind: 'invited' });
    const old = admission.ownerCode(0) ?? '';
    admission.ownerCode(1);
    expect(admission.admit(says(old, 1), 2)).toMatchObject({ say: expect.stringMatching(/not valid/) });
  });

  it('a grower invites another, for a week and once, who does not own anything by it', () => {
    const { database, admission } = door({ kind: 'invited' });
    admission.admit(says(admission.ownerCode(0) ?? '', 1), 0);
    const late = admission.invite('telegram:1', 0);
    expect(admission.admit(says(late, 2), 8 * day)).toMatchObject({
      say: expect.stringMatching(/not valid/),
    });
    const code = admission.invite('telegram:1', 0);
    expect(admission.admit(says(`/start ${code}`, 2), day)).toMatchObject({
      say: expect.stringMatching(/You are in/),
    });
    expect(admission.admit(says('took 3', 2), day)).toEqual({ in: true });
    expect(admission.admit(says(code, 3), day)).toMatchObject({ in: false });
    expect(firstLedger(database, 0).owner).toBe('telegram:1');
  });

  it('a code said in a group lets nobody in, and strangers there hear nothing', () => {
    const { admission } = door({ kind: 'invited' });
    const code = admission.ownerCode(0) ?? '';
    expect(admission.admit(says(code, 5, true), 0)).toEqual({ in: false, say: null });
  });

  it('a stranger is answered once an hour', () => {
    const { admission } = door({ kind: 'invited' });
    expect(admission.admit(says('hi', 5), 0)).toMatchObject({ say: expect.stringMatching(/code/) });
    expect(admission.admit(says('hi', 5), 1_000)).toEqual({ in: false, say: null });
    expect(admission.admit(says('hi', 5), 3_700_000)).toMatchObject({ say: expect.stringMatching(/code/) });
  });
});

describe('with a list', () => {
  it('those on it are in, the first of them owns the first ledger', () => {
    const { database, admission } = door({ kind: 'listed', ids: ['telegram:1', 'telegram:2'] });
    expect(admission.ownerCode(0)).toBeNull();
    expect(admission.admit(says('took 3', 2), 0)).toEqual({ in: true });
    expect(firstLedger(database, 0).owner).toBe('terminal');
    expect(admission.admit(says('took 3', 1), 0)).toEqual({ in: true });
    expect(firstLedger(database, 0).owner).toBe('telegram:1');
    expect(admission.admit(says('took 3', 3), 0)).toMatchObject({ in: false });
  });
});
