/** Names that stand beside the crop they are of. */
import { wordAt } from '../../grammar/rule.js';
import type { Piece } from '../../pieces/pieces.js';
import { cropSaidOf } from './crop-said.js';
import { NO_LAST } from './names-crop-before.js';
import { isWish } from './no-names.js';
import { isFirm, isPerson } from './people.js';
import { isCrop } from './position.js';
import { isAtEnd, lastWord, type RunSeen } from './run.js';

/** "Quarry Annie dahlia", "Quarry Annie (dahlia)". */
export function isBesideCrop({ pieces, end }: RunSeen): boolean {
  const mark = pieces[end];
  const crop = mark?.is === 'break' && mark.mark === '(' ? end + 1 : end;
  return isCrop(pieces[crop]) || cropSaidOf(pieces, end) !== undefined;
}

/** "Stuck 24 coleus cuttings this morning, Marble Finch", "8 coleus cuttings of …", "took some mums too, …". */
export function isOfCropBefore(seen: RunSeen): boolean {
  const { before } = seen;
  const isApart = before.at(-1)?.is === 'break';
  if (lastWord(seen) !== 'of' && !(isApart && isAtEnd(seen))) return false;
  if (isWish(wordsOfRun(seen))) return false;
  const lead = isApart && before.at(-2)?.is === 'when' ? -3 : -2;
  return (
    isCrop(before.at(lead)) ||
    (/^(?:cuttings|plugs|plants|tips|slips|shoots)$/.test(wordAt(before, before.length + lead)) &&
      isCrop(before.at(lead - 1))) ||
    (/^(?:too|also|today)$/.test(wordAt(before, before.length - 2)) && isCrop(before.at(-3)))
  );
}

/** "Took 14 mum cuttings from Velvet Turnstile": the plant, where it is nobody and no nursery. */
export function isParentOfCuttings({ before, pieces, at, end, isCapital, length }: RunSeen): boolean {
  if (!isCapital || length < 2 || !/^(?:from|off)$/.test(wordAt(before, before.length - 1))) return false;
  const words = wordsOfRun({ pieces, at, end });
  return (
    isTakenOfCrop(before.slice(0, -1)) &&
    !isPerson(words) &&
    !isFirm(words) &&
    !/(?:'s|s')$/.test(words.at(-1) ?? '')
  );
}

/** "Took six hydrangea cuttings velour tuba two pots": said without marks, words nobody knows. */
export function isBehindCuttings({ before, pieces, at, end, capital, unknown, length }: RunSeen): boolean {
  const next = pieces[end];
  return (
    length > 1 &&
    (capital === length || (capital === 0 && unknown > 0)) &&
    (next === undefined || /^(?:break|count|pots|place|when)$/.test(next.is)) &&
    isTakenOfCrop(before) &&
    !NO_LAST.test(wordAt(pieces, end - 1)) &&
    pieces
      .slice(at, end)
      .every(
        (piece) => piece.is === 'word' && !piece.verb && (capital > 0 || !/(?:ly|ing|ed)$/.test(piece.text)),
      )
  );
}

/** "Took 14 mum cuttings", and "14 mum cuttings" where no deed is told. */
function isTakenOfCrop(before: readonly Piece[]): boolean {
  if (!/^(?:cuttings|tips|slips)$/.test(wordAt(before, before.length - 1)) || !isCrop(before.at(-2)))
    return false;
  const deeds = before.flatMap((piece) =>
    piece.is === 'word' && piece.verb?.form === 'past' ? [piece.verb.lemma] : [],
  );
  return deeds.length === 0
    ? before.at(-3)?.is === 'count'
    : deeds.some((lemma) => /^(?:take|strike|stick|insert|do|make)$/.test(lemma));
}

/** "30 petunia plugs came from Hexley's, Captain Drizzle, …": two marks apart, behind where they came from. */
export function isBehindWhence(seen: RunSeen): boolean {
  const { before, isShouted } = seen;
  const words = wordsOfRun(seen);
  if (isShouted || !isComma(before.at(-1)) || isPerson(words) || isFirm(words)) return false;
  if (/(?:'s|s')$/.test(words.at(-1) ?? '') || isWish(words)) return false;
  const opens = before.findLastIndex((piece) => piece.is === 'break' && piece.hard) + 1;
  const told = before.slice(opens, -1);
  const crop = told.findIndex(({ is }) => is === 'plant');
  const behind = told.slice(crop + 1);
  return (
    isCrop(told[crop]) &&
    told.some(({ is }) => is === 'count') &&
    behind.some((_, n) => /^(?:from|off|at|came|arrived)$/.test(wordAt(behind, n))) &&
    behind.every((piece) =>
      piece.is === 'word'
        ? piece.verb === undefined || CAME.test(piece.text)
        : /^(?:when|place)$/.test(piece.is),
    )
  );
}

const CAME = /^(?:came|arrived|delivered|turned|come)$/;

/** "…, pelargonium, …": its crop by itself between two marks. */
export function isCropApart({ pieces, end }: RunSeen): boolean {
  let at = end;
  while (/^(?:as|well|too|also)$/.test(wordAt(pieces, at))) at++;
  const behind = pieces[at + 2];
  return isComma(pieces[at]) && isCrop(pieces[at + 1]) && (behind === undefined || behind.is === 'break');
}

/** "…, 12 cuttings". */
export const isCountedBehind = (pieces: readonly Piece[], at: number): boolean =>
  pieces[at]?.is === 'break' &&
  pieces[at + 1]?.is === 'count' &&
  (pieces[at + 2]?.is === 'cutting' || /^(?:cuttings?|slips|tips|plugs|in)$/.test(wordAt(pieces, at + 2)));

const isComma = (piece: Piece | undefined): boolean => piece?.is === 'break' && piece.mark === ',';

const wordsOfRun = ({ pieces, at, end }: Pick<RunSeen, 'pieces' | 'at' | 'end'>): string[] =>
  pieces.slice(at, end).map((_, n) => wordAt(pieces, at + n));
