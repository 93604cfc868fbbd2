/** What did it, where the sentence before a loss names it. */
import { causeAlone } from './cause-behind.js';
import { causes, phraseAt } from '../row/lexicon.js';
import type { Proposal } from '../proposal.js';
import type { Sentence } from './sentences.js';

/** "Bloody slugs. Lost four to them", "Vine weevil. 3 Salt Harrier lost": what the sentence before names did it. */
export function blamed(
  proposals: readonly Proposal[],
  { line }: Sentence,
  before: Sentence | undefined,
): readonly Proposal[] {
  if (!before) return proposals;
  const words = /\b(?:to|by) (?:them|it|em)\b/.test(line) ? before.line.split(' ') : [];
  const cause =
    words.map((_, at) => phraseAt(causes, words, at)).find((found) => found)?.value ?? causeAlone(before);
  return proposals.map((each) =>
    each.kind === 'loss' && cause !== undefined && each.slots['cause'] === undefined
      ? { ...each, slots: { ...each.slots, cause } }
      : each,
  );
}
