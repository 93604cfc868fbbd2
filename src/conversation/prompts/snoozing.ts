/** "Later": a prompt comes again another day, by tap or word. */
import { addDays } from '../../calendar/day.js';
import type { Instruction } from '../../language/instructions/instruction.js';
import { snoozed } from '../../words/instructions.js';
import { speechOf } from '../batches/deeds.js';
import { close, putOff, snoozesWith } from './given-prompts.js';
import type { Sitting } from '../sitting.js';
import type { Prompt } from '../talk.js';

/** They come again tomorrow. */
export function snoozePrompts(sitting: Sitting, prompts: readonly Prompt[]): void {
  for (const prompt of prompts) close(sitting, prompt);
  const until = addDays(sitting.today, 1);
  putOff(
    sitting,
    prompts.map(({ occasion }) => occasion),
    until,
  );
  sitting.reply.text.push(snoozed(until, speechOf(sitting)));
}

/** What is open now, or all that is due of one plant, comes again on that day. */
export function snooze(sitting: Sitting, { until, plant }: Extract<Instruction, { kind: 'snooze' }>): void {
  const open = sitting.talk.prompts.filter(
    ({ open, about }) =>
      open &&
      (plant === undefined ||
        plant.batch === about.batch ||
        (plant.variety !== undefined && plant.variety.toLowerCase() === about.variety?.toLowerCase())),
  );
  for (const prompt of open) close(sitting, prompt);
  putOff(
    sitting,
    open.map(({ occasion }) => occasion),
    until,
  );
  if (plant || open.length === 0)
    sitting.change({ snoozes: snoozesWith(sitting, { until, ...(plant ? { plant } : {}) }) });
  sitting.reply.text.push(snoozed(until, speechOf(sitting)));
}
