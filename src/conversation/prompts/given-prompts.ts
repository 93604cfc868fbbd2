/** Prompts that were given: kept while they can be answered, closed when they are, put off when not. */
import type { Day } from '../../calendar/day.js';
import { isLive } from '../../ledger/batch.js';
import type { Snooze } from '../../outlook/snoozing.js';
import type { Sitting } from '../sitting.js';
import type { Prompt } from '../talk.js';

/** So many are kept that can no longer be answered: an answer may be put right, and a batch come back by an undo. */
const RECENT = 60;
/** What asks for cuttings and is about no batch outlasts its round by no more than this; no reply to it is understood after that. */
const ROUND_MS = 90 * 86_400_000;

/** Keeps what was prompted, and forgets what nothing can answer any more. */
export function give(sitting: Sitting, prompts: readonly Prompt[]): void {
  const all = [...sitting.talk.prompts, ...prompts];
  const old = all.length - RECENT;
  sitting.change({ prompts: all.filter((each, index) => index >= old || isWaiting(sitting, each)) });
}

function isWaiting(sitting: Sitting, prompt: Prompt): boolean {
  const isOfNow = prompt.about.batch !== undefined || sitting.now - prompt.givenAt < ROUND_MS;
  return isOfNow && isAnswerable(sitting, prompt);
}

/** Whether an answer can be for it. */
export function isAnswerable(world: Pick<Sitting, 'ledger'>, prompt: Prompt): boolean {
  return prompt.open && !isGone(world, prompt);
}

/** Whether it asks about a batch that is gone, which has nothing left to answer. */
export function isGone({ ledger }: Pick<Sitting, 'ledger'>, { about }: Prompt): boolean {
  if (about.batch === undefined) return false;
  const batch = ledger.batches.get(about.batch);
  return batch === undefined || !isLive(batch);
}

/** For so long after a prompt, what is told of its kind is told in answer to it. */
const FRESH_MS = 3_600_000;

/** Whether a note that names its act but no plant can only be of the batch that was asked about: just now, or of no other. */
export function isPlainlyAbout(sitting: Sitting, kind: string, batch: string): boolean {
  const alike = sitting.talk.prompts.filter(
    (each) => each.about.about === kind && isAnswerable(sitting, each),
  );
  const fresh = alike.filter(({ givenAt }) => sitting.origin.at - givenAt < FRESH_MS);
  return (fresh.length > 0 ? fresh : alike).every(({ about }) => about.batch === batch);
}

export function close(sitting: Sitting, prompt: Prompt): void {
  sitting.change({
    prompts: sitting.talk.prompts.map((each) =>
      each.occasion === prompt.occasion ? { ...each, open: false } : each,
    ),
  });
}

/** What was mentioned comes again on that day as if it had never been. */
export function putOff(sitting: Sitting, keys: readonly string[], until: Day): void {
  if (keys.length === 0) return;
  sitting.change({
    snoozes: snoozesWith(sitting, { until, keys }),
    mentioned: sitting.talk.mentioned.filter((key) => !keys.includes(key)),
  });
}

/** So many are kept; whoever put off more is asked again a little early. */
const SNOOZES = 200;

/** What is put off with another beside it, and without what is over. */
export function snoozesWith({ talk, today }: Sitting, snooze: Snooze): readonly Snooze[] {
  return [...talk.snoozes.filter(({ until }) => until > today), snooze].slice(-SNOOZES);
}
