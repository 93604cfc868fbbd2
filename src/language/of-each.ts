/** "Gave Betty two of each", "planted three of each in the border": so many of every plant that was named, or that there is. */
import { wordAt } from './grammar/rule.js';
import type { NoteContext } from './note.js';
import type { Piece, PlantWords } from './pieces.js';

/** Of more than these nobody says "each" and means them all. */
const MOST = 8;

/** Behind "each" stands no noun: "two of each colour" is of something else. */
const GOES_ON =
  /^(?:to|for|by|in|into|on|onto|at|with|from|out|away|and|but|too|also|please|went|gone|died|dead|lost|rooted|sold|left|spare|over|today|yesterday|this|last|potted|planted|had|has|is|are|was|were)$/;

/** The row with the plants that "each" stands for told one by one, each with the number. */
export function eachNamed(pieces: readonly Piece[], context: NoteContext = {}): readonly Piece[] {
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
