/** What is left about a plant: an observation. */
import { mergedPlants } from '../acts/drafting.js';
import { ALL_LOOK, BESET, IDLE, OBSERVED, OBSERVED_ALONE, STATIVE } from '../grammar/remark.js';
import { wordAt } from '../grammar/rule.js';
import type { Piece } from '../pieces/pieces.js';
import type { Proposal } from '../proposal.js';
import { firstOf, LINE_LIMIT, plantsIn, type Sentence, textOf } from '../sentences/sentences.js';
import type { Utterance } from '../pieces/utterance.js';

/** What is left about a plant: an observation. */
export function proposeRemark(sentence: Sentence, utterance: Utterance): readonly Proposal[] | undefined {
  const { pieces } = sentence;
  const line = sentence.line.slice(0, LINE_LIMIT);
  const plants = plantsIn(pieces);
  if (/^(?:not|no longer|won't be|isn't|aren't) \w+ing\b/.test(line)) return undefined;
  // Not done is nothing seen.
  if (
    /^(?:(?:i |we )?(?:was|were) (?:going|hoping|planning) to|never|i never|didn't|i didn't|did not|haven't|i haven't|couldn't|i couldn't|forgot|i forgot|was meant to|i was meant to|meant to|i meant to) (?!seen)/.test(
      line,
    )
  )
    return undefined;
  // "Only I've fuchsias out on the step": why something was asked.
  if (/^only (?:i've|i have|i|we've|we)\b/.test(line)) return undefined;
  // "Powder has gone off, so no Salt Harrier cuttings today": nothing of them.
  if (plants.length > 0 && plants.every((plant) => wordAt(pieces, pieces.indexOf(plant) - 1) === 'no'))
    return undefined;
  if (IDLE.test(line) && !OBSERVED_ALONE.test(line)) return undefined;
  // "First buds showing (in July, I ask you)": said of the day of the note.
  const day = firstOf(pieces, 'when');
  const opened = day ? pieces[pieces.indexOf(day) - 1] : undefined;
  const when = opened?.is === 'break' && opened.mark === '(' ? undefined : day?.when;
  if (plants.length === 0) {
    if (!OBSERVED_ALONE.test(line) && !ALL_LOOK.test(line)) return undefined;
    return [
      {
        kind: 'remark',
        rule: '<observation>',
        slots: { text: textOf(pieces, utterance, (piece) => piece.is === 'when') },
        draft: when ? { when } : {},
      },
    ];
  }
  const stative = pieces.some(
    (piece) => piece.is === 'word' && piece.verb !== undefined && STATIVE.test(piece.verb.lemma),
  );
  const others = pieces.filter(
    (piece) =>
      piece.is === 'word' &&
      !/^(?:the|my|a|of|in|on|and|our|some|these|those|out|off|from)$/.test(piece.text),
  ).length;
  const behindLabel = pieces[0]?.is === 'plant' && pieces[0].plant.batch !== undefined;
  if (others === 0) return undefined;
  const counted = pieces.some(
    (piece, at) =>
      piece.is === 'count' &&
      !piece.quantity.weak &&
      !piece.quantity.vague &&
      !(piece.quantity.whole === 'all' && wordAt(pieces, at + 1) === 'over'),
  );
  const personal = /\b(?:i|i've|i'm|we|we've|my|me|(?:every|no|some)(?:one|body))\b/.test(line);
  const seen = OBSERVED.test(line);
  // An act that no rule knows must not pass for an observation.
  if (
    pieces.some(
      (piece) =>
        (piece.is === 'pots' && !isBeset(pieces, piece)) ||
        piece.is === 'medium' ||
        (piece.is === 'size' && !MEASURED.test(line)),
    )
  )
    return undefined;
  if (counted && !stative && !seen) return undefined;
  // "Went back for a second helping of Marlene's cobbler": of what only sounds like a plant, no more than what is seen.
  if (!seen && plants.every(({ known }) => !known)) return undefined;
  const [opening] = pieces;
  if (
    opening?.is === 'word' &&
    opening.verb?.form === 'past' &&
    (counted ||
      !/^(?:find|see|notice|spot|look|get|go|have|be|seem|note|start|show|smell)$/.test(opening.verb.lemma))
  )
    return undefined;
  if (!seen && !(stative && others >= 2 && !counted && !personal) && !(behindLabel && !counted))
    return undefined;
  if (personal && !stative && !OBSERVED_ALONE.test(line)) return undefined;
  if (/\b(?:cuttings|cutting)\b/.test(line) && counted) return undefined;
  const [first] = pieces;
  const leading = first?.is === 'plant' || (wordAt(pieces, 0) === 'the' && pieces[1]?.is === 'plant');
  const rest = leading ? pieces.slice(first?.is === 'plant' ? 1 : 2) : pieces;
  const told = mergedPlants(pieces);
  const text = told.length > 1 ? textOf(pieces, utterance) : textOf(rest, utterance);
  if (text === '') return undefined;
  const stands = whereTold(pieces);
  return told.map((plant) => ({
    kind: 'remark',
    rule: '<plant> <observation>',
    slots: { text },
    draft: { plant, ...(when ? { when } : {}), ...(stands === undefined ? {} : { which: { stands } }) },
  }));
}

/** "Shoots about 3 inches", "now 20cm tall": what a length may be told of, other than pots. */
const MEASURED =
  /^(?!.*\bpots?\b).*\b(?:shoots?|sideshoots?|stems?|growth|grown|growing|tall|high|long|wide|across)\b/;

/** "Vine weevil grubs in two pots of Salt Harrier", "two pots of them have mildew": how many are beset by what was seen. */
function isBeset(pieces: readonly Piece[], pots: Piece): boolean {
  const at = pieces.indexOf(pots);
  const words = pieces.map((piece) => (piece.is === 'word' ? piece.text : '.'));
  const behind = words.slice(at + 1, at + 6).join(' ');
  const ahead = words.slice(Math.max(0, at - 5), at).join(' ');
  return /^(?:of )?(?:(?:the|my) )?\.? ?(?:with|have|has|had|got|show|showing|covered in|full of)\b/.test(
    behind,
  )
    ? BESET.test(behind)
    : /\b(?:in|on|over|among|amongst|across|from|under)(?: the)?$/.test(ahead) && BESET.test(ahead);
}

const STANDS = /^(?:in|on|at|by|near|under|beside|behind|inside|outside)$/;
/** Behind these a place is another's, or none of theirs yet. */
const NOT_THERE = /^(?:than|like|unlike|not|wants?|needs?)$/;

/** Where the plants of a remark stand: "the heat mat Old Ferryman", "leggy on the heat mat". */
function whereTold(pieces: readonly Piece[]): string | undefined {
  for (const [at, piece] of pieces.entries()) {
    if (NOT_THERE.test(wordAt(pieces, at))) return undefined;
    if (piece.is === 'place' && (pieces[at + 1]?.is === 'plant' || STANDS.test(piece.prep ?? '')))
      return piece.place;
  }
  return undefined;
}
