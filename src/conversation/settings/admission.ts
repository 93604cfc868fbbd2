/** Decides who may talk to the bot: those on the list, anyone, or those who brought a code. */
import type { Instant } from '../../calendar/clock.js';
import type { Database } from '../../ledger/database.js';
import { admitGrower, isGrower, keepInvitation, useInvitation } from '../../ledger/growers.js';
import { atTheMachine, firstLedger, handOver } from '../../ledger/ledgers.js';
import { doorWords } from '../../words/door-words.js';
import type { Incoming } from '../turn.js';

export type AdmissionPolicy =
  | { readonly kind: 'anyone' }
  /** Ids of senders; the first of them owns the first ledger. */
  | { readonly kind: 'listed'; readonly ids: readonly string[] }
  | { readonly kind: 'invited' };

/** In: the conversation goes on. Out: that is said, or nothing where null. */
export type Admitted = { readonly in: true } | { readonly in: false; readonly say: string | null };

const WEEK_MS = 7 * 86_400_000;
/** A stranger who goes on writing is answered once an hour. */
const STRANGER_MS = 3_600_000;
const STRANGERS = 1_000;
/** Without letters and digits that look alike; 8 of them make a million million codes. */
const LETTERS = 'ABCDEFGHJKLMNPQRSTUVWXYZ23456789';
const CODE = /^(?:\/start\s+)?([A-HJ-NP-Z2-9]{4})[\s-]?([A-HJ-NP-Z2-9]{4})$/i;

export class Admission {
  private readonly answered = new Map<string, Instant>();

  constructor(
    private readonly database: Database,
    private readonly policy: AdmissionPolicy,
    /** A whole number from 0 up to, not including, `below`; of a source that cannot be foreseen. */
    private readonly chance: (below: number) => number,
  ) {}

  /** A new one-time code for the owner, to be printed at the start; null where the bot has one or needs none. */
  ownerCode(now: Instant): string | null {
    if (this.policy.kind !== 'invited' || this.isOwned(now)) return null;
    const code = this.makeCode();
    keepInvitation(this.database, code, { madeBy: null, expiresAt: now + WEEK_MS });
    return code;
  }

  /** A code by which one other grower may come in; made by a grower. */
  invite(grower: string, now: Instant): string {
    const code = this.makeCode();
    keepInvitation(this.database, code, { madeBy: grower, expiresAt: now + WEEK_MS });
    return code;
  }

  /** Whether someone is in already, before anything is fetched or recognised for them. */
  knows(grower: string): boolean {
    switch (this.policy.kind) {
      case 'anyone':
        return true;
      case 'listed':
        return this.policy.ids.includes(grower);
      case 'invited':
        return isGrower(this.database, grower);
    }
  }

  /** Whether someone is in, who is then among the growers; call it inside the transaction. */
  admits(from: Incoming['from'], now: Instant): boolean {
    if (!this.knows(from.id)) return false;
    admitGrower(this.database, from, null, now);
    return true;
  }

  /** Call it inside the turn's transaction: a code is used up together with the turn. */
  admit(incoming: Incoming, now: Instant): Admitted {
    const { from } = incoming;
    switch (this.policy.kind) {
      case 'anyone':
        admitGrower(this.database, from, null, now);
        return { in: true };
      case 'listed':
        if (!this.knows(from.id)) return this.refuse(incoming, now);
        admitGrower(this.database, from, null, now);
        if (from.id === this.policy.ids[0] && !this.isOwned(now)) handOver(this.database, from.id);
        return { in: true };
      case 'invited':
        return this.knows(from.id) ? { in: true } : this.readCode(incoming, now);
    }
  }

  private readCode(incoming: Incoming, now: Instant): Admitted {
    const match = incoming.group ? null : CODE.exec(incoming.text?.trim() ?? '');
    if (!match) return this.refuse(incoming, now);
    const code = `${match[1]}${match[2]}`.toUpperCase();
    const invitation = useInvitation(this.database, code, incoming.from.id, now);
    if (!invitation) return { in: false, say: doorWords.wrongCode };
    admitGrower(this.database, incoming.from, invitation.madeBy, now);
    if (invitation.madeBy !== null) return { in: false, say: doorWords.invited };
    handOver(this.database, incoming.from.id);
    return { in: false, say: doorWords.owner };
  }

  /** Strangers in a group hear nothing. */
  private refuse({ group, from }: Incoming, now: Instant): Admitted {
    const last = this.answered.get(from.id);
    if (group || (last !== undefined && Math.abs(now - last) < STRANGER_MS)) return { in: false, say: null };
    this.answered.delete(from.id);
    this.answered.set(from.id, now);
    const oldest = this.answered.keys().next();
    if (this.answered.size > STRANGERS && !oldest.done) this.answered.delete(oldest.value);
    return { in: false, say: doorWords.stranger };
  }

  private isOwned(now: Instant): boolean {
    return firstLedger(this.database, now).owner !== atTheMachine;
  }

  private makeCode(): string {
    return Array.from({ length: 8 }, () => LETTERS.charAt(this.chance(LETTERS.length))).join('');
  }
}

/** As it is shown: `K7QF-2M9D`. */
export function spacedCode(code: string): string {
  return `${code.slice(0, 4)}-${code.slice(4)}`;
}
