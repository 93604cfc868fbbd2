/** A sentence that only opens what the next one tells: "I finally got round to the Salt Harrier this afternoon! Nine tips, …". */
import { wordAt } from '../grammar/rule.js';
import type { Piece } from '../pieces/pieces.js';

/** Words that stand around the opening and tell nothing. */
const TALK =
  /^(?:well|right|so|then|ok|okay|oh|i|we|i've|we've|have|finally|at|last|just|eventually|actually|the|my|our|those|some|on|with|to|for|now|too|also|and)$/;

/** What opens it: "got round to", "made a start on", "had a go at". */
const OPENINGS: readonly (readonly string[])[] = [
  ['got', 'round', 'to'],
  ['got', 'around', 'to'],
  ['got', 'started', 'on'],
  ['got', 'going', 'with'],
  ['made', 'a', 'start', 'on'],
  ['had', 'a', 'go', 'at'],
];

/** "Took my first cuttings!!": of what and how many, the next sentence tells. */
const TOOK_SOME =
  /^(?:well |so |right |ok |oh |finally |just |i |we |have |i've |we've )*(?:took|taken|did|done|made|struck) (?:my|our|the|some|a few|more|another few|first)(?: very| ever| own)*(?: first| second| last| few| more| new)* (?:cuttings|slips)(?: today| this morning| tonight| at last| ever| of the (?:year|season|spring))*$/;

/** "White roots! Three of the Salt Harrier": what was seen, and the next sentence on how many. */
const ROOTS_SEEN =
  /^(?:well |so |oh |yay |hurrah |hooray |finally |look |we have |i have |got |proper |actual |good |lovely |nice |white |first |big |fat |wee |little )*(?:roots|rooted|rooting)(?: at last| finally| already| galore| showing)*$/;

/** Whether the sentence [from, to) is nothing but an opening, with one plant. */
export function isOpening(pieces: readonly Piece[], from: number, to: number): boolean {
  let plants = 0;
  let opened = false;
  for (let at = from; at < to; at++) {
    const piece = pieces[at];
    const opening = opened
      ? undefined
      : OPENINGS.find((words) => words.every((word, n) => wordAt(pieces, at + n) === word));
    if (opening) {
      opened = true;
      at += opening.length - 1;
    } else if (piece?.is === 'plant') plants++;
    else if (piece?.is !== 'break' && piece?.is !== 'when' && !TALK.test(wordAt(pieces, at))) return false;
  }
  return opened && plants === 1;
}

/** A number or a plant comes first, and no deed with it. */
function listsPlants(pieces: readonly Piece[]): boolean {
  const end = pieces.findIndex((piece) => piece.is === 'break' && piece.hard);
  const told = end < 0 ? pieces : pieces.slice(0, end);
  return (
    /^(?:count|plant)$/.test(told[0]?.is ?? '') &&
    !told.some((piece) => piece.is === 'word' && piece.verb?.form === 'past')
  );
}

/** The row, where what follows such an opening begins with a number: the two are one sentence, headed by the plant and the day. */
export function withOpenings(pieces: readonly Piece[]): readonly Piece[] {
  const hard = pieces.findIndex((piece) => piece.is === 'break' && piece.hard);
  const close = pieces[hard];
  if (close?.is !== 'break') return pieces;
  const words = pieces
    .slice(0, hard)
    .map((piece, at) => (piece.is === 'count' && piece.quantity.vague ? 'some' : wordAt(pieces, at)));
  // "Took my first cuttings!! 5 off my fuchsia".
  const behind = pieces.slice(hard + 1).filter((piece, at) => at > 0 || piece.is !== 'break');
  const line = words.join(' ');
  if ((TOOK_SOME.test(line) || (ROOTS_SEEN.test(line) && behind[0]?.is === 'count')) && listsPlants(behind))
    return [...pieces.slice(0, hard), { ...close, hard: false, mark: ':' }, ...behind];
  if (!isOpening(pieces, 0, hard)) return pieces;
  const next = pieces.slice(hard + 1);
  const first = next[0]?.is === 'break' ? next[1] : next[0];
  const end = next.findIndex((piece) => piece.is === 'break' && piece.hard);
  const told = end < 0 ? next : next.slice(0, end);
  if (first?.is !== 'count' || told.some(({ is }) => is === 'plant')) return pieces;
  const heading = pieces.slice(0, hard).filter(({ is }) => is === 'plant' || is === 'when');
  return [...heading, { ...close, hard: false, mark: ',' }, ...next];
}
