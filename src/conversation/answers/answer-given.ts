/** A bare answer: which prompt it lands on, and what is said where it lands on none. */
import type { Answer } from '../../ledger/entry.js';
import { isLive } from '../../ledger/batch.js';
import { nothingOpen, nothingOpenWith, nothingWaits, settledAlready } from '../../words/answers.js';
import { setSlots } from '../correcting/amending.js';
import { asksNothing, type Context } from './answering.js';
import { standingOn } from '../batches/deeds.js';
import { onlyOfLastNote } from '../leaning/last-note.js';
import { close } from '../prompts/given-prompts.js';
import { saidLately } from '../leaning/repeating.js';
import { settle } from '../prompts/settling.js';
import type { Sitting } from '../sitting.js';
import type { Prompt } from '../talk.js';

/** A bare answer lands on the prompt that it replies to, else on the newest open one; named by its plant, on that plant's. */
export function answer(
  sitting: Sitting,
  { value, date, ...plant }: Answer,
  text: string,
  context: Context,
): void {
  const named = sitting.talk.prompts.findLast(
    ({ open, about }) =>
      open &&
      ((plant.batch !== undefined && about.batch === plant.batch) ||
        (plant.variety !== undefined && about.variety?.toLowerCase() === plant.variety.toLowerCase())),
  );
  const candidates = named ? [named] : context.prompts;
  const [prompt, another] = candidates;
  if (!prompt && asksNothing(context)) {
    sitting.reply.text.push(nothingWaits);
    return;
  }
  if (value === undefined || (value === 'yes' && assents(text) && prompt?.about.about === 'check')) {
    askNumber(sitting, another ? undefined : prompt);
    return;
  }
  if (another) {
    sitting.ask({ ask: 'whichPrompt', value, occasions: candidates.map(({ occasion }) => occasion) });
    return;
  }
  if (countsThoseRooted(sitting, value, prompt, context)) return;
  if (prompt && !prompt.open && saidLately(sitting, text)) {
    sitting.reply.text.push(settledAlready);
    return;
  }
  if (prompt) {
    settle(sitting, prompt, value, date);
    return;
  }
  if (context.lines.length > 0 && typeof value === 'number') {
    const meant = standingOn(sitting.ledger, context.lines).slice(-1);
    setSlots(sitting, meant, { count: value });
    return;
  }
  const live = [...sitting.ledger.batches.values()].filter(isLive);
  const [only] = live;
  sitting.reply.text.push(only && live.length === 1 ? nothingOpenWith(only, text.trim()) : nothingOpen);
}

/** "Ok" to how many have rooted: heard, and nothing seen. */
const assents = (text: string): boolean =>
  /^(?:ok|okay|okey|okey dokey|k|kk|right|right you are|righto|sure|alright|all right|fine)[ .!]*$/i.test(
    text.trim(),
  );

/** So long after a look is a number alone of it. */
const LOOKED_MS = 3_600_000;

/** "Seven" behind "some roots on the Ember Fox": how many those are. */
function countsThoseRooted(
  sitting: Sitting,
  value: Answer['value'],
  prompt: Prompt | undefined,
  { explicit, lines }: Context,
): boolean {
  const last = onlyOfLastNote(sitting, LOOKED_MS);
  if (explicit || lines.length > 0 || last?.entry.kind !== 'check' || last.entry.rooted !== 'some')
    return false;
  if (typeof value !== 'number' || (prompt && prompt.givenAt >= last.journal.postedAt)) return false;
  return setSlots(sitting, [last], { rooted: value });
}

/** An answer whose number could not be told: "all but one" of who knows how many. */
function askNumber(sitting: Sitting, prompt: Prompt | undefined): void {
  const batch = prompt?.about.batch;
  if (prompt?.about.about !== 'check' || batch === undefined) {
    sitting.reply.text.push(nothingOpen);
    return;
  }
  close(sitting, prompt);
  const entry = { kind: 'check' as const, batch };
  sitting.ask({ ask: 'slot', entry, slot: 'rooted', options: ['all', 'none'], then: [] });
}
