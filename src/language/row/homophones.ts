/** Puts right what dictation writes for a number or a verb, only where the neighbours leave no other sense. */
import { heardCounts } from './heard/counts.js';
import { heardSpokenOf } from './heard/counts-spoken-of.js';
import { heardToldOn } from './heard/counts-told-on.js';
import { heardNumbers } from './heard/numbers.js';
import type { Misheard } from './heard/record.js';
import { heardVerbs } from './heard/verbs.js';
import { thumbed } from './heard/thumbed.js';
import { HeardView, type Standing } from './heard/view.js';
import { heardWeeks } from './heard/weeks.js';
import { heardCuttings } from './heard/cuttings.js';
import { heardWords } from './heard/words.js';
import type { Token } from './tokens.js';

/** Every record, in the order in which they are asked. */
export const misheard: readonly Misheard[] = [
  ...heardNumbers,
  ...heardVerbs,
  ...thumbed,
  ...heardCuttings,
  ...heardWords,
  ...heardWeeks,
  ...heardToldOn,
  ...heardSpokenOf,
  ...heardCounts,
];

/** Mends a row of tokens: `isName` tells what belongs to a known name, `isPlant` where a name or a crop begins, `isPlace` where a place does. */
export type Mending = (
  tokens: readonly Token[],
  isName: Standing,
  isPlant: Standing,
  isPlace: Standing,
) => readonly Token[];

interface Candidate {
  readonly record: Misheard;
  readonly meant: readonly string[];
}

/** Records by the word that was heard, so that most tokens ask none. */
function byHeardWord(records: readonly Misheard[]): ReadonlyMap<string, readonly Candidate[]> {
  const index = new Map<string, Candidate[]>();
  for (const record of records)
    for (const [heard, meant] of Object.entries(record.mends)) {
      const candidate = { record, meant: meant.split(' ') };
      const candidates = index.get(heard);
      if (candidates) candidates.push(candidate);
      else index.set(heard, [candidate]);
    }
  return index;
}

function meantBy(candidates: readonly Candidate[], view: HeardView): readonly string[] {
  const candidate = candidates.find(({ record: { when } }) => when?.(view) ?? true);
  return candidate && (candidate.record.onlyIf?.(view) ?? true) ? candidate.meant : [];
}

/** What mends by these records alone. A word sees those before it as they have been mended. */
export function mendingBy(records: readonly Misheard[]): Mending {
  const index = byHeardWord(records);
  return (tokens, isName, isPlant, isPlace) => {
    const restored = [...tokens];
    const hasSmall = tokens.some(({ is, capital }) => is === 'word' && !capital);
    for (const at of restored.keys()) {
      const candidates = index.get(restored[at]?.text ?? '');
      if (!candidates || isName(at) || (hasSmall && isCapitalBehindCapital(tokens, at))) continue;
      const meant = meantBy(candidates, new HeardView(restored, at, isName, isPlant, isPlace));
      for (const [n, text] of meant.entries()) {
        const token = restored[at + n];
        if (token) restored[at + n] = { ...token, text, is: 'word' };
      }
    }
    return restored;
  };
}

/** "200 Marrow Fife": written as a name is, in a note that has small letters too. */
const isCapitalBehindCapital = (tokens: readonly Token[], at: number): boolean =>
  at > 1 && tokens[at]?.capital === true && tokens[at - 1]?.capital === true;

/** "Took for cuttings", "had won rooted and too dead", "mystic the seedlings", "basil cuttings of" as they were said. */
export const restoreHeard: Mending = mendingBy(misheard);
