/** Sentences that ask. */
import type { Day } from '../../calendar/day.js';
import type { Topic } from '../../ledger/entry.js';
import { mergedPlants } from '../acts/drafting.js';
import { questionRules } from '../grammar/question.js';
import { OPENS_QUESTION } from '../grammar/question/openers.js';
import {
  BIDS_TO_TELL,
  PREAMBLE,
  questionProper,
  TOLD_WHEN_BIDDEN,
  unstressed,
} from '../grammar/question/preamble.js';
import type { QuestionRule } from '../grammar/question/rule.js';
import { anyOf, either, opening, whole, within } from '../phrases.js';
import type { Piece, When } from '../pieces/pieces.js';
import type { Proposal } from '../proposal.js';
import { firstOf, LINE_LIMIT, lineOf, plantsIn, type Sentence } from '../sentences/sentences.js';
import type { Utterance } from '../pieces/utterance.js';

/** "Do change it, would you?", "can you rename the Salt Harrier": bidden, not asked. */
const BIDDEN =
  /^(?:please )?do (?:please )?(?:change|correct|amend|fix|alter|update|mend|put)\b.* (?:would|will|could|can) you(?: please)?$|^(?:can|could|would|will) you (?:please )?(?:just )?(?:rename|change the name|correct the name)\b/;

/** "Everything I struck this spring, please", "we need a tally", "show my losses". */
const BIDDEN_TO_TELL = either(
  whole`(everything|all|whatever)( that)? (i|we) .* (please|pls)`,
  opening`
    (i|we) (need|want|would like) (a|the) (count|total|tally|headcount)
    show (my|the|our) (losses|sales|jobs|history|list)
  `,
);

/** "What I did was shade the frame", "what I took was six Salt Harrier": told. */
const TOLD_LAST =
  /^(?:right |so |well |actually |no |sorry )*what (?:i|we)(?:'ve)? (?:have )?(?:actually |really |only )?(?:did|done|took|lost|gave|sold|moved|potted|struck|meant)\b.{0,30}? (?:was|were|is) (?!that\b|it\b)/;

/** "Did the same for the Salt Harrier": told, of what was told before. */
const DID_THE_SAME = /^(?:(?:and|then|also|i|we) )*did (?:exactly |just )?the same\b/;

/** Whether a sentence asks. */
export function isQuestion({ asked, line }: Sentence): boolean {
  if (!asked && TOLD_LAST.test(line.slice(0, LINE_LIMIT))) return false;
  if (BIDDEN.test(line.slice(0, LINE_LIMIT))) return false;
  if (!asked && DID_THE_SAME.test(line)) return false;
  const bare = line.replace(PREAMBLE, '');
  return (
    asked ||
    OPENS_QUESTION.test(questionProper(line)) ||
    // "Would you ever tell me when I took them": what is told of is asked.
    (bare !== line &&
      /\b(?:tell|inform|know|advise|say|remind|wonder|wondering|forget|forgot|forgotten|remember|let me know)\b/.test(
        line.slice(0, line.length - bare.length),
      ) &&
      /^(?:when|what|where|how|which|who)\b/.test(bare)) ||
    (bare !== line &&
      BIDS_TO_TELL.test(line.slice(0, line.length - bare.length)) &&
      TOLD_WHEN_BIDDEN.test(bare)) ||
    /\bhow (?:many|much|long)\b.*\bplease (?:tell|say|advise|inform)\b/.test(line) ||
    // "Everything I struck this spring, please".
    BIDDEN_TO_TELL.test(line) ||
    (OPENS_QUESTION.test(line) && !/^(?:what|how) (?:a|an|nice|lovely)\b/.test(line))
  );
}

export function proposeQuestion(sentence: Sentence, utterance: Utterance): readonly Proposal[] | undefined {
  const { pieces } = sentence;
  const plants = plantsIn(pieces);
  const lastBreak = pieces.findLastIndex(({ is }) => is === 'break');
  const behind = pieces.slice(lastBreak + 1);
  // "The stoep is trampled again, what did I do with them?": the place is no part of what is asked.
  const part = OPENS_QUESTION.test(lineOf(behind, utterance)) ? behind : pieces;
  const place = firstOf(part, 'place')?.place;
  const full = unstressed(sentence.line.slice(0, LINE_LIMIT));
  const bare = questionProper(full);
  const lines = [bare, full, ...partsOf(pieces, utterance)];
  const asks = isQuestion(sentence);
  for (const rule of questionRules) {
    if (!asks && !isUnasked(rule, bare, full, pieces)) continue;
    if (
      rule.needsPlant &&
      plants.length === 0 &&
      !(place && /^how|^what's up|^any/.test(bare)) &&
      !/\b(?:cuttings|they|them|those|these|everything|plants|babies|batches|it)\b|^anything \w+ (?:yet|so far)$/.test(
        bare,
      )
    )
      continue;
    if (!lines.some((line) => rule.pattern.test(line))) continue;
    if (asksNothing(rule, bare, full, { plants: plants.length > 0, place: place !== undefined })) return [];
    const slots = {
      topic: rule.topic,
      ...(place === undefined ? {} : { place }),
      ...boundsOf(firstOf(pieces, 'when')?.when, rule.topic, bare),
    };
    const told = plants.length === 0 ? [undefined] : mergedPlants(pieces);
    return told
      .slice(0, 3)
      .map((plant) => ({ kind: 'question', rule: rule.name, slots, draft: plant ? { plant } : {} }));
  }
  return asks ? [] : undefined;
}

/** What stands behind each break ("right then, kettle's on - anything due?"), the last first. */
function partsOf(pieces: readonly Piece[], utterance: Utterance): readonly string[] {
  const parts: string[] = [];
  for (let at = pieces.length - 1; at >= 0 && parts.length < 4; at--)
    if (pieces[at]?.is === 'break')
      parts.push(questionProper(lineOf(pieces.slice(at + 1), utterance).slice(0, LINE_LIMIT)));
  return parts;
}

/** "I can't count", "didn't count". */
const NO_COUNT = /\b(?:can't|cannot|couldn't|didn't|don't|not|lost) count\b/;

/** Whether a line that does not ask is that question all the same: "Salt Harrier tally", "jobs for today". */
function isUnasked(
  { unasked, alone }: QuestionRule,
  bare: string,
  full: string,
  pieces: readonly Piece[],
): boolean {
  if (!unasked || NO_COUNT.test(bare)) return false;
  if (alone) return unasked.test(bare) || unasked.test(full);
  if (plantsIn(pieces).length === 0 && !/^(?:history|count|total|tally)/.test(bare)) return false;
  // "Total 14 Salt Harrier": told.
  if (firstOf(pieces, 'count') && !/^how many/.test(bare)) return false;
  return unasked.test(bare);
}

/** Small talk that has the shape of a question. */
const TALK = either(
  // "… but where to put them?": advice, which no ledger has.
  within`where (on earth |the heck )?to (put|stand|keep|fit|start|begin)`,
  /^(?:do|did) you remember when|^remember when/,
  opening`
    what if|who (knew|would have|would've|cares)|who'd have
    ${anyOf`
      will|does|did|is|when will|when is|how long will
    `} (it|this|the \w+)( \w+)? ever (quit|stop|stopping|end|let up|rain|warm up|clear up)
  `,
);
/** The same, where no plant is named. */
const GREETING = opening`
  how are you|how do you do|how's it going|how are things|what's up|what's new|(are )?you ok|what do you think
  did you (?!(log|note|get|record|count|save|put|write)\b)|have you (seen|watched|heard|been|read)\b
  who are you|is (this|it|this thing) (on|recording|working|listening)|(are )?you (there|listening|recording)
  is anyone there|can you (hear|here) me|hello is this|is it me
`;
/** "No idea where the secateurs are": nothing of the ledger's. */
const TOOLS = within`
  (where('s| is| are| did i| have i)?|no idea where) .*\b${anyOf`
    secateurs|knife|knives|snips|scissors|trowel|dibber|hose|can|watering can|thermometer|labels?|marker|pen
    book|notebook|glasses|keys|phone|gloves|dog|cat
  `}
`;

/** Whether what is asked is nothing that the ledger could tell. */
function asksNothing(
  { name }: QuestionRule,
  bare: string,
  full: string,
  { plants, place }: { readonly plants: boolean; readonly place: boolean },
): boolean {
  if (TALK.test(full)) return true;
  if (plants) return false;
  return GREETING.test(bare) || (name === 'where is <plant>' && !place && TOOLS.test(full));
}

const AT_PRESENT = /^(?:now|right now|just now|at the moment|at the mo|the mo|mo|at present|tonight)$/;

/** The days that a question asks about; a question of when asks about none. */
function boundsOf(when: When | undefined, topic: Topic, bare: string): { from?: Day; to?: Day } {
  if (!when || topic === 'when' || AT_PRESENT.test(when.words)) return {};
  const past = /^(?:history|count|rate)$/.test(topic) || (topic === 'where' && /\bdid\b/.test(bare));
  const span = past && !/\bwill\b/.test(bare) ? (when.past ?? when.future) : (when.future ?? when.past);
  if (span === undefined || span === 'ask') return {};
  return typeof span === 'string' ? { from: span, to: span } : { from: span.from, to: span.to };
}
