/** A spoken note: a draft until a yes, unless it needs none. */
import type { HeardWord } from '../language/note.js';
import { plainestHearing } from '../language/hearing/plainest-hearing.js';
import { readingOf } from '../language/read.js';
import { asksOnly, doubtfulWords, mayAnswerUnasked, mayPostUnasked } from '../language/hearing/surety.js';
import { heardNothing, heardSurely } from '../words/heard.js';
import { type Context, contextualAnswer, pendingOf } from './answers/answering.js';
import { matchButton } from './answers/offering.js';
import { contextOf, noteOf, readIn } from './reading/reading.js';
import { act, sayText } from './saying.js';
import type { Sitting } from './sitting.js';
import type { Incoming } from './turn.js';

export function hear(
  sitting: Sitting,
  { words, others = [], lags }: NonNullable<Incoming['heard']>,
  context: Context,
): void {
  const text = textOf(words);
  if (text === '') {
    sitting.reply.text.push(heardNothing);
    return;
  }
  const pending = pendingOf(context);
  const read = readIn(sitting, text, { heard: words, pending, weighed: true });
  const button = matchButton(sitting, text, context);
  const isButton = doubtfulWords(words).length === 0 && button !== null;
  if (isButton || mayAnswerUnasked(read, words)) {
    sayText(sitting, text, context);
    return;
  }
  if (mayPostUnasked(read, words) || asksOnly(read)) {
    sitting.reply.text.push(heardSurely(words));
    act(sitting, text, read, context);
    return;
  }
  const meant =
    button === null
      ? plainestHearing({ words, others, lags }, contextOf(sitting.ledger), (other) =>
          readingOf(noteOf(sitting, other, { pending })),
        )
      : undefined;
  askWhetherHeard(sitting, meant ?? words, context);
}

/** Does what was heard and is now said to be right, as of the moment at which it was spoken. */
export function takeDraft(sitting: Sitting): void {
  const { draft } = sitting;
  if (!draft) return;
  sitting.draft = null;
  sitting.origin = draft.origin;
  const { words: heard, meant } = draft;
  sayText(sitting, draft.text, contextualAnswer(sitting, draft), { heard, meant });
}

/** A draft takes the place of an earlier one. */
function askWhetherHeard(sitting: Sitting, words: readonly HeardWord[], { explicit, key }: Context): void {
  sitting.change({ asks: sitting.talk.asks.filter(({ asked }) => asked.ask !== 'heard') });
  const answers = explicit && key !== undefined ? { answers: key } : {};
  sitting.ask({ ask: 'heard', words, text: textOf(words), ...answers });
}

function textOf(words: readonly HeardWord[]): string {
  return words
    .map(({ word }) => word)
    .join(' ')
    .trim();
}
