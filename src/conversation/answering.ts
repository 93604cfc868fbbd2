/** What a message answers: the question, prompt or receipt that it replies to, else the newest open one. */
import type { Pending } from '../language/note.js';
import type { Line } from '../ledger/posting.js';
import { isAnswerable } from './given-prompts.js';
import type { Sitting } from './sitting.js';
import type { Ask, Prompt } from './talk.js';
import type { Incoming } from './turn.js';

/** How long a question waits for its answer. */
export const PATIENCE_MS = 48 * 3_600_000;
/** … and how long where nothing was said since, so that a bare answer can be for nothing else. */
const LONG_PATIENCE_MS = 14 * 24 * 3_600_000;

export interface Context {
  /** The question that a bare reply would answer. */
  readonly ask: Ask | null;
  /** Prompts that a bare reply would answer: those of one message, newest message first; several only where it covered several. */
  readonly prompts: readonly Prompt[];
  /** Lines of the message that is replied to. */
  readonly lines: readonly Line[];
  /** Whether it was said which, by a reply or a tap. */
  readonly explicit: boolean;
}

export function contextualAnswer(sitting: Sitting, { answers, replyTo }: Incoming): Context {
  const { talk } = sitting;
  if (answers !== undefined) {
    const ask = openAsks(sitting).findLast((each) => each.key === answers) ?? null;
    const prompts = talk.prompts.filter((each) => each.key === answers);
    const lines = talk.offers.find((each) => each.key === answers)?.lines ?? [];
    if (ask || prompts.length > 0 || lines.length > 0)
      return { ask, prompts: ask ? [] : preferOpen(prompts), lines, explicit: true };
  }
  if (replyTo !== undefined) {
    const lines = linesOfMessage(sitting, replyTo);
    if (lines.length > 0) return { ask: null, prompts: [], lines, explicit: true };
  }
  return { ...newest(sitting), lines: [], explicit: false };
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

export function linesOfMessage(sitting: Sitting, message: string): Line[] {
  return sitting.ledger.standing
    .filter(
      ({ journal }) => journal.source?.message === message && journal.source.chat === sitting.world.chat,
    )
    .map(({ line }) => line);
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
