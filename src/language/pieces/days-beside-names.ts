/** What looks like a day beside a plant's name: the day on which it was struck, or so many of so many. */
import type { KnownBatch, NoteContext } from '../note.js';
import type { Piece, When } from './pieces.js';
import { textAt, type Token } from '../row/tokens.js';

/** "9 March Ember Fox: four rooted", of a batch struck on 9 March. */
function wasStruck(plant: Piece | undefined, { past }: When, { batches = [] }: NoteContext): boolean {
  if (plant?.is !== 'plant' || plant.plant.crop !== undefined) return false;
  const { variety, batch: label } = plant.plant;
  return batches.some(
    (batch) =>
      batch.struck === past && (label === undefined ? batch.variety === variety : batch.label === label),
  );
}

/** Whether the day, which stands at these tokens, is that on which the plant before or behind it was struck. */
export function isStruckDay(
  tokens: readonly Token[],
  owner: readonly (Piece | undefined)[],
  { from, to, when }: { readonly from: number; readonly to: number; readonly when: When },
  context: NoteContext,
): boolean {
  return [owner[to], owner[plantStruck(tokens, from)]].some((plant) => wasStruck(plant, when, context));
}

/** "The Ember Fox, struck 9 March", "4 Ember Fox (9 March)": the token before the words that lead to the day; -1 where none do. */
function plantStruck(tokens: readonly Token[], day: number): number {
  let at = day - 1;
  if (textAt(tokens, at) === '(') return at - 1;
  if (textAt(tokens, at) === 'on') at--;
  if (!/^(?:struck|stuck|taken|inserted)$/.test(textAt(tokens, at))) return -1;
  return textAt(tokens, at - 1) === ',' ? at - 2 : at - 1;
}

/** "Ember Fox 4/6", where six are alive and not all of them known to have roots: so many of them, and no day. */
export function isTally(
  tokens: readonly Token[],
  plant: Piece | undefined,
  from: number,
  to: number,
  { batches = [] }: NoteContext,
): boolean {
  if (to - from !== 3 || textAt(tokens, from + 1) !== '/' || plant?.is !== 'plant') return false;
  // "Took 3 Salt Harrier 4/6": how many is told; that is the day.
  if (tokens[plant.from - 1]?.is === 'number') return false;
  const [part, whole] = [Number(textAt(tokens, from)), Number(textAt(tokens, to - 1))];
  const { variety, batch: label } = plant.plant;
  const isWhole = ({ count, rooted = 0 }: KnownBatch): boolean => count === whole && rooted < whole;
  return (
    part <= whole &&
    batches.some(
      (batch) =>
        (label === undefined ? variety !== undefined && batch.variety === variety : batch.label === label) &&
        isWhole(batch),
    )
  );
}
