/** Prompts that were given: closed when answered, put off when not. */
import type { Day } from '../calendar/day.js';
import type { Sitting } from './sitting.js';
import type { Prompt } from './talk.js';

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
  const past = sitting.talk.snoozes.filter((each) => each.until > sitting.today);
  sitting.change({
    snoozes: [...past, { until, keys }],
    mentioned: sitting.talk.mentioned.filter((key) => !keys.includes(key)),
  });
}
