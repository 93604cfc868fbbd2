/** A row cut where what follows a joint stands by itself: a deed told in full, of a plant of its own, whatever was done before. */
import { isBoundary } from '../clauses/boundaries.js';
import { findHits } from '../grammar/hits.js';
import { rules } from '../grammar/rules.js';
import { wordAt } from '../grammar/rule.js';
import type { Logged } from './as-logged.js';
import type { Piece } from '../pieces/pieces.js';
import { LONGEST_TWOFOLD } from '../sentences/sentences.js';

/** What a part tells when it is read alone, or behind another; undefined where it tells nothing, or leaves anything to be asked. */
export type ReadAlone = (part: readonly Piece[], before?: readonly Piece[]) => readonly Logged[] | undefined;

/** "…, both in the porch", "… and put them on the mat": said of what was told before as well. */
const OF_OTHERS = /^(?:them|em|'em|it|both|all|each|they|these|those|we|which|everything|lot)$/;

/**
 * The parts that tell another thing apart than together; undefined where none do. Each joint costs the reading of what
 * stands on both its sides, so a row that no grower would speak in one breath is left whole.
 */
export function standingApart(
  row: readonly Piece[],
  together: readonly Logged[] | undefined,
  readAlone: ReadAlone,
): readonly [readonly Piece[], readonly Piece[]] | undefined {
  if (row.length > LONGEST_TWOFOLD) return undefined;
  for (let at = 1; at < row.length - 1; at++) {
    if (!isBoundary(row[at]) || isBoundary(row[at - 1])) continue;
    let from = at;
    while (isBoundary(row[from])) from++;
    const [before, behind] = [row.slice(0, at), row.slice(from)];
    if (!hasPlant(before)) continue;
    const leans = !hasPlant(behind);
    if (opensWithSort(behind, before)) continue;
    const standing = leans ? leansOnShort(before, behind) : standsBy(behind, isClosed(before), readAlone);
    if (!standing) continue;
    if (standing === 'short' && isParallel(before, behind)) continue;
    const [first, second] = [readAlone(before), readAlone(behind, leans ? before : undefined)];
    if (first && second && (!together || differ([...first, ...second], together, standing)))
      return [before, behind];
  }
  return undefined;
}

const hasPlant = (part: readonly Piece[]): boolean => part.some(({ is }) => is === 'plant');

/** Nothing that follows can be one more of its list. */
const isClosed = (before: readonly Piece[]): boolean =>
  !/^(?:plant|count|cutting)$/.test(before.at(-1)?.is ?? '');

/** "Nipped Salt Harrier back to 10cm and Tallow Bell to 15cm": the same is told of both. */
function isParallel(before: readonly Piece[], behind: readonly Piece[]): boolean {
  const shape = (part: readonly Piece[]): string =>
    part.map((piece) => (piece.is === 'word' ? piece.text : piece.is)).join(' ');
  const tail = shape(behind.slice(behind.findIndex(({ is }) => is === 'plant') + 1));
  // "Gave 6 Salt Harrier to the school and 2 Tallow Bell to the kitchens".
  const isToBoth =
    tail.startsWith('to ') && findHits(rules, before).some(({ rule }) => rule.kind === 'dispatch');
  return isToBoth || (tail !== '' && shape(before).endsWith(` ${tail}`));
}

/** "…, a salvia, two trays of twelve", "Tallow Bell (salvia), four pots of four": what sort the plant before it is. */
function opensWithSort(row: readonly Piece[], before: readonly Piece[]): boolean {
  const hasArticle = /^(?:a|an|another)$/.test(wordAt(row, 0));
  const [sort, next] = row.slice(hasArticle ? 1 : 0);
  if (sort?.is !== 'plant' || sort.plant.variety !== undefined) return false;
  const named = before.at(-1);
  return hasArticle || (named?.is === 'plant' && named.plant.variety !== undefined && isBoundary(next));
}

/** By what words a row opens with a part that tells in full what was done to its own plants, and to those only: in short or in full. */
function standsBy(
  row: readonly Piece[],
  isBehindClosed: boolean,
  readAlone: ReadAlone,
): 'short' | 'full' | undefined {
  if (opensWithDeed(row)) return readAlone(row) ? 'full' : undefined;
  let plants = 0;
  let marks = 0;
  for (let end = 1; end <= row.length; end++) {
    const last = row[end - 1];
    if (last?.is === 'plant' && ++plants > 1 && !(isBehindClosed && isListed(row, end - 1))) return undefined;
    if (isBoundary(last)) marks++;
    if (isOfOthers(row, end - 1)) return undefined;
    if (marks > 0 && (wordAt(row, end - 1) === 'i' || (isAll(last) && !isBehindClosed))) return undefined;
    if (end < row.length && !isBoundary(row[end])) continue;
    if (plants === 0) return undefined;
    const part = row.slice(0, end);
    const hits = findHits(rules, part);
    // "…, and the 7 rooted Tallow Bell": which, not what was seen of them.
    const named = part.findIndex(({ is }) => is === 'plant');
    if (hits.every(({ from }) => from < named && part[from - 1]?.is === 'count')) continue;
    const isFull = hits.some(({ rule }) => rule.faint !== true);
    // What is told in short ("4 Tallow Bell in the porch") may belong to the deed before it, unless nothing follows.
    if (!isFull && end < row.length) continue;
    const told = readAlone(part);
    if (told && new Set(told.map(({ of }) => of)).size >= plants) return isFull ? 'full' : 'short';
  }
  return undefined;
}

/** "2 Salt Harrier to Len, sold the rest": in short, and behind it in full what was done to others of that plant. */
function leansOnShort(before: readonly Piece[], behind: readonly Piece[]): 'short' | undefined {
  const counted = behind.findIndex(({ is }) => is === 'count');
  if (counted < 0) return undefined;
  const hits = findHits(rules, before);
  const isShort =
    hits.length === 1 &&
    hits.every(({ rule }) => rule.faint === true && /^(?:move|dispatch|potOn|plantOut)$/.test(rule.kind));
  if (!isShort) return undefined;
  const next = findHits(rules, behind);
  return next.length === 1 && next[0]?.rule.faint !== true ? 'short' : undefined;
}

const isOfOthers = (row: readonly Piece[], at: number): boolean => {
  const piece = row[at];
  return OF_OTHERS.test(wordAt(row, at)) || (piece?.is === 'count' && piece.quantity.both === true);
};

/** "…, 9cm the lot": of the whole list. */
const isAll = (piece: Piece | undefined): boolean => piece?.is === 'count' && piece.quantity.whole === 'all';

/** "Checked the Salt Harrier and the Tallow Bell, …": the verb first, and its plant before any mark. */
function opensWithDeed(row: readonly Piece[]): boolean {
  const [first] = findHits(rules, row);
  if (first?.from !== 0 || first.rule.faint === true || first.rule.shape !== 'object') return false;
  const end = row.findIndex((piece, at) => at >= first.to && isBoundary(piece));
  return hasPlant(row.slice(first.to, end < 0 ? row.length : end));
}

/** "3 Salt Harrier and 2 Tallow Bell": nothing but how many stands between the plant and the one before it. */
function isListed(row: readonly Piece[], at: number): boolean {
  let from = at - 1;
  while (row[from]?.is === 'count' || isBoundary(row[from]) || /^(?:the|of|my)$/.test(wordAt(row, from)))
    from--;
  return row[from]?.is === 'plant';
}

/** Short words may share what was told before, so that only another deed or plant tells that they do not. */
function differ(apart: readonly Logged[], together: readonly Logged[], by: 'short' | 'full'): boolean {
  const words = (told: readonly Logged[]): string =>
    told
      .map(({ kind, of, slots }) => `${kind} ${of}${by === 'full' ? slots : ''}`)
      .sort()
      .join();
  return words(apart) !== words(together);
}
