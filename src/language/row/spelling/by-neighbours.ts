/** Slips of the pen told by the words beside them: "lost thee of the", "hosed them dwon", "have rooyed". */
import { isEnglish } from '../english.js';
import { isKnown, spelling, verbSense } from '../lexicon.js';
import { NUMBER_WORDS } from '../../pieces/numbers.js';
import type { Token } from '../tokens.js';
import { learntNeighbours } from './learnt-neighbours.js';
import { likelihood, SELDOM } from './neighbours.js';
import { beside, kindOf } from './beside.js';
import { aSlipAway } from './slips.js';
import { slipped } from './slipped.js';
import { WRITTEN_FOR } from './written-for.js';

/** How much likelier than a word that nobody knows the meant one has to be, and than the next best; chosen by slips put into notes held back from learning. */
const LEAST = { unknown: -6, english: 1, next: 0.7, nextNumber: 2.5, contrary: 4 };
/** Neither may be taken for the other, as plants that rooted for such as rotted. */
const CONTRARY = /^(?:root\S* rott|rot\S* root)/;
/** A row with more such words is no talk of ours. */
const MOST = 12;

/** The row with each word that is none, or is none of notes, as the one that its letters and its neighbours mean. */
export function mendedByNeighbours(
  tokens: readonly Token[],
  isName: (at: number) => boolean,
): readonly Token[] {
  const odd = tokens.flatMap((token, at) =>
    isOdd(token, at) && !isName(at) && !isTitledPlant(tokens, at) ? [at] : [],
  );
  if (odd.length === 0 || odd.length > MOST) return tokens;
  const row = [...tokens];
  for (const at of odd) {
    const token = row[at];
    const meant = token && meantAt(row, at, isName);
    if (token && meant !== undefined) row[at] = { ...token, text: meant };
  }
  return row;
}

/** "12 auntie breda", "cuttings of auntie breda": who is no slip of "bread". */
const isTitledPlant = (row: readonly Token[], at: number): boolean =>
  /^(?:auntie|aunty|aunt|uncle|granny|nana|nan|grandad|mrs|mr)$/.test(row[at - 1]?.text ?? '') &&
  (row[at - 2]?.is === 'number' || /^(?:of|called|named)$/.test(row[at - 2]?.text ?? ''));

/** "Fred only had the one", "fred took two": what somebody did, who is no verb. */
const HAVING = /^(?:had|has|took|got|wanted|needed|bought|kept|gave|came)$/;
const BETWEEN = /^(?:only|just|really|actually|never|also)$/;

function isSubject(row: readonly Token[], at: number): boolean {
  let next = at + 1;
  while (BETWEEN.test(row[next]?.text ?? '')) next++;
  return HAVING.test(row[next]?.text ?? '');
}

/** A word that no list of ours holds; a capital inside a row makes it a name. */
function isOdd({ is, raw, capital }: Token, at: number): boolean {
  if (is !== 'word' || (capital && at > 0)) return false;
  const word = raw.toLowerCase();
  return /^[a-z]{3,20}$/.test(word) && !isKnown(word) && spelling(word) === undefined;
}

function meantAt(row: readonly Token[], at: number, isName: (at: number) => boolean): string | undefined {
  const known = learntNeighbours();
  const word = row[at]?.raw.toLowerCase() ?? '';
  if (known.words.has(kindOf(word))) return undefined;
  // "Litle" is no "litre": a letter left out or swapped is told by itself.
  const sure = isEnglish(word) ? undefined : slipped(word, row[at]?.capital !== true);
  if (sure) return isKnown(sure) ? sure : undefined;
  const [before, after] = beside(row, at, isName);
  const near = aSlipAway(word).flatMap((each) => [each, ...(WRITTEN_FOR.get(each) ?? [])]);
  const [best, next] = [...new Set(near)]
    .filter((each) => known.words.has(kindOf(each)) && (isKnown(each) || isEnglish(each)))
    .filter((each) => verbSense(each) === undefined || !isSubject(row, at))
    .map((each) => ({
      word: each,
      likely: likelihood(known, before, kindOf(each), after) - firstLetter(word, each),
    }))
    .sort((a, b) => b.likely - a.likely);
  if (!best) return undefined;
  const counts = [best, next].filter((each) => each && NUMBER_WORDS.has(each.word)).length;
  const lead = best.likely - (next?.likely ?? -Infinity);
  const contrary = CONTRARY.test(`${best.word} ${next?.word ?? ''}`);
  if (lead < (contrary ? LEAST.contrary : counts === 1 ? LEAST.nextNumber : LEAST.next)) return undefined;
  const english = isEnglish(word);
  const stranger = likelihood(known, before, SELDOM, after);
  if (best.likely - stranger < (english ? LEAST.english : LEAST.unknown)) return undefined;
  const behind = known.pairs.get(`${before} ${kindOf(best.word)}`) ?? 0;
  const ahead = known.pairs.get(`${kindOf(best.word)} ${after}`) ?? 0;
  return isBorneOut(behind, ahead, word.length < 4, english) ? best.word : undefined;
}

/** Thumbs seldom miss the first letter: "munday" is no Sunday. */
const firstLetter = (word: string, meant: string): number =>
  word[0] === meant[0] || word[0] === meant[1] ? 0 : 3;

/** What is English, or as short as a name ("gave two to jas"), has to be another on both sides. */
function isBorneOut(behind: number, ahead: number, isShort: boolean, isEnglish: boolean): boolean {
  if (isShort) return behind > 1 && ahead > 1;
  return isEnglish ? behind > 0 && ahead > 0 && behind + ahead > 2 : behind + ahead > 0;
}
