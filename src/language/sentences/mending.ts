/** A sentence that says no act of its own, but fills or puts right the act told before it in the same note. */
import { proposeAnswer } from '../proposals/answer-proposal.js';
import { onlyGuesses } from '../proposals/question-behind.js';
import { causeOf } from './cause-behind.js';
import { clausesOf, wholeOf } from '../clauses/clauses.js';
import { draftsOf } from '../acts/drafting.js';
import type { Draft } from '../acts/drafting/draft.js';
import { isCropAlone } from '../acts/drafting/one-plant.js';
import { findHits } from '../grammar/hits.js';
import { heldBackRules } from '../grammar/held-back.js';
import { wordAt } from '../grammar/rule.js';
import { rules } from '../grammar/rules.js';
import { tendRules } from '../grammar/tend.js';
import { allButKept } from './kept-back.js';
import type { Note } from '../note.js';
import { whole } from '../phrases.js';
import type { Piece } from '../pieces/pieces.js';
import type { Proposal } from '../proposal.js';
import { atHour } from '../reminding/hour-behind.js';
import { secondThoughtsBefore } from '../amending/restatement/second-thoughts.js';
import { restatementIn } from '../amending/restatement.js';
import type { Sentence } from './sentences.js';
import { slotsOf } from '../slots.js';
import { stoodSomewhere, withoutCompany } from './stood-somewhere.js';
import type { Utterance } from '../pieces/utterance.js';
import { valueSaid } from '../pieces/value-said.js';

const NO_ACT = /^(?:question|answer|undo|amend|remark|remind|reading|tend)$/;

/** What the sentence makes of the act before it; undefined where it speaks for itself. */
export function mendedBy(
  last: Proposal | undefined,
  sentence: Sentence,
  note: Note,
  utterance: Utterance,
): Proposal | undefined {
  if (last?.kind === 'tend') return otherCare(last, sentence) ?? otherPlant(last, sentence);
  if (last?.kind === 'amend') return amendedMore(last, sentence);
  if (last?.kind === 'remind') return atHour(last, sentence);
  if (last && onlyGuesses(last, sentence)) return last;
  if (!last || NO_ACT.test(last.kind)) return undefined;
  return (
    answered(last, sentence, note) ??
    filled(last, sentence) ??
    stoodSomewhere(last, sentence, utterance) ??
    namedNow(last, sentence) ??
    causeOf(last, sentence) ??
    heldBack(last, sentence) ??
    otherPlant(last, sentence) ??
    restated(last, sentence)
  );
}

/** "Planted out the Salt Harrier. Kept two back for Mum." */
function heldBack(last: Proposal, { pieces }: Sentence): Proposal | undefined {
  const [clause] = clausesOf(pieces, heldBackRules);
  return clause?.hit && allButKept(last, clause.hit.rule, draftsOf(pieces, clause)[0]);
}

/** "Make that nine. Three pots of three": more of what is put right, in values alone. */
function amendedMore(last: Proposal, { pieces }: Sentence): Proposal | undefined {
  const set = { ...(last.slots['set'] as Readonly<Record<string, unknown>> | undefined) };
  for (const piece of pieces) {
    if (piece.is === 'break') continue;
    const value = piece.is === 'plant' ? undefined : valueSaid(piece);
    if (!value) return undefined;
    for (const [slot, said] of Object.entries(value)) set[slot] ??= said;
  }
  return { ...last, slots: { ...last.slots, set } };
}

/** "Watered Glitch Toad. No wait, misted it." */
function otherCare(last: Proposal, { line, pieces }: Sentence): Proposal | undefined {
  const [, verb] =
    /^(?:no(?: wait| sorry)?|wait|sorry|actually|i mean|i meant|correction) (?:i )?(\w+)(?: (?:it|them|that|those))?$/.exec(
      line,
    ) ?? [];
  const [hit] = verb === undefined ? [] : findHits(tendRules, pieces);
  return hit?.rule.care === undefined
    ? undefined
    : { ...last, slots: { ...last.slots, care: hit.rule.care } };
}

/** "Checked the Salt Harrier. Nothing.", "the Salt Harrier are rooting! Ten of them". */
function answered(last: Proposal, sentence: Sentence, note: Note): Proposal | undefined {
  const { rooted, ...slots } = last.slots;
  if (last.kind !== 'check' || last.draft.quantity !== undefined) return undefined;
  if (rooted !== undefined && rooted !== 'some') return undefined;
  // "Roots on the Salt Harrier! Not loads like, just 4".
  const few = sentence.pieces.findLast(({ is }) => is === 'count');
  if (few?.is === 'count' && few.quantity.value !== undefined && FEW.test(sentence.line))
    return { ...last, slots, draft: { ...last.draft, quantity: { value: few.quantity.value } } };
  const [only, noun, more] = sentence.pieces;
  const isCounted =
    only?.is === 'count' && noun?.is === 'word' && /^(?:pieces|plants|cuttings)$/.test(noun.text);
  const value =
    isCounted && !more
      ? only.quantity.value
      : proposeAnswer(sentence.line, sentence.pieces, note)?.slots['value'];
  if (typeof value === 'number') return { ...last, slots, draft: { ...last.draft, quantity: { value } } };
  if (value === 'all') return { ...last, slots: { ...slots, rooted: 'all' } };
  if (rooted !== undefined) return undefined;
  if (value === 'none' || value === 'notYet' || value === 'no')
    return { ...last, slots: { ...last.slots, rooted: 'none' } };
  return undefined;
}

/** How many, and that they are few or many. */
const FEW = whole`
  not (loads|many|a lot|lots|all|that many|masses|every one|all of them)( (of them|like|mind|yet|tho|though))*( but)? (just|only|about)? ?[a-z\d]+( (of them|so far|though|tho|yet))*
  (just|only) [a-z\d]+( (of them|so far|though|tho|yet|mind|like))*
`;

/** Other than the talk around where a plant just come by stands: "it's in the cold frame for now", "… till Friday". */
export const saysMore = (piece: Piece): boolean =>
  piece.is !== 'word'
    ? piece.is !== 'when' || !/^(?:until|till|til|for)\b/i.test(piece.when.words)
    : !/^(?:it's|its|is|they're|they|these|those|are|that's|for|now|just|straight|still|here|moment|medium|compost|place|where|container|position|location|type|sat|sit|sits|sitting|stand|stands|standing|stood|live|lives|living|went|below|beyond|over|out|up|down|back|by|both|as|well)$/.test(
        piece.text,
      );

/** "Set on the potting bench for now": the row without the verb that only leads to where they stand. */
const withoutSet = (pieces: readonly Piece[]): readonly Piece[] =>
  /^(?:set|put|parked|placed|left|popped|kept|keeping|housed|stored)$/.test(wordAt(pieces, 0)) &&
  /^(?:on|in|into|onto|under|by|at|down|out)$/.test(wordAt(pieces, 1)) &&
  !pieces.some(({ is }) => is === 'count')
    ? pieces.slice(1)
    : pieces;

/** "Took twelve. Tip cuttings, no hormone, in the utility room." */
function filled(last: Proposal, sentence: Sentence): Proposal | undefined {
  // "The others live in the cold frame".
  const pieces = withoutCompany(sentence.pieces);
  const isOfOthers = pieces.some((piece) => piece.is === 'count' && piece.quantity.whole === 'rest');
  const added =
    /^(?:strike|stock|receive)$/.test(last.kind) && !isOfOthers
      ? slotsAlone(withoutSet(withoutTalkBehind(pieces)).filter(saysMore))
      : undefined;
  return (
    added && {
      ...last,
      slots: { ...slotsOf({ kind: last.kind }, added), ...last.slots },
      draft: { ...added, ...last.draft },
    }
  );
}

/** "Took twelve fuchsia. The variety is Ember Fox." */
function namedNow(last: Proposal, { pieces }: Sentence): Proposal | undefined {
  const { plant } = last.draft;
  if (!/^(?:strike|stock|receive)$/.test(last.kind) || !plant || !isCropAlone(plant)) return undefined;
  const [name, another] = pieces.filter((piece) => piece.is !== 'word' && piece.is !== 'break');
  const isNaming =
    name?.is === 'plant' &&
    another === undefined &&
    name.plant.variety !== undefined &&
    name.plant.crop === undefined &&
    pieces.every((piece) => piece.is !== 'word' || NAMING.test(piece.text));
  return isNaming
    ? { ...last, draft: { ...last.draft, plant: { ...plant, ...name.plant }, known: name.known } }
    : undefined;
}

const NAMING = whole`
  the|its|their|this|one|plant|variety|cultivar|sort|name|is|are|was|were|called|named
  it|it's|they|they're|she's|that's|that|these|those|and
`;

/** "No rooting powder, the tub was empty": the row without the talk behind its first comma. */
function withoutTalkBehind(pieces: readonly Piece[]): readonly Piece[] {
  const cut = pieces.findIndex(({ is }) => is === 'break');
  const behind = pieces.slice(cut + 1);
  const isTalk =
    cut > 0 &&
    behind.length > 1 &&
    behind.length <= LONGEST_TALK &&
    behind.every(({ is }) => is === 'word' || is === 'break') &&
    !behind.some((piece) => piece.is === 'word' && AROUND_SLOTS.test(piece.text) && TELLS.test(piece.text)) &&
    findHits(rules, behind).length === 0;
  return isTalk ? pieces.slice(0, cut) : pieces;
}

const LONGEST_TALK = 12;
/** Words that are slots themselves. */
const TELLS = /^(?:hormone|powder|gel|dip|dipped)$/;

const AROUND_SLOTS = whole`
  no|with|without|in|into|on|under|at|to|of|and|plus|also|too|the|a|an|all|each|per|my|i|it|them|this|any|time|today
  hormone|powder|gel|root|rooting|dip|dipped|dunked|rolled|use|used|cuttings?|bundles?
  ends?|bases?|bottoms?|stems?|cut|first|some|bit|little|them
  didn't|did|not|bother|bothered|skipped
`;

/** What a row says that is nothing but slots ("tip cuttings, no hormone, in the utility room"); undefined where it says more. */
export function slotsAlone(pieces: readonly Piece[]): Draft | undefined {
  const isAlone = pieces.every(
    (piece) =>
      piece.is !== 'plant' &&
      piece.is !== 'celsius' &&
      (piece.is !== 'word' || AROUND_SLOTS.test(piece.text)),
  );
  const hasSlot = pieces.some(
    (piece) =>
      /^(?:cutting|pots|medium|place|size)$/.test(piece.is) ||
      (piece.is === 'word' && /^(?:hormone|powder|gel|dipped)$/.test(piece.text)),
  );
  return isAlone && hasSlot ? draftsOf(pieces, wholeOf(pieces))[0] : undefined;
}

/** "Moved the Salt Harrier to the greenhouse. I tell a lie, it was the Tallow Bell", "…. Sorry, I meant the Tallow Bell". */
function otherPlant(last: Proposal, sentence: Sentence): Proposal | undefined {
  const [named, another] = sentence.pieces.filter((piece) => piece.is !== 'word' && piece.is !== 'break');
  const pieces = sentence.pieces.filter(({ is }) => is !== 'break');
  const { to, doubted } = secondThoughtsBefore(pieces);
  if (named?.is !== 'plant' || another || sentence.asked || !doubted) return undefined;
  const again = restatementIn(sentence.pieces, false);
  if (again ? again.plant : !isNamedAlone(pieces, to) || isDismay(sentence)) return undefined;
  const { plant, known, ofCrop } = named;
  return { ...last, draft: { ...last.draft, plant, known, ...(ofCrop === undefined ? {} : { ofCrop }) } };
}

/** "No, the Tallow Bell". */
const isNamedAlone = (pieces: readonly Piece[], behind: number): boolean =>
  /^(?:no|nope|meant|mean|rather|correction|lie|liar|lying)$/.test(wordAt(pieces, behind - 1)) &&
  pieces
    .slice(behind)
    .every((piece, at) => piece.is === 'plant' || (at === 0 && /^(?:the|my)$/.test(wordAt(pieces, behind))));

/** "Oh no, the Tallow Bell!": a sentence has lost its "oh". */
const isDismay = ({ pieces, from, to }: Sentence): boolean =>
  wordAt(pieces, 0) === 'no' && to - from > pieces.length;

/** "Three rooted. No wait, two." */
function restated(last: Proposal, sentence: Sentence): Proposal | undefined {
  const again = restatementIn(sentence.pieces, false);
  if (!again || again.plant !== undefined || again.when !== undefined) return undefined;
  const { count, ...rest } = again.set as { readonly count?: number } & Record<string, unknown>;
  if (Object.keys(rest).some((slot) => !/^(?:pots|potSize|place|date)$/.test(slot))) return undefined;
  const { when, ...draft } = last.draft;
  return {
    ...last,
    slots: { ...last.slots, ...rest },
    draft: {
      ...draft,
      // "Lost three on Saturday. Strike that, it was Sunday."
      ...(when && rest['date'] === undefined ? { when } : {}),
      ...(count === undefined ? {} : { quantity: { value: count } }),
    },
  };
}
