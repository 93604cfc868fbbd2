/** What a ledger yields to take in the hand: bytes, a name, and words that say what they show. */

export interface Paper {
  readonly name: string;
  readonly kind: 'picture' | 'document';
  readonly bytes: Uint8Array;
  /** Says in words what is to be seen, for whoever can't see it or has no time to. */
  readonly caption: string;
}
