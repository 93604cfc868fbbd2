/** `replay`: whole conversations on standard input, what was said and what the ledger holds on standard output. */
import { type Day, parseDay } from '../calendar/day.js';
import { formatInstant, isTimeOfDay, isZone, parseInstant } from '../calendar/zone.js';
import { batchRecord, entryRecords } from '../conversation/replays/record.js';
import { defaultSettings, type LedgerSettings } from '../conversation/settings/ledger-settings.js';
import {
  type Conversation,
  replay as replayConversation,
  type Replayed,
  type ReplayTurn,
} from '../conversation/replays/replay.js';
import { memoryKeeper } from '../outlook/keeper.js';
import type { PromptAbout } from '../conversation/turn.js';
import type { Run } from './commands.js';
import { answerLines, BadLine } from './json-lines.js';

export const replay: Run = (_args, streams) => {
  const keeper = memoryKeeper();
  return answerLines(streams, (line) => {
    const id = line['id'] ?? null;
    const conversation = readConversation(line);
    try {
      return { id, ...answerOf(conversation, replayConversation(conversation, { keeper })) };
    } catch (fault) {
      streams.errors.write(`${fault instanceof Error ? (fault.stack ?? fault.message) : String(fault)}\n`);
      throw new BadLine('a fault of the program stopped this conversation; its trace is on standard error');
    }
  });
};

/** Throws `BadLine` with what to mend. */
export function readConversation(line: Record<string, unknown>): Conversation {
  const zone = line['zone'];
  if (typeof zone !== 'string' || !isZone(zone))
    throw new BadLine('zone: give an IANA name such as Europe/London');
  const turns = line['turns'];
  if (!Array.isArray(turns)) throw new BadLine('turns: give a list');
  const read = turns.map((turn, index) => readTurn(turn, index, turns.length));
  const start = line['start'] === undefined ? (read[0]?.at ?? 0) : moment(line['start'], 'start');
  return {
    zone,
    start,
    settings: readSettings(line['settings'], zone),
    turns: read,
    ...(line['until'] === undefined ? {} : { until: moment(line['until'], 'until') }),
  };
}

function readTurn(value: unknown, index: number, count: number): ReplayTurn {
  if (typeof value !== 'object' || value === null) throw new BadLine(`turn ${index}: give an object`);
  const turn = value as Record<string, unknown>;
  const at = moment(turn['at'], `turn ${index}: at`);
  const { say, edit, from, answers, voice } = turn;
  if (typeof say !== 'string' && typeof voice !== 'string')
    throw new BadLine(`turn ${index}: give say (or voice)`);
  if (
    edit !== undefined &&
    (!Number.isInteger(edit) || Number(edit) < 0 || Number(edit) >= Math.min(index, count))
  )
    throw new BadLine(`turn ${index}: edit is the number of an earlier turn`);
  return {
    at,
    ...(typeof say === 'string' ? { say } : {}),
    ...(typeof voice === 'string' && typeof say !== 'string' ? { heard: [] } : {}),
    ...(typeof edit === 'number' ? { edit } : {}),
    ...(typeof from === 'string' ? { from } : {}),
    ...(typeof answers === 'object' && answers !== null
      ? { answers: readAnswers(answers as Record<string, unknown>, index) }
      : {}),
  };
}

const subjects = ['check', 'potOn', 'pinch', 'hardenOff', 'plantOut', 'strike', 'tend'];

function readAnswers(answers: Record<string, unknown>, index: number): NonNullable<ReplayTurn['answers']> {
  const { about, variety, struck } = answers;
  if (typeof about !== 'string' || !subjects.includes(about))
    throw new BadLine(`turn ${index}: answers.about is one of ${subjects.join(', ')}`);
  const day = typeof struck === 'string' ? parseDay(struck) : null;
  return {
    about: about as PromptAbout['about'],
    ...(typeof variety === 'string' ? { variety } : {}),
    ...(day === null ? {} : { struck: day as Day }),
  };
}

function readSettings(value: unknown, zone: string): Partial<LedgerSettings> {
  const given = typeof value === 'object' && value !== null ? (value as Record<string, unknown>) : {};
  const { lastFrost, firstFrost, digestAt, quiet, dateOrder, units } = given;
  const day = (each: unknown): each is string => typeof each === 'string' && /^\d{2}-\d{2}$/.test(each);
  const [from, to] = Array.isArray(quiet) ? (quiet as unknown[]) : [];
  return {
    ...defaultSettings(zone),
    dateOrder: 'DMY',
    ...(day(lastFrost) ? { lastFrost } : {}),
    ...(day(firstFrost) ? { firstFrost } : {}),
    ...(typeof digestAt === 'string' && isTimeOfDay(digestAt) ? { digestAt } : {}),
    ...(typeof from === 'string' && typeof to === 'string' && isTimeOfDay(from) && isTimeOfDay(to)
      ? { quiet: [from, to] as const }
      : {}),
    ...(dateOrder === 'MDY' || dateOrder === 'DMY' ? { dateOrder } : {}),
    ...(units === 'metric' || units === 'us' ? { units } : {}),
  };
}

function moment(value: unknown, what: string): number {
  const instant = typeof value === 'string' ? parseInstant(value) : null;
  if (instant === null)
    throw new BadLine(`${what}: give a moment with its offset, such as 2026-03-02T09:05:00+00:00`);
  return instant;
}

function answerOf({ zone }: Conversation, { said, world }: Replayed): object {
  return {
    said: said.map(({ at, turn, outgoing: { text, buttons, prompts } }) => ({
      at: formatInstant(at, zone),
      turn,
      text,
      buttons: (buttons ?? []).flat().map(({ label }) => label),
      ...(prompts?.length === 1 ? { prompt: prompts[0] } : prompts && prompts.length > 1 ? { prompts } : {}),
    })),
    batches: [...world.ledger.batches.values()].map(batchRecord),
    entries: entryRecords(world.ledger),
  };
}
