/** "Gave Betty two of each", "planted three of each in the border": so many of every plant that was named, or that there is; "from each lot": of every lot. */
import { isCropAlone } from '../acts/drafting/one-plant.js';
import { wordAt } from '../grammar/rule.js';
import type { NoteContext } from '../note.js';
import { textAt, type Token } from '../row/tokens.js';
import type { Piece, PlantWords } from '../pieces/pieces.js';
import { fittingBatches } from '../refining/fitting-batches.js';

/** Of more than these nobody says "each" and means them all. */
const MOST = 8;

/** Behind "each" stands no noun: "two of each colour" is of something else. */
const GOES_ON =
  /^(?:to|for|by|in|into|on|onto|at|with|from|out|away|and|but|too|also|please|went|gone|died|dead|lost|rooted|sold|left|spare|over|today|yesterday|this|last|potted|planted|had|has|is|are|was|were)$/;

const TAKES = /^(?:take|cut|snip|strike|stick|insert)$/;

/** "Sold 3 from each lot", "lost two out of each batch of Ember Fox": so many of every batch of the one plant that is meant. */
function eachLot(pieces: readonly Piece[], { batches = [] }: NoteContext): readonly Piece[] {
  const at = pieces.findIndex((_, n) => pastEach(pieces, n) !== undefined);
  const count = pieces[at];
  const each = pastEach(pieces, at);
  if (count?.is !== 'count' || each === undefined) return pieces;
  // Cuttings that are taken have no lot yet.
  if (pieces.slice(0, at).some((piece) => piece.is === 'word' && TAKES.test(piece.verb?.lemma ?? '')))
    return pieces;
  const past = pastPlant(pieces, each);
  const named = pieces.flatMap((piece) => (piece.is === 'plant' ? [piece.plant] : []));
  const [plant, another] = named;
  if (another) return pieces;
  const lots = plant ? fittingBatches(plant, { batches }) : batches;
  // Of several varieties "each" may be of every variety as well as of every lot.
  const isOneSort = lots.every(({ variety, crop }) => variety === lots[0]?.variety && crop === lots[0]?.crop);
  if (!isOneSort || lots.length < 2 || lots.length > MOST) return pieces;
  const { to } = pieces[past - 1] ?? count;
  const told = lots.flatMap(({ label }, n): readonly Piece[] => [
    ...(n === 0 ? [] : [{ is: 'break', hard: false, mark: ',', from: to, to } as const]),
    { ...count },
    { is: 'plant', known: true, plant: { batch: label }, from: count.to, to },
  ]);
  const before = pieces.slice(0, at).filter(({ is }) => is !== 'plant');
  return [...before, ...told, ...pieces.slice(past)];
}

/** Past "from each", "out of each lot" behind a number; undefined where no such words follow. */
function pastEach(pieces: readonly Piece[], at: number): number | undefined {
  const count = pieces[at];
  if (count?.is !== 'count' || count.quantity.value === undefined) return undefined;
  let next = at + 1;
  while (next < at + 3 && /^(?:out|of|from|off)$/.test(wordAt(pieces, next))) next++;
  const isLed = next > at + 1 || count.to - count.from > 1;
  if (!isLed || !/^(?:each|both)$/.test(wordAt(pieces, next))) return undefined;
  next++;
  const isLot = /^(?:lots?|batch|batches)$/.test(wordAt(pieces, next));
  const behind = pieces[next];
  return isLot
    ? next + 1
    : isOfPlant(pieces, next) || behind?.is !== 'word' || GOES_ON.test(behind.text)
      ? next
      : undefined;
}

/** "Each of the Ember Fox lots". */
const isOfPlant = (pieces: readonly Piece[], at: number): boolean => pastPlant(pieces, at) > at;

/** Past the plant whose lots they are: "each batch of the Ember Fox". */
function pastPlant(pieces: readonly Piece[], from: number): number {
  let at = from;
  while (/^(?:of|the|my)$/.test(wordAt(pieces, at))) at++;
  if (pieces[at]?.is !== 'plant') return from;
  const behind = pieces[at + 1];
  // "Lots" alone is also a great many.
  const isLots =
    behind?.is === 'count'
      ? behind.quantity.vague === true
      : /^(?:lots|batches)$/.test(wordAt(pieces, at + 1));
  return isLots ? at + 2 : at + 1;
}

/** The row with the plants that "each" stands for told one by one, each with the number. */
export function eachNamed(pieces: readonly Piece[], context: NoteContext = {}): readonly Piece[] {
  const lots = eachLot(pieces, context);
  if (lots !== pieces) return lots;
  const at = pieces.findIndex((_, at) => isOfEach(pieces, at));
  const count = pieces[at];
  const each = pieces[at + 1];
  if (count?.is !== 'count' || !each) return pieces;
  const named = pieces.slice(0, at).flatMap((piece) => (piece.is === 'plant' ? [piece.plant] : []));
  const plants = named.length > 1 ? named : allLive(context);
  if (plants.length < 2 || plants.length > MOST) return pieces;
  const { from, to } = each;
  const told = plants.flatMap((plant, n): readonly Piece[] => [
    ...(n === 0 ? [] : [{ is: 'break', hard: false, mark: ',', from, to: from } as const]),
    { ...count },
    { is: 'plant', known: true, plant, from, to },
  ]);
  return [...pieces.slice(0, at), ...told, ...pieces.slice(at + 2)];
}

function isOfEach(pieces: readonly Piece[], at: number): boolean {
  const count = pieces[at];
  const next = pieces[at + 2];
  return (
    count?.is === 'count' &&
    count.quantity.value !== undefined &&
    wordAt(pieces, at + 1) === 'each' &&
    // "Two of" is one count; in "two each" the number stands alone.
    count.to - count.from > 1 &&
    (next?.is !== 'word' || GOES_ON.test(next.text))
  );
}

/** Every variety of which a batch lives, or the crop where it has none, once. */
function allLive({ batches = [] }: NoteContext): readonly PlantWords[] {
  const plants = new Map<string, PlantWords>();
  for (const { variety, crop } of batches) {
    const plant = variety === undefined ? (crop === undefined ? undefined : { crop }) : { variety };
    if (plant) plants.set(variety ?? crop ?? '', plant);
  }
  return [...plants.values()];
}

const WHOSE = /^(?:the|my|our|those|these)$/;

/** "40 of my Salt Harrier" is 40 Salt Harrier: so many, and of what. */
export function withNumberOf(pieces: readonly Piece[], tokens: readonly Token[]): readonly Piece[] {
  const isNumberOf = (at: number): boolean => {
    const [piece, named] = [pieces[at], pieces[at + 2]];
    return (
      piece?.is === 'count' &&
      piece.quantity.value !== undefined &&
      textAt(tokens, piece.to - 1) === 'of' &&
      WHOSE.test(wordAt(pieces, at + 1)) &&
      // "Sunday Mass: six of the dahlias": of those named before.
      named?.is === 'plant' &&
      !isCropAlone(named.plant)
    );
  };
  return pieces.flatMap((piece, at) => {
    const next = pieces[at + 1];
    if (next && isNumberOf(at)) return [{ ...piece, to: next.to, ofOurs: true } as Piece];
    return isNumberOf(at - 1) ? [] : [piece];
  });
}
