/** A spoken note: a draft until a yes, unless it needs none. */
import type { HeardWord } from '../language/note.js';
import { asksOnly, doubtfulWords, mayAnswerUnasked, mayPostUnasked } from '../language/surety.js';
import { heardNothing, heardSurely } from '../words/heard.js';
import { type Context, pendingOf } from './answering.js';
import { matchButton } from './offering.js';
import { readIn } from './reading.js';
import { act, sayText } from './saying.js';
import type { Sitting } from './sitting.js';

export function hear(sitting: Sitting, words: readonly HeardWord[], context: Context): void {
  const text = words
    .map(({ word }) => word)
    .join(' ')
    .trim();
  if (text === '') {
    sitting.reply.text.push(heardNothing);
    return;
  }
  const read = readIn(sitting, text, { heard: words, pending: pendingOf(context) });
  const isButton = doubtfulWords(words).length === 0 && matchButton(sitting, text, context) !== null;
  if (isButton || mayAnswerUnasked(read, words)) {
    sayText(sitting, text, context);
    return;
  }
  if (mayPostUnasked(read, words) || asksOnly(read)) {
    sitting.reply.text.push(heardSurely(words));
    act(sitting, text, read, context);
    return;
  }
  const others = sitting.talk.asks.filter(({ asked }) => asked.ask !== 'heard');
  sitting.change({ asks: others });
  sitting.ask({ ask: 'heard', words, text });
}
