/** A tapped button: undo, change, an answer to a question or prompt, the next page. */
import type { Line } from '../../ledger/posting.js';
import type { AnswerValue } from '../../ledger/entry.js';
import { buttonGone, leftIt, settledAlready } from '../../words/answers.js';
import { openAsks } from './answering.js';
import { choose } from './asked.js';
import { withValue } from './filling.js';
import { nextPage } from '../questions/paging.js';
import { drop, goOn } from './replying.js';
import { settle } from '../prompts/settling.js';
import type { Sitting } from '../sitting.js';
import { skipSetup } from '../settings/starting.js';
import { standingOn } from '../batches/deeds.js';
import { snoozePrompts } from '../prompts/snoozing.js';
import { restore, revert, takeBack } from '../correcting/undoing.js';

/** `key` is that of the message that carries the button. */
export function tap(sitting: Sitting, data: string, key?: string): void {
  const [verb = '', ...rest] = data.split(':');
  switch (verb) {
    case 'undo':
      takeBack(sitting, linesIn(rest[0]));
      return;
    case 'revert':
      revert(sitting, linesIn(rest[0]));
      return;
    case 'putBack':
      restore(sitting, linesIn(rest[0]));
      return;
    case 'change':
      change(sitting, linesIn(rest[0]));
      return;
    case 'ask':
      tapAsk(sitting, Number(rest[0]), rest[1] === 'x' ? null : Number(rest[1]));
      return;
    case 'prompt':
      tapPrompt(sitting, rest.slice(0, -1).join(':'), rest.at(-1) ?? '', key);
      return;
    case 'more':
      nextPage(sitting);
      return;
    default:
      sitting.reply.text.push(buttonGone);
  }
}

function change(sitting: Sitting, lines: readonly Line[]): void {
  if (standingOn(sitting.ledger, lines).length === 0) sitting.reply.text.push(settledAlready);
  else sitting.ask({ ask: 'change', lines });
}

function tapAsk(sitting: Sitting, id: number, index: number | null): void {
  const ask = openAsks(sitting).find((each) => each.id === id);
  if (!ask) {
    sitting.reply.text.push(settledAlready);
    return;
  }
  const { asked } = ask;
  if (asked.ask === 'setup' && index === null) skipSetup(sitting, ask);
  else if (asked.ask !== 'slot') choose(sitting, ask, index);
  else if (index === null) {
    drop(sitting, ask);
    sitting.reply.text.push(leftIt);
  } else if (index < asked.options.length) {
    drop(sitting, ask);
    goOn(sitting, asked, withValue(asked, asked.options[index], sitting.ledger), ask.origin);
  } else sitting.reply.text.push(buttonGone);
}

function tapPrompt(sitting: Sitting, occasion: string, word: string, key?: string): void {
  const prompt = sitting.talk.prompts.findLast(
    (each) => each.occasion === occasion && (key === undefined || each.key === key),
  );
  if (!prompt) sitting.reply.text.push(buttonGone);
  else if (!prompt.open) sitting.reply.text.push(settledAlready);
  else if (word === 'later') snoozePrompts(sitting, [prompt]);
  else settle(sitting, prompt, /^\d+$/.test(word) ? Number(word) : (word as AnswerValue));
}

/** `12-14`, both included. */
function linesIn(range: string | undefined): Line[] {
  const [from = 0, to = from] = (range ?? '').split('-').map(Number);
  const length = Math.min(100, Math.max(0, to - from + 1)) || 0;
  return Array.from({ length }, (_, index) => from + index);
}
