/** The parts that a batch is split into: how many each holds, and where each stands. */
import type { SplitPart } from '../../instructions/instruction.js';
import { numberOf } from '../../pieces/number-names.js';
import type { Piece } from '../../pieces/pieces.js';
import { wordAt } from '../rule.js';
import type { InstructionWords } from './rule.js';

/** "Split three of these into a batch of their own": the number is what is parted, not how many parts. */
const OWN_BATCH = /\binto (?:(?:a|an|its|their|another) )?(?:own|new|separate|batch of)\b/;
const INTO_PARTS =
  /\bin(?:to)? \w+ (?:separate |smaller )?(?:batches|lots|pots|groups|parts|portions|halves)\b|\b\w+ ways\b/;
/** "Into two lots of six"; "into to batches of six", as dictated. */
const OF_A_SIZE = /\b(\w+) (?:lots|batches|pots|groups|parts) of (\w+)\b/;
const IN_HALF =
  /\bin half\b|\bhalf and half\b|\bdown the middle\b|\b(?:equal|even) halves\b|\b(?:two|2) (?:equal|even)\b|\bhalves\b/;
const OTHERS = /^(?:rest|others|remainder|remaining)$/;

/** In the order told; empty where no sizes are. `of` is how many parts there are to be, where that is said. */
export function partsTold(words: InstructionWords): {
  readonly parts: readonly SplitPart[];
  readonly of?: number;
} {
  const { line, pieces } = words;
  const [, many, each] = OF_A_SIZE.exec(line) ?? [];
  const lots = /^too?$/.test(many ?? '') ? 2 : numberOf(many);
  const size = numberOf(each);
  if (lots !== undefined && size !== undefined && lots * size > 0 && lots <= 12)
    return { parts: Array<SplitPart>(lots).fill({ count: size }), of: lots };
  const told = pieces.flatMap((piece, at) => (isPart(pieces, piece, at) ? [at] : []));
  const [first, ...later] = told;
  const isOf = first !== undefined && countsParts(words, first, later);
  const of = isOf ? valueAt(pieces, first) : undefined;
  const sizes = isOf ? later : told;
  if (sizes.length === 0 && IN_HALF.test(line)) return { parts: [{ share: [1, 2] }] };
  const parts: (SplitPart & { readonly place?: string })[] = [];
  let toldAgain = false;
  for (const [index, at] of sizes.entries()) {
    const part = partAt(pieces, at);
    const place = placeIn(words, at + 1, sizes[index + 1] ?? pieces.length);
    // "Into 5 and 7, the 7 go to the porch": told before.
    const before = isOfThese(pieces, at)
      ? parts.findIndex(({ count }) => count !== undefined && count === part.count)
      : -1;
    const whole = { ...parts[before], ...part, ...(place === undefined ? {} : { place }) };
    if (before < 0) parts.push(whole);
    else {
      parts[before] = whole;
      toldAgain = place !== undefined;
    }
  }
  const [only, another] = parts;
  if (only && !another) return { parts: [toldAgain ? only : { ...withoutPlace(only), ...partedTo(pieces) }] };
  return { parts, ...(of === undefined ? {} : { of }) };
}

const withoutPlace = ({ place: _place, ...part }: SplitPart): SplitPart => part;

function isPart(pieces: readonly Piece[], piece: Piece, at: number): boolean {
  if (piece.is === 'word') return OTHERS.test(piece.text) && pieces[at - 1]?.is !== 'count';
  if (piece.is !== 'count') return false;
  const { value, share, whole, weak } = piece.quantity;
  return weak !== true && (value !== undefined || share !== undefined || whole === 'rest');
}

function partAt(pieces: readonly Piece[], at: number): SplitPart {
  const piece = pieces[at];
  if (piece?.is !== 'count') return { rest: true };
  const { value, share } = piece.quantity;
  return value !== undefined ? { count: value } : share ? { share } : { rest: true };
}

function valueAt(pieces: readonly Piece[], at: number): number | undefined {
  return partAt(pieces, at).count;
}

/** "Into two batches", "in two, 45 and 45": the first number tells how many parts there are. */
function countsParts({ line, pieces }: InstructionWords, at: number, later: readonly number[]): boolean {
  const value = valueAt(pieces, at);
  const isLed = /^in(?:to)?$/.test(wordAt(pieces, at - 1)) || wordAt(pieces, at + 1) === 'ways';
  if (value === undefined || OWN_BATCH.test(line) || !isLed) return false;
  if (INTO_PARTS.test(line) || later.length === 0) return true;
  return (
    value === later.filter((size) => !isOfThese(pieces, size)).length &&
    (pieces[at + 1]?.is === 'break' || value !== 1)
  );
}

const isOfThese = (pieces: readonly Piece[], at: number): boolean =>
  /^(?:the|those|these|other)$/.test(wordAt(pieces, at - 1));

/** The first place told of a part; where it stays, none is new. */
function placeIn({ pieces, placeWithin }: InstructionWords, from: number, to: number): string | undefined {
  if (/^(?:stay|stays|staying|remain|remains)$/.test(wordAt(pieces, from))) return undefined;
  const place = pieces.slice(from, to).find(({ is }) => is === 'place');
  if (!place) return placeWithin(from, to);
  return place?.is === 'place' && place.prep !== 'from' && place.prep !== 'off' ? place.place : undefined;
}

/** "Split six off to the porch", "a batch of their own, they're in the tunnel now": a place behind what is parted. */
function partedTo(pieces: readonly Piece[]): { place?: string } {
  const at = pieces.findLastIndex(({ is }) => is === 'place');
  const place = pieces[at];
  if (place?.is !== 'place' || place.prep === 'from' || place.prep === 'off') return {};
  const said = pieces.slice(0, at);
  const behind = said.slice(
    Math.max(
      0,
      said.findLastIndex(({ is }) => is === 'plant'),
    ),
  );
  const tells = (words: RegExp): boolean =>
    behind.some((piece) => piece.is === 'word' && words.test(piece.text));
  // "Keep 15 separate in the tunnel", "off as a separate batch on the heated bench".
  const isApart = tells(/^(?:apart|separate|separately)$/);
  const counted = said.some(({ is }) => is === 'count') && (isApart || said.some(({ is }) => is === 'plant'));
  const apart = isApart || behind.some(({ is }) => is === 'break');
  // "And put them in the cold frame".
  const asBatch = tells(/^(?:batch|lot|own|put|move|moved|stand|stood)$/);
  // "Put 4 of these in the greenhouse as their own batch".
  const putThere =
    said.some((_, n) => /^(?:put|move|set|stand|place)$/.test(wordAt(said, n))) &&
    pieces.slice(at + 1).some((piece) => piece.is === 'word' && /^(?:batch|lot|own)$/.test(piece.text));
  return counted && (apart || asBatch || putThere || /^(?:to|into|onto)$/.test(place.prep ?? ''))
    ? { place: place.place }
    : {};
}
