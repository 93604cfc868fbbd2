/** What a text says where the talk before it decides how it is read: whom it is said to, what it is said behind. */
import { CALLED } from '../../language/grammar/called.js';
import type { ReadNote } from '../../language/note.js';
import type { Line } from '../../ledger/posting.js';
import type { Context } from '../answers/answering.js';
import { withGrowersNamed } from './growers-named.js';
import { withNumbersNamed } from './by-their-numbers.js';
import { withoutVocative } from '../correcting/vocatives.js';
import { withRootsMeant } from './of-roots-told.js';
import { withPartsNamed } from './parts-named.js';
import { saysMine } from '../batches/pointing.js';
import { readIn } from './reading.js';
import type { Sitting } from '../sitting.js';

/** "Yes dear", said in a group to one of it. */
const TO_ANOTHER = new RegExp(
  `^(?:yes|yeah|aye|no|ok|okay|right|sure|thanks|sorry|done)[, ]+(?:${CALLED})[.!]?$`,
  'i',
);

/** What a text says; "no Col, it was three" without whom it is said to, where nothing is read in it otherwise. */
export function readSaid(sitting: Sitting, text: string, asked: Parameters<typeof readIn>[2]): ReadNote {
  // "Potted up my eight", while another's batch is asked about.
  const how = sitting.world.group && saysMine(text) ? { ...asked, pending: undefined } : asked;
  if (sitting.world.group && TO_ANOTHER.test(text.trim())) return { entries: [], asks: [] };
  const read = readIn(
    sitting,
    withGrowersNamed(
      sitting,
      withPartsNamed(sitting, withNumbersNamed(sitting, withRootsMeant(sitting, ofOwnRoots(sitting, text)))),
    ),
    how,
  );
  const bare = withoutVocative(text);
  const isSilent = read.entries.length === 0 && !read.instruction;
  return isSilent && bare !== text.trim() ? readIn(sitting, bare, how) : read;
}

const MINE_HAVE = /^(?:mine|ours|my (?:lot|batch)) (?:have|has|had)(?: got)? [\p{L}\d]+(?: so far| now)?$/iu;

/** "Mine have 8", while roots are asked after: rooted ones. */
function ofOwnRoots({ world, talk }: Sitting, text: string): string {
  const words = text.trim().replace(/[.!]$/, '');
  if (!world.group || !MINE_HAVE.test(words)) return text;
  return talk.prompts.some(({ open, about }) => open && about.about === 'check') ? `${words} rooted` : text;
}

/** "No, gave three" behind a note is of that note, and its "no" answers no prompt given before it. */
export function unprompted(sitting: Sitting, text: string, read: ReadNote, context: Context): ReadNote {
  const last = sitting.ledger.standing.at(-1)?.journal;
  const [prompt] = context.prompts;
  const isOfNote = last !== undefined && prompt !== undefined && last.postedAt > prompt.givenAt;
  return isOfNote && /^no\b/i.test(text.trim()) ? readIn(sitting, text) : read;
}

/** "Mine should say 10": what this grower of a group noted last. */
export function ownLines({ ledger, origin, world }: Sitting, text: string): readonly Line[] {
  if (!world.group || !/^(?:\p{L}+,? )?mine\b/iu.test(text)) return [];
  const own = ledger.standing.findLast(({ journal }) => journal.by === origin.by);
  return own ? [own.line] : [];
}
