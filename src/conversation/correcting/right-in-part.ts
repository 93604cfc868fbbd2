/** “No, I'm wrong, Tuesday, it was bin day”: a text that says nothing as a whole, put right, answered or undone by one of its parts. */
import type { ReadNote } from '../../language/note.js';
import type { Plant } from '../../ledger/entry.js';
import { named } from '../../ledger/reach.js';
import { type Context, isBare, pendingOf } from '../answers/answering.js';
import { heartsOf } from './at-heart.js';
import { putsRight } from './beside-a-note.js';
import { isAnswering } from './is-answering.js';
import { leansOnLast } from '../leaning/leaning.js';
import { withoutNames } from '../answers/plants-named.js';
import { readIn } from '../reading/reading.js';
import { replyToAsk } from '../answers/replying.js';
import type { Sitting } from '../sitting.js';
import { undoLast } from './undoing.js';

/** So long after a note it is put right in words that name no plant. */
const HEART_MS = 24 * 3_600_000;

type Act = (sitting: Sitting, text: string, read: ReadNote, context: Context) => void;

/** "No, I'm wrong, Tuesday, it was bin day": put right by one of its parts, where the whole says nothing. */
export function rightInPart(
  sitting: Sitting,
  text: string,
  context: Context,
  isRemark: boolean,
  act: Act,
): boolean {
  const last = sitting.ledger.standing.at(-1)?.journal;
  if (last === undefined) return false;
  const { parts, doubted } = heartsOf(text, withoutNames(sitting.ledger, text));
  if (isRemark && !doubted) return false;
  if (answersFirst(sitting, text, context, act)) return true;
  if (parts.length === 0) return false;
  for (const heart of parts) {
    const read = readIn(sitting, heart);
    const isRight = read.entries.every(
      ({ entry }) => entry.kind === 'amend' || (doubted && /^(?:remark|answer)$/.test(entry.kind)),
    );
    const { ask } = context;
    if (ask && isAnswering(sitting, context) && isReply(read) && replyToAsk(sitting, ask, heart, read))
      return true;
    if (read.instruction || !isRight) continue;
    if (putsRight(sitting, heart, read, context)?.rest === '') return true;
    const isNamed = read.entries.some(({ entry }) => named(entry as Plant));
    if (!isNamed && sitting.origin.at - last.postedAt > HEART_MS) continue;
    if (leansOnLast(sitting, heart, read, context)) return true;
    if (read.entries.length > 0 && read.entries.every(({ entry }) => entry.kind === 'amend')) {
      act(sitting, heart, read, context);
      return true;
    }
  }
  // "She never turned up, so strike that".
  const [undo] = text
    .trim()
    .split(/[,;.!]+ ?(?:so |and )?/)
    .filter((part) => part !== '')
    .slice(-1);
  const isUndone =
    undo !== undefined &&
    undo !== text &&
    readIn(sitting, undo)
      .entries.map(({ entry }) => entry.kind)
      .join() === 'undo';
  if (isUndone && sitting.origin.at - last.postedAt <= HEART_MS) {
    undoLast(sitting, 0);
    return true;
  }
  return false;
}

const isReply = ({ entries, instruction }: ReadNote): boolean =>
  !instruction && entries.every(({ entry }) => /^(?:amend|answer|remark)$/.test(entry.kind));

/** "Four my lovely, and a fifth thinking about it", in reply to a prompt. */
function answersFirst(sitting: Sitting, text: string, context: Context, act: Act): boolean {
  const [first = ''] = text.split(/[,.!]/);
  if (!context.explicit || first === text) return false;
  const reply = readIn(sitting, first, { pending: pendingOf(context) });
  if (reply.entries.length !== 1 || !isBare(reply)) return false;
  act(sitting, first, reply, context);
  return true;
}
