/** A spoken note: a draft until a yes, unless it needs none. */
import type { HeardWord } from '../language/note.js';
import { heardNothing } from '../words/heard.js';
import type { Sitting } from './sitting.js';

export function hear(sitting: Sitting, words: readonly HeardWord[]): void {
  const text = words
    .map(({ word }) => word)
    .join(' ')
    .trim();
  if (text === '') {
    sitting.reply.text.push(heardNothing);
    return;
  }
  const others = sitting.talk.asks.filter(({ asked }) => asked.ask !== 'heard');
  sitting.change({ asks: others });
  sitting.ask({ ask: 'heard', words, text });
}
