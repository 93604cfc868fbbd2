/** What was lost, sold, taken or potted on, and how many, where a question asks for those and not for how many there are. */
import type { Day } from '../../calendar/day.js';
import type { Act, Batch } from '../../ledger/batch.js';
import type { Manner } from '../../ledger/entry.js';
import type { Posting } from '../../ledger/posting.js';
import type { Dealt } from '../../words/question-answers.js';

export interface Deed {
  readonly kind: 'loss' | 'dispatch' | 'strike' | 'potOn' | 'plantOut' | 'pinch';
  readonly how?: Manner;
}

/** Deeds by the words that ask for their number; the first that fits. */
const DEEDS: readonly (readonly [RegExp, Deed])[] = [
  [
    /\b(?:loss|losses|deaths|lost|lose|losing|died|die|dead|rotted|damped|failed|perished|binned|chucked|composted|goners?)\b/,
    { kind: 'loss' },
  ],
  [/\b(?:sold|sell|sales?)\b/, { kind: 'dispatch', how: 'sold' }],
  [/\b(?:gave|given|give|gifts?)\b/, { kind: 'dispatch', how: 'given' }],
  [/\b(?:swapped|swaps?|swopped)\b/, { kind: 'dispatch', how: 'swapped' }],
  [
    /\b(?:struck|stuck|taken|took|(?:did|have) .*\btake|cuttings (?:did|have) (?:i|we) (?:do|done))\b/,
    { kind: 'strike' },
  ],
  [/\b(?:potted|(?:did|have) .*\bpot (?:on|up))\b/, { kind: 'potOn' }],
  [/\b(?:planted|(?:did|have) .*\bplant)\b/, { kind: 'plantOut' }],
  [/\b(?:pinched|stopped)\b/, { kind: 'pinch' }],
];

/** Of those not yet dealt with, or of those that remain, the ledger's count tells. */
const OF_THE_OTHERS =
  /n't\b|\b(?:not|never|still|yet|left|remain|remaining|to go|haven’t|should|shall|more|alive|living)\b/;

/** The deed that "how many have I lost?" asks about; null where it asks how many there are. */
export const deedCounted = (text: string): Deed | null =>
  /\b(?:how (?:many|much)|number of|total|tally|count)\b/i.test(text) ? deedNamed(text) : null;

const LISTED =
  /\b(?:what|which(?: ones?| plants?| cuttings?)?)(?: all)? (?:did|have|has) [\w'’]+ (?:all )?(?:lost|lose|sold|sell|gave|given|give|swapped|swap|struck|taken|took|take|potted|pot|planted|plant|pinched)\b|^(?:(?:show|me|all|total|the|my|our) )*(?:losses|deaths|sales|gifts|swaps)\b/i;
/** "Have I lost any?", "did we sell any Salt Harrier yet?", "any losses?". */
const ANY =
  /\b(?:have|did|has) (?:i|we|they|she|he) (?:.* )?any\b|^(?:(?:have there been|were there|been) )?any (?:losses|deaths|sales|gifts|swaps)\b/i;

/** The deed that "what did I lose this year?", "have I lost any?", "sales last month" ask to be told of; null where all that was done is meant. */
export const deedListed = (text: string): Deed | null =>
  LISTED.test(text)
    ? deedNamed(text)
    : ANY.test(text)
      ? deedNamed(text.replace(/ (?:yet|so far|already)\b/i, ''))
      : null;

function deedNamed(text: string): Deed | null {
  const [asked = ''] = text.toLowerCase().split('?');
  return OF_THE_OTHERS.test(asked) ? null : (DEEDS.find(([words]) => words.test(asked))?.[1] ?? null);
}

/** Whether an entry tells of that deed; a gift is what nobody called a sale or a swap. */
export const isDeed = (entry: Posting, { kind, how }: Deed): boolean =>
  entry.kind === kind && (how === undefined || entry.kind !== 'dispatch' || (entry.how ?? 'given') === how);

/**
 * How many of each batch it was done to, between those days where any are given, both inclusive; batches that it was not done to are left out.
 * Where `asked` names somebody who had plants, only theirs.
 */
export function dealtWith(
  batches: readonly Batch[],
  deed: Deed,
  { from, to }: { readonly from?: Day | undefined; readonly to?: Day | undefined },
  asked: string,
): readonly Dealt[] {
  const during = ({ on }: Act): boolean =>
    (from === undefined || on >= from) && (to === undefined || on <= to);
  const acts = (batch: Batch) => batch.acts.filter((act) => during(act) && isDeed(act.entry, deed));
  const named = batches
    .flatMap(acts)
    .map(recipient)
    .find((name) => name !== undefined && isNamed(name, asked));
  return batches.flatMap((batch) => {
    const count = acts(batch)
      .filter((act) => named === undefined || recipient(act) === named)
      .reduce((sum, act) => sum + (act.count ?? 0), 0);
    return count > 0 ? [{ batch, count }] : [];
  });
}

const recipient = ({ entry }: Act): string | undefined =>
  entry.kind === 'dispatch' ? entry.to?.toLowerCase() : undefined;

const isNamed = (name: string, asked: string): boolean =>
  ` ${asked.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, ' ')} `.includes(` ${name} `);
