/** What came of something not done: "never got round to watering, and now they're all drooping". */
import { findHits } from '../grammar/hits.js';
import { wordAt } from '../grammar/rule.js';
import { rules } from '../grammar/rules.js';
import type { Proposal } from '../proposal.js';
import { proposeRemark } from './remark-proposal.js';
import { LONGEST_TWOFOLD, type Sentence, lineOf, plantsIn, sentenceOf } from '../sentences/sentences.js';
import type { Utterance } from '../pieces/utterance.js';

const SUPPOSED = /\b(?:if|might|would|should|had i)\b/;
const SUBJECT = /^(?:now|the|my|our|they|they're|they've|it|it's|all|some)$/;
const NOT_DONE = /\b(?:never|not|forgot|forgotten|(?:did|have|has|had|could)n't)\b/;
const JOINS = /^(?:and|so|but|then)$/;
const AHEAD = /\b(?:will|(?:i|we|they|it)'ll|going to|tomorrow)\b/;

/** The observation that ends a sentence in which nothing was done; of the plant named before it where it names none. */
export function remarkBehind({ pieces }: Sentence, utterance: Utterance): readonly Proposal[] {
  if (pieces.length > LONGEST_TWOFOLD) return [];
  const denied = pieces.findIndex((piece) => NOT_DONE.test(lineOf([piece], utterance)));
  if (denied < 0) return [];
  for (let at = denied + 1; at < pieces.length; at++) {
    if (pieces[at]?.is !== 'break' && !JOINS.test(wordAt(pieces, at))) continue;
    const before = pieces.slice(0, at);
    if (SUPPOSED.test(lineOf(before, utterance))) return [];
    let from = at + 1;
    while (JOINS.test(wordAt(pieces, from))) from++;
    const behind = pieces.slice(from);
    const line = lineOf(behind, utterance);
    if (AHEAD.test(line)) continue;
    const opening = behind[behind[0]?.is === 'when' ? 1 : 0];
    if (opening?.is !== 'plant' && !(opening?.is === 'word' && SUBJECT.test(opening.text))) continue;
    if (findHits(rules, behind).length > 0) continue;
    const named = plantsIn(before).at(-1);
    const theirs = plantsIn(behind).length === 0 && /\b(?:they|they're|they've|it|it's)\b/.test(line);
    const row = named && theirs ? [named, ...behind] : behind;
    const remark = proposeRemark(sentenceOf(row, utterance), utterance);
    if (remark) return remark;
  }
  return [];
}
