/** `npm run -s parse`: notes in, entries out, line by line; the reader's headless face. */
import { isZone, parseInstant } from '../calendar/zone.js';
import type { Note, NoteContext, ReadNote } from '../language/note.js';
import { explanation } from '../language/explanation.js';
import { read } from '../language/read.js';
import type { CommandStreams } from './commands.js';
import { answerLines, BadLine } from './json-lines.js';

/** Reads notes of the contract from standard input and answers each; `--explain` prints the tree of rules to `errors`. */
export async function parse(args: readonly string[], streams: CommandStreams): Promise<number> {
  const explains = args.includes('--explain');
  return answerLines(streams, (line) => {
    const note = noteOf(line);
    if (explains) streams.errors.write(`${explanation(note)}\n`);
    const id = typeof line['id'] === 'string' ? line['id'] : String(line['id'] ?? '');
    try {
      return { id, ...answerOf(read(note)) };
    } catch (error) {
      throw new BadLine(`could not be read: ${error instanceof Error ? error.message : String(error)}`);
    }
  });
}

/** The contract's answer without its id. */
export function answerOf(note: ReadNote): { entries: readonly object[]; asks: readonly object[] } {
  return { entries: note.entries.map(({ entry }) => entry), asks: note.asks };
}

/** A line of the contract as a note; throws `BadLine` where it is none. */
export function noteOf(line: Record<string, unknown>): Note {
  const { text, now, zone = 'UTC', dateOrder, context } = line;
  if (typeof text !== 'string') throw new BadLine('no text: give the note as "text"');
  const instant = typeof now === 'string' ? parseInstant(now) : null;
  if (instant === null) throw new BadLine('no now: give the moment as ISO 8601 with its offset');
  if (typeof zone !== 'string' || !isZone(zone))
    throw new BadLine('no such zone: give an IANA name such as Europe/London');
  return {
    text,
    now: instant,
    zone,
    ...(dateOrder === 'MDY' || dateOrder === 'DMY' ? { dateOrder } : {}),
    ...(typeof context === 'object' && context !== null ? { context: context as NoteContext } : {}),
  };
}
