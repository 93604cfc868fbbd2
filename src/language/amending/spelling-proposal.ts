/** Sentences that say how a name is spelt: what was taken for a slip of the pen is the name. */
import { wordAt } from '../grammar/rule.js';
import { leading } from '../grammar/runs.js';
import type { Proposal } from '../proposal.js';
import { LINE_LIMIT, plantsIn, type Sentence, textOf } from '../sentences/sentences.js';
import { titleCase } from '../pieces/told-names/name-piece.js';
import type { Utterance } from '../pieces/utterance.js';

const OPEN = leading('no|nope|oops|sorry|wait|actually|ah|oh|by the way|btw|and|but|well|just|think you');
const SPELT = '(?:spelt|spelled|written)';

const PATTERNS = [
  // "It's spelt Tin Harald", "should be spelt Tin Harald", "the spelling is Tin Harald".
  new RegExp(
    `^${OPEN}(?:(?:it's|its|it is|that's|thats|that is|they're|it was|that was|(?:it |that )?should(?: be| have been)|the name is|name is) )?${SPELT} (?:like |as )?plantname$`,
  ),
  new RegExp(`^${OPEN}(?:the |right |correct )*spelling(?: is|'s| was| should be) plantname$`),
  new RegExp(
    `^${OPEN}plantname (?:it's|its|it is|that's|thats|that is|is how (?:it's|it is|you)|it should be) ${SPELT}(?: it)?$`,
  ),
];
/** "It's spelt Tin Harald, not Tin Harold": a name that nobody knows, and the one to be put right. */
const NOT_THIS = new RegExp(
  `^${OPEN}(?:(?:it's|its|it is|that's|thats|that is|it was|that|(?:it |that )?should(?: be| have been)|the name is|name is) )?${SPELT} (?:like |as )?\\w.* not plantname$`,
);
/** "Tin Harold that should be". */
const TURNED = new RegExp(
  `^${OPEN}plantname (?:that|it|this) (?:should|ought to) (?:be|have been|have said|read|say)$`,
);

/** "It's spelt Tin Harald", of a plant that the ledger spells otherwise. */
export function proposeSpelling(sentence: Sentence, utterance: Utterance): Proposal | undefined {
  const line = sentence.line.slice(0, LINE_LIMIT);
  if (NOT_THIS.test(line)) return spelledOtherwise(sentence, utterance);
  const turned = TURNED.test(line);
  if (!turned && !PATTERNS.some((pattern) => pattern.test(line))) return undefined;
  const [named, another] = plantsIn(sentence.pieces);
  const known = named?.plant.variety;
  if (!named || another || known === undefined) return undefined;
  const written = titleCase(textOf([named], utterance));
  const isSame = written.toLowerCase() === known.toLowerCase();
  // What is only said to be meant may be a slip of the thumb, unless it is written like a name.
  const isOther = turned && textOf([named], utterance) !== written;
  return {
    kind: 'amend',
    rule: "it's spelt <plant>",
    slots: { set: { variety: isSame || isOther ? known : written } },
    draft: isSame || isOther ? {} : { plant: named.plant },
  };
}

/** What stands between "spelt" and "not" is the name, whether or not it was taken for a slip of the pen. */
function spelledOtherwise({ pieces }: Sentence, utterance: Utterance): Proposal | undefined {
  const spelt = pieces.findIndex((_, at) => /^(?:spelt|spelled|written)$/.test(wordAt(pieces, at)));
  const not = pieces.findLastIndex((_, at) => wordAt(pieces, at) === 'not');
  const told = pieces.slice(spelt + 1, not).filter(({ is }) => is !== 'break');
  const old = pieces[not + 1];
  const name = told.filter((_, at) => !/^(?:like|as)$/.test(wordAt(told, at)));
  if (old?.is !== 'plant' || name.length === 0 || name.length > 5) return undefined;
  // "It's spelt with a K".
  if (/^(?:with|without|by|in|a|an|the|right|wrong|differently|correctly|wrongly)$/.test(wordAt(name, 0)))
    return undefined;
  if (!name.every(({ is }) => is === 'word' || is === 'plant' || is === 'when')) return undefined;
  const written = titleCase(textOf(name, utterance));
  if (written === textOf([old], utterance)) return undefined;
  return {
    kind: 'amend',
    rule: "it's spelt <plant>",
    slots: { set: { variety: written } },
    draft: { plant: old.plant },
  };
}
