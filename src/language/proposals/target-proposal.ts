/** Sentences that say how many plants are wanted. */
import { wholeOf } from '../clauses/clauses.js';
import { draftsOf } from '../acts/drafting.js';
import { wordAt } from '../grammar/rule.js';
import { type TargetRule, targetRules, wantsAnAct } from '../grammar/target.js';
import { anyOf, within } from '../phrases.js';
import type { Piece, PlantWords } from '../pieces/pieces.js';
import type { Proposal } from '../proposal.js';
import { LINE_LIMIT, plantsIn, type Sentence } from '../sentences/sentences.js';

/** "I'd love forty Gone Paddling by June". */
export function proposeTarget(
  sentence: Sentence,
  hasAct: boolean,
  carried?: PlantWords,
): readonly Proposal[] | undefined {
  const pieces = potsWanted(sentence.pieces);
  const rule = ruleOf({ ...sentence, pieces });
  if (!rule) return undefined;
  const line = sentence.line.slice(0, LINE_LIMIT);
  // "I need forty of them by the end of June": those told of before.
  const them =
    carried !== undefined &&
    plantsIn(pieces).length === 0 &&
    /\bof (?:them|those|these)\b|^(?:i|we) (?:want|need|will need|would like)\b.* by\b/.test(line);
  // "I need twenty plants for the sale on 16 May": of what, is asked.
  const unnamed =
    plantsIn(pieces).length === 0 &&
    pieces.some((piece, at) => piece.is === 'count' && wordAt(pieces, at + 1) === 'plants') &&
    pieces.some((piece) => piece.is === 'when' && piece.when.future !== undefined);
  if (plantsIn(pieces).length === 0 && !them && !unnamed) return undefined;
  if (hasAct || wantsAnAct(pieces) || /\bfor (?:the )?(?:want|need|lack) of\b|\bafter all\b/.test(line))
    return undefined;
  if (
    /\b(?:don't|didn't|doesn't|won't|wouldn't|not|never|no longer|nobody|no one|if|reckons?|thinks|used to|wanted to|only wanted|only needed|says|said you)\b/.test(
      line,
    ) &&
    !/\bnot (?:later|before|after) than\b/.test(line)
  )
    return undefined;
  if (tellsOfPrice(line, pieces) || FOLK_WANT.test(line)) return undefined;
  const drafts = draftsOf(pieces, wholeOf(pieces)).filter(
    ({ plant, quantity }) =>
      (plant !== undefined || them || unnamed) && (quantity !== undefined || plantsIn(pieces).length === 1),
  );
  if (drafts.length === 0) return undefined;
  // "For the summer fair on 11 July": the day is the one that a preposition of a deadline brings.
  const by = pieces.findLast((piece) => piece.is === 'when' && /^(?:by|before|on)\b/i.test(piece.when.words));
  const deadline = drafts.length === 1 && by?.is === 'when' ? { when: by.when } : {};
  return drafts.map((draft) => ({
    kind: 'target',
    rule: rule.name,
    slots: {},
    draft: { ...draft, ...deadline },
    ...(them ? { carried } : {}),
    future: true,
  }));
}

/** "Fifty pots of Salt Harrier" are fifty of them, where they are only wanted; no "two trays of". */
const potsWanted = (pieces: readonly Piece[]): readonly Piece[] =>
  pieces.map((piece, at) =>
    piece.is === 'pots' &&
    piece.pots !== undefined &&
    wordAt(pieces, at + 1) === 'of' &&
    pieces[at + 2]?.is === 'plant' &&
    !pieces.some(({ is }) => is === 'count')
      ? { is: 'count', quantity: { value: piece.pots }, from: piece.from, to: piece.to }
      : piece,
  );

/** Whether a sentence may say how many plants are wanted. */
export const wantsPlants = (sentence: Sentence): boolean =>
  ruleOf({ ...sentence, pieces: potsWanted(sentence.pieces) }) !== undefined;

/** The rule by which so many are wanted; none where nothing is counted. */
function ruleOf({ pieces, line }: Sentence): TargetRule | undefined {
  if (!pieces.some(({ is }) => is === 'count')) return undefined;
  const seen = line.slice(0, LINE_LIMIT);
  const hasDay = pieces.some((piece) => piece.is === 'when' && piece.when.future !== undefined);
  return targetRules.find(({ pattern, needsDay }) => (hasDay || !needsDay) && pattern.test(seen));
}

/** "What they want for shipping", "they want the earth". */
const WANTED_BY_OTHERS = within`
  what (they|he|she|you|it) (all )?(want|wants|wanted|need|needs|needed|require|ask)
  (they|he|she) (want|wants|wanted) (a fortune|the earth|(silly|stupid|daft) money|an arm)
  the \w+ they (want|wanted)
`;

/** "Tempted to order", "nearly ordered". */
const NOT_ORDERED = within`
  ${anyOf`
    tempted|nearly|almost|would|might|could|considered|considering|wondering|wondered|thinking|thought|toyed|toying
  `}( (to|of|about|with|have))?( \w+)? order(ed|ing)?
`;

/** "Four people want one of the Salt Harrier": so many as there are people, or none promised yet. */
const FOLK_WANT = within`
  (people|folk|folks|ladies|men|women|friends|neighbours|neighbors|customers|members|others|mates|of them|of us|of you) (all |each |now |have )?(want|wants|wanted|need|would like|would love|asked for) (one|a|some|any)
`;

/** "They want 50 quid for six", "tempted to order 50": a price, or a purchase only thought of. */
function tellsOfPrice(line: string, pieces: readonly Piece[]): boolean {
  return (
    WANTED_BY_OTHERS.test(line) ||
    NOT_ORDERED.test(line) ||
    pieces.some(
      ({ is }, at) => is === 'money' && /^(?:want|wants|wanted|wanting)$/.test(wordAt(pieces, at - 1)),
    )
  );
}
