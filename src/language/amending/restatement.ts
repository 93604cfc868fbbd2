/** A whole sentence that says one thing again as it should have been: "no, 3", "it was 6 pots", "the ones I took on Monday were 14". */
import { wordAt } from '../grammar/rule.js';
import type { Piece, PlantWords, When } from '../pieces/pieces.js';
import { withoutReasons } from './restatement/reasons.js';
import { inOrder, withoutDeed, withoutDenial } from './restatement/order.js';
import { secondThoughtBehind, secondThoughtsBefore } from './restatement/second-thoughts.js';
import { copulaAt, subjectAt } from './restatement/subject.js';
import { causeAt, valueAt } from './restatement/value.js';

/** What was restated, and of which entry. */
export interface Restatement {
  readonly set: Readonly<Record<string, unknown>>;
  readonly plant?: PlantWords;
  readonly when?: When;
}

const ACTUALLY = /^(?:actually|after all)$/;

/**
 * What a whole sentence restates, undefined where it is anything else. `answering`: a prompt waits, so that a bare
 * number is its answer.
 */
export function restatementIn(row: readonly Piece[], answering: boolean): Restatement | undefined {
  const reasoned = withoutReasons(withoutDenial(row));
  const { row: said, when: deedDay } = withoutDeed(reasoned);
  const pieces = inOrder(said.filter((piece) => !(piece.is === 'break' && !piece.hard)));
  const { to: at, doubted: before } = secondThoughtsBefore(pieces);
  const behind = secondThoughtBehind(pieces);
  const takenBack = behind > 0 && at < pieces.length - behind;
  if (takenBack) pieces.splice(-behind);
  const doubted =
    before ||
    takenBack ||
    // "It's only 58 actually, just counted", "wasn't a slug, it was rot": put right on a second look, or by what is denied.
    reasoned.length < row.length ||
    ACTUALLY.test(wordAt(pieces, pieces.length - 1)) ||
    // "They're 11cm pots, not 9", "9cm, not 7".
    pieces.some((_, n) => n > 0 && wordAt(pieces, n) === 'not');
  // "8, I mean" puts right what was told, whatever else waits for a number.
  const meant = takenBack && behind > 1;
  const only = pieces[at];
  // "No, 77F": a bare temperature tells the weather, and puts a reading right only on second thoughts.
  if (doubted && at === pieces.length - 1 && only?.is === 'celsius')
    return { set: { celsius: only.celsius } };
  const subject = subjectAt(pieces, at);
  let verb = subject?.to ?? at;
  while (subject && /^(?:actually|really|only|just)$/.test(wordAt(pieces, verb))) verb++;
  const copula = subject?.did ? verb : copulaAt(pieces, verb, doubted);
  if (copula === undefined && (subject !== undefined || !doubted)) return undefined;
  if (copula !== undefined && subject === undefined && !doubted) return undefined;
  const cause = copula === undefined ? undefined : causeAt(pieces, copula);
  if (cause !== undefined && !subject?.plant) return { set: { cause } };
  const value = valueAt(pieces, copula ?? at);
  if (!value) return undefined;
  const kinds = value.kinds;
  const bare = subject === undefined && copula === undefined;
  // "Eight coleus in water, just snipped them": a plant told of, with a reason behind, puts nothing right by itself.
  if (bare && !before && !takenBack && reasoned.length < row.length && kinds.includes('plant'))
    return undefined;
  if (bare && answering && !meant && kinds.every((kind) => kind === 'count' || kind === 'plant'))
    return undefined;
  if (!doubted && kinds.includes('place') && !value.denied) return undefined;
  if (!doubted && kinds.includes('count') && pieces.some((piece) => piece.is === 'when' && isNow(piece.when)))
    return undefined;
  // "It was eight cuttings of Toucan Tart, not nine": the plant tells which entry.
  if (
    kinds.length > 1 &&
    kinds.includes('plant') &&
    value.denied?.is !== 'plant' &&
    subject?.plant === undefined
  ) {
    const { variety, crop, batch, ...set } = value.set as PlantWords & Record<string, unknown>;
    const plant = {
      ...(variety === undefined ? {} : { variety }),
      ...(crop === undefined ? {} : { crop }),
      ...(batch === undefined ? {} : { batch }),
    };
    return { set, plant, ...(deedDay ? { when: deedDay } : {}) };
  }
  return {
    set: value.set,
    ...(subject?.plant ? { plant: subject.plant } : {}),
    ...(value.denied?.is === 'plant' ? { plant: value.denied.plant } : {}),
    ...(subject?.when ? { when: subject.when } : {}),
  };
}

/** "The Salt Harrier were 11 today": counted now, whatever was taken then. */
const isNow = ({ words }: When): boolean =>
  /^(?:today|now|right now|tonight|this (?:morning|afternoon|evening)|at the moment)$/i.test(words);
