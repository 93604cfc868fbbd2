/** "Ah no, only 2" right behind a note: of that note, however many questions about other plants still wait. */
import type { Context } from '../answers/answering.js';
import type { Sitting } from '../sitting.js';

const JUST_MS = 15 * 60_000;
const TAKES_BACK =
  /^(?:(?:ah|oh|ach|och|argh|um|er|eh|hmm?)[, ]+)?(?:no|wait|sorry|oops|actually|hang on)[, ]+(?:only|just)\b/i;

/** Whether the text takes back a number of what its grower noted since the prompts were put. */
export function isOfJustTold(
  { ledger, origin, world }: Sitting,
  text: string,
  { ask, explicit, prompts }: Context,
): boolean {
  const last = ledger.standing.at(-1)?.journal;
  return (
    TAKES_BACK.test(text) &&
    !explicit &&
    ask === null &&
    last?.source?.chat === world.chat &&
    last.by === origin.by &&
    origin.at - last.postedAt <= JUST_MS &&
    prompts.every(({ givenAt }) => givenAt < last.postedAt)
  );
}
