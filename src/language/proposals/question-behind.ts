/** A question behind something told, or behind another question. */
import { proposeActs } from '../acts/acts.js';
import { wordAt } from '../grammar/rule.js';
import type { Note } from '../note.js';
import { anyOf, whole } from '../phrases.js';
import type { Proposal } from '../proposal.js';
import { isQuestion, proposeQuestion } from './question-proposal.js';
import { type Sentence, sentenceOf } from '../sentences/sentences.js';
import { proposeTarget } from './target-proposal.js';
import type { Utterance } from '../pieces/utterance.js';

/** "Lost half, no idea what did for them": told, not asked. */
const KNOWS_NOT =
  /^(?:and |but )?(?:(?:i've |i have )?no (?:idea|clue)|(?:god|goodness|lord|heaven|who) knows|dunno|(?:i )?don't know|(?:i )?(?:can't|cannot) think|beats me|not sure) (?:what|why|how)\b/;

/** What asks behind a statement by its question mark alone. */
const ALONE_ASKS = /^(?:are we |am i )?(?:on track|enough|doable|in time|too late|too many|too few)\b/;

/** "…, who will kill them", "…, where it's a steady 14 degrees", "…, which Joan named Fallen Arches": without a question mark it tells of what was just named. */
const RELATIVE =
  /^(?:which (?:is|was|sits|stands|has|had|reads)|which (?!one|of)(?:[a-z']+ ){1,4}(?:call|calls|called|named|christened|dubbed|nicknamed)|where (?:it's|it|they|they're)|who(?:'s|'ll|'d)? (?:will|would|is|was|wants?|wanted|asked|say|says|said|always|never|lives?|runs?|loves?|reckons?|promised|promises|swears?|kills?|grows?|needs?|knows|likes?))\b/;

/** "From the Salt Harrier, struck in March, are 5 rooted": the verb before its subject, and nothing asked. */
const TURNED = /^(?:are|is|have|has) \d+ (?:already |now |nicely |well )?(?:rooted|dead|gone|died|lost)\b/;

/** Where a question begins behind a statement ("took 5, is that enough?"): the break before it, else 0. */
export function questionStart(sentence: Sentence, utterance: Utterance, note: Note): number {
  for (let at = sentence.pieces.length - 1; at > 0; at--) {
    const piece = sentence.pieces[at];
    if (piece?.is !== 'break') continue;
    const rest = sentenceOf(sentence.pieces.slice(at + 1), utterance);
    if (
      (isQuestion(rest) || (sentence.asked && ALONE_ASKS.test(rest.line))) &&
      !KNOWS_NOT.test(rest.line) &&
      (sentence.asked || ![RELATIVE, TURNED].some((tells) => tells.test(rest.line))) &&
      (proposeActs(sentence.pieces.slice(0, at), [], utterance, note).proposals.length > 0 ||
        // "Need 20 Ember Fox for 6 June, on track?"
        proposeTarget(sentenceOf(sentence.pieces.slice(0, at), utterance), false) !== undefined)
    )
      return at;
  }
  return 0;
}

/** "…? Was it the tunnel I put them in?": a guess at what was just asked, and no question of its own. */
const GUESS = whole`
  (or )?(was|were|is|are) (it|that|they) ((in|on|under|at|by) )?((the|my|our) )?[a-z\d' ]{2,30} (i|we) ${anyOf`
    put|moved|left|stood|had|stuck|planted|popped|shoved
  `} (them|it|those|that)( (in|on|under|into))?
`;

/** Whether a sentence only guesses at the answer to the question before it. */
export const onlyGuesses = (last: Proposal, { asked, line, pieces }: Sentence): boolean =>
  asked &&
  last.kind === 'question' &&
  /^(?:where|status)$/.test(String(last.slots['topic'])) &&
  pieces.some(({ is }) => is === 'place') &&
  pieces.every(({ is }) => is !== 'plant' && is !== 'when') &&
  GUESS.test(line);

const OF_ANY =
  /^ what (?:did|have) (?:i|we) (?:take|taken|strike|struck|lose|lost|sell|sold|do|done)\b(?!.*\b(?:them|those|these|it)\b)/;

/** "How many have I left, and when did I last feed them?" */
export function twoQuestions(sentence: Sentence, utterance: Utterance): readonly Proposal[] | undefined {
  const { pieces, line } = sentence;
  const cut = pieces.findIndex(
    (_, at) =>
      at > 1 &&
      (wordAt(pieces, at - 1) === 'and' || pieces[at - 1]?.is === 'break') &&
      /^(?:when|where|how|what|which)$/.test(wordAt(pieces, at)),
  );
  if (cut < 0 || !/^(?:when|where|how|what|which|are|is|do|did|have)$/.test(wordAt(pieces, 0)))
    return undefined;
  const first = proposeQuestion(sentenceOf(pieces.slice(0, cut - 1), utterance, true), utterance);
  const second = proposeQuestion(sentenceOf(pieces.slice(cut), utterance, true), utterance);
  // "…, and what did I take last month?": of whatever was taken.
  const carried = OF_ANY.test(line.slice(line.lastIndexOf(' what '))) ? undefined : first?.[0]?.draft.plant;
  if (!first?.[0] || !second?.[0]) return undefined;
  return [...first, ...second.map((each) => (carried && !each.draft.plant ? { ...each, carried } : each))];
}
