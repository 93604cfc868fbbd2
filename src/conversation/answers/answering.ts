/** What a message answers: the question, prompt or receipt that it replies to; where it replies to none, the newest open one. */
import type { Pending, ReadEntry, ReadNote } from '../../language/note.js';
import type { Line } from '../../ledger/posting.js';
import { isDoneToPlants } from './completing.js';
import { isAnswerable } from '../prompts/given-prompts.js';
import { isLogged } from '../noting.js';
import type { Sitting } from '../sitting.js';
import type { Ask, Prompt } from '../talk.js';
import type { Incoming } from '../turn.js';

/** How long a question waits for its answer. */
export const PATIENCE_MS = 48 * 3_600_000;
/** … and how long where nothing was said since, so that a bare answer can be for nothing else. */
const LONG_PATIENCE_MS = 14 * 24 * 3_600_000;

/** What a message may answer, and how surely. */
export interface Context {
  /** The question that a bare reply would answer. */
  readonly ask: Ask | null;
  /** Prompts that a bare reply would answer: those of one message, newest message first; several only where it covered several. */
  readonly prompts: readonly Prompt[];
  /** Lines of the message that is replied to. */
  readonly lines: readonly Line[];
  /** Whether it was said which, by a reply or a tap; where that message asks nothing, nothing else is answered. */
  readonly explicit: boolean;
  /** Whether nothing is known any more of the message that is replied to. */
  readonly forgotten: boolean;
  /** Of the message of ours that is answered. */
  readonly key: string | undefined;
}

/** The message that one replies to: ours by its key, any by its id. */
export type RepliedTo = Pick<Incoming, 'answers' | 'replyTo'>;

/** What an incoming message answers. */
export function contextualAnswer(sitting: Sitting, { answers, replyTo }: RepliedTo): Context {
  if (answers !== undefined) return ofOurs(sitting, answers);
  if (replyTo !== undefined) {
    const own = ofOwn(sitting, replyTo);
    if (own) return own;
  }
  const { ask, prompts } = newest(sitting);
  return { ...nothing, ask, prompts, explicit: false, key: ask?.key ?? prompts[0]?.key };
}

const nothing: Context = {
  ask: null,
  prompts: [],
  lines: [],
  explicit: true,
  forgotten: false,
  key: undefined,
};

/** What a reply to our message with that key answers. */
function ofOurs(sitting: Sitting, key: string): Context {
  const { talk } = sitting;
  const offer = talk.offers.find((each) => each.key === key);
  // A question that was put again is still the one that it was.
  const puts = ({ id }: Ask) => offer?.buttons.some(({ data }) => data.startsWith(`ask:${id}:`));
  const ask = openAsks(sitting).findLast((each) => each.key === key || puts(each)) ?? null;
  const prompts = talk.prompts.filter((each) => each.key === key);
  return {
    ...nothing,
    ask,
    prompts: ask ? [] : preferOpen(prompts),
    lines: offer?.lines ?? [],
    forgotten: !offer && !ask && prompts.length === 0,
    key,
  };
}

/** What a reply to a grower's message is about; null where that was heard lately and asked or noted nothing. */
function ofOwn(sitting: Sitting, message: string): Context | null {
  const lines = linesOfMessage(sitting, message);
  if (lines.length > 0) return { ...nothing, lines };
  const ask = openAsks(sitting).findLast(({ origin }) => origin.message === message);
  if (ask) return { ...nothing, ask, key: ask.key ?? undefined };
  const isKnown = sitting.talk.heard.some((each) => each.message === message);
  return isKnown ? null : { ...nothing, forgotten: true };
}

function newest(sitting: Sitting): Pick<Context, 'ask' | 'prompts'> {
  const ask = openAsks(sitting).at(-1) ?? null;
  const open = sitting.talk.prompts.filter((each) => isAnswerable(sitting, each));
  const prompt = open.at(-1);
  if (!prompt || (ask && ask.askedAt >= prompt.givenAt)) return { ask, prompts: [] };
  return { ask: null, prompts: open.filter((each) => each.key === prompt.key) };
}

/** Questions that were put and still wait, oldest first. */
export function openAsks(sitting: Sitting): Ask[] {
  return sitting.talk.asks.filter((each) => each.key !== null && !isExpired(sitting, each));
}

/** Whether it waited too long for its answer. */
function isExpired({ talk, now, origin }: Sitting, { id, askedAt }: Ask): boolean {
  const waited = now - askedAt;
  const isNewest = talk.asks.at(-1)?.id === id;
  const since = talk.heard.some(({ at, message }) => at > askedAt && message !== origin.message);
  return waited > (isNewest && !since ? LONG_PATIENCE_MS : PATIENCE_MS);
}

/** Lines of the ledger that stand from a grower's message. */
export function linesOfMessage(sitting: Sitting, message: string): Line[] {
  return sitting.ledger.standing
    .filter(
      ({ journal }) => journal.source?.message === message && journal.source.chat === sitting.world.chat,
    )
    .map(({ line }) => line);
}

/** Whether it replies to a message that nothing can answer, by which no other prompt is meant. */
export function asksNothing({ explicit, ask, prompts, lines }: Context): boolean {
  return explicit && !ask && prompts.length === 0 && lines.length === 0;
}

/** Whether the words name no plant where they need one, so that they say nothing without what they reply to. */
export function isBare({ entries }: ReadNote): boolean {
  return entries.length > 0 && entries.every(leans);
}

function leans({ entry, sources }: ReadEntry): boolean {
  if ((['batch', 'variety', 'crop'] as const).some((slot) => sources[slot] === 'said')) return false;
  if (entry.kind === 'answer') return true;
  if (entry.kind === 'amend') return entry.date === undefined;
  return isLogged(entry) && isDoneToPlants(entry.kind) && !('fromPlace' in entry);
}

/** What the reader is told of it. */
export function pendingOf(context: Context): Pending | undefined {
  const [prompt, another] = context.prompts;
  if (prompt && !another)
    return {
      kind: prompt.about.about,
      ...(prompt.about.batch === undefined ? {} : { batch: prompt.about.batch }),
    };
  const asked = context.ask?.asked;
  if (asked?.ask === 'slot') {
    const batch = (asked.entry as { batch?: string }).batch;
    return { kind: asked.entry.kind, ...(batch === undefined ? {} : { batch }) };
  }
  if (asked?.ask === 'howMany') return { kind: 'check', batch: asked.batch };
  return undefined;
}

function preferOpen(prompts: readonly Prompt[]): readonly Prompt[] {
  const open = prompts.filter((each) => each.open);
  return open.length > 0 ? open : prompts;
}
