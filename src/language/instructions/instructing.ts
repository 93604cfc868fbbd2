/** A whole note as an instruction, where it is one. */
import { addDays } from '../../calendar/day.js';
import { firstDay } from '../../calendar/span.js';
import { localDay } from '../../calendar/zone.js';
import type { Plant } from '../../ledger/entry.js';
import { loosePlace } from '../acts/loose-places.js';
import { numberOf } from '../pieces/number-names.js';
import { instructionRules } from '../grammar/instruction.js';
import { wordAt } from '../grammar/rule.js';
import type { InstructionWords } from '../grammar/instruction/rule.js';
import type { Instruction } from './instruction.js';
import type { Note } from '../note.js';
import type { Piece, PieceOf } from '../pieces/pieces.js';
import { LINE_LIMIT, plantsIn } from '../sentences/sentences.js';
import type { Utterance } from '../pieces/utterance.js';

/** The instruction that a note gives; undefined where it gives none. */
export function instruct(
  line: string,
  pieces: readonly Piece[],
  utterance: Utterance,
  note: Note,
): Instruction | undefined {
  if (line.length > LINE_LIMIT) return undefined;
  let words: InstructionWords | undefined;
  for (const rule of instructionRules) {
    const match = rule.pattern.exec(line);
    if (!match) continue;
    words ??= wordsOf(line, pieces, utterance, note);
    const instruction = rule.read(words, match);
    if (instruction) return instruction;
  }
  return undefined;
}

function wordsOf(line: string, pieces: readonly Piece[], utterance: Utterance, note: Note): InstructionWords {
  const whens = pieces
    .filter((piece): piece is PieceOf<'when'> => piece.is === 'when')
    .map(({ when }) => when);
  const numbers = pieces.flatMap((piece) =>
    piece.is === 'count' && piece.quantity.value !== undefined ? [piece.quantity.value] : [],
  );
  const day = whens.find(({ future }) => future !== undefined && future !== 'ask')?.future;
  const firstWhen = day === undefined || day === 'ask' ? undefined : firstDay(day);
  const times = whens.flatMap(({ time }) => (time === undefined ? [] : [time]));
  const bare = bareTimes(line);
  return {
    line,
    pieces,
    plants: plantsIn(pieces).map(({ plant }) => ({ ...plant }) as Plant),
    numbers,
    times: bare.length > times.length ? bare : times,
    until: firstWhen ?? daysFromNow(line, note),
    written: utterance.text,
    placeWithin: (from, to) => {
      const at = pieces.findIndex((_, n) => n >= from && n < to && isWhere(pieces, n));
      return at < 0
        ? undefined
        : loosePlace(pieces, { from: at, to, hit: undefined }, utterance.tokens, utterance.text);
    },
    monthDay: firstWhen?.slice(5),
  };
}

const isWhere = (pieces: readonly Piece[], at: number): boolean =>
  /^(?:in|into|on|onto|at|under|to)$/.test(wordAt(pieces, at)) &&
  /^(?:the|my|our)$/.test(wordAt(pieces, at + 1));

/** "Snooze X 3 days". */
function daysFromNow(line: string, note: Note): ReturnType<typeof localDay> | undefined {
  const match = /\b(\d+|a|one|two|three|four|five|six|seven|ten) (day|days|week|weeks|fortnight)\b/.exec(
    line,
  );
  if (!match) return undefined;
  const number = numberOf(match[1]) ?? 0;
  const unit = match[2]?.startsWith('week') ? 7 : match[2] === 'fortnight' ? 14 : 1;
  return addDays(localDay(note.now, note.zone), number * unit);
}

/** Hours as an instruction names them: "6:30", "9 pm", "nine at night", "eight in the morning". */
function bareTimes(line: string): readonly string[] {
  const times: string[] = [];
  for (const match of line.matchAll(
    /\b(\d{1,2}|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve)(?: (\d\d))?(?: (am|pm|at night|in the morning|in the evening|in the afternoon))?\b(?! (?:of|day|days|week|weeks|month|months|hour|jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec))/g,
  )) {
    const hour = numberOf(match[1]) ?? -1;
    if (!(hour >= 0 && hour < 24)) continue;
    const late = /^(?:pm|at night|in the evening|in the afternoon)$/.test(match[3] ?? '') && hour < 12;
    times.push(`${String(late ? hour + 12 : hour).padStart(2, '0')}:${match[2] ?? '00'}`);
  }
  return times;
}
