/** What is seen on a plant, told behind an act: "…, and there's a first bud on the Soot Angel". */
import { wordAt } from '../grammar/rule.js';
import { whole } from '../phrases.js';
import type { Piece } from '../pieces/pieces.js';

/** Sights that a plant bears: growth, ailments, small fry. */
const SIGHT = whole`
  buds?|flowers?|blooms?|blossoms?|petals?|seedheads?|pods?|callus|nodes?
  shoots?|sideshoots?|suckers?|pups?|leaf|leaves|growth
  greenfly|whitefly|blackfly|aphids?|thrips?|mites?|mealybugs?|scale|gnats?|caterpillars?|weevils?|slugs?|snails?
  webbing|webs?|holes?|honeydew|spots?|blotches
  mildew|mould|mold|rust|botrytis|blackleg|virus|algae|moss|liverwort
`;
const OPENS =
  /^(?:there's|there|theres|is|are|i|we|saw|see|seen|spotted|noticed|found|can|got|have|i've|we've)$/;
const BEARS = /^(?:on|over|under)$/;
/** No sight takes more words. */
const LONGEST = 8;

/** Whether such a sight is told at `at`, up to the plant that bears it. */
export function isSeenOn(pieces: readonly Piece[], at: number): boolean {
  let next = at;
  while (OPENS.test(wordAt(pieces, next))) next++;
  let sight = false;
  for (; next < at + LONGEST; next++) {
    const piece = pieces[next];
    if (piece?.is === 'plant') return sight && bears(pieces, next);
    if (piece?.is !== 'word' && piece?.is !== 'count') return false;
    if (piece.is === 'word' && piece.verb?.form === 'past') return false;
    sight ||= piece.is === 'word' && SIGHT.test(piece.text);
  }
  return false;
}

const bears = (pieces: readonly Piece[], plant: number): boolean => {
  const before = /^(?:the|my|our)$/.test(wordAt(pieces, plant - 1)) ? plant - 2 : plant - 1;
  return BEARS.test(wordAt(pieces, before));
};

const THEY = /^(?:they've|they|they're|it's|it|theyve|theyre)$/;
const BEAR =
  /^(?:got|have|has|are|is|in|covered|with|full|of|showing|throwing|sporting|carrying|their|its|the|a|an|first|some|lots|loads|bit|already|now|tiny|fat|flower|new|all|both|lovely)$/;

/** Whether such a sight is told of those just named, and nothing behind it: "they've got their first buds". */
export function isSeenOnThem(pieces: readonly Piece[], at: number): boolean {
  if (!THEY.test(wordAt(pieces, at))) return false;
  let next = at + 1;
  while (BEAR.test(wordAt(pieces, next)) && next < at + LONGEST) next++;
  if (next === at + 1 || !SIGHT.test(wordAt(pieces, next))) return false;
  next++;
  while (/^(?:on|them|too|already|now|coming|open|opening|everywhere|all|over)$/.test(wordAt(pieces, next)))
    next++;
  return pieces[next] === undefined || pieces[next]?.is === 'break';
}

/** "Salt Harrier showing its first buds": a plant, and straight behind it what it is doing. */
export const isDoing = (row: readonly Piece[]): boolean =>
  row.some((_, at) => DOING.test(wordAt(row, at)) && row[at - 1]?.is === 'plant');

const DOING =
  /^(?:showing|looking|budding|flowering|leafing|bushing|blooming|sprouting|starting|coming|getting|growing|doing|thriving|sulking|drooping|wilting|flagging|needing)$/;
