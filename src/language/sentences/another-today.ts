/** "Another five Salt Harrier today" is cuttings only where a note tells nothing else that five more could be of. */
import { ANOTHER_TODAY } from '../grammar/strike/another-lot.js';
import type { Proposal } from '../proposal.js';
import { plantsIn, type Sentence } from './sentences.js';

/** Wanted, and not had. */
const WANTED =
  /\b(?:needs?|needed|wants?|wanted|short|order|ordered|orders|owe|plan|planned|target|aim|aiming)\b/;

/** What was told without such cuttings where they may be five more lost, potted on or wanted. */
export function withoutAnother(
  told: readonly Proposal[],
  sentences: readonly Sentence[],
): readonly Proposal[] {
  if (!told.some(({ rule }) => rule === ANOTHER_TODAY)) return told;
  const plants = sentences.filter(({ pieces }) => plantsIn(pieces).length > 0).length;
  const isPlain =
    told.every(({ kind }) => kind === 'strike') &&
    plants <= told.length &&
    !sentences.some(({ line }) => WANTED.test(line));
  return isPlain ? told : told.filter(({ rule }) => rule !== ANOTHER_TODAY);
}
