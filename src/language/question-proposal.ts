/** Sentences that ask. */
import { mergedPlants } from './drafting.js';
import {
  BIDS_TO_TELL,
  OPENS_QUESTION,
  PREAMBLE,
  questionProper,
  questionRules,
  TOLD_WHEN_BIDDEN,
  unstressed,
} from './grammar/question.js';
import type { Piece } from './pieces.js';
import type { Proposal } from './proposal.js';
import { firstOf, LINE_LIMIT, lineOf, plantsIn, type Sentence } from './sentences.js';
import type { Utterance } from './utterance.js';

/** "Do change it, would you?": bidden, not asked. */
const BIDDEN =
  /^(?:please )?do (?:please )?(?:change|correct|amend|fix|alter|update|mend|put)\b.* (?:would|will|could|can) you(?: please)?$/;

/** Whether a sentence asks. */
export function isQuestion({ asked, line }: Sentence): boolean {
  if (BIDDEN.test(line.slice(0, LINE_LIMIT))) return false;
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
    /^(?:everything|all|whatever)(?: that)? (?:i|we) .* (?:please|pls)$|^(?:i|we) (?:need|want|would like) (?:a|the) (?:count|total|tally|headcount)\b|^show (?:my|the|our) (?:losses|sales|jobs|history|list)\b/.test(
      line,
    ) ||
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
    if (!asks && !rule.unmarked) continue;
    const listed =
      (rule.name === 'what is in <place>' && /^(?:list|show me) (?:everything|all)\b/.test(full)) ||
      (rule.name === 'what is due' && /^(?:list|show me) .*\b(?:needs?|needing|due|wants?)\b/.test(full));
    if (
      !asks &&
      !listed &&
      !/^(?:help|due today|<plant> status|show me <plant>|history of <plant>|losses so far|how many <plant>|strike rate of <plant>)$/.test(
        rule.name,
      )
    )
      continue;
    if (
      rule.needsPlant &&
      plants.length === 0 &&
      !(place && /^how|^what's up|^any/.test(bare)) &&
      !/\b(?:cuttings|they|them|those|these|everything|plants|babies|batches|it)\b|^anything \w+ (?:yet|so far)$/.test(
        bare,
      )
    )
      continue;
    if (
      !asks &&
      !listed &&
      plants.length === 0 &&
      !/^(?:help|due today|losses so far)$/.test(rule.name) &&
      !/^(?:history|count|total|tally)/.test(bare)
    )
      continue;
    if (
      !asks &&
      rule.name === 'history of <plant>' &&
      !/\bhistory\b|^(?:log|diary|record|summary|recap)\b/.test(bare)
    )
      continue;
    if (
      !asks &&
      rule.name === 'how many <plant>' &&
      (!/\b(?:count|total|tally|headcount)$|^(?:the )?plantname numbers(?: please| pls)?$|^(?:count|total|tally|number of|how many|qty|quantity|availability|(?:stock|head) \w+)\b/.test(
        bare,
      ) ||
        // "Total 14 Salt Harrier": told.
        (firstOf(pieces, 'count') !== undefined && !/^how many/.test(bare)))
    )
      continue;
    if (
      !asks &&
      rule.name === 'strike rate of <plant>' &&
      !/\b(?:strike rate|success rate|rooting rate|percentage|what %|take %|percent)\b/.test(bare)
    )
      continue;
    // "I can't count", "didn't count".
    if (!asks && /\b(?:can't|cannot|couldn't|didn't|don't|not|lost) count\b/.test(bare)) continue;
    if (!lines.some((line) => rule.pattern.test(line))) continue;
    if (
      /^(?:do|did) you remember when|^remember when|^what if\b|^who (?:knew|would have|would've|cares)\b|^who'd have\b/.test(
        full,
      )
    )
      return [];
    if (
      /^(?:how are you|how's it going|how are things|how do you do|what do you think|what's up|who are you|is this thing on|are you there|you there|can you hear me|is anyone there|what's new|you ok|are you ok|hello is this|is it me)\b/.test(
        bare,
      ) &&
      plants.length === 0
    )
      return [];
    // "No idea where the secateurs are": nothing of the ledger's.
    if (
      rule.name === 'where is <plant>' &&
      plants.length === 0 &&
      place === undefined &&
      /\b(?:where(?:'s| is| are| did i| have i)?|no idea where) .*\b(?:secateurs|knife|knives|snips|glasses|labels?|keys|phone|gloves|trowel|dibber|hose|watering can|marker|pen|scissors|book|notebook|thermometer|can|dog|cat)\b/.test(
        full,
      )
    )
      return [];
    const when = firstOf(pieces, 'when')?.when;
    const past =
      /^(?:history|count|rate)$/.test(rule.topic) ||
      (/^(?:when|where)$/.test(rule.topic) && /\bdid\b/.test(bare));
    const span =
      when && rule.topic !== 'when'
        ? past && !/\bwill\b/.test(bare)
          ? (when.past ?? when.future)
          : (when.future ?? when.past)
        : undefined;
    const bounds =
      span === undefined || span === 'ask'
        ? {}
        : typeof span === 'string'
          ? { from: span, to: span }
          : { from: span.from, to: span.to };
    const slots = {
      topic: rule.topic,
      ...(place === undefined ? {} : { place }),
      ...(/^(?:now|right now|just now|at the moment|at the mo|the mo|mo|at present|tonight)$/.test(
        when?.words ?? '',
      )
        ? {}
        : bounds),
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
