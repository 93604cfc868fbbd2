/** Runs a whole conversation on an empty ledger in memory, the clock stopping at every due prompt between turns. */
import { type Instant, SetClock } from '../../calendar/clock.js';
import { type Day } from '../../calendar/day.js';
import { localDay } from '../../calendar/zone.js';
import { isLive } from '../../ledger/batch.js';
import type { HeardWord } from '../../language/note.js';
import type { JournalLine } from '../../ledger/posting.js';
import type { LedgerSettings } from '../settings/ledger-settings.js';
import { lotsToldWith } from '../leaning/lots-unnamed.js';
import { MemoryBooks } from '../books/memory-books.js';
import { Session } from '../books/session.js';
import type { Prompt } from '../talk.js';
import type { Incoming, Outgoing, PromptAbout } from '../turn.js';
import type { Keeper } from '../../outlook/keeper.js';
import type { Errand, World } from '../world.js';

export interface ReplayTurn {
  readonly at: Instant;
  readonly from?: string;
  readonly say?: string;
  /** Index of the turn whose text this one replaces. */
  readonly edit?: number;
  readonly answers?: {
    readonly about: PromptAbout['about'];
    readonly variety?: string;
    readonly struck?: Day;
  };
  /** A reply to a message of ours of which nothing is known any more. */
  readonly toForgotten?: boolean;
  /** A voice note, recognised. */
  readonly heard?: readonly HeardWord[];
  /** What else it may have been. */
  readonly others?: readonly string[];
  /** How far each of the others is behind, in nats. */
  readonly lags?: readonly number[];
}

export interface Conversation {
  readonly zone: string;
  readonly start: Instant;
  readonly settings: Partial<LedgerSettings>;
  readonly turns: readonly ReplayTurn[];
  readonly until?: Instant;
}

export interface Said {
  readonly at: Instant;
  /** Index of the turn that it replies to; null where it was said unasked. */
  readonly turn: number | null;
  readonly outgoing: Outgoing;
}

export interface Replayed {
  readonly said: readonly Said[];
  readonly world: World;
  readonly journal: readonly JournalLine[];
  readonly errands: readonly { readonly turn: number; readonly errand: Errand }[];
}

const chat = 'replay';

export interface ReplayOptions {
  /** Sees the world after every turn and prompt. */
  readonly watch?: (world: World) => void;
  /** Kept from one conversation to the next. */
  readonly keeper?: Keeper;
}

export function replay(
  conversation: Conversation,
  { watch = () => {}, keeper }: ReplayOptions = {},
): Replayed {
  const group = conversation.turns.some(({ from }) => from !== undefined);
  const books = new MemoryBooks({ ...conversation.settings, zone: conversation.zone });
  const session = new Session(books, conversation.zone, keeper);
  const clock = new SetClock(conversation.start);
  const said: Said[] = [];
  const errands: { turn: number; errand: Errand }[] = [];
  const speakerOf = ({ from }: Pick<ReplayTurn, 'from'>) => ({
    chat,
    group,
    from: { id: from ?? 'grower', name: from ?? 'grower' },
  });
  const first = speakerOf(conversation.turns[0] ?? {});
  const collect = (turn: number | null) => {
    for (const outgoing of books.sent.splice(0)) said.push({ at: clock.now(), turn, outgoing });
    watch(session.world(first, clock.now()));
  };
  const runTo = (until: Instant) => {
    for (;;) {
      const next = session.nextMoment(first, clock.now());
      if (next === null || next > until) break;
      clock.set(Math.max(next, clock.now()));
      session.prompt(first, clock.now());
      collect(null);
    }
    clock.set(Math.max(until, clock.now()));
  };
  conversation.turns.forEach((turn, index) => {
    runTo(turn.at);
    const speaker = speakerOf(turn);
    const answers =
      turn.answers && promptKey(books, session.world(first, clock.now()), turn.answers, clock.now());
    const incoming: Incoming = {
      ...speaker,
      message: String(turn.edit ?? index),
      at: turn.edit === undefined ? turn.at : (conversation.turns[turn.edit]?.at ?? turn.at),
      ...(turn.heard
        ? { heard: { words: turn.heard, seconds: 0, others: turn.others ?? [], lags: turn.lags } }
        : { text: turn.say ?? '' }),
      ...(turn.edit === undefined ? {} : { edited: true }),
      ...(answers === undefined ? {} : { answers }),
      ...(turn.toForgotten ? { replyTo: 'forgotten' } : {}),
    };
    for (const errand of session.turn(incoming, clock.now())) errands.push({ turn: index, errand });
    collect(index);
  });
  if (conversation.until !== undefined) runTo(conversation.until);
  const world = session.world(first, clock.now());
  return { said, world, journal: world.journal, errands };
}

/** Key of the prompt that is answered; one that was not given yet is put in, as the reply says that it was. */
function promptKey(
  books: MemoryBooks,
  world: World,
  { about, variety, struck }: NonNullable<ReplayTurn['answers']>,
  now: Instant,
): string {
  const { talk, ledger, settings } = world;
  const toldWith = variety === undefined ? [] : lotsToldWith(ledger, talk.heard, variety);
  const batches = [...ledger.batches.values()].filter(
    (batch) =>
      (variety === undefined ||
        batch.variety?.toLowerCase() === variety.toLowerCase() ||
        (batch.variety === null && batch.crop === variety.toLowerCase()) ||
        toldWith.includes(batch)) &&
      (struck === undefined || batch.struck === struck || batch.received === struck),
  );
  const labels = new Set(batches.map(({ label }) => label));
  const given = talk.prompts.filter(
    (prompt) =>
      prompt.about.about === about &&
      (prompt.about.batch === undefined
        ? variety === undefined || prompt.about.variety?.toLowerCase() === variety.toLowerCase()
        : labels.has(prompt.about.batch)),
  );
  const open = given.findLast((prompt) => prompt.open);
  if (open) return ownKey(books, world, open);
  const batch = batches.findLast(isLive) ?? batches.at(-1);
  const occasion = `told:${about}:${batch?.label ?? variety ?? ''}:${localDay(now, settings.zone)}`;
  return ownKey(books, world, {
    key: '',
    occasion,
    givenAt: now,
    about: {
      about,
      ...(batch ? { batch: batch.label } : {}),
      ...(variety === undefined ? {} : { variety }),
    },
    // Answered a second time, it is closed as a prompt in a chat would be.
    open: !given.some((each) => each.occasion === occasion),
  });
}

/** A prompt may share its message with others: a reply to it alone gets a key of its own. */
function ownKey(books: MemoryBooks, { talk, chat, current }: World, prompt: Prompt): string {
  const sharing = talk.prompts.filter(({ key }) => key === prompt.key);
  if (prompt.key !== '' && sharing.length === 1) return prompt.key;
  const key = `replied:${prompt.occasion}`;
  const others = talk.prompts.filter(({ occasion }) => occasion !== prompt.occasion);
  books.keepTalk(current.id, chat, { ...talk, prompts: [...others, { ...prompt, key }] });
  return key;
}
