/** Speaks unasked: at the grower's hour, only where something is due; a digest for what is told, a prompt for each question. */
import type { Instant } from '../../calendar/clock.js';
import { addDays, type Day, earliest, latest } from '../../calendar/day.js';
import { instantAt, localDay, localTime } from '../../calendar/zone.js';
import { type Due, isDue, isLate } from '../../outlook/due.js';
import { civilMoment, digestHourCame, nextDigestAt } from '../../outlook/digest-time.js';
import { type Digest, digestOf } from '../../outlook/digest.js';
import { digestWords, promptButtons, promptWords, remindWords } from '../../words/prompts.js';
import { speechOf } from '../batches/deeds.js';
import { give, isAnswerable } from './given-prompts.js';
import { allDues, type Viewpoint, viewFrom } from './looking-ahead.js';
import { Sitting } from '../sitting.js';
import type { Prompt, Talk } from '../talk.js';
import type { Button, PromptAbout } from '../turn.js';
import type { Turned, World } from '../world.js';

/** Up to so many questions come one by one, each to be answered in its own message; more come in one list. */
const ONE_BY_ONE = 4;
/** How far ahead the next moment is looked for. */
const HORIZON_DAYS = 400;
/** How many occasions are remembered as mentioned. */
const REMEMBERED = 600;

/** The next moment, `now` or later, at which something may have to be said; null while nothing is in sight. */
export function nextMoment(world: World, now: Instant): Instant | null {
  const view = viewFrom(world, now);
  const all = allDues(view);
  const moments = [nextDigest(view, all, now), nextTimed(view, all, now)].filter((each) => each !== null);
  return moments.length === 0 ? null : Math.min(...moments);
}

function nextDigest({ settings, talk, today }: Viewpoint, all: readonly Due[], now: Instant): Instant | null {
  const lookedOn = lastDayOf(settings, talk, today);
  const next = nextDigestAt(now, lookedOn, settings);
  if (next === null) return null;
  const first = firstDayOfNews(all, lookedOn, new Set(talk.mentioned), today);
  if (first === null) return null;
  const dayStart = instantAt(first, '00:00', settings.zone);
  return next >= dayStart ? next : nextDigestAt(dayStart, lookedOn, settings);
}

/** Day of the last digest. Who has written since today's hour had it, or needed none; what came up since can wait for tomorrow. */
function lastDayOf(
  { digestAt, zone }: Viewpoint['settings'],
  { lookedOn, heard }: Viewpoint['talk'],
  today: Day,
): Day | null {
  const wroteAt = heard.at(-1)?.at;
  if (digestAt === 'off' || wroteAt === undefined || wroteAt < instantAt(today, digestAt, zone))
    return lookedOn;
  return lookedOn === null ? today : latest(lookedOn, today);
}

/** The first day, today or later, on which there is something that was not mentioned yet. */
function firstDayOfNews(
  all: readonly Due[],
  lastDay: Day | null,
  mentioned: ReadonlySet<string>,
  today: Day,
): Day | null {
  const earliestDay = lastDay === null || lastDay < today ? today : addDays(lastDay, 1);
  const days = all
    .filter(({ kind, at, key }) => kind !== 'tend' && at === null && !mentioned.has(key))
    .filter(({ tooLateAfter }) => tooLateAfter === null || tooLateAfter >= earliestDay)
    .map(({ from }) => latest(from, earliestDay))
    .sort();
  const [first] = days;
  return first === undefined || first > addDays(today, HORIZON_DAYS) ? null : first;
}

/** The next reminder that was asked for at a time of day. */
function nextTimed({ settings, talk, today }: Viewpoint, all: readonly Due[], now: Instant): Instant | null {
  let next: Instant | null = null;
  for (const due of all) {
    if (due.at === null || talk.mentioned.includes(due.key)) continue;
    const at = civilMoment(
      Math.max(now, instantAt(latest(due.from, earliest(today, due.from)), due.at, settings.zone)),
      settings,
    );
    next = next === null ? at : Math.min(next, at);
  }
  return next;
}

function untimed(all: readonly Due[]): Due[] {
  return all.filter(({ at }) => at === null);
}

/**
 * The talk of a world in which today's hour came and left nothing to say: what a turn brings from now on waits for the next.
 * Where something is overdue, after an absence, it is left for the catch-up.
 */
export function lookedToday(world: World, now: Instant): Talk {
  const { settings, talk } = world;
  const today = localDay(now, settings.zone);
  if ((talk.lookedOn !== null && talk.lookedOn >= today) || !digestHourCame(now, settings)) return talk;
  const overdue = nextDigest(viewFrom(world, now), allDues(viewFrom(world, now)), now);
  return overdue !== null && overdue <= now ? talk : { ...talk, lookedOn: today };
}

/** Says what is due at this moment, once. */
export function prompt(world: World, now: Instant): Turned {
  const sitting = new Sitting(world, now, { message: '', from: '', by: null, at: now });
  const view = viewFrom(world, now);
  const all = allDues(view);
  sayTimed(sitting, all);
  const { settings, talk } = sitting;
  const lookedOn = lastDayOf(settings, talk, sitting.today);
  const wanted = nextDigestAt(now, lookedOn, settings);
  if (wanted !== null && wanted <= now) {
    const digest = digestOf(untimed(all), {
      today: sitting.today,
      lastDay: lookedOn,
      mentioned: new Set(talk.mentioned),
    });
    if (digest && hasNews(digest, talk.mentioned)) sayDigest(sitting, digest);
    sitting.change({ lookedOn: sitting.today });
  }
  return sitting.end();
}

function sayTimed(sitting: Sitting, all: readonly Due[]): void {
  const time = localTime(sitting.now, sitting.settings.zone);
  for (const due of all) {
    if (due.at === null || !isDue(due, sitting.today) || sitting.talk.mentioned.includes(due.key)) continue;
    if (due.from === sitting.today && due.at > time) continue;
    sitting.say({ text: remindWords(due), unasked: true });
    mention(sitting, [due]);
  }
}

function sayDigest(sitting: Sitting, digest: Digest): void {
  const before = new Set(sitting.talk.mentioned);
  const fresh = digest.questions.filter((due) => !before.has(due.key) && aboutOf(due) !== null);
  const worthTelling = (due: Due) => !before.has(due.key) || isLate(due, sitting.today);
  const told = digest.parts
    .flatMap(({ dues }) => dues)
    .filter((due) => !fresh.includes(due) && worthTelling(due));
  const speech = speechOf(sitting);
  const oneByOne = fresh.length <= ONE_BY_ONE;
  const listed = oneByOne ? told : digest.parts.flatMap(({ dues }) => dues).filter(worthTelling);
  if (listed.length > 0) {
    const key = sitting.say({
      text: digestWords({ ...digest, parts: partsOf(digest, listed) }, speech),
      ...(oneByOne
        ? {}
        : {
            prompts: fresh.flatMap((due) => aboutOf(due) ?? []),
            buttons: fresh.map((due) => buttonsFor(due, true)),
          }),
      unasked: true,
    });
    if (!oneByOne)
      give(
        sitting,
        fresh.map((due) => promptOf(sitting, due, key)),
      );
  }
  if (oneByOne)
    oldestFirst(sitting, fresh).forEach((due, index) => {
      const about = aboutOf(due);
      if (!about) return;
      const key = sitting.say({
        text: promptWords(due, {
          ...speech,
          asides: index === 0 && listed.length === 0 ? digest.asides : [],
        }),
        buttons: [buttonsFor(due, false)],
        prompts: [about],
        unasked: true,
      });
      give(sitting, [promptOf(sitting, due, key)]);
    });
  mention(
    sitting,
    digest.parts.flatMap(({ dues }) => dues),
  );
}

/** What was asked once is not asked again; it is named again only beside something new. */
function hasNews({ parts }: Digest, mentioned: readonly string[]): boolean {
  return parts.some(({ dues }) => dues.some(({ key }) => !mentioned.includes(key)));
}

function partsOf(digest: Digest, listed: readonly Due[]): Digest['parts'] {
  return digest.parts
    .map(({ place, dues }) => ({ place, dues: dues.filter((due) => listed.includes(due)) }))
    .filter(({ dues }) => dues.length > 0);
}

/** So that the last question put, on which a bare answer lands, is about the batch begun last. */
function oldestFirst(sitting: Sitting, questions: readonly Due[]): Due[] {
  const order = [...sitting.ledger.batches.keys()];
  return [...questions].sort((a, b) => order.indexOf(a.labels[0] ?? '') - order.indexOf(b.labels[0] ?? ''));
}

function buttonsFor(due: Due, labelled: boolean): Button[] {
  return promptButtons(due, labelled ? (due.labels[0] ?? due.variety ?? '') : null).map(([label, value]) => ({
    label,
    data: `prompt:${due.key}:${value}`,
  }));
}

function promptOf(sitting: Sitting, due: Due, key: string): Prompt {
  return { key, occasion: due.key, givenAt: sitting.now, about: aboutOf(due) as PromptAbout, open: true };
}

/** Null for what is told and wants no answer. */
function aboutOf(due: Due): PromptAbout | null {
  const [batch] = due.labels;
  switch (due.kind) {
    case 'check':
    case 'potOn':
    case 'pinch':
    case 'hardenOff':
    case 'plantOut':
    case 'strike':
      return {
        about: due.kind,
        ...(batch === undefined || due.kind === 'strike' ? {} : { batch }),
        ...(due.variety === null ? {} : { variety: due.variety }),
        ...(due.crop === null || due.kind !== 'strike' ? {} : { crop: due.crop }),
      };
    default:
      return null;
  }
}

function mention(sitting: Sitting, dues: readonly Due[]): void {
  const keys = new Set([...sitting.talk.mentioned, ...dues.map(({ key }) => key)]);
  sitting.change({ mentioned: [...keys].slice(-REMEMBERED) });
}

/** Whether a message that was put into the outbox is still worth sending: nothing in it was settled meanwhile. */
export function stillTrue(world: World, key: string): boolean {
  const prompts = world.talk.prompts.filter((each) => each.key === key);
  return prompts.length === 0 || prompts.some((each) => isAnswerable(world, each));
}
