/** Several cares in one breath: "gave them a soak and then a weak feed". */
import type { Care } from '../../ledger/entry.js';
import type { Clause } from '../clauses/clauses.js';
import { wordAt } from '../grammar/rule.js';
import type { Piece } from '../pieces/pieces.js';

const GIFTS: ReadonlyMap<string, Care> = new Map([
  ...each('water', 'drink water soak watering soaking dunk drench dousing'),
  ...each('feed', 'feed feeding seaweed tomorite comfrey'),
  ...each('mist', 'mist misting spray spritz spritzing squirt'),
  ...each('vent', 'air airing breather'),
  ...each('shade', 'shade shading'),
]);

function each(care: Care, nouns: string): readonly (readonly [string, Care])[] {
  return nouns.split(' ').map((noun) => [noun, care] as const);
}

const ARTICLE = /^(?:a|an|some|another|their|its)$/;
/** Words from one gift to the article of the next. */
const JOINT = /^(?:and|then|plus|also|later|after|that|followed|by|strength)$/;
/** Longest run of words before a gift: "a bit of", "a half strength liquid". */
const DESCRIBED = 4;

/** The cares that were given, in order; none where the act is told in other words, or tells of one. */
export function caresGiven(pieces: readonly Piece[], { hit, to }: Clause): readonly Care[] {
  const head = hit && pieces[hit.from];
  if (!hit || head?.is !== 'word' || !/^(?:give|get|have)$/.test(head.verb?.lemma ?? '')) return [];
  const cares: Care[] = [];
  let last = -1;
  for (let at = hit.from + 1; at < to; at++) {
    const care = GIFTS.get(wordAt(pieces, at));
    const article = care && articleBefore(pieces, at, Math.max(hit.from, last));
    if (!care || article === undefined) continue;
    if (last >= 0 && !pieces.slice(last + 1, article).every(joins)) break;
    cares.push(care);
    last = at;
  }
  return cares.length > 1 ? [...new Set(cares)] : [];
}

/** Where the words that describe a gift begin. */
function articleBefore(pieces: readonly Piece[], gift: number, after: number): number | undefined {
  for (let at = gift - 1; at > after && at >= gift - DESCRIBED - 1; at--) {
    const piece = pieces[at];
    // "A half strength feed".
    if (piece?.is === 'count' && piece.quantity.share) return at;
    if (piece?.is !== 'word' || /^(?:no|not|without|and)$/.test(piece.text)) return undefined;
    if (ARTICLE.test(piece.text)) return at;
  }
  return undefined;
}

const joins = (piece: Piece): boolean =>
  piece.is === 'break' ? !piece.hard : piece.is === 'word' && JOINT.test(piece.text);
