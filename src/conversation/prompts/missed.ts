/** "What did I miss?": prompts that came and were not answered. */
import { missedNothing, missedPrompts } from '../../words/missed.js';
import { speechOf } from '../batches/deeds.js';
import type { Sitting } from '../sitting.js';

export function sayMissed(sitting: Sitting): void {
  const open = sitting.talk.prompts.filter((each) => each.open);
  sitting.reply.text.push(
    open.length === 0
      ? missedNothing
      : missedPrompts(
          open.map(({ about, givenAt }) => ({ about, on: sitting.dayOf(givenAt) })),
          speechOf(sitting),
        ),
  );
}
