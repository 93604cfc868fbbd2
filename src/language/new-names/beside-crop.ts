/** Names that stand beside the crop they are of. */
import { wordAt } from '../grammar/rule.js';
import { isCrop } from './position.js';
import { isAtEnd, lastWord, type RunSeen } from './run.js';

/** "Quarry Annie dahlia", "Quarry Annie (dahlia)". */
export function isBesideCrop({ pieces, end }: RunSeen): boolean {
  const mark = pieces[end];
  return isCrop(pieces[mark?.is === 'break' && mark.mark === '(' ? end + 1 : end]);
}

/** "Stuck 24 coleus cuttings this morning, Marble Finch", "8 coleus cuttings of …", "took some mums too, …". */
export function isOfCropBefore(seen: RunSeen): boolean {
  const { before } = seen;
  const isApart = before.at(-1)?.is === 'break';
  if (lastWord(seen) !== 'of' && !(isApart && isAtEnd(seen))) return false;
  const lead = isApart && before.at(-2)?.is === 'when' ? -3 : -2;
  return (
    isCrop(before.at(lead)) ||
    (/^(?:cuttings|plugs|plants|tips|slips|shoots)$/.test(wordAt(before, before.length + lead)) &&
      isCrop(before.at(lead - 1))) ||
    (/^(?:too|also|today)$/.test(wordAt(before, before.length - 2)) && isCrop(before.at(-3)))
  );
}
